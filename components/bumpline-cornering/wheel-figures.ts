import { html, nothing, type TemplateResult } from 'lit';
import type { WheelInTurn, WheelReach } from '../../core/answers/cornering-answer.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import { numbersFormat } from '../controls/numbers-format.js';
import type { NumbersColumn } from '../controls/table.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { plusMinusOf, rollText } from './bumpline-cornering.words.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';
import { renderFigures } from './figures-table.js';
import { signedAngle } from './setup-table.js';
import type { StopLeft } from './stop-left.js';

const { wheels: WORDS, bars: BARS } = NAMES;

type Kind = 'length' | 'camber' | 'toe' | 'steer';

/** One quantity of both wheels, in the API's unit. */
interface Row {
  label: string;
  kind: Kind;
  outer: number | undefined;
  inner: number | undefined;
}

/** What stands of both wheels, in the order in which one asks for it. */
function rowsOf(answer: TurnOnSheet, stop: StopLeft | undefined): Row[] {
  const { drop, outer, inner, limits } = answer;
  const each = (label: string, kind: Kind, of: (wheel: WheelInTurn, reach: WheelReach) => number): Row => ({
    label,
    kind,
    outer: of(outer, limits.outer),
    inner: of(inner, limits.inner),
  });
  const { rows } = WORDS;
  const left = (label: string, until: number) => each(label, 'length', ({ travel }) => until - (travel - drop));
  const all: Row[] = [
    each(rows.inclination, 'camber', ({ inclination }) => inclination),
    {
      label: rows.plusMinus,
      kind: 'camber',
      outer: plusMinusOf(answer, 'outer'),
      inner: plusMinusOf(answer, 'inner'),
    },
    each(rows.camber, 'camber', ({ camber }) => camber),
    each(rows.travel, 'length', ({ travel }) => travel - drop),
    answer.rack === 0 ? each(rows.toe, 'toe', ({ toe }) => toe) : each(rows.steer, 'steer', ({ steer }) => steer),
    ...(stop?.touch === undefined ? [] : [left(rows.stopLeft, stop.touch)]),
    ...(stop?.solid === undefined ? [] : [left(rows.solidLeft, stop.solid)]),
    each(rows.bumpLeft, 'length', ({ travel }, { bump }) => bump - travel),
    each(rows.droopLeft, 'length', ({ travel }, { droop }) => travel - droop),
  ];
  const isKnown = (one: number | undefined) => one !== undefined && Number.isFinite(one);
  return all.filter((row) => isKnown(row.outer) || isKnown(row.inner));
}

/** Both wheels side by side, what comes to its end first, and where the body rolls about. */
export function renderWheels(
  { answer, answeredCar, display }: CorneringView,
  stop: StopLeft | undefined,
  level: { height: number } | undefined,
  onShow: ((key: string) => void) | undefined,
): TemplateResult {
  if (!answer) return html``;
  const text = (value: number | undefined, kind: Kind, isDoubt: boolean) => {
    if (value === undefined || !Number.isFinite(value)) return '–';
    if (isDoubt) return `±\u202f${show(value, 'camber', display)}`;
    if (kind !== 'length') return signedAngle(value, display, kind);
    return formatQuantity(value, 'travel', display.units, { language: display.language, sign: 'always' }).text;
  };
  return html`<details class="both-wheels prints">
    <summary>${WORDS.title}</summary>
    ${renderFigures(
      WORDS.title,
      html`<caption class="visually-hidden">${WORDS.caption(rollText(answer.suspensionRoll, display))}</caption>
      <thead>
        <tr><th scope="col">${WORDS.what}</th><th scope="col">${WORDS.outer}</th><th scope="col">${WORDS.inner}</th></tr>
      </thead>
      <tbody>
        ${rowsOf(answer, stop).map(
          ({ label, kind, outer, inner }) => html`<tr>
            <th scope="row">${label}</th>
            <td>${text(outer, kind, label === WORDS.rows.plusMinus)}</td>
            <td>${text(inner, kind, label === WORDS.rows.plusMinus)}</td>
          </tr>`,
        )}
      </tbody>`,
    )}
    ${
      stop
        ? nothing
        : html`<p class="note">${WORDS.links}
            ${onShow && html`<button type="button" class="text-button enter-stop" @click=${() => onShow('stopGap')}>${WORDS.stop}</button>`}</p>`
    }
    ${lines(answer, display, level, answeredCar.turn?.radius).map((line) => html`<p class="note">${line}</p>`)}
  </details>`;
}

/** What changes the answer is not folded: the stop comes first. */
export function renderTouched(
  { answer, display }: CorneringView,
  stop: StopLeft | undefined,
): TemplateResult | typeof nothing {
  const missing = answer ? missingBump(answer, stop) : 0;
  return missing > 0 ? html`<p class="hint">${WORDS.touched(show(missing, 'travel', display))}</p>` : nothing;
}

/** How much more bump this roll needs than there is to the first touch of the stop, mm. */
const missingBump = ({ outer, drop }: TurnOnSheet, stop: StopLeft | undefined): number =>
  stop?.touch === undefined ? 0 : outer.travel - drop - stop.touch;

function lines(
  answer: TurnOnSheet,
  display: Display,
  level: { height: number } | undefined,
  radius: number | undefined,
): string[] {
  const { limits, ackermann, rack, rollCentre, perDegreeOfRoll } = answer;
  const length = (mm: number) => show(mm, 'travel', display);
  const far = (mm: number) =>
    mm > FAR_MM ? `${formatNumber(mm / 1000, 1, display.language)}\u202fm` : length(Math.round(mm));
  const height = (mm: number) => (mm < 0 ? WORDS.below : WORDS.above)(far(Math.abs(mm)));
  return [
    WORDS.first[limits.first],
    ...(ackermann && radius !== undefined
      ? [
          WORDS.ackermann(
            show(ackermann.outer, 'camber', display),
            show(ackermann.inner, 'camber', display),
            `${formatNumber(radius, 1, display.language)}\u202fm`,
          ),
          ...(Number.isFinite(rack) ? [WORDS.rack(length(rack))] : []),
        ]
      : []),
    ...(rollCentre
      ? [
          [
            WORDS.rollCentre(height(rollCentre.height), asideText(rollCentre.offset, far)),
            ...(Math.abs(rollCentre.offset) > FAR_MM ? [WORDS.far] : []),
            ...(level ? [WORDS.level(height(level.height))] : []),
          ].join(' '),
        ]
      : []),
    WORDS.perDegree(signedAngle(perDegreeOfRoll.outer, display)),
  ];
}

/** Further off than this the lines that meet in a roll centre are nearly parallel. */
const FAR_MM = 1000;

const asideText = (offset: number, text: (mm: number) => string): string =>
  Math.abs(offset) < 0.5 ? WORDS.middle : (offset > 0 ? WORDS.out : WORDS.in)(text(Math.abs(offset)));

/** Everything of both wheels as numbers, with what their inclinations are made of. */
export function numbers(
  answer: TurnOnSheet,
  display: Display,
  stop: StopLeft | undefined,
): { columns: NumbersColumn[]; rows: (number | string | null)[][] } {
  const { shown, angle } = numbersFormat(display);
  const { length } = display.units;
  const write = (value: number) => formatNumber(value, 3, display.language);
  const of = (value: number | undefined, kind: Kind) =>
    value === undefined || !Number.isFinite(value) ? null : shown(value, kind === 'length' ? 'length' : 'angle');
  const bars = (['static', 'travel', 'steer', 'roll', 'tyre', 'rest'] as const).map(
    (part): Row => ({
      label: BARS.parts[part],
      kind: 'camber',
      outer: answer.outer.bars[part],
      inner: answer.inner.bars[part],
    }),
  );
  return {
    columns: [
      { label: WORDS.what },
      { label: WORDS.unit },
      { label: WORDS.outer, format: write },
      { label: WORDS.inner, format: write },
    ],
    rows: [...rowsOf(answer, stop), ...bars].map(({ label, kind, outer, inner }) => [
      label,
      kind === 'length' ? length : angle,
      of(outer, kind),
      of(inner, kind),
    ]),
  };
}
