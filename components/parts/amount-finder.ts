import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { AmountAnswer, AmountRequest } from '../../core/answers/amount.js';
import type { PartsSource } from '../../core/curve-sources/source.js';
import { type PartData, withAmount } from '../../core/linkage/parts/part-kinds.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { InputError } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { coreBridge } from '../../core/worker/bridge.js';
import { sourceLayers } from '../car/source-layers.js';
import { type Display, show } from '../element/sentence.js';
import { Drafts } from '../inputs/drafts.js';
import { renderEntryField } from '../inputs/entry-field.js';
import { turnedSign } from '../inputs/turned-sign.js';
import { type PartEntry, withField } from './part-entries.js';
import { PARTS } from './parts.labels.js';
import { changePart, type PartsEdit, partPath } from './parts-edit.js';
import { fieldProblemText, partProblemText } from './parts-text.js';

const { find: WORDS } = PARTS;

/** What the finder asks of. */
export interface AmountAsked {
  of: PartsSource['of'];
  /** From stock height, mm. */
  drop: number;
  measuredAt: number | undefined;
  /** Whether camber itself is known, and not its changes alone. */
  knowsCamber: boolean;
}

/** What a driver who did not say otherwise may be after, degrees: common practice, no source. */
const USUAL_GOAL = -2;
/** Answers are used as they are shown. */
const STEP = { partLength: 0.1, partAngle: 0.01 } as const;

interface Found {
  request: AmountRequest;
  answer?: AmountAnswer;
  problem?: string;
}

/** Says how large a part must be: a joint that gives back the stock camber rate, a shift, a length or an angle that reaches a camber. */
export class AmountFinder {
  readonly #host: LitElement;
  readonly #drafts = new Drafts();
  readonly #goals = new Map<string, number>();
  /** The newest of each part, by its fields' path. */
  readonly #found = new Map<string, Found>();

  constructor(host: LitElement) {
    this.#host = host;
  }

  /** What a list of parts renders with each part, where there is something to ask. */
  of(asks: AmountAsked | undefined): Pick<PartsEdit, 'renderFinder'> {
    return asks ? { renderFinder: (...of) => this.#render(asks, ...of) } : {};
  }

  #render(
    asks: AmountAsked,
    edit: PartsEdit,
    data: PartData,
    at: number,
    entry: PartEntry,
  ): TemplateResult | typeof nothing {
    const { find } = entry;
    if (!find) return nothing;
    const path = partPath(edit, at, 'find');
    const request = this.#requestOf(edit, asks, data, at, entry);
    const height = heightText(asks.drop, edit.display);
    const isUnknown = find.goal === 'camber' && !asks.knowsCamber;
    return html`<details class="part-find">
      <summary>${WORDS.title}</summary>
      ${
        isUnknown
          ? html`<p class="note">${WORDS.unknown}</p>`
          : html`${find.goal === 'camber' ? this.#renderGoal(edit, path, WORDS.camber(height)) : html`<p class="note">${WORDS.rate(height)}</p>`}
            <button type="button" class="button find" ?disabled=${this.#drafts.problem(path) !== undefined} @click=${() => void this.#ask(path, request, edit)}>${WORDS.find}</button>
            <div role="status">${this.#renderFound(edit, data, at, entry, path, request)}</div>`
      }
    </details>`;
  }

  #requestOf(
    edit: PartsEdit,
    asks: AmountAsked,
    data: PartData,
    at: number,
    { find, fields }: PartEntry,
  ): AmountRequest {
    const [field] = fields as [PartEntry['fields'][number]];
    const ends = find!.between.map((end) => field.sense * end) as [number, number];
    const { alignment } = edit.setup;
    return {
      of: asks.of,
      parts: (edit.setup.parts ?? []).filter((_, i) => i !== at),
      // Whatever it is now: the answer does not depend on it.
      part: withAmount(data, field.path, 0),
      path: field.path,
      between: ends,
      goal: find!.goal === 'rate' ? 'stockRate' : { camber: this.#goals.get(partPath(edit, at, 'find')) ?? USUAL_GOAL },
      drop: asks.drop,
      ...(asks.measuredAt !== undefined && { measuredAt: asks.measuredAt }),
      // Camber that is set again would take out what is looked for.
      ...(alignment === 'as-fitted' && { alignment }),
    };
  }

  async #ask(path: string, request: AmountRequest, edit: PartsEdit): Promise<void> {
    this.#found.set(path, { request });
    this.#host.requestUpdate();
    const found = await this.#answerTo(request, edit);
    if (this.#found.get(path)?.request === request) this.#found.set(path, { request, ...found });
    this.#host.requestUpdate();
  }

  async #answerTo(request: AmountRequest, { corner, display }: PartsEdit): Promise<Omit<Found, 'request'>> {
    try {
      const bridge = coreBridge();
      bridge.join(await sourceLayers({ kind: 'parts' }));
      return { answer: await bridge.ask('amount', request, { slot: this }) };
    } catch (error) {
      if (error instanceof InputError) {
        return {
          problem: partProblemText(error.problems[0]!, [...(request.parts ?? []), request.part], corner?.kind, display),
        };
      }
      console.warn('Bumpline: an amount could not be worked out.', error);
      return { problem: WORDS.failed };
    }
  }

  #renderFound(
    edit: PartsEdit,
    data: PartData,
    at: number,
    { key, fields }: PartEntry,
    path: string,
    now: AmountRequest,
  ): TemplateResult | typeof nothing {
    const found = this.#found.get(path);
    // Of another height, other parts or another goal it says nothing.
    if (!found || found.request.of !== now.of || JSON.stringify(asked(found.request)) !== JSON.stringify(asked(now)))
      return nothing;
    const { answer, problem, request } = found;
    if (problem) return html`<p class="problem">${problem}</p>`;
    if (!answer) return html`<p class="note">${WORDS.waiting}</p>`;
    const { display } = edit;
    const [field] = fields as [PartEntry['fields'][number]];
    const size = (figure: number, plusMinus?: number) => signed(figure, field.quantity, display, plusMinus);
    if (answer.kind === 'out-of-reach') {
      const { ends, wanted } = answer;
      const end = size(field.sense * ends.amount);
      const text =
        now.goal === 'stockRate'
          ? WORDS.rateEnds(end, inTen(ends.value, display), inTen(wanted, display))
          : WORDS.camberEnds(end, signed(ends.value, 'camber', display), signed(wanted, 'camber', display));
      return html`<p class="note query">${text}</p>`;
    }
    const { between } = request;
    // Wider than all that was looked at: any part would do as well.
    if ((answer.plusMinus ?? 0) > Math.abs(between[1] - between[0]) / 2)
      return html`<p class="note query">${WORDS.untold}</p>`;
    const amount = field.sense * answer.amount;
    const step = STEP[field.quantity as keyof typeof STEP];
    const usable = Math.round(amount / step) * step;
    const use = () => {
      changePart(edit, at, PARTS.changed(PARTS.kinds[key].short), () => withField(data, field, usable));
      edit.end();
    };
    return html`<p><b>${WORDS.found(field.label, size(amount, answer.plusMinus))}</b></p>
      <p class="note">${answer.plusMinus === undefined ? WORDS.open : WORDS.besides}</p>
      <button type="button" class="button use" @click=${use}>${WORDS.use(size(usable))}</button>`;
  }

  #renderGoal({ display, drafts }: PartsEdit, path: string, label: string): TemplateResult {
    // What reads texts comes with the sheet's own.
    this.#drafts.parser ??= drafts.parser;
    const quantity = 'camber' as const;
    const type = (text: string) => {
      const value = this.#drafts.type(path, text, quantity, display.units);
      if (value !== undefined) this.#goals.set(path, value);
      this.#host.requestUpdate();
    };
    const leave = () => {
      this.#drafts.leave(path, quantity, display.units);
      this.#host.requestUpdate();
    };
    const goal = this.#goals.get(path) ?? USUAL_GOAL;
    return renderEntryField(
      { path, label, quantity, signed: true },
      {
        id: path,
        value: goal,
        standIn: undefined,
        takesText: false,
        whose: undefined,
        text: this.#drafts.text(path),
        problem: this.#drafts.problem(path),
        display,
        describeProblem: (problem) => fieldProblemText(problem, { path, label, quantity, sense: 1 }, display),
        onType: type,
        onLeave: leave,
        onTurnSign: () => {
          const input = this.#host.renderRoot.querySelector<HTMLInputElement>(`[id="${path}"]`);
          if (!input) return;
          const isValue = this.#drafts.text(path) === undefined;
          type(turnedSign(input.value, isValue, quantity, display.units));
          leave();
        },
        onChoose: (choice) => {
          this.#drafts.drop(path);
          this.#goals.set(path, choice);
          this.#host.requestUpdate();
        },
      },
    );
  }
}

/** All of a request but whose links it is of, which is known by identity. */
const asked = ({ of: _, ...rest }: AmountRequest): object => rest;

const signed = (figure: number, quantity: Quantity, { units, language }: Display, plusMinus?: number): string =>
  formatQuantity(figure, quantity, units, {
    language,
    sign: 'always',
    ...(plusMinus !== undefined && { plusMinus }),
  }).text;

/** A camber rate as drivers say it. */
const inTen = (rate: number, display: Display): string => signed(10 * rate, 'camberChange', display);

function heightText(drop: number, display: Display): string {
  if (Math.abs(drop) < 0.05) return WORDS.stock;
  return (drop > 0 ? WORDS.lower : WORDS.higher)(show(Math.abs(drop), 'drop', display));
}
