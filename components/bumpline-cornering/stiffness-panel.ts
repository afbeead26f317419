import { html, nothing, type TemplateResult } from 'lit';
import { loadOf } from '../../core/answers/car-roll.js';
import type { StiffnessForInclination, StiffnessRequest } from '../../core/answers/stiffness-for-inclination.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { rolledLayers } from '../car/rolled-question.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import { show } from '../element/sentence.js';
import { rollText } from './bumpline-cornering.words.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';
import { ROLL } from './roll.labels.js';
import { signedAngle } from './setup-table.js';
import type { SetupTurns } from './setup-turns.js';

const { back: WORDS } = ROLL;

type Request = StiffnessRequest<AnySource>;

interface Asked {
  answer: TurnOnSheet;
  stock: number;
}

/** Whether the outer wheel leans out at stock height, and stands more upright to the road now. */
const isBetter = ({ answer, stock }: Asked): boolean => Math.abs(answer.outer.inclination) < stock;

/** Closer than this an inclination is the same, degrees: as it is shown. */
const SAME = 0.005;

/** The springs or the bar that bring stock's inclination back where the car stands now, at the same lateral acceleration. */
export class StiffnessBack {
  readonly #view: CorneringView;
  readonly #answers: AnswerController<StiffnessForInclination, Request>;
  #asked: Asked | undefined;

  constructor(view: CorneringView) {
    this.#view = view;
    this.#answers = new AnswerController(view.host, askCore('stiffnessForInclination', [], rolledLayers), () =>
      view.host.requestUpdate(),
    );
  }

  /** Asks for the newest answer, once stock's inclination at this lateral acceleration has come. */
  ask(turns: SetupTurns): void {
    const { answer, answeredCar } = this.#view;
    if (!answer?.load || !turns.isOf(answer)) {
      if (!answer?.load) this.#asked = undefined;
      return;
    }
    const { request } = answer;
    const row = turns.rows.find(({ drop, set }) => drop === 0 && !set);
    const stock = (request.camber === undefined ? row?.asLeft : row?.setAgain)?.outer.inclination;
    const isStock = stock !== undefined && Math.abs(stock - answer.outer.inclination) < SAME;
    if (stock === undefined || isStock) {
      this.#asked = undefined;
      return;
    }
    if (this.#asked?.answer.request === request && this.#asked.stock === stock) return;
    this.#asked = { answer, stock };
    // More upright than stock there is nothing to bring back.
    if (isBetter(this.#asked)) return;
    const { roll: _, rollUncertainty: __, ...others } = request;
    this.#answers.ask({ ...others, load: loadOf(answeredCar, request.drop), inclination: stock });
  }

  async settle(): Promise<void> {
    await this.#answers.settle();
  }

  get fault(): string | undefined {
    return this.#answers.fault;
  }

  /** Asks again what came to a fault. */
  retry(turns: SetupTurns): void {
    if (!this.fault) return;
    this.#asked = undefined;
    this.ask(turns);
  }

  render(): TemplateResult | typeof nothing {
    if (!this.#asked) return nothing;
    return html`<section class="stiffness-back" aria-label=${WORDS.title}>
      <p><b>${WORDS.title}</b></p>
      <p>${isBetter(this.#asked) ? this.#better(this.#asked) : this.#text(this.#asked.stock)}</p>
    </section>`;
  }

  #better({ answer, stock }: Asked): string {
    const { display } = this.#view;
    return WORDS.better(signedAngle(answer.outer.inclination, display), signedAngle(stock, display));
  }

  #text(stock: number): string {
    const { display, answeredCar } = this.#view;
    const { answer, answered, problems, fault } = this.#answers;
    const target = signedAngle(stock, display);
    if (problems.length > 0) {
      const { path, limit } = problems[0]!;
      return path === 'inclination' && limit !== undefined
        ? WORDS.refused(target, signedAngle(limit, display))
        : WORDS.refusedAtAll(target);
    }
    if (!answer || answered?.inclination !== stock) return fault ?? WORDS.waiting;
    const { axle, otherAxle } = loadOf(answeredCar, answered.drop);
    const rate = (size: number) => show(size, 'springRate', display);
    const { springRate, barRate } = answer;
    const springs = springRate === undefined ? undefined : WORDS.springs(rate(springRate), rate(axle.springRate));
    const bar =
      barRate === undefined
        ? undefined
        : axle.bar === undefined
          ? barRate > 0
            ? WORDS.newBar(rate(barRate))
            : undefined
          : barRate > 0
            ? WORDS.bar(rate(barRate), rate(axle.bar.rate))
            : WORDS.noBar;
    const roll = rollText(answer.roll, display);
    const said = springs && bar ? WORDS.both(target, springs, bar, roll) : WORDS.one(target, (springs ?? bar)!, roll);
    return otherAxle ? said : `${said} ${WORDS.alike}`;
  }
}
