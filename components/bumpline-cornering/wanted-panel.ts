import { html, type TemplateResult } from 'lit';
import { MOST_ADDED_DEG } from '../../core/answers/camber-ways.js';
import type { WantedInclination } from '../../core/answers/cornering-questions.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { cornering } from '../../core/worker/layers/cornering.generated.js';
import { sourceLayers } from '../car/source-layers.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { rollText } from './bumpline-cornering.words.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';
import { signedAngle } from './setup-table.js';

const { wanted: WORDS } = NAMES;

type Request = WantedInclination<AnySource>;

/** What would bring the outer wheel where somebody wants it: the static camber at this roll, or the roll with this camber. */
export class Wanted {
  readonly #view: CorneringView;
  readonly #camber: AnswerController<{ camber: number }, Request>;
  readonly #roll: AnswerController<{ roll: number }, Request>;
  #asked: { answer: TurnOnSheet; wanted: number } | undefined;

  constructor(view: CorneringView) {
    this.#view = view;
    const layers = (request: Request) => sourceLayers(request.source);
    const update = () => view.host.requestUpdate();
    this.#camber = new AnswerController(view.host, askCore('camberForInclination', [cornering], layers), update);
    this.#roll = new AnswerController(view.host, askCore('rollForInclination', [cornering], layers), update);
  }

  /** Asks for what is wanted of the newest answer. */
  ask(): void {
    const { answer, answeredCar } = this.#view;
    const wanted = answeredCar.turn?.wanted;
    if (!answer || wanted === undefined) return;
    if (this.#asked?.answer.request === answer.request && this.#asked.wanted === wanted) return;
    this.#asked = { answer, wanted };
    const request = { ...answer.request, inclination: wanted };
    this.#camber.ask(request);
    this.#roll.ask(request);
  }

  async settle(): Promise<void> {
    await this.#camber.settle();
    await this.#roll.settle();
  }

  get fault(): string | undefined {
    return this.#camber.fault ?? this.#roll.fault;
  }

  /** Asks again what came to a fault. */
  retry(): void {
    if (!this.fault) return;
    this.#asked = undefined;
    this.ask();
  }

  render(onShow: (key: string) => void): TemplateResult {
    const { answer, answeredCar, display } = this.#view;
    const wanted = answeredCar.turn?.wanted;
    const open = () => onShow('turn.wanted');
    return html`<details class="wanted" ?open=${wanted !== undefined}>
      <summary>${WORDS.title}</summary>
      ${
        wanted === undefined || !answer
          ? html`<button type="button" class="button enter-wanted" @click=${open}>${WORDS.enter}</button>`
          : html`<p>${WORDS.now(signedAngle(wanted, display))} <button type="button" class="text-button" @click=${open}>${WORDS.change}</button></p>
              ${this.#lines(answer).map((line) => html`<p>${line}</p>`)}`
      }
      <p class="note">${WORDS.note}</p>
    </details>`;
  }

  #lines(answer: TurnOnSheet): string[] {
    const { display } = this.#view;
    const limitOf = ({ problems }: { problems: readonly { limit?: number | undefined }[] }) => problems[0]?.limit;
    const lines: string[] = [];
    const camber = this.#camber.answer?.camber;
    if (this.#camber.problems.length > 0) {
      const limit = limitOf(this.#camber);
      lines.push(WORDS.noCamber(limit === undefined ? '–' : signedAngle(limit, display)));
    } else if (camber !== undefined) {
      const change = camber - answer.outer.bars.static;
      const size = show(Math.abs(change), 'camber', display);
      const isSame = Math.abs(change) < 0.005;
      lines.push(
        WORDS.camber(signedAngle(camber, display), isSame ? WORDS.same : (change < 0 ? WORDS.more : WORDS.less)(size)),
      );
      if (Math.abs(camber) > MOST_ADDED_DEG) lines.push(WORDS.tooMuch(rollText(MOST_ADDED_DEG, display)));
    }
    const roll = this.#roll.answer?.roll;
    if (this.#roll.problems.length > 0) {
      const limit = limitOf(this.#roll);
      lines.push(WORDS.noRoll(limit === undefined ? '–' : signedAngle(limit, display)));
    } else if (roll !== undefined) {
      lines.push(WORDS.roll(rollText(roll, display), rollText(answer.suspensionRoll, display)));
    }
    return lines.length > 0 ? lines : [this.fault ?? WORDS.waiting];
  }
}
