import type { TemplateResult } from 'lit';
import type { ChartModel } from '../chart/model.js';
import type { RestsOn } from './rests-on.js';

/** What a picture that is taken along is drawn for. */
export interface PictureRoom {
  /** CSS px. */
  width: number;
  /** The fonts its words are measured in. */
  family: string;
}

/** A picture, and what has to be said beside it where it stands alone. */
export interface MadePicture {
  /** One `<svg>`, as wide as its room. */
  template: TemplateResult;
  /** CSS px. */
  height: number;
  /** What it shows, in words. */
  title: string;
  /** The class whose style sheet it is drawn by; without it it brings its own looks. */
  within?: 'drawing' | 'chart-sheet';
  /** What a chart is of: its lines and marks need a key. */
  model?: ChartModel;
  /** What the numbers in a drawing stand for. */
  numbered?: readonly { number: number; label: string }[];
}

interface Choosable {
  /** Whether it shows anything now. */
  readonly isThere: boolean;
  /** Of several pictures in one place, which can be had, and which is shown. */
  readonly choices?: readonly { id: string; name: string }[];
  readonly choice?: string;
}

/** What draws a picture. */
export interface PictureMaker extends Choosable {
  /** Drawn anew, as large as is asked; undefined where there is nothing to draw. */
  toPicture(room: PictureRoom, choice: string): MadePicture | undefined;
}

/** A bar on the scale of its group, and what is said of it. */
export interface Bar {
  name: string;
  text: string;
  from: number;
  to: number;
  /** A mark at its end alone: what the others come to. */
  isSum?: boolean;
  ink: 'soft' | 'now' | 'limit';
  isFaint?: boolean;
}

/** Bars on one scale, in which 0 is. */
export interface BarGroup {
  title: string;
  /** Quieter, behind it. */
  aside?: string;
  scale: readonly [low: number, high: number];
  bars: readonly Bar[];
}

/** Bars that the page draws as text and boxes, as data for a picture. */
export interface BarsMaker extends Choosable {
  bars(choice: string): { title: string; columns: number; groups: readonly BarGroup[] } | undefined;
}

/** A picture of an element that its reader can take along. */
export interface SavablePicture {
  kind: 'drawing' | 'chart' | 'bars';
  /** Tells it from another of its kind. */
  name?: string;
  of: PictureMaker | BarsMaker;
}

/** What of an element its reader can take along. */
export interface TakeAlongThings {
  readonly pictures: readonly SavablePicture[];
  readonly restsOn: RestsOn;
}
