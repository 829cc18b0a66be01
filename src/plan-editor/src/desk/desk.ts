import type { ReadonlySignal } from '@preact/signals';
import type { PlanFile, PlanPoint } from '../plan/planFile';
import type { Assessment, Zone } from '../service/answers';

/**
 * What lies on the desk: one plan, what the service last said about it, and what has happened since. Everything the page
 * shows reads from here; everything the user does to the plan goes through `change`. There is no second way.
 */
export interface Desk {
  /** The plan as it is being drawn, a movement under way included; null until one is opened. */
  readonly plan: ReadonlySignal<PlanFile | null>;
  /** The plan without a movement under way: what undo goes back from and what is saved. */
  readonly settled: ReadonlySignal<PlanFile | null>;
  /** The last assessment that landed, and the very plan it is of. */
  readonly answer: ReadonlySignal<Answer | null>;
  /** Whether the plan has moved on since the answer: what is drawn of it is unchecked. */
  readonly unchecked: ReadonlySignal<boolean>;
  /** Why no answer came, in words, or null. */
  readonly trouble: ReadonlySignal<string | null>;
  /** Id of the element chosen on the plan or in the drawer, or null. */
  readonly chosen: ReadonlySignal<string | null>;
  /** The place tapped, or null. */
  readonly spot: ReadonlySignal<PlanPoint | null>;
  /** Keys (`zoneKey`) of the areas switched on to be shown on the plan besides what it always shows. */
  readonly shownZones: ReadonlySignal<ReadonlySet<string>>;
  /** Name of the step that undo takes back, or null when there is none. */
  readonly undoName: ReadonlySignal<string | null>;
  /** Name of the step that redo does again, or null when there is none. */
  readonly redoName: ReadonlySignal<string | null>;

  /** Puts another plan on the desk; nothing of the one before remains. */
  open(plan: PlanFile): void;
  /** A step of a movement under way (a finger still down). Not a step of the history; asks for a quick answer. */
  move(edit: Edit): void;
  /** A finished change with its name for undo ("Move Bramble"). Ends a movement; asks for a full answer; saves. */
  change(name: string, edit: Edit): void;
  /** Gives a movement up: the plan is as before it. */
  giveUpMove(): void;
  undo(): void;
  redo(): void;
  choose(elementId: string | null): void;
  ask(spot: PlanPoint | null): void;
  showZone(key: string, on: boolean): void;
  /** Asks again after trouble. */
  askAgain(): void;
}

/** A pure change of a plan. During a movement it is applied to the plan as it was when the movement began. */
export type Edit = (plan: PlanFile) => PlanFile;

export interface Answer {
  readonly plan: PlanFile;
  readonly assessment: Assessment;
}

/** Names a zone of an assessment: the same zone has the same key in the next one. */
export function zoneKey({ row, elementId, part }: Pick<Zone, 'row' | 'elementId' | 'part'>): string {
  return `${row}/${elementId}/${part}`;
}
