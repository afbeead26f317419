import type { CarDocument } from '../../core/document/car.js';
import type { Fit } from '../../core/document/fit.js';
import { fitInUse } from '../../core/document/fit-in-use.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { CLEARANCE_EXAMPLE } from '../../core/wheel/clearance-guides.js';
import { readTyreSize } from '../../core/wheel/tyre-size.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import { show } from '../shared/sentence.js';
import type { SheetSpec } from '../shared/sheet/sheet-spec.js';
import { withFit } from './wheel-edits.js';

function sizeOf({ size }: WheelSpec): [number, number, number] | undefined {
  try {
    const { sectionMm, aspectPercent, rimCode } = readTyreSize(size);
    return [sectionMm, aspectPercent, rimCode];
  } catch {
    return undefined;
  }
}

const WHEEL_FIELDS: readonly (readonly [key: string, label: string, quantity: Quantity])[] = [
  ['size.0', 'Tyre: width on the sidewall', 'tyreWidth'],
  ['size.1', 'Tyre: aspect', 'aspect'],
  ['size.2', 'Tyre: rim diameter', 'rimInch'],
  ['rimWidthInch', 'Rim width', 'rimInch'],
  ['offset', 'Offset (ET)', 'offset'],
  ['spacer', 'Spacer', 'margin'],
];

const wheelSheet = (which: 'before' | 'after', title: string, howTo: string): SheetSpec => {
  const values = (spec: WheelSpec): number[] | undefined => {
    const size = sizeOf(spec);
    return size && [...size, spec.rimWidthInch, spec.offset, spec.spacer ?? 0];
  };
  return {
    key: which,
    title,
    howTo,
    fields: WHEEL_FIELDS.map(([key, label, quantity], index) => ({
      path: `${which}.${key}`,
      label,
      quantity,
      ...(key === 'offset' && { signed: true }),
      // Most have no spacer; and of a wheel in question only what differs from the one that is on need be typed.
      otherwise: ({ fit }) =>
        (which === 'after' && fit?.before ? values(fit.before)?.[index] : undefined) ??
        (key === 'spacer' ? 0 : undefined),
    })),
    spread: (text) => {
      const [size, rim, offset, spacer] = text.split(',').map((part) => part.trim());
      const read = size?.includes('/') ? sizeOf({ size, rimWidthInch: 0, offset: 0 }) : undefined;
      return read && [...read, ...[rim, offset, spacer].map((part) => (part ? Number(part) : undefined))];
    },
    read: ({ fit }) => {
      const { [which]: spec } = fit ?? {};
      return spec && values(spec);
    },
    standIn: (car) => values(fitInUse(car)[which]),
    summary: ([width, aspect, rim, rimWidth, offset, spacer], reader) =>
      [
        `${width}/${aspect}R${rim}`,
        `${formatNumber(rimWidth!, 1, reader.language)}\u202fin`,
        `ET\u202f${show(offset!, 'offset', reader)}`,
        ...(spacer ? [`spacer ${show(spacer, 'margin', reader)}`] : []),
      ].join(', '),
    write: (car, given) => {
      if (!given) {
        const { [which]: _, ...rest } = car.fit ?? {};
        return { ...car, fit: rest };
      }
      const [width, aspect, rim, rimWidthInch, offset, spacer] = given as [
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      const { [which]: old } = car.fit ?? {};
      const sameSize = old && sizeOf(old)?.join() === [width, aspect, rim].join();
      return withFit(car, {
        [which]: {
          ...old,
          size: sameSize ? old.size : `${width}/${aspect}R${rim}`,
          rimWidthInch,
          offset,
          spacer,
        },
      });
    },
  };
};

/** One number of one wheel that most leave out. */
const wheelNumber = (
  key: 'sectionWidth' | 'treadWidth' | 'shoulderRadius',
  title: string,
  howTo: string,
): SheetSpec => ({
  key: `after.${key}`,
  title,
  howTo,
  optional: true,
  fields: [{ path: `after.${key}`, label: title, quantity: 'travel' }],
  read: ({ fit }) => (fit?.after?.[key] === undefined ? undefined : [fit.after[key]]),
  write: (car, given) => {
    const { [key]: _, ...rest } = fitInUse(car).after;
    return withFit(car, { after: given ? { ...rest, [key]: given[0]! } : rest });
  },
});

const fitNumber = (
  key: keyof Omit<Fit, 'before' | 'after' | 'places'>,
  quantity: Quantity,
  title: string,
  howTo: string,
  standIn: (car: CarDocument) => number | undefined,
  signed = false,
): SheetSpec => ({
  key,
  title,
  howTo,
  optional: true,
  fields: [{ path: key, label: title, quantity, signed }],
  read: ({ fit }) => (fit?.[key] === undefined ? undefined : [fit[key]]),
  standIn: (car) => {
    const value = standIn(car);
    return value === undefined ? undefined : [value];
  },
  write: (car, given) => {
    const { [key]: _, ...rest } = car.fit ?? {};
    return given ? withFit(car, { [key]: given[0]! }) : { ...car, fit: rest };
  },
});

export const WHEEL_SHEETS: readonly SheetSpec[] = [
  wheelSheet(
    'before',
    'Wheel that was on',
    'The tyre and rim on the car when you measured the places below: every gap is counted from its sidewall. Offset stands on the rim; positive means the mounting face lies outboard of its middle.',
  ),
  wheelSheet(
    'after',
    'Wheel in question',
    'The tyre and rim you think of. What you leave empty stays as on the wheel that was on: for a spacer alone give the spacer.',
  ),
];

export const FINE_SHEETS: readonly SheetSpec[] = [
  wheelNumber(
    'sectionWidth',
    'Width as measured',
    'Sidewall to sidewall of the new tyre on its rim, inflated. It takes the place of the formula, and is the only way for a tyre stretched over a rim wider than its size is made for.',
  ),
  wheelNumber(
    'treadWidth',
    'Tread width',
    'Across the flat of the new tread. Left out, 86 % of the tyre’s width is taken (common practice, no source).',
  ),
  wheelNumber(
    'shoulderRadius',
    'Shoulder radius',
    'Where the new tyre’s tread turns into its sidewall: square shoulders have a small one.',
  ),
  fitNumber(
    'lock',
    'steer',
    'Full lock',
    'How far this wheel turns from straight ahead. 0 for a rear axle: then it is looked at straight ahead only.',
    (car) => fitInUse(car).lock,
  ),
  fitNumber(
    'marginBodywork',
    'margin',
    'Margin to bodywork',
    `What must stay free besides the allowance. 10\u00a0mm is common practice, no source. ${CLEARANCE_EXAMPLE} Your own authority’s rule counts.`,
    () => 10,
  ),
  fitNumber(
    'marginChassis',
    'margin',
    'Margin to chassis parts',
    `As before, to damper, perch, rods and legs. 5\u00a0mm is common practice, no source. ${CLEARANCE_EXAMPLE}`,
    () => 5,
  ),
  fitNumber(
    'allowance',
    'margin',
    'Allowance for give',
    'What bushes and carcass give way under load. Common practice, no source.',
    () => 3,
  ),
  fitNumber(
    'camberBy',
    'camberChange',
    'Camber changed with the wheels',
    'By a top mount, for instance. Negative leans the top further in.',
    () => 0,
    true,
  ),
  fitNumber(
    'sideways',
    'share',
    'Sideways motion',
    'Only where readings give the camber: how far the wheel moves out for each mm of bump, which a gauge on the hub does not tell. 0 until you give it.',
    () => 0,
    true,
  ),
];
