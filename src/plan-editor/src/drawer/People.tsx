import type { Assessment, PersonEntry } from '../service/answers';
import type { DrawerState } from './drawerState';

interface Props {
  readonly assessment: Assessment;
  readonly drawer: DrawerState;
}

/** Everybody the plan names: how loud it is for them, what they wear, how long they may stay. */
export function People({ assessment, drawer }: Props) {
  if (assessment.people.length === 0) {
    return <p>The plan names nobody. Without people it can’t be told for whom it is too loud.</p>;
  }
  return (
    <ul class="cards" aria-label="People">
      {assessment.people.map((person) => (
        <Person key={`${person.groupId}/${person.part}`} person={person} drawer={drawer} />
      ))}
    </ul>
  );
}

function Person({ person, drawer }: { readonly person: PersonEntry; readonly drawer: DrawerState }) {
  return (
    <li class="card">
      <h3>
        {person.name} <span class="minor">{person.part}</span>
      </h3>
      <p>{person.sentence}</p>
      <dl class="facts">
        <dt>Wear</dt>
        <dd>{person.wear}</dd>
        <dt>Stay</dt>
        <dd>{person.stay}</dd>
      </dl>
      <button
        type="button"
        class="plain"
        onClick={() => drawer.point({ elementId: person.groupId, place: person.place })}
      >
        Show on the plan<span class="unseen">: {person.name}</span>
      </button>
    </li>
  );
}
