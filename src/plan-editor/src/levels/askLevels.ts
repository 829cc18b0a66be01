import type { PlanFile } from '../plan/planFile';
import { isAbort } from '../service/httpService';
import { refusalOf, silence } from '../service/refusal';
import { type LevelGrid, type LevelWindow, readLevels } from './levelGrid';

/** Asks for a grid of levels; null when the level can't be told. */
export type AskLevels = (
  plan: PlanFile,
  window: LevelWindow,
  signal: AbortSignal,
) => Promise<LevelGrid | null>;

/** Asks the service. Throws a `Refusal` when it would not or does not answer. */
export const askLevels: AskLevels = async (plan, window, signal) => {
  const response = await fetch('/api/levels', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ plan, window }),
    signal,
  }).catch((thrown: unknown) => {
    throw isAbort(thrown) ? thrown : silence();
  });
  if (!response.ok) {
    throw await refusalOf(response);
  }
  return readLevels(await response.arrayBuffer());
};
