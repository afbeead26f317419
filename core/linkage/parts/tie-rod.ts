import { add } from '../../math/vector.js';
import { checkNumbers, type Part, rebuilt } from './part.js';

/** The tie rod's outer end raised in the carrier's frame, mm; negative lowers it. The rod keeps its length. */
export function tieRodEndRaised({ mm }: { mm: number }): Part {
  checkNumbers({ 'tieRodEnd.mm': mm });
  return (linkage) => {
    const { carrier } = linkage;
    return rebuilt(linkage, { carrier: { ...carrier, tieOuter: add(carrier.tieOuter, [0, 0, mm]) } });
  };
}

/** The rack raised in the body, mm: the tie rod's inner end goes with it. */
export function rackRaised({ mm }: { mm: number }): Part {
  checkNumbers({ 'rack.mm': mm });
  return (linkage) => {
    const { body } = linkage;
    return rebuilt(linkage, { body: { ...body, tieInner: add(body.tieInner, [0, 0, mm]) } });
  };
}

/** The tie rod longer by `mm`: what one turns to set toe. */
export function tieRodLonger({ mm }: { mm: number }): Part {
  checkNumbers({ 'tieRod.mm': mm });
  return (linkage) => rebuilt(linkage, { lengths: { ...linkage.lengths, tieRod: linkage.lengths.tieRod + mm } });
}
