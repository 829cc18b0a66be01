import type { PlanPoint, PlanPoints } from '../plan/planFile';

/** What the service says about a plan (docs/assessment-file.md). What only `detail=full` gives is optional here. */
export interface Assessment {
  readonly title: string;
  readonly planHash: string;
  readonly example: boolean;
  readonly verdict: 'notToRun' | 'noStopFound';
  readonly headline: string;
  readonly findings: readonly FindingEntry[];
  readonly people: readonly PersonEntry[];
  readonly zones: readonly Zone[];
  readonly rooms: { readonly layout: LayoutAnswer };
  readonly findOut?: readonly FindOutItem[];
}

export interface FindingEntry {
  readonly sentence: string;
  readonly remedy: string;
  readonly finding: {
    readonly code: string;
    readonly severity: 'stop' | 'act' | 'note';
    readonly elementId?: string;
    readonly place?: PlanPoint;
    readonly field?: string;
    readonly cannotTell: boolean;
    readonly row?: string;
  };
}

export interface PersonEntry {
  readonly groupId: string;
  readonly part: string;
  readonly name: string;
  readonly role: string;
  readonly place?: PlanPoint;
  readonly sentence: string;
  readonly wear: string;
  readonly stay: string;
}

/** A polygon is a list of rings, the shell first; a ring is closed. */
export type Area = readonly (readonly PlanPoints[])[];

export interface Zone {
  readonly row: string;
  readonly elementId: string;
  readonly part: string;
  readonly label: string;
  readonly sentence: string;
  readonly effect: 'excludes' | 'requires' | 'informs';
  /** Comma-separated words, for example "visitors, children" or "everyone". */
  readonly whom: string;
  readonly when: string;
  /** `engine`: it moves with its engine. */
  readonly frame: 'engine' | 'site';
  readonly area: Area;
}

export interface LineStretch {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  readonly meetsRules: boolean;
  readonly metres: number;
  readonly row?: string;
  readonly elementId?: string;
}

export interface LayoutAnswer {
  readonly publicKeepOut: Area;
  readonly crewKeepOut: Area;
  readonly hearingArea: Area;
  readonly plannedLine: readonly LineStretch[];
  readonly suggestedLine: PlanPoints;
  readonly figures: readonly Figure[];
}

export interface Figure {
  readonly key: string;
  readonly elementId?: string;
  readonly value: Quantity;
}

export interface Quantity {
  readonly best: number;
  readonly planning: number;
  readonly unit: string;
}

export interface FindOutItem {
  readonly field: string;
  readonly elementId?: string;
  readonly meaning: string;
  readonly how: 'none' | 'scale' | 'tape' | 'maker' | 'meter' | 'soundMeter' | 'check' | 'venue';
  /** Gravest finding its absence causes. */
  readonly cost?: 'stop' | 'act' | 'note';
  /** Metres the crowd line could come closer if a hopeful value were confirmed. */
  readonly lineMetres?: Quantity;
}

/** A saved plan in the list. */
export interface PlanSummary {
  readonly id: string;
  readonly title: string;
  readonly revision: number;
  readonly savedAt: string;
}

/** An invented plan to look at and to start from. */
export interface TemplateSummary {
  readonly name: string;
  readonly title: string;
  readonly notes?: string | null;
}

/** A state of a plan kept under a name. */
export interface VersionSummary {
  readonly number: number;
  readonly name: string;
  readonly title: string;
  readonly savedAt: string;
}

/** What holds at one place of a plan, in sentences for a visitor who stays for the whole programme. */
export interface PlaceAnswer extends PlaceWords {
  readonly place: PlanPoint;
  /** The loudest moment; absent when nothing runs or the level can't be told, and `loud` says which. */
  readonly loudest?: {
    readonly earHeightMetres: number;
    readonly levelDbA: Quantity;
    readonly peakDbC?: Quantity;
  };
  /** The sentences that are different ones for a child, and for crew. */
  readonly forChild: Partial<PlaceWords>;
  readonly forCrew: Partial<PlaceWords>;
  readonly zones: readonly Omit<Zone, 'frame' | 'area'>[];
}

export interface PlaceWords {
  readonly loud: string;
  readonly stay: string;
  readonly wear: string;
  readonly why: string;
}
