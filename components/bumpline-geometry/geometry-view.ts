import type { LinksOverTravel } from '../../core/answers/geometry-at.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { Setup } from '../../core/document/setup.js';
import type { CornerHost } from '../element/corner-app.js';
import type { SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';

/** Links with a set of parts on. */
export interface FittedLinks extends LinksOverTravel {
  /** The parts, and whose they are. */
  set: LinkedSet;
}

/** What links do over travel from stock height, bare and with each set of parts. mm and degrees. */
export interface WorkbenchAnswer {
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** The bump from there over which angles are told, mm: shorter where the links end before. */
  over: number;
  /** Without any parts. */
  bare: LinksOverTravel;
  /** With each set of parts. */
  sets: readonly FittedLinks[];
  /** Which of the sets the sentence is about. */
  shown: number;
}

/** Whether somebody said how well the links are known: else what parts alone leave open would claim too much. */
export const isDoubtStated = ({ bare }: WorkbenchAnswer): boolean => (bare.doubt?.sources.length ?? 0) > 0;

/** What a page may say in attributes and properties. */
export interface GeometryHost extends CornerHost {
  drop: string | number | undefined;
  corner: unknown;
  setups: readonly Setup[] | undefined;
}

/** What the views of `bumpline-geometry` know of it. */
export interface GeometryView extends SheetView<WorkbenchAnswer, GeometryHost> {
  readonly sentence: { readonly drop: SentenceField };
  /** The sets of parts of the car as it is edited, and which of them is on. */
  readonly sets: readonly LinkedSet[];
  readonly shown: number;
  /** What a page gives as its drop, where that is no length. */
  readonly unreadDrop: string | undefined;
  changeDrop(drop: number): void;
  /** Has another of the sets on. */
  choose(set: number): void;
}
