/** What the page knows about the service behind it. */
export type Health =
  | { readonly kind: 'asking' }
  | { readonly kind: 'answering'; readonly status: string; readonly version: string }
  | { readonly kind: 'silent'; readonly reason: string };

/** The part of `fetch` that is needed here, so that tests need no network. */
export type Ask = (address: string) => Promise<Pick<Response, 'ok' | 'status' | 'json'>>;

/** Asks the service how it is. Never throws: a service that cannot be reached is an answer too. */
export async function askHealth(ask: Ask): Promise<Health> {
  try {
    const response = await ask('/health');
    return response.ok
      ? readHealth(await response.json())
      : { kind: 'silent', reason: `it answered with status ${response.status}` };
  } catch {
    return { kind: 'silent', reason: 'it cannot be reached' };
  }
}

/** Says in one sentence what state the service is in. */
export function healthInWords(health: Health): string {
  switch (health.kind) {
    case 'asking':
      return 'Asking the service how it is …';
    case 'answering':
      return health.status === 'healthy'
        ? `The service is running (version ${health.version}).`
        : `The service answers, but reports “${health.status}” (version ${health.version}).`;
    case 'silent':
      return `The service does not answer: ${health.reason}. Start it again, then reload this page.`;
  }
}

function readHealth(body: unknown): Health {
  if (typeof body === 'object' && body !== null && 'status' in body && 'version' in body) {
    const { status, version } = body;
    if (typeof status === 'string' && typeof version === 'string') {
      return { kind: 'answering', status, version };
    }
  }
  return { kind: 'silent', reason: 'its answer makes no sense' };
}
