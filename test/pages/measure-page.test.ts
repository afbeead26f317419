import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { curveFrom } from '../../core/curve/check-curve-data.js';
import { fitCurve } from '../../core/curve/fit.js';
import { EMPTY_CAR } from '../../core/document/car.js';
import { carToLink } from '../../core/document/link.js';
import { METRIC } from '../../core/quantity/units.js';
import { EXAMPLE_READINGS } from '../../core/readings/example-readings.js';
import { understand } from '../../core/readings/table/understand.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { browser as findBrowser } from '../browser.mjs';
import { independentRegression, type RegressionReading } from '../reference/independent-regression.js';
import { serve } from '../serve.mjs';
import { inside, textOf, wordsRead } from './site-source.js';
import {
  DEGREE,
  fit,
  HALF_PASS,
  heightMeans,
  measurePage,
  plusMinus,
  readings,
  repeatability,
  studentT95,
} from './worked-readings.js';

/*
 * The page on readings: its table, its drawings, and how it stands with and without scripts. What its numbers should be comes from
 * ml-matrix by way of worked-readings.ts, which shares no code with core/.
 */

const table = inside(measurePage, 'table', 'data-example');

describe('the readings of the page', () => {
  test('are exactly the built-in example’s, pass by pass as they were taken', () => {
    expect(readings).toEqual(EXAMPLE_READINGS);
  });

  test('are read from the table by core’s own reader, without a question or a problem', () => {
    const rows = [...table.matchAll(/<tr\b[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row]) =>
      [...row!.matchAll(/<t[hd]\b[^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => textOf(cell!)),
    );
    const {
      questions,
      problems,
      readings: understood,
    } = understand(rows, {
      quantity: 'camber',
      units: METRIC,
      language: 'en',
    });
    expect({ questions, problems }).toEqual({ questions: [], problems: [] });
    const sorted = (of: readonly { travel: number; value: number; going?: string }[]) =>
      of.map(({ travel, value, going }) => `${travel} ${value} ${going}`).sort();
    expect(sorted(understood)).toEqual(sorted(EXAMPLE_READINGS));
  });

  test('say the same to machines as to people in every cell', () => {
    const cells = [...table.matchAll(/<data value="([^"]*)">([^<]*)<\/data>/g)];
    expect(cells).toHaveLength(readings.length);
    for (const [, value, shown] of cells) expect(Number(value)).toBe(Number(shown!.replace('−', '-')));
  });

  test('are called invented, and so is the wheel of the two short passes', () => {
    expect(textOf(inside(table, 'caption'))).toContain('Invented example');
    const short = measurePage.slice(measurePage.indexOf('id="half-title"'));
    expect(textOf(inside(short, 'figcaption'))).toContain('An invented wheel gains exactly 0.15° every 10\u00a0mm.');
  });
});

describe('fitCurve on the page’s readings', () => {
  const built = fitCurve(readings);

  test('chooses the degree that the page speaks of', () => {
    expect(built.degree).toBe(DEGREE);
  });

  test('gives the independent regression’s fit, offsets and candidates', () => {
    expect(built.dof).toBe(fit.dof);
    expect(built.residualSd).toBeCloseTo(fit.residualSd, 10);
    expect(built.rSquared).toBeCloseTo(fit.rSquared, 10);
    for (const { pass, offset } of fit.passOffsets)
      expect(built.passOffsets.find((one) => one.pass === pass)!.offset, pass).toBeCloseTo(offset, 10);
    for (const { degree, residualSd } of built.candidates)
      expect(residualSd, `degree ${degree}`).toBeCloseTo(independentRegression(readings, degree, true).residualSd, 10);
  });

  test('gives its changes and their ± at every height', () => {
    const curve = curveFrom(built.curve);
    for (let travel = -35; travel <= 50; travel += 5) {
      const change = curve.changeEstimate(travel, 0);
      expect(change.value, `${travel} mm`).toBeCloseTo(fit.change(travel, 0).value, 10);
      expect(plusMinus95(change, built.curve.sources), `± at ${travel} mm`).toBeCloseTo(plusMinus(travel), 5);
    }
  });

  test('finds the repeatability that heights and passes alone give, to a thousandth of a degree', () => {
    expect(built.repeatability!.sd).toBeCloseTo(repeatability().sd, 3);
  });

  test('does as the page says with a pass that is not complete', () => {
    const change = (of: RegressionReading[]) => curveFrom(fitCurve(of, { degree: 1 }).curve).change(20, -20);
    for (const short of [HALF_PASS, heightMeans(HALF_PASS)])
      expect(change(short)).toBeCloseTo(independentRegression(short, 1).change(20, -20).value, 10);
  });
});

// Two-sided 95 % points of NIST/SEMATECH e-Handbook 1.3.6.7.2.
test.each([
  [1, 12.706],
  [10, 2.228],
  [30, 2.042],
])('Student’s t used here, %i degrees of freedom, is the handbook’s %f', (dof, t) => {
  expect(studentT95(dof)).toBeCloseTo(t, 3);
});

const figure = (id: string) => {
  const start = measurePage.lastIndexOf('<svg', measurePage.indexOf(`id="${id}"`));
  return measurePage.slice(start, measurePage.indexOf('</svg>', start));
};
const numbers = (text: string) => text.match(/-?[\d.]+/g)!.map(Number);

describe('drawings of the page', () => {
  const svg = figure('passes-title');
  const curve = /<path class="curve"[^>]*>/.exec(svg)![0];
  const attribute = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(curve)![1]!;
  const [perMm, perDegree] = numbers(attribute('data-scale')) as [number, number];
  const [originX, originY] = numbers(attribute('data-origin')) as [number, number];
  const x = (travel: number) => originX + perMm * travel;
  const y = (value: number) => originY + perDegree * value;

  test('each has a name that describes it', () => {
    const drawings = [...measurePage.matchAll(/<svg\b[^>]*role="img"[^>]*aria-labelledby="([^"]*)"/g)];
    expect(drawings).toHaveLength(2);
    for (const [, id] of drawings) {
      expect(textOf(inside(measurePage, 'title', `id="${id}"`)).length, id).toBeGreaterThan(60);
    }
  });

  test('the three passes are drawn where their readings are, to a tenth of a unit of the drawing', () => {
    const drawn = [...svg.matchAll(/<(path|circle) data-reading [^>]*>/g)].map(([mark, kind]) => {
      if (kind === 'circle') return numbers(/cx="([^"]*)" cy="([^"]*)"/.exec(mark)!.slice(1).join(' '));
      const [left, top, width, height] = numbers(/ d="([^"]*)"/.exec(mark)![1]!) as [number, number, number, number];
      // A cross begins at its upper left end, a plus at its left one.
      return [left + width / 2, /h8/.test(mark) ? top : top + height / 2];
    });
    const wanted = readings.map(({ travel, value }) => [x(travel), y(value)]);
    expect(drawn).toHaveLength(wanted.length);
    const near = ([a, b]: number[], [c, d]: number[]) => Math.hypot(a! - c!, b! - d!) < 0.11;
    for (const place of wanted)
      expect(
        drawn.some((mark) => near(mark!, place)),
        String(place),
      ).toBe(true);
  });

  test('the curve is the regression’s at the mean of the passes, to a tenth of a unit', () => {
    const drawn = numbers(/ d="([^"]*)"/.exec(curve)![1]!);
    const [from] = numbers(attribute('data-from')) as [number];
    const [step] = numbers(attribute('data-step')) as [number];
    // The mean of the passes' residuals about the shape is zero in each pass: that fixes its level.
    const level =
      readings.reduce((sum, { travel, value, pass }) => {
        const zero = fit.passOffsets.find((one) => one.pass === pass)!.offset;
        return sum + value - zero - fit.change(travel, 0).value;
      }, 0) / readings.length;
    for (let i = 0; i < drawn.length / 2; i++) {
      const travel = from + i * step;
      expect(Math.abs(drawn[2 * i]! - x(travel)), `x at ${travel}`).toBeLessThan(0.11);
      expect(Math.abs(drawn[2 * i + 1]! - y(level + fit.change(travel, 0).value)), `y at ${travel}`).toBeLessThan(0.11);
    }
    expect(from + (drawn.length / 2 - 1) * step, 'no further than it was measured').toBe(50);
  });
});

describe('the drawing of the two short passes', () => {
  const svg = figure('half-title');
  const at = ({ travel, value }: { travel: number; value: number }) => [172 + 6.4 * travel, -14 - 170 * value];
  const expectDrawn = (drawn: number[], wanted: number[]) => {
    expect(drawn).toHaveLength(wanted.length);
    for (const [i, one] of wanted.entries()) expect(Math.abs(drawn[i]! - one)).toBeLessThan(0.11);
  };

  test('has their readings where they are, and their plain mean through the means', () => {
    for (const [pass, marks] of [
      [
        'Pass 1',
        [...svg.matchAll(/<path data-reading [^>]* d="M(\S+) (\S+?)l6 6/g)].map(([, x, y]) => [+x! + 3, +y! + 3]),
      ],
      ['Pass 2', [...svg.matchAll(/<circle data-reading [^>]* cx="(\S+)" cy="(\S+)"/g)].map(([, x, y]) => [+x!, +y!])],
    ] as const)
      expectDrawn(marks.flat(), HALF_PASS.filter((one) => one.pass === pass).flatMap(at));
    expectDrawn(numbers(/data-means d="([^"]*)"/.exec(svg)![1]!), heightMeans(HALF_PASS).flatMap(at));
  });
});

test('a reader scrolls through at most 1,200 words, pictures, contents and what is folded away not counted', () => {
  expect(wordsRead(measurePage)).toBeLessThanOrEqual(1200);
});

describe('in a browser', () => {
  const PATH = 'measure-your-own-camber-curve/';
  let browser: Browser;
  let site: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
    [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
  });
  afterAll(() => Promise.all([browser?.close(), site?.close()]));

  async function open(options: BrowserContextOptions, hash = ''): Promise<Page> {
    const context = await browser.newContext({ viewport: { width: 360, height: 780 }, ...options });
    const page = await context.newPage();
    await page.goto(`${site.origin}/${PATH}${hash}`);
    return page;
  }

  it.each([
    [320, 'light'],
    [360, 'dark'],
    [1280, 'light'],
  ] as const)(
    'with scripts off at %i px, %s: sentence, table and drawings stand, nothing empty',
    async (width, colorScheme) => {
      const page = await open({ javaScriptEnabled: false, viewport: { width, height: 780 }, colorScheme });
      const element = page.locator('bumpline-readings');
      expect((await element.locator('.answer').textContent())!.replace(/\s+/g, ' ')).toMatch(
        /^From 49 readings in 3 passes: 25 mm of bump adds 0\.34° ± 0\.02° of negative camber; the gauge repeated within 0\.04°\.$/,
      );
      const box = async (selector: string) => (await page.locator(selector).first().boundingBox())!;
      const [whole, inner, caption] = [
        await box('bumpline-readings'),
        await box('bumpline-readings table'),
        await box('bumpline-readings caption'),
      ];
      expect(caption.height).toBeGreaterThan(10);
      expect(await element.locator('td data').filter({ visible: true }).count()).toBe(readings.length);
      expect(whole.y + whole.height - (inner.y + inner.height), 'room left empty below the table').toBeLessThan(20);
      for (const found of await page.locator('main table, .figure svg').all()) {
        const { x, width: wide, height } = (await found.boundingBox())!;
        expect(height).toBeGreaterThan(60);
        expect(x + wide).toBeLessThanOrEqual(width + 0.5);
      }
      await page.context().close();
    },
  );

  it('with scripts on says what the page says without, in the element’s own sentence', async () => {
    const page = await open({});
    const { says, change } = await page.evaluate(async () => {
      await customElements.whenDefined('bumpline-readings');
      const found = document.querySelector('bumpline-readings')!;
      await found.settled;
      return {
        says: found.shadowRoot!.querySelector('.sentence')!.textContent!,
        change: found.answer!.change!,
      };
    });
    const shown = says.replace(/[\s\u202f]+/g, ' ');
    for (const part of ['49 readings', '3 passes', '0.34° ± 0.02° of negative camber', 'repeated within 0.04°'])
      expect(shown).toContain(part);
    expect(change.value).toBeCloseTo(fit.change(25, 0).value, 10);
    expect(change.plusMinus).toBeCloseTo(plusMinus(25), 5);
    await page.context().close();
  });

  const GO_ON = 'See what lowering does on this curve';

  it('goes on to lowering with the reader’s readings, where the address carries some', async () => {
    // Invented: the example's readings, each difference half as large.
    const own = EXAMPLE_READINGS.map((reading) => ({ ...reading, value: reading.value / 2 }));
    const setup = { name: 'Mine', cornerName: 'Front left' as const, quantity: 'camber' as const, readings: own };
    const hash = `#${carToLink({ ...EMPTY_CAR, by: 'readings', provenance: { corner: { by: 'user' }, setups: { by: 'user' } }, drop: 25, setups: [setup] })}`;
    const page = await open({}, hash);
    await page.getByRole('link', { name: GO_ON }).click();
    await page.waitForURL('**/what-lowering-does-to-camber/**');
    const change = await page.evaluate(async () => {
      await customElements.whenDefined('bumpline-lowering');
      const found = document.querySelector('bumpline-lowering')!;
      await found.settled;
      return found.answer!.change;
    });
    expect(change.value).toBeCloseTo(independentRegression(own, DEGREE, true).change(25, 0).value, 9);
    await page.context().close();
  });

  it('goes on to lowering’s own example, where it carries none', async () => {
    const page = await open({});
    await page.getByRole('link', { name: GO_ON }).click();
    await page.waitForURL('**/what-lowering-does-to-camber/#lowering');
    await page.context().close();
  });
});
