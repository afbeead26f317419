import { html, nothing, type TemplateResult } from 'lit';
import { readSetsOf } from '../../core/document/read-sets.js';
import { ownerOf, readingsInUse } from '../../core/document/setup-in-use.js';
import type { Slip } from '../../core/learn/slips.js';
import { formatNumber } from '../../core/quantity/format.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../../core/readings/doubts.js';
import type { Reading } from '../../core/readings/reading.js';
import { shownName } from '../car/shown-names.words.js';
import { causeName } from '../element/causes.words.js';
import { doubtFields } from '../element/doubts.words.js';
import { counting, type Display, lower, show } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import { FIRST } from './bumpline-predict.words.js';
import type { PredictOnSheet, PredictView } from './predict-view.js';
import { rowsOf, slipped, withAside } from './read-rows.js';

const { found: WORDS } = NAMES;

/** Chances above which nothing is said of how well readings and tape agree, and below which they do not. */
const TOGETHER = 0.05;
/** A lower joint turns the arm as lifting the body would: by the study of random cars, 1.1 times as far. */
const JOINT_TRAVEL = 1.1;

/** What the readings say of themselves: whether they go with the tape, how each pass was begun, gauges that moved, and where they end. */
export function renderFound(view: PredictView, answer: PredictOnSheet): TemplateResult {
  return html`<section class="found" aria-label=${WORDS.title}>
    <p class="section-title"><b>${WORDS.title}</b></p>
    <ul>
      ${togetherTexts(answer, view.display).map((text) => html`<li>${text}</li>`)}
      ${[...oddTexts(view, answer), ...passTexts(view, answer), ...littleTexts(view)].map((text) => html`<li>${text}</li>`)}
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

function togetherTexts(
  { goodness, widened, pulls, slips, odd, turned }: PredictOnSheet,
  { language }: Display,
): string[] {
  const { chance, perDof, dof } = goodness;
  const percent = `${formatNumber(100 * chance, chance < 0.1 ? 1 : 0, language)}\u202f%`;
  const number = WORDS.goodness(formatNumber(perDof, 2, language), String(Math.round(dof)), percent);
  if (widened === 1 && pulls.length === 0 && chance >= TOGETHER) {
    // What is wrong inside the readings leaves them as apart as their scatter looks.
    return slips.length > 0 || odd ? [number] : [`${WORDS.together} ${number}`];
  }
  const names = pulls.slice(0, 3).map(({ label }) => causeName(label));
  const first =
    widened > 1
      ? WORDS.doubtful(formatNumber(widened, 1, language))
      : WORDS.hardly(formatNumber(Math.round(1 / Math.max(chance, 1e-6)), 0, language));
  const cause = turned
    ? [NAMES.problems.turned[turned]]
    : !odd && names.length > 0
      ? [WORDS.pulls(names.join(', '))]
      : [];
  return [`${first} ${number}`, ...cause];
}

/** A pass whose curve is another than that of the others. */
function oddTexts(view: PredictView, { odd, passes, sets }: PredictOnSheet): string[] {
  if (!odd) return [];
  const { display } = view;
  const nameOf = (pass: string) => passName(pass, odd.set, sets, view);
  if (odd.isEither) {
    const [one, other] = passes.filter(({ set }) => set === odd.set).map(({ pass }) => nameOf(pass));
    return [WORDS.oddEither(one!, other!)];
  }
  const { height } = odd;
  return [
    height === undefined
      ? WORDS.odd(nameOf(odd.pass), formatNumber(odd.perDof, 1, display.language))
      : WORDS.oddHeight(nameOf(odd.pass), show(Math.round(Math.abs(height)), 'travel', display), height > 0),
  ];
}

/** Passes that were begun higher or lower than chance alone would have it. */
function passTexts(view: PredictView, { passes, sets, odd }: PredictOnSheet): string[] {
  const told = passes.filter(({ height, pass, set }) => height?.isOff && (pass !== odd?.pass || set !== odd.set));
  const texts = told.map(({ pass, height, set }) => {
    const name = passName(pass, set, sets, view);
    const size = show(Math.abs(height!.value), 'travel', view.display, height!.plusMinus);
    return (height!.value > 0 ? WORDS.passHigher : WORDS.passLower)(name, size);
  });
  return texts.length > 0 ? [`${texts.join(' ')} ${WORDS.passesTaken}`] : [];
}

/** A pass as it was named; one without a name by its set, and "The pass" where there is no other. */
function passName(pass: string, set: number, sets: PredictOnSheet['sets'], { learnt: { car } }: PredictView): string {
  const [, nth, own] = /^(?:(\d+)\.)?(.*)$/s.exec(pass)!;
  const of = sets[set];
  // Passes of several sets are told apart by the number of their set before them.
  const all = readSetsOf(car).stock.filter(({ quantity }) => quantity === of?.quantity);
  const setName = all.length > 1 && nth ? all[Number(nth) - 1]?.name : undefined;
  const name = own === '' ? undefined : /^\d+$/.test(own!) ? WORDS.pass(own!) : shownName(own!);
  if (setName === undefined) return name ?? (pass === '' ? WORDS.thePass : WORDS.pass(pass));
  return name === undefined ? WORDS.passOfSet(shownName(setName)) : WORDS.passIn(name, shownName(setName));
}

function renderSlip(view: PredictView, answer: PredictOnSheet, slip: Slip): TemplateResult {
  const { display, car, host } = view;
  const rows = rowsOf(answer, slip.set, view.learnt.car);
  const { all, after } = rows ? slipped(rows, slip) : { all: [], after: [] };
  const [first] = after;
  const name = lower(passName(slip.pass, slip.set, answer.sets, view));
  const size = show(Math.abs(slip.size), 'camberChange', display);
  const travel = (mm: number) => show(mm, 'travel', display);
  const text = WORDS.slip(
    name,
    Math.max(1, all.length - after.length + 1),
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

/** Heights, and readings, below which the ± is wide for want of them. */
const FEW_HEIGHTS = 6;
/** A side is missing where it was read less than this share as far as the other. */
const ONE_SIDED = 0.25;
/** From turn to turn at least so many readings are a pass by themselves. */
const LEAST_OF_WAY = 4;

/** What there is little of: readings, one side of the travel, the height called zero; and a pass that is several. */
function littleTexts({ learnt: { car } }: PredictView): string[] {
  const read = readSetsOf(car)
    .stock.filter(({ quantity }) => quantity === 'camber')
    .map(readingsInUse);
  const all = read.flat();
  if (all.length === 0) return [];
  const travels = all.map(({ travel }) => travel);
  const heights = new Set(travels).size;
  const [low, high] = [Math.min(...travels), Math.max(...travels)];
  const { bump, droop } = WORDS.sides;
  const [isBump, isDroop] = [-low < ONE_SIDED * high, high < -ONE_SIDED * low];
  const turns = Math.max(...read.map(waysOf));
  return [
    ...(heights < FEW_HEIGHTS ? [WORDS.few(counting(all.length, FIRST.reading), String(heights))] : []),
    ...(isBump ? [WORDS.oneSided(bump, droop)] : isDroop ? [WORDS.oneSided(droop, bump)] : []),
    ...(travels.every((travel) => Math.abs(travel) > 0.5) ? [WORDS.noZero] : []),
    ...(turns > 1 ? [WORDS.turns(String(turns))] : []),
  ];
}

/** How often the wheel went one way from end to end, in readings that all belong to one pass as they stand. */
function waysOf(readings: readonly Reading[]): number {
  if (new Set(readings.map(({ pass }) => pass)).size > 1 || readings.some(({ going }) => going)) return 1;
  const lengths: number[] = [];
  let way = 0;
  readings.slice(1).forEach(({ travel }, i) => {
    const now = Math.sign(travel - readings[i]!.travel);
    if (now === 0) return;
    if (now === way) lengths[lengths.length - 1]!++;
    else lengths.push(1);
    way = now;
  });
  return lengths.filter((length) => length >= LEAST_OF_WAY).length;
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
    show(setup?.doubts?.[key] ?? DEFAULT_DOUBTS[key], doubtFields()[key].quantity, display);
  return WORDS.wrongIf(of('drift'), of('gaugeScale'), of('tapeScale'), of('zeroHeight'));
}
