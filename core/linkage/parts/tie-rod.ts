import { add } from '../../math/vector.js';
import { InputError } from '../../quantity/problem.js';
import { checkNumbers, given } from './check.js';
import { type Part, rebuilt } from './part.js';

/**
 * The tie rod's outer end raised by `mm` along z of the carrier's frame; negative lowers it. Changes that one carrier point; the
 * rod keeps its length.
 *
 * @throws InputError from `tieRodEnd`, `tieRodEnd.mm`
 */
export function tieRodEndRaised(options: { mm: number }): Part {
  const { mm } = given(options, 'tieRodEnd');
  checkNumbers({ 'tieRodEnd.mm': mm });
  return (linkage) => {
    const { carrier } = linkage;
    return rebuilt(linkage, { carrier: { ...carrier, tieOuter: add(carrier.tieOuter, [0, 0, mm]) } });
  };
}

/**
 * The rack raised in the body by `mm` along the car's z; negative lowers it. The tie rod's inner end goes with it, the one body
 * point that changes; the rod keeps its length.
 *
 * @throws InputError from `rack`, `rack.mm`
 */
export function rackRaised(options: { mm: number }): Part {
  const { mm } = given(options, 'rack');
  checkNumbers({ 'rack.mm': mm });
  return (linkage) => {
    const { body } = linkage;
    return rebuilt(linkage, { body: { ...body, tieInner: add(body.tieInner, [0, 0, mm]) } });
  };
}

/**
 * The tie rod longer by `mm` (negative: shorter): what one turns to set toe. Changes that one length.
 *
 * @throws InputError from `tieRod`, `tieRod.mm`; `out-of-range` with the shortest change as limit when nothing would be left of
 *   the rod
 */
export function tieRodLonger(options: { mm: number }): Part {
  const { mm } = given(options, 'tieRod');
  checkNumbers({ 'tieRod.mm': mm });
  return (linkage) => {
    const { lengths } = linkage;
    const tieRod = lengths.tieRod + mm;
    // Only its square is solved with: a negative length would join as well.
    if (!(tieRod > 0)) {
      throw new InputError([{ code: 'out-of-range', path: 'tieRod.mm', value: mm, limit: -lengths.tieRod }]);
    }
    return rebuilt(linkage, { lengths: { ...lengths, tieRod } });
  };
}
