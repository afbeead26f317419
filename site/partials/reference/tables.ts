import type { Field, TypeTable } from '../../../components/manifest/manifest.js';
import { escaped } from '../partial.js';
import { code, prose } from './says.js';

/* Tables of names and what they mean: two columns, so that a phone has room for both. */

export interface Row {
  id?: string;
  name: string;
  /** Markup. */
  says: string;
  /** Markup; smaller, below it. */
  takes?: string;
}

export function rowsTable(rows: readonly Row[], [name, meaning]: readonly [string, string], caption = ''): string {
  const head = `<thead><tr><th scope="col">${name}</th><th scope="col">${meaning}</th></tr></thead>`;
  const body = rows.map(({ id, name: of, says, takes }) => {
    const more = takes ? ` <span class="takes">${takes}</span>` : '';
    return `<tr${id ? ` id="${id}"` : ''}><th scope="row">${of}</th><td>${says}${more}</td></tr>`;
  });
  const above = caption && `<caption>${caption}</caption>`;
  return `<table class="words meanings">${above}${head}<tbody>\n${body.join('\n')}\n</tbody></table>`;
}

export const typeId = (name: string): string =>
  `type-${name
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .replace(/[^A-Za-z]+/g, '-')
    .replace(/-$/, '')
    .toLowerCase()}`;

/** A type as it is written, what it names led to where that is told on the page. */
export function typeText(text: string, types: readonly TypeTable[]): string {
  const bare = text.replace(/\breadonly /g, '').replace(/\/\*\*.*?\*\/ ?/g, '');
  const names = types.map(({ name }) => name).sort((a, b) => b.length - a.length);
  const pattern = new RegExp(
    `(?<![\\w.])(?:${names.map((name) => name.replace(/[.<>]/g, '\\$&')).join('|')})(?![\\w.<])`,
    'g',
  );
  if (names.length === 0) return code(bare);
  let at = 0;
  let markup = '';
  for (const { 0: name, index } of bare.matchAll(pattern)) {
    markup += `${escaped(bare.slice(at, index))}<a href="#${typeId(name)}">${escaped(name)}</a>`;
    at = index + name.length;
  }
  return `<code>${markup}${escaped(bare.slice(at))}</code>`;
}

/** The same of a comment that names types. */
export const linkedProse = (text: string | undefined, types: readonly TypeTable[]): string =>
  prose(text).replace(/<code>([^<]*)<\/code>/g, (found, name) =>
    types.some((one) => one.name === name) ? `<a href="#${typeId(name)}">${found}</a>` : found,
  );

const OPTIONAL = 'may be left out';

export const fieldRows = (fields: readonly Field[], types: readonly TypeTable[]): Row[] =>
  fields.map(({ name, type, description, optional }) => ({
    name: code(name),
    says: prose(description),
    takes: `${typeText(type.text, types)}${optional ? `; ${OPTIONAL}` : ''}`,
  }));

/** A type, folded. */
export const typeTable = ({ name, description, fields }: TypeTable, types: readonly TypeTable[]): string =>
  `<details class="type">
<summary id="${typeId(name)}">${code(name)}</summary>
${description ? `<p>${prose(description)}</p>` : ''}
${rowsTable(fieldRows(fields, types), ['Field', 'Meaning'])}
</details>`;
