import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { CAUTIONS } from '../../components/element/cautions.js';
import { tried } from '../../core/answers/from-source.js';
import { predictSteps } from '../../core/answers/predict.js';
import { EMPTY_CAR } from '../../core/document/car.js';
import { learntSourceOf } from '../../core/document/learnt-in-use.js';
import { EXAMPLE_PARTS } from '../../core/document/linked-sets.js';
import { predictInUse } from '../../core/document/predict-in-use.js';
import { finished } from '../../core/math/finished.js';
import { DEFAULT_DOUBTS } from '../../core/readings/doubts.js';
import { listedPages } from '../../site/partials/listed.js';
import { browser as findBrowser } from '../browser.mjs';
import { STATED } from '../core/learn/cells.js';
import { rootMeanSquare, rowsOf, SHIFT_OF_JOINT, study } from '../core/learn/coverage.js';
import { PARTS as STUDIED_PARTS } from '../core/learn/study.js';
import { serve } from '../serve.mjs';
import { picturesOf } from './pictures-of.js';
import { EXAGGERATED, GAUGE_DEG, predictPictures } from './predict-pictures.js';
import { madePages, page, tableRows, textOf, wordsRead } from './site-source.js';
import { AT, STUDIED_PLAIN, STUDIED_ROWS, WAYS } from './studied-predict.js';
import {
  ALLOWANCES,
  DROP,
  differences,
  figureOf,
  JOINT_MM,
  learnt,
  OVER,
  type Parts,
  plusMinusOf,
  SHIFT,
  shifted,
  shiftPerMm,
  stock,
  WRONG_MM,
} from './worked-predict.js';

/*
 * The picture of the page on predicting parts, what it says in words, and its figures once more by core/. The figures themselves:
 * worked-predict.ts, by references that share nothing with core/; those of the study: studied-predict.ts.
 */

const PATH = 'measure-once-predict-the-rest/';
const html = page(`${PATH}index.html`);
const made = madePages().find(({ path }) => path === `${PATH}index.html`)!.html;
const spaced = (markup: string) => textOf(markup).replace(/[\s\u00a0]+/g, ' ');
const text = spaced(html);

/** The built page on a phone. */
async function onPage(look: (opened: Page) => Promise<void>): Promise<void> {
  const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
  const [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
  try {
    const opened = await browser.newPage({ viewport: { width: 360, height: 780 } });
    await opened.goto(`${site.origin}/${PATH}`);
    await look(opened);
  } finally {
    await Promise.all([browser.close(), site.close()]);
  }
}

describe('the picture', () => {
  const { expectDrawn, labels } = picturesOf(html);
  const farthest = (name: 'together' | 'apart', parts: Parts) => Math.max(...differences(name, parts).map(Math.abs));

  test('both corners are drawn with what is wrong enlarged as the caption says, and their curves by the second solver', () => {
    expectDrawn('sums', predictPictures());
    expect(text).toContain(`errors drawn ${EXAGGERATED} times further`);
    expect(text).toContain(`Band: ± ${GAUGE_DEG.toFixed(2)}°`);
    // High at both ends in one drawing, high and low in the other.
    const ends = labels('sums').filter((label) => / (?:high|low)$/.test(label));
    expect(ends).toEqual([`${WRONG_MM} mm high`, `${WRONG_MM} mm high`, `${WRONG_MM} mm low`]);
  });

  test('what a gauge cannot see of the one does not matter with the joint either; of the other it sees both', () => {
    for (const parts of ['stock', 'corrected'] as const) {
      expect(farthest('together', parts)).toBeLessThan(GAUGE_DEG / 4);
      expect(farthest('apart', parts)).toBeGreaterThan(4 * GAUGE_DEG);
    }
    expect(text).toContain(`taped ${WRONG_MM} mm too high as a whole`);
    expect(text).toContain(`inner ends are ${WRONG_MM} mm too high and their outer ends ${WRONG_MM} mm too low`);
  });
});

describe('the core predicts the same', () => {
  const source = learntSourceOf(predictInUse(EMPTY_CAR).car)!;
  const answer = (parts: Parts, quantity: 'camber' | 'toe' = 'camber') => {
    const of = { stock: [], corrected: EXAMPLE_PARTS[0]!.parts!, leftAlone: EXAMPLE_PARTS[1]!.parts! }[parts];
    return finished(predictSteps(tried({ source, parts: of, drop: DROP, over: OVER, quantity })));
  };

  test('allowances are those of the element', () => {
    expect(DEFAULT_DOUBTS).toEqual(ALLOWANCES);
  });

  test.each(['stock', 'corrected', 'leftAlone'] as const)('%s: change, its ± and that of the tape', (parts) => {
    const { predicted, byTape } = answer(parts);
    // Its nuisances follow the curve through the readings, the second computation's that of the links.
    expect(Math.abs(predicted.value - figureOf(parts, 'camber'))).toBeLessThan(0.002);
    expect(predicted.plusMinus! / plusMinusOf(parts, 'camber', 'learnt')).toBeCloseTo(1, 1);
    expect(byTape.value).toBeCloseTo(figureOf(parts, 'camber', stock), 6);
    expect(byTape.plusMinus! / plusMinusOf(parts, 'camber', 'tape')).toBeCloseTo(1, 3);
  });

  test('roll centre and toe, which camber readings hardly narrow', () => {
    const { rollCentre } = answer('corrected');
    expect(rollCentre!.plusMinus! / plusMinusOf('corrected', 'rollCentre', 'learnt')).toBeCloseTo(1, 1);
    expect(answer('corrected', 'toe').predicted.plusMinus! / plusMinusOf('corrected', 'toe', 'learnt')).toBeCloseTo(
      1,
      1,
    );
    for (const figure of ['rollCentre', 'toe'] as const)
      expect(plusMinusOf('corrected', figure, 'learnt')).toBeGreaterThan(
        0.8 * plusMinusOf('corrected', figure, 'tape'),
      );
  });

  test('no single further measurement narrows the example’s answer by a tenth, as the page says', () => {
    const { next } = answer('corrected');
    expect(next.length).toBeGreaterThan(0);
    // Of hard points there is no field for the rod's length, or for caster.
    for (const { id, left } of next.filter(({ id }) => id !== 'rodLength' && id !== 'caster'))
      expect(left, id).toBeGreaterThan(0.9);
    expect(text).toContain('On the example no single further measurement would narrow it by much.');
  });

  test('readings leave the points where they cannot be told: each within its own ±', () => {
    const { covariance, before } = learnt();
    for (let j = 0; j < before.rows; j++)
      expect(covariance.get(j, j)).toBeLessThanOrEqual(before.get(j, j) * (1 + 1e-9));
  });
});

describe('what the page says in words', () => {
  test('the joint shifts the stock curve by 1.1 times its height, with its rod; without it nothing of the kind', () => {
    expect(SHIFT).toBe(SHIFT_OF_JOINT * JOINT_MM);
    expect(shiftPerMm()).toBeCloseTo(SHIFT_OF_JOINT, 1);
    expect(Math.abs(shifted() - figureOf('corrected', 'camber'))).toBeLessThan(0.02);
    expect(Math.abs(shifted() - figureOf('leftAlone', 'camber'))).toBeGreaterThan(0.1);
  });

  test('its usual errors are those of the element', () => {
    expect(text).toContain(
      `The usual errors are ${ALLOWANCES.gaugeScale} % in the scales of gauge and tape, ${ALLOWANCES.zeroHeight} mm in the height called zero and ${ALLOWANCES.drift}° of drift in a pass.`,
    );
  });

  test('figures of the study are said to be of invented cars, the example to be invented', () => {
    for (const caption of [...html.matchAll(/<caption[^>]*>([\s\S]*?)<\/caption>/g)].map(([, one]) => textOf(one!)))
      expect(caption).toMatch(/Invented/);
    expect(text).toContain('study of invented cars');
    expect(text).toContain('the example car, its readings and all cars of the study');
  });

  test('tables have every row', () => {
    const tables = [...html.matchAll(/<table>[\s\S]*?<\/table>/g)].map(([table]) => tableRows(table));
    expect(tables.map((rows) => rows.length)).toEqual([3, WAYS.length]);
    for (const rows of tables) expect(new Set(rows.map(({ cells }) => cells.length)).size).toBe(1);
  });

  test('says what cannot be known, and what is not modelled', () => {
    for (const part of [
      'drift common to all passes',
      'The part’s own amount',
      'The tie rod, and most of the roll centre',
      '(compliance) are not modelled',
    ])
      expect(text).toContain(part);
    expect(text).toContain('Measure how far it moves the ball’s centre');
  });

  test('its first sentence is the element’s, of the example', () => {
    const answer = /<p class="answer">([\s\S]*?)<\/p>/.exec(made)![1]!;
    expect(spaced(answer)).toContain('over 40 mm of bump: camber −0.47°');
    expect(spaced(answer)).toContain('the tape alone would have said');
  });

  test('what it says of the next measurement is called as in the element, which says the same of the example', async () => {
    await onPage(async (opened) => {
      const next = opened.locator('bumpline-predict .next');
      await next.getByText('No single further measurement would narrow this by much.').waitFor();
      const title = (await next.locator('.section-title').textContent())!.trim();
      expect(text).toContain(`under ${title}, with the ± that it would bring your answer to`);
    });
  });

  test('a reader scrolls through at most 1200 words, pictures, contents and what is folded away not counted', () => {
    expect(wordsRead(html)).toBeLessThanOrEqual(1200);
  });
});

describe('the study', () => {
  const cells = STATED.filter(({ cars }) => cars === 'strut, rack behind');
  const CARS = 12;

  test.each(WAYS.map((way, c) => [way, c] as const))('%s: a few of its cars say the same', (way, c) => {
    const cell = { ...cells[c]!, parts: { joint: STUDIED_PARTS.joint! } };
    const { outcomes, baseline } = study(cell, { seed: 7 + c, cars: CARS });
    for (const mm of AT) {
      const row = rowsOf(outcomes).find((one) => one.mm === mm)!;
      const studied = STUDIED_ROWS[way][mm];
      // Medians of so few cars stray by as much.
      expect(row.plusMinus / studied.learnt, `${mm} mm`).toBeGreaterThan(0.8);
      expect(row.plusMinus / studied.learnt, `${mm} mm`).toBeLessThan(1.25);
      expect(row.before / studied.tape, `${mm} mm`).toBeGreaterThan(0.75);
      expect(row.before / studied.tape, `${mm} mm`).toBeLessThan(1.35);
    }
    // Root mean squares of few cars stray further.
    const plain = rootMeanSquare(baseline.filter(({ mm }) => mm === 25).map(({ error }) => error));
    expect(plain / STUDIED_PLAIN[way].plain).toBeGreaterThan(0.5);
    expect(plain / STUDIED_PLAIN[way].plain).toBeLessThan(1.7);
  });

  test('over 50 mm every ± is about twice as wide', () => {
    for (const way of WAYS) {
      const { 25: near, 50: far } = STUDIED_ROWS[way];
      expect(far.learnt / near.learnt, way).toBeCloseTo(2, 0);
      expect(far.tape / near.tape, way).toBeCloseTo(2, 0);
    }
    expect(text).toContain('Over 50 mm every ± of the study is about twice as wide');
  });

  test('the page has the shares that the bench printed', () => {
    for (const way of WAYS)
      expect(html).toContain(
        `data-name="study-predict-covered-${way}-25" value="${STUDIED_ROWS[way][25].covered.toFixed(1)}"`,
      );
  });

  test('figures are such as the bench throws without', () => {
    expect(STUDIED_ROWS.exact[25].narrower).toBeGreaterThan(5);
    expect(STUDIED_ROWS.upwards[25].narrower).toBeGreaterThan(3.3);
    expect(STUDIED_ROWS.alternating[25].narrower).toBeGreaterThan(5);
    for (const way of WAYS) expect(STUDIED_PLAIN[way].plain).toBeGreaterThan(STUDIED_PLAIN[way].links);
  });
});

test('its caution has the element’s sentence on springs, and leads to the page on safety', () => {
  const blocks = [...html.matchAll(/<div class="caution">([\s\S]*?)<\/div>/g)].map(([, one]) => one!);
  expect(blocks).toHaveLength(1);
  expect(spaced(blocks[0]!)).toContain(CAUTIONS.spring);
  expect(blocks[0]).toContain('href="../working-safely/#through-its-travel"');
  expect(html).toContain('href="../working-safely/#parts"');
});

test('the cautions of measuring and of the parts asked about stand in the element, open, once on the page', async () => {
  await onPage(async (opened) => {
    for (const id of ['stands', 'springOut', 'carried', 'lowJoint', 'rules'] as const) {
      const said = opened.getByText(CAUTIONS[id], { exact: true });
      await said.first().waitFor({ state: 'visible' });
      expect(await said.count(), id).toBe(1);
    }
  });
});

describe('the order of reading', () => {
  test('it comes after the page on measuring', () => {
    const paths = listedPages().map(({ path }) => path);
    expect(paths[paths.indexOf(PATH) - 1]).toBe('measure-your-own-camber-curve/');
  });

  test.each(['measure-your-own-camber-curve/', 'what-a-lower-ball-joint-does/', 'height-or-part/'])(
    '%s leads there and back',
    (other) => {
      expect(page(`${other}index.html`)).toContain(`href="../${PATH}"`);
      expect(html).toContain(`href="../${other}`);
    },
  );

  test('a question of the home page leads there, from the list and from its drawing', () => {
    expect(page('index.html').match(new RegExp(`href="${PATH}"`, 'g'))).toHaveLength(2);
  });
});
