import type { ReadonlySignal } from '@preact/signals';
import type { Desk } from '../desk/desk';
import { LayButton } from './LayButton';
import { lineVerdict } from './lineVerdict';

interface Props {
  readonly desk: Desk;
  readonly checking: boolean;
  /** What the last change did to the suggested line. */
  readonly said: ReadonlySignal<string | null>;
}

/** Whether the line on the plan is right, in words, and the one press that makes it so. */
export function LineRow({ desk, checking, said }: Props) {
  const answer = desk.answer.value;
  if (answer === null) {
    return null;
  }
  const { kind, words, suggested } = lineVerdict(answer.plan, answer.assessment);
  return (
    <div class="line-row" data-line={kind}>
      <p>
        <span class="tag">Crowd line</span>{' '}
        <span aria-live="polite">
          {checking ? 'Checking … All this is of the plan before the last change.' : words}
          {!checking && said.value !== null && <span class="state"> {said.value}.</span>}
        </span>
      </p>
      {suggested !== null && <LayButton desk={desk} line={suggested} />}
    </div>
  );
}
