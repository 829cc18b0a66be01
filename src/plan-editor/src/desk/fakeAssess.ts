import type { PlanFile } from '../plan/planFile';
import type { Assessment } from '../service/answers';
import type { Detail } from '../service/service';
import type { Assess } from './assessing';

/** A question the desk asked, for a test to answer when it likes. */
export interface Asked {
  readonly plan: PlanFile;
  readonly detail: Detail;
  readonly signal: AbortSignal;
  answer(headline?: string): Promise<void>;
  fail(thrown: unknown): Promise<void>;
}

/** A way to assess that keeps its questions and answers none by itself. */
export function fakeAssess(): { readonly asked: Asked[]; readonly assess: Assess } {
  const asked: Asked[] = [];
  const assess: Assess = (plan, detail, signal) =>
    new Promise((resolve, reject) => {
      signal.addEventListener('abort', () => reject(new DOMException('no longer wanted', 'AbortError')));
      asked.push({
        plan,
        detail,
        signal,
        answer: (headline = plan.title) => settled(() => resolve(assessmentOf(headline))),
        fail: (thrown) => settled(() => reject(thrown)),
      });
    });
  return { asked, assess };
}

export function planOf(title: string): PlanFile {
  return { schema: 'showsafety-plan/1', title, site: { outline: [] } };
}

/** An assessment with nothing in it but a headline and, when given, a distance of the line in metres. */
export function assessmentOf(headline: string, ...lineMetres: readonly number[]): Assessment {
  return {
    title: headline,
    planHash: '',
    example: false,
    verdict: 'noStopFound',
    headline,
    findings: [],
    people: [],
    zones: [],
    rooms: {
      layout: {
        publicKeepOut: [],
        crewKeepOut: [],
        hearingArea: [],
        plannedLine: [],
        suggestedLine: [],
        figures: lineMetres.map((metres) => ({
          key: 'layout.line-distance',
          value: { best: metres, planning: metres, unit: 'm' },
        })),
      },
    },
  };
}

async function settled(act: () => void): Promise<void> {
  act();
  await new Promise((resolve) => setTimeout(resolve));
}
