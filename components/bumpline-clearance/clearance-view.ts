import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import type { Fitment } from '../../core/document/fitment.js';
import type { TravelLimits } from '../../core/travel/travel-limits.js';
import type { SheetHost, SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import type { Told } from './bumpline-clearance.words.js';
import type { Asked } from './clearance-question.js';

/** What a page may say in attributes and properties. */
export interface ClearanceAttributes {
  drop: string | number | undefined;
  fit: Fitment | undefined;
  limits: TravelLimits | string | undefined;
  lock: string | number | undefined;
  wheelAfter: string | undefined;
  wheelBefore: string | undefined;
}

/** What the views of `bumpline-clearance` know of it. */
export interface ClearanceView extends SheetView<DrawnClearance, SheetHost & ClearanceAttributes> {
  /** What the answer was asked with. */
  readonly asked: Asked | undefined;
  readonly told: Told | undefined;
  /** Whether the steering was looked at for what is shown. */
  readonly isComplete: boolean;
  /** How far out the wheel that is asked about stands from the one that was on, mm. */
  readonly plane: number;
  /** The place that is drawn: the one that was chosen, else the one that decides. */
  readonly selected: number | undefined;
  readonly sentence: Readonly<Record<'drop' | 'plane', SentenceField>>;
  select(place: number): void;
  changeDrop(drop: number): void;
  changePlane(plane: number): void;
  /** The slider is moved. */
  dragPlane(plane: number): void;
}
