import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../core/document/example-driveway.js';
import { readPointRows } from '../../core/document/point-rows.js';
import { readCorner } from '../../core/document/read-corner.js';
import { METRIC } from '../../core/quantity/units.js';
import {
  type LeanedStrut,
  leanedStrutCamberChange,
  NOTHING_UNSEEN,
  type Unseen,
} from '../reference/independent-leaned-strut.js';
import {
  type IndependentCorner,
  independentCamberChange,
  independentReversal,
  independentStrutSweep,
} from '../reference/independent-strut.js';
import {
  cornerFromTable,
  inside,
  madePages,
  measurementsFromTable,
  page,
  tableRows,
  textOf,
  wordsRead,
} from './site-source.js';
import { workedStudy } from './studied-predict.js';
import { workedBump } from './worked-bump.js';
import { workedClearance } from './worked-clearance.js';
import { workedCompare } from './worked-compare.js';
import { workedJoints } from './worked-joints.js';
import { workedLowerJoint } from './worked-lower-joint.js';
import { workedPredict } from './worked-predict.js';
import { workedReadings } from './worked-readings.js';
import { workedSafety } from './worked-safety.js';
import { workedSprings } from './worked-springs.js';
import { workedToe } from './worked-toe.js';
import { workedTurn } from './worked-turn.js';
import { workedWays } from './worked-ways.js';

/*
 * Every number that the pages work out stands in <data value="…" data-name="…">. Each is recomputed here from the hard points in
 * the page's own table, by test/reference/independent-strut.ts, which shares nothing with core/. What that file does not give is
 * derived below from its positions: roll centre and angles in front view by plane geometry, ± by central differences.
 *
 * What the page says of six measurements with a tape is recomputed from its table of them, by
 * test/reference/independent-leaned-strut.ts, which shares nothing with core/ either. Numbers of the page on readings: worked-readings.ts.
 */

const ARTICLE = 'what-lowering-does-to-camber/index.html';
const AUTHORS = 'put-it-in-your-article/index.html';
const TAPE_CARD = 'cards/tape/index.html';
const article = page(ARTICLE);
const authors = page(AUTHORS);
const tapeCard = page(TAPE_CARD);
const exampleTable = inside(article, 'table', 'data-example(?!=)');
const measuredTable = inside(article, 'table', 'data-example="measurements"');
const measured = measurementsFromTable(measuredTable);
const { corner, plusMinus } = cornerFromTable(exampleTable);
const bumpTravel = Number(/<bumpline-lowering id="lowering"[^>]* bump-travel="(\d+)"/.exec(article)![1]);
const specimen = cornerFromTable(inside(inside(authors, 'bumpline-lowering', 'id="specimen"'), 'table')).corner;

const at = (travel: number, of = corner) => independentStrutSweep(of, [travel])[0]!;
const change = (travel: number, of = corner) => independentCamberChange(of, travel);
const reversal = (of = corner) => independentReversal(of)!;

/**
 * Height of the roll centre above the ground for symmetric heave: the contact point moves square to its line to the instant
 * centre, and that line cuts the centre plane at y · dy/dz above the contact point.
 */
function rollCentre(travel: number): number {
  const [below, here, above] = independentStrutSweep(corner, [travel - 0.05, travel, travel + 0.05]).map(
    ({ contact }) => contact,
  );
  return (here![1] * (above![1] - below![1])) / (above![2] - below![2]);
}

/** Angle in front view between the lower arm and the damper, degrees. */
function frontViewAngle(travel: number): number {
  const pose = at(travel);
  const { front, rear, ball } = corner.lowerArm;
  const share = (ball[0] - front[0]) / (rear[0] - front[0]);
  const armY = pose.ball[1] - (front[1] + share * (rear[1] - front[1]));
  const armZ = pose.ball[2] - (front[2] + share * (rear[2] - front[2]));
  const lineY = corner.strut.top[1] - pose.low[1];
  const lineZ = corner.strut.top[2] - pose.low[2];
  const cosine = (armY * lineY + armZ * lineZ) / Math.hypot(armY, armZ) / Math.hypot(lineY, lineZ);
  return 180 - (Math.acos(cosine) * 180) / Math.PI;
}

/** Travel at which that angle is 90°. */
function squareAt(): number {
  let [low, high] = [0, 120];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (frontViewAngle(middle) < 90) low = middle;
    else high = middle;
  }
  return low;
}

const COORDINATES: [row: string, path: string[]][] = [
  ['Lower arm, front pivot', ['lowerArm', 'front']],
  ['Lower arm, rear pivot', ['lowerArm', 'rear']],
  ['Lower ball joint', ['lowerArm', 'ball']],
  ['Top mount', ['strut', 'top']],
  ['Damper, low point', ['strut', 'low']],
  ['Tie rod, inner end', ['tieRod', 'inner']],
  ['Tie rod, outer end', ['tieRod', 'outer']],
  ['Wheel centre', ['wheelCentre']],
];

/** Squares of what each point's ± does to a result: their sum's root is the result's ± (first order, as GUM 5.1.2). */
function squares(result: (of: IndependentCorner) => number): Map<string, number> {
  const nudge = 0.01;
  return new Map(
    COORDINATES.map(([row, path]) => {
      let sum = 0;
      for (const axis of [0, 1, 2]) {
        const [above, below] = [nudge, -nudge].map((by) => {
          const copy = structuredClone(corner);
          const point = path.reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], copy) as number[];
          point[axis]! += by;
          return result(copy);
        });
        sum += (((above! - below!) / (2 * nudge)) * plusMinus[row]!) ** 2;
      }
      return [row, sum];
    }),
  );
}
const total = (parts: Map<string, number>) => [...parts.values()].reduce((sum, part) => sum + part, 0);

/*
 * The doubt of the strut that six measurements make. What cannot be seen, or was not asked, is assumed, as the page's method says;
 * and so is what the front view leaves out: the ball joint up to 15 mm ahead of the hub or behind it, the arm's axis tilted by up to
 * 0.07, both anywhere within that, and a tie rod 100 mm shorter or longer than the arm, standard, which was fitted to random cars.
 * Its figures are stated here again and not taken from core/.
 */
const HALF_WIDTH_95 = 1.959964;
const HIDDEN = {
  value: { ballOffset: 20, hubOffset: 45, caster: 6, bumpSteer: 0 },
  plusMinus: { ballOffset: 22.6, hubOffset: 40, caster: 3.4, bumpSteer: 0.34 },
};
const UNSEEN: Unseen = { ahead: 15 / Math.sqrt(3), tilt: (130 * 0.07) / Math.sqrt(3), shorter: 100 };

const tapeStrut: LeanedStrut = { ...measured.value, ...HIDDEN.value };
const tapeChange = (travel: number, of: LeanedStrut = tapeStrut) => leanedStrutCamberChange(of, travel);

/** First order: nudged by so much of it. */
const NUDGED = 0.01;

/** 95 % of what the front view leaves out, degrees. */
function methodPlusMinus(travel: number, of: LeanedStrut = tapeStrut): number {
  const parts = (Object.entries(UNSEEN) as [keyof Unseen, number][]).map(([key, by]) => {
    const [above, below] = [by * NUDGED, -by * NUDGED].map((off) =>
      leanedStrutCamberChange(of, travel, { ...NOTHING_UNSEEN, [key]: off }),
    );
    return (above! - below!) / (2 * NUDGED);
  });
  return HALF_WIDTH_95 * Math.hypot(...parts);
}

/** The largest change, by golden-section search: where the plane strut's curve turns back. */
function tapeReversalChange(): number {
  let [low, high] = [0, 120];
  while (high - low > 1e-6) {
    const [a, b] = [0.381966, 0.618034].map((share) => low + share * (high - low)) as [number, number];
    if (tapeChange(a) < tapeChange(b)) high = b;
    else low = a;
  }
  return tapeChange((low + high) / 2);
}

/** Squares of what each ± and the method do to the change over a travel, degrees²; sums as above. */
function drivewaySquares<Key extends string>(
  change: (of: Record<Key, number>) => number,
  value: Record<Key, number>,
  plusMinus: Partial<Record<Key, number>>,
  method: number,
): Map<string, number> {
  const nudge = 0.02;
  const parts = (Object.entries(plusMinus) as [Key, number][]).map(([key, by]): [string, number] => {
    const [above, below] = [nudge, -nudge].map((step) => change({ ...value, [key]: value[key] + step }));
    return [key, (((above! - below!) / (2 * nudge)) * by) ** 2];
  });
  return new Map([...parts, ['method', method ** 2]]);
}

function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

const tapeSquares = once(() =>
  drivewaySquares(
    (of) => tapeChange(30, of),
    { ...tapeStrut },
    { ...measured.plusMinus, ...HIDDEN.plusMinus },
    methodPlusMinus(30),
  ),
);

/** Kingpin inclination of the example's hard points in front view, ball joint to top mount, degrees. */
function kingpinInclination(): number {
  const [, ballY, ballZ] = corner.lowerArm.ball;
  const [, topY, topZ] = corner.strut.top;
  return (Math.atan2(ballY - topY, topZ - ballZ) * 180) / Math.PI;
}

const share = (parts: Map<string, number>, key: string) => (100 * parts.get(key)!) / total(parts);
/** The steering axis taken for the damper's lean. */
const asLean = () => tapeChange(30, { ...tapeStrut, damperLean: kingpinInclination() });

const degrees = (value: () => number) => ({ unit: '°', value });
const mm = (value: () => number) => ({ unit: 'mm', value });
const percent = (value: () => number) => ({ unit: '%', value });

/** By data-name. */
const WORKED: Record<string, { unit: string; value: () => number }> = {
  'camber-0': degrees(() => at(0).camber),
  'camber-30': degrees(() => at(30).camber),
  'tape-change-30': degrees(() => tapeChange(30)),
  'tape-plus-minus-30': degrees(() => Math.sqrt(total(tapeSquares()))),
  'tape-share-method': percent(() => share(tapeSquares(), 'method')),
  'tape-share-bump-steer': percent(() => share(tapeSquares(), 'bumpSteer')),
  'kingpin-as-lean-excess': percent(() => 100 * (asLean() / tapeChange(30) - 1)),
  'reversal-travel': mm(() => reversal().travel),
  'reversal-change': degrees(() => reversal().change),
  'tape-reversal-change': degrees(tapeReversalChange),
  'reversal-plus-minus': mm(() => Math.sqrt(total(squares((of) => reversal(of).travel)))),
  'front-view-travel': mm(squareAt),
  'target-gap': degrees(() => -2 - corner.camber),
  'further-20-from-30': degrees(() => change(50) - change(30)),
  'toe-30-to-stop': degrees(() => at(bumpTravel).toe - at(30).toe),
  'toe-0-to-32': degrees(() => at(32).toe - at(0).toe),
  'roll-centre-fall-30': mm(() => rollCentre(0) - rollCentre(30)),
  'roll-lever-30': mm(() => rollCentre(0) - rollCentre(30) - 30),
  'specimen-25': degrees(() => change(25, specimen)),
  'specimen-fit': degrees(() => worstFit()),
  ...workedReadings(corner),
  ...workedBump(),
  ...workedClearance(),
  ...workedCompare(),
  ...workedJoints(),
  ...workedLowerJoint(),
  ...workedPredict(),
  ...workedSafety(),
  ...workedSprings(),
  ...workedStudy(),
  ...workedToe(),
  ...workedTurn(),
  ...workedWays(),
};
for (const drop of [10, 20, 30, 40]) {
  WORKED[`change-${drop}`] = degrees(() => change(drop));
  WORKED[`added-${drop}`] = degrees(() => change(drop) - change(drop - 10));
  WORKED[`toe-change-${drop}`] = degrees(() => at(drop).toe - at(0).toe);
  WORKED[`bump-left-${drop}`] = mm(() => bumpTravel - drop);
}

/** How far the coefficients on the authors' page are from the specimen's camber, at most, over their domain. */
function worstFit(): number {
  const list = (attribute: string) =>
    new RegExp(`${attribute}="([^"]*)"`)
      .exec(inside(authors, 'pre', 'id="snippet-coefficients"'))![1]!
      .split(' ')
      .map(Number);
  const coefficients = list('coefficients');
  const [from, to] = list('domain') as [number, number];
  const travels = Array.from({ length: 2 * (to - from) + 1 }, (_, i) => from + i / 2);
  return Math.max(
    ...independentStrutSweep(specimen, travels).map(({ camber }, i) =>
      Math.abs(camber - coefficients.reduce((sum, c, power) => sum + c * travels[i]! ** power, 0)),
    ),
  );
}

/** How often the band held in a study of random cars, percent: too long to run here. */
const STUDIED = /^study-(?:predict-)?covered-/;
/** And of cars beyond what is covered. */
const BEYOND = /^study-beyond-/;

/** How many true gaps were smaller than the stated one less its ±, percent, in the study of `node test/bench/run.mjs gap-coverage`. */
const GAPS = /^study-gap-too-small$/;

const decimals = (text: string) => text.split('.')[1]?.length ?? 0;

/** A shown amount: sign, figure, unit, if any. Without a sign the words around it have one ("adds 0.39° of negative camber"). */
const SHOWN = /^([+−]?)(\d+(?:\.\d+)?)[\u00a0\u202f]?(°|mm|%|)$/;

/** Readings are given, not worked out: the cells of their tables have no names. */
const withoutReadings = (html: string): string => html.replace(/<table data-example="readings">[\s\S]*?<\/table>/g, '');

describe.each(madePages())('worked numbers of site/$path', ({ html }) => {
  const found = [...withoutReadings(html).matchAll(/<data\b([^>]*)>([\s\S]*?)<\/data>(?=([\s\S]{0,120}))/g)].map(
    ([markup, attributes, content, after]) => ({
      markup,
      name: /data-name="([^"]*)"/.exec(attributes!)?.[1] ?? '',
      value: /\bvalue="([^"]*)"/.exec(attributes!)?.[1] ?? '',
      shown: textOf(content!),
      // "19 ± 2 mm": the unit stands once.
      unitBehind: /^<\/b> ±\u202f<data\b[^>]*>\d+\u202f(mm|°)</.exec(after!)?.[1],
    }),
  );

  test('each has a name with a recomputation', () => {
    expect(
      found
        .filter(({ name }) => !WORKED[name] && !STUDIED.test(name) && !BEYOND.test(name) && !GAPS.test(name))
        .map(({ markup }) => markup),
    ).toEqual([]);
  });

  test.each(found.filter(({ name }) => WORKED[name]))(
    '$name: $shown is what the second computation gives',
    ({ name, value, shown, unitBehind = '' }) => {
      const { unit, value: recompute } = WORKED[name]!;
      const expected = recompute();
      expect(Number(value), 'value attribute').toBe(Number(expected.toFixed(decimals(value))));
      const [, sign, figure, shownUnit] = SHOWN.exec(shown) ?? expect.fail(`"${shown}" is no amount`);
      expect(shownUnit || unitBehind).toBe(unit);
      expect(figure).toBe(Math.abs(expected).toFixed(decimals(figure!)));
      if (sign) expect(sign).toBe(expected < 0 ? '−' : '+');
      // The attribute is for machines: it must not be coarser than what people read.
      expect(decimals(value)).toBeGreaterThanOrEqual(decimals(figure!));
    },
  );

  // The bench prints them, `node test/bench/run.mjs driveway`, one a seed; it throws outside the same limits.
  test.each(found.filter(({ name }) => STUDIED.test(name)))(
    '$name: $shown, a coverage of 93 to 97 %',
    ({ value, shown }) => {
      expect(shown).toBe(`${value}\u00a0%`);
      expect(Number(value)).toBeGreaterThanOrEqual(93);
      expect(Number(value)).toBeLessThanOrEqual(97);
    },
  );

  test.each(found.filter(({ name }) => BEYOND.test(name)))(
    '$name: $shown, which is no coverage of 93 %',
    ({ value, shown }) => {
      expect(shown).toBe(`${value}\u00a0%`);
      expect(Number(value)).toBeLessThan(93);
    },
  );

  // A ± of 95 % leaves 2.5 % beyond each of its ends.
  test.each(found.filter(({ name }) => GAPS.test(name)))(
    '$name: $shown, no more than a ± of 95 % leaves on one side, and what the README says',
    ({ value, shown }) => {
      expect(shown).toBe(`${value}\u00a0%`);
      expect(Number(value)).toBeLessThanOrEqual(2.5);
      const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
      expect(readme).toContain(`at most ${value} of 100 true gaps`);
    },
  );
});

describe('the example of the article', () => {
  test('its table holds exactly the built-in example', () => {
    const { kind, plusMinus: doubt, ...points } = EXAMPLE_CORNER;
    expect(kind).toBe('strut');
    expect(corner).toEqual(points);
    for (const [row, path] of COORDINATES) {
      const key = path.join('.') as keyof typeof doubt;
      expect(plusMinus[row], row).toBe(doubt![key] ?? doubt!.other);
    }
  });

  test('its table can be read by the element’s own reader as well, without a problem', () => {
    const { given, problems } = readPointRows(tableRows(exampleTable), METRIC, ['mm', 'mm', 'mm']);
    expect(problems).toEqual([]);
    expect(given).toMatchObject({ loadedRadius: 302, camber: -0.6, toe: 0.08 });
    expect(given.points['strut.low']).toEqual(EXAMPLE_CORNER.strut.low);
    expect(Object.keys(given.points)).toHaveLength(8);
  });

  test('its table of measurements holds exactly the built-in ones', () => {
    const { track: _, camber, ...six } = EXAMPLE_DRIVEWAY;
    const both = (Object.keys(measured.value) as (keyof typeof measured.value)[]).map((key) => [
      key,
      { value: measured.value[key], plusMinus: measured.plusMinus[key] },
    ]);
    expect(Object.fromEntries(both)).toEqual(six);
    expect(camber?.value).toBe(corner.camber);
    expect(textOf(inside(measuredTable, 'caption'))).toContain('Invented example');
  });

  test('it is called invented, and the bump travel in words is the attribute’s', () => {
    const caption = textOf(inside(exampleTable, 'caption'));
    expect(caption).toContain('Invented example');
    expect(caption).toContain(`${bumpTravel}\u00a0mm`);
  });
});

test('a reader of the article on camber scrolls through at most 1,200 words, pictures, contents and what is folded away not counted', () => {
  expect(wordsRead(article)).toBeLessThanOrEqual(1200);
});

describe('figures of the article and of the card to measure with', () => {
  const figure = (id: string, html = article) => {
    const start = html.lastIndexOf('<svg', html.indexOf(`id="${id}"`));
    return html.slice(start, html.indexOf('</svg>', start));
  };
  const labels = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);
  const shown = (value: number, places: number) => `${value < 0 ? '−' : ''}${Math.abs(value).toFixed(places)}`;

  test.each([
    ['arm-length-title', 'armLength'],
    ['pivot-height-title', 'pivotHeight'],
    ['ball-height-title', 'ballHeight'],
    ['wheel-centre-title', 'wheelCentreHeight'],
    ['top-height-title', 'topHeight'],
  ] as const)('the drawing of %s shows the measurement of the table', (id, key) => {
    expect(labels(figure(id, tapeCard))).toContain(`${measured.value[key]}\u00a0mm`);
  });

  test('the drawing of the lean shows the lean of the table', () => {
    expect(labels(figure('damper-lean-title', tapeCard))).toContain(`${measured.value.damperLean.toFixed(1)}°`);
  });

  test('the curve is drawn through the computed camber, to a tenth of a unit of the drawing', () => {
    const svg = figure('curve-title');
    const attribute = (name: string) => new RegExp(`class="curve"[^>]*\\b${name}="([^"]*)"`).exec(svg)![1]!;
    const numbers = (text: string) => text.match(/-?[\d.]+/g)!.map(Number);
    const [from] = numbers(attribute('data-from'));
    const [step] = numbers(attribute('data-step'));
    const [perMm, perDegree] = numbers(attribute('data-scale'));
    const [originX, originY] = numbers(attribute('data-origin'));
    const drawn = numbers(attribute('d'));
    const travels = Array.from({ length: drawn.length / 2 }, (_, i) => from! + i * step!);
    expect(travels.length).toBeGreaterThan(20);
    independentStrutSweep(corner, travels).forEach(({ travel, camber }, i) => {
      expect(Math.abs(drawn[2 * i]! - (originX! + perMm! * travel)), `x at ${travel}`).toBeLessThan(0.11);
      expect(Math.abs(drawn[2 * i + 1]! - (originY! + perDegree! * camber)), `y at ${travel}`).toBeLessThan(0.11);
    });
  });

  test('the curve’s labels are the computed camber at both heights', () => {
    const texts = labels(figure('curve-title'));
    expect(texts).toContain(`${shown(at(0).camber, 2)}°`);
    expect(texts).toContain(`${shown(at(30).camber, 2)}°`);
  });

  test('the two front views are labelled with the computed angles and travel', () => {
    const texts = labels(figure('square-title'));
    const travel = squareAt();
    expect(texts).toContain(`${shown(frontViewAngle(0), 0)}°`);
    expect(texts).toContain(`${shown(frontViewAngle(travel), 0)}°`);
    expect(texts).toContain(`${shown(travel, 0)} mm of bump`);
  });
});

describe('snippets of the authors’ page', () => {
  const snippet = (id: string) => textOf(inside(authors, 'pre', `id="${id}"`));

  test('the table to copy is the live one', () => {
    const live = inside(inside(authors, 'bumpline-lowering', 'id="specimen"'), 'table');
    expect(tableRows(inside(snippet('snippet-table'), 'table'))).toEqual(tableRows(live));
  });

  test('the JSON to copy is the same corner and passes the schema', () => {
    const json = JSON.parse(inside(snippet('snippet-json'), 'script'));
    expect(() => readCorner(json)).not.toThrow();
    expect(json).toMatchObject(specimen);
  });

  test('results written into snippets are the recomputed ones', () => {
    for (const id of ['snippet-table', 'snippet-json', 'snippet-coefficients']) {
      const sentence = /Lowering 25 mm adds ([\d.]+)° of negative/.exec(textOf(snippet(id)));
      expect(sentence?.[1], id).toBe(Math.abs(change(25, specimen)).toFixed(2));
    }
  });
});
