import type { CarDocument } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import type { CarController, CarElement } from '../car/car-controller.js';
import type { CarModel } from '../car/car-model.js';
import type { Cursor } from '../chart/cursor.js';
import type { Drafts } from '../inputs/drafts.js';
import type { adoptedStyles } from '../theme/adopted-styles.js';
import type { Announcer } from './announce.js';
import type { Display } from './sentence.js';

/** The element that a sheet stands in, never by its class: what all of them have. */
export interface SheetHost extends CarElement {
  units: UnitSystem['length'];
  angles: UnitSystem['angle'];
  /** What of the element its author shows; empty or undefined for the whole. */
  show: string | undefined;
  authorPage: string | undefined;
  readonly spokenLanguage: string;
  readonly words: string;
  /** From here on words are taken in its language. */
  speak(): void;
}

/** How far a sheet has come. `stale`: the answer is of what was given before something that is wrong now. */
export type SheetState = 'example' | 'incomplete' | 'ready' | 'stale' | 'problem' | 'fault' | 'waiting';

/** What the views of an element know of it: never its class, so that nothing imports its app back. Each takes what it needs (`Pick`). */
export interface SheetView<Answer = unknown, Host extends SheetHost = SheetHost> {
  readonly host: Host;
  readonly model: CarModel;
  /** The car that the element is about. */
  readonly car: CarDocument;
  readonly display: Display;
  /** The newest good answer; nothing where it would be about another car. */
  readonly answer: Answer | undefined;
  /** The car that the answer is of: while there are problems, not the one that is being edited. */
  readonly answeredCar: CarDocument;
  /** Everything that is wrong, the solver's problems too. */
  readonly problems: Problem[];
  readonly fault: string | undefined;
  readonly state: SheetState;
  /** Whether the page's own data is what cannot be read. */
  readonly isUnread: boolean;
  /** How much of what it rests on is given, and whether by the reader. */
  readonly completeness: 'example' | 'incomplete' | 'ready';
  readonly isOwn: boolean;
  /** The whole answer in words, only where there is one: as it is spoken, and where that differs, for who sees it elsewhere. */
  readonly spoken: string;
  readonly said?: string;
  /** What stands about the sentence. */
  readonly frame: { readonly title: string; readonly corner: string; readonly caution: 'predicted' | 'clearByHand' };
  /** The id of a car that the page names and nobody has. */
  readonly unknownCar: string | undefined;
  /** What the page says inside the element and in its attributes. */
  readonly cars: Pick<CarController, 'allPageSays' | 'pageRevision'>;
  readonly drafts: Drafts;
  readonly announcer: Announcer;
  readonly cursor: Cursor;
  readonly addStyles: ReturnType<typeof adoptedStyles>;
  /** Asks for the answer again. */
  ask(): void;
  /** Resolves when the newest request has its answer or its problems. */
  answered(): Promise<void>;
  /** Something a user did: told to the page, and the next answer is spoken. Changes with the same `step` are one step of undo, until `endStep`. */
  change(path: string, label: string, recipe: (car: CarDocument) => CarDocument, step?: string): void;
  /** The same of a change that stands in the model already. */
  changed(path: string, value: unknown): void;
  beginEdit(): void;
  endEdit(): void;
  /** A drag, or typing in a field, is over. */
  endStep(): void;
  /** The same of a slider, which shows nothing else for it. */
  endDrag(): void;
  /** Has the next answer spoken: a user did something. */
  speak(): void;
}
