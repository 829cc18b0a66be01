import Icon from 'ol/style/Icon.js';
import Style from 'ol/style/Style.js';
import { ink, paper } from './ink';

/** What stands at one place and is drawn as a small sign of our own. */
export type SymbolKind =
  | 'exit'
  | 'fuel'
  | 'gas'
  | 'battery'
  | 'extinguisher'
  | 'people'
  | 'wheelchair'
  | 'steward';

const sidePixels = 24;
// Drawn larger than shown, so that it is crisp on every screen.
const finer = 4;

// Paths on a square of 24: strokes, then areas filled with ink.
const paths: Readonly<Record<SymbolKind, { readonly stroke: string; readonly fill?: string }>> = {
  exit: { stroke: 'M6 4 V20 M18 4 V20', fill: 'M12 4 L16 11 H13.4 V20 H10.6 V11 H8 Z' },
  fuel: { stroke: 'M6 8 H16 V20 H6 Z M16 10 L20 5', fill: 'M8 15 H14 V18 H8 Z' },
  gas: { stroke: 'M8 20 V10 Q8 7 12 7 Q16 7 16 10 V20 Z M12 7 V4 M9.5 4 H14.5' },
  battery: {
    stroke: 'M4 8 H20 V19 H4 Z M7 13.5 H10 M14 13.5 H17 M15.5 12 V15',
    fill: 'M6 5 H9 V8 H6 Z M15 5 H18 V8 H15 Z',
  },
  extinguisher: { stroke: 'M12 6 Q18 5 18 12 M9 4 H13', fill: 'M8 20 V9 Q8 6.5 11 6.5 Q14 6.5 14 9 V20 Z' },
  people: { stroke: 'M5.5 20 Q6 12.5 12 12.5 Q18 12.5 18.5 20 Z', fill: 'M12 4 A3.4 3.4 0 1 1 11.99 4 Z' },
  wheelchair: {
    stroke: 'M8 5 V11 H15 L18 18 M11 11 A5 5 0 1 0 14.6 17',
    fill: 'M8 2.5 A2 2 0 1 1 7.99 2.5 Z',
  },
  steward: { stroke: 'M7 21 V3', fill: 'M7 4 L19 7.5 L7 11 Z' },
};

const drawn = new Map<SymbolKind, HTMLCanvasElement>();

// Seen from far, where one sign would cover its neighbours, signs are smaller.
const farMetresPerPixel = 0.12;

/** The sign as a style for a place. Labels keep clear of it; it never gives way to one. */
export function symbolStyle(kind: SymbolKind, metresPerPixel: number): Style {
  const sign = drawn.get(kind) ?? draw(kind);
  drawn.set(kind, sign);
  const scale = (metresPerPixel > farMetresPerPixel ? 0.72 : 1) / finer;
  return new Style({ zIndex: 1, image: new Icon({ img: sign, scale, declutterMode: 'obstacle' }) });
}

function draw(kind: SymbolKind): HTMLCanvasElement {
  const sign = document.createElement('canvas');
  sign.width = sidePixels * finer;
  sign.height = sidePixels * finer;
  const pen = sign.getContext('2d');
  if (pen !== null) {
    pen.scale(finer, finer);
    pen.lineJoin = 'round';
    pen.lineCap = 'round';
    strokeAndFill(pen, kind, paper, 5);
    strokeAndFill(pen, kind, ink, 1.8);
  }
  return sign;
}

function strokeAndFill(pen: CanvasRenderingContext2D, kind: SymbolKind, color: string, width: number): void {
  const { stroke, fill } = paths[kind];
  pen.strokeStyle = color;
  pen.fillStyle = color;
  pen.lineWidth = width;
  pen.stroke(new Path2D(stroke));
  if (fill !== undefined) {
    const area = new Path2D(fill);
    pen.fill(area);
    if (color === paper) {
      pen.stroke(area);
    }
  }
}
