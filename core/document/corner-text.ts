/*
 * The text of a corner as somebody wrote it, with other values put in: what stays the same keeps every byte, its spaces, the order of its
 * names and the way its numbers are written.
 */

type Json = null | boolean | number | string | Json[] | { [name: string]: Json };

/** A value and where it stands. */
interface Node {
  value: Json;
  from: number;
  to: number;
  items?: Node[];
  members?: Member[];
}

interface Member {
  name: string;
  from: number;
  node: Node;
}

/**
 * @param text JSON
 * @param data what it is to say, plain data
 * @throws SyntaxError where the text is no JSON
 */
export function withValues(text: string, data: unknown): string {
  JSON.parse(text);
  const whole = nodeAt(text, 0);
  const said = written(text, whole, JSON.parse(JSON.stringify(data)) as Json);
  return `${text.slice(0, whole.from)}${said}${text.slice(whole.to)}`;
}

const SPACE = /[ \t\n\r]*/y;
const SCALAR = /"(?:[^"\\]|\\.)*"|[-+.\w]+/y;

function after(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  pattern.exec(text);
  return pattern.lastIndex;
}

/** Of a text that is known to be JSON. */
function nodeAt(text: string, start: number): Node {
  const from = after(SPACE, text, start);
  if (text[from] === '[') {
    const items: Node[] = [];
    const to = list(text, from, ']', (at) => {
      const node = nodeAt(text, at);
      items.push(node);
      return node.to;
    });
    return { value: items.map(({ value }) => value), from, to, items };
  }
  if (text[from] === '{') {
    const members: Member[] = [];
    const to = list(text, from, '}', (at) => {
      const nameEnd = after(SCALAR, text, at);
      const node = nodeAt(text, after(SPACE, text, nameEnd) + 1);
      members.push({ name: JSON.parse(text.slice(at, nameEnd)) as string, from: at, node });
      return node.to;
    });
    return { value: Object.fromEntries(members.map(({ name, node }) => [name, node.value])), from, to, members };
  }
  const to = after(SCALAR, text, from);
  return { value: JSON.parse(text.slice(from, to)) as Json, from, to };
}

/** @param read reads one thing at a place and says where it ends @returns where the list ends */
function list(text: string, from: number, end: string, read: (at: number) => number): number {
  let at = after(SPACE, text, from + 1);
  while (text[at] !== end) {
    at = after(SPACE, text, read(at));
    if (text[at] === ',') at = after(SPACE, text, at + 1);
  }
  return at + 1;
}

const isSame = (a: Json, b: Json): boolean => {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return Object.is(a, b);
  if (Array.isArray(a) || Array.isArray(b)) {
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((one, i) => isSame(one, b[i]!));
  }
  const names = Object.keys(a);
  return (
    names.length === Object.keys(b).length &&
    names.every((name) => Object.hasOwn(b, name) && isSame(a[name]!, b[name]!))
  );
};

function written(text: string, node: Node, data: Json): string {
  const { from, to, value, items, members } = node;
  if (isSame(value, data)) return text.slice(from, to);
  if (items && Array.isArray(data) && data.length === items.length) {
    return patched(
      text,
      node,
      items.map((item, i) => ({ node: item, text: written(text, item, data[i]!) })),
    );
  }
  if (!members || typeof data !== 'object' || data === null || Array.isArray(data)) return JSON.stringify(data);
  const kept = members.filter(({ name }) => Object.hasOwn(data, name));
  if (kept.length < members.length || new Set(members.map(({ name }) => name)).size < members.length) {
    return JSON.stringify(data);
  }
  const body = patched(
    text,
    node,
    kept.map(({ name, node: one }) => ({ node: one, text: written(text, one, data[name]!) })),
  );
  const added = Object.entries(data).filter(([name]) => !kept.some((member) => member.name === name));
  if (added.length === 0) return body;
  return withAdded(text, node, kept, body, added);
}

/** The text of a node with those in it written anew. */
function patched(text: string, { from, to }: Node, parts: readonly { node: Node; text: string }[]): string {
  let out = '';
  let at = from;
  for (const part of parts) {
    out += text.slice(at, part.node.from) + part.text;
    at = part.node.to;
  }
  return out + text.slice(at, to);
}

/** Members that were not there, behind the last, spaced as that is. */
function withAdded(
  text: string,
  node: Node,
  members: readonly Member[],
  body: string,
  added: [string, Json][],
): string {
  const last = members.at(-1);
  const before = members.at(-2);
  const between = last && before ? text.slice(before.node.to, last.from) : ', ';
  const end = last ? node.to - last.node.to : node.to - node.from - 1;
  const rows = added.map(([name, value]) => `${JSON.stringify(name)}: ${JSON.stringify(value)}`).join(between);
  return `${body.slice(0, body.length - end)}${last ? between : ''}${rows}${body.slice(body.length - end)}`;
}
