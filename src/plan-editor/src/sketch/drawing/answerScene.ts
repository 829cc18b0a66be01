import type Feature from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Style from 'ol/style/Style.js';
import { zoneKey } from '../../desk/desk';
import type { Area, Assessment, Zone } from '../../service/answers';
import { squareMetresInside } from '../geometry/squareMetresInside';
import { hearingWords, keepOutWords, suggestedWords } from '../words';
import { hatchFill } from './hatch';
import { ink, thin } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { areaFeature, edgeLabels, lineFeature } from './shapes';
import { stopMarks } from './stopMarks';
import { zoneHatch } from './zoneHatch';

/** What the answer says about areas and where the line could stand. */
export function answerScene(
  { findings, zones, rooms: { layout } }: Assessment,
  shown: ReadonlySet<string>,
): readonly Feature[] {
  return [
    areaFeature(
      layout.publicKeepOut,
      new Style({ fill: new Fill({ color: hatchFill('keepOut') }) }),
      lineStyle(3.5, undefined, ink, 1),
    ),
    ...edgeLabels(largestOf(layout.publicKeepOut), alongEdge(keepOutWords, 5, 700)),
    areaFeature(layout.hearingArea, lineStyle(1.5, [9, 6])),
    ...edgeLabels(layout.hearingArea, alongEdge(hearingWords, 3)),
    ...zones.filter((zone) => isAlwaysShown(zone) && !shown.has(zoneKey(zone))).flatMap(outlined),
    ...zones.filter((zone) => shown.has(zoneKey(zone))).flatMap(hatched),
    lineFeature(layout.suggestedLine, lineStyle(1.5, [12, 3, 2, 3]), alongEdge(suggestedWords, 2)),
    ...stopMarks(findings),
  ];
}

/** Whether a zone is on the plan without being asked for: it keeps somebody out. */
export function isAlwaysShown(zone: Zone): boolean {
  return zone.effect === 'excludes';
}

// A keep-out round a fuel can is too small for the label and says what it is by the can.
function largestOf(area: Area): Area {
  const size = ([shell]: Area[number]) => (shell === undefined ? 0 : squareMetresInside(shell));
  return [...area].sort((a, b) => size(b) - size(a)).slice(0, 1);
}

function outlined(zone: Zone): readonly Feature[] {
  return [
    areaFeature(zone.area, lineStyle(1, undefined, thin)),
    ...edgeLabels(zone.area, alongEdge(zone.label ?? '', 1)),
  ];
}

function hatched(zone: Zone): readonly Feature[] {
  const fill = new Fill({ color: hatchFill(zoneHatch(zone.row)) });
  return [
    areaFeature(zone.area, new Style({ fill }), lineStyle(2)),
    ...edgeLabels(zone.area, alongEdge(zone.label ?? '', 4, 700)),
  ];
}

function alongEdge(text: string, rank: number, weight: 400 | 700 = 400): Style {
  return labelStyle(text, { placement: 'line', weight, rank });
}
