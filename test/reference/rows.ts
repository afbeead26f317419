import { readFileSync } from 'node:fs';

/** The rows of a table of this folder by their columns' names; lines that begin with # say where it comes from. */
export function rowsOf(file: string): Record<string, number>[] {
  const [heading, ...lines] = readFileSync(new URL(file, import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/)
    .filter((line) => !line.startsWith('#'));
  const names = heading!.split(',');
  const number = (cell: string) => (cell === 'inf' ? Number.POSITIVE_INFINITY : Number(cell));
  return lines.map((line) => Object.fromEntries(line.split(',').map((cell, i) => [names[i]!, number(cell)])));
}
