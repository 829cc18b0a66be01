/** One problem with what was sent, as the service lists them (RFC 9457 with an `errors` list). */
export interface Problem {
  readonly pointer: string;
  readonly code: string;
  readonly value?: string | null;
  readonly allowed?: string | null;
  readonly text: string;
}

/** Status of a refusal that never came: nothing answered. */
export const noAnswer = 0;

/** The service would not, or could not be reached. The message is for the person at the page. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly status: number;
  readonly problems: readonly Problem[];

  constructor(status: number, message: string, problems: readonly Problem[] = []) {
    super(message);
    this.status = status;
    this.problems = problems;
  }
}

const mostProblemsNamed = 3;

/** Reads the refusal out of an answer. Never throws: an answer without problem details is told by its status. */
export async function refusalOf(response: Pick<Response, 'status' | 'json'>): Promise<Refusal> {
  const body = await response.json().catch(() => null);
  const problems = problemsIn(body);
  return new Refusal(response.status, inWords(response.status, body, problems), problems);
}

/** What to tell somebody about anything that was thrown. */
export function reasonOf(thrown: unknown): string {
  return thrown instanceof Refusal ? thrown.message : 'Something in this page went wrong. Reload it.';
}

/** The refusal when nothing answers. */
export function silence(): Refusal {
  return new Refusal(noAnswer, 'The service does not answer. Look whether it still runs on this machine.');
}

function inWords(status: number, body: unknown, problems: readonly Problem[]): string {
  if (problems.length > 0) {
    const named = problems.slice(0, mostProblemsNamed).map(problemInWords);
    const rest = problems.length - named.length;
    return rest > 0 ? `${named.join(' ')} And ${rest} more.` : named.join(' ');
  }
  const detail = textOf(body, 'detail') ?? textOf(body, 'title');
  return detail ?? `The service answered with status ${status}.`;
}

function problemInWords({ pointer, value, allowed, text }: Problem): string {
  const extras = [
    value != null && value !== '' && !text.includes(value) ? `It is ${value}.` : null,
    allowed != null && allowed !== '' && !text.includes(allowed) ? `Allowed: ${allowed}.` : null,
  ].filter((extra) => extra !== null);
  return [pointer === '' ? text : `${pointer}: ${text}`, ...extras].join(' ');
}

function problemsIn(body: unknown): readonly Problem[] {
  const errors = typeof body === 'object' && body !== null && 'errors' in body ? body.errors : null;
  return Array.isArray(errors) ? errors.filter(isProblem) : [];
}

function isProblem(entry: unknown): entry is Problem {
  return textOf(entry, 'text') !== undefined && textOf(entry, 'pointer') !== undefined;
}

function textOf(body: unknown, member: string): string | undefined {
  if (typeof body !== 'object' || body === null) {
    return undefined;
  }
  const value = (body as Record<string, unknown>)[member];
  return typeof value === 'string' ? value : undefined;
}
