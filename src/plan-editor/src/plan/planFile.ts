/**
 * A plan file as the page handles it. Only members the page reads or writes are named; all others are carried along
 * untouched, because the service owns the format (/api/plan-schema) and the page must never lose a member.
 */
export interface PlanFile {
  readonly schema: string;
  readonly title: string;
  readonly event?: { readonly name?: string };
  /** Ids of the noise rules chosen. */
  readonly ruleSets?: readonly string[];
  readonly site: Site;
  readonly engines?: readonly Engine[];
  readonly people?: readonly PersonGroup[];
  readonly crowdLine?: CrowdLine;
  readonly debrisScreens?: readonly Lined[];
  readonly viewing?: {
    readonly wheelchairPlaces?: readonly Placed[];
    readonly stewardPosts?: readonly Placed[];
  };
  readonly supplies?: {
    readonly fuel?: readonly Placed[];
    readonly gas?: readonly Placed[];
    readonly batteries?: readonly Placed[];
    readonly extinguishers?: readonly Placed[];
  };
}

/** A place on the plan in metres: x to the right, y up. */
export type PlanPoint = readonly [x: number, y: number];

/** A closed or open row of places; an outline's last corner joins its first. */
export type PlanPoints = readonly PlanPoint[];

export interface Named {
  readonly id: string;
  readonly name?: string;
}

export interface Outlined extends Named {
  readonly outline: PlanPoints;
}

export interface Placed extends Named {
  readonly place: PlanPoint;
}

export interface Lined extends Named {
  readonly line: PlanPoints;
}

/** A number with its pedigree; only the number is read here. */
export interface Stated {
  readonly value: number;
}

export interface Site {
  readonly outline: PlanPoints;
  readonly northDegrees?: number;
  readonly groundPatches?: readonly Outlined[];
  readonly enclosure?: { readonly id: string; readonly kind?: string; readonly footprint: PlanPoints };
  readonly structures?: readonly Lined[];
  readonly exits?: readonly Placed[];
  readonly burnables?: readonly Outlined[];
  readonly stands?: readonly Outlined[];
}

export interface Engine extends Placed {
  /** Where the exhaust blows to, in degrees clockwise from the plan's up direction. */
  readonly exhaustHeadingDegrees?: number;
  readonly bench?: { readonly lengthMetres?: Stated; readonly widthMetres?: Stated };
}

export interface PersonGroup extends Named {
  readonly role: string;
  readonly place?: PlanPoint;
  readonly area?: PlanPoints;
}

export interface CrowdLine {
  readonly line: PlanPoints;
}
