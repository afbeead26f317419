import { type ReactiveController, type ReactiveControllerHost, render } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { curveFrom } from '../../core/curve/curve.js';
import type { CarDocument } from '../../core/document/car.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Cursor } from '../shared/cursor.js';
import type { BalloonState } from '../shared/drawing/items.js';
import { type Layout, layout } from '../shared/drawing/layout.js';
import type { Measure } from '../shared/drawing/measures.js';
import { poseAtTravel } from '../shared/drawing/pose-at.js';
import { renderDrawing } from '../shared/drawing/render.js';
import { type StrutBalloon, strutFrontView, tiltScale } from '../shared/drawing/strut-front-view.js';
import { watchInlineSize } from '../shared/resize.js';
import { POINT_SHEETS } from '../shared/sheet/car-sheets.js';
import { DRIVEWAY_SHEETS } from '../shared/sheet/driveway-sheets.js';
import { balloonLabel, camberLabel, heightName, NAMES } from './bumpline-lowering.labels.js';
import type { Reading } from './bumpline-lowering.words.js';

/** How far below reference height the drawing keeps room for, mm. */
const SHOWN_DROOP_MM = 50;

export interface FrontViewOptions {
  cursor: Cursor;
  answer: () => LoweringAnswer | undefined;
  reading: () => Reading;
  car: () => CarDocument;
  /** How each hard point or measurement is known. */
  balloonState: (key: string) => BalloonState;
  onSelect: (key: string) => void;
}

/**
 * The drawing of an element. It is rendered into its own place, apart from the host's template, because it follows the cursor:
 * moving that renders nothing else.
 */
export class FrontView implements ReactiveController {
  #options: FrontViewOptions;
  #place: HTMLElement | undefined;
  #width = 0;
  #drawn = '';
  #solved: LoweringAnswer | undefined;
  #stop: (() => void)[] = [];

  constructor(host: ReactiveControllerHost, options: FrontViewOptions) {
    this.#options = options;
    host.addController(this);
  }

  /** For lit's `ref`: where to draw. */
  readonly placed = (place?: Element): void => {
    for (const stop of this.#stop) stop();
    this.#stop = [];
    this.#place = place as HTMLElement | undefined;
    if (!place) return;
    this.#width = 0;
    this.#drawn = '';
    this.#stop = [
      watchInlineSize(place, (width) => {
        this.#width = width;
        this.draw();
      }),
      this.#options.cursor.subscribe(() => this.draw()),
    ];
  };

  /** Resolves when the first drawing stands; at once when there is none to come. */
  first: Promise<void> = Promise.resolve();
  #state: 'none' | 'coming' | 'drawn' = 'none';

  hostUpdated(): void {
    if (!this.#place || this.#options.answer()?.motion?.kind !== 'strut') return;
    if (this.#state === 'drawn') this.draw();
    if (this.#state !== 'none') return;
    // In a task of its own: with the rest of the body it would hold a slow phone's thread for more than a tenth of a second.
    this.#state = 'coming';
    // What it lays out to is known already, so the place is kept and nothing moves.
    const room = this.#layOut();
    if (room) this.#place.style.blockSize = `${room.height}px`;
    this.first = new Promise((resolve) => {
      setTimeout(() => {
        this.#state = 'drawn';
        this.draw();
        if (this.#place) this.#place.style.blockSize = '';
        resolve();
      });
    });
  }

  draw(): void {
    const { answer, cursor, reading, onSelect } = this.#options;
    if (!this.#place) return;
    const { units, language } = reading();
    const states = this.#buttons().map(({ state, text }) => `${state}${text}`);
    // A new answer moves the cursor as well: the second time there is nothing left to do.
    const drawn = [cursor.travel, this.#width, units.length, units.angle, language, ...states].join();
    if (drawn === this.#drawn && answer() === this.#solved) return;
    const room = this.#layOut();
    if (!room) return;
    this.#drawn = drawn;
    this.#solved = answer();
    render(renderDrawing(room, { onSelect }), this.#place);
  }

  /** Hard points by number, or dimensions by value. */
  #buttons(): (Pick<Measure, 'state' | 'label' | 'text'> & { key: string })[] {
    const { answer, balloonState, car, reading } = this.#options;
    const taken = answer()?.driveway?.taken;
    const { units, language } = reading();
    const sheets = taken ? DRIVEWAY_SHEETS.filter(({ optional }) => !optional) : POINT_SHEETS;
    return sheets.map((sheet) => {
      const state = balloonState(sheet.key);
      const value = taken && (sheet.read(car()) ?? sheet.standIn?.(car(), taken))?.[0];
      const { quantity } = sheet.fields[0]!;
      const isLean = quantity === 'lean';
      return {
        key: sheet.key,
        state,
        label: balloonLabel(sheet.title, state),
        text: value === undefined ? '' : formatQuantity(value, quantity, units, { language, unit: isLean }).text,
      };
    });
  }

  /** The drawing at the cursor's travel, laid out; undefined where there is nothing to draw, or no width yet. */
  #layOut(): Layout | undefined {
    const { answer, cursor, reading } = this.#options;
    const solved = answer();
    if (!this.#place || solved?.motion?.kind !== 'strut') return undefined;
    // The place is handed over before it is in the document, and has no width until then.
    this.#width ||= this.#place.clientWidth;
    if (this.#width === 0) return undefined;
    const { motion, drop } = solved;
    const travel = cursor.travel;
    const { units, language } = reading();
    const reference = poseAtTravel(motion, 0);
    const pose = poseAtTravel(motion, travel);
    const [droopEnd, bumpEnd] = solved.curve.domain;
    const isDrop = Math.abs(travel - drop) < 1e-6;
    const text = (amount: number) => formatQuantity(amount, 'travel', units, { language }).text;
    const camber = camberLabel(solved, curveFrom(solved.curve).value(travel), reading());
    const drawing = strutFrontView(pose, {
      reference,
      ...(Math.abs(travel) > 1e-6 && { before: reference, beforeText: NAMES.stock }),
      camberText: camber,
      ...(isDrop && drop !== 0 && { dropText: text(Math.abs(drop)) }),
      tiltScale: tiltScale([
        poseAtTravel(motion, Math.max(droopEnd, -40)).camberDeg,
        reference.camberDeg,
        poseAtTravel(motion, Math.min(bumpEnd, 100)).camberDeg,
      ]),
      title: `Front view of the strut at ${isDrop ? heightName(drop, reading()) : `${text(travel)} of travel`}: camber ${camber}`,
      // The chart's cursor goes as far down as this.
      droop: SHOWN_DROOP_MM,
      ...(solved.driveway
        ? { measures: this.#buttons() as Measure[], tieRod: false }
        : { balloons: this.#buttons() as StrutBalloon[] }),
    });
    return layout(drawing, Math.round(this.#width));
  }
}
