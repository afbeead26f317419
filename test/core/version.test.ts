import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { VERSION } from '../../core/version.js';

it('the version in the code is the one in package.json', () => {
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  expect(VERSION).toBe(version);
});
