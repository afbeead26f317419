import type { AgreementAnswer } from '../../core/answers/agreement.js';
import type { PredictedShape, PredictSaid } from '../../core/answers/predict.js';
import type { LearntSource } from '../../core/curve-sources/source.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { PredictInUse, PredictSettings } from '../../core/document/predict-in-use.js';
import type { Prediction } from '../../core/document/predictions.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import type { ReadHost } from '../element/read-app.js';
import type { SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';

/** What a page may say in attributes and properties. */
export interface PredictHost extends ReadHost {
  drop: string | number | undefined;
}

/** What stands on the sheet, and what it was made from. */
export interface PredictOnSheet extends PredictSaid {
  source: LearntSource;
  /** The parts that it is of. */
  set: LinkedSet | undefined;
  /** Where the links were measured: travel of the curves is counted from there, mm below stock height. */
  measuredAt: number;
}

/** What was read with the parts on, laid over what was predicted of them. */
export interface Agreed extends AgreementAnswer {
  prediction: Prediction;
  /** The curve that was predicted, over travel from stock height: mm, degrees. */
  from: Float64Array;
  predicted: Float64Array;
}

/** What the views of `bumpline-predict` know of it. */
export interface PredictView extends SheetView<PredictOnSheet, PredictHost> {
  readonly sentence: { readonly drop: SentenceField; readonly over: SentenceField };
  /** The sets of parts of the car as it is edited, and which of them is asked about; below 0: none. */
  readonly sets: readonly LinkedSet[];
  readonly shown: number;
  /** What the prediction is learnt from, and what it still needs. */
  readonly learnt: PredictInUse;
  /** The bump that is asked about, mm. */
  readonly over: number;
  readonly quantity: ReadingQuantity;
  /** What a page gives as its drop or bump, where that is no length. */
  readonly unreadDrop: string | undefined;
  readonly unreadOver: string | undefined;
  /** The curve of parts that are being changed, for as long as their answer is on its way. */
  readonly moved: PredictedShape | undefined;
  changeDrop(drop: number): void;
  /** Changes what is asked. */
  set(label: string, settings: { [K in keyof PredictSettings]?: PredictSettings[K] | undefined }, step?: string): void;
  /** Asks about another of the sets. */
  choose(set: number): void;
}
