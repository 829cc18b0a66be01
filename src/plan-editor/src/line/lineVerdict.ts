import type { PlanFile, PlanPoints } from '../plan/planFile';
import type { Assessment, FindingEntry } from '../service/answers';

/** How the crowd line that is drawn stands to the zones, and what there is to do about it. */
export interface LineVerdict {
  readonly kind: 'none' | 'tooNear' | 'cannotTell' | 'outside';
  readonly words: string;
  /** The line the service suggests, unless the one drawn is right, or it is the same, or there is none. */
  readonly suggested: PlanPoints | null;
}

/** Says of the plan's own line what the assessment of that plan found. */
export function lineVerdict(plan: PlanFile, { findings, rooms: { layout } }: Assessment): LineVerdict {
  const drawn = plan.crowdLine?.line ?? [];
  const suggested =
    layout.suggestedLine.length > 1 && !sameLine(drawn, layout.suggestedLine) ? layout.suggestedLine : null;
  if (drawn.length < 2) {
    return { kind: 'none', words: 'Not drawn yet.', suggested };
  }
  const near = layout.plannedLine.filter((stretch) => !stretch.meetsRules);
  if (near.length > 0) {
    const most = Math.max(...near.map(({ metres }) => metres));
    return {
      kind: 'tooNear',
      // Rounded up: a decimetre short would leave the line inside.
      words: `Too near by ${decimetresUp(most)} m or more: drag its square corners back.`,
      suggested,
    };
  }
  const isTold = layout.plannedLine.length > 0 && !findings.some(hidesAZone);
  return isTold
    ? { kind: 'outside', words: 'Outside every zone that keeps the public out.', suggested: null }
    : { kind: 'cannotTell', words: 'Cannot tell yet whether it is far enough: see To do.', suggested };
}

// What can't be told may have a zone of its own that nobody has drawn. The gate's evidence and permissions have none.
function hidesAZone({ finding: { cannotTell, code } }: FindingEntry): boolean {
  return cannotTell && !code.startsWith('gate.');
}

function sameLine(a: PlanPoints, b: PlanPoints): boolean {
  return a.length === b.length && a.every(([x, y], i) => x === b[i]?.[0] && y === b[i]?.[1]);
}

function decimetresUp(metres: number): string {
  return (Math.ceil(metres * 10 - 1e-6) / 10).toFixed(1);
}
