import type { Engine, PlanPoint } from '../../plan/planFile';
import { along } from '../geometry/along';
import type { Pose } from '../geometry/movedZone';

// Drawn where the plan states no size, as in the brief's site plan: about what one person carries.
const unstatedLengthMetres = 1;
const unstatedWidthMetres = 0.6;
const leastLengthPixels = 34;
const leastWidthPixels = 20;
/** From the nozzle to the handle that turns the engine. */
const armPixels = 66;

/** Where an engine's bench is drawn. The engine's place is its nozzle, in the middle of the bench's front edge. */
export interface Bench {
  readonly corners: readonly PlanPoint[];
  readonly middle: PlanPoint;
  readonly armEnd: PlanPoint;
  readonly lengthMetres: number;
}

export function poseOf({ place, exhaustHeadingDegrees = 0 }: Engine): Pose {
  return { place, headingDegrees: exhaustHeadingDegrees };
}

/** True to scale, but never smaller than can be seen and touched. */
export function benchOf(engine: Engine, metresPerPixel: number): Bench {
  const { place, headingDegrees } = poseOf(engine);
  const { lengthMetres, widthMetres } = sizeOf(engine);
  const length = Math.max(lengthMetres, leastLengthPixels * metresPerPixel);
  const half = Math.max(widthMetres, leastWidthPixels * metresPerPixel) / 2;
  const back = along(place, headingDegrees, -length);
  return {
    corners: [
      along(place, headingDegrees + 90, half),
      along(place, headingDegrees - 90, half),
      along(back, headingDegrees - 90, half),
      along(back, headingDegrees + 90, half),
    ],
    middle: along(place, headingDegrees, -length / 2),
    armEnd: along(place, headingDegrees, armPixels * metresPerPixel),
    lengthMetres: length,
  };
}

function sizeOf({ bench }: Engine): { readonly lengthMetres: number; readonly widthMetres: number } {
  return {
    lengthMetres: bench?.lengthMetres?.value ?? unstatedLengthMetres,
    widthMetres: bench?.widthMetres?.value ?? unstatedWidthMetres,
  };
}
