/** The sheet's inks. They are those of page.css; a canvas cannot read a style sheet. */
export const ink = '#15202b';
export const paper = '#fbf8f0';
/** Ink thinned for what lies under the plan; told from full ink in black and white too. */
export const thin = '#6b7177';
export const ground = '#e9e3d3';

/** The page's type at a size in CSS pixels. */
export function typeOf(sizePixels: number, weight: 400 | 700 = 400): string {
  return `${weight} ${sizePixels}px "Source Sans 3", sans-serif`;
}
