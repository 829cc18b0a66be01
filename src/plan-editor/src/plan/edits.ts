import type { Edit } from '../desk/desk';
import type { Engine, PlanFile, PlanPoint, PlanPoints } from './planFile';

/** The named engine stands at another place. */
export function movedEngine(id: string, place: PlanPoint): Edit {
  return withEngine(id, (engine) => ({ ...engine, place: toMillimetre(place) }));
}

/** The named engine's exhaust blows another way, in degrees clockwise from the plan's up direction. */
export function turnedEngine(id: string, degrees: number): Edit {
  const tenths = Math.round(degrees * 10) % 3600;
  const exhaustHeadingDegrees = ((tenths + 3600) % 3600) / 10;
  return withEngine(id, (engine) => ({ ...engine, exhaustHeadingDegrees }));
}

/** One corner of the crowd line, counted from 0, stands at another place. */
export function movedLineCorner(corner: number, place: PlanPoint): Edit {
  return (plan) =>
    plan.crowdLine === undefined
      ? plan
      : {
          ...plan,
          crowdLine: {
            ...plan.crowdLine,
            line: plan.crowdLine.line.map((at, i) => (i === corner ? toMillimetre(place) : at)),
          },
        };
}

/** The crowd line runs along other places; its panels stay as they are. */
export function laidLine(line: PlanPoints): Edit {
  return (plan) => ({ ...plan, crowdLine: { ...plan.crowdLine, line: line.map(toMillimetre) } });
}

/** The plan has another title. */
export function retitled(title: string): Edit {
  return (plan) => ({ ...plan, title });
}

function withEngine(id: string, edit: (engine: Engine) => Engine): Edit {
  return (plan: PlanFile) =>
    plan.engines === undefined
      ? plan
      : { ...plan, engines: plan.engines.map((engine) => (engine.id === id ? edit(engine) : engine)) };
}

// The plan is read and written to the millimetre: a tape is no finer, and equal plans must look equal.
function toMillimetre([x, y]: PlanPoint): PlanPoint {
  return [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000];
}
