import type Feature from 'ol/Feature.js';
import Point from 'ol/geom/Point.js';
import Fill from 'ol/style/Fill.js';
import Style from 'ol/style/Style.js';
import type { Engine, PlanFile, PlanPoint } from '../../plan/planFile';
import { along } from '../geometry/along';
import { shortNameOf } from '../words';
import { benchOf, poseOf } from './bench';
import { ink, paper } from './ink';
import { labelStyle } from './label';
import { lineStyle } from './line';
import { lineFeature, outlineFeature, placeFeature } from './shapes';

const arrowHeadPixels = 11;

/** A bench with its nozzle, the way the exhaust blows and the engine's name. */
export function engineMarks(engine: Engine, metresPerPixel: number): readonly Feature[] {
  const { corners, armEnd, middle } = benchOf(engine, metresPerPixel);
  const { place, headingDegrees } = poseOf(engine);
  const head = arrowHeadPixels * metresPerPixel;
  const tip = along(place, headingDegrees, 38 * metresPerPixel);
  return [
    lineFeature([place, armEnd], lineStyle(5, undefined, paper, 20), lineStyle(2.5, undefined, ink, 21)),
    lineFeature(
      [along(tip, headingDegrees + 150, head), tip, along(tip, headingDegrees - 150, head)],
      lineStyle(2.5, undefined, ink, 21),
    ),
    outlineFeature(
      corners,
      new Style({ fill: new Fill({ color: paper }), zIndex: 22 }),
      lineStyle(3, undefined, ink, 23),
    ),
    lineFeature([middle, place], lineStyle(7, undefined, ink, 24)),
    placeFeature(namePlace(engine, metresPerPixel), nameOf(engine)),
  ];
}

/** The engines' names as obstacles to the still sheet's labels, which know nothing of what moves above them. */
export function nameObstacles({ engines = [] }: PlanFile): readonly Feature[] {
  return engines.map((engine) => {
    const feature = placeFeature(engine.place);
    const style = nameOf(engine, true);
    feature.setStyle((_, resolution) => {
      style.setGeometry(new Point([...namePlace(engine, resolution)]));
      return style;
    });
    return feature;
  });
}

// Below the bench, or above it where the exhaust blows down the sheet: out of the way of arrow and handle.
function namePlace(engine: Engine, metresPerPixel: number): PlanPoint {
  const { corners, middle } = benchOf(engine, metresPerPixel);
  const radians = (poseOf(engine).headingDegrees * Math.PI) / 180;
  const half = Math.max(...corners.map(([, y]) => Math.abs(y - middle[1]))) + 14 * metresPerPixel;
  return [middle[0], middle[1] + (Math.cos(radians) < -0.3 ? half : -half)];
}

function nameOf(engine: Engine, unseen = false): Style {
  return labelStyle(shortNameOf(engine), {
    weight: 700,
    sizePixels: 15,
    rank: 30,
    unseen,
    always: true,
  });
}
