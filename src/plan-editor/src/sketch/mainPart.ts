import type { PlanFile, PlanPoint, PlanPoints } from '../plan/planFile';
import { along } from './geometry/along';
import type { Frame } from './geometry/frame';

// Room round it for the keep-out, the handles and the names, as a share of its longer side; and for what the exhaust
// reaches first.
const roundShare = 0.12;
const leastRoundMetres = 2;
const jetMetres = 6;

/**
 * The part of the site where everything is decided: engines with the beginning of their jets, the crowd line and who
 * stands near. Neighbours may live half a kilometre off; they are left to the view of the whole site. Without any of
 * these it is the whole site.
 */
export function mainPart(plan: PlanFile): PlanPoints {
  const points = mainPoints(plan);
  return points.length < 2 ? plan.site.outline : withRoom(points);
}

/** Whether all of it, without the room round it, is in view. */
export function isMainPartSeen(plan: PlanFile, frame: Frame): boolean {
  const across = (frame.widthPixels * frame.metresPerPixel) / 2;
  const up = (frame.heightPixels * frame.metresPerPixel) / 2;
  return mainPoints(plan).every(
    ([x, y]) => Math.abs(x - frame.middle[0]) <= across && Math.abs(y - frame.middle[1]) <= up,
  );
}

function mainPoints(plan: PlanFile): PlanPoints {
  const near = (plan.people ?? []).filter(({ role }) => role !== 'neighbour');
  return [
    ...(plan.engines ?? []).flatMap(({ place, exhaustHeadingDegrees }) =>
      exhaustHeadingDegrees === undefined ? [place] : [place, along(place, exhaustHeadingDegrees, jetMetres)],
    ),
    ...(plan.crowdLine?.line ?? []),
    ...near.flatMap(({ place, area }) => area ?? (place === undefined ? [] : [place])),
  ];
}

function withRoom(points: readonly PlanPoint[]): PlanPoints {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const round = Math.max(leastRoundMetres, roundShare * Math.max(right - left, high - low));
  return [
    [left - round, low - round],
    [right + round, low - round],
    [right + round, high + round],
    [left - round, high + round],
  ];
}
