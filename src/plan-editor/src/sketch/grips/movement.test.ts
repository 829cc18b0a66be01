import { describe, expect, it } from 'vitest';
import type { Edit } from '../../desk/desk';
import { Movement } from './movement';

function trial() {
  const said: string[] = [];
  const frames: (() => void)[] = [];
  const movement = new Movement(
    {
      move: (edit) => said.push(`move ${nameOf(edit)}`),
      change: (name, edit) => said.push(`${name} ${nameOf(edit)}`),
      giveUpMove: () => said.push('give up'),
    },
    (act) => {
      frames.push(act);
      return () => frames.splice(frames.indexOf(act), 1);
    },
  );
  const paint = () => {
    for (const act of frames.splice(0)) {
      act();
    }
  };
  return { said, movement, paint };
}

function named(title: string): Edit {
  return (plan) => ({ ...plan, title });
}

function nameOf(edit: Edit): string {
  return edit({ schema: '', title: '', site: { outline: [] } }).title;
}

describe('Movement', () => {
  it('tells the desk at most once a frame, the latest step', () => {
    const { said, movement, paint } = trial();
    movement.begin('Move Fern');
    movement.step(named('a'));
    movement.step(named('b'));
    paint();
    movement.step(named('c'));
    paint();
    paint();

    expect(said).toEqual(['move b', 'move c']);
  });

  it('finishes with the latest step, painted or not, and nothing comes after it', () => {
    const { said, movement, paint } = trial();
    movement.begin('Move Fern');
    movement.step(named('a'));
    paint();
    movement.step(named('b'));
    movement.finish();
    paint();

    expect(said).toEqual(['move a', 'Move Fern b']);
    expect(movement.underWay).toBe(false);
  });

  it('gives up without a change', () => {
    const { said, movement, paint } = trial();
    movement.begin('Move Fern');
    movement.step(named('a'));
    movement.giveUp();
    paint();

    expect(said).toEqual(['give up']);
  });

  it('changes nothing when it ends before a step', () => {
    const { said, movement } = trial();
    movement.begin('Move Fern');
    movement.finish();

    expect(said).toEqual([]);
  });

  it('takes nothing out of order', () => {
    const { movement } = trial();

    expect(() => movement.step(named('a'))).toThrow('Nothing');
    expect(() => movement.finish()).toThrow('Nothing');
    expect(() => movement.giveUp()).toThrow('Nothing');
    movement.begin('Move Fern');
    expect(() => movement.begin('Turn Fern')).toThrow('Move Fern');
  });
});
