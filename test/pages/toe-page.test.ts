import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { buildLinkage } from '../../core/linkage/build-linkage.js';
import {
  ballJointExtended,
  staticAngles,
  tieRodEndRaised,
  toeReset,
  withParts,
} from '../../core/linkage/parts/index.js';
import { sweepTravel } from '../../core/linkage/sweep.js';
import { toeFromDials } from '../../core/readings/instruments.js';
import { browser as findBrowser } from '../browser.mjs';
import type { IndependentCorner, Point } from '../reference/independent-strut.js';
import {
  PLANE_STRUT,
  type PlanePoint,
  planeInstantCentre,
  planeStrutAt,
  rodMisfit,
} from '../reference/independent-tie-rod-arc.js';
import { serve } from '../serve.mjs';
import { page, textOf, wordsRead } from './site-source.js';
import {
  corner,
  corrected,
  lowered,
  planar,
  shimMm,
  toeChanges,
  withInner,
  withOuterRaised,
  workedToe,
} from './worked-toe.js';

/*
 * The pictures of the page on bump steer, and what it says in words. The flat strut: plane kinematics of
 * test/reference/independent-tie-rod-arc.ts, held against bump_steer_planar.csv. The example car: test/reference/independent-strut.ts.
 */

const html = page('the-wheel-that-steers-itself/index.html');
const text = textOf(html).replace(/[\s\u00a0]+/g, ' ');
const figure = (id: string) => {
  const start = html.lastIndexOf('<svg', html.indexOf(`id="${id}-title"`));
  return html.slice(start, html.indexOf('</svg>', start));
};
/** Points of the path that an attribute marks. */
const drawn = (id: string, mark: string): [number, number][] => {
  const path = new RegExp(`<path[^>]*${mark}[^>]* d="M([^"]+)"`).exec(figure(id));
  if (!path) throw new Error(`No path with ${mark} in the picture "${id}".`);
  return path[1]!.split('L').map((pair) => pair.split(' ').map(Number) as [number, number]);
};
function expectDrawn(points: readonly (readonly [number, number])[], expected: readonly (readonly [number, number])[]) {
  expect(points).toHaveLength(expected.length);
  points.forEach((point, i) => {
    for (const axis of [0, 1] as const) expect(Math.abs(point[axis] - expected[i]![axis])).toBeLessThan(0.11);
  });
}

describe('the flat strut', () => {
  const TRAVELS = [-60, -40, -20, 0, 20, 40, 60];
  const rods = [
    'centre of curvature',
    'on IC line, rod 90 % of ideal',
    'on IC line, rod 300 mm',
    'ideal raised 10 mm',
    'ideal lowered 10 mm',
  ];
  test.each(rods)('a rod "%s" lacks what bump_steer_planar.csv says, to a thousandth of a millimetre', (name) => {
    const [y, z, , ...misfits] = planar(name);
    TRAVELS.forEach((travel, i) => {
      expect(rodMisfit(PLANE_STRUT, [y!, z!], travel)).toBeCloseTo(misfits[i]!, 5);
    });
  });

  test('wrong height lacks opposite signs in bump and droop, wrong length the same, as the page says', () => {
    for (const name of ['ideal raised 10 mm', 'ideal lowered 10 mm'])
      expect(planar(name)[4]! * planar(name)[8]!).toBeLessThan(0);
    for (const name of ['on IC line, rod 90 % of ideal', 'on IC line, rod 300 mm'])
      expect(planar(name)[4]! * planar(name)[8]!).toBeGreaterThan(0);
    expect(text).toContain('Wrong height: the error has opposite signs in bump and droop.');
    expect(text).toContain('Wrong length: it has the same sign in both.');
  });

  const centre = planar('centre of curvature').slice(0, 2) as unknown as PlanePoint;

  test('its three lines are drawn to where they meet, 3 m from the outer joint', () => {
    const at = ([y, z]: PlanePoint) => [250 + 0.1 * y, 118 - 0.1 * z] as const;
    const instant = planeInstantCentre(PLANE_STRUT);
    expect(instant[0]).toBeCloseTo(-2366.686217, 5);
    expect(instant[1]).toBeCloseTo(312.778592, 5);
    expectDrawn(drawn('aim', 'data-line="arm"'), [at(instant), at(PLANE_STRUT.pivot)]);
    expectDrawn(drawn('aim', 'data-line="top"'), [at(instant), at(PLANE_STRUT.top)]);
    expectDrawn(drawn('aim', 'data-line="rod"'), [at(instant), at(centre)]);
    const away = Math.hypot(...[0, 1].map((i) => instant[i]! - PLANE_STRUT.outerJoint[i]!));
    expect((away / 1000).toFixed(0)).toBe('3');
    expect(text).toContain('The point is 3 m away.');
  });

  const { outerJoint } = PLANE_STRUT;
  test.each([
    ['high', 112, [centre[0], centre[1] + 120]],
    ['short', 226, [0, 1].map((i) => outerJoint[i]! + (centre[i]! - outerJoint[i]!) / 3)],
  ] as const)('the arc of its joint and the circle of a rod "%s" are drawn where they run', (name, originY, inner) => {
    const at = ([y, z]: PlanePoint) => [16 + 0.72 * (y - 234), originY - 0.72 * (z - outerJoint[1])] as const;
    const travels = Array.from({ length: 31 }, (_, i) => -75 + 5 * i);
    expectDrawn(
      drawn('circles', `data-path="${name}"`),
      travels.map((travel) => at(planeStrutAt(PLANE_STRUT, travel).outerJoint)),
    );
    const radius = Math.hypot(outerJoint[0] - inner[0]!, outerJoint[1] - inner[1]!);
    for (const [x, y] of drawn('circles', `data-circle="${name}"`)) {
      const from = at(inner as unknown as PlanePoint);
      expect(Math.abs(Math.hypot(x - from[0], y - from[1]) - 0.72 * radius)).toBeLessThan(0.11);
    }
  });
});

describe('the example car', () => {
  const { inner, outer } = corner.tieRod;
  const raised = (mm: number, of = corner) => withInner(of, [inner[0], inner[1], inner[2] + mm]);
  const stretched = (by: number) =>
    withInner(corner, [0, 1, 2].map((i) => outer[i]! + by * (inner[i]! - outer[i]!)) as unknown as Point);
  const travels = Array.from({ length: 17 }, (_, i) => -40 + 5 * i);
  const curves: [id: string, name: string, of: IndependentCorner, x: number, perMm: number, y: number, per: number][] =
    [
      ['curves', 'built', corner, 110, 1.55, 104, -110],
      ['curves', 'low', raised(-10), 110, 1.55, 104, -110],
      ['curves', 'high', raised(10), 110, 1.55, 104, -110],
      ['curves', 'short', stretched(0.8), 262, 1.55, 104, -110],
      ['curves', 'long', stretched(1.2), 262, 1.55, 104, -110],
    ];
  test.each(curves)('in the picture "%s" the curve "%s" is drawn through its toe', (id, name, of, x, perMm, y, per) => {
    const toe = toeChanges(of, travels);
    expectDrawn(
      drawn(id, `data-curve="${name}"`),
      travels.map((travel, i) => [x + perMm * travel, y + per * toe[i]!] as const),
    );
  });

  it('has its rack behind the axle; with the rack ahead, in and out change places, as the caption says', () => {
    expect(outer[0]).toBeLessThan(corner.wheelCentre[0]);
    const ahead = {
      ...corner,
      tieRod: { inner: [-inner[0], inner[1], inner[2]], outer: [-outer[0], outer[1], outer[2]] },
    } as const satisfies IndependentCorner;
    const byHeight = (of: IndependentCorner) => {
      const at = (mm: number) => withInner(of, [of.tieRod.inner[0], of.tieRod.inner[1], of.tieRod.inner[2] + mm]);
      return toeChanges(at(10), [40])[0]! - toeChanges(at(-10), [40])[0]!;
    };
    expect(byHeight(corner)).toBeGreaterThan(0.5);
    expect(byHeight(ahead)).toBeLessThan(-0.5);
    expect(text).toContain('ahead of it, in and out change places');
  });

  it('takes a raised inner end as it takes a lowered outer end, and neither changes the bow by much', () => {
    const [droop, bump] = toeChanges(corner, [-40, 40]) as [number, number];
    for (const of of [raised(5), withOuterRaised(corner, -5)]) {
      const [inDroop, inBump] = toeChanges(of, [-40, 40]) as [number, number];
      expect(inBump).toBeGreaterThan(bump + 0.2);
      expect(inDroop).toBeLessThan(droop - 0.2);
      expect(Math.abs(inDroop + inBump - droop - bump)).toBeLessThan(0.05);
    }
  });

  it('is solved the same by the core, with the joint, the shim and toe set again', () => {
    const stock = buildLinkage(EXAMPLE_CORNER);
    const change = (mm: number) => {
      const parts = withParts(stock, ballJointExtended({ mm: 22 }), tieRodEndRaised({ mm }));
      const linkage = toeReset(parts, staticAngles(stock).toe);
      const [from, to] = sweepTravel(linkage, [0, 40]).toe;
      return to! - from!;
    };
    const worked = workedToe();
    expect(change(0)).toBeCloseTo(worked['toe.lowered']!.value(), 6);
    expect(change(-22)).toBeCloseTo(toeChanges(corrected, [40])[0]!, 6);
  });

  it('with the rack behind the axle, has toe-out in bump cured by the outer end lower, or the inner end higher, as the page says', () => {
    expect(text).toContain('With the rack behind the axle, lower it where the wheel toes out in bump');
    const [before] = toeChanges(lowered, [40]) as [number];
    expect(before).toBeLessThan(-1);
    for (const of of [withOuterRaised(lowered, -5), raised(5, lowered)])
      expect(toeChanges(of, [40])[0]!).toBeGreaterThan(before + 0.2);
  });

  it('is made flatter by the amount that the page names than by 1 mm more or less', () => {
    const spread = (mm: number) => {
      const toe = [0, ...toeChanges(withOuterRaised(lowered, -mm), travels)];
      return Math.max(...toe) - Math.min(...toe);
    };
    expect(spread(shimMm())).toBeLessThan(spread(shimMm() - 1));
    expect(spread(shimMm())).toBeLessThan(spread(shimMm() + 1));
  });
});

test('the gauges of the page give the same toe by the function that reads dials', () => {
  const worked = workedToe();
  expect(toeFromDials(1, 0, 300)).toBeCloseTo(worked['toe.dials']!.value(), 8);
  expect(toeFromDials(1.5, 0, 430)).toBeCloseTo(worked['toe.plate']!.value(), 8);
  expect(text).toContain('Toe = atan((front − rear) ÷ base), toe-in positive.');
});

test('a reader scrolls through at most 1,200 words, pictures, contents and what is folded away not counted', () => {
  expect(wordsRead(html)).toBeLessThanOrEqual(1200);
});

test('the page names no tolerance, and says that there is none', () => {
  expect(text).toContain('No standard gives a tolerance that we could find.');
  expect(text).not.toMatch(/\b(?:acceptable|allowed|permissible|within limits)\b/i);
});

test('home page and both pages about the joint lead to it, and it leads back', () => {
  const here = 'the-wheel-that-steers-itself/';
  expect(page('index.html').match(new RegExp(`href="${here}"`, 'g'))).toHaveLength(2);
  for (const other of ['what-a-lower-ball-joint-does/', 'height-or-part/'])
    expect(page(`${other}index.html`), other).toContain(`href="../${here}"`);
  expect(html).toContain('href="../what-a-lower-ball-joint-does/');
  expect(html).toContain('href="../height-or-part/');
});

describe('the built page', () => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
    [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
  });
  afterAll(() => Promise.all([browser?.close(), site?.close()]));
  const open = async () => {
    const opened = await browser.newPage({ viewport: { width: 360, height: 780 } });
    await opened.goto(`${site.origin}/the-wheel-that-steers-itself/`);
    return opened;
  };

  it('folds its sources: closed at first, and open when the number of one is tapped', async () => {
    const opened = await open();
    const source = opened.locator('#source-gauge');
    expect(await source.isVisible()).toBe(false);
    await opened.locator('a[href$="#source-gauge"]').click();
    await source.waitFor({ state: 'visible' });
    await opened.close();
  });

  it('has its sources open on paper', async () => {
    const opened = await open();
    await opened.emulateMedia({ media: 'print' });
    expect(
      await opened.locator('#source-gauge').evaluate((one) => one.checkVisibility({ contentVisibilityAuto: true })),
    ).toBe(true);
    await opened.close();
  });
});
