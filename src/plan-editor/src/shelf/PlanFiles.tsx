import { useSignal } from '@preact/signals';
import { fileNameOf, handOver } from '../brief/download';
import type { Page } from '../page';

interface Props {
  readonly page: Page;
  readonly onOpen: (opening: Promise<boolean>) => void;
}

/** The plan as a file, and a plan from a file: facts the page has no field for are written there. */
export function PlanFiles({ page, onOpen }: Props) {
  const trouble = useSignal<string | null>(null);
  const give = () => {
    const plan = page.desk.settled.value;
    if (plan !== null) {
      const text = JSON.stringify(plan, null, 2);
      handOver(new Blob([text], { type: 'application/json' }), fileNameOf(plan.title, 'json'));
    }
  };
  const take = async (input: HTMLInputElement) => {
    const text = await input.files?.[0]?.text();
    input.value = '';
    trouble.value = null;
    if (text === undefined) {
      return;
    }
    try {
      onOpen(page.opening.file(JSON.parse(text)));
    } catch {
      trouble.value = 'That file is not a plan file: it is not JSON.';
    }
  };
  return (
    <div class="pair">
      <button type="button" onClick={give}>
        Save as a plan file
      </button>
      <label class="button">
        Open a plan file
        <input
          type="file"
          class="unseen"
          accept=".json,application/json"
          onChange={(event) => void take(event.currentTarget)}
        />
      </label>
      {trouble.value !== null && <p role="alert">{trouble.value}</p>}
    </div>
  );
}
