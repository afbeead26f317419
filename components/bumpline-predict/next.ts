import { html, nothing, type TemplateResult } from 'lit';
import type { NextMeasurement } from '../../core/learn/next-measurements.js';
import type { HardPointKey, StrutPointKey } from '../../core/linkage/corner.js';
import { formatNumber } from '../../core/quantity/format.js';
import { type Display, show } from '../element/sentence.js';
import { SHEETS } from '../inputs/sheets.labels.js';
import { NAMES } from './bumpline-predict.labels.js';

const { next: WORDS } = NAMES;

/** What leaves more of a ± is hardly worth the time. */
const WORTH = 0.9;
/** As told. */
const SHOWN = 3;
const MORE_MM = 10;

/** Names of what can be measured next, with what it would leave of the ±; best first. */
export function nextTexts(next: readonly NextMeasurement[], display: Display): string[] {
  return next
    .filter(({ left }) => left < WORTH)
    .slice(0, SHOWN)
    .map(({ id, left }) => WORDS.leaves(whatText(id, display), shareText(left, display)));
}

function whatText(id: NextMeasurement['id'], display: Display): string {
  const { what } = WORDS;
  if (id === 'moreTravel') return what.moreTravel(show(MORE_MM, 'travel', display));
  if (id.startsWith('point.')) return what.point(pointName(id.slice('point.'.length) as HardPointKey));
  return what[id as 'toeSweep' | 'otherWay' | 'caster' | 'rodLength'];
}

const pointName = (key: HardPointKey): string => SHEETS.points[key as StrutPointKey]?.title ?? key;

function shareText(left: number, { language }: Display): string {
  const { share } = WORDS;
  if (Math.abs(left - 1 / 2) < 0.03) return share.half;
  if (Math.abs(left - 1 / 3) < 0.03) return share.third;
  if (Math.abs(left - 1 / 4) < 0.03) return share.quarter;
  return share.other(`${formatNumber(Math.max(1, 100 * left), 0, language)}\u202f%`);
}

/** The measurement that would narrow the answer most, and the next after it. */
export function renderNext(next: readonly NextMeasurement[] | undefined, display: Display): TemplateResult {
  const [first, ...others] = nextTexts(next ?? [], display);
  return html`<section class="next" aria-label=${WORDS.title}>
    <p class="section-title"><b>${WORDS.title}</b></p>
    <p class="hint">${first ?? (next ? WORDS.none : WORDS.waiting)}</p>
    ${others.length > 0 ? html`<ul>${others.map((text) => html`<li>${text}</li>`)}</ul>` : nothing}
  </section>`;
}
