import type { Page } from '../page';
import type { TemplateSummary } from '../service/answers';
import { whatItShows } from './shelfContent';

interface Props {
  readonly page: Page;
  readonly templates: readonly TemplateSummary[];
  readonly onOpen: (opening: Promise<boolean>) => void;
}

/** Invented demonstrations: to look at, or to start from with every number taken out. */
export function Templates({ page, templates, onOpen }: Props) {
  // What to find out is the first thing somebody needs who starts with a drawing and no numbers.
  const start = async (name: string) => {
    const started = await page.opening.startFrom(name);
    if (started) {
      page.drawer.show('findOut');
    }
    return started;
  };
  return (
    <section aria-labelledby="examples">
      <h3 id="examples">Examples</h3>
      <p>
        Every number in an example is invented. A plan of your own keeps the drawing, loses everything
        measured, proved or permitted, and opens NOT TO RUN with the list of what to find out.
      </p>
      <ul class="rows" aria-label="Examples">
        {templates.map(({ name, title, notes }) => (
          <li key={name} class="row">
            <div>
              <strong>{title}</strong>
              <span class="minor">{whatItShows(notes)}</span>
            </div>
            <div class="pair">
              <button type="button" onClick={() => onOpen(page.opening.lookAt(name))}>
                Look at the example<span class="unseen">: {title}</span>
              </button>
              <button type="button" onClick={() => onOpen(start(name))}>
                Start your own from it<span class="unseen">: {title}</span>
              </button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
