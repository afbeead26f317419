import type { At } from '../../core/answers/compare.js';

/** Which two cells are compared: the first tap chooses one, the second the other. */
export class ChosenCells {
  #from: At | undefined;
  #to: At | undefined;

  tap(cell: At): void {
    if (this.#from && !this.#to) this.#to = cell;
    else [this.#from, this.#to] = [cell, undefined];
  }

  /** The sets are others: what was chosen of those before is no choice of these. */
  forget(): void {
    this.#from = undefined;
    this.#to = undefined;
  }

  /** Inside a table that may have become smaller. After one tap both are the same cell; before any, the two that come first. */
  within(curves: number, heights: number, first: { from: At; to: At }): { from: At; to: At } {
    const inside = ({ curve, height }: At): At => ({
      curve: Math.min(curve, curves - 1),
      height: Math.min(height, heights - 1),
    });
    return { from: inside(this.#from ?? first.from), to: inside(this.#to ?? this.#from ?? first.to) };
  }
}
