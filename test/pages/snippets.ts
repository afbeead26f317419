import { readdirSync, readFileSync } from 'node:fs';

const top = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, top), 'utf8');

export interface Snippet {
  /** Where it is printed. */
  name: string;
  html: string;
}

const among = (folder: string, ending: string) =>
  readdirSync(new URL(folder, top), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending))
    .map((file) => `${folder}${file}`)
    .sort();

const unescaped = (text: string) =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** Every piece of HTML with an element in it that anybody is told to copy, from the built pages and from what is written in Markdown. */
export function printedSnippets(): Snippet[] {
  const listed = (file: string, pattern: RegExp) =>
    [...read(file).matchAll(pattern)].map(([, text], i) => ({ name: `${file}, ${i + 1}`, html: text! }));
  const inPages = among('dist/site/', '.html')
    .flatMap((file) => listed(file, /<pre[^>]*><code>([\s\S]*?)<\/code>/g))
    .map(({ name, html }) => ({ name, html: unescaped(html) }));
  const inMarkdown = [
    'README.md',
    'DEVELOPERS.md',
    ...['components/', 'core/', 'site/'].flatMap((one) => among(one, '.md')),
  ];
  const fenced = inMarkdown.flatMap((file) => listed(file, /```html\n([\s\S]*?)\n```/g));
  return [...inPages, ...fenced].filter(({ html }) => /<\/bumpline-/.test(html));
}

/** The same with the standalone file where it is served; `script` alone where a snippet leaves it to the one before. */
export const withFile = (html: string, address: string): string =>
  html.replace(/https:\/\/[\w.-]+\.example\/bumpline-standalone\.js/, address);
