import type { RuleSet } from '../service/answers';

/** A level of the rules chosen that is drawn as a line with a name. */
export interface LevelLimit {
  readonly levelDbA: number;
  /** What the rules call it. */
  readonly label: string;
  /** Titles of the rules that have it. */
  readonly rules: readonly string[];
}

type Clause = RuleSet['clauses'][number];

/**
 * The limits in dB(A) of the rules a plan chooses, lowest first; limits of the same level are one line. Left out is what
 * the picture can't show: peaks in dB(C), what counts under a protector, and doses that name no level.
 */
export function limitsOf(ruleSets: readonly RuleSet[], chosen: readonly string[]): readonly LevelLimit[] {
  const limits = new Map<number, LevelLimit>();
  for (const { id, title, clauses } of ruleSets) {
    for (const clause of chosen.includes(id) ? clauses : []) {
      const levelDbA = levelOf(clause);
      if (levelDbA !== null) {
        limits.set(levelDbA, joined(limits.get(levelDbA), levelDbA, clause, title));
      }
    }
  }
  return [...limits.values()].sort((a, b) => a.levelDbA - b.levelDbA);
}

/** The limits by rule, for the legend. */
export function limitsInWords(limits: readonly LevelLimit[]): readonly string[] {
  const rules = [...new Set(limits.flatMap((limit) => limit.rules))];
  return rules.map((rule) => {
    const levels = limits.filter((limit) => limit.rules.includes(rule)).map(({ levelDbA }) => levelDbA);
    return `${levels.join(', ')} dB(A): ${rule}`;
  });
}

function levelOf({ metric, limit, atTheEar, criterionDbA }: Clause): number | null {
  switch (metric) {
    case 'dailyLevel':
    case 'windowLevel':
    case 'steadyLevel':
      return atTheEar ? null : limit;
    case 'dose':
      // The whole dose is the criterion level for its hours; other shares are the service's to convert.
      return limit === 100 ? (criterionDbA ?? null) : null;
    default:
      return null;
  }
}

function joined(before: LevelLimit | undefined, levelDbA: number, { id }: Clause, title: string): LevelLimit {
  const words = id.replaceAll('-', ' ');
  const label = before?.label ?? `${levelDbA} dB(A)`;
  return {
    levelDbA,
    label: label.includes(words) ? label : `${label}${before === undefined ? ' ' : ', '}${words}`,
    rules: [...new Set([...(before?.rules ?? []), title])],
  };
}
