import { useSignal } from '@preact/signals';
import { Drawer } from './drawer/Drawer';
import { Headline } from './headline/Headline';
import type { Page } from './page';
import { SaveNotice } from './saving/SaveNotice';
import { Shelf } from './shelf/Shelf';
import { Sketch } from './sketch/Sketch';
import { Strip } from './strip/Strip';

/** The page: a strip, the sentence, the plan, one drawer. */
export function App({ page }: { readonly page: Page }) {
  const shelfOpen = useSignal(false);
  const trouble = page.opening.trouble.value;
  return (
    <div class="page">
      <Strip
        page={page}
        onPlans={() => {
          shelfOpen.value = true;
        }}
      />
      <div class="news">
        <SaveNotice saving={page.saving} />
        {trouble !== null && !shelfOpen.value && (
          <section class="notice" role="alert">
            <p>{trouble}</p>
            <button type="button" onClick={() => page.opening.say(null)}>
              Close this
            </button>
          </section>
        )}
      </div>
      <Headline desk={page.desk} isOwn={page.opening.example.value === null} />
      <main class="plan" aria-label="Plan">
        <Sketch desk={page.desk} service={page.service} />
      </main>
      <Drawer page={page} />
      {shelfOpen.value && (
        <Shelf
          page={page}
          onClose={() => {
            shelfOpen.value = false;
          }}
        />
      )}
    </div>
  );
}
