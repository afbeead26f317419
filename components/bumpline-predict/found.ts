import { html, nothing, type TemplateResult } from 'lit';
import { readSetsOf } from '../../core/document/read-sets.js';
import { ownerOf, readingsInUse } from '../../core/document/setup-in-use.js';
import type { Slip } from '../../core/learn/slips.js';
import { formatNumber } from '../../core/quantity/format.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../../core/readings/doubts.js';
import { DOUBT_FIELDS } from '../element/doubts.words.js';
import { type Display, lower, show } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import type { PredictOnSheet, PredictView } from './predict-view.js';
import { rowsOf, slipped, withAside } from './read-rows.js';

const { found: WORDS } = NAMES;

/** Chances above which nothing is said of how well readings and tape go together, and below which they do not. */
const TOGETHER = 0.05;
/** A lower joint turns the arm as lifting the body would: by the study of random cars, 1.1 times as far. */
const JOINT_TRAVEL = 1.1;

/** "9th" */
function nth(count: number): string {
  const tens = count % 100;
  const end = tens > 10 && tens < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][count % 10] ?? 'th');
  return `${count}${end}`;
}

/** What the readings say of themselves: whether they go with the tape, how each pass was begun, gauges that moved, and where they end. */
export function renderFound(view: PredictView, answer: PredictOnSheet): TemplateResult {
  return html`<section class="found" aria-label=${WORDS.title}>
    <p class="section-title"><b>${WORDS.title}</b></p>
    <ul>
      ${togetherTexts(answer, view.display).map((text) => html`<li>${text}</li>`)}
      ${passTexts(answer, view.display).map((text) => html`<li>${text}</li>`)}
      ${answer.slips.map((slip) => renderSlip(view, answer, slip))}
      ${reachTexts(view, answer).map((text) => html`<li>${text}</li>`)}
    </ul>
  </section>`;
}

/** What the ± allows for, and what it does not. */
export const renderLimits = (view: PredictView): TemplateResult =>
  html`<details class="limits">
    <summary>${WORDS.limits}</summary>
    <p class="note">${wrongIf(view)} ${WORDS.unseen}</p>
  </details>`;

function togetherTexts({ goodness, widened, pulls }: PredictOnSheet, { language }: Display): string[] {
  const { chance } = goodness;
  if (widened === 1 && pulls.length === 0 && chance >= TOGETHER) return [WORDS.together];
  const names = pulls.slice(0, 3).map(({ label }) => label);
  const first =
    widened > 1
      ? WORDS.doubtful(formatNumber(widened, 1, language))
      : WORDS.hardly(formatNumber(Math.round(1 / Math.max(chance, 1e-6)), 0, language));
  return [first, ...(names.length > 0 ? [WORDS.pulls(names.join(', '))] : [])];
}

/** Passes that were begun higher or lower than chance alone would have it. */
function passTexts({ passes, sets }: PredictOnSheet, display: Display): string[] {
  const told = passes.filter(({ height }) => height?.isOff);
  const texts = told.map(({ pass, height, set }) => {
    const name = passName(pass, sets[set]?.passes ?? 1);
    const size = show(Math.abs(height!.value), 'travel', display, height!.plusMinus);
    return (height!.value > 0 ? WORDS.passHigher : WORDS.passLower)(name, size);
  });
  return texts.length > 0 ? [`${texts.join(' ')} ${WORDS.passesTaken}`] : [];
}

/** A pass as it was named; one without a name is "The pass". */
const passName = (pass: string, count: number): string => {
  const own = pass.replace(/^\d+\./, '');
  if (own === '') return count > 1 ? WORDS.pass(pass) : WORDS.thePass;
  return /^\d+$/.test(own) ? WORDS.pass(own) : own;
};

function renderSlip(view: PredictView, answer: PredictOnSheet, slip: Slip): TemplateResult {
  const { display, car, host } = view;
  const rows = rowsOf(answer, slip.set, view.learnt.car);
  const { all, after } = rows ? slipped(rows, slip) : { all: [], after: [] };
  const [first] = after;
  const name = lower(passName(slip.pass, answer.sets[slip.set]?.passes ?? 1));
  const size = show(Math.abs(slip.size), 'camberChange', display);
  const travel = (mm: number) => show(mm, 'travel', display);
  const text = WORDS.slip(
    name,
    nth(Math.max(1, all.length - after.length + 1)),
    first ? travel(first.reading.travel) : '?',
    size,
    slip.size > 0,
  );
  const isOwn = first !== undefined && ownerOf(car, first.setup) === 'user';
  const setAside = () => {
    view.change('setups', WORDS.asideStep, (before) => withAside(before, after));
    view.endStep();
    host.requestUpdate();
  };
  return html`<li class="slip">${text}
    ${
      all.length === 0
        ? nothing
        : html`<details class="slip-readings">
            <summary>${WORDS.look}</summary>
            <table>
              <thead><tr><th scope="col">${WORDS.travel}</th><th scope="col">${WORDS.reading}</th><td></td></tr></thead>
              <tbody>
                ${all.map(
                  (row) => html`<tr class=${after.includes(row) ? 'after' : nothing}>
                    <th scope="row">${travel(row.reading.travel)}</th>
                    <td>${show(row.reading.value, 'camber', display)}</td>
                    <td>${row === first ? WORDS.from : nothing}</td>
                  </tr>`,
                )}
              </tbody>
            </table>
            ${isOwn ? html`<button type="button" class="button set-aside" @click=${setAside}>${WORDS.aside}</button>` : nothing}
          </details>`
    }
  </li>`;
}

/** Where the readings end, against where the prediction leans on them. */
function reachTexts({ display, learnt: { car } }: PredictView, answer: PredictOnSheet): string[] {
  const { measuredAt, drop, over, set } = answer;
  const [low, high] = answer.measured.map((end) => end + measuredAt) as [number, number];
  const travel = (mm: number) => show(mm, 'travel', display);
  const asked = [Math.min(drop, drop + over), Math.max(drop, drop + over)] as const;
  const joint = (set?.setup.parts ?? []).reduce(
    (sum, part) =>
      part.part === 'ballJointExtended' && (part as { joint?: string }).joint !== 'upper'
        ? sum + ((part as { mm?: number }).mm ?? 0)
        : sum,
    0,
  );
  const down = asked[0] - JOINT_TRAVEL * joint;
  const read = readSetsOf(car).stock.flatMap(readingsInUse);
  const isOneWay = new Set(read.map(({ going }) => going)).size < 2 && new Set(read.map(({ pass }) => pass)).size > 1;
  return [
    ...(asked[1] > high ? [WORDS.beyond(travel(asked[1]), travel(high))] : []),
    ...(joint > 0 && down < low
      ? [WORDS.droop(travel(joint), travel(Math.round(JOINT_TRAVEL * joint)), travel(low), travel(Math.floor(down)))]
      : asked[0] < low
        ? [WORDS.below(travel(asked[0]), travel(low))]
        : []),
    ...(isOneWay ? [WORDS.alternate] : []),
  ];
}

/** What is allowed for, and no more. */
function wrongIf({ display, learnt: { car } }: PredictView): string {
  const [setup] = readSetsOf(car).stock;
  const of = (key: keyof ReadingDoubts) =>
    show(setup?.doubts?.[key] ?? DEFAULT_DOUBTS[key], DOUBT_FIELDS[key].quantity, display);
  return WORDS.wrongIf(of('drift'), of('gaugeScale'), of('tapeScale'), of('zeroHeight'));
}
