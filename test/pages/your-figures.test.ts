import { describe, expect, it } from 'vitest';
import { curveFromCoefficients } from '../../core/curve/from-coefficients.js';
import { figureOf, inItsWords } from '../../site/your-figures.js';

/* −0.5° − 0.0136 °/mm · t + 0.00011 °/mm² · t², of which each figure is worked out by hand beside its check. */
const curve = curveFromCoefficients({ coefficients: [-0.5, -0.0136, 0.00011], domain: [-60, 80] });
const answer = { curve, drop: 30, bumpLeft: 32 };

describe('a figure of the text is told from the reader’s answer', () => {
  it.each([
    // −0.5 − 0.408 + 0.099
    ['value 30', -0.809],
    // −0.408 + 0.099
    ['change 0 30', -0.309],
    // −0.0136 · 10 + 0.00011 · (900 − 400)
    ['change 20 30', -0.081],
    // 30 mm lower leave 32 mm, so 10 mm lower leave 52 mm
    ['bump-left 10', 52],
  ])('%s', (name, value) => {
    expect(figureOf(name, answer)).toBeCloseTo(value, 9);
  });

  it.each(['value 90', 'change 0 90', 'plus-minus 30'])('%s is left out, since nothing is known of it', (name) => {
    expect(figureOf(name, answer)).toBeUndefined();
  });

  it('and is left out where bump travel was not entered', () => {
    expect(figureOf('bump-left 10', { curve, drop: 30 })).toBeUndefined();
  });

  it('how readings repeat and scatter is told as the answer has it', () => {
    const readings = { curve, repeated: 0.05, residualSd: 0.021 };
    expect(figureOf('repeated', readings)).toBe(0.05);
    expect(figureOf('residual-sd', readings)).toBe(0.021);
  });

  it('a name that nobody knows is a mistake of the page', () => {
    expect(() => figureOf('kingpin 30', answer)).toThrow('“kingpin 30”');
  });
});

describe('it stands in the words of the example’s', () => {
  it.each([
    ['−0.39°', -0.3922, -0.456, '−0.46°'],
    ['+0.05°', 0.0517, -0.02, '−0.02°'],
    // The text says “adds 0.39° of negative camber”.
    ['0.39°', -0.3922, -0.456, '0.46°'],
    ['0.39°', -0.3922, 0.1, '−0.10°'],
    ['32\u00a0mm', 32, 7.4, '7\u00a0mm'],
    ['32\u00a0mm', 32, -7.4, '−7\u00a0mm'],
    ['−0.03°', -0.0283, -0.001, '0.00°'],
    ['0.07°', 0.0685, 0.0512, '0.05°'],
  ])('%s for %d, and %d is %s', (shown, value, other, told) => {
    expect(inItsWords(shown, value, other)).toBe(told);
  });
});
