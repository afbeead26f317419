import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../../', import.meta.url));

/** What stopped readers, each with what is said in its place. */
const INSTEAD: readonly (readonly [RegExp, string])[] = [
  [/told from nothing/, 'too small to tell from zero'],
  [/not yours yet/i, 'example value; replace it with yours'],
  [/[Nn]obody has said/, 'has not been entered'],
  [/this rests on/, 'used'],
  [/by the evidence/, 'automatic'],
  [/[Ll]eft over, reading|is left over/, 'scatter around the curve'],
  [/\bDof\b/, 'readings to spare'],
  [/less is better/, 'lower is better'],
  [/\(u \$\{/, 'standard uncertainty'],
  [/shares of its square/, 'where the ± comes from'],
  [/from memory/, 'nothing: leave it out'],
  [/[Ss]tanding camber/, 'static camber'],
  [/rated points/, 'the car’s jacking points'],
  [/\bSlacken\b/, 'loosen'],
  [/\blath\b/, 'straight edge'],
  [/wheel carrier|\bupright (?:arm|leg)/, 'knuckle'],
  [/Take it from this phone/, 'use this phone’s tilt sensor'],
  [/How hard a bump/, 'bump load (× static)'],
  [/With how much the rod/, 'the force that pushes the rod out by itself'],
  [/± holds/, '± covers'],
  [/Bare links|bare links/, 'without parts'],
  [/'as it was'/, 'same bump from stock height'],
  [/cannot go so far|measured so far/, 'that far'],
  [/does not mind/, 'is not affected'],
  [/another curve than/, 'a different curve from'],
  [/no JSON|no corner:/, 'not JSON, not a corner'],
  [/>0\.00°</, 'degrees'],
  [/screw(?:ed)? down/, 'coilovers with a screw-adjusted lower body'],
];

/** Edited elsewhere: leaves this list with its own edit, and nothing joins it. */
const STILL = /bumpline-clearance\//;

const files = readdirSync(`${root}components`, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.(?:labels|words)\.ts$|(?:cautions|unit-tools)\.ts$/.test(file) && !STILL.test(file));

it.each(INSTEAD)('no word a reader meets is %s: it is “%s”', (phrase) => {
  const found = files.flatMap((file) =>
    readFileSync(`${root}components/${file}`, 'utf8')
      .split('\n')
      .flatMap((line, i) =>
        phrase.test(line) && !/^\s*(?:\/?\*|\/\/)/.test(line) ? [`${file}:${i + 1} ${line.trim()}`] : [],
      ),
  );
  expect(found).toEqual([]);
});
