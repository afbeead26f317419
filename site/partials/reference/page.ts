import { readFileSync } from 'node:fs';
import type { ElementDeclaration, Fired } from '../../../components/manifest/manifest.js';
import { listedPages } from '../listed.js';
import { escaped } from '../partial.js';
import { declared } from './declared.js';
import { formsOf } from './forms.js';
import { references } from './list.js';
import { questionOf } from './listed-here.js';
import { code, holds, prose, takes } from './says.js';
import { fieldRows, linkedProse, type Row, rowsTable, typeTable, typeText } from './tables.js';

/* The page about an element, made from the manifest: what stands in its <main>. */

const SECTIONS = {
  example: 'An example',
  inside: 'What stands inside',
  attributes: 'Attributes',
  properties: 'Properties',
  methods: 'Methods',
  events: 'Events',
  style: 'Parts, states and colours',
  types: 'What events and properties hold',
} as const;

const section = (id: keyof typeof SECTIONS, content: string): string =>
  `<section aria-labelledby="${id}">\n<h2 id="${id}">${SECTIONS[id]}</h2>\n${content}\n</section>`;

/** Markup that is read. */
const shown = (html: string): string => html.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** The element as an author writes it. */
export const exampleOf = (tag: string): string =>
  readFileSync(new URL(`examples/${tag.replace('bumpline-', '')}.html`, import.meta.url), 'utf8').trim();

const opening = ({ tagName }: ElementDeclaration): string =>
  `<div class="opening">\n<h1>${tagName}</h1>\n<p>${prose(questionOf(tagName))}</p>\n</div>`;

/** What its class says besides. */
const paragraphs = ({ description = '', types }: ElementDeclaration): string =>
  description
    .split(/\n\n/)
    .slice(1)
    .map((text) => `<p>${linkedProse(text.replaceAll('\n', ' '), types)}</p>`)
    .join('\n');

const example = (tag: string): string =>
  section(
    'example',
    `<div class="snippet"><pre><code>${shown(exampleOf(tag))}</code></pre></div>
<p>This is what it makes, of an invented car. What goes around it, script and style sheet, stands in <a href="../../put-it-in-your-article/#snippet">the snippet for your article</a>.</p>
<div class="specimen">\n${exampleOf(tag)}\n</div>`,
  );

function attributes({ attributes: all = [], types }: ElementDeclaration): string {
  const rows = all.map((attribute): Row => {
    const { name, fieldName, description } = attribute;
    const property = fieldName === name ? '' : ` Property ${code(fieldName)}.`;
    return {
      id: `attribute-${name}`,
      name: code(name),
      says: linkedProse(description, types),
      takes: takes(attribute) + property,
    };
  });
  return section(
    'attributes',
    `<p>Each is a property as well. Numbers have a decimal point. What is not understood is named in the console and beside the answer.</p>\n${rowsTable(rows, ['Attribute', 'Meaning'])}`,
  );
}

function properties({ members, types }: ElementDeclaration): string {
  const rows = members
    .filter(({ kind, attribute }) => kind === 'field' && attribute === undefined)
    .map((member): Row => {
      const linked = (text: string) => typeText(text, types);
      return {
        id: `property-${member.name}`,
        name: code(member.name),
        says: linkedProse(member.description, types),
        takes: holds(member, linked),
      };
    });
  return section('properties', `<p>Those that are no attribute:</p>\n${rowsTable(rows, ['Property', 'Meaning'])}`);
}

function methods({ members }: ElementDeclaration): string {
  const rows = members
    .filter(({ kind }) => kind === 'method')
    .map(({ name, parameters = [], description }): Row => {
      const of = parameters.map((one) => one.name).join(', ');
      return { id: `method-${name}`, name: code(`${name}(${of})`), says: prose(description) };
    });
  return rows.length === 0 ? '' : section('methods', rowsTable(rows, ['Method', 'What it does']));
}

function events({ events: all = [], types }: ElementDeclaration): string {
  const told = ({ name, description, type, fields }: Fired) =>
    `<h3 id="event-${name}">${code(name)}</h3>
<p>${prose(description)} ${code(type!.text)}</p>
${rowsTable(fieldRows(fields, types), ['Field', 'Meaning'])}`;
  if (all.length === 0) return '';
  const intro =
    '<p>They bubble and cross shadow roots, so the document hears them. The fields stand on the event itself.</p>';
  return section('events', [intro, ...all.map(told)].join('\n'));
}

function style({ cssParts = [], cssStates = [], cssProperties = [] }: ElementDeclaration): string {
  const rows = (of: typeof cssParts) =>
    of.map(({ name, description }): Row => ({ name: code(name), says: prose(description) }));
  if (cssParts.length + cssStates.length + cssProperties.length === 0) return '';
  return section(
    'style',
    [
      '<p><code>::part()</code> reaches these:</p>',
      rowsTable(rows(cssParts), ['Part', 'Meaning']),
      '<p><code>:state()</code> tells how far it is, one at a time:</p>',
      rowsTable(rows(cssStates), ['State', 'Meaning']),
      '<p>Set any of these on the element or above it. Each colour means one thing, so change the shade and keep the meaning. Text needs 4.5 : 1 against paper and sheet, lines 3 : 1.</p>',
      rowsTable(rows(cssProperties), ['Property', 'Meaning']),
    ].join('\n'),
  );
}

const types = ({ types: all }: ElementDeclaration): string =>
  all.length === 0 ? '' : section('types', all.map((one) => typeTable(one, all)).join('\n'));

function others(tag: string): string {
  const { article } = references.find((one) => one.tag === tag)!;
  const title = article && listedPages().find(({ path }) => path === article)!.title;
  const about = article ? `<p>It stands in <a href="../../${article}">${escaped(title!)}</a>.</p>\n` : '';
  const links = references.filter((one) => one.tag !== tag).map((one) => `<a href="../../${one.path}">${one.tag}</a>`);
  return `${about}<p>All of this is in the package’s <code>custom-elements.json</code> as well. Frames, divs and security policy: <a href="../../put-it-in-your-article/">Put it in your own article</a>. <a href="../../changes/">What has changed</a>.</p>
<p class="others">The others: ${links.join(', ')}.</p>`;
}

/** @param tag of an element of the list */
export function referencePage(tag: string): string {
  const element = declared(tag);
  const inside = formsOf(element);
  return [
    opening(element),
    '<div class="text">',
    paragraphs(element),
    '<nav class="contents"></nav>',
    example(tag),
    inside && section('inside', inside),
    attributes(element),
    properties(element),
    methods(element),
    events(element),
    style(element),
    types(element),
    others(tag),
    '</div>',
  ]
    .filter(Boolean)
    .join('\n');
}
