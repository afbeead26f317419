import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { Setup } from '../../core/document/setup.js';
import type { SheetHost, SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../shared/sentence-field.js';
import type { PageTable, ReadingsAttributes } from './page-readings.js';
import type { ReadingsHost } from './readings-host.js';

/** What the views of `bumpline-readings` know of it. */
export interface ReadingsView extends SheetView<ReadingsAnswer, SheetHost & ReadingsAttributes>, ReadingsHost {
  readonly host: SheetHost & ReadingsAttributes;
  /** The set that the answer is of: while there are problems, not the one that is being edited. */
  readonly answeredSetup: Setup | undefined;
  /** The travel in the sentence. */
  readonly over: SentenceField;
  /** What was read in the page's table, where there is one. */
  readonly pageTable: PageTable['understanding'];
  readonly degree: number | undefined;
  setDegree(degree: number | undefined): void;
  /** Changes what is shown, whoever gave it: of somebody else's readings the user gets a set with the change in it, which says whose it was. */
  editShown(label: string, recipe: (setup: Setup) => Setup): void;
}
