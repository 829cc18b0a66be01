import { useSignal } from '@preact/signals';
import type { Page } from '../page';
import { clockTime } from '../saving/saveState';
import type { VersionSummary } from '../service/answers';
import { reasonOf } from '../service/refusal';

interface Props {
  readonly page: Page;
  readonly kept: readonly VersionSummary[];
  readonly onKept: () => Promise<void>;
  readonly onOpen: (opening: Promise<boolean>) => void;
}

/** States of the plan kept for good under a name. */
export function KeptStates({ page, kept, onKept, onOpen }: Props) {
  const said = useSignal<string | null>(null);
  const keep = async (form: HTMLFormElement) => {
    const name = String(new FormData(form).get('name') ?? '').trim();
    try {
      await page.saving.keepState(name);
      form.reset();
      said.value = `Kept as “${name}”.`;
      await onKept();
    } catch (thrown) {
      said.value = `Not kept. ${reasonOf(thrown)}`;
    }
  };
  const planId = page.saving.planId.value;
  return (
    <>
      <form
        class="keep"
        onSubmit={(event) => {
          event.preventDefault();
          void keep(event.currentTarget);
        }}
      >
        <label class="field">
          <span>Keep this state under a name</span>
          <input
            type="text"
            name="name"
            required
            maxLength={120}
            pattern=".*\S.*"
            placeholder="Sent to the venue"
          />
        </label>
        <button type="submit">Keep this state</button>
      </form>
      <p role="status" aria-label="Keeping">
        {said.value}
      </p>
      {kept.length > 0 && planId !== null && (
        <ul class="rows" aria-label="Kept states">
          {kept.map(({ number, name, savedAt }) => (
            <li key={number} class="row">
              <div>
                <strong>{name}</strong>
                <span class="minor">Kept at {clockTime(new Date(savedAt), new Date())}</span>
              </div>
              <button type="button" onClick={() => onOpen(page.opening.copyOf(planId, number))}>
                Open a copy<span class="unseen"> of {name}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
