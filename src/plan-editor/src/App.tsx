import { Headline } from './headline/Headline';
import type { Page } from './page';

/** The page: a strip, the sentence, the plan, one drawer. */
export function App({ page }: { readonly page: Page }) {
  const { desk } = page;
  return (
    <div class="page">
      <header class="strip">
        <h1 class="title">{desk.plan.value?.title ?? 'ShowSafety'}</h1>
      </header>
      <Headline desk={desk} />
      <main class="sketch" aria-label="Plan" />
      <aside class="drawer" aria-label="Drawer" />
    </div>
  );
}
