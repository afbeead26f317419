import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Policy, startHosts } from '../hosts/host-server.js';
import { askedEngine, type Engine } from './engines.mjs';

interface Check {
  name: string;
  ok: boolean;
}

let engine: Engine;
let hosts: Awaited<ReturnType<typeof startHosts>>;
beforeAll(async () => {
  [engine, hosts] = await Promise.all([askedEngine(), startHosts()]);
});
afterAll(() => Promise.all([engine?.close(), hosts?.close()]));

const WIDE = { width: 1000, height: 800 };
const NARROW = { width: 360, height: 740 };

it.each<[what: string, policy: Policy, page: string, size: typeof WIDE]>([
  ['the standalone file and its hash', 'open', 'plain', WIDE],
  ['the same in a narrow window', 'open', 'plain', NARROW],
  ['the snippet as the page for authors gives it', 'open', 'snippet', WIDE],
  ['a policy that allows neither inline styles nor blob workers', 'strict', 'strict', WIDE],
  ['a policy that allows blob workers and no evaluation', 'inline', 'layers', WIDE],
  ['a policy on script addresses (Trusted Types)', 'trusted-types', 'plain', WIDE],
  ['the same with the small entry', 'trusted-types', 'entry', WIDE],
  ['isolation from other origins', 'isolated', 'plain', WIDE],
  ['hostile styles and a narrow column', 'open', 'hostile', NARROW],
  ['the script twice, and the small entry besides', 'open', 'twice', WIDE],
  ['the small entry, whose parts are checked by hash', 'open', 'entry', WIDE],
])('a page of somebody else with %s: right answer, where it should be computed, no error', async (_what, ...how) => {
  const [policy, name, size] = how;
  const page = await engine.page(size);
  await page.goto(hosts.address(policy, name));
  const checks = await page.evaluate(async () => {
    const found = () => (window as { result?: { checks: Check[] } }).result?.checks;
    for (let i = 0; i < 600 && !found(); i++) await new Promise((resolve) => setTimeout(resolve, 50));
    return found() ?? [];
  });
  await page.done();
  expect(checks.length).toBeGreaterThan(0);
  expect(checks.filter(({ ok }) => !ok)).toEqual([]);
});
