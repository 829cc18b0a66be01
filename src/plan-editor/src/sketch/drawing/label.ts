import Fill from 'ol/style/Fill.js';
import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import Text from 'ol/style/Text.js';
import { ink, paper, typeOf } from './ink';

export interface LabelLook {
  readonly sizePixels?: number;
  readonly weight?: 400 | 700;
  readonly color?: string;
  /** `line` sets the text along the line or edge. */
  readonly placement?: 'point' | 'line';
  readonly beside?: boolean;
  /** To the right, clear of a bench. */
  readonly aside?: boolean;
  readonly above?: boolean;
  /** Of two labels in the same place the lower number gives way. */
  readonly rank?: number;
  readonly always?: boolean;
  /** Not to be seen, but other labels keep clear of it. */
  readonly unseen?: boolean;
  /** Along a line: only once, in its middle. */
  readonly once?: boolean;
}

// Wide enough to close the gaps between words: a strong line would show through them as dots.
const rimPixels = { point: 4, line: 7 };
const oneLinePixels = 18;

const repeatPixels = 420;

/** A label in the page's type on a rim of paper, so that hatches and lines do not run into the letters. */
export function labelStyle(text: string, look: LabelLook = {}): Style {
  const { sizePixels = 14, weight = 400, color = ink, placement = 'point', rank = 0 } = look;
  return new Style({
    zIndex: rank,
    text: new Text({
      text,
      font: typeOf(sizePixels, weight),
      fill: new Fill({ color: look.unseen === true ? 'transparent' : color }),
      stroke: new Stroke({
        color: look.unseen === true ? 'transparent' : paper,
        width: rimPixels[placement],
      }),
      placement,
      overflow: look.always === true || placement === 'point',
      declutterMode: look.always === true ? 'obstacle' : 'declutter',
      // Without an alignment OpenLayers sets the label into the part of the line that is in view.
      ...(placement === 'line'
        ? {}
        : { textAlign: look.beside === true || look.aside === true ? 'left' : 'center' }),
      ...(placement === 'line' && look.once !== true ? { repeat: repeatPixels } : {}),
      offsetX: look.aside === true ? 40 : look.beside === true ? 20 : 0,
      offsetY: look.above === true ? -16 - (text.split('\n').length - 1) * oneLinePixels : 0,
      padding: [2, 3, 2, 3],
    }),
  });
}
