import { html, nothing, type TemplateResult } from 'lit';
import type { Cell, Told as Figure } from '../../core/answers/compare.js';
import type { Crossing } from '../../core/curve/break-even.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { renderNotIn, renderShares } from '../shared/doubt-lists.js';
import { isDriftAllowed, isOfReadings, notInDoubt } from '../shared/doubts.words.js';
import { textOf } from '../shared/sentence.js';
import { cellName, crossingWords, heightText } from './bumpline-compare.words.js';
import type { CompareView } from './compare-view.js';

const NAMES = {
  paths: 'Two ways from one to the other',
  heightFirst: 'Height first, then the part',
  partFirst: 'The part first, then height',
  interaction: 'How much more the part does lower down',
  notTold: ', not to be told from nothing',
  rate: 'By camber rate alone',
  each: 'Camber rate, and camber as read',
  eachNote:
    'How fast camber changes at each height. Then camber itself, there and at the end of the bump, as the gauge read it: if the gauge’s zero was off, so is this.',
  even: 'Break-even',
  doubt: 'Every ± on this page is a 95 % interval.',
  why: 'What the ± is made of, and what it leaves out',
  apart:
    'Gauge, tape and zero height count for each set by itself, as if each had its own. One gauge and one tape for both narrows a break-even by hardly a tenth of a millimetre.',
} as const;

/** Where both parts and height differ, the order matters. */
export function renderPaths({
  cells,
  told,
  reading,
}: Pick<CompareView, 'cells' | 'reading' | 'told'>): TemplateResult | typeof nothing {
  const { from, to } = cells;
  const net = told?.net;
  if (!net || from.curve === to.curve || from.height === to.height) return nothing;
  const { units, language } = reading;
  const figure = ({ value, plusMinus, isTold }: Figure) =>
    `${formatQuantity(value, 'camberChange', units, { language, plusMinus, sign: 'always' }).text}${isTold || plusMinus === undefined ? '' : NAMES.notTold}`;
  // Whichever of the two was pressed first.
  const deeper = Math.sign(told.heights[to.height]! - told.heights[from.height]!) || 1;
  const rows = [
    [NAMES.heightFirst, `${figure(net.heightFirst.height)}, then ${figure(net.heightFirst.part)}`],
    [NAMES.partFirst, `${figure(net.partFirst.part)}, then ${figure(net.partFirst.height)}`],
    [NAMES.interaction, figure({ ...net.interaction, value: net.interaction.value * deeper })],
  ];
  return html`<details class="paths" open>
    <summary>${NAMES.paths}</summary>
    <p class="note">From ${cellName(from, told, reading)} to ${cellName(to, told, reading)}: by how much each step changes the camber change over the bump.</p>
    <dl>${rows.map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
  </details>`;
}

/** Break-even of every other set, by change and by rate. */
export function renderEven({
  answer,
  reading,
  heights,
}: Pick<CompareView, 'answer' | 'heights' | 'reading'>): TemplateResult | typeof nothing {
  const { comparison, names } = answer!;
  if (comparison.breakEvens.length === 0) return nothing;
  const text = (crossing: Crossing | undefined, name: string) =>
    crossing ? textOf(crossingWords(crossing, name, reading)).trim() : 'nothing was measured that far';
  return html`<details class="even">
    <summary>${NAMES.even}</summary>
    <p class="note">Against ${names[0]} ${heightText(heights[0]!, reading)}: the drop at which the same bump changes camber alike. Lower than that the part only repairs what lowering did. ${NAMES.doubt}</p>
    ${comparison.breakEvens.map(
      ({ change, rate }, i) => html`<p>${text(change, names[i + 1]!)}</p>
        <p class="note">${NAMES.rate}: ${text(rate, names[i + 1]!)}</p>`,
    )}
  </details>`;
}

/** What the ± between the two cells is made of, and what no ± of curves from readings covers. */
export function renderWhy({
  answer,
  told,
  reading,
  host,
  setups,
}: Pick<CompareView, 'answer' | 'host' | 'reading' | 'setups' | 'told'>): TemplateResult | typeof nothing {
  const curves = answer!.request.curves.map(({ curve }) => curve.data).filter(isOfReadings);
  if (curves.length === 0) return nothing;
  // Of several sets the one that leaves most open speaks.
  const at = Math.max(0, curves.findIndex(isDriftAllowed));
  const parts = told?.net?.contributions ?? [];
  return html`<details class="why">
    <summary>${NAMES.why}</summary>
    ${parts.length > 0 ? renderShares(parts, reading.language) : nothing}
    <p class="note">${NAMES.apart}</p>
    ${renderNotIn(notInDoubt(curves[at]!, host.curves ? undefined : setups[at]?.doubts, reading))}
  </details>`;
}

/** What every cell has besides its change. Where a set's zero was moved, its curve no longer knows camber itself. */
export function renderEach({
  answer,
  reading,
  host,
  setups,
}: Pick<CompareView, 'answer' | 'host' | 'reading' | 'setups'>): TemplateResult {
  const { comparison, names, request } = answer!;
  const { units, language } = reading;
  const knows = (i: number) => host.curves !== undefined || setups[i]?.zeroAt === undefined;
  const camberText = (value: number) => formatQuantity(value, 'camber', units, { language }).text;
  const row = ({ rate, camber, camberAtEnd }: Cell, i: number, h: number) => {
    if (!rate) return nothing;
    const { plusMinus } = rate;
    const rateText = formatQuantity(rate.value, 'camberRate', units, { language, plusMinus, sign: 'always' }).text;
    const ends = camberAtEnd === undefined ? '' : ` to ${camberText(camberAtEnd)}`;
    const itself = camber === undefined || !knows(i) ? '' : `; ${camberText(camber)}${ends}`;
    const at = { curve: i, height: h };
    return html`<div><dt>${cellName(at, { names, heights: request.heights }, reading)}</dt><dd>${rateText}${itself}</dd></div>`;
  };
  return html`<details class="each">
    <summary>${NAMES.each}</summary>
    <p class="note">${NAMES.eachNote}</p>
    <dl>${comparison.cells.map((ofSet, i) => ofSet.map((cell, h) => row(cell, i, h)))}</dl>
  </details>`;
}
