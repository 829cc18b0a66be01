import type Feature from 'ol/Feature.js';
import CircleStyle from 'ol/style/Circle.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { PlanFile, PlanPoint } from '../../plan/planFile';
import { elementsOf, type PlanElement } from '../elements';
import { askedWords } from '../words';
import { ink, paper } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { lineFeature, outlineFeature, placeFeature } from './shapes';

const chosenRadiusPixels = 19;

/** What is chosen and where somebody asked. */
export function markScene(plan: PlanFile, chosen: string | null, spot: PlanPoint | null): readonly Feature[] {
  return [
    ...elementsOf(plan)
      .filter(({ id }) => id === chosen)
      .map(rimmed),
    ...(spot === null ? [] : [placeFeature(spot, ...askedLook())]),
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

function askedLook(): readonly Style[] {
  const dot = new Style({ image: new CircleStyle({ radius: 3.5, fill: new Fill({ color: ink }) }) });
  return [ring(13, 7, paper), ring(13, 3, ink), dot, labelStyle(askedWords, { beside: true, weight: 700 })];
}

function ring(radius: number, width: number, color: string): Style {
  return new Style({ image: new CircleStyle({ radius, stroke: new Stroke({ color, width }) }) });
}
