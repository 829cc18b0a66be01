/** The ends of the picture's ramp: fixed, so that a tone means the same level on every plan. */
export const palestDbA = 55;
export const darkestDbA = 115;

// One hue, from the colour of the paper to sepia; ink stays readable on the darkest of it.
const pale = [251, 248, 240] as const;
const dark = [146, 104, 52] as const;

/** The tone of a level as red, green and blue from 0 to 255. */
export function toneOf(levelDbA: number): readonly [number, number, number] {
  const share = Math.min(1, Math.max(0, (levelDbA - palestDbA) / (darkestDbA - palestDbA)));
  const mixed = (i: 0 | 1 | 2) => Math.round(pale[i] + share * (dark[i] - pale[i]));
  return [mixed(0), mixed(1), mixed(2)];
}
