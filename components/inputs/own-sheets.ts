import type { Problem } from '../../core/quantity/problem.js';
import type { Display } from '../element/sentence.js';
import type { SheetKit } from './input-sheet.js';
import type { InputView } from './sheet-edits.js';
import { sheetProblemText } from './sheet-problem.js';
import type { SheetSpec } from './sheet-spec.js';

/** The sheets of what one element asks, beside those of a car. */
export class OwnSheets {
  readonly #sheets: ReadonlyMap<string, SheetSpec>;
  readonly #runs: readonly (readonly SheetSpec[])[];
  readonly #aliases: Readonly<Record<string, string>>;

  /**
   * @param runs those of them that lead from one to the next
   * @param aliases what a page's attribute calls a sheet's key
   */
  constructor(
    sheets: readonly SheetSpec[],
    runs: readonly (readonly SheetSpec[])[] = [],
    aliases: Readonly<Record<string, string>> = {},
  ) {
    this.#sheets = new Map(sheets.map((sheet) => [sheet.key, sheet]));
    this.#runs = runs;
    this.#aliases = aliases;
  }

  /** The one that a problem's path or a key names: its own, or that of one of its fields. */
  of(path: string): SheetSpec | undefined {
    return (
      this.#sheets.get(this.#aliases[path] ?? path) ??
      [...this.#sheets.values()].find(({ fields }) => fields.some((field) => field.path === path))
    );
  }

  /** A problem of one of them, by its title, or by its field's name where it has several; undefined of any other. */
  problemText(problem: Problem, display: Display): string | undefined {
    const sheet = this.of(problem.path);
    const isField = sheet?.fields.some(({ path }) => path === problem.path);
    return sheet && sheetProblemText(sheet, isField ? problem : { ...problem, path: sheet.key }, display);
  }

  /** With the sheets of the car. */
  kit(app: InputView, cars: SheetKit): SheetKit {
    return {
      ...cars,
      sheetOf: (key) => this.#sheets.get(key) ?? cars.sheetOf(key),
      describeProblem: (problem, sheet) =>
        this.problemText(problem, app.display) ?? cars.describeProblem(problem, sheet),
      runOf: (car, sheet) =>
        this.#sheets.has(sheet.key) ? (this.#runs.find((run) => run.includes(sheet)) ?? []) : cars.runOf(car, sheet),
    };
  }
}
