import { type ReadonlySignal, useSignal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import type { PlanPoint } from '../plan/planFile';
import type { PlaceAnswer } from '../service/answers';
import { type Listener, type SpotAnswer, wordsFor } from './spotAnswer';

interface Props {
  readonly desk: Desk;
  readonly spot: ReadonlySignal<SpotAnswer>;
}

const listeners: readonly { readonly id: Listener; readonly label: string }[] = [
  { id: 'visitor', label: 'Visitor' },
  { id: 'child', label: 'Child' },
  { id: 'crew', label: 'Crew' },
];

/** What holds where the plan was tapped. */
export function Spot({ desk, spot }: Props) {
  const state = spot.value;
  if (state.kind === 'none') {
    return (
      <p>
        Tap anywhere on the plan to see how loud it is there, how long one may stay, what to wear, and why.
      </p>
    );
  }
  return (
    <>
      <p class="place">
        {placeInWords(state.place)}
        <button type="button" class="plain" onClick={() => desk.ask(null)}>
          Clear the spot
        </button>
      </p>
      {state.kind === 'asking' && <p role="status">Working it out …</p>}
      {state.kind === 'trouble' && (
        <p role="alert">
          {state.why}{' '}
          <button type="button" class="plain" onClick={() => desk.ask([...state.place])}>
            Try again
          </button>
        </p>
      )}
      {state.kind === 'known' && <Holds answer={state.answer} />}
    </>
  );
}

function Holds({ answer }: { readonly answer: PlaceAnswer }) {
  const who = useSignal<Listener>('visitor');
  const words = wordsFor(answer, who.value);
  return (
    <>
      <fieldset class="choice" aria-label="For whom">
        {listeners.map(({ id, label }) => (
          <label key={id}>
            <input
              type="radio"
              name="listener"
              checked={who.value === id}
              onChange={() => {
                who.value = id;
              }}
            />
            <span>{label}</span>
          </label>
        ))}
      </fieldset>
      <dl class="facts">
        <dt>How loud</dt>
        <dd>{words.loud}</dd>
        <dt>Stay</dt>
        <dd>{words.stay}</dd>
        <dt>Wear</dt>
        <dd>{words.wear}</dd>
        <dt>Why</dt>
        <dd>{words.why}</dd>
      </dl>
      <Ways answer={answer} />
    </>
  );
}

/** How the sound gets there, the loudest way first: the same for everybody. */
function Ways({ answer: { loudest } }: { readonly answer: PlaceAnswer }) {
  if (loudest === undefined) {
    return null;
  }
  return (
    <details class="fold ways">
      <summary>How the sound gets there</summary>
      <p>Best estimates at the loudest moment. As energies they add up to the level.</p>
      <ul>
        {loudest.parts.map(({ sentence }) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </details>
  );
}

function placeInWords([x, y]: PlanPoint): string {
  return `Spot at x ${x.toFixed(1)} m, y ${y.toFixed(1)} m`;
}
