import { describe, expect, it } from 'vitest';
import { assessmentOf, planOf } from '../desk/fakeAssess';
import { laidLine } from '../plan/edits';
import type { PlanPoints } from '../plan/planFile';
import type { Assessment, LineStretch } from '../service/answers';
import { lineVerdict } from './lineVerdict';

const line: PlanPoints = [
  [0, 0],
  [9, 0],
];
const farther: PlanPoints = [
  [0, -5],
  [9, -5],
];
const plan = laidLine(line)(planOf('a'));

function stretch(meetsRules: boolean, metres: number): LineStretch {
  return { from: [0, 0], to: [9, 0], meetsRules, metres, row: 'directFlight', elementId: 'e' };
}

function told(plannedLine: readonly LineStretch[], code?: string): Assessment {
  const empty = assessmentOf('a');
  const layout = { ...empty.rooms.layout, plannedLine, suggestedLine: farther };
  const finding = { code: code ?? '', severity: 'stop' as const, cannotTell: true };
  const findings =
    code === undefined ? [] : [{ sentence: 's', remedy: 'r', finding: { ...finding } as never }];
  return { ...empty, findings, rooms: { layout } };
}

describe('lineVerdict', () => {
  it('says by how much the worst stretch is too near, never less', () => {
    const said = lineVerdict(plan, told([stretch(true, 3), stretch(false, 1.21), stretch(false, 0.4)]));
    expect(said.kind).toBe('tooNear');
    expect(said.words).toContain('by 1.3 m or more');
    expect(said.suggested).toEqual(farther);
  });

  it('says that all of it is outside, and offers nothing nearer', () => {
    const said = lineVerdict(plan, told([stretch(true, 3)]));
    expect(said.words).toMatch(/^Outside every zone/);
    expect(said.suggested).toBeNull();
  });

  it('never says so while a zone may be hidden behind what is missing', () => {
    const unknown = { kind: 'cannotTell', words: expect.stringMatching(/^Cannot tell/) };
    expect(lineVerdict(plan, told([stretch(true, 3)], 'debris.no-rotors'))).toMatchObject(unknown);
    expect(lineVerdict(plan, told([]))).toMatchObject(unknown);
  });

  it('asks no permission of the line', () => {
    const said = lineVerdict(plan, told([stretch(true, 3)], 'gate.crack-check-missing'));
    expect(said.words).toMatch(/^Outside every zone/);
  });

  it('knows a line that is not drawn, and one that is the suggested one', () => {
    expect(lineVerdict(planOf('a'), told([]))).toMatchObject({ kind: 'none', suggested: farther });
    expect(lineVerdict(laidLine(farther)(plan), told([stretch(true, 0.5)])).suggested).toBeNull();
  });
});
