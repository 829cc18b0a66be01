import './sketch.css';
import '../levels/levels.css';
import './furniture/furniture.css';
import { type ReadonlySignal, useSignal, useSignalEffect } from '@preact/signals';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Desk } from '../desk/desk';
import { askLevels } from '../levels/askLevels';
import { LevelNote } from '../levels/LevelNote';
import type { LevelLimit } from '../levels/levelLimits';
import { levelPictureOn } from '../levels/levelPicture';
import { type LevelState, watchLevels } from '../levels/watchLevels';
import { watchLimits } from '../levels/watchLimits';
import type { Service } from '../service/service';
import { stillGround } from './drawing/stillGround';
import { elementAt } from './elementAt';
import { elementsOf } from './elements';
import { FirstView } from './firstView';
import { Hint } from './furniture/Hint';
import { NorthArrow } from './furniture/NorthArrow';
import { ScaleBar } from './furniture/ScaleBar';
import { ViewButtons } from './furniture/ViewButtons';
import type { Frame } from './geometry/frame';
import { ElementButtons } from './grips/ElementButtons';
import { Grips } from './grips/Grips';
import { isMainPartSeen, mainPart } from './mainPart';
import { placeOf } from './placeOf';
import { scene } from './scene';
import { openSheet, type Sheet } from './sheet';

// Half of what a finger covers.
const reachPixels = 22;

interface Props {
  readonly desk: Desk;
  readonly service: Pick<Service, 'levels' | 'ruleSets'>;
}

/** The plan as a surveyor's sheet: drawn, moved about and asked. */
export function Sketch({ desk, service }: Props) {
  const below = useRef<HTMLDivElement>(null);
  const above = useRef<HTMLDivElement>(null);
  const sheet = useSignal<Sheet | null>(null);
  const frame = useSignal<Frame | null>(null);
  const levels = useSignal<ReadonlySignal<LevelState> | null>(null);
  const limits = useSignal<ReadonlySignal<readonly LevelLimit[] | null> | null>(null);
  const ground = useMemo(() => stillGround(desk.plan), [desk]);
  const first = useRef(new FirstView()).current;

  useLayoutEffect(() => {
    if (below.current === null || above.current === null) {
      return undefined;
    }
    const watched = watchLevels({ desk, frame, on: levelPictureOn }, askLevels(service));
    const rules = watchLimits({ desk, on: levelPictureOn }, service.ruleSets);
    limits.value = rules.limits;
    levels.value = watched.state;
    const drawn = scene(desk, frame, watched.state, rules.limits);
    const opened = openSheet(below.current, above.current, drawn, (painted) => {
      frame.value = sameFrame(frame.peek(), painted) ? frame.peek() : painted;
    });
    nameForEars(above.current);
    const leave = drawn.follow();
    opened.moving.on('click', (event) => tap(desk, event.coordinate, frame.peek()));
    sheet.value = opened;
    return () => {
      leave();
      watched.stop();
      rules.stop();
      opened.close();
    };
  }, [desk, service, frame, sheet, levels, limits]);

  // Another plan is shown by its main part; a plan that is being changed stays where it is.
  useSignalEffect(() => {
    const shown = desk.plan.value;
    const seen = frame.value;
    if (sheet.value !== null && seen !== null && shown !== null && first.isDue(shown.site.outline, seen)) {
      first.shown(shown.site.outline, sheet.value.showWhole(mainPart(shown)) ?? seen);
    }
  });

  // A step may take the line or a bench out of a view nobody has chosen: the suggested line is often longer.
  useSignalEffect(() => {
    const settled = desk.settled.value;
    const seen = frame.peek();
    const canRefit = settled !== null && seen !== null && first.isUntouched(seen);
    if (canRefit && !isMainPartSeen(settled, seen)) {
      first.shown(settled.site.outline, sheet.peek()?.showWhole(mainPart(settled)) ?? seen);
    }
  });

  // What the drawer points at comes into view.
  useSignalEffect(() => {
    const id = desk.chosen.value;
    const plan = desk.plan.peek();
    const place = desk.spot.value ?? (id === null || plan === null ? null : placeOf(plan, id));
    if (place !== null) {
      sheet.peek()?.reveal(place);
    }
  });

  // Whole while an engine or the line is dragged: then the handles alone are laid out anew.
  const plan = ground.value;
  return (
    <div class="sketch-sheet">
      <div class="sketch-still" ref={below} aria-hidden="true" />
      <div class="sketch-moving" ref={above} />
      {plan !== null && sheet.value !== null && frame.value !== null && (
        <>
          {/* Below the handles: it never covers what it speaks of. */}
          <Hint desk={desk} />
          <ElementButtons plan={plan} desk={desk} frame={frame.value} sheet={sheet.value} />
          <Grips desk={desk} frame={frame.value} sheet={sheet.value} />
          {levels.value !== null && (
            <LevelNote state={levels.value.value} limits={limits.value?.value ?? null} />
          )}
          <NorthArrow northDegrees={plan.site.northDegrees} />
          <div class="sketch-foot">
            <ScaleBar frame={frame.value} />
            <ViewButtons sheet={sheet.value} plan={desk.plan} />
          </div>
        </>
      )}
    </div>
  );
}

// The arrow keys shift the view, so the canvas must be reachable: no element does that by itself.
function nameForEars(canvas: HTMLElement): void {
  canvas.tabIndex = 0;
  canvas.role = 'application';
  canvas.ariaLabel = 'Plan. Arrow keys shift the view; plus and minus bring it closer and farther.';
}

function tap(desk: Desk, coordinate: readonly number[], frame: Frame | null): void {
  const plan = desk.plan.peek();
  const [x, y] = coordinate;
  if (plan === null || frame === null || x === undefined || y === undefined) {
    return;
  }
  const element = elementAt(elementsOf(plan), [x, y], reachPixels * frame.metresPerPixel);
  if (element === null) {
    desk.ask([x, y]);
  } else {
    desk.choose(element.id);
  }
}

function sameFrame(a: Frame | null, b: Frame): boolean {
  return (
    a !== null &&
    a.middle[0] === b.middle[0] &&
    a.middle[1] === b.middle[1] &&
    a.metresPerPixel === b.metresPerPixel &&
    a.widthPixels === b.widthPixels &&
    a.heightPixels === b.heightPixels
  );
}
