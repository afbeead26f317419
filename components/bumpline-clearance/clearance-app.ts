import type { PropertyValues } from 'lit';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../core/answers/fitment-request.js';
import { type CarDocument, dropBy, withDrop } from '../../core/document/car.js';
import { fullBumpOf } from '../../core/document/full-bump.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { planeOf } from '../../core/wheel/wheel.js';
import { restsOnReadings } from '../car/car-controller.js';
import { isSameFitment, isSameSource } from '../car/same-car.js';
import { byHand } from '../element/by-hand.js';
import { PART_CAUTIONS } from '../element/part-cautions.js';
import { say, show } from '../element/sentence.js';
import { SheetApp } from '../element/sheet-app.js';
import type { SheetFrame } from '../element/sheet-frame.js';
import type { SheetHost } from '../element/sheet-view.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { WHEEL_CAUTIONS } from '../element/wheel-cautions.js';
import { type LightDom, lightDomWatcher } from '../page-data/light-dom.js';
import type { PageDataWatcher } from '../page-data/page-data-watcher.js';
import { FIRST, type Told } from './bumpline-clearance.words.js';
import { type Asked, askedOf } from './clearance-question.js';
import { ClearanceSentence } from './clearance-sentence.js';
import type { ClearanceAttributes, ClearanceView } from './clearance-view.js';
import { pageFitment } from './page-fitment.js';
import { TwoAnswers } from './two-answers.js';
import { withPlane } from './wheel-edits.js';
import { completeness, ownership } from './whose-car.words.js';

type Host = SheetHost & ClearanceAttributes;

const PAGE = ['fit', 'limits', 'drop', 'wheelBefore', 'wheelAfter', 'lock'] as const;

/** Whether the tyre clears: the question, and the sentence that answers it. */
export class ClearanceApp extends SheetApp<Host, DrawnClearance, Asked> implements ClearanceView {
  protected readonly answers: TwoAnswers;
  protected readonly page: PageDataWatcher<LightDom>;
  readonly sentence: ClearanceSentence;
  #light: LightDom = { problems: [] };
  #selected: number | undefined;

  constructor(host: Host) {
    super(host);
    this.answers = new TwoAnswers(
      host,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.sentence = new ClearanceSentence(this);
    this.page = lightDomWatcher(host, (light) => {
      this.#light = light;
      this.#loadPage();
    });
    this.begin();
  }

  protected async importBody() {
    const [{ ClearanceBody }] = await Promise.all([import('./clearance-body.js'), this.cars.keep()]);
    return () => new ClearanceBody(this);
  }

  get isComplete(): boolean {
    return this.answers.isWhole;
  }

  get asked(): Asked | undefined {
    return this.answers.answered;
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car);
  }

  protected get pageProblems(): Problem[] {
    const ofReadings = restsOnReadings(this.car) ? (['setups'] as const) : [];
    return this.cars.pageProblems('fit', 'limits', 'source', 'heights', ...ofReadings);
  }

  protected isOther(_asked: Asked, before: CarDocument): boolean {
    return !(isSameSource(before, this.car) && isSameFitment(before, this.car));
  }

  get isOwn(): boolean {
    return isUsers(this.car, 'fit');
  }

  get completeness() {
    return completeness(this.car);
  }

  get plane(): number {
    const { before, after } = clearanceRequestOf(this.car);
    return planeOf(after) - planeOf(before);
  }

  get selected(): number | undefined {
    const { answer } = this;
    if (!answer) return undefined;
    return this.#selected !== undefined && this.#selected < answer.places.length ? this.#selected : answer.worst;
  }

  select(place: number): void {
    this.#selected = place;
    this.placeCursor();
    this.host.requestUpdate();
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (PAGE.some((name) => changed.has(name))) this.#loadPage();
  }

  #loadPage(): void {
    const { given, json, problems: ofLight } = this.#light;
    const { recipe, isGiven, problems } = pageFitment(this.host, json);
    // A table of points or measurements belongs into the element that draws them; here it would be passed over in silence.
    const strange: Problem[] = given ? [{ code: 'wrong-shape', path: 'table', value: FIRST.strangeTable }] : [];
    this.cars.pageGives('fit', recipe, isGiven, true, [...problems, ...(ofLight.length > 0 ? ofLight : strange)]);
  }

  protected override take(): void {
    if (this.isComplete) super.take();
    else this.placeCursor();
  }

  /** Where the chosen place is nearest. */
  protected get rest(): number {
    const { answer, selected } = this;
    return (selected === undefined ? answer?.drop : answer!.places[selected]!.decisive.travel) ?? this.cursor.travel;
  }

  /** Where a picture is looked at, it is nobody's car. */
  get said(): string {
    return this.sentence.spoken('');
  }

  get spoken(): string {
    return this.sentence.spoken();
  }

  get told(): Told | undefined {
    const { answer, asked } = this;
    if (!answer || !asked) return undefined;
    const { places, isLeft, lock } = asked;
    return { answer, places, isLeft, lock, isSteering: answer.isSteered };
  }

  changeDrop(drop: number): void {
    const before = this.car.drop;
    if (drop === before && dropBy(this.car) === 'user') return;
    this.change(
      'drop',
      say(FIRST.steps.drop, { drop: show(before, 'drop', this.display) }),
      (car) => withDrop(car, drop),
      'drop',
    );
  }

  dragPlane(plane: number): void {
    this.drafts.drop('plane');
    this.answers.isDragged = true;
    this.changePlane(plane);
    this.answers.isDragged = false;
    this.host.requestUpdate();
  }

  changePlane(plane: number): void {
    const before = this.plane;
    if (plane === before) return;
    const label = say(FIRST.steps.plane, { plane: show(before, 'offset', this.display) });
    this.change('plane', label, (car) => withPlane(car, plane), 'plane');
  }

  protected override valueOf(path: string): unknown {
    return path === 'plane' ? this.plane : super.valueOf(path);
  }

  get frame(): SheetFrame {
    const { car } = this;
    return {
      title: FIRST.title,
      corner: answeredCorner(car),
      owner: ownership(car),
      sentence: this.sentence.render(),
      caution: 'clearByHand',
      hazards: this.#hazards,
    };
  }

  get #hazards(): readonly string[] {
    const { answer, car, display } = this;
    const { drop = car.drop, budget } = answer ?? {};
    return [
      byHand(fullBumpOf(car, budget?.bump.solid, drop), drop, display),
      TRAVEL_CAUTIONS.spring,
      TRAVEL_CAUTIONS.stop,
      PART_CAUTIONS.wheelParts,
      PART_CAUTIONS.camber,
      WHEEL_CAUTIONS.wheelRules,
    ];
  }
}
