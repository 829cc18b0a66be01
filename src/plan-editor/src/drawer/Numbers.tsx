import { useSignal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import { LayButton } from '../line/LayButton';
import { movedLineCorner } from '../plan/edits';
import type { PlanPoint } from '../plan/planFile';
import { EngineNumbers } from './EngineNumbers';
import { NumberField } from './NumberField';
import { placeRange } from './ranges';

/** Everything that can be dragged on the plan, by number and by button. */
export function Numbers({ desk }: { readonly desk: Desk }) {
  const plan = desk.settled.value;
  if (plan === null) {
    return null;
  }
  const engines = plan.engines ?? [];
  const engine = engines.find(({ id }) => id === desk.chosen.value) ?? engines[0];
  return (
    <>
      {engines.length > 1 && (
        <label class="field">
          <span>Engine</span>
          <select value={engine?.id} onChange={(event) => desk.choose(event.currentTarget.value)}>
            {engines.map(({ id, name }) => (
              <option key={id} value={id}>
                {name ?? id}
              </option>
            ))}
          </select>
        </label>
      )}
      {engine === undefined ? (
        <p>The plan has no engine yet.</p>
      ) : (
        <EngineNumbers key={engine.id} desk={desk} engine={engine} />
      )}
      <LineNumbers desk={desk} />
    </>
  );
}

function LineNumbers({ desk }: { readonly desk: Desk }) {
  const line = desk.settled.value?.crowdLine?.line ?? [];
  const suggested = desk.answer.value?.assessment.rooms.layout.suggestedLine ?? [];
  const openCorner = useSignal<number | null>(null);
  return (
    <section aria-labelledby="line-numbers">
      <h3 id="line-numbers">Crowd line</h3>
      {line.length === 0 && <p>The plan has no crowd line yet.</p>}
      <ol class="corners" aria-label="Corners of the crowd line">
        {line.map((place, corner) => (
          <li key={corner}>
            <Corner
              desk={desk}
              corner={corner}
              place={place}
              open={openCorner.value === corner}
              onOpen={(open) => {
                openCorner.value = open ? corner : null;
              }}
            />
          </li>
        ))}
      </ol>
      {suggested.length > 1 && <LayButton desk={desk} line={suggested} />}
    </section>
  );
}

interface CornerProps {
  readonly desk: Desk;
  readonly corner: number;
  readonly place: PlanPoint;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

function Corner({ desk, corner, place: [x, y], open, onOpen }: CornerProps) {
  const moved = (to: PlanPoint) =>
    desk.change(`Move corner ${corner + 1} of the crowd line`, movedLineCorner(corner, to));
  return (
    <>
      <button type="button" class="plain" aria-expanded={open} onClick={() => onOpen(!open)}>
        Corner {corner + 1}: x {x.toFixed(1)} m, y {y.toFixed(1)} m
      </button>
      {open && (
        <div class="numbers">
          <NumberField {...placeRange('x')} value={x} digits={3} onEnter={(to) => moved([to, y])} />
          <NumberField {...placeRange('y')} value={y} digits={3} onEnter={(to) => moved([x, to])} />
        </div>
      )}
    </>
  );
}
