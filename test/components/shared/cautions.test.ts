import { describe, expect, it } from 'vitest';
import { byHand } from '../../../components/element/by-hand.js';
import { CAUTIONS, type CautionId } from '../../../components/element/cautions.js';
import { sheetOf } from '../../../components/inputs/car-sheets.js';
import { LIMIT_SHEETS } from '../../../components/inputs/limit-sheets.js';
import { METRIC } from '../../../core/quantity/units.js';

const display = { units: METRIC, language: 'en' };
const said = (...of: Parameters<typeof byHand>) => byHand(...of).replace(/\u202f/g, ' ');

describe('the caution on full bump by hand', () => {
  it.each([
    [
      'hub to arch, where the lip was measured',
      { shorter: 48, hubToArch: 318, whose: 'yours' as const },
      /Raise the arm slowly to 318 mm hub to arch and no further\./,
    ],
    [
      'by how much hub to arch shrinks, where it was not',
      { shorter: 32, whose: 'yours' as const },
      /until hub to arch is 32 mm shorter than on its wheels, 30 mm lower, and no further\./,
    ],
    [
      'where it comes from, where nobody knows',
      undefined,
      /to the hub-to-arch height where the stop would be solid and no further\./,
    ],
  ])('says %s', (_, full, words) => {
    expect(said(full, 30, display)).toMatch(words);
  });

  it.each([undefined, { shorter: 32, whose: 'yours' as const }])(
    'says the whole procedure, whatever is known: %j',
    (full) => {
      const text = said(full, 0, display);
      for (const part of [
        'spring and bump stop out',
        'axle stands under the jacking points',
        'nobody in the car, under it or beside the arm',
        'slowly',
        'no further',
        'Quit at once if anything touches or a mark on the sill moves',
      ])
        expect(text).toContain(part);
    },
  );

  it('never passes the example’s or a page’s height off as the reader’s', () => {
    expect(said({ shorter: 62, whose: 'example' }, 0, display)).toContain('(the example; work out your own)');
    expect(said({ shorter: 62, whose: 'page' }, 0, display)).toContain('(this page’s car; work out your own)');
    expect(said({ shorter: 62, whose: 'yours' }, 0, display)).not.toContain('work out your own');
  });

  it('is written in the reader’s units', () => {
    expect(
      said({ shorter: 48, hubToArch: 318, whose: 'yours' }, 0, { ...display, units: { ...METRIC, length: 'in' } }),
    ).toContain('to 12.52 in hub to arch');
  });
});

describe('cautions', () => {
  it.each(Object.entries(CAUTIONS))('%s is short enough to be read', (_, text) => {
    expect(text.length).toBeLessThan(320);
    expect(text).toMatch(/\.$/);
  });

  /** What the hand that moves a corner has to be told, beside the spring. */
  it.each<[CautionId, RegExp]>([
    ['springOut', /spring and bump stop out/i],
    ['springOut', /damper bottoms/],
    ['carried', /level-sensor links, adaptive-damper leads, the anti-roll bar’s links/],
    ['carried', /brake hose, sensor lead and driveshaft must not hang/],
    ['hub', /rubber top mount moves/],
    ['bushes', /only until the rubber is free/],
    ['lowJoint', /end of its swing/],
    ['lowJoint', /engineered parts only/],
    ['camber', /clamp force/],
    ['spring', /at least half of its circumference/],
    ['stands', /never under a car on a jack/i],
  ])('%s says %s', (id, words) => {
    expect(CAUTIONS[id]).toMatch(words);
  });
});

describe('sheets that ask for what is found by moving a corner', () => {
  const cautionsOf = (key: string) => [sheetOf(key)?.caution ?? []].flat();
  it.each([
    ['bumpTravel', ['springOut']],
    ['limits.strokeBump', ['spring']],
    ['limits.strokeDroop', ['stands', 'carried']],
    ['limits.shaftBump', ['springOut', 'carried']],
  ])('%s has its cautions beside the field', (key, ids) => {
    expect(cautionsOf(key)).toEqual(ids);
  });

  it('do not ask for a jack where a damper on the bench will do', () => {
    const stroke = LIMIT_SHEETS.find(({ key }) => key === 'limits.strokeBump')!;
    expect(stroke.howTo).toContain('with the damper off the car');
  });
});
