import type { PlanFile } from '../plan/planFile';
import type { Service } from '../service/service';
import { type LevelGrid, type LevelWindow, readLevels } from './levelGrid';

/** Asks for a grid of levels; null when the level can't be told. */
export type AskLevels = (
  plan: PlanFile,
  window: LevelWindow,
  signal: AbortSignal,
) => Promise<LevelGrid | null>;

/** Asks the service. Throws a `Refusal` when it would not or does not answer. */
export function askLevels({ levels }: Pick<Service, 'levels'>): AskLevels {
  return async (plan, window, signal) => readLevels(await levels(plan, window, signal));
}
