const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text on one line, as people read it: a blank line would end a block of HTML in Markdown. */
const onOneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** A text as it may stand between tags, or between the quotes of an attribute. */
export const escaped = (text: string): string => onOneLine(text).replace(/[&<>"']/g, (mark) => ENTITIES[mark]!);

/** ` name="value"` for each; of one without a value, its name alone. */
export const attributesText = (attributes: Readonly<Record<string, string>>): string =>
  Object.entries(attributes)
    .map(([name, value]) => (value === '' ? ` ${name}` : ` ${name}="${escaped(value)}"`))
    .join('');

/** Data as they may stand in a script of a page: nothing in them ends it, or begins a comment there. */
export const scriptJson = (data: unknown): string => JSON.stringify(data).replaceAll('<', '\\u003c');
