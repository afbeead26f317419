import { curveOf } from '../core/curve/curve.js';
import type { CurveData } from '../core/curve/curve-data.js';
import { plusMinus95 } from '../core/uncertainty/combine.js';

/** What of an element's answer these figures are told from; degrees and mm. */
export interface FollowedAnswer {
  curve: CurveData;
  drop?: number;
  /** Usable bump left at that drop. */
  bumpLeft?: number;
  /** Half-width of the interval that holds 95 % of readings repeated at one height. */
  repeated?: number;
  /** How far a reading typically lies off the curve. */
  residualSd?: number;
}

/**
 * A figure of the text by its name in `data-yours`, degrees or mm, as signed as the answer:
 * `value t`, `change from to`, `plus-minus t` (of the change from stock height), `bump-left drop`, `repeated`, `residual-sd`. Travels in mm
 * from stock height, bump positive. Undefined where the answer does not reach.
 * @throws {Error} for a name that nobody knows
 */
export function figureOf(name: string, answer: FollowedAnswer): number | undefined {
  const [what, ...places] = name.split(' ');
  const [a = NaN, b = NaN] = places.map(Number);
  const curve = curveOf(answer.curve);
  const known = (value: number) => (Number.isFinite(value) ? value : undefined);
  switch (what) {
    case 'value':
      return known(curve.value(a));
    case 'change':
      return known(curve.change(b, a));
    case 'plus-minus':
      return answer.curve.sources.length === 0
        ? undefined
        : known(plusMinus95(curve.changeEstimate(a, 0), answer.curve.sources));
    case 'bump-left':
      return answer.bumpLeft === undefined ? undefined : known(answer.bumpLeft + answer.drop! - a);
    case 'repeated':
      return answer.repeated;
    case 'residual-sd':
      return answer.residualSd;
    default:
      throw new Error(`No figure is called “${name}”.`);
  }
}

/**
 * Another value in the words of an example's: as many decimals, a sign where that has one, and its unit. Where the text says in words
 * which way it goes ("adds 0.39°"), the other way has a minus.
 * @param shown the example's figure as the page has it, `value` what it stands for
 */
export function inItsWords(shown: string, value: number, other: number): string {
  const [, sign, digits, unit] = /^([+−]?)([\d.]+)(.*)$/s.exec(shown)!;
  const decimals = digits!.split('.')[1]?.length ?? 0;
  const told = sign === '' && value < 0 ? -other : other;
  const size = Math.abs(told).toFixed(decimals);
  const mark = Number(size) === 0 ? '' : told < 0 ? '−' : sign === '' ? '' : '+';
  return `${mark}${size}${unit}`;
}
