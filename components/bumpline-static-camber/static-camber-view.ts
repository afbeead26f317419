import type { StaticCamberAnswer } from '../../core/answers/static-camber.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CamberAdded } from '../../core/document/camber-added.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { LinkedHost } from '../element/linked-app.js';
import type { SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';

/** What a page may say in attributes and properties. */
export interface StaticCamberHost extends LinkedHost {
  by: string | number | undefined;
  drop: string | number | undefined;
  over: string | number | undefined;
}

/** What stands on the sheet, and what it was made from. */
export interface WaysOnSheet extends StaticCamberAnswer {
  source: AnySource;
  /** The parts that are on already. */
  set: LinkedSet | undefined;
  /** Where the links were measured, mm below stock height. */
  measuredAt: number;
  /** How much lower it stood when camber was read. */
  camberReadLower?: number;
}

/** What the views of `bumpline-static-camber` know of it. */
export interface StaticCamberView extends SheetView<WaysOnSheet, StaticCamberHost> {
  readonly sentence: { readonly by: SentenceField; readonly drop: SentenceField };
  /** The sets of parts of the car as it is edited, and which of them is on; below 0: none. */
  readonly sets: readonly LinkedSet[];
  readonly shown: number;
  /** The static camber that is asked for, degrees. */
  readonly by: number;
  /** The bump that changes are told over, mm. */
  readonly over: number;
  /** What a page gives as its amount or drop, where that is none. */
  readonly unreadBy: string | undefined;
  readonly unreadDrop: string | undefined;
  changeDrop(drop: number): void;
  /** Changes what is asked about adding camber. */
  set(label: string, settings: { [K in keyof CamberAdded]?: CamberAdded[K] | undefined }, step?: string): void;
  /** Has another of the sets on; below 0: none. */
  choose(set: number): void;
}
