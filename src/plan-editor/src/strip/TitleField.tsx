import type { Desk } from '../desk/desk';
import { retitled } from '../plan/edits';

/** The title of the plan on the desk, written over in place. An empty one is not taken. */
export function TitleField({ desk, label }: { readonly desk: Desk; readonly label: string }) {
  const title = desk.settled.value?.title ?? '';
  return (
    <input
      class="title"
      type="text"
      aria-label={label}
      value={title}
      required
      maxLength={200}
      disabled={desk.settled.value === null}
      onKeyDown={(event) => event.key === 'Enter' && event.currentTarget.blur()}
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
  );
}
