import type { SnippetTag } from '../../components/publish/snippet.js';
import { HANDED_OVER, nameOf, OPTIONS, tagOf } from './options.js';

export const FORMS = ['element', 'div', 'frame', 'table', 'json'] as const;
export type Form = (typeof FORMS)[number];
/** Languages that an element may be told to speak. */
export const SPOKEN = ['', 'en', 'de'] as const;
/** Pages that a preview stands on. */
export const HOSTS = ['plain', 'narrow', 'dark'] as const;
export type Host = (typeof HOSTS)[number];
/** What an element may show beside its sentence. */
export const PARTS = ['drawing', 'chart', 'table'] as const;
export type Part = (typeof PARTS)[number];

/** All that an author chose on the page; texts as they were typed. */
export interface Choices {
  tag: SnippetTag;
  form: Form;
  host: Host;
  /** Beside the sentence; undefined: everything that the element has. */
  show: readonly Part[] | undefined;
  units: 'mm' | 'in';
  angles: 'degrees' | 'arcminutes';
  /** Empty: that of the page. */
  theme: '' | 'light' | 'dark';
  /** Empty: that of the page. */
  language: (typeof SPOKEN)[number];
  width: string;
  /** Where the file, or the site, lies. */
  at: string;
  /** Pasted data. */
  text: string;
  /** By the name of an attribute. */
  options: Readonly<Record<string, string>>;
}

const one = <T extends string>(all: readonly T[], found: string | null, usual: T): T =>
  all.find((name) => name === found) ?? usual;

const LONGEST_WORD = 200;

/** What an address says; whatever it does not say, or says wrongly, is as it is at first. */
export function choicesIn(query: URLSearchParams): Choices {
  const tag = tagOf(query.get('element')) ?? 'bumpline-lowering';
  const show = query.get('show');
  const names = [...OPTIONS[tag], ...HANDED_OVER];
  return {
    tag,
    form: one(FORMS, query.get('form'), 'element'),
    host: one(HOSTS, query.get('host'), 'plain'),
    show: show === null ? undefined : PARTS.filter((part) => show.split(/[\s,]+/).includes(part)),
    units: one(['mm', 'in'], query.get('units'), 'mm'),
    angles: one(['degrees', 'arcminutes'], query.get('angles'), 'degrees'),
    theme: one(['', 'light', 'dark'], query.get('theme'), ''),
    language: one(SPOKEN, query.get('language'), ''),
    width: (query.get('width') ?? '').slice(0, LONGEST_WORD),
    at: (query.get('at') ?? '').slice(0, LONGEST_WORD),
    text: query.get('text') ?? '',
    options: Object.fromEntries(
      names.flatMap((name) => {
        const value = query.get(name);
        return value ? [[name, value.slice(0, LONGEST_WORD)]] : [];
      }),
    ),
  };
}

/** The same for an address: only what is not as it is at first. */
export function queryOf(choices: Choices): URLSearchParams {
  const { tag, form, host, show, units, angles, theme, language, width, at, text, options } = choices;
  const pairs: [string, string | undefined][] = [
    ['element', nameOf(tag)],
    ['form', form === 'element' ? undefined : form],
    ['host', host === 'plain' ? undefined : host],
    ['show', show && ['sentence', ...show].join(' ')],
    ['units', units === 'mm' ? undefined : units],
    ['angles', angles === 'degrees' ? undefined : angles],
    ['theme', theme],
    ['language', language],
    ['width', width],
    ['at', at],
    ...Object.entries(options),
    ['text', text],
  ];
  return new URLSearchParams(pairs.flatMap(([name, value]) => (value ? [[name, value]] : [])));
}

/** Of a column, px; undefined of what is no width. */
export function widthIn(text: string): number | undefined {
  const px = Number(/^\s*(\d{2,4})(?:\s*px)?\s*$/.exec(text)?.[1]);
  return px >= 200 && px <= 2000 ? px : undefined;
}

/** Of an address that is written without one. */
const SCHEME = 'https:';

/** An address as a page can have it, with a slash at its end; undefined of what is none. */
export function siteIn(text: string): string | undefined {
  const whole = /^\s*(?:https?:\/\/|\/|\.\.?\/)/.test(text) ? text.trim() : `${SCHEME}//${text.trim()}`;
  if (text.trim() === '' || /[\s"'<>]/.test(whole)) return undefined;
  return whole
    .replace(/[?#].*$/s, '')
    .replace(/[^/]*\.js$/, '')
    .replace(/\/*$/, '/');
}
