import { html, nothing, type TemplateResult } from 'lit';
import { isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { causeOf } from '../../core/linkage/causes.js';
import { formatNumber } from '../../core/quantity/format.js';
import { contributions } from '../../core/uncertainty/combine.js';
import { renderRestsOn } from '../bumpline-geometry/own-points.js';
import { renderSets } from '../bumpline-geometry/set-list.js';
import { renderSlider } from '../controls/slider.js';
import { renderNumbers } from '../controls/table.js';
import { DrawingSlot } from '../drawing/drawing-slot.js';
import { renderShares } from '../element/doubt-lists.js';
import { RESTS } from '../element/rests.labels.js';
import { lower, show } from '../element/sentence.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { firstMissing, listOf } from '../inputs/car-sheets.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { LINKS } from '../inputs/links.labels.js';
import { wayIn } from '../inputs/way-in.js';
import { onLinks } from '../publish/rests-on.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { rollText } from './bumpline-cornering.words.js';
import { bodyStyles } from './cornering-body.styles.js';
import { corneringKit, isSteerHalf, turnSheets } from './cornering-kit.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';
import { type BarRow, barsToSave, renderBars } from './inclination-bars.js';
import { renderProblems } from './problems.js';
import { ROLL } from './roll.labels.js';
import { renderLateral, renderRollWays } from './roll-ways.js';
import { renderSetups, setupName, signedAngle } from './setup-table.js';
import type { SetupTurns } from './setup-turns.js';
import { StiffnessBack } from './stiffness-panel.js';
import { turnDrawing } from './turn-drawing.js';
import { Wanted } from './wanted-panel.js';
import { numbers, renderTouched, renderWheels } from './wheel-figures.js';

export { SetupTurns } from './setup-turns.js';

/** As far as the slider goes, degrees; what is typed may go further. */
const SLIDER_ROLL = 6;

/** Everything under the sentence: problems, the rolled car, how it adds up, setups side by side, both wheels, and the sheet that a number opens. */
export class CorneringBody extends SheetBody<CorneringView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #turns: SetupTurns;
  readonly #wanted: Wanted;
  readonly #back: StiffnessBack;
  readonly #drawing: DrawingSlot;

  constructor(view: CorneringView, turns: SetupTurns) {
    super(view);
    this.#turns = turns;
    this.#sheet = new InputSheet(view, corneringKit(view));
    this.#wanted = new Wanted(view);
    this.#back = new StiffnessBack(view);
    this.#drawing = new DrawingSlot(view.host, { cursor: view.cursor, ...turnDrawing(view, () => turns.level) });
  }

  override get pictures() {
    const bars = { isThere: this.#bars.length > 0, bars: () => barsToSave(this.#bars, this.view.display) };
    return [
      { kind: 'drawing', of: this.#drawing },
      { kind: 'bars', of: bars },
    ] as const;
  }

  override get restsOn() {
    const { hasLinks, answeredCar } = this.view;
    return hasLinks ? onLinks(answeredCar) : super.restsOn;
  }

  override get settled(): Promise<unknown> {
    return this.#turns.settled.then(async () => {
      await this.view.host.updateComplete;
      await Promise.all([this.#wanted.settle(), this.#back.settle(), this.#drawing.first]);
      return super.settled;
    });
  }

  override retry(): void {
    super.retry();
    this.#turns.retry();
    this.#wanted.retry();
    this.#back.retry(this.#turns);
  }

  readonly #show = (key: string): void => void this.#sheet.show(key);

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  protected renderProblems(): TemplateResult {
    return renderProblems(this.view, this.#show);
  }

  protected readonly parts: ShownParts = {
    drawing: () => this.#drawing.renderPlace(),
    chart: () => {
      this.#turns.ask();
      return this.#renderBars();
    },
    table: () => {
      this.#turns.ask();
      return this.#renderNumbers(this.view.answer!, true);
    },
  };

  #renderBars(): TemplateResult {
    return html`<div class="stacked" part="chart">${renderBars(this.#bars, this.view.display)}</div>`;
  }

  protected renderWhole(): TemplateResult {
    const { answer, view } = { answer: this.view.answer, view: this.view };
    this.#turns.ask();
    this.#wanted.ask();
    this.#back.ask(this.#turns);
    return html`${this.renderProblems()}
      ${
        answer
          ? html`<div class="body">
              ${this.#drawing.renderPlace()}
              <div class="column">
                ${this.#renderRoll()}
                ${this.#renderTurn()}
                ${this.#renderBars()}
                ${renderTouched(view, this.#turns.stop)}
                ${view.hasLinks ? renderSets(view, this.#turns.corner, NAMES.noParts) : html`<p class="note">${NAMES.noSteer}</p>`}
                ${this.#renderActions()}
              </div>
              <div class="rest">
                ${this.#back.render()}
                <div class="more">
                  ${this.late(() => this.#renderFolds(answer))}
                </div>
              </div>
            </div>`
          : html`<div class="column">${this.#renderActions()} ${this.#renderInputs()}</div>`
      }`;
  }

  /** The setups on one scale; until they have come, what stands in the sentence. */
  get #bars(): BarRow[] {
    const { answer, display } = this.view;
    const { rows } = this.#turns;
    // With the camber that the sentence holds.
    const held = answer?.camber === undefined ? 'asLeft' : 'setAgain';
    const found = rows.flatMap((row): BarRow[] => {
      const turn = row[held];
      return turn ? [{ name: setupName(row, display), isNow: row.isNow, wheel: turn.outer }] : [];
    });
    return found.length > 0 || !answer
      ? found
      : [{ name: setupName(answer, display), isNow: true, wheel: answer.outer }];
  }

  #renderRoll(): TemplateResult {
    const { view } = this;
    const { roll, display, car, rollWay } = view;
    if (rollWay === 'load') return renderLateral(view, this.stepOf('turn.load.lateral'));
    return html`${renderSlider({
      id: 'roll-slider',
      label: NAMES.slider,
      quantity: 'roll',
      display,
      value: roll,
      min: 0,
      max: Math.max(SLIDER_ROLL, Math.ceil(roll)),
      ticks:
        rollWay === 'typed' && car.turn?.roll === undefined
          ? [{ at: roll, label: NAMES.usualRoll, kind: 'plain' }]
          : [],
      onInput: (degrees) =>
        view.set(lower(NAMES.slider), { roll: Math.round(10 * degrees) / 10, rollFrom: undefined }, 'turn.roll'),
      onChange: () => view.endDrag(),
      step: this.stepOf('turn.roll'),
    })}`;
  }

  /** Where the roll comes from, and what else is held in this turn: open where something of it has been said. */
  #renderTurn(): TemplateResult {
    const { view } = this;
    const { car, rollWay } = view;
    const isSaid = rollWay !== 'typed' || car.turn?.rollFrom !== undefined || isSteerHalf(car);
    return html`<details class="turn" ?open=${isSaid}>
      <summary>${NAMES.turn}</summary>
      ${renderRollWays(view, this.#show)} ${this.#renderAsked()}
    </details>`;
  }

  #renderFolds(answer: TurnOnSheet): TemplateResult {
    const { view } = this;
    const { stop, level } = this.#turns;
    return html`${this.folds(
      ['setups', () => renderSetups(view, this.#turns)],
      ['both-wheels', () => renderWheels(view, stop, level?.rollCentre, view.hasLinks ? this.#show : undefined)],
    )}
    ${this.#wanted.render(this.#show)}
    ${this.folds(
      ['inputs', () => this.#renderInputs()],
      ['why', () => this.#renderWhy(answer)],
      ['numbers', () => this.#renderNumbers(answer)],
    )}`;
  }

  /** What else is held in this turn, and where it is changed. */
  #renderAsked(): TemplateResult {
    const { display, car, hasLinks } = this.view;
    const { radius, wheelbase, tyreRoll, camber, track } = car.turn ?? {};
    const { asked: WORDS } = NAMES;
    const isSteered = radius !== undefined && wheelbase !== undefined;
    const line = (text: string, button: string, key: string) =>
      html`<li>${text} <button type="button" class="text-button" @click=${() => this.#show(key)}>${button}</button></li>`;
    return html`<ul class="asked-of-turn">
      ${
        hasLinks
          ? line(
              isSteered
                ? WORDS.steered(`${formatNumber(radius, 1, display.language)}\u202fm`)
                : isSteerHalf(car)
                  ? NAMES.steerNeeds
                  : WORDS.straight,
              WORDS.steer,
              radius === undefined ? 'turn.radius' : wheelbase === undefined ? 'turn.wheelbase' : 'turn.radius',
            )
          : line(
              track === undefined ? WORDS.noTrack : WORDS.trackIs(show(track, 'track', display)),
              WORDS.track,
              'turn.track',
            )
      }
      ${line(tyreRoll === undefined ? WORDS.noTyres : WORDS.tyres(rollText(tyreRoll, display)), WORDS.tyre, 'turn.tyreRoll')}
      ${line(camber === undefined ? WORDS.asLeft : WORDS.set(signedAngle(camber, display)), WORDS.camber, 'turn.camber')}
    </ul>`;
  }

  /** The ways in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car, hasLinks } = this.view;
    const next = firstMissing(car);
    const open = () => this.#show(!isUsers(car, 'corner') || !next ? 'way' : next.key);
    return html`<div class="actions">
      ${hasLinks && isWishbone(car) ? nothing : html`<button type="button" class="button own ${next ? 'main' : ''}" @click=${open}>${wayIn(car, next)}</button>`}
      ${this.renderHistory()}
    </div>`;
  }

  #renderInputs(): TemplateResult {
    const { car, display, hasLinks } = this.view;
    const sheets = [...turnSheets(car, hasLinks), ...(!hasLinks || isWishbone(car) ? [] : listOf(car))];
    const note = [...(isSteerHalf(car) ? [NAMES.steerNeeds] : []), ...(hasLinks ? [LINKS.axes] : [])].join(' ');
    return renderRestsOn(RESTS.inputs, note || undefined, sheets, { car, display, onShow: this.#show });
  }

  #renderWhy({ doubt, request }: TurnOnSheet): TemplateResult {
    const { display } = this.view;
    const shares = doubt ? contributions({ value: 0, parts: doubt.outer }, doubt.sources, causeOf) : [];
    return html`<details class="why">
      <summary>${RESTS.why}</summary>
      ${
        shares.length > 0
          ? html`${renderShares(shares, display.language)}
              <p class="note">${request.rollUncertainty ? ROLL.doubtNote : NAMES.doubtNote}</p>`
          : html`<p class="note">${RESTS.noDoubt}</p>`
      }
      <p class="note">${NAMES.links}</p>
    </details>`;
  }

  #renderNumbers(answer: TurnOnSheet, open = false): TemplateResult {
    const { display, announcer } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.wheels.caption(rollText(answer.suspensionRoll, display)),
      ...numbers(answer, display, this.#turns.stop),
      open,
      onStatus: (text) => announcer.announce(text),
    });
  }

  protected readAgain(): void {
    this.view.sentence.drop.readAgain();
    this.view.sentence.roll.readAgain();
    this.view.sentence.lateral.readAgain();
  }
}
