import type { Desk } from '../desk/desk';
import { retitled } from '../plan/edits';

/** The title of the plan on the desk. */
export function Rename({ desk }: { readonly desk: Desk }) {
  const title = desk.settled.value?.title ?? '';
  return (
    <label class="field">
      <span>Title of the plan</span>
      <input
        type="text"
        value={title}
        required
        maxLength={200}
        onChange={(event) => {
          const input = event.currentTarget;
          const wanted = input.value.trim();
          if (wanted === '') {
            input.value = title;
          } else {
            desk.change('Rename the plan', retitled(wanted));
          }
        }}
      />
    </label>
  );
}
