import type { PlanFile } from '../../plan/planFile';
import { mainPart } from '../mainPart';
import type { Sheet } from '../sheet';

/** Changes what is in view, never the plan. */
export function ViewButtons({ sheet, plan }: { readonly sheet: Sheet; readonly plan: PlanFile }) {
  return (
    <div class="view-buttons">
      <button type="button" aria-label="closer" onClick={() => sheet.zoomBy(1.6)}>
        +
      </button>
      <button type="button" aria-label="farther" onClick={() => sheet.zoomBy(1 / 1.6)}>
        −
      </button>
      <button type="button" onClick={() => sheet.showWhole(mainPart(plan))}>
        bench<span class="wide"> and line</span>
      </button>
      <button type="button" onClick={() => sheet.showWhole(plan.site.outline)}>
        whole site
      </button>
    </div>
  );
}
