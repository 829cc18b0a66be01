import type { Frame } from '../geometry/frame';
import { niceLengthMetres } from '../geometry/niceLength';

const longestPixels = 150;
// On a narrow sheet the buttons need their place beside it.
const widestShare = 0.24;

/** A bar as on a surveyor's sheet: two halves, one filled, with its length in metres. */
export function ScaleBar({ frame }: { readonly frame: Frame }) {
  const longest = Math.min(longestPixels, widestShare * frame.widthPixels);
  const metres = niceLengthMetres(longest * frame.metresPerPixel);
  const width = `${metres / frame.metresPerPixel}px`;
  return (
    <div class="scale-bar" role="img" aria-label={`Scale: the bar is ${metres} m long`}>
      <span class="scale-bar-marks">
        <span>0</span>
        <span>{metres} m</span>
      </span>
      <span class="scale-bar-rule" style={{ width }} />
    </div>
  );
}
