/**
 * English that stands outside of the records of words. A record is one object at the top of a file of words; a second language is a
 * second record, so what a function or a template says of its own would have to be found and written again.
 */
import { parseSync } from 'vite';

/** @typedef {{ line: number, text: string, record: string | undefined }} Words  record: the object at the top of the file that holds it */

/** Of these a reader sees or hears the value. */
const SPOKEN_ATTRIBUTE = /\s(?:aria-label|aria-description|title|placeholder|alt|label)="([^"]*)"/g;
/** Markup, styles and what else is between angle brackets. */
const TAG = /<!--[\s\S]*?-->|<\/?[a-zA-Z](?:"[^"]*"|[^>"])*>/g;
const STAND_IN = '\u0000';

/** What of a template's text is read: its attributes that are spoken, and what stands between its tags. */
const readOfMarkup = (text) => [...text.matchAll(SPOKEN_ATTRIBUTE)].map(([, said]) => said).concat(text.split(TAG));

/** Two words of two letters or more with a space between. */
const isEnglish = (text) => /(?<![\w.-])\p{L}[\p{Ll}’-]+[,:;]? \p{Ll}[\p{Ll}’]+(?![\w-]*[=(])/u.test(text);

const nameOf = (node) => node?.name ?? node?.value ?? node?.property?.name;

/** Nobody reads these: keys, classes, ids, what is imported, what a developer is told. */
function isUnread(node, parent) {
  switch (parent?.type) {
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSLiteralType':
    case 'TSEnumMember':
      return true;
    case 'Property':
      return parent.key === node && !parent.computed;
    case 'NewExpression':
      return /Error$/.test(nameOf(parent.callee) ?? '');
    case 'CallExpression':
      return parent.callee.object?.name === 'console';
    default:
      return false;
  }
}

/** @param {string} path @param {string} source @returns {Words[]} every text of two English words or more */
export function wordsIn(path, source) {
  const { program } = parseSync(path, source);
  const found = [];
  const lineAt = (index) => source.slice(0, index).split('\n').length;
  const take = (node, text, record) => {
    if (isEnglish(text)) found.push({ line: lineAt(node.start), text: text.replace(/\s+/g, ' ').trim(), record });
  };
  const visit = (node, parent, record) => {
    if (Array.isArray(node)) {
      for (const one of node) visit(one, parent, record);
      return;
    }
    if (!node || typeof node.type !== 'string') return;
    if (node.type === 'Literal' && typeof node.value === 'string') {
      if (!isUnread(node, parent)) take(node, node.value, record);
      return;
    }
    if (node.type === 'TemplateLiteral' && !isUnread(node, parent)) {
      const text = node.quasis.map(({ value }) => value.cooked ?? value.raw).join(STAND_IN);
      const tag = parent?.type === 'TaggedTemplateExpression' ? nameOf(parent.tag) : undefined;
      if (tag !== 'css') {
        for (const said of tag ? readOfMarkup(text) : [text]) take(node, said.replaceAll(STAND_IN, '…'), record);
      }
    }
    for (const [key, child] of Object.entries(node)) {
      if (child && typeof child === 'object' && key !== 'parent') visit(child, node, record);
    }
  };
  for (const statement of program.body) {
    const declaration = statement.declaration ?? statement;
    if (declaration.type !== 'VariableDeclaration') {
      visit(statement, undefined, undefined);
      continue;
    }
    for (const { id, init } of declaration.declarations) {
      let value = init;
      while (value?.expression) value = value.expression;
      visit(init, undefined, value?.type === 'ObjectExpression' ? id.name : undefined);
    }
  }
  return found;
}
