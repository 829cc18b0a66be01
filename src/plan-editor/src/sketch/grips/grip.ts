import type { Edit } from '../../desk/desk';
import { movedEngine, movedLineCorner, turnedEngine } from '../../plan/edits';
import type { Engine, PlanFile, PlanPoint, PlanPoints } from '../../plan/planFile';
import { benchOf, poseOf } from '../drawing/bench';
import { distanceMetres } from '../geometry/distance';
import { headingDegrees } from '../geometry/heading';
import { crowdLineWords, placeInWords, shortNameOf } from '../words';
import type { KeyStep } from './keyStep';

/** The id under which the crowd line is chosen. */
export const crowdLineId = 'crowdLine';

const touchPixels = 44;
const leastTouchPixels = 24;
const moveLineWords = `Move ${crowdLineWords.toLowerCase()}`;

/** Something on the plan that can be taken hold of. */
export interface Grip {
  readonly key: string;
  readonly kind: 'engine' | 'turn' | 'corner';
  readonly elementId: string;
  /** Name of the change for undo. */
  readonly change: string;
  /** Said by a screen reader. */
  readonly label: string;
  readonly at: PlanPoint;
  readonly sizePixels: number;
  /** The change when a finger that took hold at one place is now at another. */
  drag(from: PlanPoint, to: PlanPoint): Edit;
  /** Name of a change made by keys. */
  changeByKeys(first: KeyStep): string;
  /** The change after keys that add up to this; null when such keys do nothing here. */
  press(total: KeyStep): Edit | null;
}

/** All that can be taken hold of, later ones above earlier ones. */
export function gripsOf(plan: PlanFile, metresPerPixel: number): readonly Grip[] {
  return [
    ...(plan.crowdLine?.line ?? []).map((corner, index, line) =>
      cornerGrip(corner, index, cornerPixels(line, index, metresPerPixel)),
    ),
    ...(plan.engines ?? []).flatMap((engine) => [
      engineGrip(engine, metresPerPixel),
      turnGrip(engine, metresPerPixel),
    ]),
  ];
}

function engineGrip(engine: Engine, metresPerPixel: number): Grip {
  const { id, place } = engine;
  const { middle, lengthMetres } = benchOf(engine, metresPerPixel);
  const moved = (right: number, up: number) => movedEngine(id, [place[0] + right, place[1] + up]);
  return {
    key: `engine ${id}`,
    kind: 'engine',
    elementId: id,
    change: `Move ${shortNameOf(engine)}`,
    label: `${nameOf(engine)}, exhaust heading ${headingInWords(engine)}, at ${placeInWords(place)}`,
    at: middle,
    sizePixels: Math.max(touchPixels, lengthMetres / metresPerPixel),
    drag: (from, to) => moved(to[0] - from[0], to[1] - from[1]),
    changeByKeys: ({ turnDegrees }) => `${turnDegrees === 0 ? 'Move' : 'Turn'} ${shortNameOf(engine)}`,
    press: ({ rightMetres, upMetres, turnDegrees }) => {
      const shifted = moved(rightMetres, upMetres);
      const turned = turnedBy(engine, turnDegrees);
      return turnDegrees === 0 ? shifted : (plan) => turned(shifted(plan));
    },
  };
}

function turnGrip(engine: Engine, metresPerPixel: number): Grip {
  const { place } = engine;
  return {
    key: `turn ${engine.id}`,
    kind: 'turn',
    elementId: engine.id,
    change: `Turn ${shortNameOf(engine)}`,
    label: `Turn ${nameOf(engine)}, exhaust heading ${headingInWords(engine)}`,
    at: benchOf(engine, metresPerPixel).armEnd,
    sizePixels: touchPixels,
    drag: (from, to) => turnedBy(engine, headingDegrees(place, to) - headingDegrees(place, from)),
    changeByKeys: () => `Turn ${shortNameOf(engine)}`,
    // Right and up turn clockwise, one degree for a decimetre key.
    press: ({ rightMetres, upMetres, turnDegrees }) =>
      turnedBy(engine, turnDegrees + 10 * (rightMetres + upMetres)),
  };
}

// Corners that lie close make room for one another, down to the least target of WCAG 2.2 (2.5.8); closer up they grow.
function cornerPixels(line: PlanPoints, index: number, metresPerPixel: number): number {
  const at = line[index];
  const gaps = line
    .filter((other) => other !== at)
    .map((other) => distanceMetres(other, at ?? other) / metresPerPixel);
  return Math.min(touchPixels, Math.max(leastTouchPixels, ...[Math.min(...gaps)].filter(Number.isFinite)));
}

function cornerGrip(corner: PlanPoint, index: number, sizePixels: number): Grip {
  const moved = (right: number, up: number) => movedLineCorner(index, [corner[0] + right, corner[1] + up]);
  return {
    key: `corner ${index}`,
    kind: 'corner',
    elementId: crowdLineId,
    change: moveLineWords,
    label: `${crowdLineWords}, corner ${index + 1}, at ${placeInWords(corner)}`,
    at: corner,
    sizePixels,
    drag: (from, to) => moved(to[0] - from[0], to[1] - from[1]),
    changeByKeys: () => moveLineWords,
    press: ({ rightMetres, upMetres }) =>
      rightMetres === 0 && upMetres === 0 ? null : moved(rightMetres, upMetres),
  };
}

function turnedBy(engine: Engine, degrees: number): Edit {
  return turnedEngine(engine.id, poseOf(engine).headingDegrees + degrees);
}

function nameOf({ name, id }: Engine): string {
  return name ?? id;
}

function headingInWords(engine: Engine): string {
  return `${poseOf(engine).headingDegrees}°`;
}
