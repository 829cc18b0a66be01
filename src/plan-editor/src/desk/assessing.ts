import { type ReadonlySignal, signal } from '@preact/signals';
import type { PlanFile } from '../plan/planFile';
import type { Assessment } from '../service/answers';
import { isAbort } from '../service/httpService';
import { reasonOf } from '../service/refusal';
import type { Detail } from '../service/service';
import type { Answer } from './desk';

export type Assess = (plan: PlanFile, detail: Detail, signal: AbortSignal) => Promise<Assessment>;

/** Keeps the answer close behind the plan. */
export interface Assessing {
  readonly answer: ReadonlySignal<Answer | null>;
  readonly trouble: ReadonlySignal<string | null>;
  /** A plan in movement: one quick question at a time; when it is answered, the newest plan is next. */
  follow(plan: PlanFile): void;
  /** A plan at rest: a quick answer at once, whatever is under way, then a full one. */
  settle(plan: PlanFile): void;
  askAgain(): void;
  /** Forgets everything, for another plan. */
  clear(): void;
}

interface Question {
  readonly plan: PlanFile;
  readonly detail: Detail;
  readonly settled: boolean;
  readonly abort: AbortController;
}

// Enough for a few undos and redos without waiting; an answer takes some hundred kilobytes.
const mostKept = 8;

export function assessing(assess: Assess): Assessing {
  const answer = signal<Answer | null>(null);
  const trouble = signal<string | null>(null);
  const kept = new Map<PlanFile, Assessment>();
  let wanted: { readonly plan: PlanFile; readonly settled: boolean } | null = null;
  let asked: Question | null = null;

  const ask = (plan: PlanFile, detail: Detail, settled: boolean) => {
    const question: Question = { plan, detail, settled, abort: new AbortController() };
    asked = question;
    assess(plan, detail, question.abort.signal).then(
      (assessment) => landed(question, assessment),
      (thrown: unknown) => failed(question, thrown),
    );
  };

  const landed = (question: Question, assessment: Assessment) => {
    if (asked !== question) {
      return;
    }
    asked = null;
    if (question.detail === 'full') {
      keep(question.plan, assessment);
    }
    // The next question first: the service works on it while the page draws this answer.
    next(question);
    trouble.value = null;
    answer.value = { plan: question.plan, assessment };
  };

  const next = (question: Question) => {
    if (wanted === null) {
      return;
    }
    if (wanted.plan !== question.plan) {
      ask(wanted.plan, 'drag', wanted.settled);
    } else if (wanted.settled && question.detail === 'drag') {
      ask(wanted.plan, 'full', true);
    }
  };

  const failed = (question: Question, thrown: unknown) => {
    if (asked !== question || isAbort(thrown)) {
      return;
    }
    asked = null;
    if (wanted !== null && wanted.plan !== question.plan) {
      next(question);
    } else {
      trouble.value = reasonOf(thrown);
    }
  };

  const drop = () => {
    const question = asked;
    asked = null;
    question?.abort.abort();
  };

  const keep = (plan: PlanFile, assessment: Assessment) => {
    kept.set(plan, assessment);
    for (const oldest of [...kept.keys()].slice(0, -mostKept)) {
      kept.delete(oldest);
    }
  };

  const settle = (plan: PlanFile) => {
    wanted = { plan, settled: true };
    trouble.value = null;
    drop();
    const known = kept.get(plan);
    if (known === undefined) {
      ask(plan, 'drag', true);
    } else {
      answer.value = { plan, assessment: known };
    }
  };

  return {
    answer,
    trouble,
    follow(plan) {
      wanted = { plan, settled: false };
      // A background question about the plan before the movement is of no use any more.
      if (asked?.detail === 'full') {
        drop();
      }
      if (asked === null) {
        ask(plan, 'drag', false);
      }
    },
    settle,
    askAgain() {
      if (wanted !== null) {
        settle(wanted.plan);
      }
    },
    clear() {
      drop();
      wanted = null;
      kept.clear();
      answer.value = null;
      trouble.value = null;
    },
  };
}
