import type { TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { MOST_PLACES } from '../../core/document/fitment.js';
import { fitmentInUse } from '../../core/document/fitment-in-use.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import { ownFitment, wheelInUse } from '../../core/document/wheels-in-use.js';
import { type ClockPosition, DEFAULT_PLUS_MINUS_MM, type Place } from '../../core/wheel/place.js';
import { tyreDimensions } from '../../core/wheel/tyre-dimensions.js';
import { shownName } from '../car/shown-names.words.js';
import { show, upper } from '../element/sentence.js';
import type { OptionGroup, SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { clockText, placeName } from './bumpline-clearance.words.js';
import { withFitment } from './wheel-edits.js';
import { renderWherePlace } from './where-wheel.js';

/** What one can measure a tyre against, with what it is fixed to. `inner`: it is measured from the inner sidewall. */
export const KINDS: readonly (Pick<Place, 'name' | 'fixedTo' | 'is' | 'share'> & { inner?: true })[] = [
  { name: 'arch lip', fixedTo: 'body', is: 'bodywork' },
  { name: 'liner', fixedTo: 'body', is: 'bodywork' },
  { name: 'liner screw', fixedTo: 'body', is: 'bodywork' },
  { name: 'inner panel', fixedTo: 'body', is: 'bodywork', inner: true },
  { name: 'leg', fixedTo: 'body', is: 'chassis', inner: true },
  { name: 'damper tube', fixedTo: 'carrier', is: 'chassis', inner: true },
  { name: 'spring perch', fixedTo: 'carrier', is: 'chassis', inner: true },
  { name: 'knuckle', fixedTo: 'carrier', is: 'chassis', inner: true },
  { name: 'tie rod', fixedTo: 'tieRod', is: 'chassis', inner: true },
  { name: 'lower arm', fixedTo: 'lowerArm', is: 'chassis', inner: true },
  { name: 'anti-roll bar link', fixedTo: 'between', is: 'chassis', share: 0.9, inner: true },
  { name: 'driveshaft', fixedTo: 'between', is: 'chassis', share: 0.5, inner: true },
  { name: 'spring coil', fixedTo: 'between', is: 'chassis', share: 0.5, inner: true },
];

/** What is chosen of places whose measures are still to come, by index. */
export type PendingPlaces = Map<number, Beginning>;

interface Beginning {
  kind: number;
  clock: number;
  beyond?: 'tread' | undefined;
}

/** The outermost kinds: what stands over the tread can be told from it. */
const OVER_TREAD = 3;

const { place: WORDS } = NAMES;
const HOURS = [12, 11, 1, 10, 2, 9, 3];

function beginning(shown: Place | undefined, clock: number | undefined, car: CarDocument): Beginning {
  const taken = new Set(ownFitment(car).places?.map(({ at }) => ('clock' in at ? at.clock : undefined)));
  const kind = Math.max(
    0,
    KINDS.findIndex(({ name }) => name === shown?.name),
  );
  return { kind, clock: clock ?? HOURS.find((hour) => !taken.has(hour)) ?? 12 };
}

/** The place at an index, or one more. */
export function placeSheet(index: number, car: CarDocument, pending: PendingPlaces): SheetSpec {
  const isLeft = answeredCorner(car).endsWith('left');
  const own = (from: CarDocument): Place | undefined => ownFitment(from).places?.[index];
  const shown = own(car) ?? (ownFitment(car).places ? undefined : fitmentInUse(car).places[index]);
  const at = (place: Place | undefined) => (place && 'clock' in place.at ? place.at : undefined);
  // Of a place that is still to come: begun with what stands in for it, else with the first hour that is free.
  const chosen = pending.get(index) ?? beginning(shown, at(shown)?.clock, car);
  const put = (from: CarDocument, place: Place | undefined): CarDocument => {
    // Of the example's or the page's places the first own one makes an end.
    const before = ownFitment(from).places ?? [];
    const places = place
      ? before[index]
        ? before.map((old, i) => (i === index ? place : old))
        : [...before, place].slice(0, MOST_PLACES)
      : before.filter((_, i) => i !== index);
    return withFitment(from, { places });
  };
  const change = (from: CarDocument, edit: (place: Place) => Place): CarDocument => {
    const place = own(from);
    return place ? put(from, edit(place)) : from;
  };
  const kindOf = (place: Place | undefined) =>
    place ? KINDS.findIndex(({ name }) => name === place.name) : chosen.kind;
  const what: OptionGroup = {
    legend: WORDS.what,
    items: KINDS.map(({ name }, i) => ({ id: String(i), label: shownName(name), short: shownName(name) })),
    read: (from) => String(kindOf(own(from))),
    write: (from, id) => {
      const { inner, ...kind } = KINDS[Number(id)]!;
      pending.set(index, { ...chosen, kind: Number(id) });
      return change(from, (place) => ({
        ...withoutShare(place),
        ...kind,
        at:
          'clock' in place.at ? { ...fromHub(place.at, Number(id), from), from: inner ? 'inner' : 'outer' } : place.at,
      }));
    },
  };
  const where: OptionGroup = {
    legend: WORDS.where(isLeft),
    inRow: true,
    items: [9, 10, 11, 12, 1, 2, 3].map((hour) => ({
      id: String(hour),
      label: String(hour),
      short: clockText(hour, isLeft),
    })),
    read: (from) => String(at(own(from))?.clock ?? chosen.clock),
    write: (from, id) => {
      pending.set(index, { ...chosen, clock: Number(id) });
      return change(from, (place) =>
        'clock' in place.at ? { ...place, at: { ...place.at, clock: Number(id) } } : place,
      );
    },
  };
  const shownBeyond = at(shown)?.beyond === 'tread';
  const inner = (from: CarDocument) =>
    (at(own(from))?.from ?? (KINDS[chosen.kind]!.inner ? 'inner' : 'outer')) === 'inner';
  const isInner = inner(car);
  const beyond: OptionGroup = {
    legend: WORDS.measuredFrom,
    inRow: true,
    items: [
      { id: 'hub', label: WORDS.fromHub, short: WORDS.fromHub },
      { id: 'tread', label: WORDS.fromTread, short: WORDS.fromTread },
    ],
    offers: (from) => kindOf(own(from)) < OVER_TREAD,
    read: (from) => ((own(from) ? at(own(from))?.beyond : chosen.beyond) ? 'tread' : 'hub'),
    write: (from, id) => {
      const isTread = id === 'tread';
      pending.set(index, { ...chosen, beyond: isTread ? 'tread' : undefined });
      // What was measured stays where it is: its figure is another.
      const reach = treadOf(from);
      return change(from, (place) => {
        if (!('clock' in place.at) || isTread === (place.at.beyond === 'tread') || reach === undefined) return place;
        const { beyond: _, distance, ...rest } = place.at;
        const away = Math.round((isTread ? distance - reach : distance + reach) * 100) / 100;
        return { ...place, at: { ...rest, distance: away, ...(isTread && { beyond: 'tread' as const }) } };
      });
    },
  };
  const isTread = beyond.read(car) === 'tread' && kindOf(own(car)) < OVER_TREAD;
  return {
    key: `places.${index}`,
    title: shown ? upper(placeName(shown, isLeft).replace(NAMES.article, '')) : WORDS.title,
    summary: ([distance, out], display) =>
      `${show(distance!, 'coordinate', display)}${shownBeyond ? ` ${WORDS.isOver}` : ''}, ${show(Math.abs(out!), 'coordinate', display)} ${out! < 0 ? WORDS.isIn : WORDS.isOut}`,
    howTo: WORDS.how(isInner, isTread),
    optional: true,
    goesWhole: true,
    optionsFirst: true,
    caution: 'stands',
    fields: [
      {
        path: `places.${index}.at.distance`,
        label: isTread ? WORDS.overTread : WORDS.distance,
        quantity: 'coordinate',
      },
      {
        path: `places.${index}.at.out`,
        label: WORDS.outboard(isInner),
        quantity: 'coordinate',
        signed: true,
      },
    ],
    read: (from) => {
      const found = at(own(from));
      return found && [found.distance, found.out];
    },
    standIn: () => {
      const found = at(shown);
      const reach = treadOf(car);
      if (!found || !isTread || found.beyond) return found && [found.distance, found.out];
      return reach === undefined ? undefined : [Math.round((found.distance - reach) * 10) / 10, found.out];
    },
    write: (from, values) => {
      if (!values) {
        pending.clear();
        return put(from, undefined);
      }
      const { inner: fromInner, ...kind } = KINDS[chosen.kind]!;
      const place = own(from);
      pending.delete(index);
      const measured = { distance: values[0]!, out: values[1]! };
      return put(
        from,
        place && 'clock' in place.at
          ? { ...place, at: { ...place.at, ...measured } }
          : {
              ...kind,
              at: {
                clock: chosen.clock,
                ...measured,
                ...(fromInner && { from: 'inner' as const }),
                ...(isTread && { beyond: 'tread' as const }),
              },
            },
      );
    },
    doubt: {
      read: (from) => own(from)?.plusMinus ?? DEFAULT_PLUS_MINUS_MM,
      write: (from, plusMinus) => change(from, (place) => ({ ...place, plusMinus })),
    },
    options: [what, where, beyond],
  };
}

/** Free radius of the old wheel's tyre, mm; undefined where its size cannot be read. */
function treadOf(car: CarDocument): number | undefined {
  const { size, rimWidthInch } = wheelInUse(car, 'before').spec;
  try {
    return tyreDimensions(size, rimWidthInch).freeDiameter / 2;
  } catch {
    return undefined;
  }
}

/** Of a kind that stands over no tread the same, told from the hub. */
function fromHub(at: ClockPosition, kind: number, car: CarDocument): ClockPosition {
  const reach = treadOf(car);
  if (!at.beyond || kind < OVER_TREAD || reach === undefined) return at;
  const { beyond: _, ...rest } = at;
  return { ...rest, distance: Math.max(0, Math.round((at.distance + reach) * 100) / 100) };
}

const withoutShare = ({ share: _, ...place }: Place): Omit<Place, 'share'> => place;

/** How it is measured, drawn at its hour and on its side. */
export function drawnPlace(index: number, car: CarDocument, pending: PendingPlaces): TemplateResult {
  const place = ownFitment(car).places?.[index];
  const shown = place ?? (ownFitment(car).places ? undefined : fitmentInUse(car).places[index]);
  const at = shown && 'clock' in shown.at ? shown.at : undefined;
  const chosen = pending.get(index) ?? beginning(shown, at?.clock, car);
  const given = place && at;
  const isInner = given ? given.from === 'inner' : KINDS[chosen.kind]!.inner === true;
  const kind = place ? KINDS.findIndex(({ name }) => name === place.name) : chosen.kind;
  return renderWherePlace({
    clock: given ? given.clock : chosen.clock,
    isLeft: answeredCorner(car).endsWith('left'),
    isInner,
    isInboard: given ? given.out < 0 : isInner,
    isTread: (given ? given.beyond : chosen.beyond) === 'tread' && kind < OVER_TREAD,
    fixedTo: KINDS[kind]?.fixedTo ?? place?.fixedTo ?? 'body',
  });
}
