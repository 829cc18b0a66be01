import type { Desk } from '../desk/desk';
import { laidLine } from '../plan/edits';
import type { PlanPoints } from '../plan/planFile';

const layWords = 'Lay the crowd line as suggested';

/** Takes the suggested line over in one press, and in one step for undo. */
export function LayButton({ desk, line }: { readonly desk: Desk; readonly line: PlanPoints }) {
  return (
    <button
      type="button"
      class="lay"
      disabled={desk.unchecked.value}
      onClick={() => desk.change(layWords, laidLine(line))}
    >
      <span>
        Lay <span class="unseen">the crowd line</span> as suggested
      </span>
    </button>
  );
}
