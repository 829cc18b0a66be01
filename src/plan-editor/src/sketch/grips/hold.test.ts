import { describe, expect, it } from 'vitest';
import type { Edit } from '../../desk/desk';
import type { Engine, PlanFile, PlanPoint } from '../../plan/planFile';
import { type Grip, gripsOf } from './grip';
import { type Finger, Hold } from './hold';
import { Movement } from './movement';

const plan: PlanFile = {
  schema: 'showsafety-plan/1',
  title: 'A field',
  site: { outline: [] },
  engines: [{ id: 'fern', name: 'Fern', place: [10, 20], exhaustHeadingDegrees: 350 }],
  crowdLine: {
    line: [
      [0, 0],
      [30, 0],
    ],
  },
};

/** A desk of one plan on which frames come when asked for; a pixel is a decimetre. */
function trial() {
  let now = plan;
  const said: string[] = [];
  let frame: (() => void) | null = null;
  const change = (name: string, edit: Edit) => {
    now = edit(now);
    said.push(name);
  };
  const desk = { move: () => said.push('move'), change, giveUpMove: () => said.push('given up') };
  const movement = new Movement(desk, (act) => {
    frame = act;
    return () => {
      frame = null;
    };
  });
  return {
    said,
    hold: new Hold(movement),
    engine: () => now.engines?.[0] as Engine,
    line: () => now.crowdLine?.line,
    grip: (key: string) => gripsOf(now, 0.1).find((grip) => grip.key === key) as Grip,
    paint: () => frame?.(),
  };
}

function finger(x: number, y: number): Finger {
  return { screen: { leftPixels: x * 10, topPixels: -y * 10 }, plan: [x, y] as PlanPoint };
}

describe('Hold', () => {
  it('moves a bench by as much as the finger, wherever it took hold', () => {
    const { hold, grip, engine, said, paint } = trial();
    hold.press(grip('engine fern'), finger(10.7, 19.1));
    hold.drag(finger(12, 19));
    paint();
    hold.drag(finger(15.7, 17.1));

    expect(hold.release()).toBe(false);
    expect(engine().place).toEqual([15, 18]);
    expect(said).toEqual(['move', 'Move Fern']);
  });

  it('turns an engine by the angle the finger went round it', () => {
    const { hold, grip, engine, said } = trial();
    hold.press(grip('turn fern'), finger(10, 26));
    hold.drag(finger(16, 20));
    hold.release();

    expect(engine().exhaustHeadingDegrees).toBe(80);
    expect(engine().place).toEqual([10, 20]);
    expect(said).toEqual(['Turn Fern']);
  });

  it('moves one corner of the crowd line', () => {
    const { hold, grip, line, said } = trial();
    hold.press(grip('corner 1'), finger(30, 0));
    hold.drag(finger(31, -4));
    hold.release();

    expect(line()).toEqual([
      [0, 0],
      [31, -4],
    ]);
    expect(said).toEqual(['Move crowd line']);
  });

  it('takes a finger that trembles for a tap', () => {
    const { hold, grip, said } = trial();
    hold.press(grip('engine fern'), finger(10, 20));
    hold.drag(finger(10.3, 20.1));

    expect(hold.release()).toBe(true);
    expect(said).toEqual([]);
  });

  it('gives up with Escape, and the finger that is still down does nothing more', () => {
    const { hold, grip, engine, said } = trial();
    hold.press(grip('engine fern'), finger(10, 20));
    hold.drag(finger(20, 20));

    expect(hold.keyDown(grip('engine fern'), { key: 'Escape', shiftKey: false })).toBe(true);
    hold.drag(finger(25, 20));
    expect(hold.release()).toBe(false);
    expect(engine().place).toEqual([10, 20]);
    expect(said).toEqual(['given up']);
  });

  it('makes one change of a key held down, all its steps added up', () => {
    const { hold, grip, engine, said } = trial();
    const held = grip('engine fern');
    for (let i = 0; i < 7; i++) {
      hold.keyDown(held, { key: 'ArrowRight', shiftKey: false });
    }
    hold.keysUp();

    expect(engine().place).toEqual([10.7, 20]);
    expect(said).toEqual(['Move Fern']);
  });

  it('turns by key, past north, and calls it so', () => {
    const { hold, grip, engine, said } = trial();
    hold.keyDown(grip('engine fern'), { key: '}', shiftKey: true });
    hold.keysUp();
    hold.keyDown(grip('engine fern'), { key: ']', shiftKey: false });
    hold.keysUp();
    hold.keyDown(grip('turn fern'), { key: 'ArrowLeft', shiftKey: true });
    hold.keysUp();

    expect(engine().exhaustHeadingDegrees).toBe(351);
    expect(said).toEqual(['Turn Fern', 'Turn Fern', 'Turn Fern']);
  });

  it('leaves keys that mean nothing here to the page', () => {
    const { hold, grip, said } = trial();

    expect(hold.keyDown(grip('corner 0'), { key: 'Tab', shiftKey: false })).toBe(false);
    expect(hold.keyDown(grip('corner 0'), { key: ']', shiftKey: false })).toBe(false);
    expect(hold.keyDown(grip('engine fern'), { key: 'Escape', shiftKey: false })).toBe(false);
    hold.keysUp();
    expect(said).toEqual([]);
  });
});

describe('gripsOf', () => {
  it('says what can be taken hold of, where it is and how it stands', () => {
    expect(gripsOf(plan, 0.1).map(({ label }) => label)).toEqual([
      'Crowd line, corner 1, at 0.0, 0.0 m',
      'Crowd line, corner 2, at 30.0, 0.0 m',
      'Fern, exhaust heading 350°, at 10.0, 20.0 m',
      'Turn Fern, exhaust heading 350°',
    ]);
  });

  it.each([0.004, 0.05, 1, 10])(
    'is never smaller than a finger at %d m a pixel, but for corners',
    (scale) => {
      const others = gripsOf(plan, scale).filter(({ kind }) => kind !== 'corner');
      expect(Math.min(...others.map(({ sizePixels }) => sizePixels))).toBeGreaterThanOrEqual(44);
    },
  );

  it.each([
    [0.5, 44],
    [1, 30],
    [10, 24],
  ])('gives corners 30 m apart at %d m a pixel %d pixels each', (scale, pixels) => {
    const corners = gripsOf(plan, scale).filter(({ kind }) => kind === 'corner');
    expect(corners.map(({ sizePixels }) => sizePixels)).toEqual([pixels, pixels]);
  });
});
