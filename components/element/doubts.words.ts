import type { CurveData } from '../../core/curve/curve-data.js';
import type { Setup } from '../../core/document/setup.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { words } from '../../core/quantity/words.js';
import { DEFAULT_DOUBTS, DOUBT_KEYS, type ReadingDoubts } from '../../core/readings/doubts.js';
import { isReturned } from '../../core/readings/returned.js';
import type { Contribution } from '../../core/uncertainty/combine.js';
import { causeName } from './causes.words.js';
import { type Display, show } from './sentence.js';

export type DoubtKey = keyof ReadingDoubts;

/** English words about the doubt of readings. */
export const WORDS = words('element/doubts', {
  fields: {
    gaugeScale: {
      label: 'Gauge, over a known angle',
      hint: 'Put it on an angle block or a drawn triangle: 0.1° in 10° is 1 %.',
    },
    tapeScale: {
      label: 'Tape, beside a steel rule',
      hint: 'A body that rises with the wheel counts here: 3 mm in 100 mm is 3 %.',
    },
    zeroHeight: {
      label: 'Zero height',
      hint: 'How well you know the height that you call zero.',
    },
    drift: {
      label: 'Gauge’s drift in one pass',
      hint: 'Used only where the readings cannot tell it.',
    },
  },
  advice: {
    readings: 'another pass narrows it',
    drift: 'read the first height again at the end of each pass, or go down as well as up',
    gaugeScale: 'check the gauge on a known angle, and enter how far off it was',
    tapeScale: 'check the tape on a steel rule, and enter how far off it was',
    zeroHeight: 'measure the height that you call zero again',
  },
  instruments: { gauge: 'A gauge that drifts', dials: 'Dials that drift', tape: 'A tape that drifts' },
  gaugeSize: ' (as much as an angle gauge is given)',
  driftAllowed: (drifts: string, drift: string, quantity: string): string =>
    `${drifts} by more than ${drift} in every pass. Passes that go one way cannot tell drift from ${quantity}, so that much is allowed for. Read the first height again at the end of each pass, and it is worked out instead.`,
  driftReturned: (drifts: string, drift: string): string =>
    `${drifts} by more than ${drift} in every pass. The first heights that you read again say too little about it, so that much is allowed for. Another pass narrows it.`,
  driftTaken: (instrument: string): string =>
    `A drift of the ${instrument} that differs from pass to pass. One that is the same in all is worked out and taken off.`,
  scaled: {
    gauge: 'A gauge whose scale is off by more than',
    dials: 'Dials whose scale is off by more than',
    tape: 'A tape over the base whose scale is off by more than',
  },
  scales: (instrument: string, gauge: string, tape: string): string =>
    `${instrument} ${gauge}, a tape for heights by more than ${tape}. A body that creeps up with the wheel counts with the tape.`,
  zeroHeight: (zero: string): string =>
    `A zero height that is off by more than ${zero}. With two passes, heights that were set anew between them.`,
  friction:
    'Friction that is taken up in the first millimetres after each turn: it bends the ends of the curve. Go a little past the first height and come back before you read.',
  bushes: 'Rubber bushes that were tight, and steering that turned, while you measured.',
});

const DOUBT_QUANTITIES: Readonly<Record<DoubtKey, Quantity>> = {
  gaugeScale: 'plusMinusShare',
  tapeScale: 'plusMinusShare',
  zeroHeight: 'plusMinusLength',
  drift: 'plusMinusDrift',
};

/** What is asked of gauge, tape and zero height. */
export const doubtFields = (): Readonly<Record<DoubtKey, { label: string; quantity: Quantity; hint: string }>> => {
  const field = <K extends DoubtKey>(key: K) => ({ ...WORDS.fields[key], quantity: DOUBT_QUANTITIES[key] });
  return {
    gaugeScale: field('gaugeScale'),
    tapeScale: field('tapeScale'),
    zeroHeight: field('zeroHeight'),
    drift: field('drift'),
  };
};

/** "±1 %" */
export const doubtText = (key: DoubtKey, plusMinus: number, display: Display): string =>
  `±${show(plusMinus, DOUBT_QUANTITIES[key], display)}`;

/** What is said of them, or else assumed, on one line. */
export const doubtsText = (doubts: ReadingDoubts | undefined, display: Display): string =>
  DOUBT_KEYS.map((key) => doubtText(key, doubts?.[key] ?? DEFAULT_DOUBTS[key], display)).join(', ');

/** Shares of a ± that are worth a line. */
export const shareRows = (
  contributions: readonly Contribution[],
  language: string,
): { label: string; share: number; percent: string }[] =>
  contributions
    .filter(({ share }) => share >= 0.005)
    .map(({ label, share }) => ({
      label: causeName(label),
      share,
      percent: `${formatNumber(share * 100, 0, language)}\u202f%`,
    }));

/** What readings were taken with, and how. */
export type TakenReadings = Pick<Setup, 'readings' | 'setAside' | 'doubts' | 'overBase'>;

/** What toe or camber was read with. */
export const instrumentOf = (setup: Pick<Setup, 'overBase'> | undefined): 'gauge' | 'dials' | 'tape' =>
  setup?.overBase?.by ?? 'gauge';

/**
 * What would narrow a ± that is mostly one cause's; undefined where nothing stands out.
 *
 * @param setup the readings it is of: what was done already is not advised
 */
export function adviceFor(id: string, setup?: TakenReadings): string | undefined {
  const { advice } = WORDS;
  if (id === 'drift' && setup && isReturned(setup.readings, setup.setAside)) return advice.readings;
  return (advice as Readonly<Record<string, string>>)[id];
}

/** Whether a curve was fitted to readings. */
export const isOfReadings = ({ sources }: CurveData): boolean => sources.some(({ id }) => id.startsWith('fit.'));

/** Whether a drift is allowed for, as the readings do not tell it. */
export const isDriftAllowed = ({ sources }: CurveData): boolean => sources.some(({ id }) => id === 'drift');

/** What the ± of a curve from readings leaves out, and what it allows for instead. */
export function notInDoubt(curve: CurveData, setup: TakenReadings | undefined, display: Display): string[] {
  const of = (key: DoubtKey) => doubtText(key, setup?.doubts?.[key] ?? DEFAULT_DOUBTS[key], display);
  const by = instrumentOf(setup);
  return [
    isDriftAllowed(curve) ? driftAllowed(curve, setup, of('drift')) : WORDS.driftTaken(by),
    WORDS.scales(WORDS.scaled[by], of('gaugeScale'), of('tapeScale')),
    WORDS.zeroHeight(of('zeroHeight')),
    WORDS.friction,
    WORDS.bushes,
  ];
}

function driftAllowed({ quantity }: CurveData, setup: TakenReadings | undefined, allowed: string): string {
  const by = instrumentOf(setup);
  const isOwnSize = by === 'gauge' || setup?.doubts?.drift !== undefined;
  const size = isOwnSize ? allowed : `${allowed}${WORDS.gaugeSize}`;
  const drifts = WORDS.instruments[by];
  return setup && isReturned(setup.readings, setup.setAside)
    ? WORDS.driftReturned(drifts, size)
    : WORDS.driftAllowed(drifts, size, quantity);
}
