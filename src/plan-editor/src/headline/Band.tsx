import { headlineParts } from './headlineParts';

/** What is invented: all of it, or, in a plan of one's own, some of its values still. */
export type Stamp = 'EXAMPLE' | 'EXAMPLE VALUES' | null;

/** The service's sentence. NOT TO RUN is told by its words and by ink turned over, never by hue. */
export function Band({ headline, example }: { readonly headline: string; readonly example: Stamp }) {
  const { verdict, rest } = headlineParts(headline);
  return (
    <p class="sentence">
      {example !== null && <span class="stamp">{example}</span>}
      <strong class="verdict">
        {verdict}
        {rest !== '' && <span class="unseen">: </span>}
      </strong>
      {rest !== '' && <span class="rest">{rest}</span>}
    </p>
  );
}
