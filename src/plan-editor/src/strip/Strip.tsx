import { BriefButton } from '../brief/BriefButton';
import type { Page } from '../page';
import { saveStateInWords } from '../saving/saveState';
import { TitleField } from './TitleField';

interface Props {
  readonly page: Page;
  readonly onPlans: () => void;
}

/** What plan this is, whether it is saved, and the four things one does with a whole plan. */
export function Strip({ page, onPlans }: Props) {
  const { desk, saving, service } = page;
  return (
    <header class="strip">
      <div class="title-block">
        <h1 class="unseen">{desk.settled.value?.title ?? 'ShowSafety'}</h1>
        <TitleField desk={desk} label="Title" />
        <p class="saved" role="status" aria-label="Saving">
          {desk.settled.value === null ? 'Opening …' : saveStateInWords(saving.state.value, new Date())}
        </p>
      </div>
      <nav class="deeds" aria-label="Whole plan">
        <StepButton word="Undo" name={desk.undoName.value} onClick={desk.undo} />
        <StepButton word="Redo" name={desk.redoName.value} onClick={desk.redo} />
        <button type="button" onClick={onPlans} aria-haspopup="dialog">
          Plans
        </button>
        <BriefButton service={service} plan={desk.settled} />
      </nav>
    </header>
  );
}

interface StepProps {
  readonly word: string;
  readonly name: string | null;
  readonly onClick: () => void;
}

function StepButton({ word, name, onClick }: StepProps) {
  return (
    <button type="button" class="step" disabled={name === null} onClick={onClick}>
      {word}
      {name !== null && <span class="step-name">: {name}</span>}
    </button>
  );
}
