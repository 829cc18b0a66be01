import type { PlanPoint } from '../plan/planFile';
import type { PlanElement } from './elements';
import { distanceMetres } from './geometry/distance';
import { distanceToPathMetres } from './geometry/distanceToPath';
import { isInside } from './geometry/isInside';
import { squareMetresInside } from './geometry/squareMetresInside';

// Large areas are touched at their edge: inside them a tap asks about the place itself.
const onlyByEdge: ReadonlySet<PlanElement['kind']> = new Set(['groundPatch', 'enclosure', 'peopleArea']);

/** The element meant by a tap: the nearest place or line within reach, else the smallest outline around it, or null. */
export function elementAt(
  elements: readonly PlanElement[],
  tapped: PlanPoint,
  reachMetres: number,
): PlanElement | null {
  const near = elements
    .filter((e) => e.shape !== 'outline')
    .map((element) => ({ element, metres: distanceOf(element, tapped) }))
    .filter(({ metres }) => metres <= reachMetres)
    .sort((a, b) => a.metres - b.metres);
  if (near[0] !== undefined) {
    return near[0].element;
  }
  const around = elements
    .filter((e) => e.shape === 'outline' && isTouched(e, tapped, reachMetres))
    .sort((a, b) => squareMetresInside(a.points) - squareMetresInside(b.points));
  return around[0] ?? null;
}

function isTouched(element: PlanElement, tapped: PlanPoint, reachMetres: number): boolean {
  const first = element.points[0];
  const edge = first === undefined ? [] : [...element.points, first];
  return onlyByEdge.has(element.kind)
    ? distanceToPathMetres(tapped, edge) <= reachMetres / 2
    : isInside(tapped, element.points) || distanceToPathMetres(tapped, edge) <= reachMetres / 2;
}

function distanceOf(element: PlanElement, tapped: PlanPoint): number {
  const middle = element.points[0];
  return element.shape === 'place' && middle !== undefined
    ? distanceMetres(tapped, middle)
    : distanceToPathMetres(tapped, element.points);
}
