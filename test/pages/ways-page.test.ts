import { describe, expect, it, test } from 'vitest';
import type { CornerFigures } from '../../core/answers/corner-at.js';
import { staticCamber } from '../../core/answers/from-source.js';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { axleAt } from '../../core/linkage/axle.js';
import { buildLinkage } from '../../core/linkage/build-linkage.js';
import { toeReset } from '../../core/linkage/parts/index.js';
import { partOf } from '../../core/linkage/parts/part-data.js';
import { opened } from '../../core/linkage/travel.js';
import { listedPages } from '../../site/partials/listed.js';
import { standingWith } from '../reference/independent-static-camber.js';
import { picturesOf } from './pictures-of.js';
import { page, tableRows, textOf, wordsRead } from './site-source.js';
import { EXAGGERATED, leftOf, steerBars, wayPictures } from './ways-pictures.js';
import { DROP, ROLL } from './worked-turn.js';
import {
  amountOf,
  BY,
  changeOf,
  gapChange,
  LOWERED,
  loweredChange,
  OVER,
  onRoad,
  rodChange,
  stockFigures,
  toeBefore,
  WAYS,
  type Way,
} from './worked-ways.js';

/*
 * The pictures of the page on ways to add camber, what it says in words, and its figures once more by core/. The figures themselves:
 * worked-ways.ts, by references that share nothing with core/.
 */

const PATH = 'ways-to-add-camber/';
const html = page(`${PATH}index.html`);
const spaced = (markup: string) => textOf(markup).replace(/[\s\u00a0]+/g, ' ');
const text = spaced(html);
const { expectDrawn, labels } = picturesOf(html);

describe('pictures', () => {
  test('each way is drawn with the corner that it gives, what moves enlarged as the caption says', () => {
    expectDrawn('ways', wayPictures());
    expect(text).toContain(`what moves drawn ${EXAGGERATED} times further`);
    for (const way of WAYS) {
      const { kingpin } = changeOf(way);
      const figure = Math.abs(kingpin).toFixed(2);
      const sign = Number(figure) === 0 ? '' : kingpin < 0 ? '−' : '+';
      expect(labels('ways'), way).toContain(`axis ${sign}${figure}°`);
    }
    expect(labels('ways')).toContain(`axis ${stockFigures().kingpin.toFixed(2)}°`);
  });

  test('bars are as long as what is left of the degree at 0°, 15° and 30° of steer', () => {
    expectDrawn('steer', steerBars());
    const figures = labels('steer').filter((label) => /^\d\.\d\d°$/.test(label));
    expect(figures).toEqual([...leftOf('topMount'), ...leftOf('knuckle')].map((left) => `${left.toFixed(2)}°`));
  });
});

describe('the core solves the same ways', () => {
  const source = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
  const answer = (drop: number) => staticCamber({ source, drop, by: BY, over: OVER, window: [-OVER, OVER] });
  const close: Partial<Record<keyof CornerFigures, number>> = { rollCentreHeight: 2, bumpSteer: 4 };
  function expectFigures(ours: CornerFigures, theirs: Record<string, number>, at: string) {
    for (const [name, value] of Object.entries(ours) as [keyof CornerFigures, number][])
      expect(value, `${name}, ${at}`).toBeCloseTo(theirs[name]!, close[name] ?? 5);
  }

  test.each([0, DROP])('%i mm lower: amount and every change of all five', (drop) => {
    const { ways } = answer(drop);
    for (const way of WAYS) {
      const ours = ways.find((one) => one.way === way)!;
      expect(ours.isReached, way).toBe(true);
      expect(ours.amount, way).toBeCloseTo(amountOf(way, drop), 4);
      expectFigures(ours.change, changeOf(way, drop) as unknown as Record<string, number>, `${way}, ${drop}`);
    }
  });

  test('toe before it is set again, and the gap from strut to tyre', () => {
    for (const { way, toeBefore: toe, gapStrut } of answer(0).ways) {
      if (way === 'lowering') continue;
      expect(toe, way).toBeCloseTo(toeBefore(way), 4);
      expect(gapStrut, way).toBeCloseTo(gapChange(way), 4);
    }
  });

  test('40 mm lower comes nearest of what is set, and is no degree', () => {
    const { isReached, ends, change } = answer(0).ways.find(({ way }) => way === 'lowering')!;
    expect(isReached).toBe(false);
    expect(ends!.amount).toBeCloseTo(LOWERED, 5);
    expectFigures(change, loweredChange() as unknown as Record<string, number>, 'lowered');
  });

  test('what arrives on the road in a turn', () => {
    const stock = buildLinkage(EXAMPLE_CORNER);
    const leans = (linkage: typeof stock) => axleAt(linkage, linkage, { heave: 0, roll: ROLL }).right.inclination;
    for (const { way, part } of answer(0).ways) {
      if (way === 'lowering') continue;
      const fitted = toeReset(partOf(part!)(opened(stock)), EXAMPLE_CORNER.toe);
      expect(leans(fitted) - leans(stock), way).toBeCloseTo(onRoad(way), 4);
    }
  });
});

describe('what the page says in words', () => {
  const LEANING: Way[] = ['topMount', 'longerArm'];
  const KEEPING: Way[] = ['knuckleBolts', 'knuckle', 'ballJoint'];

  test('what raises the kingpin inclination gives some of the degree back, the others keep it', () => {
    for (const way of LEANING) {
      expect(changeOf(way).kingpin, way).toBeGreaterThan(0.95);
      expect(changeOf(way).inclinationAt30, way).toBeGreaterThan(-0.88);
    }
    for (const way of KEEPING) {
      expect(Math.abs(changeOf(way).kingpin), way).toBeLessThan(0.03);
      for (const steered of [changeOf(way).inclinationAt15, changeOf(way).inclinationAt30])
        expect(Math.abs(steered - BY), way).toBeLessThan(0.02);
    }
    expect(Math.abs(changeOf('knuckle').kingpin)).toBeLessThan(1e-9);
    expect(text).toContain('Camber bolts and a moved joint leave it alone, so they keep the degree.');
  });

  test('the lead of the knuckle is what 1 − cos of the steer angle says, to 0.01° a degree', () => {
    for (const [steer, name] of [
      [15, 'inclinationAt15'],
      [30, 'inclinationAt30'],
    ] as const) {
      const lead = changeOf('topMount')[name] - changeOf('knuckle')[name];
      expect(Math.abs(lead - (1 - Math.cos((steer * Math.PI) / 180)))).toBeLessThan(0.01);
    }
  });

  test('in a fast turn the five are worth nearly the same, the plate gains with roll and loses with steer', () => {
    for (const way of WAYS) expect(Math.abs(onRoad(way) - BY), way).toBeLessThan(0.09);
    expect(onRoad('topMount')).toBeLessThan(BY);
    expect(changeOf('topMount').inclinationAt30).toBeGreaterThan(BY);
    for (const way of ['longerArm', 'topMount', 'ballJoint'] as const) {
      expect(changeOf(way).camberChange, way).toBeLessThan(-0.05);
      expect(onRoad(way), way).toBeLessThanOrEqual(onRoad('topMount'));
      expect(onRoad(way), way).toBeGreaterThanOrEqual(onRoad('ballJoint'));
    }
  });

  test('the joint moves inboard in the knuckle; outboard adds positive camber', () => {
    expect(amountOf('ballJoint')).toBeLessThan(0);
    const outboard = standingWith(EXAMPLE_CORNER, { ballBy: [0, 5, 0] }, 0);
    expect(outboard.camber).toBeGreaterThan(EXAMPLE_CORNER.camber);
    expect(text).toContain('Moving it outboard would add positive camber.');
  });

  test('the moved joint doubles the scrub radius', () => {
    const { scrubRadius } = stockFigures();
    expect((scrubRadius + changeOf('ballJoint').scrubRadius) / scrubRadius).toBeCloseTo(2, 1);
    expect(text).toContain('The moved joint doubles the example’s 14.5 mm.');
  });

  test('bump steer has no rule: the plate adds at one height and takes off at another', () => {
    expect(changeOf('topMount').bumpSteer).toBeGreaterThan(0.05);
    expect(changeOf('topMount', DROP).bumpSteer).toBeLessThan(-0.05);
  });

  test('bolts and knuckle tilt the wheel to the strut, the other three keep the gap', () => {
    for (const way of ['knuckleBolts', 'knuckle'] as const) expect(gapChange(way), way).toBeLessThan(-4);
    for (const way of ['topMount', 'longerArm', 'ballJoint'] as const)
      expect(Math.abs(gapChange(way)), way).toBeLessThan(1e-6);
    expect(text).toContain('The other three keep it, but take room at the arch');
  });

  test('with the longer arm toe goes out by degrees until the rod is set longer', () => {
    expect(toeBefore('longerArm')).toBeLessThan(-5);
    expect(rodChange('longerArm')).toBeGreaterThan(10);
    expect(text).toContain('of toe-out. The rod has to be set 10.6 mm longer.');
  });

  test('both tables have every way, and the second lowering too', () => {
    const tables = [...html.matchAll(/<table>[\s\S]*?<\/table>/g)].map(([table]) => tableRows(table));
    expect(tables.map((rows) => rows.length)).toEqual([WAYS.length, WAYS.length + 2]);
    for (const rows of tables) for (const { cells } of rows) expect(cells).toHaveLength(4);
  });

  it('names no class and no best way', () => {
    expect(text).toContain('Competition rules commonly restrict some of these. Read your own before you buy.');
    expect(text).not.toMatch(/\b(?:class|group|optimal|ideal|best)\b/i);
  });

  it('says that compliance is not modelled', () => {
    expect(text).toContain('rubber bushes, play and bending under load (compliance) are not modelled');
  });

  test('a reader scrolls through at most 1,200 words, pictures, contents and what is folded away not counted', () => {
    expect(wordsRead(html)).toBeLessThanOrEqual(1200);
  });
});

test('its one caution names what each way can do, and leads to each part’s own', () => {
  const [, caution, ...more] = html.split(/<div class="caution">/);
  expect(more).toEqual([]);
  expect(caution).toContain('href="../working-safely/#parts"');
  for (const hazard of [
    /every bolt to the maker’s torque/,
    /clamp force alone/,
    /bent, heated or welded/,
    /thread engagement/,
    /nothing may bind or rub/,
    /end of its swing/,
    /lengthens braking/,
  ])
    expect(spaced(caution!)).toMatch(hazard);
});

describe('the order of reading', () => {
  test('it comes after the turn and height or part, and the joints after it', () => {
    const paths = listedPages().map(({ path }) => path);
    const at = paths.indexOf(PATH);
    expect(paths.slice(at - 1, at + 2)).toEqual(['height-or-part/', PATH, 'what-a-lower-ball-joint-does/']);
    expect(paths.indexOf('camber-in-the-turn/')).toBeLessThan(at);
  });

  test.each(['camber-in-the-turn/', 'height-or-part/', 'what-lowering-does-to-camber/'])(
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
