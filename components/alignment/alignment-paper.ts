import { css, html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { type Display, show } from '../element/sentence.js';
import type { SheetView } from '../element/sheet-view.js';
import { slopeLines, spreadLines } from './after-driving.js';
import { ALIGNMENT } from './alignment.labels.js';
import type { AlignmentAnswers } from './alignment-answers.js';
import { renderOrder } from './alignment-order.js';
import { restsOn, rodText, signed, totalText, turnLines, turnsText } from './alignment-words.js';
import { GAUGE, type WheelPlan } from './wheel-plan.js';

const { paper: WORDS } = ALIGNMENT;

/** A place to write in. */
const box = (label: string, look = ''): TemplateResult => html`<div class="box ${look}"><span>${label}</span></div>`;
const blank = html`<td class="blank"></td>`;

/** The whole sheet as one page of A4: what is known filled in, boxes for the rest. */
export function renderPaper(view: SheetView, answers: AlignmentAnswers): TemplateResult {
  const { car, display } = view;
  const { left, right } = answers.plans;
  const plans = [left, right];
  const isFront = car.cornerName.startsWith('Front');
  const total = totalText(car, display);
  const { how, warning } = restsOn(plans, car);
  const turns = plans.flatMap((plan) => turnLines(plan, car, display).slice(0, 2));
  const after = [...spreadLines(view, 'temperature'), ...slopeLines(view), ...spreadLines(view, 'tread')];
  return html`<div class="paper">
    <h3>${ALIGNMENT.title}</h3>
    <div class="boxes">${box(WORDS.car, 'wide')} ${box(WORDS.date)} ${box(WORDS.load, 'wide')} ${box(WORDS.fuel)}</div>
    <table>
      <thead><tr><th></th>${WORDS.corners.map((corner) => html`<th scope="col">${corner}</th>`)}</tr></thead>
      <tbody>
        ${renderHeights(plans, car, display, isFront)}
        <tr><th scope="row">${WORDS.pressures}</th>${WORDS.corners.map(() => blank)}</tr>
      </tbody>
    </table>
    ${renderAngles(plans, car, display, isFront)}
    ${total ? html`<p>${total}</p>` : nothing}
    <p><b>${ALIGNMENT.order}</b>: ${ALIGNMENT.orderNote}</p>
    ${renderOrder(view, plans, { isByArm: answers.isByWishbone, toe: [...turns, ALIGNMENT.both] })}
    <p><b>${WORDS.tighten}</b></p>
    <ul class="ticks">${WORDS.bolts.map((one) => html`<li>${one}</li>`)}</ul>
    <p><b>${WORDS.check}</b></p>
    <ul class="ticks">${WORDS.checks.map((one) => html`<li>${one}</li>`)}</ul>
    ${after.length > 0 ? html`<p><b>${ALIGNMENT.afterDriving.title}.</b> ${after.join(' ')}</p>` : nothing}
    <ul class="cautions">${WORDS.cautions.map((one) => html`<li>${one}</li>`)}</ul>
    <p class="made">${how} ${WORDS.made}</p>
    ${warning ? html`<p><b>${warning}</b></p>` : nothing}
  </div>`;
}

/** Four corners: those of this axle as far as they were typed. */
function renderHeights(plans: readonly WheelPlan[], car: CarDocument, display: Display, isFront: boolean) {
  const row = (name: string, values: readonly (number | undefined)[]) => {
    const written = values.map((one) =>
      one === undefined ? blank : html`<td>${show(one, 'cornerHeight', display)}</td>`,
    );
    const empty = [blank, blank];
    const cells = isFront ? [...written, ...empty] : [...empty, ...written];
    return html`<tr><th scope="row">${WORDS.heights}, ${name}</th>${cells}</tr>`;
  };
  const wanted = car.alignment?.heightWanted;
  return html`${row(
    WORDS.before,
    plans.map(({ height }) => height.now),
  )} ${row(WORDS.wanted, [wanted, wanted])} ${row(
    WORDS.after,
    plans.map(({ height }) => height.after),
  )}`;
}

/** Camber and toe of both wheels, and of the axle: now, wanted with its tolerance, and a box for afterwards. */
function renderAngles(
  plans: readonly WheelPlan[],
  car: CarDocument,
  display: Display,
  isFront: boolean,
): TemplateResult {
  const { alignment = {} } = car;
  const { camberWanted, toeWanted, camberTolerance = GAUGE.camber, toeTolerance = GAUGE.toe } = alignment;
  const cell = (value: number | undefined, quantity: Quantity) =>
    value === undefined ? blank : html`<td>${signed({ value }, quantity, display)}</td>`;
  const target = (value: number | undefined, quantity: Quantity, tolerance: number) =>
    value === undefined
      ? blank
      : html`<td>${signed({ value }, quantity, display)} ${WORDS.within(show(tolerance, 'plusMinusToe', display))}</td>`;
  const toes = plans.map(({ toe }) => toe);
  const sum = toes.every((one) => one !== undefined) ? toes[0]! + toes[1]! : undefined;
  const text = (one: string | undefined) => (one === undefined ? blank : html`<td>${one}</td>`);
  return html`<table>
    <thead>
      <tr>
        <th scope="col">${WORDS.angles(isFront ? ALIGNMENT.front : ALIGNMENT.rear)}</th>
        <th scope="col">${WORDS.now}</th><th scope="col">${WORDS.wanted}</th><th scope="col">${WORDS.result}</th>
        <th scope="col">${WORDS.rod}</th><th scope="col">${WORDS.turns}</th>
      </tr>
    </thead>
    <tbody>
      ${plans.map(
        ({ side, camber }) =>
          html`<tr><th scope="row">${WORDS.camber}, ${ALIGNMENT[side]}</th>${cell(camber, 'camber')} ${target(camberWanted, 'camber', camberTolerance)} ${blank}<td></td><td></td></tr>`,
      )}
      ${plans.map(
        (plan) =>
          html`<tr><th scope="row">${WORDS.toe}, ${ALIGNMENT[plan.side]}</th>${cell(plan.toe, 'toe')} ${target(toeWanted, 'toe', toeTolerance)} ${blank} ${plan.isToeWithin ? html`<td colspan="2">${WORDS.leave}</td>` : html`${text(rodText(plan, display))} ${text(turnsText(plan, display))}`}</tr>`,
      )}
      <tr>
        <th scope="row">${WORDS.total}</th>${cell(sum, 'toe')} ${target(toeWanted === undefined ? undefined : 2 * toeWanted, 'toe', 2 * toeTolerance)} ${blank}<td></td><td></td>
      </tr>
    </tbody>
  </table>`;
}

/** Ink on paper, in points, within the printable width of A4. */
export const paperStyles = css`
  @page {
    size: A4;
    margin: 12mm;
  }
  .paper {
    color: #000;
    background: #fff;
    font: 9pt/1.3 system-ui, sans-serif;
  }
  .paper h3 {
    margin: 0 0 6pt;
    font: 600 15pt/1.2 system-ui, sans-serif;
  }
  .paper p {
    margin: 6pt 0 2pt;
  }
  .paper .boxes {
    display: grid;
    grid-template-columns: 1fr 1fr 1fr;
    gap: 5pt;
  }
  .paper .box {
    block-size: 24pt;
    padding: 1pt 4pt;
    border: 0.6pt solid #000;
    font-size: 7.5pt;
  }
  .paper .box.wide {
    grid-column: span 2;
  }
  .paper table {
    inline-size: 100%;
    margin-block-start: 7pt;
    border-collapse: collapse;
  }
  .paper :is(td, th) {
    block-size: 15pt;
    padding: 0.5pt 4pt;
    border: 0.6pt solid #666;
    font-weight: 400;
    text-align: start;
  }
  .paper thead th {
    font-weight: 600;
  }
  .paper td {
    font-variant-numeric: tabular-nums;
  }
  .paper td.blank {
    min-inline-size: 40pt;
  }
  .paper :is(ul, ol) {
    margin: 2pt 0;
    padding-inline-start: 16pt;
  }
  .paper li {
    margin-block: 1.5pt;
  }
  .paper .ticks {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 1pt 12pt;
    padding: 0;
    list-style: none;
  }
  .paper .ticks li {
    position: relative;
    padding-inline-start: 14pt;
  }
  .paper .ticks li::before {
    content: '';
    position: absolute;
    inset-block-start: 1.5pt;
    inset-inline-start: 0;
    inline-size: 7pt;
    block-size: 7pt;
    border: 0.6pt solid #000;
  }
  .paper .cautions {
    margin-block-start: 7pt;
    padding: 4pt 8pt 4pt 20pt;
    border: 1pt solid #000;
  }
  .paper .made {
    font-size: 8pt;
  }
`;
