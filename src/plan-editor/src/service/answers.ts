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
  readonly how: string;
}
