import type { Allowed, Attribute, Member } from '../../../components/manifest/manifest.js';
import { escaped } from '../partial.js';

/* What a value may be, in words, as markup. */

export const code = (text: string): string => `<code>${escaped(text)}</code>`;

/** A comment of the sources: what stands in backticks is code. */
export const prose = (text = ''): string =>
  escaped(text)
    .replace(/`([^`]+)`/g, '<code>$1</code>')
    .replace(/(\d) %/g, '$1&nbsp;%')
    .replaceAll("'", '’')
    .replace(/<code>.*?<\/code>/g, (found) => found.replaceAll('’', "'"));

export const signed = (figure: number): string => String(figure).replace('-', '−');

const either = (words: readonly string[]): string => words.map(code).join(' or ');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const WORDS = {
  any: (words: string) => `Any of ${words}, with spaces between`,
  several: 'One or more, by commas or spaces; each ',
  from: (least: number, most: number) => `${signed(least)} to ${signed(most)}`,
  flag: 'No value: it is there, or it is not',
  text: 'Text',
  address: 'An address',
  default: (text: string) => `${code(text)} if left out.`,
  units: { mm: 'mm, or with its unit (cm, in)', degrees: 'degrees, or minutes where they are marked' },
} as const;

/** What an attribute takes: its words, or unit and limits; then what it is without. */
export function takes(attribute: Attribute): string {
  const said = `${capital(allowed(attribute))}.`;
  const without = withoutIt(attribute);
  return without === undefined ? said : `${said} ${WORDS.default(without)}`;
}

function allowed({ values, isWords, unit, minimum, maximum, isList, type, name }: Attribute): string {
  if (values) return isWords ? WORDS.any(values.map(code).join(', ')) : either(values);
  if (minimum !== undefined && maximum !== undefined) {
    const range = WORDS.from(minimum, maximum);
    const { [unit as 'mm']: how = unit } = WORDS.units as Partial<Record<string, string>>;
    return `${isList ? WORDS.several : ''}${how ? `${range} ${how}` : range}`;
  }
  if (type?.text === 'boolean') return WORDS.flag;
  return name.endsWith('-page') ? WORDS.address : WORDS.text;
}

/** As it is written in an attribute; a flag is left out without saying so. */
const withoutIt = ({ default: text }: Allowed): string | undefined =>
  text === undefined || text === 'false' ? undefined : text.replace(/^'(.*)'$/, '$1');

/** What a property holds, its types as `linked` writes them. */
export function holds(member: Member, linked: (text: string) => string): string {
  const kinds = [member.static ? 'of the class' : '', member.readonly ? 'read-only' : ''].filter(Boolean);
  const type = member.type ? linked(member.type.text) : '';
  return [type, kinds.join(', ')].filter(Boolean).join('; ');
}
