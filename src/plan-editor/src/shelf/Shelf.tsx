import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Page } from '../page';
import { reasonOf } from '../service/refusal';
import { KeptStates } from './KeptStates';
import { OwnPlans } from './OwnPlans';
import { PlanFiles } from './PlanFiles';
import { Rename } from './Rename';
import { emptyShelf, readShelf, type ShelfContent } from './shelfContent';
import { Templates } from './Templates';

interface Props {
  readonly page: Page;
  readonly onClose: () => void;
}

/** Where plans lie: the one on the desk with its kept states, the others, and examples to start from. */
export function Shelf({ page, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const content = useSignal<ShelfContent>(emptyShelf);
  const trouble = useSignal<string | null>(null);
  const planId = page.saving.planId.value;

  const read = async () => {
    try {
      content.value = await readShelf(page.service, planId);
      trouble.value = null;
    } catch (thrown) {
      trouble.value = reasonOf(thrown);
    }
  };
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  useEffect(() => {
    void read();
  }, [planId]);

  const openedBy = async (opening: Promise<boolean>) => {
    if (await opening) {
      onClose();
    }
  };
  const said = trouble.value ?? page.opening.trouble.value;
  return (
    <dialog ref={dialog} class="shelf" aria-label="Plans" onClose={onClose}>
      <header class="shelf-head">
        <h2>Plans</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Back to the plan
        </button>
      </header>
      {said !== null && (
        <p class="notice" role="alert">
          {said}
        </p>
      )}
      <div class="shelf-body" aria-busy={page.opening.busy.value}>
        <section aria-labelledby="on-the-desk">
          <h3 id="on-the-desk">On the desk</h3>
          <Rename desk={page.desk} />
          <KeptStates page={page} kept={content.value.kept} onKept={read} onOpen={openedBy} />
          <PlanFiles page={page} onOpen={openedBy} />
        </section>
        <OwnPlans page={page} plans={content.value.plans} onRemoved={read} onOpen={openedBy} />
        <Templates page={page} templates={content.value.templates} onOpen={openedBy} />
      </div>
    </dialog>
  );
}
