import type { LevelWindow } from '../levels/levelGrid';
import type { PlanFile, PlanPoint } from '../plan/planFile';
import type {
  Assessment,
  PlaceAnswer,
  PlanSummary,
  RuleSet,
  TemplateSummary,
  VersionSummary,
} from './answers';

/** What the page asks of the service. Every call throws a `Refusal` with a sentence when it fails. */
export interface Service {
  templates(): Promise<readonly TemplateSummary[]>;
  template(name: string): Promise<PlanFile>;
  /** A plan of one's own from a template: its examples are taken out. */
  start(name: string): Promise<PlanFile>;

  /** Saved plans, the last saved first. */
  plans(): Promise<readonly PlanSummary[]>;
  plan(id: string): Promise<Fetched>;
  add(plan: PlanFile, last?: LastChance): Promise<Saved>;
  /** Saves over the state named by the tag; somebody else's later state is refused with 412. */
  save(id: string, tag: string, plan: PlanFile, last?: LastChance): Promise<Saved>;
  remove(id: string, tag: string): Promise<void>;

  versions(id: string): Promise<readonly VersionSummary[]>;
  keep(id: string, name: string): Promise<VersionSummary>;
  version(id: string, number: number): Promise<PlanFile>;

  /** `drag` is quick and leaves out what unknowns cost; `full` has everything. */
  assess(plan: PlanFile, detail: Detail, signal: AbortSignal): Promise<Assessment>;
  askPlace(plan: PlanFile, place: PlanPoint, signal: AbortSignal): Promise<PlaceAnswer>;
  /** A grid of levels as its bytes (docs/openapi.json, DrawLevels). */
  levels(plan: PlanFile, window: LevelWindow, signal: AbortSignal): Promise<ArrayBuffer>;
  /** The rules the service knows. */
  ruleSets(): Promise<readonly RuleSet[]>;
  brief(plan: PlanFile): Promise<Blob>;
  sitePlan(plan: PlanFile): Promise<Blob>;
}

export type Detail = 'drag' | 'full';

/** Said of a save while the page is being left: the browser is to send it although nobody waits. */
export interface LastChance {
  readonly leaving: boolean;
}

/** A saved plan as fetched, with the tag that a save must name. */
export interface Fetched {
  readonly plan: PlanFile;
  readonly tag: string;
}

/** What a save left behind. */
export interface Saved {
  readonly id: string;
  readonly tag: string;
  readonly savedAt: Date;
}

/** The tag of a plan in the list: its revision in quotation marks. */
export function tagOf(plan: PlanSummary): string {
  return `"${plan.revision}"`;
}
