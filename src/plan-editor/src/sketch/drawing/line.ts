import Stroke from 'ol/style/Stroke.js';
import Style from 'ol/style/Style.js';
import { ink } from './ink';

/** A line of ink; `dash` in CSS pixels. */
export function lineStyle(width: number, dash?: readonly number[], color: string = ink, rank = 0): Style {
  const stroke = new Stroke({ color, width, lineCap: 'butt', lineJoin: 'round' });
  if (dash !== undefined) {
    stroke.setLineDash([...dash]);
  }
  return new Style({ stroke, zIndex: rank });
}
