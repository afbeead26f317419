import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Cell } from '../../core/answers/compare.js';
import { COMPARED_FIGURES, type ComparedFigure } from '../../core/document/compared-figures.js';
import { amount, show } from '../element/sentence.js';
import { LABELS } from './bumpline-compare.labels.js';
import type { CompareView } from './compare-view.js';

const { table: TABLE, figures: FIGURES } = LABELS;

type View = Pick<CompareView, 'answer' | 'car' | 'compared' | 'display' | 'host'>;

/** What the cells show. */
export const figureOf = ({ car }: Pick<CompareView, 'car'>): ComparedFigure => car.compare?.show ?? COMPARED_FIGURES[0];

/** Whether a row knows camber itself. Where a set's zero was moved, its curve no longer does. */
export function knowsCamber({ compared, host }: Pick<CompareView, 'compared' | 'host'>, index: number): boolean {
  if (host.curves) return true;
  const { own, setup } = compared.rows[index] ?? {};
  if (own) return own.knowsCamber;
  // Parts on the car's own links know what these know.
  return setup?.parts && setup.readings.length === 0 ? compared.own?.knowsCamber === true : setup?.zeroAt === undefined;
}

/** "1.0° in", "0.2° out" */
export const toeText = (toe: number): string => (toe < 0 ? FIGURES.out : FIGURES.in);

/** One of a cell's figures, and under a camber change what the same height does in droop. */
export function cellBody(cell: Cell, row: number, app: View): TemplateResult {
  const { display } = app;
  const figure = figureOf(app);
  const written = (stretches: ReturnType<typeof amount>, after = '') => {
    const [main, , doubt] = stretches;
    return html`<b>${main!.text}${after}</b>${doubt ? html` <small>${doubt.text}</small>` : ''}`;
  };
  const none = (text: string) => html`<span class="none">${text}</span>`;
  const { change, droopChange, rate, camberAtEnd, toeChange, rollCentre, isBeyondSolid } = cell;
  const outside = isBeyondSolid ? TABLE.beyond : TABLE.outside;
  const isOfLinks = app.answer?.request.curves[row]?.shares !== undefined;
  switch (figure) {
    case 'camberAtEnd':
      if (camberAtEnd === undefined) return none(outside);
      return knowsCamber(app, row) ? html`<b>${show(camberAtEnd, 'camber', display)}</b>` : none(FIGURES.noCamber);
    case 'rate':
      return rate ? written(amount(rate.value, rate.plusMinus, 'camberRate', display)) : none(outside);
    case 'toeChange':
      if (toeChange)
        return written(
          amount(Math.abs(toeChange.value), toeChange.plusMinus, 'toe', display),
          ` ${toeText(toeChange.value)}`,
        );
      return none(change ? FIGURES.measureToe : outside);
    case 'rollCentre':
      if (rollCentre) return written(amount(rollCentre.value, rollCentre.plusMinus, 'coordinate', display));
      return none(isOfLinks && rate ? FIGURES.coming : FIGURES.noLinks);
    default:
      if (!change) return none(outside);
      return html`${written(amount(change.value, change.plusMinus, 'camberChange', display))}${
        droopChange
          ? html`<small class="droop">${TABLE.inDroop(show(droopChange.value, 'camberChange', display))}</small>`
          : ''
      }`;
  }
}

/** Which of them: a way of looking, so no step of undo. The address carries it. */
export function renderFigureChoice(app: Pick<CompareView, 'car' | 'model' | 'ask' | 'host'>): TemplateResult {
  const chosen = figureOf(app);
  const choose = ({ target }: Event) => {
    const show = (target as HTMLSelectElement).value as ComparedFigure;
    app.model.replace(({ compare: { show: _, ...others } = {}, ...car }) => {
      const compare = show === COMPARED_FIGURES[0] ? others : { ...others, show };
      return Object.keys(compare).length > 0 ? { ...car, compare } : car;
    });
    app.ask();
    app.host.requestUpdate();
  };
  return html`<label class="cells-show">${FIGURES.label}
    <select class="text listed" .value=${live(chosen)} @change=${choose}>
      ${COMPARED_FIGURES.map((one) => html`<option value=${one} ?selected=${one === chosen}>${FIGURES.names[one]}</option>`)}
    </select>
  </label>`;
}
