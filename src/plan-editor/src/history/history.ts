/** A value, the ways back from it, and the ways forward again. Immutable. */
export interface History<T> {
  readonly now: T;
  /** What was before each step, the last step last. */
  readonly past: readonly Step<T>[];
  /** What was taken back, the next to do again last. */
  readonly future: readonly Step<T>[];
}

/** A named step, with the value on its other side. */
export interface Step<T> {
  readonly name: string;
  readonly value: T;
}

/** Steps that can be taken back; the oldest beyond them are forgotten. */
export const mostSteps = 200;

export function begun<T>(value: T): History<T> {
  return { now: value, past: [], future: [] };
}

/** A new step. What had been taken back before it can no longer be done again. */
export function stepped<T>(history: History<T>, name: string, value: T): History<T> {
  return { now: value, past: [...history.past, { name, value: history.now }].slice(-mostSteps), future: [] };
}

/** The last step taken back; without one, the same history. */
export function undone<T>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  return step === undefined
    ? history
    : {
        now: step.value,
        past: history.past.slice(0, -1),
        future: [...history.future, { name: step.name, value: history.now }],
      };
}

/** The step last taken back done again; without one, the same history. */
export function redone<T>(history: History<T>): History<T> {
  const step = history.future.at(-1);
  return step === undefined
    ? history
    : {
        now: step.value,
        past: [...history.past, { name: step.name, value: history.now }],
        future: history.future.slice(0, -1),
      };
}
