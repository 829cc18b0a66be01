import type Feature from 'ol/Feature.js';
import CircleStyle from 'ol/style/Circle.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { PlanFile, PlanPoint } from '../../plan/planFile';
import { elementsOf, type PlanElement } from '../elements';
import { ink, paper } from './ink';
import { lineStyle } from './line';
import { lineFeature, outlineFeature, placeFeature } from './shapes';

const chosenRadiusPixels = 19;

/** What is chosen and where somebody asked. */
export function markScene(
  plan: PlanFile,
  chosen: string | null,
  spot: PlanPoint | null,
  metresPerPixel: number,
): readonly Feature[] {
  return [
    ...elementsOf(plan)
      .filter(({ id }) => id === chosen)
      .map(rimmed),
    ...(spot === null ? [] : asked(spot, metresPerPixel)),
  ];
}

function rimmed({ shape, points }: PlanElement): Feature {
  const rim = [lineStyle(9, undefined, paper, 0), lineStyle(4, [10, 4], ink, 1)];
  switch (shape) {
    case 'place':
      return placeFeature(
        points[0] ?? [0, 0],
        ring(chosenRadiusPixels, 7, paper),
        ring(chosenRadiusPixels, 3, ink),
      );
    case 'line':
      return lineFeature(points, ...rim);
    case 'outline':
      return outlineFeature(points, ...rim);
  }
}

// Four strokes that leave the place itself free, like the marks at the edge of a printed sheet.
function asked([x, y]: PlanPoint, metresPerPixel: number): readonly Feature[] {
  const inner = 7 * metresPerPixel;
  const outer = 20 * metresPerPixel;
  const strokes: readonly (readonly PlanPoint[])[] = [
    [
      [x + inner, y],
      [x + outer, y],
    ],
    [
      [x - inner, y],
      [x - outer, y],
    ],
    [
      [x, y + inner],
      [x, y + outer],
    ],
    [
      [x, y - inner],
      [x, y - outer],
    ],
  ];
  return [
    placeFeature([x, y], ring(13, 5, paper), ring(13, 2, ink)),
    ...strokes.map((stroke) =>
      lineFeature(stroke, lineStyle(6, undefined, paper), lineStyle(3, undefined, ink, 1)),
    ),
  ];
}

function ring(radius: number, width: number, color: string): Style {
  return new Style({ image: new CircleStyle({ radius, stroke: new Stroke({ color, width }) }) });
}
