import type { LitElement } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import type { Corner } from '../../core/linkage/corner.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Display } from '../element/sentence.js';
import type { Drafts } from '../inputs/drafts.js';
import type { PartEntry } from './part-entries.js';

/** A set of parts that is edited, and what an element does with a change. */
export interface PartsEdit {
  host: LitElement;
  drafts: Drafts;
  display: Display;
  /** Before `parts.0.mm` in drafts: ends with a point, or is empty where there is but one set. */
  path: string;
  setup: Pick<Setup, 'parts' | 'alignment'>;
  /** What they are put on, where that is known: it decides which parts there are. */
  corner: Corner | undefined;
  /** What the core says of them, by its own paths: `parts.0.mm`, `parts.0`, `alignment`. */
  problems: readonly Problem[];
  /** Says how large a part must be for a goal; left out where nothing can be asked of the links. */
  renderFinder?(edit: PartsEdit, data: PartData, at: number, entry: PartEntry): unknown;
  /** Changes the set; those with the same step are one step of undo. */
  change(label: string, recipe: (setup: Setup) => Setup, step?: string): void;
  /** What is typed is no number after all: back to before the step. */
  cancel(step: string): void;
  /** Typing begins, or it is over. */
  begin(): void;
  end(): void;
}

/** The set with other parts. */
export const withList = (setup: Setup, recipe: (parts: readonly PartData[]) => readonly PartData[]): Setup => ({
  ...setup,
  parts: recipe(setup.parts ?? []),
});

/** What a set's fields are called in drafts. */
export const partPath = ({ path }: Pick<PartsEdit, 'path'>, at: number, field: string): string =>
  `${path}parts.${at}.${field}`;

/** Changes one part of the set. */
export function changePart(
  edit: PartsEdit,
  at: number,
  label: string,
  recipe: (data: PartData) => PartData,
  step?: string,
): void {
  edit.change(label, (setup) => withList(setup, (all) => all.map((data, i) => (i === at ? recipe(data) : data))), step);
}
