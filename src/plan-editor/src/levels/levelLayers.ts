import type Feature from 'ol/Feature.js';
import ImageLayer from 'ol/layer/Image.js';
import ImageCanvasSource from 'ol/source/ImageCanvas.js';
import { paper } from '../sketch/drawing/ink';
import { labelStyle } from '../sketch/drawing/label';
import { lineStyle } from '../sketch/drawing/line';
import { lineFeature } from '../sketch/drawing/shapes';
import { planMetres } from '../sketch/planMetres';
import { contours } from './contours';
import { gridCanvas } from './gridCanvas';
import type { LevelGrid } from './levelGrid';
import type { LevelLimit } from './levelLimits';

/** A layer that shows a grid of levels as tones. */
export function toneLayer(zIndex: number) {
  let shown: { readonly grid: LevelGrid; readonly tones: HTMLCanvasElement } | null = null;
  const source = new ImageCanvasSource({
    projection: planMetres,
    ratio: 1,
    canvasFunction: (extent, _resolution, _pixelRatio, size) => {
      const [width = 1, height = 1] = size;
      const canvas = document.createElement('canvas');
      canvas.width = Math.max(1, Math.round(width));
      canvas.height = Math.max(1, Math.round(height));
      if (shown !== null) {
        lay(canvas, shown.tones, shown.grid, extent);
      }
      return canvas;
    },
  });
  return {
    layer: new ImageLayer({ source, zIndex }),
    show(grid: LevelGrid | null) {
      shown = grid === null ? null : { grid, tones: gridCanvas(grid) };
      source.changed();
    },
  };
}

/** The limits as lines with their names: the only strong marks of the picture. */
export function limitLines(grid: LevelGrid, limits: readonly LevelLimit[]): readonly Feature[] {
  return limits.flatMap(({ levelDbA, label }) =>
    contours(grid, grid.planningDbA, levelDbA).map((line) =>
      lineFeature(
        line,
        lineStyle(5, undefined, paper),
        lineStyle(2.5, undefined, undefined, 1),
        labelStyle(label, { placement: 'line', weight: 700, rank: 6 }),
      ),
    ),
  );
}

// A value stands for the square of one step around its place.
function lay(
  canvas: HTMLCanvasElement,
  tones: HTMLCanvasElement,
  { lowerLeft: [x, y], stepMetres, columns, rows }: LevelGrid,
  [left = 0, bottom = 0, right = 1, top = 1]: readonly number[],
): void {
  const across = canvas.width / (right - left);
  const up = canvas.height / (top - bottom);
  const pen = canvas.getContext('2d');
  if (pen !== null) {
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(
      tones,
      (x - stepMetres / 2 - left) * across,
      (top - (y + (rows - 0.5) * stepMetres)) * up,
      columns * stepMetres * across,
      rows * stepMetres * up,
    );
  }
}
