import { useSignal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import { movedEngine, turnedEngine } from '../plan/edits';
import { shortNameOf } from '../plan/names';
import type { Engine, PlanPoint } from '../plan/planFile';
import { NumberField } from './NumberField';
import { headingRange, placeRange } from './ranges';

interface Props {
  readonly desk: Desk;
  readonly engine: Engine;
}

const stepsMetres = [0.1, 0.5, 2] as const;
const turnDegrees = 5;

/** Where one engine stands and where its exhaust blows to. */
export function EngineNumbers({ desk, engine }: Props) {
  const step = useSignal<number>(0.5);
  const plan = desk.settled.value;
  const name = plan === null ? engine.id : shortNameOf(plan, engine.id);
  const [x, y] = engine.place;
  const heading = engine.exhaustHeadingDegrees;
  const move = (to: PlanPoint) => desk.change(`Move ${name}`, movedEngine(engine.id, to));
  const turn = (to: number) => desk.change(`Turn ${name}`, turnedEngine(engine.id, to));
  const nudge = (dx: number, dy: number) => move([x + dx * step.value, y + dy * step.value]);
  return (
    <section aria-labelledby="engine-numbers">
      <h3 id="engine-numbers">{engine.name ?? engine.id}</h3>
      <div class="numbers">
        <NumberField {...placeRange('x')} value={x} digits={3} onEnter={(to) => move([to, y])} />
        <NumberField {...placeRange('y')} value={y} digits={3} onEnter={(to) => move([x, to])} />
        <NumberField {...headingRange} value={heading ?? 0} digits={1} onEnter={turn} />
      </div>
      {heading === undefined && <p>Nobody has stated yet where the exhaust blows to.</p>}
      <fieldset class="choice" aria-label="Step of the buttons">
        {stepsMetres.map((metres) => (
          <label key={metres}>
            <input
              type="radio"
              name="step"
              checked={step.value === metres}
              onChange={() => {
                step.value = metres;
              }}
            />
            <span>{metres} m</span>
          </label>
        ))}
      </fieldset>
      <div class="nudges">
        <button type="button" class="nudge-up" onClick={() => nudge(0, 1)}>
          Up
        </button>
        <button type="button" class="nudge-left" onClick={() => nudge(-1, 0)}>
          Left
        </button>
        <button type="button" class="nudge-right" onClick={() => nudge(1, 0)}>
          Right
        </button>
        <button type="button" class="nudge-down" onClick={() => nudge(0, -1)}>
          Down
        </button>
        <button type="button" class="nudge-anti" onClick={() => turn((heading ?? 0) - turnDegrees)}>
          Turn −{turnDegrees}°
        </button>
        <button type="button" class="nudge-clock" onClick={() => turn((heading ?? 0) + turnDegrees)}>
          Turn +{turnDegrees}°
        </button>
      </div>
    </section>
  );
}
