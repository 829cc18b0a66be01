import type { Lined, Outlined, Placed, PlanFile, PlanPoint, PlanPoints } from '../plan/planFile';
import { enclosureWords, kindWords } from './words';

export type ElementKind =
  | 'groundPatch'
  | 'enclosure'
  | 'structure'
  | 'stand'
  | 'burnable'
  | 'peopleArea'
  | 'debrisScreen'
  | 'exit'
  | 'fuel'
  | 'gas'
  | 'battery'
  | 'extinguisher'
  | 'people'
  | 'wheelchair'
  | 'steward';

/** Something of a plan that is drawn, has a name and can be chosen; engines and the crowd line are drawn apart. */
export interface PlanElement {
  readonly id: string;
  readonly kind: ElementKind;
  readonly name: string;
  /** One place, an open line or a closed outline. */
  readonly shape: 'place' | 'line' | 'outline';
  readonly points: PlanPoints;
}

/** The elements of a plan from the ground up: a later one is drawn over an earlier one. */
export function elementsOf(plan: PlanFile): readonly PlanElement[] {
  const { site, people = [], viewing, supplies } = plan;
  return [
    ...outlined('groundPatch', site.groundPatches),
    ...enclosureOf(plan),
    ...lined('structure', site.structures),
    ...outlined('stand', site.stands),
    ...outlined('burnable', site.burnables),
    ...people.flatMap(({ area, ...group }) =>
      area === undefined ? [] : outlined('peopleArea', [{ ...group, outline: area }]),
    ),
    ...lined('debrisScreen', plan.debrisScreens),
    ...placed('exit', site.exits),
    ...placed('fuel', supplies?.fuel),
    ...placed('gas', supplies?.gas),
    ...placed('battery', supplies?.batteries),
    ...placed('extinguisher', supplies?.extinguishers),
    ...people.flatMap((group) =>
      group.area !== undefined || group.place === undefined
        ? []
        : placed('people', [{ ...group, place: group.place }]),
    ),
    ...placed('wheelchair', viewing?.wheelchairPlaces),
    ...placed('steward', viewing?.stewardPosts),
  ];
}

/** The middle of an element's points, where it is looked for. */
export function middleOf({ points }: Pick<PlanElement, 'points'>): PlanPoint {
  const sum = points.reduce<PlanPoint>(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

function enclosureOf({ site: { enclosure } }: PlanFile): readonly PlanElement[] {
  if (enclosure === undefined) {
    return [];
  }
  const name = enclosureWords[enclosure.kind ?? ''] ?? kindWords.enclosure;
  return outlined('enclosure', [{ id: enclosure.id, name, outline: enclosure.footprint }]);
}

function placed(kind: ElementKind, list: readonly Placed[] = []): readonly PlanElement[] {
  return list.map((e) => ({ ...named(kind, e), shape: 'place' as const, points: [e.place] }));
}

function lined(kind: ElementKind, list: readonly Lined[] = []): readonly PlanElement[] {
  return list.map((e) => ({ ...named(kind, e), shape: 'line' as const, points: e.line }));
}

function outlined(kind: ElementKind, list: readonly Outlined[] = []): readonly PlanElement[] {
  return list.map((e) => ({ ...named(kind, e), shape: 'outline' as const, points: e.outline }));
}

function named(kind: ElementKind, { id, name }: { readonly id: string; readonly name?: string }) {
  return { id, kind, name: name ?? kindWords[kind] };
}
