import type { Desk, Edit } from '../../desk/desk';

/** Asks to be called before the next painting; the answer calls it off. */
export type NextFrame = (act: () => void) => () => void;

/**
 * One thing being moved, by finger or by a key held down: begun, stepped any number of times, then finished or given up.
 * The desk hears of steps at most once a frame. Anything out of order throws.
 */
export class Movement {
  readonly #desk: Pick<Desk, 'move' | 'change' | 'giveUpMove'>;
  readonly #nextFrame: NextFrame;
  #name: string | null = null;
  #latest: Edit | null = null;
  #callOff: (() => void) | null = null;

  constructor(desk: Pick<Desk, 'move' | 'change' | 'giveUpMove'>, nextFrame: NextFrame) {
    this.#desk = desk;
    this.#nextFrame = nextFrame;
  }

  get underWay(): boolean {
    return this.#name !== null;
  }

  begin(name: string): void {
    if (this.#name !== null) {
      throw new Error(`“${this.#name}” is still under way.`);
    }
    this.#name = name;
  }

  step(edit: Edit): void {
    this.#mustBeUnderWay();
    this.#latest = edit;
    this.#callOff ??= this.#nextFrame(() => {
      this.#callOff = null;
      if (this.#latest !== null) {
        this.#desk.move(this.#latest);
      }
    });
  }

  finish(): void {
    const name = this.#mustBeUnderWay();
    const edit = this.#latest;
    this.#rest();
    if (edit !== null) {
      this.#desk.change(name, edit);
    }
  }

  giveUp(): void {
    this.#mustBeUnderWay();
    this.#rest();
    this.#desk.giveUpMove();
  }

  #mustBeUnderWay(): string {
    if (this.#name === null) {
      throw new Error('Nothing is being moved.');
    }
    return this.#name;
  }

  #rest(): void {
    this.#callOff?.();
    this.#callOff = null;
    this.#name = null;
    this.#latest = null;
  }
}
