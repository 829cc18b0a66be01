import type { Desk } from '../../desk/desk';
import type { PlanFile } from '../../plan/planFile';
import { elementsOf, middleOf, type PlanElement } from '../elements';
import { type Frame, toScreen } from '../geometry/frame';
import type { Sheet } from '../sheet';
import { placeInWords } from '../words';

interface Props {
  /** The plan as far as these are read from it. */
  readonly plan: PlanFile;
  readonly desk: Desk;
  readonly frame: Frame;
  readonly sheet: Sheet;
}

/** What stands on the site, as buttons: found by keyboard and screen reader; fingers go through to the canvas below. */
export function ElementButtons({ plan, desk, frame, sheet }: Props) {
  return (
    <div class="grips">
      <p id="sketch-keys" class="unseen">
        Arrow keys move it by 0.1 m, with Shift by 1 m. [ and ] turn it by 1°, with Shift by 10°. Escape gives
        up.
      </p>
      {elementsOf(plan).map((element) => (
        <ElementButton key={`${element.kind} ${element.id}`} {...{ desk, frame, sheet, element }} />
      ))}
    </div>
  );
}

function ElementButton({
  desk,
  frame,
  sheet,
  element,
}: Omit<Props, 'plan'> & { readonly element: PlanElement }) {
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
