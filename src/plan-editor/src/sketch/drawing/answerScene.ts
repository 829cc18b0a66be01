import type Feature from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Style from 'ol/style/Style.js';
import { zoneKey } from '../../desk/desk';
import type { Assessment, Zone } from '../../service/answers';
import { hearingWords, keepOutWords, suggestedWords } from '../words';
import { hatchFill } from './hatch';
import { thin } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { areaFeature, lineFeature } from './shapes';
import { zoneHatch } from './zoneHatch';

/** What the answer says about areas and where the line could stand. */
export function answerScene(
  { zones, rooms: { layout } }: Assessment,
  shown: ReadonlySet<string>,
): readonly Feature[] {
  const alongEdge = { placement: 'line' as const };
  return [
    areaFeature(
      layout.publicKeepOut,
      new Style({ fill: new Fill({ color: hatchFill('keepOut') }) }),
      lineStyle(3.5),
      labelStyle(keepOutWords, { ...alongEdge, weight: 700, rank: 3 }),
    ),
    areaFeature(
      layout.hearingArea,
      lineStyle(1.5, [9, 6]),
      labelStyle(hearingWords, { ...alongEdge, rank: 2 }),
    ),
    ...zones.filter((zone) => isAlwaysShown(zone) && !shown.has(zoneKey(zone))).map(outlined),
    ...zones.filter((zone) => shown.has(zoneKey(zone))).map(hatched),
    lineFeature(
      layout.suggestedLine,
      lineStyle(1.5, [12, 3, 2, 3]),
      labelStyle(suggestedWords, { ...alongEdge, rank: 2 }),
    ),
  ];
}

/** Whether a zone is on the plan without being asked for: it keeps somebody out. */
export function isAlwaysShown(zone: Zone): boolean {
  return zone.effect === 'excludes';
}

function outlined(zone: Zone): Feature {
  return areaFeature(
    zone.area,
    lineStyle(1, undefined, thin),
    labelStyle(zone.label ?? '', { placement: 'line', sizePixels: 13, rank: 1 }),
  );
}

function hatched(zone: Zone): Feature {
  return areaFeature(
    zone.area,
    new Style({ fill: new Fill({ color: hatchFill(zoneHatch(zone.row)) }) }),
    lineStyle(2),
    labelStyle(zone.label ?? '', { placement: 'line', weight: 700, rank: 4 }),
  );
}
