/** A number somebody typed, or what is wrong with it. */
export type Entry =
  | { readonly valid: true; readonly value: number }
  | { readonly valid: false; readonly reason: string };

/** What a field takes. */
export interface NumberRange {
  readonly label: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
}

/** Reads a number as people type it: with a decimal point or a decimal comma, with a real minus sign or a hyphen. */
export function readNumber(text: string, { label, unit, least, most }: NumberRange): Entry {
  const plain = text.trim().replace(',', '.').replace('−', '-');
  const value = /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(value) && value >= least && value <= most
    ? { valid: true, value }
    : {
        valid: false,
        reason: `${label} can’t be “${text.trim()}”. Allowed: a number from ${least} to ${most} ${unit}.`,
      };
}
