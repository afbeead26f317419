import { html, nothing, type TemplateResult } from 'lit';
import type { DrivewayKey } from '../../core/driveway/driveway.js';
import { MORE_MM, POINT_MM } from '../../core/learn/further-sizes.js';
import type { NextMeasurement } from '../../core/learn/next-measurements.js';
import type { HardPointKey, StrutPointKey } from '../../core/linkage/corner.js';
import { type Display, show } from '../element/sentence.js';
import { SHEETS } from '../inputs/sheets.labels.js';
import { NAMES } from './bumpline-predict.labels.js';
import { plusMinusText } from './bumpline-predict.words.js';
import type { PredictOnSheet } from './predict-view.js';

const { next: WORDS } = NAMES;

/** What leaves more of a ± is hardly worth the time. */
const WORTH = 0.9;
/** As told. */
const SHOWN = 3;

type Answered = Pick<PredictOnSheet, 'predicted' | 'source' | 'widened'>;

/** Whether there is a field, or a sheet of readings, that takes it. */
const isEntered = (id: NextMeasurement['id'], { source }: Answered): boolean =>
  id !== 'rodLength' &&
  (id !== 'caster' || source.of.kind === 'driveway') &&
  (!id.startsWith('measure.') || id.slice('measure.'.length) in SHEETS.driveway);

/** Names of what can be measured next, with the ± that it would bring; best first. */
export function nextTexts(next: readonly NextMeasurement[], answer: Answered, display: Display): string[] {
  const { plusMinus: now = 0 } = answer.predicted;
  const text = (size: number) => plusMinusText(size, display, now);
  return next
    .filter(({ id, left, plusMinus }) => left < WORTH && isEntered(id, answer) && text(plusMinus) !== text(now))
    .slice(0, SHOWN)
    .map(({ id, plusMinus }, i) =>
      WORDS.brings(whatText(id, display), text(plusMinus), i === 0 ? text(now) : undefined),
    );
}

function whatText(id: NextMeasurement['id'], display: Display): string {
  const { what } = WORDS;
  if (id === 'moreTravel') return what.moreTravel(show(MORE_MM, 'travel', display));
  const again = (name: string) => what.again(name);
  if (id.startsWith('point.')) {
    const name = pointName(id.slice('point.'.length) as HardPointKey);
    return what.point(name, show(POINT_MM, 'coordinate', display));
  }
  if (id.startsWith('measure.')) {
    const key = id.slice('measure.'.length) as DrivewayKey;
    return again(SHEETS.driveway[key as keyof typeof SHEETS.driveway].title);
  }
  return what[id as 'toeSweep' | 'otherWay' | 'anotherPass' | 'otherSide' | 'caster'];
}

const pointName = (key: HardPointKey): string => SHEETS.points[key as StrutPointKey]?.title ?? key;

/** The measurement that would narrow the answer most, and the next after it. */
export function renderNext(
  next: readonly NextMeasurement[] | undefined,
  answer: Answered,
  display: Display,
): TemplateResult {
  const [first, ...others] = nextTexts(next ?? [], answer, display);
  const none = answer.widened > 1 ? WORDS.mendFirst : WORDS.none;
  return html`<section class="next" aria-label=${WORDS.title}>
    <p class="section-title"><b>${WORDS.title}</b></p>
    <p class="hint">${first ?? (next ? none : WORDS.waiting)}</p>
    ${others.length > 0 ? html`<ul>${others.map((text) => html`<li>${text}</li>`)}</ul>` : nothing}
  </section>`;
}
