import { fittedWheel } from '../wheel/fitted-wheel.js';
import { envelopeOf } from './envelope-of.js';
import type { Trial, Trials } from './trial.js';
import type { OtherTyre } from './what-is-sold.js';

/** A rim an inch less across moves its own lip and barrel by about so much, mm. */
const OTHER_RIM_MM = 30;

/**
 * Of tyres that can be bought, the nearest first: the first that clears, or, from a wheel that clears, the last before one that
 * does not. Each is tried whole, with its own width, diameter and shape.
 *
 * @param wheel the trial of the wheel in question as it is
 * @returns undefined where there is none
 */
export function* otherTyre(
  sizes: readonly OtherTyre[],
  clears: boolean,
  wheel: Trial,
  trials: Trials,
): Generator<undefined, OtherTyre | undefined> {
  let last: OtherTyre | undefined;
  for (const other of sizes) {
    const { section, shift } = wheel.envelope;
    const envelope = envelopeOf(fittedWheel(other.spec), shift);
    const isOtherRim = Math.abs(envelope.section.innerRadius - section.innerRadius) > 1;
    const reach =
      2 * Math.abs(envelope.section.halfWidth - section.halfWidth) +
      2 * Math.abs(envelope.section.freeRadius - section.freeRadius) +
      (isOtherRim ? OTHER_RIM_MM : 0);
    const trial = { ...wheel, envelope };
    const isFree = trials.isFreeAt(trial, trials.decisive) && (yield* trials.spotsNotFree(trial, reach)).length === 0;
    yield;
    if (clears && !isFree) return last;
    if (!clears && isFree) return other;
    last = other;
  }
  return clears ? last : undefined;
}
