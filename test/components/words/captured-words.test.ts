import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it, vi } from 'vitest';

const COMPONENTS = fileURLToPath(new URL('../../../components/', import.meta.url));
const CORE = fileURLToPath(new URL('../../../core/', import.meta.url));

const { taken } = vi.hoisted(() => ({ taken: new Set<string>() }));

/** Records that note the file in which a text of theirs is read. */
vi.mock('../../../core/quantity/words.js', () => {
  let depth = 0;
  const noting = (name: string, record: object): object =>
    new Proxy(record, {
      get(target, key) {
        const value: unknown = Reflect.get(target, key);
        if (typeof value === 'object' && value !== null) return noting(name, value);
        if (typeof value === 'string' && depth === 0) {
          const by = new Error().stack!.split('\n').filter((line) => !line.includes('/test/'));
          const lines = by.flatMap((line) => /(?:components|core)\/[^:)]+:\d+/.exec(line) ?? []);
          taken.add(`${name} ${String(key)}, by ${lines.join(', by ')}`);
        }
        return value;
      },
    });
  /** What is made anew in each language may read. */
  const worded = <T>(make: () => T): T => {
    depth++;
    try {
      return make();
    } finally {
      depth--;
    }
  };
  return { words: noting, worded, speak() {}, teach() {} };
});

const modulesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(
      (path) =>
        path.endsWith('.ts') &&
        !/\.d\.ts$|\.define\.ts$|^(?:define|delivery\/(?:register|checked-import))\.ts$|generated/.test(path),
    )
    .map((path) => folder + path);

it('no text is read when a module is: it would be kept in the language that was spoken then', async () => {
  const modules = [...modulesIn(CORE), ...modulesIn(COMPONENTS)].filter((path) => !/\/(?:worker)\//.test(path));
  const failed: string[] = [];
  for (const path of modules) await import(path).catch((error) => failed.push(`${path}: ${error}`));
  expect(failed.length).toBeLessThan(0.02 * modules.length);
  expect([...taken]).toEqual([]);
}, 120_000);
