import { html, nothing, type TemplateResult } from 'lit';
import type { Cell, Told as Figure } from '../../core/answers/compare.js';
import type { Crossing } from '../../core/curve/break-even.js';
import { DRIVEWAY_FIELDS, type DrivewayKey } from '../../core/driveway/driveway.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { causeName } from '../element/causes.words.js';
import { renderNotIn, renderShares } from '../element/doubt-lists.js';
import { isDriftAllowed, isOfReadings, notInDoubt } from '../element/doubts.words.js';
import { renderFacts } from '../element/facts.js';
import { textOf } from '../element/sentence.js';
import { partProblemText } from '../parts/parts-text.js';
import { LABELS } from './bumpline-compare.labels.js';
import { cellName, crossingWords } from './bumpline-compare.words.js';
import { knowsCamber } from './cell-figures.js';
import type { CompareView } from './compare-view.js';

const { lists: NAMES } = LABELS;

/** Where both parts and height differ, the order matters. */
export function renderPaths({
  cells,
  told,
  display,
}: Pick<CompareView, 'cells' | 'display' | 'told'>): TemplateResult | typeof nothing {
  const { from, to } = cells;
  const net = told?.net;
  if (!net || from.curve === to.curve || from.height === to.height) return nothing;
  const { units, language } = display;
  const figure = ({ value, plusMinus, isTold }: Figure) =>
    `${formatQuantity(value, 'camberChange', units, { language, plusMinus, sign: 'always' }).text}${isTold || plusMinus === undefined ? '' : NAMES.notTold}`;
  // Whichever of the two was pressed first.
  const deeper = Math.sign(told.heights[to.height]! - told.heights[from.height]!) || 1;
  const rows = [
    [NAMES.heightFirst, NAMES.inOrder(figure(net.heightFirst.height), figure(net.heightFirst.part))],
    [NAMES.partFirst, NAMES.inOrder(figure(net.partFirst.part), figure(net.partFirst.height))],
    [NAMES.interaction, figure({ ...net.interaction, value: net.interaction.value * deeper })],
  ];
  return html`<details class="paths">
    <summary>${NAMES.paths}</summary>
    <p class="note">${NAMES.fromTo(cellName(from, told, display), cellName(to, told, display))}</p>
    ${renderFacts(rows.map(([label, text]) => ({ label, text })))}
  </details>`;
}

/** Break-even of every other set, by change and by rate. */
export function renderEven({
  answer,
  display,
  heights,
}: Pick<CompareView, 'answer' | 'heights' | 'display'>): TemplateResult | typeof nothing {
  const { comparison, names } = answer!;
  if (comparison.breakEvens.length === 0) return nothing;
  const text = (crossing: Crossing | undefined, name: string) =>
    crossing ? textOf(crossingWords(crossing, name, display)).trim() : NAMES.unmeasured;
  return html`<details class="even">
    <summary>${NAMES.even}</summary>
    <p class="note">${NAMES.against(cellName({ curve: 0, height: 0 }, { names, heights }, display))} ${NAMES.doubt}</p>
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
  display,
  host,
  compared,
}: Pick<CompareView, 'answer' | 'compared' | 'host' | 'display' | 'told'>): TemplateResult | typeof nothing {
  const curves = answer!.request.curves.map(({ curve }, row) => ({ row, data: curve.data }));
  const read = curves.filter(({ data }) => isOfReadings(data));
  const parts = told?.net?.contributions ?? [];
  if (read.length === 0 && parts.length === 0) return nothing;
  // Of several sets the one that leaves most open speaks.
  const open = read.find(({ data }) => isDriftAllowed(data)) ?? read[0];
  const setup = open && !host.curves ? compared.rows[open.row]?.setup : undefined;
  return html`<details class="why">
    <summary>${NAMES.why}</summary>
    ${parts.length > 0 ? renderShares(parts, display.language) : nothing}
    ${read.length > 1 ? html`<p class="note">${NAMES.apart}</p>` : nothing}
    ${open ? renderNotIn(notInDoubt(open.data, setup, display)) : nothing}
  </details>`;
}

/** What every cell has besides its change. */
export function renderEach({
  answer,
  display,
  host,
  compared,
}: Pick<CompareView, 'answer' | 'compared' | 'host' | 'display'>): TemplateResult {
  const { comparison, names, request } = answer!;
  const { units, language } = display;
  const camberText = (value: number) => formatQuantity(value, 'camber', units, { language }).text;
  const row = ({ rate, camber, camberAtEnd }: Cell, i: number, h: number) => {
    if (!rate) return nothing;
    const { plusMinus } = rate;
    const rateText = formatQuantity(rate.value, 'camberRate', units, { language, plusMinus, sign: 'always' }).text;
    const atEnd = camberAtEnd === undefined ? undefined : camberText(camberAtEnd);
    const itself =
      camber === undefined || !knowsCamber({ host, compared }, i) ? '' : NAMES.camber(camberText(camber), atEnd);
    const at = { curve: i, height: h };
    return html`<div><dt>${cellName(at, { names, heights: request.heights }, display)}</dt><dd>${rateText}${itself}</dd></div>`;
  };
  return html`<details class="each">
    <summary>${NAMES.each}</summary>
    <p class="note">${NAMES.eachNote}</p>
    <dl>${comparison.cells.map((ofSet, i) => ofSet.map((cell, h) => row(cell, i, h)))}</dl>
  </details>`;
}

/** What was measured in a driveway, by its name. */
export function givenLabel(path: string): string | undefined {
  const label = DRIVEWAY_FIELDS[path.split('.')[0] as DrivewayKey]?.label;
  return label && causeName(label);
}

/** What is wrong with the car's own curve is told here, and mended where its values are given; parts are mended below. */
export function renderLeftOut({
  leftOut,
  wrong,
  corner,
  display,
}: Pick<CompareView, 'corner' | 'leftOut' | 'display' | 'wrong'>): TemplateResult | typeof nothing {
  if (leftOut.length + wrong.length === 0) return nothing;
  const { units: unitSystem, language } = display;
  const text = (problem: Problem) => explainProblem(problem, { label: givenLabel(problem.path), unitSystem, language });
  const list = (title: string, texts: readonly string[]) => html`<p>${title}</p>
    <ul>${texts.map((one) => html`<li>${one}</li>`)}</ul>`;
  return html`<div class="queries left-out" role="status">
    ${leftOut.length > 0 ? list(NAMES.leftOut, leftOut.map(text)) : nothing}
    ${wrong.map(({ setup: { name, parts = [] }, problems }) =>
      list(
        NAMES.leftOutSet(name),
        problems.map((problem) => partProblemText(problem, parts, corner?.kind, display)),
      ),
    )}
  </div>`;
}
