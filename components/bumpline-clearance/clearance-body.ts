import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { isLockAssumed } from '../../core/document/fitment-in-use.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import { ownFitment } from '../../core/document/wheels-in-use.js';
import { ChartController } from '../chart/chart.js';
import { CursorLine } from '../chart/cursor-line.js';
import type { ChartModel } from '../chart/model.js';
import { watchInlineSize } from '../controls/resize.js';
import { renderNumbers } from '../controls/table.js';
import { sheetScale } from '../controls/text-scale.js';
import { DrawingSlot } from '../drawing/drawing-slot.js';
import { LastMade } from '../element/last-made.js';
import { renderProblems } from '../element/problems-block.js';
import { upper } from '../element/sentence.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { renderTravelList } from '../element/travel-list.js';
import { carKit } from '../inputs/car-kit.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { renderFitted } from '../parts/fitted-choice.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';
import { bodyStyles } from './clearance-body.styles.js';
import { renderTightest, renderWhatNext, renderWheels } from './clearance-lists.js';
import { knownMotion } from './clearance-question.js';
import type { ClearanceView } from './clearance-view.js';
import { type DrawnWheels, drawnWheels } from './drawn-wheels.js';
import {
  describeProblem,
  firstMissingFitment,
  fitmentKit,
  fitmentSheetOfPath,
  renderFitmentInputs,
} from './fitment-kit.js';
import { renderPlaneSlider } from './plane-slider.js';
import { PoseSliders } from './pose-sliders.js';
import { poseText } from './pose-text.js';
import { sectionView } from './section-view.js';
import { sideView } from './side-view.js';
import { chartModel, placesTable } from './views.js';

/** From this width on pictures and lists stand side by side, CSS px. */
const TWO_COLUMNS_PX = 760;

/** Everything under the sentence. */
export class ClearanceBody extends SheetBody<ClearanceView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #chart: ChartController;
  readonly #line: CursorLine;
  readonly #section: DrawingSlot;
  readonly #side: DrawingSlot;
  readonly #pose: PoseSliders;
  readonly #drawn = new LastMade<DrawnWheels | undefined>();
  readonly #charted = new LastMade<ChartModel>();
  #changed: DrawnClearance | undefined;
  /** On a phone one picture is shown at a time. */
  #isSide = false;
  #isWide = false;
  #unwatch: (() => void) | undefined;
  #isChartOpen: boolean | undefined;

  constructor(view: ClearanceView) {
    super(view);
    const { host, cursor } = view;
    this.#sheet = new InputSheet(
      view,
      fitmentKit(
        view,
        carKit(view, () => undefined),
      ),
    );
    this.#chart = new ChartController(host, {
      cursor,
      model: () => this.#chartModel(),
      rest: () => {
        const { answer, selected } = view;
        return answer && selected !== undefined ? answer.places[selected]!.decisive.travel : 0;
      },
    });
    this.#line = new CursorLine(host, cursor, (travel) => this.#atCursor(travel));
    this.#pose = new PoseSliders(view);
    const key = (travel: number) => {
      const { answer, asked, selected, display } = view;
      const { wanted } = this.#pose;
      const isKnown = wanted !== undefined && asked !== undefined && knownMotion(asked) !== undefined;
      return [travel, answer, selected, wanted, isKnown, JSON.stringify(display)];
    };
    this.#section = new DrawingSlot(host, {
      cursor,
      key,
      isShown: () => this.#isWide || !this.#isSide,
      draw: (travel) => {
        const { selected } = view;
        const drawn = this.#wheels;
        if (!drawn || selected === undefined) return undefined;
        return sectionView(drawn, selected, this.#pose.steered(drawn, selected), travel, view.display);
      },
    });
    this.#side = new DrawingSlot(host, {
      cursor,
      key,
      isShown: () => this.#isWide || this.#isSide,
      draw: (travel) => {
        const { selected } = view;
        const drawn = this.#wheels;
        if (!drawn || selected === undefined) return undefined;
        return sideView(drawn, this.#pose.steered(drawn, selected), travel, selected, view.display);
      },
      onSelect: (place) => view.select(Number(place)),
    });
  }

  override get pictures() {
    const { picture: words } = NAMES;
    return [
      { kind: 'drawing', name: words.front, of: this.#section },
      { kind: 'drawing', name: words.side, of: this.#side },
      { kind: 'chart', of: this.#chart },
    ] as const;
  }

  override get settled(): Promise<unknown> {
    return Promise.all([this.#section.first, this.#side.first, super.settled]);
  }

  get #wheels(): DrawnWheels | undefined {
    const { answer, asked } = this.view;
    return this.#drawn.of([answer], () => answer && asked && drawnWheels(answer, asked));
  }

  #chartModel(): ChartModel | undefined {
    const { answer, asked, selected, display } = this.view;
    if (!answer || !asked || selected === undefined) return undefined;
    return this.#charted.of([answer, selected, JSON.stringify(display)], () =>
      chartModel({ answer, places: asked.places, isLeft: asked.isLeft, selected }, display),
    );
  }

  protected renderProblems(): TemplateResult {
    const { view: app } = this;
    const onShow = (key: string) => void this.#sheet.show(key);
    return renderProblems(app, {
      uses: ['fit', 'given', 'drop', 'setups', 'bumpTravel', 'limits', 'stopGap', 'measuredAt', 'lowered'],
      text: (problem) => describeProblem(app, problem),
      fieldOf: (path) => (path === 'drop' || path === 'plane' ? app.sentence[path] : undefined),
      // What stands in a page's attributes or data a reader cannot mend.
      sheetOf: ({ path }) => (app.isUnread ? undefined : fitmentSheetOfPath(app, path)?.sheet.key),
      onShow,
    });
  }

  protected readonly parts: ShownParts = {
    drawing: () => {
      const { selected } = this.view;
      return selected === undefined ? nothing : this.#renderViews(selected);
    },
    chart: () => (this.view.selected === undefined ? nothing : this.#chart.renderPlace()),
    table: () => this.#renderTightest(),
  };

  #renderTightest(): TemplateResult | typeof nothing {
    const { answer, asked, selected, display } = this.view;
    if (!answer || !asked) return nothing;
    return html`<div class="stacked" part="table">${renderTightest(answer, asked, selected, display, (place) => this.view.select(place))}</div>`;
  }

  protected renderWhole(): TemplateResult {
    const { view: app } = this;
    const { answer, asked, selected } = app;
    const onShow = (key: string) => void this.#sheet.show(key);
    return html`${this.renderProblems()}
      ${
        answer && asked
          ? html`<div class="body ${selected === undefined ? 'no-drawing' : ''}">
              <div class="control">${renderFitted(app)} ${renderPlaneSlider(app, app.isComplete ? answer : this.#changed, this.stepOf('plane'))}</div>
              ${selected === undefined ? nothing : this.#renderViews(selected)}
              <div class="column">
                ${this.#renderActions()}
                ${this.#renderTightest()}
                ${this.#renderChanges(answer)}
                <div class="more">
                  ${selected === undefined ? nothing : this.#renderChart()}
                  ${this.late(() => this.#renderLists(answer))}
                </div>
              </div>
            </div>`
          : html`<div class="more">${renderFitmentInputs(app, onShow, !app.isUnread)}</div>`
      }`;
  }

  #renderLists(answer: DrawnClearance): TemplateResult {
    const { view: app } = this;
    const { display } = app;
    const onShow = (key: string) => void this.#sheet.show(key);
    return html`${this.folded('.inputs', () => renderFitmentInputs(app, onShow))}
                  ${this.folded('.wheels', () => renderWheels(answer, display))}
                  ${this.folded('.travel', () =>
                    renderTravelList({
                      budget: answer.budget,
                      path: answer.motion.damper,
                      car: app.car,
                      display,
                      standsIn: true,
                      onSelect: onShow,
                    }),
                  )}
                  ${this.folded('.numbers', () => this.#renderNumbers(answer))}`;
  }

  /** Beside the pictures there is room for it; under them, on a phone, it is asked for. */
  #renderChart(): TemplateResult {
    this.#isChartOpen ??= this.view.host.clientWidth >= TWO_COLUMNS_PX;
    return html`<details class="gaps" ?open=${this.#isChartOpen}>
      <summary>${NAMES.chartTitle}</summary>
      ${this.#chart.renderPlace()}
    </details>`;
  }

  /** What would just clear is worked out with the steering: while something is dragged the last of it keeps its place. */
  #renderChanges(answer: DrawnClearance): TemplateResult {
    const { isComplete, display, asked, answeredCar } = this.view;
    if (isComplete || !this.#changed) this.#changed = answer;
    return renderWhatNext(this.#changed, isComplete, asked?.places ?? [], answeredCar, display);
  }

  #renderViews(selected: number): TemplateResult {
    const { answer, asked, isComplete } = this.view;
    const found = answer!.places[selected]!;
    const name = placeName(asked!.places[selected]!, asked!.isLeft);
    const remarks = [
      isComplete ? (answer!.isSteered ? '' : NAMES.aheadOnly) : NAMES.steering,
      answer!.isSteered && isLockAssumed(this.view.answeredCar) ? `${NAMES.assumedLock} ${asked!.lock}°.` : '',
    ].filter(Boolean);
    const drawn = this.#wheels;
    const { picture: words } = NAMES;
    const view = (isSide: boolean, label: string) =>
      html`<button type="button" class="button" aria-pressed=${this.#isSide === isSide} @click=${() => this.#look(isSide)}>${label}</button>`;
    return html`<div class="views ${this.#isSide ? 'from-side' : ''}" part="drawing" ${ref(this.#viewsPlaced)}>
      <p class="view-name"><b>${upper(name)}</b>: ${verdictText(found)}. ${remarks.join(' ')}</p>
      <div class="which-view" role="group" aria-label=${words.view}>${view(false, words.front)}${view(true, words.side)}</div>
      <div class="section-view drawing-place" ${ref(this.#section.placed)}></div>
      <div class="pose">
        ${this.#line.render()} ${drawn ? this.#pose.render(drawn, selected) : nothing}
      </div>
      <div class="side-view drawing-place" ${ref(this.#side.placed)}></div>
    </div>`;
  }

  /** Side by side both pictures are in sight. */
  readonly #viewsPlaced = (views?: Element): void => {
    const { host } = this.view;
    this.#unwatch?.();
    this.#unwatch =
      views &&
      watchInlineSize(host, (width) => {
        this.#isWide = width >= TWO_COLUMNS_PX * sheetScale(host);
        this.#section.draw();
        this.#side.draw();
      });
  };

  #look(isSide: boolean): void {
    this.#isSide = isSide;
    // Not a frame of what it was when it was last in sight.
    this.#section.draw();
    this.#side.draw();
    this.view.host.requestUpdate();
  }

  /** The way in to one's own numbers, and the way back. */
  #renderActions(): TemplateResult {
    const { car } = this.view;
    const next = firstMissingFitment(this.view);
    const isBegun = isUsers(car, 'fit');
    return html`<div class="actions">
      <button type="button" class="button own ${next ? 'main' : ''}" @click=${() => void this.#sheet.show(next?.key ?? 'before')}>
        ${next && isBegun ? NAMES.next(next.key === 'way' ? NAMES.motion : next.title) : NAMES.own}
      </button>
      <button type="button" class="button" @click=${() => void this.#sheet.show(`places.${ownFitment(car).places?.length ?? 0}`)}>
        ${NAMES.addPlace}
      </button>
      ${this.renderHistory()}
    </div>`;
  }

  #renderNumbers(answer: DrawnClearance): TemplateResult {
    const { display, asked, announcer, car } = this.view;
    const { places, isLeft } = asked!;
    return renderNumbers({
      id: 'numbers',
      caption: `${NAMES.table(answeredCorner(car))} ${NAMES.doubt}`,
      ...placesTable({ answer, places, isLeft }, display),
      onStatus: (text) => announcer.announce(text),
    });
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  protected readAgain(): void {
    const { drop, plane } = this.view.sentence;
    drop.readAgain();
    plane.readAgain();
  }

  #atCursor(travel: number): string | undefined {
    const drawn = this.#wheels;
    const { selected } = this.view;
    if (!drawn || selected === undefined) return undefined;
    return poseText(this.view, drawn, this.#pose.steered(drawn, selected), travel);
  }
}
