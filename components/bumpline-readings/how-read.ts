import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { withOverBase } from '../../core/document/over-base.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { BASES, type FrontSign, type OverBase, PAIR_GAUGES } from '../../core/readings/over-base.js';
import { lower } from '../element/sentence.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { GRID } from './reading-grid.labels.js';

type Draft = Partial<OverBase>;

const { howRead: WORDS } = GRID;

/** What toe is read with: a gauge that gives an angle, or two figures over a base. Until all of it is said it is no answer, and is kept here. */
export class HowRead {
  #app: ReadingsHost;
  #onChange: () => void;
  #draft: Draft = {};
  /** The set that the draft is of. */
  #of: string | undefined;
  /** What was said before a gauge was chosen in its place. */
  #before: Draft = {};
  /** Of the base, while it is no length. */
  #text: string | undefined;
  #problem: Problem | undefined;

  constructor(app: ReadingsHost, onChange: () => void) {
    this.#app = app;
    this.#onChange = onChange;
  }

  get #said(): Draft {
    const { setup, isOwn } = this.#app;
    return { ...(isOwn && setup.overBase), ...(this.#of === setup.name && this.#draft) };
  }

  /** Whether two figures are typed in each cell. */
  get isPair(): boolean {
    return this.#app.setup.quantity === 'toe' && this.#said.by !== undefined;
  }

  /** How the two make toe; undefined while something of it is not said. */
  get over(): OverBase | undefined {
    const { by, base, front } = this.#said;
    return by && base !== undefined && front ? { by, base, front } : undefined;
  }

  #say(more: Draft): void {
    const { name } = this.#app.setup;
    this.#draft = { ...(this.#of === name && this.#draft), ...more };
    this.#of = name;
    const { over } = this;
    // Of a set that is not there yet it comes with the first reading.
    if (over && this.#app.isOwn) {
      this.#app.edit(lower(WORDS.label), (setup) => withOverBase(setup, over));
      this.#draft = {};
    }
    this.#onChange();
  }

  #sayGauge(by: string): void {
    if (by === '') {
      this.#before = this.#said;
      this.#draft = {};
      this.#text = undefined;
      this.#problem = undefined;
      if (this.#app.setup.overBase && this.#app.isOwn) {
        this.#app.edit(lower(WORDS.label), (setup) => withOverBase(setup, undefined));
      }
      this.#onChange();
      return;
    }
    this.#say({ ...this.#before, ...this.#said, by: by as OverBase['by'] });
  }

  #sayBase(text: string): void {
    const [least, most] = BASES;
    const parsed = parseQuantity(text, 'coordinate', this.#app.display.units, 'base');
    this.#problem = undefined;
    if (!parsed.ok) this.#problem = parsed.problem;
    else if (parsed.value < least || parsed.value > most) {
      const limit = parsed.value < least ? least : most;
      this.#problem = { code: 'out-of-range', path: 'base', value: parsed.value, limit };
    }
    this.#text = this.#problem ? text : undefined;
    if (parsed.ok && !this.#problem) this.#say({ base: parsed.value });
    else this.#onChange();
  }

  render(): TemplateResult | typeof nothing {
    const { setup, display } = this.#app;
    if (setup.quantity !== 'toe') return nothing;
    const { by, base, front } = this.#said;
    const { over } = this;
    const { units, language } = display;
    const text = base === undefined ? '' : formatQuantity(base, 'coordinate', units, { language }).text;
    const select = (
      label: string,
      options: readonly (readonly [string, string])[],
      value: string,
      take: (id: string) => void,
    ) =>
      html`<label class="pick">${label}
        <select class="text" .value=${live(value)} @change=${(event: Event) => take((event.target as HTMLSelectElement).value)}>
          ${options.map(([id, name]) => html`<option value=${id} ?selected=${id === value}>${name}</option>`)}
        </select>
      </label>`;
    const gauges = [['', WORDS.gauge], ...PAIR_GAUGES.map((id) => [id, WORDS[id]] as const)] as const;
    const signs = (['inboard', 'outboard'] as const).map((id) => [id, WORDS.fronts[by ?? 'dials'][id]] as const);
    const told = over ? WORDS.told(WORDS[over.by], text) : by ? WORDS[by] : WORDS.gauge;
    // Once it is said the grid has the room.
    return html`<details class="how-read" ?open=${by !== undefined && !over}>
      <summary>${WORDS.label}: <b>${told}</b></summary>
      ${select(WORDS.label, gauges, by ?? '', (id) => this.#sayGauge(id))}
      ${
        by
          ? html`<label class="pick">${WORDS.base}
                <input class="text" type="text" inputmode="decimal" autocomplete="off" data-how="base" .value=${live(this.#text ?? text)}
                  aria-invalid=${this.#problem ? 'true' : 'false'} @change=${(event: Event) => this.#sayBase((event.target as HTMLInputElement).value)} />
              </label>
              ${this.#problem ? html`<p class="queries" role="alert">${explainProblem(this.#problem, { label: WORDS.base, quantity: 'coordinate', unitSystem: units, language })}</p>` : nothing}
              ${select(WORDS.front[by], front ? signs : [['', WORDS.choose], ...signs], front ?? '', (id) => this.#say({ front: id as FrontSign }))}
              <p class="note">${WORDS.notes[by]}</p>`
          : nothing
      }
    </details>`;
  }
}
