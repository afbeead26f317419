import { expect, it } from 'vitest';
import { independentJointBreakEven, withLoweredJoint } from '../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep } from '../reference/independent-strut.js';
import { cornerFromTable, inside, page, wordsRead } from './site-source.js';

/* The figure of the page on lower ball joints is drawn from the same corner, by solvers that share nothing with core/. */
const article = page('what-a-lower-ball-joint-does/index.html');
const { corner } = cornerFromTable(inside(article, 'table', 'data-example'));
const JOINT = { mm: 22, isTieRodCorrected: true };
const lowered = withLoweredJoint(corner, JOINT);
/** By how much further down the standard joint's curve the lowered one begins, mm. */
const shift = independentJointBreakEven(corner, JOINT, 40);

const SCALE = { x: 2.2, y: -110 };
const ORIGIN = { x: 154, y: 181 };

const camberFrom = (of: IndependentCorner, start: number, travels: readonly number[]): number[] => {
  const [first, ...rest] = independentStrutSweep(of, [start, ...travels]);
  return rest.map(({ camber }) => camber - first!.camber);
};

it.each([
  ['standard', corner, 0, -50, 70],
  ['22 mm lower', lowered, shift, -25, 85],
] as const)(
  'the figure draws the curve of the %s joint where the second solver has it, to half a pixel',
  (name, of, from, low, high) => {
    const path = new RegExp(`data-curve="${name}"[^>]* d="M([^"]+)"`).exec(article)![1]!;
    const drawn = path.split('L').map((pair) => pair.split(' ').map(Number) as [number, number]);
    const travels = Array.from({ length: (high - low) / 5 + 1 }, (_, i) => low + 5 * i);
    const camber = camberFrom(of, from, travels);
    expect(drawn).toHaveLength(travels.length);
    drawn.forEach(([x, y], i) => {
      expect(Math.abs(x - (ORIGIN.x + SCALE.x * (travels[i]! - from)))).toBeLessThan(0.5);
      expect(Math.abs(y - (ORIGIN.y + SCALE.y * camber[i]!))).toBeLessThan(0.5);
    });
  },
);

it('the two curves are one, to the hundredth of a degree that the page says, between the travels that it names', () => {
  const travels = [-30, -20, -10, 10, 20, 30, 40, 50];
  const standard = camberFrom(corner, 0, travels);
  const again = camberFrom(
    lowered,
    shift,
    travels.map((travel) => travel + shift),
  );
  for (const [i, camber] of standard.entries()) expect(Math.abs(camber - again[i]!)).toBeLessThan(0.005);
});

it('the page says in words what the corner has: 7° of caster, its rack behind the axle, and 1.1 times what the ball went down', () => {
  const text = article.replace(/&nbsp;/g, ' ');
  expect(text).toContain('has its rack (the gear that moves the tie rods) behind the axle and 7° of caster');
  expect(independentStrutSweep(corner, [0])[0]!.caster.toFixed(0)).toBe('7');
  expect(corner.tieRod.outer[0]).toBeLessThan(corner.wheelCentre[0]);
  expect(text).toContain('about 1.1 times what the ball went down');
  for (const mm of [10, 15, 22]) {
    const even = independentJointBreakEven(corner, { mm, isTieRodCorrected: true }, 40);
    expect((even / mm).toFixed(1)).toBe('1.1');
  }
});

it('with the rack ahead and the tie rod left as it was, the wheel toes in as it rises and gains more camber, as the page says', () => {
  const { inner, outer } = corner.tieRod;
  const ahead: IndependentCorner = {
    ...corner,
    tieRod: { inner: [-inner[0], inner[1], inner[2]], outer: [-outer[0], outer[1], outer[2]] },
  };
  const over = (of: IndependentCorner) => {
    const [here, there] = independentStrutSweep(of, [25, 65]);
    return { toe: there!.toe - here!.toe, camber: there!.camber - here!.camber };
  };
  const leftAlone = over(withLoweredJoint(ahead, { mm: 22, isTieRodCorrected: false }));
  expect(leftAlone.toe).toBeGreaterThan(0.5);
  expect(leftAlone.camber).toBeLessThan(over(withLoweredJoint(ahead, JOINT)).camber - 0.1);
  expect(article).toContain('with the rack ahead the wheel toes in as it rises');
});

it('a reader scrolls through at most 1,200 words, pictures, contents and what is folded away not counted', () => {
  expect(wordsRead(article)).toBeLessThanOrEqual(1200);
});
