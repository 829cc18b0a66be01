import { describe, expect, it } from 'vitest';
import { createDesk } from '../desk/createDesk';
import { fakeAssess, planOf } from '../desk/fakeAssess';
import { createDrawer } from './drawerState';

function withDesk() {
  const desk = createDesk(fakeAssess().assess);
  desk.open({ ...planOf('a'), engines: [{ id: 'bramble', place: [0, 0] }] });
  return { desk, drawer: createDrawer(desk) };
}

describe('the drawer', () => {
  it('opens with what to do', () => {
    expect(withDesk().drawer.section.value).toBe('toDo');
  });

  it('shows the spot tapped on the plan', () => {
    const { desk, drawer } = withDesk();
    desk.ask([1, 2]);
    expect(drawer.section.value).toBe('spot');
    expect(drawer.tall.value).toBe(true);
  });

  it('shows the numbers of an engine chosen on the plan, and of nothing else', () => {
    const { desk, drawer } = withDesk();
    desk.choose('gate');
    expect(drawer.section.value).toBe('toDo');
    desk.choose('bramble');
    expect(drawer.section.value).toBe('numbers');
  });

  it('stays where it is when it points, and makes way for the plan', () => {
    const { desk, drawer } = withDesk();
    drawer.pull(true);
    drawer.point({ elementId: 'bramble', place: [3, 4] });

    expect(drawer.section.value).toBe('toDo');
    expect(drawer.tall.value).toBe(false);
    expect(desk.chosen.value).toBe('bramble');
    expect(desk.spot.value).toEqual([3, 4]);

    drawer.point({});
    expect(desk.chosen.value).toBeNull();
    expect(desk.spot.value).toBeNull();
  });
});
