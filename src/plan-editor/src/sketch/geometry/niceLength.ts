/** The longest of 1, 2 and 5 times a power of ten that is not longer than the given length. */
export function niceLengthMetres(longestMetres: number): number {
  const power = 10 ** Math.floor(Math.log10(longestMetres));
  const times = [5, 2, 1].find((n) => n * power <= longestMetres) ?? 1;
  return times * power;
}
