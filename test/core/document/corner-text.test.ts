import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withValues } from '../../../core/document/corner-text.js';

/** As a stranger's tool may write it: tabs, odd orders, numbers with zeros behind. */
const TEXT = `{
\t"kind" : "strut",
\t"toe": 0.10, "camber": -5e-1,
\t"wheelCentre": [ 0.0, 738.50 , 302 ],
\t"loadedRadius": 302,
\t"lowerArm": {"ball":[0,694,176], "rear":[-268,362,198],
\t\t"front":[24,356,193]},
\t"strut": {"top": [-79, 574, 822], "low": [-38, 625, 462]},
\t"tieRod": {"inner": [-124, 340, 256], "outer": [-128, 664, 245]}
}
`;
const read = (text: string) =>
  JSON.parse(text) as Record<string, unknown> & { wheelCentre: number[]; lowerArm: { ball: number[] } };

describe('withValues', () => {
  it('gives the very bytes back where nothing is different', () => {
    expect(withValues(TEXT, read(TEXT))).toBe(TEXT);
    fc.assert(
      fc.property(fc.json(), fc.constantFrom(undefined, 1, '\t'), (json, space) => {
        const text = `\n ${JSON.stringify(JSON.parse(json), undefined, space)}\r\n`;
        expect(withValues(text, JSON.parse(text))).toBe(text);
      }),
    );
  });

  it('writes one number anew and leaves every other byte', () => {
    const data = read(TEXT);
    data.wheelCentre[1] = 740.5;
    data.lowerArm.ball[2] = 171;
    expect(withValues(TEXT, data)).toBe(TEXT.replace('738.50', '740.5').replace('[0,694,176]', '[0,694,171]'));
  });

  it('says afterwards what it was to say, whatever that is', () => {
    fc.assert(
      fc.property(fc.json(), fc.json(), (before, after) => {
        const data = JSON.parse(after);
        // JSON has no −0.
        expect(JSON.parse(withValues(before, data))).toEqual(JSON.parse(JSON.stringify(data)));
      }),
    );
  });

  it('puts what is new behind the rest, spaced as the rest is', () => {
    expect(withValues(TEXT, { ...read(TEXT), plusMinus: { other: 3 } })).toBe(
      TEXT.replace('245]}\n}', '245]},\n\t"plusMinus": {"other":3}\n}'),
    );
    expect(withValues('{}', { other: 3 })).toBe('{"other": 3}');
  });

  it('throws at what is no JSON', () => {
    expect(() => withValues('{"kind": strut}', {})).toThrow(SyntaxError);
  });
});
