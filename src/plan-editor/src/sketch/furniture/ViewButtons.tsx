import type { ReadonlySignal } from '@preact/signals';
import type { PlanFile, PlanPoints } from '../../plan/planFile';
import { mainPart } from '../mainPart';
import type { Sheet } from '../sheet';

interface Props {
  readonly sheet: Sheet;
  readonly plan: ReadonlySignal<PlanFile | null>;
}

/** Changes what is in view, never the plan. */
export function ViewButtons({ sheet, plan }: Props) {
  const show = (part: (plan: PlanFile) => PlanPoints) => {
    const now = plan.peek();
    if (now !== null) {
      sheet.showWhole(part(now));
    }
  };
  return (
    <div class="view-buttons">
      <button type="button" aria-label="closer" onClick={() => sheet.zoomBy(1.6)}>
        +
      </button>
      <button type="button" aria-label="farther" onClick={() => sheet.zoomBy(1 / 1.6)}>
        −
      </button>
      <button type="button" onClick={() => show(mainPart)}>
        bench<span class="wide"> and line</span>
      </button>
      <button type="button" onClick={() => show(({ site }) => site.outline)}>
        whole site
      </button>
    </div>
  );
}
