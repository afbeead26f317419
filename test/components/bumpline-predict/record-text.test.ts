import { describe, expect, it } from 'vitest';
import { plusMinusText } from '../../../components/bumpline-predict/bumpline-predict.words.js';
import type { Agreed } from '../../../components/bumpline-predict/predict-view.js';
import { keptChange, recordCsv, recordJson } from '../../../components/bumpline-predict/record-text.js';
import { dateText } from '../../../components/element/day.js';
import type { Prediction } from '../../../core/document/predictions.js';

/** Invented. */
const PREDICTION: Prediction = {
  ...{ made: '2026-11-30', version: '0.1.0', name: 'Joint', parts: [{ part: 'armLonger', mm: 5 }], quantity: 'camber' },
  ...{ drop: 20, over: 20, from: 'points', readings: 51, passes: 3, byTape: 0.1, start: 10, step: 10 },
  change: [0.1, 0, -0.09, -0.17],
  plusMinus: [0.01, 0, 0.01, 0.02],
};
const AGREED: Agreed = {
  ...{ prediction: PREDICTION, readings: 2, inside: 1, chiSquare: 1.23456, dof: 1, chance: 0.2665 },
  travel: Float64Array.of(12.5, 30),
  value: Float64Array.of(0.0712345, -0.08),
  from: Float64Array.of(10, 20, 30, 40),
  predicted: Float64Array.from(PREDICTION.change),
};

describe('the record of a prediction', () => {
  it('writes its day as British English does, and as any other language does', () => {
    const day = (language: string) => dateText('2026-11-30', { units: { length: 'mm', angle: 'degrees' }, language });
    expect(day('en')).toBe('30 November 2026');
    expect(day('en-US')).toBe('30 November 2026');
    expect(day('de')).toBe('30. November 2026');
  });

  it('writes a ± beside another to the same place, in tenths beside tenths', () => {
    const display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
    expect(plusMinusText(0.2, display, 0.06)).toBe('±\u202f0.20°');
    expect(plusMinusText(0.45, display, 0.3)).toMatch(/^±\u202f0\.[45]\d?°$/);
  });

  it('tells the change over the bump that was asked, with its ±', () => {
    expect(keptChange(PREDICTION)).toEqual({ value: -0.17, plusMinus: 0.02 });
  });

  it('is a table of what was predicted and what was measured, by travel', () => {
    expect(recordCsv(PREDICTION, AGREED).split('\r\n')).toEqual([
      'Travel from stock height (mm),Predicted change (°),± (°),Measured change (°)',
      '10,0.1,0.01,',
      '12.5,,,0.0712',
      '20,0,0,',
      '30,-0.09,0.01,',
      '30,,,-0.08',
      '40,-0.17,0.02,',
      '',
    ]);
  });

  it('is JSON with the prediction as it was kept and the agreement as numbers', () => {
    const { prediction, measured } = JSON.parse(recordJson(PREDICTION, AGREED)) as {
      prediction: Prediction;
      measured: { chiSquare: number; readings: { travel: number; change: number }[] };
    };
    expect(prediction).toEqual(PREDICTION);
    expect(measured.chiSquare).toBe(1.2346);
    expect(measured.readings[0]).toEqual({ travel: 12.5, change: 0.0712 });
    expect(JSON.parse(recordJson(PREDICTION, undefined))).toEqual({ prediction: PREDICTION });
  });
});
