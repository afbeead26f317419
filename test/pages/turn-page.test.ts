import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { axleAt } from '../../core/linkage/axle.js';
import { buildLinkage } from '../../core/linkage/build-linkage.js';
import type { Linkage } from '../../core/linkage/linkage.js';
import {
  ballJointExtended,
  spinAxisTurned,
  staticAngles,
  tieRodEndRaised,
  toeReset,
  withParts,
} from '../../core/linkage/parts/index.js';
import { sweepTravel } from '../../core/linkage/sweep.js';
import { listedPages } from '../../site/partials/listed.js';
import { independentAxle } from '../reference/independent-axle.js';
import { rollAt } from '../reference/independent-turn.js';
import { picturesOf } from './pictures-of.js';
import { inside, page, tableRows, textOf, wordsRead } from './site-source.js';
import { BARS, bars, EXAGGERATED, rolledCar } from './turn-pictures.js';
import {
  ACCELERATION,
  DROP,
  GRAVITY_CENTRE_MM,
  JOINT_MM,
  ROLL,
  rollOf,
  SETUPS,
  type Setup,
  sharesOf,
  steered,
  workedTurn,
} from './worked-turn.js';

/*
 * The pictures of the page on camber in the turn, what it says in words, and its figures once more by core/. The figures themselves:
 * worked-turn.ts, by references that share nothing with core/.
 */

const PATH = 'camber-in-the-turn/';
const html = page(`${PATH}index.html`);
const spaced = (markup: string) => textOf(markup).replace(/[\s\u00a0]+/g, ' ');
const text = spaced(html);
const { expectDrawn, labels } = picturesOf(html);
const shown = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}°`;

describe('pictures', () => {
  test('the car is drawn with the roll and both wheels’ computed angles, enlarged as the caption says', () => {
    expectDrawn('rolled', rolledCar());
    expect(text).toContain(`tilts drawn ${EXAGGERATED} times larger`);
    expect(labels('rolled')).toContain(shown(sharesOf('stock').road));
    expect(labels('rolled')).toContain(shown(sharesOf('stock').inner));
    expect(labels('rolled')).toContain(`${ROLL}° of roll`);
  });

  test('each bar begins where the one above it ends, and the last ends at the angle to the road', () => {
    expectDrawn('bars', bars());
    for (const [setup] of BARS) {
      const { standing, bump, roll, road } = sharesOf(setup);
      expect(Math.abs(standing + bump + roll - road), setup).toBeLessThan(0.0001);
      for (const label of [`static ${shown(standing)}`, `bump ${shown(bump)}`, `roll ${shown(roll)}`, shown(road)])
        expect(labels('bars'), setup).toContain(label);
    }
  });

  test('the labels of a bar add up as they are printed', () => {
    for (const [setup] of BARS) {
      const { standing, bump, roll, road } = sharesOf(setup);
      const hundredths = (value: number) => Math.round(100 * value);
      expect(hundredths(standing) + hundredths(bump) + hundredths(roll), setup).toBe(hundredths(road));
    }
  });
});

describe('the core solves the same axles', () => {
  const stock = buildLinkage(EXAMPLE_CORNER);
  const parts = withParts(stock, ballJointExtended({ mm: JOINT_MM }), tieRodEndRaised({ mm: -JOINT_MM }));
  const { camber, toe } = staticAngles(stock);
  const linkages: Record<Setup, readonly [Linkage, drop: number]> = {
    stock: [stock, 0],
    low: [stock, DROP],
    'low-30': [stock, 30],
    joint: [toeReset(parts, toe), DROP],
    degree: [withParts(stock, spinAxisTurned({ camber: -1 })), 0],
  };
  /** Camber and toe at a drop set to those of stock by turning the wheel in the knuckle. */
  function setAt(linkage: Linkage, drop: number): Linkage {
    let set = linkage;
    for (let i = 0; i < 6; i++) {
      const now = sweepTravel(set, [drop]);
      set = withParts(set, spinAxisTurned({ camber: camber - now.camber[0]!, toe: toe - now.toe[0]! }));
    }
    return set;
  }

  test.each(Object.keys(linkages) as Setup[])('%s: both wheels to the road, travel and track', (setup) => {
    const [linkage, drop] = linkages[setup];
    for (const roll of [ROLL, rollOf(setup)]) {
      const axle = axleAt(linkage, linkage, { heave: drop, roll });
      const shares = sharesOf(setup, { roll });
      expect(axle.right.inclination).toBeCloseTo(shares.road, 5);
      expect(axle.left.inclination).toBeCloseTo(shares.inner, 5);
      expect(axle.right.camber).toBeCloseTo(shares.standing + shares.bump, 5);
      expect(axle.right.travel - drop).toBeCloseTo(shares.travel, 4);
      expect(axle.track).toBeCloseTo(shares.track, 4);
    }
  });

  test.each(['low', 'joint'] as const)('%s with camber and toe set again at its height', (setup) => {
    const [linkage, drop] = linkages[setup];
    const set = setAt(linkage, drop);
    for (const roll of [ROLL, rollOf(setup)])
      expect(axleAt(set, set, { heave: drop, roll }).right.inclination).toBeCloseTo(
        sharesOf(setup, { roll, isSet: true }).road,
        5,
      );
  });

  test('the roll centres on which the levers hang', () => {
    for (const setup of ['stock', 'low', 'joint'] as const) {
      const [linkage, drop] = linkages[setup];
      const expected = independentAxle(SETUPS[setup].corner, drop, 0, 0).rollCentre[1];
      expect(axleAt(linkage, linkage, { heave: drop }).rollCentreHeight).toBeCloseTo(expected, 2);
    }
  });
});

test('roll at a lateral acceleration is that of every row of body_roll_cases.csv, the textbook’s car included', () => {
  const file = readFileSync(new URL('../reference/body_roll_cases.csv', import.meta.url), 'utf8');
  const [head, ...rows] = file
    .split(/\r?\n/)
    .filter((line) => line && !line.startsWith('#'))
    .map((line) => line.split(','));
  expect(rows).toHaveLength(5);
  for (const row of rows) {
    const cell = (name: string) => Number(row[head!.indexOf(name)]);
    const stiffness = (cell('kf') + cell('kr')) / ((cell('msf') + cell('msr')) * 9.81);
    expect(rollAt(cell('ay') / 9.81, cell('arm'), stiffness)).toBeCloseTo(cell('roll_rad'), 7);
  }
  // Read: 0.0194 rad a metre per second squared.
  const textbook = rows.at(-1)!;
  expect(Number(textbook[head!.indexOf('roll_rad')]) / (0.6 * 9.81)).toBeCloseTo(0.0194, 4);
});

describe('what the page says in words', () => {
  const road = (setup: Setup, options = {}) => sharesOf(setup, options).road;
  const pushed = (setup: Setup, isSet = false) => road(setup, { roll: rollOf(setup), isSet });

  test('which set-up is best and which worst, at equal roll and at equal acceleration', () => {
    expect(road('joint')).toBeLessThan(road('low'));
    expect(road('low')).toBeLessThan(road('stock'));
    expect(text).toContain('Do not reset it, and the lowered car looks better at equal roll.');
    const set = (setup: Setup) => road(setup, { isSet: true });
    expect(set('low')).toBeGreaterThan(Math.max(set('stock'), set('joint')));
    expect(text).toContain('the lowered car is worse than stock, and worse than with lower joints.');
    // The order changes once more.
    expect(pushed('low')).toBeGreaterThan(pushed('stock'));
    expect(pushed('joint', true)).toBeLessThan(set('stock'));
    expect(set('joint')).toBeGreaterThan(set('stock'));
  });

  test('a degree of static camber is more than any other step of the table', () => {
    const degree = road('degree') - road('stock');
    for (const setup of ['low', 'joint'] as const)
      for (const angle of [road(setup), road(setup, { isSet: true }), pushed(setup), pushed(setup, true)])
        expect(Math.abs(angle - road('stock'))).toBeLessThan(Math.abs(degree));
    expect(text).toContain('Neither height nor joint changes as much anywhere in this table.');
  });

  test('the example’s stop comes before 3° of roll when it is lowered', () => {
    const worked = workedTurn();
    expect(worked['turn.low-travel']!.value()).toBeGreaterThan(worked['turn.low-left']!.value());
    expect(text).toContain('The stop may come first.');
    for (const setup of ['low', 'joint'] as const)
      for (const roll of [ROLL, rollOf(setup)])
        for (const isSet of [false, true])
          expect(sharesOf(setup, { roll, isSet }).travel).toBeGreaterThan(worked['turn.low-left']!.value());
    expect(text).toContain('takes no account of the bump stop: all lowered rows are beyond it.');
  });

  test('what was assumed for equal acceleration', () => {
    expect(text).toContain(
      `${GRAVITY_CENTRE_MM} mm above the road at stock height; stock rolls ${ROLL}° at ${ACCELERATION} g`,
    );
    expect(text).toContain('the other axle would roll the same');
  });

  test('caster leans the outer wheel in, kingpin inclination out; together they are nearly the sum', () => {
    const [both, caster, kingpin] = [steered(5, 10, 20), steered(5, 0, 20), steered(0, 10, 20)].map(
      ({ outer }) => outer,
    );
    expect(caster).toBeLessThan(0);
    expect(kingpin).toBeGreaterThan(0);
    expect(caster! + kingpin!).toBeCloseTo(both!, 2);
  });

  test('both columns say which static camber is held, and both groups what of the turn', () => {
    const table = inside(inside(html, 'div', 'class="wide-content"'), 'table');
    expect([...table.matchAll(/<th scope="col">([^<]*)/g)].map(([, head]) => head)).toEqual([
      'Front end',
      'Camber not reset after lowering',
      'Camber reset to −0.60°',
    ]);
    const groups = [...table.matchAll(/scope="rowgroup"[^>]*><strong>([\s\S]*?)<\/strong>/g)].map(([, group]) =>
      spaced(group!),
    );
    expect(groups).toEqual(['Same suspension roll, 3°', 'Same lateral acceleration, 0.6 g, same springs and bar']);
    for (const body of table.match(/<tbody>[\s\S]*?<\/tbody>/g)!) expect(tableRows(body)).toHaveLength(4);
  });

  it('states no optimum, and says that there is none', () => {
    expect(text).toContain('We found no published data on a tyre’s best angle to the road, so we state none.');
    expect(text).not.toMatch(/\b(?:ideal|optimal|best camber|should be at)\b/i);
  });

  test('a reader scrolls through at most 900 words, pictures, contents and what is folded away not counted', () => {
    expect(wordsRead(html)).toBeLessThanOrEqual(900);
  });
});

describe('the order of reading', () => {
  test('it opens the articles, and the list of the home page', () => {
    expect(listedPages().find(({ kind }) => kind === 'article')?.path).toBe(PATH);
    const home = page('index.html');
    expect(/<a href="([^"]*)"/.exec(inside(home, 'ol', 'class="parts"'))?.[1]).toBe(PATH);
    expect(home.match(new RegExp(`href="${PATH}"`, 'g'))).toHaveLength(2);
  });

  test('each balloon of the home page’s drawing leads where the question of its number leads', () => {
    const home = page('index.html');
    const asked = [...inside(home, 'ol', 'class="parts"').matchAll(/<li><a href="([^"]*)"/g)].map(([, to]) => to!);
    const balloons = [...home.matchAll(/<a href="([^"]*)" tabindex="-1">[\s\S]*?<text[^>]*>(\d+)<\/text><\/a>/g)];
    expect(balloons).toHaveLength(asked.length);
    for (const [, to, number] of balloons) expect(to, number).toBe(asked[Number(number) - 1]);
  });

  test.each([
    [
      'what-lowering-does-to-camber/',
      [/same 3° of suspension roll/, /steering straight/, /set again to −0\.60°/, /same lateral acceleration/],
    ],
    // Its figures of the turn stand there, and nowhere else.
    ['height-or-part/', []],
  ] as [string, RegExp[]][])('%s opens with what it means on the road, and leads there', (other, held) => {
    const there = page(`${other}index.html`);
    const first = /<section aria-labelledby="([^"]*)">([\s\S]*?)<\/section>/.exec(there)!;
    expect(first[1]).toBe('so-what');
    expect(first[2]).toContain(`href="../${PATH}"`);
    for (const words of held) expect(spaced(first[2]!)).toMatch(words);
    expect(html).toContain(`href="../${other}"`);
  });
});
