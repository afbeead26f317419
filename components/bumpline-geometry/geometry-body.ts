import { html, nothing, type TemplateResult } from 'lit';
import { isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { fromShown } from '../../core/quantity/units.js';
import { ChartStack, type StackedChart } from '../chart/chart-stack.js';
import { sampleOf } from '../chart/sample.js';
import { renderNumbers } from '../controls/table.js';
import type { CornerSide } from '../drawing/corner-view.js';
import { DrawingSlot } from '../drawing/drawing-slot.js';
import type { BalloonState } from '../drawing/items.js';
import { LastMade } from '../element/last-made.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { sheetOf, sheetOfPath } from '../inputs/car-sheets.js';
import { renderInputRow } from '../inputs/input-row.js';
import { InputSheet } from '../inputs/input-sheet.js';
import { LINKS } from '../inputs/links.labels.js';
import { queriesOf } from '../inputs/queries.js';
import { onLinks } from '../publish/rests-on.js';
import { NAMES } from './bumpline-geometry.labels.js';
import { CornerJson } from './corner-json.js';
import { bodyStyles } from './geometry-body.styles.js';
import { firstMissingPoint, geometryKit, linkList } from './geometry-kit.js';
import type { GeometryView, WorkbenchAnswer } from './geometry-view.js';
import { linksDrawing } from './links-drawing.js';
import { renderChanges, renderWhy } from './part-changes.js';
import { PointMover } from './point-mover.js';
import { renderProblems } from './problems.js';
import { renderSets } from './set-list.js';
import { endsText, travelEnds } from './travel-ends.js';
import { charts, domainOf, linesOf, numbers } from './views.js';

const SIDES = ['front', 'side', 'top'] as const;

/** Everything under the sentence: problems, drawing, sets of parts, charts, lists, and the sheet that a number opens. */
export class GeometryBody extends SheetBody<GeometryView> {
  readonly styles = bodyStyles;
  readonly #sheet: InputSheet;
  readonly #stack: ChartStack;
  readonly #drawing: DrawingSlot;
  readonly #json: CornerJson;
  readonly #charted = new LastMade<StackedChart[]>();
  #side: CornerSide = 'front';

  constructor(view: GeometryView) {
    super(view);
    const { host, cursor } = view;
    const kit = geometryKit(view, () => view.answer?.bare.curves.driveway?.taken);
    this.#sheet = new InputSheet(view, kit);
    this.#json = new CornerJson(view);
    this.#stack = new ChartStack(host, {
      cursor,
      charts: () => this.#charts(),
      rest: () => view.answer?.drop ?? 0,
      addStyles: view.addStyles,
    });
    const mover = new PointMover(
      view,
      () => this.#side,
      (key) => kit.sheetOf(key),
      () => this.#drawing.pxPerMm,
    );
    this.#drawing = new DrawingSlot(host, {
      cursor,
      ...linksDrawing(
        view,
        () => this.#side,
        (key) => this.#balloonState(key),
      ),
      onSelect: (key) => {
        if (!mover.takeDragged()) void this.#sheet.show(key);
      },
      named: (key) => sheetOf(key)?.title,
      onKey: mover.onKey,
      onGrab: mover.onGrab,
    });
  }

  override get pictures() {
    return [
      { kind: 'drawing', of: this.#drawing },
      { kind: 'chart', of: this.#stack },
    ] as const;
  }

  override get restsOn() {
    return onLinks(this.view.answeredCar);
  }

  override get settled(): Promise<unknown> {
    return this.#drawing.first.then(() => super.settled);
  }

  override retry(): void {
    super.retry();
    this.#stack.retry();
  }

  #charts(): StackedChart[] | undefined {
    const { answer, answeredCar: car, display } = this.view;
    return (
      answer &&
      this.#charted.of([answer, car, JSON.stringify(display)], () => charts(answer, display, travelEnds(answer, car)))
    );
  }

  /** Whether the links are hard points that have sheets. */
  get #isEdited(): boolean {
    const { car } = this.view;
    return sourceKindOf(car) === 'points' && !isWishbone(car);
  }

  #balloonState(key: string): BalloonState | undefined {
    const { problems, car } = this.view;
    if (!this.#isEdited) return undefined;
    const queries = queriesOf(this.view);
    const isOfKey = (path: string | undefined) => path !== undefined && sheetOfPath(path)?.sheet.key === key;
    const isBad =
      queries.length > 0
        ? queries.some(({ path }) => path === key)
        : problems.some(({ path, other }) => isOfKey(path) || isOfKey(other));
    if (isBad) return 'problem';
    const isGiven = car.whole !== undefined || key in car.given.points;
    if (isGiven) return 'yours';
    return isUsers(car, 'corner') && firstMissingPoint(car)?.key === key ? 'wanted' : 'example';
  }

  protected renderProblems(): TemplateResult {
    return renderProblems(this.view, (key) => void this.#sheet.show(key));
  }

  protected readonly parts: ShownParts = {
    drawing: () => html`${this.#renderViews()} ${this.#drawing.renderPlace()}`,
    chart: () => this.#renderStack(this.view.answer!),
    table: () => this.#renderNumbers(this.view.answer!, true),
  };

  #renderStack(answer: WorkbenchAnswer): TemplateResult {
    return html`<div class="stacked" part="chart">${this.#stack.render(this.#renderLegend(answer))} ${this.#renderEnds(answer)}</div>`;
  }

  protected renderWhole(): TemplateResult {
    const { answer } = this.view;
    return html`${this.renderProblems()}
      ${
        answer
          ? html`<div class="body">
              <div>
                ${this.#renderViews()}
                ${this.#drawing.renderPlace()}
                ${this.#isEdited ? html`<p class="note">${NAMES.arrows} <span class="by-keys">${NAMES.arrowKeys}</span></p>` : nothing}
              </div>
              <div class="column">
                ${this.#renderActions()} ${this.view.isUnread ? nothing : html`${renderSets(this.view, answer.bare.curves.corner)} ${renderChanges(answer, this.view.answeredCar, this.view.display)}`}
              </div>
            </div>
            <div class="under">
            ${this.#renderStack(answer)}
            ${answer.bare.curves.driveway ? html`<p class="note">${NAMES.noToe}</p>` : nothing}
            <div class="more">${this.late(() => this.#renderLists(answer))}</div>
            </div>`
          : html`<div class="more">${isWishbone(this.view.car) ? nothing : this.#renderInputs()} ${this.#json.render()}</div>
              <div class="actions">${this.renderHistory()}</div>`
      }`;
  }

  #renderViews(): TemplateResult {
    return html`<div class="views" role="group" aria-label=${NAMES.view}>
      ${SIDES.map(
        (side) =>
          html`<button type="button" class="button" aria-pressed=${side === this.#side} @click=${() => {
            this.#side = side;
            this.view.host.requestUpdate();
          }}>${NAMES.views[side]}</button>`,
      )}
    </div>`;
  }

  /** The way in to one's own points, and the way back. */
  #renderActions(): TemplateResult {
    const { car } = this.view;
    const next = firstMissingPoint(car);
    const isOwn = isUsers(car, 'corner');
    const label = !isOwn ? NAMES.own : next ? NAMES.next(next.title) : NAMES.edit;
    const open = () => void this.#sheet.show(next?.key ?? 'lowerArm.front');
    return html`<div class="actions">
      ${this.#isEdited ? html`<button type="button" class="button own ${next ? 'main' : ''}" @click=${open}>${label}</button>` : nothing}
      ${this.renderHistory()}
    </div>`;
  }

  #renderLegend(answer: WorkbenchAnswer): TemplateResult {
    return html`<ul class="legend" aria-label=${NAMES.legend}>
      ${linesOf(answer).map(
        ({ name, isShown, dash }) =>
          html`<li class=${isShown ? 'now' : ''}>${sampleOf({ role: isShown ? 'now' : 'before', ...(dash && { dash }) })}${name}</li>`,
      )}
    </ul>`;
  }

  /** What the hatching in the charts is. */
  #renderEnds(answer: WorkbenchAnswer): TemplateResult | typeof nothing {
    const { answeredCar, display } = this.view;
    const ends = travelEnds(answer, answeredCar);
    const text = endsText(ends, domainOf(answer, ends), display);
    return text ? html`<p class="note ends">${text}</p>` : nothing;
  }

  #renderLists(answer: WorkbenchAnswer): TemplateResult {
    return html`${isWishbone(this.view.car) ? nothing : this.folded('.inputs', () => this.#renderInputs())}
    ${this.folded('.why', () => renderWhy(answer, this.view.answeredCar, this.view.display))}
    ${this.folded('.corner-json', () => this.#json.render())}
    ${this.folded('.numbers', () => this.#renderNumbers(answer))}`;
  }

  #renderInputs(): TemplateResult {
    const { car, display, answer, isUnread, drafts } = this.view;
    const taken = answer?.bare.curves.driveway?.taken;
    return html`<details class="inputs">
      <summary>${NAMES.numbers}</summary>
      <p class="note">${sourceKindOf(car) === 'driveway' ? LINKS.floor : LINKS.axes}</p>
      <ul>
        ${linkList(car).map((sheet) =>
          renderInputRow(sheet, {
            car,
            display,
            standIn: isUnread ? undefined : sheet.standIn?.(car, taken),
            half:
              !sheet.read(car) && sheet.fields.some(({ path }) => drafts.text(path) !== undefined)
                ? LINKS.half
                : undefined,
            onSelect: (key) => void this.#sheet.show(key),
          }),
        )}
      </ul>
    </details>`;
  }

  #renderNumbers(answer: WorkbenchAnswer, open = false): TemplateResult {
    const { display, car, cursor, announcer } = this.view;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.table(car.cornerName),
      ...numbers(answer, display),
      cursor,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', display.units),
      open: open || this.#stack.state === 'lost',
      onStatus: (text) => announcer.announce(text),
    });
  }

  renderSheet(): TemplateResult {
    return this.#sheet.render();
  }

  protected readAgain(): void {
    this.view.sentence.drop.readAgain();
  }
}
