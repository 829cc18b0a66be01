import type Feature from 'ol/Feature.js';
import type { Answer } from '../../desk/desk';
import { zoneKey } from '../../desk/desk';
import type { PlanFile, PlanPoint } from '../../plan/planFile';
import type { LineStretch, Zone } from '../../service/answers';
import { movedZone } from '../geometry/movedZone';
import { crowdLineWords, tooNearInWords, uncheckedWords } from '../words';
import { isAlwaysShown } from './answerScene';
import { poseOf } from './bench';
import { engineMarks } from './engineMarks';
import { ink, paper } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { areaFeature, edgeLabels, lineFeature } from './shapes';

/** Engines and crowd line as they are now, and what was said of the line. */
export function movingScene(
  plan: PlanFile,
  checked: Answer | null,
  metresPerPixel: number,
): readonly Feature[] {
  const line = plan.crowdLine?.line ?? [];
  return [
    ...(line.length > 1 ? crowdLine(line) : []),
    ...(checked === null ? [] : badStretches(checked)),
    ...(plan.engines ?? []).flatMap((engine) => engineMarks(engine, metresPerPixel)),
  ];
}

/** Zones fixed to an engine, carried along with it before the service has said a word about the plan as it is now. */
export function uncheckedScene(
  plan: PlanFile,
  { plan: before, assessment }: Answer,
  shown: ReadonlySet<string>,
): readonly Feature[] {
  return assessment.zones
    .filter((zone) => zone.frame === 'engine' && (isAlwaysShown(zone) || shown.has(zoneKey(zone))))
    .flatMap((zone) => carried(zone, before, plan));
}

function carried(zone: Zone, before: PlanFile, now: PlanFile): readonly Feature[] {
  const from = before.engines?.find(({ id }) => id === zone.elementId);
  const to = now.engines?.find(({ id }) => id === zone.elementId);
  if (from === undefined || to === undefined) {
    return [];
  }
  const area = movedZone(zone.area, poseOf(from), poseOf(to));
  return [
    areaFeature(area, lineStyle(1.5, [7, 6])),
    ...edgeLabels(area, labelStyle(uncheckedWords, { placement: 'line' })),
  ];
}

// The strongest mark of the sheet: a rail of ink with a core of paper.
function crowdLine(line: readonly PlanPoint[]): readonly Feature[] {
  return [
    lineFeature(
      line,
      lineStyle(12, undefined, paper, 10),
      lineStyle(8, undefined, ink, 11),
      lineStyle(2, [14, 8], paper, 12),
      labelStyle(crowdLineWords, { placement: 'line', weight: 700, above: true, once: true, rank: 13 }),
    ),
  ];
}

function badStretches({ assessment: { rooms, zones } }: Answer): readonly Feature[] {
  return rooms.layout.plannedLine
    .filter((stretch) => !stretch.meetsRules)
    .map((stretch) =>
      lineFeature(
        [stretch.from, stretch.to],
        lineStyle(14, undefined, paper, 14),
        lineStyle(12, [16, 9], ink, 15),
        labelStyle(wordsOf(stretch, zones), { weight: 700, above: true, rank: 16 }),
      ),
    );
}

function wordsOf({ row, elementId, metres }: LineStretch, zones: readonly Zone[]): string {
  const setting = zones.find((z) => z.row === row && z.elementId === elementId && z.effect === 'excludes');
  return tooNearInWords(setting?.label, metres);
}
