import type Feature from 'ol/Feature.js';
import DragPan from 'ol/interaction/DragPan.js';
import KeyboardPan from 'ol/interaction/KeyboardPan.js';
import KeyboardZoom from 'ol/interaction/KeyboardZoom.js';
import MouseWheelZoom from 'ol/interaction/MouseWheelZoom.js';
import PinchZoom from 'ol/interaction/PinchZoom.js';
import type BaseLayer from 'ol/layer/Base.js';
import VectorLayer from 'ol/layer/Vector.js';
import OpenLayersMap from 'ol/Map.js';
import VectorSource from 'ol/source/Vector.js';
import View from 'ol/View.js';
import type { PlanPoint, PlanPoints } from '../plan/planFile';
import type { Frame } from './geometry/frame';
import { planMetres } from './planMetres';

/**
 * Two canvases over one view: a still one that is painted when the plan has come to rest, and a moving one above it that
 * is all that is painted while a finger drags.
 */
export interface Sheet {
  readonly still: OpenLayersMap;
  readonly moving: OpenLayersMap;
  readonly view: View;
  /** Brings an outline into view and says what is in view then. */
  showWhole(outline: PlanPoints): Frame | null;
  zoomBy(times: number): void;
  /** Brings a place into view when it lies outside. */
  reveal(place: PlanPoint): void;
  close(): void;
}

export function openSheet(
  below: HTMLElement,
  above: HTMLElement,
  layers: { readonly still: readonly BaseLayer[]; readonly moving: readonly BaseLayer[] },
  onPaint: (frame: Frame) => void,
): Sheet {
  const view = new View({
    projection: planMetres,
    center: [0, 0],
    resolution: 0.3,
    minResolution: 0.004,
    maxResolution: 10,
    enableRotation: false,
    smoothResolutionConstraint: false,
  });
  const still = new OpenLayersMap({
    target: below,
    view,
    layers: [...layers.still],
    controls: [],
    interactions: [],
  });
  const moving = new OpenLayersMap({
    target: above,
    view,
    layers: [...layers.moving],
    controls: [],
    interactions: [
      new DragPan(),
      new PinchZoom(),
      new MouseWheelZoom(),
      new KeyboardPan({ pixelDelta: 64 }),
      new KeyboardZoom({ delta: 0.5 }),
    ],
  });
  moving.on('postrender', () => {
    const frame = frameOf(moving);
    if (frame !== null) {
      onPaint(frame);
    }
  });
  return { still, moving, view, ...movements(view, moving), close: () => [still, moving].map(closeMap) };
}

/** A layer whose marks are handed over whole. */
export function inkLayer(declutter: string | false, zIndex: number) {
  const source = new VectorSource<Feature>({ useSpatialIndex: false });
  const layer = new VectorLayer({
    source,
    declutter,
    zIndex,
    updateWhileAnimating: true,
    updateWhileInteracting: true,
  });
  return {
    layer,
    show(features: readonly Feature[]) {
      if (features.length > 0 || source.getFeatures().length > 0) {
        source.clear(true);
        source.addFeatures([...features]);
      }
    },
  };
}

// Room for scale bar and buttons at the foot, and a margin on the other sides.
const footPixels = 68;
// And for the handle that turns an engine whose exhaust blows up the sheet.
const headPixels = 52;
const margin = 14;

function movements(view: View, map: OpenLayersMap): Pick<Sheet, 'showWhole' | 'zoomBy' | 'reveal'> {
  const still = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  const duration = still ? 0 : 180;
  return {
    showWhole(outline) {
      const xs = outline.map(([x]) => x);
      const ys = outline.map(([, y]) => y);
      view.fit([Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)], {
        padding: [headPixels, margin, footPixels, margin],
      });
      return frameOf(map);
    },
    zoomBy: (times) => view.animate({ resolution: (view.getResolution() ?? 1) / times, duration }),
    reveal([x, y]) {
      const [left = 0, bottom = 0, right = 0, top = 0] = view.calculateExtent(map.getSize());
      if (x < left || x > right || y < bottom || y > top) {
        view.animate({ center: [x, y], duration });
      }
    },
  };
}

function frameOf(map: OpenLayersMap): Frame | null {
  const [widthPixels, heightPixels] = map.getSize() ?? [];
  const [x, y] = map.getView().getCenter() ?? [];
  const metresPerPixel = map.getView().getResolution();
  return widthPixels && heightPixels && x !== undefined && y !== undefined && metresPerPixel
    ? { middle: [x, y], metresPerPixel, widthPixels, heightPixels }
    : null;
}

function closeMap(map: OpenLayersMap): void {
  map.setTarget(undefined);
  map.dispose();
}
