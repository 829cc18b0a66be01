import type Feature from 'ol/Feature.js';
import Fill from 'ol/style/Fill.js';
import Style from 'ol/style/Style.js';
import Text from 'ol/style/Text.js';
import type { PlanPoint } from '../../plan/planFile';
import type { FindingEntry } from '../../service/answers';
import { stopWords } from '../words';
import { ink, paper, typeOf } from './ink';
import { placeFeature } from './shapes';

/** Where a stop stands, once for each place. What it is stands in the drawer. */
export function stopMarks(findings: readonly FindingEntry[]): readonly Feature[] {
  const places = new Map<string, PlanPoint>();
  for (const { finding } of findings) {
    if (finding.severity === 'stop' && finding.place !== undefined) {
      places.set(finding.place.join(), finding.place);
    }
  }
  return [...places.values()].map((place) => placeFeature(place, plate()));
}

function plate(): Style {
  return new Style({
    zIndex: 7,
    text: new Text({
      text: stopWords,
      font: typeOf(12, 700),
      fill: new Fill({ color: paper }),
      backgroundFill: new Fill({ color: ink }),
      padding: [1, 4, 0, 4],
      offsetX: -14,
      offsetY: -20,
    }),
  });
}
