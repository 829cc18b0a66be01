import type { LevelGrid } from './levelGrid';
import { toneOf } from './ramp';

/** A canvas with one pixel for a value of the grid, the highest y on top. */
export function gridCanvas({ columns, rows, planningDbA }: LevelGrid): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = columns;
  canvas.height = rows;
  const pixels = new ImageData(columns, rows);
  planningDbA.forEach((level, i) => {
    const row = rows - 1 - Math.floor(i / columns);
    pixels.data.set([...toneOf(level), 255], 4 * (row * columns + (i % columns)));
  });
  canvas.getContext('2d')?.putImageData(pixels, 0, 0);
  return canvas;
}
