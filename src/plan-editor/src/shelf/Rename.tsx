import type { Desk } from '../desk/desk';
import { TitleField } from '../strip/TitleField';

/** The title of the plan on the desk, among the plans. */
export function Rename({ desk }: { readonly desk: Desk }) {
  return (
    <div class="field">
      <span aria-hidden="true">Title of the plan</span>
      <TitleField desk={desk} label="Title of the plan" />
    </div>
  );
}
