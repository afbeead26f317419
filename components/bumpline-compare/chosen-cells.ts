import type { At } from '../../core/answers/compare.js';

/** Which two cells are compared: the first tap chooses one, the second the other. */
export class ChosenCells {
  #from: At | undefined;
  #to: At | undefined;

  tap(cell: At): void {
    if (this.#from && !this.#to) this.#to = cell;
    else [this.#from, this.#to] = [cell, undefined];
  }

  /** Inside a table that may have become smaller. After one tap both are the same cell. */
  within(curves: number, heights: number): { from: At; to: At } {
    const inside = ({ curve, height }: At): At => ({
      curve: Math.min(curve, curves - 1),
      height: Math.min(height, heights - 1),
    });
    const from = this.#from ?? { curve: 0, height: 0 };
    return { from: inside(from), to: inside(this.#to ?? this.#from ?? { curve: 1, height: 1 }) };
  }
}
