import type { LitElement } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import type { Announcer } from '../element/announce.js';
import type { Display } from '../element/sentence.js';

/** From where the car's heights are counted. */
export interface ZeroQuestion {
  /** mm below stock height, each with its name. */
  choices: readonly { at: number; name: string }[];
  chosen: number;
  isAnswered: boolean;
  choose(at: number): void;
}

/** What the parts of `bumpline-readings` (grid, paste, lists) know of the element they stand in. */
export interface ReadingsHost {
  readonly host: LitElement;
  readonly display: Display;
  /** The set of parts that is shown, with its readings: the user's, the page's or the example. */
  readonly setup: Setup;
  /** Whether the readings are the user's own; else the first of their own begins an empty set. */
  readonly isOwn: boolean;
  /** Changes the setup; what the page or the example showed is replaced by an empty one of the user's first. Changes with the same `step` are one step of undo, until `endStep`. */
  edit(label: string, recipe: (setup: Setup) => Setup, step?: string): void;
  endStep(): void;
  /** The car that the sets stand in, and a change of several of them in one step of undo. */
  readonly car: CarDocument;
  changeSets(label: string, recipe: (car: CarDocument) => CarDocument): void;
  /** Sets from a sheet always stand beside those that are there: they are compared. */
  readonly keepsAll: boolean;
  /** A sheet of either angle is taken: its headings say of which, and the user where they do not. Without it, the set's own. */
  readonly takesEither?: true;
  /** Heights at which a reading's zero may be, where that is a question: readings do not say from where they are counted. */
  readonly zero?: ZeroQuestion | undefined;
  readonly announcer: Announcer;
}
