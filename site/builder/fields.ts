import { attributesOfCar } from '../../components/publish/snippet.js';
import type { CarDocument } from '../../core/document/car.js';
import { BUILDER } from './builder.words.js';
import { type Choices, choicesIn, PARTS, type Part, queryOf } from './choices.js';
import { OPTIONS, type OptionName, tagOf } from './options.js';
import type { Previewed } from './said.js';

const CHOSEN = ['form', 'host', 'units', 'angles', 'theme', 'language'] as const;
const TEXTS = ['width', 'at', 'text'] as const;

/** What an element's class says of itself. */
type WithShows = { readonly shows?: readonly string[] };

/** The fields of the page: filled from the choices, and read back into them. */
export class Fields {
  readonly #form: HTMLFormElement;
  #choices: Choices = choicesIn(new URLSearchParams());

  /** @param changed called with every change that somebody makes */
  constructor(form: HTMLFormElement, changed: () => void) {
    this.#form = form;
    form.addEventListener('input', ({ target }) => {
      this.#keepParts(target as HTMLInputElement);
      changed();
    });
  }

  #named(name: string): HTMLInputElement[] {
    return [...this.#form.querySelectorAll<HTMLInputElement>(`[name="${name}"]`)];
  }

  fill(choices: Choices, car: CarDocument): void {
    const { show } = choices;
    for (const name of CHOSEN) for (const field of this.#named(name)) field.checked = field.value === choices[name];
    for (const name of TEXTS) this.#named(name)[0]!.value = choices[name];
    this.#named('element')[0]!.value = queryOf(choices).get('element')!;
    this.#named('all')[0]!.checked = show === undefined;
    for (const field of this.#named('show')) field.checked = show?.includes(field.value as Part) ?? false;
    if (choices.text) this.#form.querySelector<HTMLDetailsElement>('.paste')!.open = true;
    this.follow(choices, car);
  }

  read(): Choices {
    const query = new URLSearchParams(this.#choices.options);
    const text = (name: string) => this.#named(name)[0]!.value;
    const tag = tagOf(text('element')) ?? this.#choices.tag;
    // Those of an element that was chosen just now are not on the page yet.
    if (tag === this.#choices.tag) for (const name of OPTIONS[tag]) query.set(name, text(name).trim());
    for (const name of ['element', ...TEXTS]) query.set(name, text(name));
    for (const name of CHOSEN) query.set(name, this.#named(name).find(({ checked }) => checked)?.value ?? '');
    const parts = PARTS.filter((part) => this.#named('show').some(({ value, checked }) => checked && value === part));
    return { ...choicesIn(query), show: this.#named('all')[0]!.checked ? undefined : parts };
  }

  /** Has the fields be those of the element that is chosen. */
  follow(choices: Choices, car: CarDocument): void {
    const isOther = choices.tag !== this.#choices.tag || !this.#form.querySelector('.options *');
    this.#choices = choices;
    const place = this.#form.querySelector('.options')!;
    if (isOther) place.replaceChildren(...OPTIONS[choices.tag].map(fieldOf));
    const own = attributesOfCar(choices.tag, car);
    for (const name of OPTIONS[choices.tag]) {
      const [field] = this.#named(name);
      const value = choices.options[name] ?? '';
      if (field!.value.trim() !== value) field!.value = value;
      field!.placeholder = own[name] === undefined ? '' : BUILDER.fromCar(own[name]);
    }
    const isFrame = choices.form === 'frame';
    const [label, placeholder] = BUILDER.sites[isFrame ? 'frame' : 'file'];
    this.#form.querySelector('.at .label')!.textContent = label;
    this.#named('at')[0]!.placeholder = placeholder;
    this.#form.querySelector<HTMLElement>('.at')!.hidden = choices.form === 'table' || choices.form === 'json';
  }

  /** What an element does not have nobody can choose. */
  offer(element: Previewed): void {
    const { shows } = element.constructor as WithShows;
    for (const field of this.#named('show')) {
      field.disabled = shows !== undefined && !shows.includes(field.value);
      field.closest('label')!.hidden = field.disabled;
    }
  }

  /** What is wrong in a field, beside it. */
  tell(name: string, text: string): void {
    const place = this.#form.querySelector(`.wrong[data-of="${name}"]`)!;
    if (place.textContent !== text) place.textContent = text;
  }

  /** Everything, or some of it. */
  #keepParts(target: HTMLInputElement): void {
    const [all] = this.#named('all');
    if (target === all && all.checked) for (const field of this.#named('show')) field.checked = false;
    else if (target.name === 'show') all!.checked = false;
  }
}

function fieldOf(name: OptionName): HTMLElement {
  const [label, hint] = BUILDER.options[name];
  const row = Object.assign(document.createElement('label'), { className: 'row' });
  const note = Object.assign(document.createElement('span'), { className: 'note', textContent: hint });
  const field = Object.assign(document.createElement('input'), { name, type: 'text', autocomplete: 'off' });
  row.append(label, ' ', note, field);
  return row;
}
