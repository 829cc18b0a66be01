import type { PlanFile, PlanPoint } from '../plan/planFile';
import { elementsOf, middleOf } from './elements';
import { crowdLineId } from './grips/grip';

/** Where a named element is on the plan, or null where nothing of that name is drawn. */
export function placeOf(plan: PlanFile, id: string): PlanPoint | null {
  const engine = plan.engines?.find((e) => e.id === id);
  const element = elementsOf(plan).find((e) => e.id === id);
  const line = id === crowdLineId ? plan.crowdLine?.line : undefined;
  return engine?.place ?? (element === undefined ? (line?.[0] ?? null) : middleOf(element));
}
