/**
 * English that a reader sees, and the record of words that holds it. A record is an object at the top of a file: another language is
 * another object of the same type. What a function or a template says of its own would have to be found and written again.
 */
import { parseSync } from 'vite';

/** @typedef {{ line: number, text: string, record: string | undefined }} Words  record: the object at the top of the file, by name */

/** Of these attributes a reader sees or hears the value. */
const SPOKEN = /\s(?:aria-label|aria-description|title|placeholder|alt)="([^"]*)"/g;
const TAG = /<!--[\s\S]*?-->|<\/?[a-zA-Z](?:"[^"]*"|[^>"])*>/g;
/** Stands for a value in a template. */
const VALUE = '\u0000';

/** Two words with a space between. */
const ENGLISH = /(?<![\w.-])\p{L}[\p{Ll}’-]+[,:;]? \p{Ll}[\p{Ll}’]+(?![\w-]*[=(])/u;
/** One is enough where it is certainly read: between tags, and as a label. */
const WORD = /\p{L}{2}/u;
const LABEL = /^(?:label|title|caption|hint|howTo|legend|short|description|heading)$/;

const isLabel = (parent, node) =>
  parent?.type === 'Property' && parent.value === node && LABEL.test(nameOf(parent.key) ?? '');
const nameOf = (node) => node?.name ?? node?.value ?? node?.property?.name;

/** What of a template's text is read: attributes that are spoken, and what stands between tags. */
const readOf = (markup) => [...[...markup.matchAll(SPOKEN)].map(([, said]) => said), ...markup.split(TAG)];

/** Imports, keys, types, selectors, and what developers are told: no reader sees them. */
function isUnread(node, parent) {
  switch (parent?.type) {
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSLiteralType':
      return node.type === 'Literal';
    case 'Property':
      return parent.key === node && !parent.computed;
    case 'NewExpression':
      return /Error$/.test(nameOf(parent.callee) ?? '');
    case 'CallExpression':
      return (
        parent.callee.object?.name === 'console' ||
        /^(?:matches|closest|matchMedia|querySelector(?:All)?)$/.test(nameOf(parent.callee) ?? '')
      );
    default:
      return false;
  }
}

/** The object of a declaration, whatever type it is given, and if it is `words('name', { … })`. */
function isObject(init) {
  let value = init;
  while (value?.expression) value = value.expression;
  if (value?.type === 'CallExpression' && nameOf(value.callee) === 'words') value = value.arguments[1];
  return value?.type === 'ObjectExpression';
}

/**
 * @param {string} path of a file of TypeScript
 * @param {string} source
 * @returns {Words[]} every text of it that is English and read
 */
export function wordsIn(path, source) {
  const { program } = parseSync(path, source);
  const found = [];
  const take = (node, text, record, isRead) => {
    if (!(isRead ? WORD : ENGLISH).test(text)) return;
    found.push({
      line: source.slice(0, node.start).split('\n').length,
      text: text.replaceAll(VALUE, '…').trim(),
      record,
    });
  };
  const visit = (node, parent, record) => {
    if (Array.isArray(node)) for (const one of node) visit(one, parent, record);
    if (!node || typeof node.type !== 'string' || isUnread(node, parent)) return;
    if (node.type === 'Literal' && typeof node.value === 'string')
      take(node, node.value, record, isLabel(parent, node));
    if (node.type === 'TemplateLiteral') {
      const text = node.quasis.map(({ value }) => value.cooked ?? value.raw).join(VALUE);
      const tag = parent?.type === 'TaggedTemplateExpression' ? nameOf(parent.tag) : undefined;
      if (tag === 'html' || tag === 'svg') for (const said of readOf(text)) take(node, said, record, true);
      else if (tag === undefined) take(node, text, record, isLabel(parent, node));
    }
    for (const child of Object.values(node)) if (child && typeof child === 'object') visit(child, node, record);
  };
  for (const statement of program.body) {
    const { declarations } = statement.declaration ?? statement;
    if (!declarations) visit(statement, undefined, undefined);
    for (const { id, init } of declarations ?? []) visit(init, undefined, isObject(init) ? id.name : undefined);
  }
  return found;
}
