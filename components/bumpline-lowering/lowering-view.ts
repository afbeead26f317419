import type { TemplateResult } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { SheetHost, SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import type { PageHeights, PageSource } from '../page-data/page-source.js';

/** What a page may say of it, in attributes and properties. */
export interface LoweringHost extends SheetHost, PageHeights, Omit<PageSource, 'light'> {
  limits: string | undefined;
  setup: string | undefined;
}

/** The sentence's far end: a camber change, from which the drop is found. */
export interface FarField extends Pick<SentenceField, 'quantity' | 'take'> {
  readonly problems: Problem[];
  render(text: string): TemplateResult;
}

/** What the views of `bumpline-lowering` know of it. */
export interface LoweringView extends SheetView<LoweringAnswer, LoweringHost> {
  readonly sentence: { readonly drop: SentenceField; change: FarField | undefined };
  /** What a page gives as its drop, where that is no length. */
  readonly unreadDrop: string | undefined;
  changeDrop(drop: number): void;
  /** The same, whatever was typed in its field. */
  setDrop(drop: number): void;
}
