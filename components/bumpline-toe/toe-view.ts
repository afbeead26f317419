import type { ToeAnswer } from '../../core/answers/toe.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { ToeSettings } from '../../core/document/toe-settings.js';
import type { ReadHost } from '../element/read-app.js';
import type { SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';

/** What a page may say in attributes and properties. */
export interface ToeHost extends ReadHost {
  drop: string | number | undefined;
}

/** What stands on the sheet, and what it was made from. */
export interface ToeOnSheet extends ToeAnswer {
  source: AnySource;
  /** The parts that are on; of readings none. */
  set: LinkedSet | undefined;
  /** What the curve was fitted to. */
  readings?: { travel: Float64Array; value: Float64Array };
  /** Where the source was measured: its travel is counted from there, mm below stock height. */
  measuredAt: number;
}

/** What the views of `bumpline-toe` know of it. */
export interface ToeView extends SheetView<ToeOnSheet, ToeHost> {
  readonly sentence: { readonly drop: SentenceField; readonly over: SentenceField };
  /** The sets of parts of the car as it is edited, and which of them is on; below 0: none. */
  readonly sets: readonly LinkedSet[];
  readonly shown: number;
  /** Whether toe is known from readings. */
  readonly isRead: boolean;
  /** The bump that is asked about, mm. */
  readonly over: number;
  /** What a page gives as its drop or bump, where that is no length. */
  readonly unreadDrop: string | undefined;
  readonly unreadOver: string | undefined;
  changeDrop(drop: number): void;
  /** Changes what is asked about toe. */
  set(label: string, settings: Partial<{ [K in keyof ToeSettings]: ToeSettings[K] | undefined }>, step?: string): void;
  /** Has another of the sets on; below 0: none. */
  choose(set: number): void;
}
