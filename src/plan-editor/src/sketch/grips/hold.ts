import type { PlanPoint } from '../../plan/planFile';
import type { ScreenPoint } from '../geometry/frame';
import type { Grip } from './grip';
import { type Key, type KeyStep, keyStep } from './keyStep';
import type { Movement } from './movement';

// A finger that moves less than this has tapped.
const tapPixels = 4;

/** Where a finger is: on the screen and on the plan. */
export interface Finger {
  readonly screen: ScreenPoint;
  readonly plan: PlanPoint;
}

/** Turns what a finger or a key does to one grip into steps of a movement. It knows no canvas and no button. */
export class Hold {
  readonly #movement: Movement;
  #finger: { readonly grip: Grip; readonly from: Finger } | null = null;
  #keys: { readonly grip: Grip; readonly total: KeyStep } | null = null;

  constructor(movement: Movement) {
    this.#movement = movement;
  }

  press(grip: Grip, at: Finger): void {
    if (!this.#movement.underWay) {
      this.#finger = { grip, from: at };
    }
  }

  drag(at: Finger): void {
    if (this.#finger === null) {
      return;
    }
    const { grip, from } = this.#finger;
    if (!this.#movement.underWay && pixelsBetween(from.screen, at.screen) > tapPixels) {
      this.#movement.begin(grip.change);
    }
    if (this.#movement.underWay) {
      this.#movement.step(grip.drag(from.plan, at.plan));
    }
  }

  /** The finger is off. Whether it was a tap, nothing moved and nothing given up. */
  release(): boolean {
    const wasHeld = this.#finger !== null;
    this.#finger = null;
    if (wasHeld && this.#movement.underWay) {
      this.#movement.finish();
      return false;
    }
    return wasHeld;
  }

  /** A key is down, again if it is held. Whether it meant something here. */
  keyDown(grip: Grip, key: Key): boolean {
    if (key.key === 'Escape') {
      return this.giveUp();
    }
    const step = this.#finger === null ? keyStep(key) : null;
    const held = this.#keys ?? { grip, total: { rightMetres: 0, upMetres: 0, turnDegrees: 0 } };
    const total = step === null ? null : sumOf(held.total, step);
    const edit = total === null ? null : held.grip.press(total);
    if (total === null || edit === null) {
      return false;
    }
    if (this.#keys === null) {
      this.#movement.begin(grip.changeByKeys(total));
    }
    this.#keys = { grip: held.grip, total };
    this.#movement.step(edit);
    return true;
  }

  /** A key is up or the focus gone: however often the key repeated, it was one change. */
  keysUp(): void {
    if (this.#keys !== null) {
      this.#keys = null;
      this.#movement.finish();
    }
  }

  giveUp(): boolean {
    const wasMoving = this.#movement.underWay;
    this.#finger = null;
    this.#keys = null;
    if (wasMoving) {
      this.#movement.giveUp();
    }
    return wasMoving;
  }
}

function pixelsBetween(a: ScreenPoint, b: ScreenPoint): number {
  return Math.hypot(b.leftPixels - a.leftPixels, b.topPixels - a.topPixels);
}

function sumOf(a: KeyStep, b: KeyStep): KeyStep {
  return {
    rightMetres: a.rightMetres + b.rightMetres,
    upMetres: a.upMetres + b.upMetres,
    turnDegrees: a.turnDegrees + b.turnDegrees,
  };
}
