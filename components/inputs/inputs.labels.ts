import { words } from '../../core/quantity/words.js';

/** English words of every sheet, besides those of its own number, and of the rows that open one. */
export const NAMES = words('inputs/inputs', {
  back: 'Back',
  next: 'Next',
  done: 'Done',
  removeOptional: 'Leave it out',
  clear: 'Clear',
  howSure: 'How sure are you?',
  whileMeasuring: 'While you measure',
  orFigure: 'or ±',
  turnSign: 'change the sign',
  numbers: 'Measurements used',
  fields: {
    drop: 'Drop',
    change: 'Camber change by lowering',
    readings: 'Readings',
    degree: 'Degree of the curve',
    zeroAt: 'Height that the readings call zero',
  },
  moreCaster: (angle: string): string => `more than ${angle}° of caster`,
  moreBumpSteer: (angle: string): string => `more than ${angle}° of bump steer for each mm`,
  notCovered: (missing: readonly string[]): string =>
    `The ± does not cover a car with ${missing.join(' or ')} unless you enter ${missing.length > 1 ? 'them' : 'it'}.`,
  ofRun: (corner: string, step: number, all: number): string => `${corner} · ${step} of ${all}`,
  takeAgain: (whose: string): string => `Use ${whose} value again`,
  halfCounts: (names: readonly string[], whose: readonly string[]): string =>
    `${names.join(' and ')} ${names.length === 1 ? 'is' : 'are'} missing: what stands there in italics (${whose.join(', ')}) is used until you enter ${names.length === 1 ? 'it' : 'them'}. Press again to go on without.`,
  halfAlone: (names: readonly string[]): string =>
    `${names.join(' and ')} ${names.length === 1 ? 'is' : 'are'} missing: without ${names.length === 1 ? 'it' : 'them'} the rest is not used. Press again to go on without.`,
  halfGiven: (names: readonly string[], isPoint: boolean, whose: string): string =>
    `${names.join(' and ')} ${names.length === 1 ? 'is' : 'are'} missing: until then ${isPoint ? 'this point stays' : 'the rest is not used, and all of it stays'} ${whose}. Press again to go on without.`,
  assumed: (text: string): string => `Until you give it, this is assumed: ${text}.`,
  enter: 'enter',
  notYours: 'an example value',
  someYours: (own: number, all: number): string => `${own} of ${all} yours`,
  askedAtStock: 'Asked here: at stock height, where the car was measured.',
  askedLower: (drop: string): string => `Asked here: ${drop} below stock height, where the car was measured.`,
  askedHigher: (rise: string): string => `Asked here: ${rise} above stock height, where the car was measured.`,
  sureOf: (title: string): string => `how sure of ${title}`,
  sure: { careful: 'careful', tape: 'tape', gauge: 'gauge', guess: 'guess' },
  instruments: 'Gauge, tape and zero height',
  instrumentsNote:
    'How far off each may be, in 95 of 100 cases. It is the same in every reading, so more passes do not narrow it.',
});
