import type { NumberRange } from './numberEntry';

/** Where a place of the plan may lie along one axis (the plan's schema says the same). */
export function placeRange(axis: 'x' | 'y'): NumberRange {
  return { label: axis === 'x' ? 'x, to the right' : 'y, up', unit: 'm', least: -5000, most: 5000 };
}

/** A heading, clockwise from the plan's up direction. */
export const headingRange: NumberRange = {
  label: 'Exhaust blows to',
  unit: '° clockwise from up',
  least: -360,
  most: 360,
};
