import { useEffect, useMemo } from 'preact/hooks';
import { About } from '../about/About';
import type { Page } from '../page';
import { Areas } from './Areas';
import { calmAnswer } from './calmAnswer';
import type { DrawerState } from './drawerState';
import { FindOut } from './FindOut';
import { watchFindOut } from './findOutList';
import { Numbers } from './Numbers';
import { People } from './People';
import { Spot } from './Spot';
import { type SectionId, sections } from './sections';
import { watchSpot } from './spotAnswer';
import { ToDo } from './ToDo';

/** The one drawer: everything that is not the plan and not the sentence. */
export function Drawer({ page }: { readonly page: Page }) {
  const { desk, service, drawer } = page;
  const spot = useMemo(() => watchSpot(desk, service), [desk, service]);
  const findOut = useMemo(() => watchFindOut(desk), [desk]);
  const calm = useMemo(() => calmAnswer(desk), [desk]);
  const assessment = calm.value?.assessment;
  const section = drawer.section.value;

  const content = () => {
    switch (section) {
      case 'spot':
        return <Spot desk={desk} spot={spot} />;
      case 'numbers':
        return <Numbers desk={desk} />;
      case 'about':
        return <About />;
      case 'findOut':
        return <FindOut desk={desk} drawer={drawer} list={findOut} />;
    }
    if (assessment === undefined) {
      return <p>The plan is being checked …</p>;
    }
    switch (section) {
      case 'toDo':
        return <ToDo assessment={assessment} drawer={drawer} />;
      case 'people':
        return <People assessment={assessment} drawer={drawer} />;
      case 'areas':
        return <Areas assessment={assessment} desk={desk} />;
    }
  };
  return (
    <aside class="drawer" aria-label="Drawer" data-tall={drawer.tall.value}>
      <button
        type="button"
        class="pull"
        aria-expanded={drawer.tall.value}
        onClick={() => drawer.pull(!drawer.tall.value)}
      >
        {drawer.tall.value ? 'Lower the drawer' : 'Pull the drawer up'}
      </button>
      <Tabs drawer={drawer} />
      <div
        class="drawer-body"
        role="tabpanel"
        id="drawer-body"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard (WCAG 2.1.1)
        tabIndex={0}
        aria-labelledby={`tab-${section}`}
      >
        {content()}
      </div>
    </aside>
  );
}

function Tabs({ drawer }: { readonly drawer: DrawerState }) {
  const open = drawer.section.value;
  useEffect(() => {
    document.getElementById(tabId(open))?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [open]);
  const step = (event: KeyboardEvent) => {
    const at = sections.findIndex(({ id }) => id === open);
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    const next = sections[(at + by + sections.length) % sections.length];
    if (by !== 0 && next !== undefined) {
      event.preventDefault();
      drawer.show(next.id);
      document.getElementById(tabId(next.id))?.focus();
    }
  };
  return (
    <div class="tabs" role="tablist" aria-label="Sections">
      {sections.map(({ id, label }) => (
        <button
          key={id}
          id={tabId(id)}
          type="button"
          role="tab"
          aria-selected={id === open}
          aria-controls="drawer-body"
          tabIndex={id === open ? 0 : -1}
          onClick={() => drawer.show(id)}
          onKeyDown={step}
        >
          {label}
        </button>
      ))}
    </div>
  );
}

function tabId(section: SectionId): string {
  return `tab-${section}`;
}
