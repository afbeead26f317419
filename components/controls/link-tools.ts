import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { CarModel } from '../car/car-model.js';
import { LONGEST_LINK } from '../car/fragment.js';
import { copyText } from './clipboard.js';
import { CONTROLS } from './controls.labels.js';
import { saveFile } from './save-file.js';

/** What the tools know of the sheet that they stand on. */
interface LinkView {
  readonly host: HTMLElement & { requestUpdate(): void };
  readonly model: CarModel;
  change(path: string, label: string, recipe: (car: CarDocument) => CarDocument): void;
  endStep(): void;
}

/** How long a word that something worked stands beside its button, ms. */
const WORD_MS = 6000;

/**
 * What takes a car along: a link to this page with the car in it, whether the address keeps it or not; a file, where a link would be
 * too long; and the way in for such a file.
 */
export class LinkTools {
  readonly #view: LinkView;
  readonly #address = import('../car/address.js');
  /** What became of it, for people. */
  #said = '';
  #isTooLong = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(view: LinkView) {
    this.#view = view;
    // Told when it is wanted; it is tried again then.
    this.#address.catch(() => {});
  }

  render(): TemplateResult {
    const isTooLong = this.#isTooLong || this.#view.model.address?.isTooLong === true;
    const said = this.#said || (isTooLong ? CONTROLS.tooLong(LONGEST_LINK) : '');
    return html`<span class="link-tools"><button type="button" class="text-button copy-link" @click=${(event: Event) => void this.#copy(event)}>${CONTROLS.copyLink}</button
      ><span class="link-said" role="status">${said}</span
      ><textarea class="link-text" hidden readonly rows="3" aria-label=${CONTROLS.copyLink}></textarea
      >${isTooLong ? html`<button type="button" class="button save-file" @click=${() => void this.#save()}>${CONTROLS.saveFile}</button>` : nothing}
      <button type="button" class="text-button open-file" @click=${(event: Event) => (event.currentTarget as Element).parentElement!.querySelector<HTMLInputElement>('.car-file')!.click()}>${CONTROLS.openFile}</button
      ><input class="car-file" type="file" accept=".json,application/json" hidden aria-label=${CONTROLS.openFile} @change=${(event: Event) => void this.#open(event.target as HTMLInputElement)} /></span>`;
  }

  #say(text: string, lasts = true): void {
    clearTimeout(this.#timer);
    this.#said = text;
    if (!lasts) this.#timer = setTimeout(() => this.#say(''), WORD_MS);
    this.#view.host.requestUpdate();
  }

  async #copy(event: Event): Promise<void> {
    const { host, model } = this.#view;
    const field = (event.currentTarget as Element).parentElement!.querySelector<HTMLTextAreaElement>('.link-text')!;
    try {
      const { linkTo } = await this.#address.catch(() => import('../car/address.js'));
      const link = linkTo(model, host);
      this.#isTooLong = link.length > LONGEST_LINK;
      if (this.#isTooLong) return this.#say('');
      const outcome = await passOn(link);
      if (outcome) return this.#say(outcome === 'shared' ? CONTROLS.shared : '', false);
      const said = await copyText(link, field);
      this.#say(said, said !== CONTROLS.copied);
    } catch (error) {
      console.warn('Bumpline: no link could be made.', error);
      this.#say(CONTROLS.noLink);
    }
  }

  async #save(): Promise<void> {
    try {
      const { carFile } = await import('./car-file.js');
      saveFile(new Blob([carFile(this.#view.model.car)], { type: 'application/json' }), CONTROLS.fileName);
      this.#say(CONTROLS.saved);
    } catch (error) {
      console.warn('Bumpline: the file could not be saved.', error);
      this.#say(CONTROLS.notSaved);
    }
  }

  async #open(field: HTMLInputElement): Promise<void> {
    const file = field.files?.[0];
    // The same file again is to be told of as well.
    if (!file) return;
    try {
      const { carInFile, withFile } = await import('./car-file.js');
      const read = carInFile(await file.text());
      field.value = '';
      if ('problem' in read) return this.#say(read.problem);
      this.#view.change('car', CONTROLS.opened, (car) => withFile(car, read.car));
      this.#view.endStep();
      this.#isTooLong = false;
      this.#say(CONTROLS.isOpen(file.name), false);
    } catch (error) {
      console.warn('Bumpline: the file could not be opened.', error);
      this.#say(CONTROLS.notOpened);
    }
  }
}

/** What came of a phone's own way of passing something on; undefined where there is none, or it failed. */
async function passOn(url: string): Promise<'shared' | 'dismissed' | undefined> {
  if (!matchMedia('(pointer: coarse)').matches || typeof navigator.share !== 'function') return undefined;
  try {
    await navigator.share({ url });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'dismissed' : undefined;
  }
}
