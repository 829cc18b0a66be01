import { ink } from './ink';

/** How one row group of zones is hatched: strokes on a square tile that repeats. */
type Strokes = (pen: CanvasRenderingContext2D, size: number) => void;

const falling: Strokes = (pen, s) => lines(pen, [-s, 0, s, 2 * s], [0, 0, 2 * s, 2 * s], [0, -s, 2 * s, s]);
const brokenFalling: Strokes = (pen, s) => lines(pen, [s * 0.15, s * 0.15, s * 0.85, s * 0.85]);
const rising: Strokes = (pen, s) => lines(pen, [-s, s, s, -s], [0, s, s, 0], [0, 2 * s, 2 * s, 0]);
const level: Strokes = (pen, s) => lines(pen, [0, s / 2, s, s / 2]);
const upright: Strokes = (pen, s) => lines(pen, [s / 2, 0, s / 2, s]);
const crosses: Strokes = (pen, s) => {
  const [a, b] = [s * 0.32, s * 0.68];
  lines(pen, [a, a, b, b], [a, b, b, a]);
};
const dots: Strokes = (pen, s) => {
  pen.beginPath();
  pen.arc(s / 2, s / 2, s * 0.12, 0, 2 * Math.PI);
  pen.fill();
};
const rings: Strokes = (pen, s) => {
  pen.beginPath();
  pen.arc(s / 2, s / 2, s * 0.24, 0, 2 * Math.PI);
  pen.stroke();
};

const hatches = {
  keepOut: { strokes: falling, size: 11, width: 0.8, strength: 0.42 },
  debris: { strokes: brokenFalling, size: 12, width: 1.6, strength: 0.6 },
  jet: { strokes: rising, size: 9, width: 1.1, strength: 0.6 },
  near: { strokes: dots, size: 9, width: 1, strength: 0.7 },
  sound: { strokes: level, size: 11, width: 1.1, strength: 0.5 },
  air: { strokes: rings, size: 14, width: 1.1, strength: 0.65 },
  fuel: { strokes: crosses, size: 13, width: 1.2, strength: 0.7 },
  stand: { strokes: upright, size: 6, width: 0.8, strength: 0.45 },
} satisfies Record<string, { strokes: Strokes; size: number; width: number; strength: number }>;

export type Hatch = keyof typeof hatches;

const drawn = new Map<string, CanvasPattern | string>();

/** The hatch as a fill, its lines constant in screen pixels whatever the scale of the plan. */
export function hatchFill(hatch: Hatch): CanvasPattern | string {
  const key = `${hatch} ${window.devicePixelRatio}`;
  const fill = drawn.get(key) ?? draw(hatch);
  drawn.set(key, fill);
  return fill;
}

function draw(hatch: Hatch): CanvasPattern | string {
  const { strokes, size, width, strength } = hatches[hatch];
  const pixels = Math.round(size * window.devicePixelRatio);
  const tile = document.createElement('canvas');
  tile.width = pixels;
  tile.height = pixels;
  const pen = tile.getContext('2d');
  if (pen === null) {
    return 'transparent';
  }
  pen.globalAlpha = strength;
  pen.strokeStyle = ink;
  pen.fillStyle = ink;
  pen.lineWidth = width * window.devicePixelRatio;
  strokes(pen, pixels);
  return pen.createPattern(tile, 'repeat') ?? 'transparent';
}

function lines(pen: CanvasRenderingContext2D, ...all: readonly [number, number, number, number][]): void {
  pen.beginPath();
  for (const [x1, y1, x2, y2] of all) {
    pen.moveTo(x1, y1);
    pen.lineTo(x2, y2);
  }
  pen.stroke();
}
