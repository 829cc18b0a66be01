import type { PlanPoints } from '../../plan/planFile';
import type { Sheet } from '../sheet';

/** Changes what is in view, never the plan. */
export function ViewButtons({ sheet, outline }: { readonly sheet: Sheet; readonly outline: PlanPoints }) {
  return (
    <div class="view-buttons">
      <button type="button" onClick={() => sheet.zoomBy(1.6)}>
        closer
      </button>
      <button type="button" onClick={() => sheet.zoomBy(1 / 1.6)}>
        farther
      </button>
      <button type="button" onClick={() => sheet.showWhole(outline)}>
        whole site
      </button>
    </div>
  );
}
