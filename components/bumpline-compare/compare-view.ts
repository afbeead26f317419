import type { TemplateResult } from 'lit';
import type { At, CompareRequest, Comparison } from '../../core/answers/compare.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import type { CarDocument, CornerName } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import type { Corner } from '../../core/linkage/corner.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import type { SheetHost, SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import type { Told } from './bumpline-compare.words.js';
import type { ComparedCurves, WrongSet } from './compared-curves.js';
import type { ComparedSets } from './compared-sets.js';

/** A camber curve under its parts' name. */
export interface NamedCurve {
  /** For people. */
  name: string;
  /** As `bumpline/core` makes it. */
  curve: CurveData;
  /** Curves with the same text here are in doubt together. */
  shares?: string;
  /** Of parts on a linkage: whether the tie rod was corrected with them. It decides where they break even. */
  tieRod?: 'corrected' | 'not corrected';
}

/** What a page may say in attributes and properties. */
export interface CompareAttributes {
  over: string | number | undefined;
  heights: string | undefined;
  setups: readonly Setup[] | undefined;
  curves: readonly NamedCurve[] | undefined;
  toePage: string | undefined;
}

export interface Answered {
  comparison: Comparison;
  request: CompareRequest;
  names: readonly string[];
  /** Which of them is the car's own curve; −1: none. */
  own: number;
}

/** What the views of `bumpline-compare` know of it. */
export interface CompareView extends SheetView<Answered, SheetHost & CompareAttributes> {
  /** What is compared of the car, and whose it is. */
  readonly compared: ComparedSets;
  /** What is wrong with the car's own curve, which is left out of the comparison then. */
  readonly leftOut: readonly Problem[];
  /** Sets whose parts do not go on. */
  readonly wrong: readonly WrongSet[];
  /** The car's own links with no parts on, once they are solved. */
  readonly corner: Corner | undefined;
  readonly curves: Pick<ComparedCurves, 'bareCorner' | 'known' | 'rollCentreOf' | 'toeOf'>;
  readonly cornerName: CornerName;
  readonly setups: readonly Setup[];
  readonly isExample: boolean;
  /** What is compared, by name. */
  readonly named: readonly { name: string }[];
  readonly heights: readonly number[];
  readonly over: number;
  /** What a page gives as its bump, where that is no length. */
  readonly unreadOver: string | undefined;
  /** Which two cells are compared: of those that are answered, while others are still coming or have just gone. */
  readonly cells: { from: At; to: At };
  readonly told: Told | undefined;
  readonly sentence: { readonly over: SentenceField; render(): TemplateResult };
  /** The page's table that the sets are of, as it was understood. */
  readonly pageTable: Pick<Understanding, 'derived' | 'columns'> | undefined;
  /** The first tap chooses one cell, the second the other. */
  choose(cell: At): void;
  /** Changes what is compared: `heights`, `heights.0`, `over`. */
  set(path: string, label: string, compare: CarDocument['compare']): void;
  setHeight(index: number, drop: number): void;
}
