import type { PlanPoint, PlanPoints } from '../plan/planFile';
import type { components } from './openapi';

// What the service says, by its own description (docs/openapi.json, `npm run contract`), narrowed to what the page
// reads. A list of two numbers is called a place here: the description can't say that.
type Told = components['schemas'];

/** What the service says about a plan (docs/assessment-file.md). What only `detail=full` gives is optional here. */
export interface Assessment
  extends Pick<Told['Assessment'], 'title' | 'planHash' | 'example' | 'verdict' | 'headline'> {
  readonly findings: readonly FindingEntry[];
  readonly people: readonly PersonEntry[];
  readonly zones: readonly Zone[];
  readonly rooms: { readonly layout: LayoutAnswer };
  readonly findOut?: readonly FindOutItem[];
}

export interface FindingEntry extends Pick<Told['FindingEntry'], 'sentence' | 'remedy'> {
  readonly finding: Placed<
    Pick<Told['Finding'], 'code' | 'severity' | 'elementId' | 'field' | 'cannotTell' | 'row'>
  >;
}

/** What holds for the adults or the children of a group. */
export type PersonEntry = Placed<
  Pick<Told['Person'], 'groupId' | 'part' | 'name' | 'role' | 'sentence' | 'wear' | 'stay'>
>;

/** A polygon is a list of rings, the shell first; a ring is closed. */
export type Area = readonly (readonly PlanPoints[])[];

/** `whom` and `when` are comma-separated words; a zone with the frame `engine` moves with its engine. */
export interface Zone
  extends Pick<
    Told['Zone'],
    'row' | 'elementId' | 'part' | 'label' | 'sentence' | 'effect' | 'whom' | 'when' | 'frame'
  > {
  readonly area: Area;
}

export interface LineStretch
  extends Pick<Told['LineStretch'], 'meetsRules' | 'metres' | 'row' | 'elementId'> {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
}

export interface LayoutAnswer {
  readonly publicKeepOut: Area;
  readonly crewKeepOut: Area;
  readonly hearingArea: Area;
  readonly plannedLine: readonly LineStretch[];
  readonly suggestedLine: PlanPoints;
  readonly figures: readonly Figure[];
}

export interface Figure extends Pick<Told['Figure'], 'key' | 'elementId'> {
  readonly value: Quantity;
}

export type Quantity = Pick<Told['Quantity'], 'best' | 'planning' | 'unit'>;

/** `cost` is the gravest finding its absence causes; `lineMetres` what the line could come closer. */
export interface FindOutItem
  extends Pick<Told['FindOutItem'], 'field' | 'elementId' | 'meaning' | 'how' | 'cost'> {
  readonly lineMetres?: Quantity;
}

/** What holds at one place, in sentences for a visitor who stays for the whole programme. */
export interface PlaceAnswer extends Pick<Told['PlaceAnswer'], 'loud' | 'stay' | 'wear' | 'why'> {
  readonly place: PlanPoint;
  /** The sentences that are different ones for a child, and for crew. */
  readonly forChild: Told['PlaceWords'];
  readonly forCrew: Told['PlaceWords'];
  /** How the sound gets there at the loudest moment; missing where that can't be told. */
  readonly loudest?: { readonly parts: readonly Pick<Told['SoundPart'], 'sentence'>[] };
}

export type PlaceWords = Pick<PlaceAnswer, 'loud' | 'stay' | 'wear' | 'why'>;

/** Noise rules a plan may choose. */
export type RuleSet = Told['RuleSet'];

/** A saved plan in the list. */
export type PlanSummary = Told['PlanSummary'];

/** An invented plan to look at and to start from. */
export type TemplateSummary = Told['TemplateSummary'];

/** A state of a plan kept under a name. */
export type VersionSummary = Told['VersionSummary'];

type Placed<T> = T & { readonly place?: PlanPoint };
