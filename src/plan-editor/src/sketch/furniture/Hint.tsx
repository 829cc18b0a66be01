import type { Desk } from '../../desk/desk';
import { levelPictureOn } from '../../levels/levelPicture';

/** What one can do with the plan, until somebody has done it. */
export function Hint({ desk }: { readonly desk: Desk }) {
  const isKnown = desk.undoName.value !== null || desk.redoName.value !== null || desk.spot.value !== null;
  if (isKnown || levelPictureOn.value) {
    return null;
  }
  return <p class="hint">Drag the bench, its round handle or the square corners. Tap a spot to ask.</p>;
}
