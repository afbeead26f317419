/**
 * What a built project must do in a browser. Each has on its page the same: what the README shows (a button that lowers the car by
 * 10 mm, an element, and the number of its answer), and below it elements that share a car.
 */
import { serve } from '../serve.mjs';

const FIRST = 'bumpline-lowering:not(#one)';

/** In the page: the first element and what stands on the page of its answer. */
const seen = (selector) => {
  const element = document.querySelector(selector);
  return {
    drop: Number(element.drop),
    bumpTravel: Number(element.bumpTravel),
    answered: element.answer?.change.value.toFixed(2),
    said: document.querySelector('output').textContent,
  };
};

/**
 * @param {string} folder of the built project
 * @param {import('playwright-core').Browser} browser
 * @returns {Promise<{ name: string, wrong: string[] }[]>}
 */
export async function openedChecks(folder, browser) {
  const server = await serve({ folders: { '/': `${folder}/` } });
  const page = await browser.newPage({ viewport: { width: 1000, height: 800 } });
  const told = [];
  page.on('pageerror', (error) => told.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') told.push(message.text());
  });
  const results = [];
  const check = (name, seen, isRight) =>
    results.push({ name, wrong: isRight(seen) ? [] : [`It is ${JSON.stringify(seen)}.`] });
  try {
    await page.goto(`${server.origin}/`);
    const settle = () =>
      page.evaluate(() => Promise.all([...document.querySelectorAll('[id], *')].map(({ settled }) => settled)));
    await settle();
    await page.waitForFunction(() => document.querySelector('output').textContent !== '', undefined, {
      timeout: 30_000,
    });
    const first = await page.evaluate(seen, FIRST);
    check('the element has the properties that it was given', first, (now) => now.drop === 30 && now.bumpTravel === 62);
    check('the page hears the number of the answer', first, (now) => now.said === now.answered && Number(now.said) < 0);

    await page.getByRole('button', { name: '10 mm lower' }).click();
    await page.waitForFunction((said) => document.querySelector('output').textContent !== said, first.said);
    await settle();
    const next = await page.evaluate(seen, FIRST);
    check('a new drop is answered, and the page hears it', next, (now) => now.drop === 40 && now.said === now.answered);
    check('that is another number', next, (now) => Number(now.said) < Number(first.said));

    const shared = await page.evaluate(() => {
      const [one, clearance, geometry, toe] = ['#one', 'bumpline-clearance', 'bumpline-geometry', 'bumpline-toe'].map(
        (name) => document.querySelector(name),
      );
      return {
        referred: clearance.dataset.same,
        isOne: one.car !== undefined && one.car === clearance.car,
        shown: one.show,
        isWide: one.matches('.wide') && geometry.matches('.wide'),
        units: [geometry.units, geometry.angles],
        rows: toe.querySelectorAll('td').length,
        problems: [
          ...document.querySelectorAll('bumpline-lowering, bumpline-clearance, bumpline-geometry, bumpline-toe'),
        ]
          .flatMap(({ problems }) => problems)
          .map(({ code, path }) => `${code} ${path}`),
      };
    });
    check('a car given by property is shared', shared, (now) => now.referred === 'true' && now.isOne);
    check(
      'attributes arrive, those of HTML too',
      shared,
      (now) => now.isWide && now.shown === 'sentence' && now.units.join() === 'in,arcminutes',
    );
    check('a table inside stays, and is understood', shared, (now) => now.rows === 6 && now.problems.length === 0);
  } catch (error) {
    results.push({ name: 'the page works', wrong: [String(error)] });
  } finally {
    await page.close();
    await server.close();
  }
  results.push({ name: 'the console is quiet', wrong: told });
  return results;
}
