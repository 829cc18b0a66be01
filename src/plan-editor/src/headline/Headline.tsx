import { useMemo } from 'preact/hooks';
import type { Desk } from '../desk/desk';
import { LineRow } from '../line/LineRow';
import { Band, type Stamp } from './Band';
import { late } from './late';
import { watchLine } from './lineWatch';

/** The sentence always in view, what the last change did to the line, and the best next step. */
export function Headline({ desk, isOwn }: { readonly desk: Desk; readonly isOwn: boolean }) {
  const lineSaid = useMemo(() => watchLine(desk), [desk]);
  const checking = useMemo(() => late(desk.unchecked), [desk]);
  const assessment = desk.answer.value?.assessment;
  const trouble = desk.trouble.value;
  return (
    <section
      class="headline"
      aria-label="Headline"
      data-verdict={assessment?.verdict ?? 'none'}
      data-stale={checking.value}
    >
      {assessment === undefined ? (
        <p class="sentence">
          <strong class="verdict">{trouble === null ? 'Checking the plan …' : 'Not checked'}</strong>
        </p>
      ) : (
        <Band headline={assessment.headline} example={stampOf(assessment.example, isOwn)} />
      )}
      <div class="foot">
        {assessment !== undefined && <NextStep remedy={assessment.findings[0]?.remedy} />}
        {trouble !== null && <Trouble desk={desk} trouble={trouble} />}
        <LineRow desk={desk} checking={checking.value} said={lineSaid} />
      </div>
    </section>
  );
}

function stampOf(example: boolean, isOwn: boolean): Stamp {
  return example ? (isOwn ? 'EXAMPLE VALUES' : 'EXAMPLE') : null;
}

function Trouble({ desk, trouble }: { readonly desk: Desk; readonly trouble: string }) {
  return (
    <p role="alert" class="trouble">
      Not checked: {trouble} Nothing of your plan is lost.{' '}
      <button type="button" class="plain" onClick={() => desk.askAgain()}>
        Try again
      </button>
    </p>
  );
}

function NextStep({ remedy }: { readonly remedy: string | undefined }) {
  return (
    <p class="next">
      <span class="tag">Next</span>{' '}
      {remedy ?? 'Nothing stands on the list. Read the brief before anybody runs.'}
    </p>
  );
}
