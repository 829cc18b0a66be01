import { useRef } from 'preact/hooks';
import { type Frame, toPlan, toScreen } from '../geometry/frame';
import type { Grip } from './grip';
import { type Finger, Hold } from './hold';
import type { Movement } from './movement';

interface Props {
  readonly grip: Grip;
  readonly frame: Frame;
  readonly movement: Movement;
  readonly chosen: boolean;
  readonly choose: () => void;
  readonly reveal: () => void;
}

/** A real button over what it moves, so that mouse, finger, pen, keyboard and screen reader all find it. */
export function GripButton({ grip, frame, movement, chosen, choose, reveal }: Props) {
  const hold = useRef<Hold>(new Hold(movement)).current;
  const { leftPixels, topPixels } = toScreen(frame, grip.at);
  const half = grip.sizePixels / 2;
  return (
    <button
      type="button"
      class="grip"
      data-kind={grip.kind}
      data-chosen={chosen}
      data-tight={grip.sizePixels < 36}
      aria-label={grip.label}
      aria-describedby="sketch-keys"
      style={{
        height: `${grip.sizePixels}px`,
        transform: `translate(${leftPixels - half}px, ${topPixels - half}px)`,
        width: `${grip.sizePixels}px`,
      }}
      onFocus={(event) => event.currentTarget.matches(':focus-visible') && reveal()}
      onPointerDown={(event) => {
        if (event.button === 0 && event.isPrimary) {
          event.currentTarget.setPointerCapture(event.pointerId);
          hold.press(grip, fingerOf(event, frame));
        }
      }}
      onPointerMove={(event) => event.isPrimary && hold.drag(fingerOf(event, frame))}
      onPointerUp={() => hold.release() && choose()}
      onPointerCancel={() => hold.giveUp()}
      // A finger's click has been dealt with when it was let go; this one is a key's or a screen reader's.
      onClick={(event) => event.detail === 0 && choose()}
      onKeyDown={(event) => {
        const isCommand = event.ctrlKey || event.metaKey || event.altKey;
        if (!isCommand && hold.keyDown(grip, event)) {
          event.preventDefault();
        }
      }}
      onKeyUp={() => hold.keysUp()}
      onBlur={() => hold.keysUp()}
    >
      <span class="grip-mark" />
    </button>
  );
}

function fingerOf(event: PointerEvent & { readonly currentTarget: HTMLElement }, frame: Frame): Finger {
  const sheet = event.currentTarget.parentElement?.getBoundingClientRect();
  const screen = {
    leftPixels: event.clientX - (sheet?.left ?? 0),
    topPixels: event.clientY - (sheet?.top ?? 0),
  };
  return { screen, plan: toPlan(frame, screen) };
}
