import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import type { PlanFile, PlanPoint } from '../plan/planFile';
import type { PlaceAnswer, PlaceWords } from '../service/answers';
import { isAbort } from '../service/httpService';
import { reasonOf } from '../service/refusal';
import type { Service } from '../service/service';

/** What is known about the tapped spot. */
export type SpotAnswer =
  | { readonly kind: 'none' }
  | { readonly kind: 'asking'; readonly place: PlanPoint }
  | { readonly kind: 'known'; readonly place: PlanPoint; readonly answer: PlaceAnswer }
  | { readonly kind: 'trouble'; readonly place: PlanPoint; readonly why: string };

/** Asks about the tapped spot, anew when the plan has changed and come to rest. */
export function watchSpot(
  desk: Pick<Desk, 'spot' | 'settled'>,
  service: Pick<Service, 'askPlace'>,
): ReadonlySignal<SpotAnswer> {
  const state = signal<SpotAnswer>({ kind: 'none' });
  effect(() => {
    const place = desk.spot.value;
    const plan = desk.settled.value;
    if (place === null || plan === null) {
      state.value = { kind: 'none' };
      return;
    }
    const abort = new AbortController();
    state.value = { kind: 'asking', place };
    void askSpot(service, plan, place, abort.signal).then((answer) => {
      if (answer !== null && !abort.signal.aborted) {
        state.value = answer;
      }
    });
    return () => abort.abort();
  });
  return state;
}

async function askSpot(
  service: Pick<Service, 'askPlace'>,
  plan: PlanFile,
  place: PlanPoint,
  signal: AbortSignal,
): Promise<SpotAnswer | null> {
  try {
    return { kind: 'known', place, answer: await service.askPlace(plan, place, signal) };
  } catch (thrown) {
    return isAbort(thrown) ? null : { kind: 'trouble', place, why: reasonOf(thrown) };
  }
}

export type Listener = 'visitor' | 'child' | 'crew';

/** The sentences for somebody: those for a visitor, with what is different for them put in. */
export function wordsFor(answer: PlaceAnswer, who: Listener): PlaceWords {
  const own = who === 'child' ? answer.forChild : who === 'crew' ? answer.forCrew : {};
  return {
    loud: own.loud ?? answer.loud,
    stay: own.stay ?? answer.stay,
    wear: own.wear ?? answer.wear,
    why: own.why ?? answer.why,
  };
}
