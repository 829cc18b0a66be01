import type Feature from 'ol/Feature.js';
import type Style from 'ol/style/Style.js';
import type { Answer } from '../../desk/desk';
import { zoneKey } from '../../desk/desk';
import type { Engine, PlanFile, PlanPoint } from '../../plan/planFile';
import type { Area, LineStretch, Zone } from '../../service/answers';
import { movedZone } from '../geometry/movedZone';
import { crowdLineWords, tooNearInWords, uncheckedWords } from '../words';
import { isAlwaysShown } from './answerScene';
import { poseOf } from './bench';
import { engineMarks, nameObstacles } from './engineMarks';
import { ink, paper } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { areaFeature, lineFeature, placeFeature } from './shapes';

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

/** The moving sheet's labels as obstacles to those of the still one, which knows nothing of what moves above it. */
export function obstacles(said: Answer): readonly Feature[] {
  const { plan, assessment } = said;
  const line = plan.crowdLine?.line ?? [];
  return [
    ...nameObstacles(plan),
    ...(line.length > 1 ? [lineFeature(line, lineLabel(true))] : []),
    ...assessment.rooms.layout.plannedLine
      .filter((stretch) => !stretch.meetsRules)
      .map((stretch) => tooNear(stretch, assessment.zones, true)),
  ];
}

/** Zones fixed to an engine, carried along with it before the service has said a word about the plan as it is now. */
export function uncheckedScene(
  plan: PlanFile,
  { plan: before, assessment }: Answer,
  shown: ReadonlySet<string>,
): readonly Feature[] {
  const zones = assessment.zones.filter(
    (zone) => zone.frame === 'engine' && (isAlwaysShown(zone) || shown.has(zoneKey(zone))),
  );
  return (plan.engines ?? []).flatMap((to) => {
    const from = before.engines?.find(({ id }) => id === to.id);
    const areas = zones.filter(({ elementId }) => elementId === to.id).map(({ area }) => area);
    return from === undefined ? [] : carried(areas, from, to);
  });
}

// One mark for all zones of an engine, with the words once: this is drawn anew with every movement of a finger.
function carried(areas: readonly Area[], from: Engine, to: Engine): readonly Feature[] {
  const area = movedZone(areas.flat(), poseOf(from), poseOf(to));
  return area.length === 0
    ? []
    : [
        areaFeature(area, lineStyle(1.5, [7, 6])),
        placeFeature(to.place, labelStyle(uncheckedWords, { weight: 700, aside: true, always: true })),
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
      lineLabel(),
    ),
  ];
}

function badStretches({ assessment: { rooms, zones } }: Answer): readonly Feature[] {
  return rooms.layout.plannedLine
    .filter((stretch) => !stretch.meetsRules)
    .flatMap((stretch) => [
      lineFeature(
        [stretch.from, stretch.to],
        lineStyle(14, undefined, paper, 14),
        lineStyle(12, [16, 9], ink, 15),
      ),
      tooNear(stretch, zones),
    ]);
}

// Above the upper end of the stretch, where no handle covers the words.
function tooNear(stretch: LineStretch, zones: readonly Zone[], unseen = false): Feature {
  const { from, to, row, elementId, metres } = stretch;
  const setting = zones.find((z) => z.row === row && z.elementId === elementId && z.effect === 'excludes');
  const words = tooNearInWords(setting?.label, metres);
  return placeFeature(
    [(from[0] + to[0]) / 2, Math.max(from[1], to[1])],
    labelStyle(words, { weight: 700, above: true, rank: 16, unseen, always: true }),
  );
}

function lineLabel(unseen = false): Style {
  return labelStyle(crowdLineWords, {
    placement: 'line',
    weight: 700,
    above: true,
    once: true,
    rank: 13,
    unseen,
  });
}
