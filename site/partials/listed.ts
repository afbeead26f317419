import { readFileSync } from 'node:fs';
import { references } from './reference/list.js';

/** A row of site/pages.json, text as plain text. */
export interface Page {
  /** Below site/, with a slash at its end; '' is the start page. */
  path: string;
  kind: 'home' | 'article' | 'guide' | 'reading' | 'reference' | 'card';
  /** In the navigation; the start page is there by its name. */
  link?: string;
  /** Led to by another article: on a phone, where five names fit in a line, that is enough. */
  fromArticle?: true;
  title: string;
  description: string;
  /** Its own script, below site/ and without its ending, in place of that of its kind. */
  script?: string;
  /** Its name in the title block, where that is not the title. */
  sheet?: string;
  units?: string;
  /** What is positive, where a page does not keep to ISO 8855 alone. */
  signs?: string;
}

/**
 * Every page of the site: the rows of site/pages.json, and one for each element.
 *
 * @throws {SyntaxError} where the list is no JSON
 */
export const listedPages = (): Page[] => [
  ...JSON.parse(readFileSync(new URL('../pages.json', import.meta.url), 'utf8')),
  ...references.map(({ tag, path }) => ({
    path,
    kind: 'reference' as const,
    title: `${tag}: reference for authors`,
    description: `Every attribute, property and event of the HTML element ${tag}, with units, limits and defaults, the data it reads, and an example to copy.`,
    sheet: tag,
  })),
];
