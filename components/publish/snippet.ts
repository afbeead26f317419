import type { CarDocument } from '../../core/document/car.js';
import { dropBy } from '../../core/document/car.js';
import type { PageCar } from '../../core/document/page-car.js';
import { isFilled } from '../../core/document/provenance.js';
import { heightsOf } from '../bumpline-compare/compare-settings.js';
import { LEFT_OUT } from './left-out.words.js';
import { attributesText, escaped, scriptJson } from './markup-text.js';
import { relevantOf, type SnippetTag } from './relevant.js';
import { saidInAttributes, withoutNamed } from './said-in-attributes.js';
import { saidInTables } from './said-in-tables.js';

export type { SnippetTag } from './relevant.js';

/** What readers without scripts see first, and the figure in it that is the answer. */
export interface FallbackSentence {
  text: string;
  /** As the text has it, and as a number, mm or degrees. */
  figure?: { text: string; value: number };
}

export interface SnippetWish {
  tag: SnippetTag;
  /** As its reader has it; one of which nobody gave anything is the example's. */
  car: CarDocument;
  /** What else the tag is to say, by the names of its attributes. They count before what the car says. */
  attributes?: Readonly<Record<string, string>>;
  /** Parts of the element that are shown, of `drawing`, `chart` and `table`; without it all. */
  show?: readonly string[];
  units?: 'mm' | 'in';
  angles?: 'degrees' | 'arcminutes';
  theme?: 'light' | 'dark';
  /** What the element is told to speak; without it what its page does. */
  spoken?: string;
  /** Of the column at most, px. */
  width?: number;
  sentence?: FallbackSentence;
  /** Of the page that it goes into: its decimal mark stands in the tables. */
  language?: string;
}

export interface Snippet {
  /** The element, or what stands for it, with all that it is told. */
  html: string;
  /** What the element takes the car from. */
  by: 'example' | 'attributes' | 'table' | 'json';
  /** What of the car is not in it, in words. */
  left: readonly string[];
}

/**
 * An element with everything that it takes to show a car on somebody's page: what attributes can say in attributes, a table where that
 * says all the rest, and otherwise the car as JSON, with the same tables beside it for who has no scripts. Markdown leaves it as it
 * is: every tag is on one line, and none is blank or indented far.
 */
export function snippetOf(wish: SnippetWish): Snippet {
  const { tag, sentence } = wish;
  const made = madeOf(wish);
  const { said, attributes, tables, left } = made;
  const isWhole = !isFilled(tables.rest);
  const by = isWhole ? kindOf(made) : 'json';
  const parts = isWhole ? [tables.data] : [scriptOf(said), tables.shown];
  return {
    html: wrapped(tag, shownAttributes(wish, attributes), [sentence ? sentenceOf(sentence) : '', ...parts]),
    by,
    left: isWhole ? [...left, ...tablesLeave(tables)] : left,
  };
}

/**
 * The same for a site that strips unknown tags and scripts and keeps `data-` attributes: attributes and a table say what they can, and
 * the rest is told.
 */
export function divSnippetOf(wish: SnippetWish): Snippet {
  const made = madeOf(wish);
  const { tables, left, attributes } = made;
  const data = Object.entries(shownAttributes(wish, attributes)).map(([name, value]) =>
    name === 'style' ? [name, value] : [`data-${name}`, value],
  );
  const all = { 'data-bumpline': wish.tag.replace('bumpline-', ''), ...Object.fromEntries(data) };
  return {
    html: wrapped('div', all, [wish.sentence ? sentenceOf(wish.sentence) : '', tables.data]),
    by: kindOf(made),
    left: [...left, ...tablesLeave(tables), ...lost(tables.rest)],
  };
}

/** The tables alone, as elements read them and readers do. */
export function tablesOf(wish: SnippetWish): Snippet {
  const { tables, left } = madeOf(wish);
  return { html: tables.shown, by: 'table', left: [...left, ...tablesLeave(tables)] };
}

/** The car alone, as `{ "car": … }`. */
export function jsonSnippetOf(wish: SnippetWish): Snippet {
  const { said, left } = madeOf(wish);
  return { html: jsonText(said), by: 'json', left };
}

/** What the tag says of a car in attributes. */
export const attributesOfCar = (tag: SnippetTag, car: CarDocument): Readonly<Record<string, string>> =>
  saidInAttributes(tag, relevantOf(tag, withOwnHeights(tag, car, {})).said).attributes;

function madeOf(wish: SnippetWish) {
  const { tag, car, language = 'en', attributes: more = {} } = wish;
  const { said: all, areSetsLeftOut } = relevantOf(tag, withOwnHeights(tag, car, more));
  const { attributes: own, rest } = saidInAttributes(tag, withoutNamed(tag, all, more));
  const tables = saidInTables(tag, rest, language);
  const left = [
    ...(car.predictions?.length ? [LEFT_OUT.predictions(car.predictions.length)] : []),
    ...(areSetsLeftOut ? [LEFT_OUT.sets] : []),
    ...(car.curve?.kind === 'curve' ? [LEFT_OUT.curve] : []),
  ];
  return { said: rest, attributes: { ...own, ...tables.attributes, ...more }, tables, left };
}

/** Of two heights that are compared the second is the reader's own drop, as long as they chose none: on another's page it is named. */
function withOwnHeights(tag: SnippetTag, car: CarDocument, { heights }: Readonly<Record<string, string>>): CarDocument {
  if (tag !== 'bumpline-compare' || dropBy(car) !== 'user' || car.compare?.heights || heights !== undefined) return car;
  return { ...car, compare: { ...car.compare, heights: [...heightsOf(car, { heights, over: undefined })] } };
}

const kindOf = ({ tables, attributes }: Pick<ReturnType<typeof madeOf>, 'tables' | 'attributes'>): Snippet['by'] =>
  tables.data ? 'table' : isFilled(attributes) ? 'attributes' : 'example';

function shownAttributes(wish: SnippetWish, own: Readonly<Record<string, string>>): Record<string, string> {
  const { show, units, angles, theme, spoken, width } = wish;
  return {
    ...own,
    ...(show && { show: ['sentence', ...show].join(' ') }),
    ...(units && units !== 'mm' && { units }),
    ...(angles && angles !== 'degrees' && { angles }),
    ...(theme && { theme }),
    ...(spoken && { language: spoken }),
    ...(width && { style: `max-width:${width}px` }),
  };
}

function sentenceOf({ text, figure }: FallbackSentence): string {
  const at = figure ? text.indexOf(figure.text) : -1;
  if (!figure || at < 0) return `<p>${escaped(text)}</p>`;
  const [before, after] = [text.slice(0, at), text.slice(at + figure.text.length)];
  const data = `<data value="${figure.value}">${escaped(figure.text)}</data>`;
  return `<p>${trimless(before)}${data}${trimless(after)}</p>`;
}

/** A blank beside the figure stays. */
const trimless = (text: string): string =>
  `${/^\s/.test(text) ? ' ' : ''}${escaped(text)}${/\s$/.test(text) && text.trim() ? ' ' : ''}`;

const scriptOf = (car: PageCar): string => ['<script type="application/json">', jsonText(car), '</script>'].join('\n');

/** One field on each line. */
function jsonText(car: PageCar): string {
  const fields = Object.entries(car).map(([name, value]) => `  ${scriptJson(name)}: ${scriptJson(value)}`);
  return fields.length > 0 ? `{ "car": {\n${fields.join(',\n')}\n} }` : '{ "car": {} }';
}

/** A tag around its parts, each of their lines a little further in. */
function wrapped(tag: string, attributes: Readonly<Record<string, string>>, parts: readonly string[]): string {
  const lines = parts.filter((part) => part !== '').flatMap((part) => part.split('\n'));
  const open = `<${tag}${attributesText(attributes)}>`;
  if (lines.length === 0) return `${open}</${tag}>`;
  return [open, ...lines.map((line) => ` ${line}`), `</${tag}>`].join('\n');
}

const tablesLeave = ({ aside, isRenamed }: ReturnType<typeof saidInTables>): string[] => [
  ...(aside > 0 ? [LEFT_OUT.aside(aside)] : []),
  ...(isRenamed ? [LEFT_OUT.passes] : []),
];

/** What nothing but JSON can say. */
const lost = (rest: PageCar): string[] =>
  (Object.keys(rest) as (keyof typeof LEFT_OUT.fields)[]).flatMap((field) => LEFT_OUT.fields[field] ?? []);
