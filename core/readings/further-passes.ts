import type { Reading } from './reading.js';

/**
 * Readings to be added as passes of their own. Passes share a zero of the gauge by their name, so a name that the own ones bear, or
 * none, is replaced: `Pass 1` by the next number that is free, `morning` by `morning 2`.
 *
 * @returns the added readings alone, in their order
 */
export function furtherPasses(own: readonly Reading[], added: readonly Reading[]): Reading[] {
  const ownNames = new Set(own.map(({ pass }) => pass));
  const taken = new Set([...ownNames, ...added.map(({ pass }) => pass)]);
  const names = new Map<string | undefined, string>();
  for (const { pass } of added) {
    if (names.has(pass)) continue;
    let name = pass;
    if (name === undefined || ownNames.has(name)) {
      const stem = name?.replace(/ \d+$/, '') ?? 'Pass';
      let number = 1;
      do name = `${stem} ${++number}`;
      while (taken.has(name));
      taken.add(name);
    }
    names.set(pass, name);
  }
  return added.map((reading) => ({ ...reading, pass: names.get(reading.pass)! }));
}
