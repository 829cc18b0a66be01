/** The headline in two parts: the verdict, set large, and what it rests on. */
export interface HeadlineParts {
  readonly verdict: string;
  readonly rest: string;
}

/** Splits the service's sentence at its first colon. A sentence without one is a verdict alone. */
export function headlineParts(headline: string): HeadlineParts {
  const colon = headline.indexOf(': ');
  return colon < 0
    ? { verdict: headline, rest: '' }
    : { verdict: headline.slice(0, colon), rest: capitalised(headline.slice(colon + 2)) };
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
