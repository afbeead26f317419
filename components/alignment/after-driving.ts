import { html, nothing, type TemplateResult } from 'lit';
import {
  type AbaAnswer,
  type Across,
  abaSlope,
  type Difference,
  type SpreadAnswer,
  spreadAcross,
} from '../../core/alignment/tyre-spread.js';
import type { AlignmentSettings } from '../../core/document/alignment-settings.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { unlessRefused } from '../../core/quantity/unless-refused.js';
import { worded } from '../../core/quantity/words.js';
import { show } from '../element/sentence.js';
import type { SheetView } from '../element/sheet-view.js';
import { ALIGNMENT } from './alignment.labels.js';
import { type AlignmentField, type AlignmentFields, settingField } from './alignment-fields.js';
import { signed } from './alignment-words.js';

const { afterDriving: WORDS } = ALIGNMENT;

/** How far a place read again differs until somebody says it, half-widths of 95 %: degrees of either scale, mm. Common practice, no source. */
const REPEAT = { temperature: 3, tread: 0.3 } as const;

const across = (run: 'hot' | 'changed' | 'again' | 'tread', quantity: Quantity): AlignmentField[] =>
  (
    [
      ['Inner', WORDS.fields.inner],
      ['Middle', WORDS.fields.middle],
      ['Outer', WORDS.fields.outer],
    ] as const
  ).map(([place, label]) => settingField(`${run}${place}`, label, quantity));

const HOT = worded(() => [
  ...across('hot', 'tyreTemperature'),
  settingField('hotRepeat', WORDS.repeat, 'tyreTemperature', REPEAT.temperature),
]);
const TREAD = worded(() => [
  ...across('tread', 'treadDepth'),
  settingField('treadRepeat', WORDS.repeat, 'treadDepth', REPEAT.tread),
]);
const CAMBERS = worded(() => [
  settingField('camberFirst', WORDS.camberFirst, 'camber'),
  settingField('camberChanged', WORDS.camberChanged, 'camber'),
]);
const RUNS = worded(() => ({
  changed: across('changed', 'tyreTemperature'),
  again: across('again', 'tyreTemperature'),
}));

export const AFTER_FIELDS: readonly AlignmentField[] = [...HOT, ...TREAD, ...CAMBERS, ...RUNS.changed, ...RUNS.again];

function placesOf(settings: AlignmentSettings, run: 'hot' | 'changed' | 'again' | 'tread'): Across | undefined {
  const [one, two, three] = [settings[`${run}Inner`], settings[`${run}Middle`], settings[`${run}Outer`]];
  return one === undefined || two === undefined || three === undefined
    ? undefined
    : { inner: one, middle: two, outer: three };
}

/** What stands across a tread after driving, which way it points, and what a degree of camber did between two settings. */
export function renderAfterDriving(view: SheetView, fields: AlignmentFields): TemplateResult {
  const { alignment: settings = {} } = view.car;
  const row = (some: readonly AlignmentField[]) =>
    html`<div class="fields">${some.map((one) => fields.render(one))}</div>`;
  return html`<details class="after-driving">
    <summary>${WORDS.title}</summary>
    <p class="note">${WORDS.note}</p>
    <h4>${WORDS.hot}</h4>
    <p class="note">${WORDS.hotNote}</p>
    ${row(HOT)} ${renderSpread(view, settings, 'temperature')}
    <details class="aba">
      <summary>${WORDS.aba}</summary>
      <p class="note">${WORDS.abaNote}</p>
      ${row(CAMBERS)}
      <p><b>${WORDS.runs.changed}</b></p>
      ${row(RUNS.changed)}
      <p><b>${WORDS.runs.again}</b></p>
      ${row(RUNS.again)} ${renderSlope(view)}
    </details>
    <h4>${WORDS.tread}</h4>
    ${row(TREAD)} ${renderSpread(view, settings, 'tread')}
  </details>`;
}

function spreadOf(settings: AlignmentSettings, kind: 'temperature' | 'tread'): SpreadAnswer | undefined {
  const [run, repeat] =
    kind === 'tread' ? (['tread', settings.treadRepeat] as const) : (['hot', settings.hotRepeat] as const);
  const places = placesOf(settings, run);
  return places && unlessRefused(() => spreadAcross({ kind, across: places, repeat: repeat ?? REPEAT[kind] }));
}

function slopeOf(settings: AlignmentSettings): AbaAnswer | undefined {
  const [first, changed, again] = (['hot', 'changed', 'again'] as const).map((run) => placesOf(settings, run));
  const { camberFirst, camberChanged, hotRepeat = REPEAT.temperature } = settings;
  if (!first || !changed || !again || camberFirst === undefined || camberChanged === undefined) return undefined;
  const camber = { first: camberFirst, changed: camberChanged };
  return unlessRefused(() => abaSlope({ kind: 'temperature', first, changed, again, camber, repeat: hotRepeat }));
}

/** The lines of a spread, for the screen and for paper. */
export function spreadLines(view: SheetView, kind: 'temperature' | 'tread'): string[] {
  const found = spreadOf(view.car.alignment ?? {}, kind);
  if (!found) return [];
  const quantity = kind === 'tread' ? 'treadDepth' : 'tyreTemperature';
  const { inner: one, middle: two, outer: three } = placesOf(view.car.alignment!, kind === 'tread' ? 'tread' : 'hot')!;
  const [first, second, third] = [one, two, three].map((place) => show(place, quantity, view.display));
  return [
    WORDS.read(kind === 'tread' ? WORDS.tread : WORDS.hot, first!, second!, third!),
    WORDS.spread[kind](signed(found.innerOverOuter, quantity, view.display)),
    WORDS.camber[found.camber],
    WORDS.pressure[found.pressure],
  ];
}

function renderSpread(view: SheetView, settings: AlignmentSettings, kind: 'temperature' | 'tread'): TemplateResult {
  const lines = spreadLines(view, kind);
  const isBegun = HAS[kind].some((key) => settings[key] !== undefined);
  const isDirected = spreadOf(settings, kind)?.camber !== 'untold';
  return html`<div role="status" class="told">
    ${lines.slice(1).map((line) => html`<p>${line}</p>`)}
    ${lines.length === 0 && isBegun ? html`<p class="note">${WORDS.needs}</p>` : nothing}
    ${lines.length > 0 && isDirected ? html`<p class="note">${WORDS.direction}</p>` : nothing}
  </div>`;
}
const HAS = {
  temperature: ['hotInner', 'hotMiddle', 'hotOuter'],
  tread: ['treadInner', 'treadMiddle', 'treadOuter'],
} as const;

/** What two settings taught, for the screen and for paper. */
export function slopeLines({ car, display }: Pick<SheetView, 'car' | 'display'>): string[] {
  const found = slopeOf(car.alignment ?? {});
  if (!found) return [];
  const told = (one: Difference) => signed(one, 'tyreTemperature', display);
  return [
    found.isTold ? WORDS.slope(told(found.perNegativeDegree)) : WORDS.untold(told(found.change)),
    WORDS.drift(told(found.drift)),
  ];
}

function renderSlope(view: SheetView): TemplateResult {
  return html`<div role="status" class="told">${slopeLines(view).map((line) => html`<p>${line}</p>`)}</div>`;
}
