import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { withValues } from '../../core/document/corner-text.js';
import type { readPastedPoints } from '../../core/document/pasted-points.js';
import { give } from '../../core/document/provenance.js';
import { cornerOf } from '../../core/document/strut-in-use.js';
import { takeCorner } from '../../core/document/take-corner.js';
import { STRUT_POINT_KEYS } from '../../core/linkage/corner.js';
import { copyText } from '../controls/clipboard.js';
import { saveFile } from '../controls/save-file.js';
import { inTime } from '../delivery/in-time.js';
import { sheetOf, sheetOfPath } from '../inputs/car-sheets.js';
import { NAMES } from './bumpline-geometry.labels.js';
import type { GeometryView } from './geometry-view.js';
import { isJson, renderRead, rowCount, withPoints } from './pasted-table.js';

const { json: WORDS, pasted: TABLE } = NAMES;

/**
 * A corner in from another program, and out again: what was not changed keeps every byte of the text that came in. A table of hard
 * points is shown as it was read before it is taken.
 */
export class CornerJson {
  readonly #view: GeometryView;
  /** As it came in. */
  #text: string | undefined;
  #typed: string | undefined;
  #problem: string | undefined;
  #said = '';
  #read: ReturnType<typeof readPastedPoints> | undefined;

  constructor(view: GeometryView) {
    this.#view = view;
  }

  render(): TemplateResult {
    return html`<details class="corner-json">
      <summary>${WORDS.title}</summary>
      <p class="note">${WORDS.note}</p>
      <div>
        <label for="corner-text">${WORDS.text}</label>
        <textarea class="json-text" id="corner-text" rows="8" spellcheck="false" autocomplete="off" .value=${this.#typed ?? this.text}
          aria-invalid=${this.#problem ? 'true' : 'false'} aria-describedby="corner-said"
          @input=${(event: Event) => {
            this.#typed = (event.target as HTMLTextAreaElement).value;
            if (!this.#read) return;
            this.#read = undefined;
            this.#view.host.requestUpdate();
          }}></textarea>
      </div>
      <p class=${this.#problem ? 'problem' : 'note'} id="corner-said" role="status">${this.#problem ?? this.#outcome}</p>
      ${this.#read ? renderRead(this.#read, this.#view.car, this.#view.display, sheetOf, () => this.#take()) : nothing}
      <div class="actions">
        <button type="button" class="button ${this.#read && rowCount(this.#read) > 0 ? '' : 'main'} use-json" @click=${() => void this.#use(this.#typed ?? this.text)}>${WORDS.use}</button>
        <button type="button" class="button open-json" @click=${(event: Event) => (event.currentTarget as Element).parentElement!.querySelector<HTMLInputElement>('.json-file')!.click()}>${WORDS.open}</button>
        <input class="json-file" type="file" accept=".json,.csv,.tsv,.txt,application/json,text/csv,text/plain" hidden aria-label=${WORDS.open} @change=${(event: Event) => void this.#open(event.target as HTMLInputElement)} />
        <button type="button" class="button copy-json" @click=${(event: Event) => void this.#copy(event)}>${WORDS.copy}</button>
        <button type="button" class="button save-json" @click=${() => this.#save()}>${WORDS.save}</button>
      </div>
    </details>`;
  }

  /** The corner as it stands, in the words of whoever gave it. */
  get text(): string {
    const corner = givenCorner(this.#view.car);
    if (this.#text === undefined) return `${JSON.stringify(corner, undefined, 2)}\n`;
    return withValues(this.#text, corner);
  }

  /** A corner is taken as it is; whether it makes links, only the answer can tell. */
  get #outcome(): string {
    const isRefused = this.#said === WORDS.isUsed && this.#view.problems.length > 0;
    return isRefused ? WORDS.needsMending : this.#said;
  }

  async #use(text: string): Promise<void> {
    this.#read = undefined;
    if (isJson(text)) this.#useJson(text);
    else await this.#readTable(text);
  }

  async #readTable(text: string): Promise<void> {
    try {
      const { readPastedPoints } = await inTime(import('../../core/document/pasted-points.js'));
      const read = readPastedPoints(text, this.#view.display.language);
      // Of a text without any row that is known.
      const isTable = rowCount(read) > 0 || read.problems.some(({ path }) => sheetOfPath(path));
      this.#tell(isTable ? undefined : TABLE.none, text);
      if (isTable) this.#read = read;
    } catch (error) {
      console.warn('Bumpline: the reader of tables could not be fetched.', error);
      this.#tell(TABLE.lost, text);
    }
  }

  /** What was read; a text with rows that were not is kept to be mended. */
  #take(): void {
    const { given, problems } = this.#read!;
    this.#said = problems.length > 0 ? TABLE.isPartlyTaken : TABLE.isTaken;
    if (problems.length === 0) this.#typed = undefined;
    this.#read = undefined;
    this.#view.change('corner', TABLE.taken, (car) => withPoints(car, given));
    this.#view.endStep();
  }

  #useJson(text: string): void {
    let data: unknown;
    try {
      data = JSON.parse(text);
    } catch (error) {
      this.#tell(WORDS.noJson(error instanceof Error ? error.message : String(error)), text);
      return;
    }
    const { kind } = (data ?? {}) as { kind?: unknown };
    if (typeof data !== 'object' || Array.isArray(data) || (kind !== 'strut' && kind !== 'wishbone')) {
      this.#tell(WORDS.noCorner, text);
      return;
    }
    this.#text = text;
    this.#typed = undefined;
    this.#problem = undefined;
    this.#said = WORDS.isUsed;
    this.#view.change('corner', WORDS.used, (car) => withCorner(car, data));
    this.#view.endStep();
  }

  #tell(problem: string | undefined, text: string): void {
    this.#problem = problem;
    this.#said = '';
    this.#typed = text;
    this.#view.host.requestUpdate();
  }

  async #open(field: HTMLInputElement): Promise<void> {
    const file = field.files?.[0];
    if (!file) return;
    try {
      const text = await file.text();
      // The same file again is to be read again.
      field.value = '';
      await this.#use(text);
    } catch (error) {
      console.warn('Bumpline: the file could not be read.', error);
      this.#tell(WORDS.notOpened, this.#typed ?? this.text);
    }
  }

  async #copy(event: Event): Promise<void> {
    this.#read = undefined;
    const field = (event.currentTarget as Element).closest('details')!.querySelector('textarea')!;
    this.#typed = undefined;
    field.value = this.text;
    this.#said = await copyText(this.text, field);
    this.#problem = undefined;
    this.#view.host.requestUpdate();
  }

  #save(): void {
    saveFile(new Blob([this.text], { type: 'application/json' }), WORDS.fileName);
    this.#said = WORDS.saved;
    this.#problem = undefined;
    this.#view.host.requestUpdate();
  }
}

/** A corner that somebody hands over, in place of whatever was given of it. */
const withCorner = (car: CarDocument, data: unknown): CarDocument => ({
  ...give(car, 'corner', 'user', () => takeCorner(data)),
  by: 'points',
});

/** As it was given where all of it was; else with what stands in. */
function givenCorner(car: CarDocument): unknown {
  const { given, whole } = car;
  const { points, plusMinus, loadedRadius, camber, toe } = given;
  const isWhole = STRUT_POINT_KEYS.every((key) => points[key]) && loadedRadius !== undefined;
  if (whole !== undefined || !isWhole || camber === undefined || toe === undefined) return cornerOf(car);
  const { plusMinus: _, ...corner } = cornerOf(car) as Record<string, unknown>;
  return { ...corner, ...(plusMinus && { plusMinus }) };
}
