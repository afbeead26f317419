import { describe, expect, it } from 'vitest';
import { hint, reasons, unmeasuredText } from '../../../components/bumpline-lowering/bumpline-lowering.labels.js';
import {
  type Display,
  ownership,
  sentence,
  spoken,
} from '../../../components/bumpline-lowering/bumpline-lowering.words.js';
import { dropText } from '../../../components/element/drop-words.js';
import { problemText } from '../../../components/inputs/sheet.labels.js';
import { lowering } from '../../../core/answers/from-source.js';
import type { LoweringAnswer } from '../../../core/answers/lowering.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { takeCorner } from '../../../core/document/take-corner.js';

const POINTS_CAR = { ...EMPTY_CAR, by: 'points' as const };
const display: Display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' };
const arcminutes: Display = { units: { length: 'in', angle: 'arcminutes' }, language: 'en' };

/** Spaces of any width as one plain space: what the eye reads. */
const plain = (text: string) => text.replace(/[\s\u202f]+/g, ' ').trim();

const base: LoweringAnswer = lowering({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, drop: 30 });
const say = (change: Partial<LoweringAnswer>, how = display, car = EMPTY_CAR) =>
  plain(spoken({ ...base, ...change }, car, how));

describe('the sentence', () => {
  it('says how much negative camber is added, with its doubt', () => {
    expect(say({ change: { value: -0.391, plusMinus: 0.034 } })).toMatch(
      /^Lowering 30 mm adds 0\.39° ± 0\.03° of negative camber\./,
    );
  });
  it('leaves the doubt out where none was stated', () => {
    expect(say({ change: { value: -0.391 } })).toMatch(/adds 0\.39° of negative camber\./);
  });
  it('says that negative camber is taken away when the change is positive', () => {
    expect(say({ change: { value: 0.2, plusMinus: 0.03 } })).toMatch(/takes 0\.20° ± 0\.03° of negative camber away\./);
  });
  it('says raising for a negative drop, with a positive amount', () => {
    expect(say({ drop: -20, change: { value: 0.31 } })).toMatch(/^Raising 20 mm takes 0\.31° of negative camber away/);
  });
  it('does not claim a change that its doubt covers', () => {
    expect(say({ change: { value: -0.02, plusMinus: 0.05 } })).toMatch(
      /changes camber by −0\.02° ± 0\.05°, too small to tell from zero/,
    );
  });
  it('says that no drop changes nothing', () => {
    expect(say({ drop: 0, change: { value: 0 } })).toMatch(/^Lowering 0 mm changes nothing\./);
  });
  it.each([
    [32, /and leaves 32 mm of bump\./],
    [0, /and leaves no bump\./],
  ])('with %d mm of bump left', (bumpLeft, expected) => {
    expect(say({ bumpLeft })).toMatch(expected);
  });
  it('says which limit governs, and when the stop is touched before it is solid', () => {
    const end = (left: number, governedBy = 'stop') => ({ left, travel: left + 30, governedBy });
    const budget = (bump: object) => ({ bump: { limits: [], ...bump }, droop: { limits: [] }, changes: [] });
    const told = (bump: object, bumpLeft: number) => say({ bumpLeft, budget: budget(bump) as never });
    expect(told({ touch: end(5.2), solid: end(31.6) }, 31.6)).toMatch(
      /and leaves 31\.6 mm of bump, ended by the bump stop and touched after 5 mm\./,
    );
    expect(told({ touch: end(5), solid: end(20, 'damper') }, 20)).toMatch(
      /leaves 20 mm of bump, ended by the damper’s own end/,
    );
    expect(told({ touch: end(-7), solid: end(19) }, 19)).toMatch(
      /leaves 19 mm of bump, ended by the bump stop, which it stands on already\./,
    );
    expect(told({ touch: end(12) }, 12)).toMatch(/and leaves 12 mm of bump to the first touch of the stop\./);
    expect(told({ touch: end(-3) }, -3)).toMatch(/and stands on its bump stop\./);
    expect(told({ touch: end(-40), solid: end(-12) }, -12)).toMatch(/puts it 12 mm past its solid stop/);
    expect(told({ solid: end(22, 'bumpTravel') }, 22)).toMatch(/leaves 22 mm of bump\./);
  });
  it('states how sure the bump left is, and claims neither side of solid that its ± does not hold', () => {
    const told = (left: number, plusMinus: number, more: object = {}) => {
      const solid = { left, travel: left + 30, governedBy: 'stop', plusMinus };
      const budget = { bump: { limits: [], solid }, droop: { limits: [] }, changes: [] };
      return say({ bumpLeft: left, budget: budget as never, ...more });
    };
    expect(told(31.6, 9.8)).toMatch(/and leaves 32 ± 10 mm of bump, ended by the bump stop/);
    expect(told(31.64, 2.1)).toMatch(/and leaves 32 ± 2 mm of bump/);
    expect(told(4, 9.8)).toMatch(/and leaves 4 ± 10 mm of bump/);
    expect(told(-4, 9.8)).toMatch(/and leaves at most 6 mm of bump, ended by the bump stop/);
    expect(told(-12.4, 9.8)).toMatch(/puts it 12 ± 10 mm past its solid stop, where it cannot stand/);
  });
  it('says first that nothing stands below its solid stop', () => {
    expect(say({ bumpLeft: -5, change: { value: -0.39 } })).toMatch(
      /^Lowering 30 mm puts it 5 mm past its solid stop, where it cannot stand\. Without the stop it would add 0\.39° of negative camber\.$/,
    );
  });
  it('says how far left and right are apart where that matters', () => {
    const own = { ...POINTS_CAR, ...takeCorner(EXAMPLE_CORNER), provenance: { corner: { by: 'user' as const } } };
    const apart = (difference: number) => say({ other: { camberAfter: -1, difference } }, display, own);
    expect(apart(-0.31)).toContain('Left and right differ by 0.31°.');
    expect(apart(0.2)).not.toContain('differ');
  });
  it('says where it puts the camber of who gave one', () => {
    const given = { ...takeCorner(EXAMPLE_CORNER).given, camber: -1.1 };
    const own = { ...POINTS_CAR, provenance: { corner: { by: 'user' as const } }, given };
    expect(say({ camberAfter: -1.45 }, display, own)).toMatch(/of negative camber, to −1\.45°\./);
    expect(say({ camberAfter: -1.45 })).not.toContain('to −1.45°');
  });
  it('says where the change turns back, rounded as its doubt allows', () => {
    const reversal = { travel: { value: 64.62, plusMinus: 3.2 }, change: -0.56 };
    expect(say({ reversal })).toMatch(/The change slows, and turns back 65 ± 3 mm lower\.$/);
    expect(say({ reversal, drop: 70 })).toMatch(/Past 65 ± 3 mm it turns back\.$/);
    expect(say({ reversal, bumpLeft: 20 })).toMatch(/The change slows all the way to the stop\.$/);
  });
  it('says whether it slows or grows where it does not turn back, and of a raised car which way it went', () => {
    const { reversal, ...rest } = base;
    const words = (after: number, drop = 30) =>
      plain(
        sentence({ ...rest, drop, rateBefore: { value: -0.02 }, rateAfter: { value: after } }, EMPTY_CAR, display)
          .map((s) => s.text)
          .join(''),
      );
    expect(words(-0.01)).toMatch(/The change slows the lower it goes\.$/);
    expect(words(-0.03)).toMatch(/The change grows the lower it goes\.$/);
    expect(words(-0.03, -20)).toMatch(/The change grows the higher it goes\.$/);
    // Where lowering would turn back says nothing of raising.
    expect(say({ drop: -20, change: { value: 0.3 }, reversal: reversal! })).not.toMatch(/turns back/);
  });
  it('states no ± for a car that is part the user’s or a page’s, and says how much of it is not', () => {
    const points = { wheelCentre: [0, 740, 300] as const };
    const car = { ...POINTS_CAR, provenance: { corner: { by: 'user' as const } }, given: { points } };
    const change = { value: -0.391, plusMinus: 0.034 };
    expect(say({ change }, display, car)).toMatch(
      /adds 0\.39° of negative camber\..* But 7 points of this are still the example’s\.$/,
    );
    expect(
      say({ change }, display, {
        ...car,
        provenance: { corner: { by: 'user', standIn: { given: { points } } } },
      }),
    ).toContain('still the page’s');
    expect(say({ change }, display, { ...car, provenance: { corner: { by: 'page' } } })).toMatch(
      /But 7 points of this are still the example’s\.$/,
    );
    const { given: whole } = takeCorner(EXAMPLE_CORNER);
    expect(say({ change }, display, { ...car, provenance: { corner: { by: 'page' } }, given: whole })).toContain(
      '± 0.03°',
    );
  });
  it('speaks inches and minutes of arc', () => {
    expect(say({ drop: 25.4, change: { value: -0.5, plusMinus: 0.05 } }, arcminutes)).toMatch(
      /^Lowering 1 in adds 0°30′ ± 3′ of negative camber/,
    );
  });
  it('writes numbers in the language of the page', () => {
    expect(say({ change: { value: -0.391 } }, { ...display, language: 'de' })).toContain('0,39°');
  });
});

describe('the words around it', () => {
  it('tell the example from what is somebody’s', () => {
    const points = { wheelCentre: [0, 740, 300] as const };
    expect(ownership(EMPTY_CAR)).toBe('Example');
    expect(ownership({ ...POINTS_CAR, provenance: { corner: { by: 'user' } }, given: { points } })).toBe(
      '1 of 8 points yours',
    );
    expect(ownership({ ...POINTS_CAR, provenance: { corner: { by: 'page' } }, given: { points } })).toBe(
      '1 of 8 points from this page',
    );
    const all = takeCorner(EXAMPLE_CORNER).given;
    const { camber: _, toe: __, ...bare } = all;
    const own = (given: typeof all) => ownership({ ...POINTS_CAR, provenance: { corner: { by: 'user' } }, given });
    expect(own(bare)).toBe('points yours, camber and toe the example’s');
    expect(own({ ...bare, camber: -1 })).toBe('points yours, toe the example’s');
    expect(own(all)).toBe('all yours');
  });
  it('name the measurement that makes most of the doubt, and nothing when none was stated', () => {
    expect(plain(hint(base, EMPTY_CAR, display)!)).toMatch(
      /^The low point of the damper accounts for \d+ % of this ±\.$/,
    );
    expect(hint({ ...base, contributions: [] }, EMPTY_CAR, display)).toBeUndefined();
    const own = { ...POINTS_CAR, ...takeCorner(EXAMPLE_CORNER), provenance: { corner: { by: 'user' as const } } };
    // Of a mixed car there is no ± to speak of.
    expect(hint(base, { ...own, given: { points: {} } }, display)).toBeUndefined();
    expect(
      plain(hint({ ...base, contributions: [{ id: 'drop', label: 'the drop', share: 0.6 }] }, own, display)!),
    ).toBe('The drop accounts for 60 % of your ±: worth measuring again, more carefully.');
  });
  it('give the rates at both heights', () => {
    const rows = reasons(base, display).map(({ label, text }) => plain(`${label}: ${text}`));
    expect(rows[0]).toMatch(/^Camber rate at stock height: −0\.16\d?° ± 0\.0\d\d?° per 10 mm$/);
    expect(rows[1]).toMatch(/^Camber rate 30 mm lower: −0\.09\d?°/);
  });
  it('name a field as its sheet does', () => {
    const problem = { code: 'not-a-number', path: 'lowerArm.ball.2', value: 'x' } as const;
    expect(problemText(problem, display)).toMatch(/^Lower ball joint, z: “x” cannot be read/);
    expect(problemText({ code: 'outside-domain', path: 'drop', value: 140, limit: 120 }, display)).toMatch(
      /^Drop is 140/,
    );
  });
  it('show the drop as an amount', () => {
    expect(plain(dropText(-12.5, display))).toBe('12.5 mm');
  });
});

describe('words of readings', () => {
  const setup = {
    name: 'Standard arms',
    cornerName: 'Rear right' as const,
    quantity: 'camber' as const,
    readings: [0, 5, 10].map((travel) => ({ travel, value: 0, pass: 'A' })),
  };
  const car = { ...EMPTY_CAR, by: 'readings' as const, setups: [setup] };

  it('count readings and passes, those set aside apart', () => {
    expect(ownership(car)).toBe('from 3 readings in 1 pass, Standard arms');
    expect(ownership({ ...car, setups: [{ ...setup, setAside: [0, 1] }] })).toBe(
      'from 1 reading in 1 pass (2 set aside), Standard arms',
    );
  });

  it('say the camber at the drop: it was read', () => {
    expect(say({ camberAfter: -0.93 }, display, car)).toContain('of negative camber, to −0.93°');
    expect(say({ camberAfter: -0.93 })).not.toContain('−0.93°');
  });

  it('say nothing of a course that cannot be told from the readings', () => {
    const { reversal: _, ...rest } = base;
    expect(plain(spoken(rest, car, display))).toContain('the lower it goes');
    expect(plain(spoken({ ...rest, isStraight: true }, car, display))).not.toContain('the lower it goes');
  });

  it('say that another pass narrows the ±', () => {
    const contributions = [
      { id: 'readings', label: 'the readings', share: 0.8 },
      { id: 'drop', label: 'the drop', share: 0.2 },
    ];
    expect(plain(hint({ ...base, contributions }, { ...car, provenance: { corner: { by: 'user' } } }, display)!)).toBe(
      'The readings account for 80 % of your ±: another pass narrows it.',
    );
    expect(hint({ ...base, contributions: contributions.slice(0, 1) }, car, display)).toBe(undefined);
  });

  it.each([
    [
      { path: 'drop', value: 60, limit: 50 },
      '60 mm lower: nothing was measured there. The readings end at 50 mm of bump.',
    ],
    [
      { path: 'drop', value: -40, limit: -35 },
      '40 mm higher: nothing was measured there. The readings end at 35 mm of droop.',
    ],
    [
      { path: 'other.drop', value: 60, limit: 50 },
      'On the other side 60 mm lower: nothing was measured there. The readings end at 50 mm of bump.',
    ],
    [
      { path: 'stockHeight', value: 0, limit: 25 },
      'Stock height was not measured: the readings begin at 25 mm of bump from it, and every change is counted from there.',
    ],
    [
      { path: 'stockHeight', value: 0, limit: -10 },
      'Stock height was not measured: the readings end at 10 mm of droop from it, and every change is counted from there.',
    ],
  ])('name what was not measured: %o', (problem, expected) => {
    expect(plain(unmeasuredText({ code: 'outside-domain', ...problem }, display)!)).toBe(expected);
  });
});
