import type { CorneringAnswer, CorneringDoubt } from '../../core/answers/cornering-answer.js';
import type { CorneringRequest } from '../../core/answers/cornering-request.js';
import type { RollSource } from '../../core/answers/roll-source.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { RollWay } from '../../core/document/roll-ways.js';
import type { TurnSettings } from '../../core/document/turn-settings.js';
import type { RollAnswer } from '../../core/travel/roll.js';
import type { LinkedHost } from '../element/linked-app.js';
import type { SheetView } from '../element/sheet-view.js';
import type { SentenceField } from '../inputs/sentence-field.js';

/** What a page may say in attributes and properties. */
export interface CorneringHost extends LinkedHost {
  drop: string | number | undefined;
  roll: string | number | undefined;
}

/** What stands on the sheet, and what it was made from. */
export interface TurnOnSheet extends CorneringAnswer {
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** Of the body on its springs, degrees. */
  suspensionRoll: number;
  /** Camber that is set again at the drop, degrees; undefined: as the height leaves it. */
  camber: number | undefined;
  /** Its roll as it was typed or worked out. */
  request: CorneringRequest<AnySource>;
  /** What the roll was worked out from; undefined where it was typed or read off a photo. */
  by?: RollSource | undefined;
  /** Where lateral acceleration rolls the body. */
  load?: RollAnswer | undefined;
  /** The parts that are on. */
  set: LinkedSet | undefined;
  /** How far the inclinations are known, once that was worked out. */
  doubt?: CorneringDoubt;
}

/** What the views of `bumpline-cornering` know of it. */
export interface CorneringView extends SheetView<TurnOnSheet, CorneringHost> {
  readonly sentence: {
    readonly drop: SentenceField;
    readonly roll: SentenceField;
    readonly lateral: SentenceField;
    /** Opens the field of the roll. */
    askRoll(): void;
  };
  readonly sets: readonly LinkedSet[];
  readonly shown: number;
  /** Whether the answer is made from links: then wheels can be steered, and parts put on. */
  readonly hasLinks: boolean;
  /** The roll that is asked about, degrees: as typed or read off a photo; else as it was worked out last. */
  readonly roll: number;
  /** Where it comes from. */
  readonly rollWay: RollWay | 'typed';
  /** By how much more bump the answer’s outer wheel needs than is left until it is solid, mm; undefined where it needs no more, or nobody told what ends it. */
  readonly solidShort: number | undefined;
  /** What a page gives there, where nobody can read it. */
  readonly unreadDrop: string | undefined;
  readonly unreadRoll: string | undefined;
  changeDrop(drop: number): void;
  /** Changes what is asked about the turn. */
  set(label: string, settings: { [K in keyof TurnSettings]?: TurnSettings[K] | undefined }, step?: string): void;
  choose(set: number): void;
}
