import type { PlanPoint } from '../../plan/planFile';
import type { Area } from '../../service/answers';
import { turned } from './turned';

/** Where an engine stands and which way its exhaust blows. */
export interface Pose {
  readonly place: PlanPoint;
  readonly headingDegrees: number;
}

/** An area fixed to an engine, carried along as the engine goes from one pose to another. */
export function movedZone(area: Area, from: Pose, to: Pose): Area {
  const degrees = to.headingDegrees - from.headingDegrees;
  const right = to.place[0] - from.place[0];
  const up = to.place[1] - from.place[1];
  const carried = (point: PlanPoint): PlanPoint => {
    const [x, y] = degrees === 0 ? point : turned(point, from.place, degrees);
    return [x + right, y + up];
  };
  return area.map((rings) => rings.map((ring) => ring.map(carried)));
}
