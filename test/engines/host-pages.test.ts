import { afterAll, beforeAll, expect, it } from 'vitest';
import { HOST_PAGES, startHosts } from '../hosts/host-server.js';
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

const SIZES = { wide: { width: 1000, height: 800 }, narrow: { width: 360, height: 740 } };

it.each(HOST_PAGES)(
  'a page of somebody else with %s: right answer, where it should be computed, no error',
  async (_what, ...how) => {
    const [policy, name, width] = how;
    const page = await engine.page(SIZES[width]);
    await page.goto(hosts.address(policy, name));
    const checks = await page.evaluate(async () => {
      const found = () => (window as { result?: { checks: Check[] } }).result?.checks;
      for (let i = 0; i < 600 && !found(); i++) await new Promise((resolve) => setTimeout(resolve, 50));
      return found() ?? [];
    });
    await page.done();
    expect(checks.length).toBeGreaterThan(0);
    expect(checks.filter(({ ok }) => !ok)).toEqual([]);
  },
);
