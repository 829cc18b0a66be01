import { useRef } from 'preact/hooks';
import type { Desk } from '../../desk/desk';
import type { Frame } from '../geometry/frame';
import type { Sheet } from '../sheet';
import { GripButton } from './GripButton';
import { gripsOf } from './grip';
import { Movement } from './movement';

interface Props {
  readonly desk: Desk;
  readonly frame: Frame;
  readonly sheet: Sheet;
}

/** What can be moved, as buttons. */
export function Grips({ desk, frame, sheet }: Props) {
  const movement = useRef(new Movement(desk, nextFrame)).current;
  const plan = desk.plan.value;
  if (plan === null) {
    return null;
  }
  return (
    <div class="grips" onWheel={(event) => handOn(event, sheet)}>
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

// The buttons lie over the canvas: a wheel turned over one of them means the plan.
function handOn(event: WheelEvent, sheet: Sheet): void {
  event.preventDefault();
  sheet.moving.getViewport()?.dispatchEvent(new WheelEvent('wheel', event));
}

function nextFrame(act: () => void): () => void {
  const frame = requestAnimationFrame(act);
  return () => cancelAnimationFrame(frame);
}
