import { useRef } from 'preact/hooks';
import type { Desk } from '../../desk/desk';
import { elementsOf, middleOf, type PlanElement } from '../elements';
import { type Frame, toScreen } from '../geometry/frame';
import type { Sheet } from '../sheet';
import { placeInWords } from '../words';
import { GripButton } from './GripButton';
import { gripsOf } from './grip';
import { Movement } from './movement';

interface Props {
  readonly desk: Desk;
  readonly frame: Frame;
  readonly sheet: Sheet;
}

/** Everything on the plan as buttons: the keyboard reaches all, the finger what can be moved. */
export function Grips({ desk, frame, sheet }: Props) {
  const movement = useRef(new Movement(desk, nextFrame)).current;
  const plan = desk.plan.value;
  if (plan === null) {
    return null;
  }
  return (
    <div class="grips" onWheel={(event) => handOn(event, sheet)}>
      <p id="sketch-keys" class="for-ears">
        Arrow keys move it by 0.1 m, with Shift by 1 m. [ and ] turn it by 1°, with Shift by 10°. Escape gives
        up.
      </p>
      {elementsOf(plan).map((element) => (
        <ElementButton key={`${element.kind} ${element.id}`} {...{ desk, frame, sheet, element }} />
      ))}
      {gripsOf(plan, frame.metresPerPixel).map((grip) => (
        <GripButton
          key={grip.key}
          grip={grip}
          frame={frame}
          movement={movement}
          chosen={desk.chosen.value === grip.elementId}
          choose={() => desk.choose(grip.elementId)}
          reveal={() => sheet.reveal(grip.at)}
        />
      ))}
    </div>
  );
}

// Found by keyboard and screen reader; fingers go through it to the canvas below.
function ElementButton({ desk, frame, sheet, element }: Props & { readonly element: PlanElement }) {
  const { leftPixels, topPixels } = toScreen(frame, middleOf(element));
  return (
    <button
      type="button"
      class="grip"
      data-kind="element"
      aria-label={`${element.name}, at ${placeInWords(middleOf(element))}`}
      aria-pressed={desk.chosen.value === element.id}
      style={{ transform: `translate(${leftPixels - 22}px, ${topPixels - 22}px)` }}
      onFocus={() => sheet.reveal(middleOf(element))}
      onClick={() => desk.choose(element.id)}
    />
  );
}

// The buttons lie over the canvas: a wheel turned over one of them means the plan.
function handOn(event: WheelEvent, sheet: Sheet): void {
  event.preventDefault();
  sheet.moving.getViewport()?.dispatchEvent(new WheelEvent('wheel', event));
}

function nextFrame(act: () => void): () => void {
  const frame = requestAnimationFrame(act);
  return () => cancelAnimationFrame(frame);
}
