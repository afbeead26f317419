import { describe, expect, it } from 'vitest';
import { sentence } from '../../../components/bumpline-clearance/bumpline-clearance.words.js';
import { changeRow } from '../../../components/bumpline-clearance/changes.words.js';
import { textOf } from '../../../components/element/sentence.js';
import { type ClearanceQuestion, clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import { tried } from '../../../core/answers/from-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import type { Place } from '../../../core/wheel/place.js';
import { finished } from '../../core/answers/finished.js';

const READER = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const LIP: Place = {
  name: 'arch lip',
  fixedTo: 'body',
  is: 'bodywork',
  at: { clock: 12, distance: 460, out: 60 },
};
const PERCH: Place = {
  name: 'spring perch',
  fixedTo: 'body',
  is: 'chassis',
  at: { clock: 12, distance: 300, out: -90, from: 'inner' },
};

/** From 225/45R17 on 7.5J ET40: the wider rim and the section put the inner sidewall further in. */
function said(places: readonly Place[], after: { size: string; rimWidthInch: number; offset: number }) {
  const asked = {
    source: { kind: 'coefficients', coefficients: [0], domain: [-80, 120] },
    sideways: 0,
    isLeft: true,
    before: { size: '225/45R17', rimWidthInch: 7.5, offset: 40 },
    after,
    places,
    limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 1 },
    drop: 25,
  } as unknown as ClearanceQuestion<AnySource>;
  const answer = finished(clearanceQuestions.clearanceSteered(tried(asked)));
  const told = { answer, isSteering: false, places, isLeft: true, lock: undefined };
  return { answer, text: textOf(sentence(told, READER)).replace(/\s/g, ' ') };
}

const WIDER = { size: '235/40R18', rimWidthInch: 8.5, offset: 35 };

describe('a tyre that goes further in where nothing was measured', () => {
  it('is never told to clear without the word that nobody looked there', () => {
    const { answer, text } = said([LIP], WIDER);
    expect(answer.verdict).toBe('clears');
    // By hand: a rim 1 in wider and 5 mm further out has its inner flange 12.7 − 5 = 7.7 mm further in; the tyre of 235 on 8.5J
    // (measuring rim of its section 8.0 to 8.5J) is wider by 16.8 mm than 225 on 7.5J, half of that less 5 mm: 3.4 mm.
    expect(text).toMatch(/ Not looked at: the inner side, where the tyre goes 3 mm further in\.$/);
    const width = answer.justClear!.find(({ id }) => id === 'width')!;
    const row = changeRow(width, true, { wheels: answer.wheels, places: [LIP], budget: answer.budget }, READER);
    expect(row.texts.map(({ main }) => main)).toContain('inner side not checked');
  });

  it('needs no such word where a place on that side was measured, or where it stays', () => {
    expect(said([LIP, PERCH], WIDER).text).not.toContain('inner side');
    expect(said([LIP], { size: '225/45R17', rimWidthInch: 7.5, offset: 30 }).text).not.toContain('inner side');
  });
});
