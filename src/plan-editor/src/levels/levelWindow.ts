import type { Frame } from '../sketch/geometry/frame';
import type { LevelWindow } from './levelGrid';

// What the service takes (docs/openapi.json, DrawLevels).
const leastStepMetres = 0.05;
const mostStepMetres = 100;
const mostMetres = 5000;
// A little beyond the edges, so that a small shift of the view shows no gap.
const margin = 0.1;

/** The grid over what is in view: so many steps along the longer side. Null when nothing of it can be asked for. */
export function levelWindow(frame: Frame, steps: number): LevelWindow | null {
  const width = frame.widthPixels * frame.metresPerPixel * (1 + 2 * margin);
  const height = frame.heightPixels * frame.metresPerPixel * (1 + 2 * margin);
  const stepMetres = Math.min(mostStepMetres, Math.max(leastStepMetres, Math.max(width, height) / steps));
  const [x, y] = frame.middle;
  const left = Math.max(-mostMetres, x - width / 2);
  const low = Math.max(-mostMetres, y - height / 2);
  const columns = Math.floor((Math.min(mostMetres, x + width / 2) - left) / stepMetres) + 1;
  const rows = Math.floor((Math.min(mostMetres, y + height / 2) - low) / stepMetres) + 1;
  return columns < 2 || rows < 2 ? null : { lowerLeft: [left, low], stepMetres, columns, rows };
}
