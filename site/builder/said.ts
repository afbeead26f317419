import type { FallbackSentence, SnippetTag } from '../../components/publish/snippet.js';

/** An element in a preview. */
export interface Previewed extends HTMLElement {
  readonly answer?: unknown;
  readonly state: string;
  readonly problems: readonly unknown[];
  readonly settled: Promise<void>;
}

/** Where an answer has the number that the sentence tells first; `*` stands for each of several. */
const FIGURES: Readonly<Partial<Record<SnippetTag, string>>> = {
  'bumpline-lowering': 'change.value',
  'bumpline-readings': 'change.value',
  'bumpline-toe': 'change.value',
  'bumpline-cornering': 'outer.inclination',
  'bumpline-predict': 'predicted.value',
  'bumpline-compare': 'cells.*.*.change.value',
  'bumpline-static-camber': 'ways.*.amount',
};

/** Said of whose numbers it is, and not of the car. */
const ASIDE = '.not-yours, .stand-ins, [hidden]';

function wordsIn(node: Node): string {
  if (node instanceof Text) return node.data;
  if (!(node instanceof Element) || node.matches(ASIDE)) return '';
  if (node instanceof HTMLInputElement) return node.value;
  return [...node.childNodes].map(wordsIn).join('');
}

/** A copy of a node of another page, whose classes are not this page's. */
const here = (node: Node): Node => document.importNode(node, true);

const tidy = (text: string): string =>
  text
    .replace(/[^\S\u00a0\u202f]+/g, ' ')
    .replace(/ (?=[,.:;])/g, '')
    .trim();

function valuesAt(data: unknown, path: readonly string[]): number[] {
  const [name, ...rest] = path;
  if (name === undefined) return typeof data === 'number' ? [data] : [];
  if (typeof data !== 'object' || data === null) return [];
  const all = name === '*' ? Object.values(data) : [(data as Record<string, unknown>)[name]];
  return all.flatMap((one) => valuesAt(one, rest));
}

/** The number that a text shows, with its sign and more places; undefined of one that the answer has not. */
function figureOf(tag: SnippetTag, text: string, answer: unknown): number | undefined {
  const [digits] = /\d+(?:\.\d+)?/.exec(text) ?? [];
  if (digits === undefined) return undefined;
  const places = digits.split('.')[1]?.length ?? 0;
  const found = valuesAt(answer, FIGURES[tag]?.split('.') ?? []);
  const value = found.find((one) => Math.abs(one).toFixed(places) === digits);
  return value === undefined ? value : Number(value.toPrecision(4));
}

/** What an element says, for who has no scripts; undefined while it has no answer. */
export function sentenceIn(tag: SnippetTag, element: Previewed): FallbackSentence | undefined {
  const sentence = element.shadowRoot?.querySelector('.sentence');
  if (!sentence || element.answer === undefined) return undefined;
  // A field holds its text in a property, which a copy would not have.
  for (const field of sentence.querySelectorAll('input')) field.setAttribute('value', field.value);
  const copy = here(sentence) as Element;
  const text = tidy(wordsIn(copy));
  const [shown] = [...copy.querySelectorAll('.says :is(.value, .asked)')].filter((one) => /\d/.test(one.textContent));
  const figure = shown && tidy(shown.textContent);
  const value = figure === undefined ? undefined : figureOf(tag, figure, element.answer);
  return { text, ...(figure !== undefined && value !== undefined && { figure: { text: figure, value } }) };
}
