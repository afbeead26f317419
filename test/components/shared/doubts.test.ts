import { describe, expect, it } from 'vitest';
import { adviceFor, doubtsText, notInDoubt, shareRows } from '../../../components/element/doubts.words.js';
import { withDoubt } from '../../../components/inputs/instruments.js';
import { readDoubts } from '../../../components/page-data/doubts-attribute.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import type { Problem } from '../../../core/quantity/problem.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';

const READER = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const plain = (text: string) => text.replace(/\u202f/g, ' ');

describe('how far the instruments can be trusted', () => {
  it('is said on one line, the defaults where nothing was said', () => {
    expect(plain(doubtsText(undefined, READER))).toBe('±1 %, ±1 %, ±2 mm, ±0.13°');
    const inches = { ...READER, units: { length: 'in', angle: 'arcminutes' } } as const;
    expect(plain(doubtsText({ gaugeScale: 2.5 }, inches))).toBe('±2.5 %, ±1 %, ±0.08 in, ±0°08′');
  });

  it('is kept only where it is not the default', () => {
    const rough = withDoubt(EXAMPLE_SETUP, 'gaugeScale', 3);
    expect(rough.doubts).toEqual({ gaugeScale: 3 });
    expect(withDoubt(rough, 'zeroHeight', 4).doubts).toEqual({ gaugeScale: 3, zeroHeight: 4 });
    expect(withDoubt(rough, 'gaugeScale', 1)).not.toHaveProperty('doubts');
    expect(EXAMPLE_SETUP).not.toHaveProperty('doubts');
  });

  it('comes from a table’s attribute, and what cannot be read is named', () => {
    const read = (text: string) => {
      const problems: Problem[] = [];
      return { doubts: readDoubts(text, problems), problems: problems.map(({ path, code }) => `${path} ${code}`) };
    };
    expect(read('gauge-scale 3 %; tape-scale ±0.5; zero-height 0.25 in; drift 0.1°')).toEqual({
      doubts: { gaugeScale: 3, tapeScale: 0.5, zeroHeight: 6.35, drift: 0.1 },
      problems: [],
    });
    expect(read('')).toEqual({ doubts: undefined, problems: [] });
    expect(read('gauge 3 %; tape-scale 3 mm; zero-height; drift -1; gauge-scale 90 %; zero-height 3 mm')).toEqual({
      doubts: { zeroHeight: 3 },
      problems: [
        'doubts wrong-shape',
        'tapeScale not-a-number',
        'doubts wrong-shape',
        'drift out-of-range',
        'gaugeScale out-of-range',
      ],
    });
  });
});

describe('what is in no ±', () => {
  const turns = fitCurve(EXAMPLE_READINGS).curve;
  const allUp = fitCurve(EXAMPLE_READINGS.filter(({ going }) => going === 'up')).curve;

  it('says which drift is allowed for, and why, where the passes go one way', () => {
    const [drift] = notInDoubt(allUp, { readings: [], doubts: { drift: 0.3 } }, READER);
    expect(drift).toContain('±0.30° in every pass');
    expect(drift).toContain('allowed for');
    expect(drift).toContain('Read the first height again');
    expect(notInDoubt(turns, undefined, READER)[0]).toContain('taken off');
  });

  it('does not advise what was done: the first height read again in every pass', () => {
    const once = EXAMPLE_READINGS.filter(({ pass }) => pass === 'Pass 1').slice(0, 6);
    const returned = [...once, { ...once[0]!, again: true as const }];
    const curve = fitCurve(returned).curve;
    // Too few readings tell a drift: it is allowed for all the same.
    const [drift] = notInDoubt(curve, { readings: returned }, READER);
    expect(drift).toContain('±0.13°');
    expect(drift).toContain('Another pass narrows it');
    expect(drift).not.toContain('Read the first height again');
    expect(adviceFor('drift', { readings: returned })).not.toContain('read the first height again');
    for (const readings of [once, [...returned, ...once.map((one) => ({ ...one, pass: 'Pass 2' }))]])
      expect(notInDoubt(curve, { readings }, READER)[0]).toContain('Read the first height again');
    expect(notInDoubt(curve, { readings: returned, setAside: [6] }, READER)[0]).toContain(
      'Read the first height again',
    );
  });

  it('names what toe was read with, and whose size the allowance has', () => {
    const overBase = { by: 'dials', base: 300, front: 'inboard' } as const;
    const said = notInDoubt(allUp, { readings: [], overBase }, READER).join(' ');
    expect(said).toContain('Dials that drift by more than ±0.13° (as much as an angle gauge is given)');
    expect(said).toContain('Dials whose scale');
    const tape = notInDoubt(turns, { readings: [], overBase: { ...overBase, by: 'tape' } }, READER).join(' ');
    expect(tape).toContain('A drift of the tape');
    expect(said + tape).not.toMatch(/[^e] gauge (?:that|whose)/);
  });

  it('names scales, zero height, a creeping body, friction and rubber, with what was said of them', () => {
    const text = plain(notInDoubt(turns, { readings: [], doubts: { tapeScale: 3, zeroHeight: 4 } }, READER).join(' '));
    for (const part of ['±1 %', '±3 %', '±4 mm', 'body that creeps', 'Friction', 'Rubber'])
      expect(text).toContain(part);
  });
});

describe('what a ± is made of', () => {
  it('leaves out what is less than half a percent, and says what would narrow the rest', () => {
    const rows = shareRows(
      [
        { id: 'readings', label: 'the readings', share: 0.7 },
        { id: 'zeroHeight', label: 'the zero height', share: 0.297 },
        { id: 'tapeScale', label: 'the tape’s scale', share: 0.003 },
      ],
      'en',
    );
    expect(rows.map(({ label, percent }) => `${label} ${plain(percent)}`)).toEqual([
      'the readings 70 %',
      'the zero height 30 %',
    ]);
    for (const id of ['readings', 'drift', 'gaugeScale', 'tapeScale', 'zeroHeight']) expect(adviceFor(id)).toBeTruthy();
    expect(adviceFor('drop')).toBe(undefined);
  });
});
