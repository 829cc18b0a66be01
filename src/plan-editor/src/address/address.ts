/** What the address of the page names. */
export type Address =
  | { readonly kind: 'plan'; readonly id: string }
  | { readonly kind: 'example'; readonly name: string }
  | { readonly kind: 'none' };

/** Reads the part of the address behind the hash. What it does not know names nothing. */
export function addressOf(hash: string): Address {
  const [, kind, name] = /^#\/(plan|example)\/([^/]+)$/.exec(hash) ?? [];
  const decoded = name === undefined ? null : decodedOrNull(name);
  if (decoded === null) {
    return { kind: 'none' };
  }
  return kind === 'plan' ? { kind: 'plan', id: decoded } : { kind: 'example', name: decoded };
}

/** The part of the address behind the hash. */
export function hashOf(address: Address): string {
  switch (address.kind) {
    case 'plan':
      return `#/plan/${encodeURIComponent(address.id)}`;
    case 'example':
      return `#/example/${encodeURIComponent(address.name)}`;
    case 'none':
      return '#/';
  }
}

function decodedOrNull(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}
