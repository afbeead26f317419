import type { LitElement } from 'lit';
import type { SheetView } from '../element/sheet-view.js';
import { SentenceField } from './sentence-field.js';

/** What the drop of a sentence knows of the sheet that it stands on. */
type DropView = Pick<SheetView, 'drafts' | 'display' | 'car' | 'model' | 'beginEdit' | 'endStep'> & {
  readonly host: LitElement;
  readonly unreadDrop: string | undefined;
  changeDrop(drop: number): void;
};

/** The drop, edited in the sentence. @param text as it stands there */
export const dropField = (app: DropView, label: string, text: (drop: number) => string): SentenceField =>
  new SentenceField({
    host: app.host,
    drafts: app.drafts,
    path: 'drop',
    label,
    quantity: 'drop',
    display: () => app.display,
    value: () => app.car.drop,
    // What a page wrote there and nobody could read stands there, and no other car's drop.
    text: () => app.unreadDrop ?? text(app.car.drop),
    change: (drop) => app.changeDrop(drop),
    cancel: () => app.model.cancelStep('drop'),
    begin: () => {
      // What came by slider or arrow keys before is a step of its own.
      app.model.endStep();
      app.beginEdit();
    },
    end: () => app.endStep(),
  });
