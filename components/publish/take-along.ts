import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { copyText } from '../controls/clipboard.js';
import { CONTROLS } from '../controls/controls.labels.js';
import { saveFile } from '../controls/save-file.js';
import { lower } from '../element/sentence.js';
import type { SheetView } from '../element/sheet-view.js';
import { withWords } from '../words/fetch-words.js';
import { barsPicture } from './bars-picture.js';
import { captionOf } from './caption.js';
import { fileName } from './file-name.js';
import { type PictureFile, pictureFile, ROOM } from './picture-file.js';
import { pngOf } from './png.js';
import { readingsCsv } from './readings-csv.js';
import type { SavablePicture, TakeAlongThings } from './savable.js';
import { TAKE_ALONG as WORDS } from './take-along.labels.js';

export { takeAlongStyles } from './take-along.styles.js';

/** Before the letters of a CSV a mark that they are UTF-8: spreadsheets take “°” for two other signs without it. */
const MARK = '\ufeff';

type Form = 'svg' | 'png';

/** The buttons that save pictures and readings, and what became of it. */
export class TakeAlong {
  readonly #view: SheetView;
  readonly #things: TakeAlongThings;
  readonly #chosen = new Map<SavablePicture['kind'], string>();
  #said = '';
  /** The picture of which no PNG could be made. */
  #refused: SavablePicture | undefined;
  #working: Promise<void> = Promise.resolve();

  constructor(view: SheetView, things: TakeAlongThings) {
    this.#view = view;
    this.#things = things;
  }

  /** Resolves when what was asked for last is done. */
  get settled(): Promise<void> {
    return this.#working;
  }

  render(): TemplateResult {
    const { pictures, restsOn } = this.#things;
    const shown = pictures.filter(({ of }) => of.isThere);
    return html`<ul class="things">
      ${shown.map((picture) => this.#renderPicture(picture))}
      ${restsOn.sets.length > 0 ? this.#renderReadings() : nothing}
    </ul>
    <p class="said" role="status">${this.#said}
      ${this.#refused ? html`<button type="button" class="button svg-instead" @click=${() => this.#save(this.#refused!, 'svg')}>${WORDS.svgInstead}</button>` : nothing}</p>
    <textarea class="table-text" hidden readonly rows="6" aria-label=${WORDS.tableText}></textarea>
    <p class="note">${WORDS.note}</p>`;
  }

  #renderPicture(picture: SavablePicture): TemplateResult {
    const name = nameOf(picture);
    const { kind, of } = picture;
    const { choices = [] } = of;
    const choice = this.#choiceOf(picture);
    const button = (form: Form) =>
      html`<button type="button" class="button" data-form=${form} aria-label=${WORDS.as(name, WORDS[form])} @click=${() => this.#save(picture, form)}>${WORDS[form]}</button>`;
    return html`<li data-kind=${kind}>
      <span class="thing">${name}</span>
      ${
        choices.length > 1
          ? html`<select class="text listed" aria-label=${WORDS.which(name)} .value=${live(choice)} @change=${(event: Event) => this.#chosen.set(kind, (event.target as HTMLSelectElement).value)}>
              ${choices.map((one) => html`<option value=${one.id} ?selected=${one.id === choice}>${one.name}</option>`)}
            </select>`
          : nothing
      }
      <span class="forms">${button('svg')}${button('png')}</span>
    </li>`;
  }

  #renderReadings(): TemplateResult {
    return html`<li data-kind="readings">
      <span class="thing">${WORDS.readings}</span>
      <span class="forms"
        ><button type="button" class="button" data-form="csv" aria-label=${WORDS.as(WORDS.readings, WORDS.csv)} @click=${() => this.#saveReadings()}>${WORDS.csv}</button
        ><button type="button" class="button" data-form="table" aria-label=${WORDS.copyTable} @click=${(event: Event) => this.#copyTable(event)}>${WORDS.table}</button></span
      >
    </li>`;
  }

  #save(picture: SavablePicture, form: Form): void {
    this.#work(async () => {
      const file = this.#fileOf(picture);
      if (!file) return WORDS.notSaved;
      const png = form === 'png' ? await pngOf(file) : undefined;
      if (form === 'png' && !png) {
        this.#refused = picture;
        return WORDS.noPng;
      }
      return this.#keep(png ?? new Blob([file.source], { type: 'image/svg+xml' }), this.#partsOf(picture), form);
    });
  }

  /** Which of several: the one that was chosen here, else the one that is shown. */
  #choiceOf({ kind, of: { choices = [], choice = '' } }: SavablePicture): string {
    const chosen = this.#chosen.get(kind);
    return choices.some(({ id }) => id === chosen) ? chosen! : choice;
  }

  #fileOf(picture: SavablePicture): PictureFile | undefined {
    const { of } = picture;
    const choice = this.#choiceOf(picture);
    const made = 'bars' in of ? barsPicture(of.bars(choice), ROOM) : of.toPicture(ROOM, choice);
    return (
      made && pictureFile(made, captionOf(this.#view, this.#things.restsOn, made.title), this.#view.host.renderRoot)
    );
  }

  #saveReadings(): void {
    this.#work(async () => {
      const csv = new Blob([MARK, readingsCsv(this.#things.restsOn.sets)], { type: 'text/csv' });
      // Of the element of readings the name says so already.
      const isSaid = this.#view.host.localName.endsWith('readings');
      return this.#keep(csv, isSaid ? [] : [WORDS.readings], 'csv');
    });
  }

  #copyTable(event: Event): void {
    const field = (event.currentTarget as Element)
      .closest('details')!
      .querySelector<HTMLTextAreaElement>('.table-text')!;
    this.#work(async () => {
      const { sets } = this.#things.restsOn;
      const { readingsMarkup } = await withWords(import('./readings-markup.js'), 'dialogs');
      const { html: table, isExact, aside } = readingsMarkup(sets, this.#view.display.language);
      const said = await copyText(table, field);
      const count = table.split('<table').length - 1;
      const limits = [
        ...(isExact ? [] : [count > 1 ? WORDS.tables(count) : WORDS.notExact]),
        ...(aside > 0 ? [WORDS.aside(aside)] : []),
      ];
      return [said === CONTROLS.copied ? WORDS.tableCopied : said, ...limits].join(' ');
    }, WORDS.noTable);
  }

  /** @returns what is to be said of it */
  #keep(file: Blob, parts: readonly string[], ending: string): string {
    const { sets } = this.#things.restsOn;
    const { localName } = this.#view.host;
    // Of one set its name tells more than the corner's.
    const of = sets.length === 1 ? sets[0]!.name : this.#view.frame.corner;
    const name = fileName([localName, ...parts, of], ending);
    saveFile(file, name);
    return WORDS.saved(name);
  }

  #partsOf(picture: SavablePicture): string[] {
    const { kind, name, of } = picture;
    const chosen = of.choices?.find(({ id }) => id === this.#choiceOf(picture));
    return [WORDS.kinds[kind], ...(name ? [name] : []), ...(chosen ? [chosen.name] : [])];
  }

  /** One after the other; what goes wrong is told. */
  #work(task: () => Promise<string>, failed: string = WORDS.notSaved): void {
    const { host } = this.#view;
    this.#refused = undefined;
    this.#working = this.#working.then(async () => {
      try {
        this.#said = await task();
      } catch (error) {
        console.warn('Bumpline: it could not be taken along.', error);
        this.#said = failed;
      }
      host.requestUpdate();
    });
  }
}

const nameOf = ({ kind, name }: SavablePicture): string =>
  name ? `${WORDS.kinds[kind]}: ${lower(name)}` : WORDS.kinds[kind];
