import { readFileSync } from 'node:fs';

/* Pieces of pages, in the files beside this one. */

/** A text as it stands in markup, in an attribute too. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (found) => `&#${found.charCodeAt(0)};`);

/** A partial with its {{names}} filled in. @throws {Error} where a name has no value */
export const filled = (partial: string, values: Record<string, string>): string =>
  readFileSync(new URL(`${partial}.html`, import.meta.url), 'utf8')
    .trimEnd()
    .replace(/\{\{(\w+)\}\}/g, (_, name: string) => {
      const value = values[name];
      if (value === undefined)
        throw new Error(`site/partials/${partial}.html asks for {{${name}}}, which no page has.`);
      return value;
    });
