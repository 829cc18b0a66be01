import type Feature from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import type { PlanFile } from '../../plan/planFile';
import { elementsOf, type PlanElement } from '../elements';
import { hatchFill } from './hatch';
import { ground, ink, paper, thin } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { lineFeature, outlineFeature, scaledPlaceFeature } from './shapes';
import { type SymbolKind, symbolStyle } from './symbols';

/** The bare ground, under everything. */
export function siteScene({ site }: PlanFile): readonly Feature[] {
  return [
    outlineFeature(site.outline, new Style({ fill: new Fill({ color: paper }) })),
    ...(site.groundPatches ?? []).map(({ outline }) =>
      outlineFeature(outline, new Style({ fill: new Fill({ color: ground }) })),
    ),
  ];
}

/** What stands on the site, without engines and crowd line: it stays as it is while one of those is moved. */
export function groundScene(plan: PlanFile): readonly Feature[] {
  return [outlineFeature(plan.site.outline, lineStyle(2)), ...elementsOf(plan).map(drawn)];
}

function drawn(element: PlanElement): Feature {
  const label = labelStyle(element.name, { beside: element.shape === 'place' });
  switch (element.shape) {
    case 'place':
      return scaledPlaceFeature(element.points[0] ?? [0, 0], (metresPerPixel) => [
        symbolStyle(element.kind as SymbolKind, metresPerPixel),
        label,
      ]);
    case 'line':
      return lineFeature(element.points, ...lineLook(element.kind), label);
    case 'outline':
      return outlineFeature(element.points, outlineLook(element.kind), label);
  }
}

// A debris screen is a sheet of metal: the heavier line, with a core of paper.
function lineLook(kind: PlanElement['kind']): readonly Style[] {
  return kind === 'debrisScreen' ? [lineStyle(7), lineStyle(2, undefined, paper, 1)] : [lineStyle(4)];
}

function outlineLook(kind: PlanElement['kind']): Style {
  switch (kind) {
    case 'groundPatch':
      return area('transparent', thin, 1, [1, 4]);
    case 'enclosure':
      return area('transparent', ink, 3);
    case 'peopleArea':
      return area('rgba(21, 32, 43, 0.07)', ink, 1.5, [2, 4]);
    case 'burnable':
      return area(hatchFill('fuel'), ink, 1.5);
    default:
      return area(hatchFill('stand'), ink, 1.5);
  }
}

function area(fill: CanvasPattern | string, color: string, width: number, dash: number[] = []): Style {
  return new Style({ fill: new Fill({ color: fill }), stroke: new Stroke({ color, width, lineDash: dash }) });
}
