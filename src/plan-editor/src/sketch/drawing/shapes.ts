import Feature from 'ol/Feature.js';
import LineString from 'ol/geom/LineString.js';
import MultiPolygon from 'ol/geom/MultiPolygon.js';
import Point from 'ol/geom/Point.js';
import Polygon from 'ol/geom/Polygon.js';
import type Style from 'ol/style/Style.js';
import type { PlanPoint, PlanPoints } from '../../plan/planFile';
import type { Area } from '../../service/answers';

/** A row of places drawn as a line. */
export function lineFeature(points: PlanPoints, ...styles: readonly Style[]): Feature {
  return styled(new Feature(new LineString(points.map(copied))), styles);
}

/** An outline drawn as a filled area. */
export function outlineFeature(outline: PlanPoints, ...styles: readonly Style[]): Feature {
  const first = outline[0];
  const ring = first === undefined ? [] : [...outline, first].map(copied);
  return styled(new Feature(new Polygon([ring])), styles);
}

/** An area of the answer. */
export function areaFeature(area: Area, ...styles: readonly Style[]): Feature {
  const polygons = area.map((rings) => rings.map((ring) => ring.map(copied)));
  return styled(new Feature(new MultiPolygon(polygons)), styles);
}

/** A label along the outer edge of each part of an area. */
export function edgeLabels(area: Area, style: Style): readonly Feature[] {
  return area.flatMap(([shell]) => (shell === undefined ? [] : [lineFeature(shell, style)]));
}

/** A single place. */
export function placeFeature(place: PlanPoint, ...styles: readonly Style[]): Feature {
  return styled(new Feature(new Point(copied(place))), styles);
}

/** A single place that looks different from near and from far. */
export function scaledPlaceFeature(
  place: PlanPoint,
  look: (metresPerPixel: number) => readonly Style[],
): Feature {
  const feature = placeFeature(place);
  feature.setStyle((_, metresPerPixel) => [...look(metresPerPixel)]);
  return feature;
}

function styled(feature: Feature, styles: readonly Style[]): Feature {
  feature.setStyle([...styles]);
  return feature;
}

function copied([x, y]: PlanPoint): number[] {
  return [x, y];
}
