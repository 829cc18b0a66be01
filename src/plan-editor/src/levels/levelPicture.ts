import { signal } from '@preact/signals';

/** Whether the picture of levels is drawn under the plan. */
export const levelPictureOn = signal(false);

/** A level that is drawn as a line with a name. */
export interface LevelLimit {
  readonly levelDbA: number;
  readonly label: string;
}

/**
 * The levels drawn as lines. Those to begin with are values people on the ground know: 80 and 85 dB(A) are the action
 * values of Directive 2003/10/EC, 100 dB(A) is the venue limit of the WHO standard for safe listening (2022).
 */
export const levelLimits = signal<readonly LevelLimit[]>([80, 85, 100].map(limitAt));

function limitAt(levelDbA: number): LevelLimit {
  return { levelDbA, label: `${levelDbA} dB(A) planning value` };
}
