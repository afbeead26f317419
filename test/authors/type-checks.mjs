/**
 * What the type checker of a project must say: all that an author writes passes, and each mistake of `src/wrong.*` is an error, marked
 * by `-expect-error` above it, or, where markup knows no such mark, by standing on a line of its own with an element.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const UNUSED_MARK = /Unused '@(?:ts|vue)-expect-error' directive/;

/** The lines of the mistakes that nothing marks: of Svelte's. */
const unmarkedLines = (file, text) =>
  file.endsWith('.svelte') ? text.split('\n').flatMap((line, i) => (line.startsWith('<bumpline-') ? [i + 1] : [])) : [];

/** An error begins with the file and the line, in either of the ways that checkers write it. */
const errorsIn = (said) =>
  said.split(/^(?=.*?src\/[\w.-]+[:(]\d+[:,]\d+)/m).flatMap((text) => {
    const [, file, line] = /src\/([\w.-]+)[:(](\d+)[:,]\d+/.exec(text) ?? [];
    return file ? [{ file, line: Number(line), text: text.trim() }] : [];
  });

/**
 * @param {string} project
 * @param {{ ended: boolean, said: string }} checked
 * @returns {{ name: string, wrong: string[] }[]}
 */
export function typeChecks(project, { ended, said }) {
  const file = readdirSync(join(project, 'src')).find((name) => /^wrong\./i.test(name));
  const text = readFileSync(join(project, 'src', file), 'utf8');
  const unmarked = unmarkedLines(file, text);
  const count = unmarked.length + (text.match(/@(?:ts|vue)-expect-error/g) ?? []).length;
  const errors = errorsIn(said);
  const isOfMistake = (error) => error.file === file && unmarked.includes(error.line);
  const isMissed = (error) => UNUSED_MARK.test(error.text);
  const others = errors.filter((error) => !isMissed(error) && !isOfMistake(error)).map((error) => error.text);
  const isExplained = ended || errors.length > 0;
  const missed = unmarked.filter((line) => !errors.some((error) => error.file === file && error.line === line));
  return [
    { name: 'what an author writes has its types', wrong: isExplained ? others : [said.trim()] },
    {
      name: `each of ${count} mistakes is an error of types`,
      wrong: [
        ...errors.filter(isMissed).map((error) => error.text),
        ...missed.map((line) => `src/${file}:${line} passes`),
        ...(count < 8 ? ['There are too few.'] : []),
      ],
    },
  ];
}
