/** What a key does to the thing that has the focus: shift it or turn it. */
export interface KeyStep {
  readonly rightMetres: number;
  readonly upMetres: number;
  readonly turnDegrees: number;
}

export interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
}

const fine = { metres: 0.1, degrees: 1 };
const coarse = { metres: 1, degrees: 10 };

/** Arrows shift by 0.1 m, `[` and `]` and R turn by 1°; with Shift by 1 m and 10°. Null for any other key. */
export function keyStep({ key, shiftKey }: Key): KeyStep | null {
  const { metres, degrees } = shiftKey ? coarse : fine;
  switch (key) {
    case 'ArrowRight':
      return shift(metres, 0);
    case 'ArrowLeft':
      return shift(-metres, 0);
    case 'ArrowUp':
      return shift(0, metres);
    case 'ArrowDown':
      return shift(0, -metres);
    // Shift makes braces of brackets on many keyboards.
    case ']':
    case '}':
    case 'r':
    case 'R':
      return turn(degrees);
    case '[':
    case '{':
      return turn(-degrees);
    default:
      return null;
  }
}

function shift(rightMetres: number, upMetres: number): KeyStep {
  return { rightMetres, upMetres, turnDegrees: 0 };
}

function turn(turnDegrees: number): KeyStep {
  return { rightMetres: 0, upMetres: 0, turnDegrees };
}
