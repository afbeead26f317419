import { html, nothing, type TemplateResult } from 'lit';
import type { Doubted } from '../../core/answers/lowering.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { readSetsOf } from '../../core/document/read-sets.js';
import { shiftOf } from '../../core/learn/shift-of.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { CarCurves } from '../car/car-curves.js';
import { shownName } from '../car/shown-names.words.js';
import { AnswerController } from '../element/answer-controller.js';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import { fromText, lengthText } from './bumpline-predict.words.js';
import { heightName } from './chart.js';
import { OWN_SHEETS } from './predict-kit.js';
import type { PredictView } from './predict-view.js';

const { meanwhile: WORDS } = NAMES;

interface Request {
  source: AnySource;
  by: 'tape' | 'readings' | 'moved';
  set: LinkedSet | undefined;
  drop: number;
  over: number;
  /** Where the change begins on the curve, mm below stock height. */
  from: number;
  measuredAt: number | undefined;
}

/** What half of what a prediction needs says by itself: the tape of the parts, or the readings of the car as it stands. */
export class Meanwhile {
  readonly #view: PredictView;
  readonly #answers: AnswerController<Doubted, Request>;
  #asked: Request | undefined;
  #key = '';

  constructor(view: PredictView) {
    this.#view = view;
    this.#answers = new AnswerController<Doubted, Request>(
      view.host,
      async ({ source, from, over, measuredAt }) => {
        const { curve } = await CarCurves.of(view.model).angles(source, measuredAt === undefined ? {} : { measuredAt });
        const estimate = curve.changeEstimate(from + over, from);
        return { value: estimate.value, plusMinus: plusMinus95(estimate, curve.data.sources) };
      },
      () => view.host.requestUpdate(),
    );
  }

  ask(): void {
    const request = this.#request;
    const key = request ? JSON.stringify([request.source, request.set?.setup.name, request.from, request.over]) : '';
    if (key === this.#key) return;
    this.#key = key;
    this.#asked = request;
    if (request) this.#answers.ask(request);
  }

  get #request(): Request | undefined {
    const { state, learnt, car, sets, shown, over, model } = this.#view;
    if (state !== 'incomplete') return undefined;
    const { needs } = learnt;
    const set = sets[shown];
    const { sources } = CarCurves.of(model);
    const { drop, measuredAt } = car;
    const asked = { set, drop, over, from: drop };
    if (!needs.includes('links') && !needs.includes('points')) {
      const source = (set && sources.ofParts(car, set.setup)) ?? sources.ofCorner(car);
      return { ...asked, source, by: 'tape', measuredAt };
    }
    const read = readSetsOf(car).stock.find(({ quantity }) => quantity === 'camber');
    if (!read) return undefined;
    const shift = shiftOf(set?.setup.parts ?? []);
    const from = drop - (shift ?? 0);
    return {
      ...asked,
      from,
      source: sources.ofSetup(read),
      by: shift === undefined ? 'readings' : 'moved',
      measuredAt: undefined,
    };
  }

  settle(): Promise<void> {
    return this.#answers.settle();
  }

  render(): TemplateResult | typeof nothing {
    const { answer, answered, problems } = this.#answers;
    const { display } = this.#view;
    if (!this.#asked) return nothing;
    const told = problems.flatMap((problem) => OWN_SHEETS.problemText(problem, display) ?? []);
    if (told.length > 0) return html`<p class="problems meanwhile" role="alert">${told.join(' ')}</p>`;
    if (!answer || answered !== this.#asked || !Number.isFinite(answer.value)) return nothing;
    const { by, over, drop, set } = answered;
    const change = show(answer.value, 'camberChange', display, answer.plusMinus);
    const asked = `${lengthText(over, display)}${fromText(over)}, ${heightName(drop, display)}`;
    return html`<p class="meanwhile">${WORDS[by](change, asked, set ? shownName(set.setup.name) : '')}</p>`;
  }
}
