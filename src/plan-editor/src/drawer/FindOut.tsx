import type { ReadonlySignal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import { nameOf } from '../plan/names';
import type { DrawerState } from './drawerState';
import { ExampleValues } from './ExampleValues';
import { costInWords, type FindOutList, howInWords } from './findOutList';

interface Props {
  readonly desk: Desk;
  readonly list: ReadonlySignal<FindOutList | null>;
  readonly drawer: DrawerState;
}

/** What is missing or unsure, what that costs, and how to find it out. */
export function FindOut({ desk, drawer, list: watched }: Props) {
  const list = watched.value;
  const plan = desk.settled.value;
  if (list === null || plan === null) {
    return <p>The list is being worked out …</p>;
  }
  return (
    <>
      {list.old && (
        <p class="minor">This list is of the plan before the last change; the new one is being worked out.</p>
      )}
      <ExampleValues plan={plan} />
      {list.items.length === 0 && <p>Nothing is missing that the plan asks for.</p>}
      <ol class="cards" aria-label="Find out">
        {list.items.map((item) => (
          <li key={`${item.field}/${item.elementId}`} class="card" data-cost={item.cost}>
            <h3>{capitalised(item.meaning)}</h3>
            <p>
              {item.elementId !== undefined && <span>{nameOf(plan, item.elementId)}. </span>}
              {howInWords(item.how)}
            </p>
            <p class="price">{costInWords(item)}</p>
            {item.elementId !== undefined && (
              <button type="button" class="plain" onClick={() => drawer.point({ elementId: item.elementId })}>
                Show on the plan<span class="unseen">: {item.meaning}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
      <p class="minor">
        Numbers go into the plan file, each with where it comes from: save it from Plans, fill it in, open it
        again.
      </p>
    </>
  );
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
