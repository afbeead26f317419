import type { CarDocument } from '../../core/document/car.js';
import type { Fitment } from '../../core/document/fitment.js';
import { fitmentInUse } from '../../core/document/fitment-in-use.js';
import {
  isWheelOwn,
  ownFitment,
  pagesFitment,
  type WheelInUse,
  type WheelName,
  type WheelValue,
  wheelInUse,
} from '../../core/document/wheels-in-use.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import { CLEARANCE_EXAMPLE } from '../../core/wheel/clearance-guides.js';
import { readTyreSize } from '../../core/wheel/tyre-size.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import { show } from '../element/sentence.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { withFitment, withoutFitment, withWheel } from './wheel-edits.js';

const { sheets: WORDS } = NAMES;

function sizeOf({ size }: Pick<WheelSpec, 'size'>): [number, number, number] | undefined {
  try {
    const { sectionMm, aspectPercent, rimCode } = readTyreSize(size);
    return [sectionMm, aspectPercent, rimCode];
  } catch {
    return undefined;
  }
}

const WHEEL_FIELDS: readonly (readonly [key: string, label: string, quantity: Quantity, value: WheelValue])[] = worded(
  () => [
    ['size.0', WORDS.tyreWidth, 'tyreWidth', 'size'],
    ['size.1', WORDS.tyreAspect, 'aspect', 'size'],
    ['size.2', WORDS.tyreRim, 'rimInch', 'size'],
    ['rimWidthInch', WORDS.rimWidth, 'rimInch', 'rimWidthInch'],
    ['offset', WORDS.offset, 'offset', 'offset'],
    ['spacer', WORDS.spacer, 'margin', 'spacer'],
  ],
);

const valuesOf = (spec: WheelSpec): number[] | undefined => {
  const size = sizeOf(spec);
  return size && [...size, spec.rimWidthInch, spec.offset, spec.spacer ?? 0];
};

const wheelSheet = (which: WheelName, title: string, howTo: string): SheetSpec => ({
  key: which,
  title,
  howTo,
  fields: WHEEL_FIELDS.map(([key, label, quantity, value], index) => ({
    path: `${which}.${key}`,
    label,
    quantity,
    ...(key === 'offset' && { signed: true }),
    // Most have no spacer; and what is as on the user's old wheel is not missed.
    otherwise: (car) => {
      const { spec, whose } = wheelInUse(car, which);
      return value === 'spacer' || whose[value] === 'old' ? valuesOf(spec)?.[index] : undefined;
    },
    whose: (car) => whoseText(wheelInUse(car, which), value),
  })),
  spread: (text) => {
    const [size, rim, offset, spacer] = text.split(',').map((part) => part.trim());
    // With a slash, or all seven digits in one, as a key pad has no slash.
    const read = size && /\/|^\d{7}$/.test(size) ? sizeOf({ size }) : undefined;
    return read && [...read, ...[rim, offset, spacer].map((part) => (part ? Number(part) : undefined))];
  },
  read: (car) => (isWheelOwn(car, which) ? valuesOf(wheelInUse(car, which).spec) : undefined),
  partly: {
    read: (car) => {
      const { size, rimWidthInch, offset, spacer } = ownFitment(car)[which] ?? {};
      const [width, aspect, rim] = (size !== undefined && sizeOf({ size })) || [];
      return [width, aspect, rim, rimWidthInch, offset, spacer];
    },
    write: (car, [width, aspect, rim, rimWidthInch, offset, spacer]) => {
      const { size } = ownFitment(car)[which] ?? {};
      const isWhole = width !== undefined && aspect !== undefined && rim !== undefined;
      const isSame = size !== undefined && sizeOf({ size })?.join() === [width, aspect, rim].join();
      return withWheel(car, which, {
        ...(isWhole && { size: isSame ? size : `${width}/${aspect}R${rim}` }),
        ...(rimWidthInch !== undefined && { rimWidthInch }),
        ...(offset !== undefined && { offset }),
        ...(spacer !== undefined && { spacer }),
      });
    },
  },
  standIn: (car) => valuesOf(wheelInUse(car, which).spec),
  parts: (car, display) => {
    const { spec, whose } = wheelInUse(car, which);
    const { size, rimWidthInch, offset, spacer } = spec;
    return [
      { text: size, isOwn: whose.size === 'yours' },
      { text: `${formatNumber(rimWidthInch, 1, display.language)}\u202fin`, isOwn: whose.rimWidthInch === 'yours' },
      { text: `ET\u202f${show(offset, 'offset', display)}`, isOwn: whose.offset === 'yours' },
      ...(spacer ? [{ text: WORDS.withSpacer(show(spacer, 'margin', display)), isOwn: whose.spacer === 'yours' }] : []),
    ];
  },
  write: (car, given) => (given ? car : withoutFitment(car, which)),
  ...(which === 'after' && {
    copy: {
      label: WORDS.copy,
      offers: (car: CarDocument) => isWheelOwn(car, 'before') && !isWheelOwn(car, 'after'),
      write: (car: CarDocument) => {
        const { size, rimWidthInch, offset } = wheelInUse(car, 'before').spec;
        return withWheel(car, 'after', { size, rimWidthInch, offset });
      },
    },
  }),
});

const whoseText = ({ spec, whose }: WheelInUse, value: WheelValue): string =>
  value === 'spacer' && whose.spacer !== 'yours' && !spec.spacer ? NAMES.whose.none : NAMES.whose[whose[value]];

/** One number of the new wheel that most leave out. */
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
  read: (car) => {
    const { [key]: value } = ownFitment(car).after ?? {};
    return value === undefined ? undefined : [value];
  },
  standIn: (car) => {
    const { [key]: value } = wheelInUse(car, 'after').spec;
    return value === undefined ? undefined : [value];
  },
  write: (car, given) => {
    if (given) return withWheel(car, 'after', { [key]: given[0]! });
    const { [key]: _, ...rest } = ownFitment(car).after ?? {};
    return withFitment(car, { after: rest });
  },
});

const fitmentNumber = (
  key: keyof Omit<Fitment, 'before' | 'after' | 'places'>,
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
  read: (car) => {
    const { [key]: value } = ownFitment(car);
    return value === undefined ? undefined : [value];
  },
  standIn: (car) => {
    const value = pagesFitment(car)[key] ?? standIn(car);
    return value === undefined ? undefined : [value];
  },
  write: (car, given) => (given ? withFitment(car, { [key]: given[0]! }) : withoutFitment(car, key)),
});

export const WHEEL_SHEETS: readonly SheetSpec[] = worded(() => [
  wheelSheet('before', WORDS.before, WORDS.beforeHow),
  wheelSheet('after', WORDS.after, WORDS.afterHow),
]);

export const FINE_SHEETS: readonly SheetSpec[] = worded(() => [
  wheelNumber('sectionWidth', WORDS.sectionWidth, WORDS.sectionWidthHow),
  wheelNumber('treadWidth', WORDS.treadWidth, WORDS.treadWidthHow),
  wheelNumber('shoulderRadius', WORDS.shoulderRadius, WORDS.shoulderRadiusHow),
  fitmentNumber('lock', 'steer', WORDS.lock, WORDS.lockHow, (car) => fitmentInUse(car).lock),
  fitmentNumber('marginBodywork', 'margin', WORDS.bodywork, WORDS.bodyworkHow(CLEARANCE_EXAMPLE), () => 10),
  fitmentNumber('marginChassis', 'margin', WORDS.chassis, WORDS.chassisHow(CLEARANCE_EXAMPLE), () => 5),
  fitmentNumber('allowance', 'margin', WORDS.allowance, WORDS.allowanceHow, () => 3),
  fitmentNumber('camberBy', 'camberChange', WORDS.camberBy, WORDS.camberByHow, () => 0, true),
  fitmentNumber('sideways', 'share', WORDS.sideways, WORDS.sidewaysHow, () => undefined, true),
]);
