import type { CarDocument } from '../../core/document/car.js';
import type { RollWay } from '../../core/document/roll-ways.js';
import { loadStandIn, type RollLoad } from '../../core/document/turn-roll.js';
import { type TurnSettings, withTurn } from '../../core/document/turn-settings.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { CautionId } from '../element/cautions.js';
import { type Display, show } from '../element/sentence.js';
import type { SheetSpec } from './sheet-spec.js';

type Values = Record<string, number | undefined>;
/** Where in `turn` a value stands, what it is, and whether the rest counts without it. */
export type TurnField = readonly [place: string, quantity: Quantity, isOptional?: 'optional'];

const valueAt = ({ turn }: CarDocument, place: string): number | undefined => {
  const [first, key] = place.split('.') as [keyof TurnSettings, string?];
  return key === undefined ? (turn?.[first] as number | undefined) : (turn?.[first] as Values | undefined)?.[key];
};

/** A record with some of its values changed; undefined where nothing is left of it. */
export function changed(before: object | undefined, values: Values): Record<string, unknown> | undefined {
  const kept = Object.entries({ ...before, ...values }).filter(([, value]) => value !== undefined);
  return kept.length > 0 ? Object.fromEntries(kept) : undefined;
}

/** Values of one way to come by the roll, in `turn`; with what is given there the roll comes from it. */
export function turnSheet(
  way: RollWay,
  { key, title, howTo, labels }: { key: string; title: string; howTo: string; labels: readonly string[] },
  fields: readonly TurnField[],
  more: Partial<SheetSpec> & { caution?: CautionId } = {},
): SheetSpec {
  const read = (car: CarDocument) => fields.map(([place]) => valueAt(car, place));
  const write = (car: CarDocument, values: readonly (number | undefined)[]): CarDocument => {
    const inRecord = (record: 'marks' | 'load'): Values | undefined => {
      const own = fields.flatMap(([place], i) => {
        const [first, key] = place.split('.');
        return first === record && key !== undefined ? [[key, values[i]] as const] : [];
      });
      return own.length > 0 ? Object.fromEntries(own) : undefined;
    };
    const [marks, load] = [inRecord('marks'), inRecord('load')];
    const alone = fields.flatMap(([place], i) => (place.includes('.') ? [] : [[place, values[i]] as const]));
    const isAny = values.some((value) => value !== undefined);
    return withTurn(car, {
      ...Object.fromEntries(alone),
      ...(marks && { marks: changed(car.turn?.marks, marks) as TurnSettings['marks'] }),
      ...(load && { load: changed(car.turn?.load, load) as TurnSettings['load'] }),
      ...(isAny && { rollFrom: way }),
    });
  };
  return {
    key,
    title,
    howTo,
    optional: true,
    fields: fields.map(([place, quantity, isOptional], i) => ({
      path: `turn.${place}`,
      label: labels[i]!,
      quantity,
      signed: quantity === 'rollCentreHeight',
      needed: !isOptional,
      // Of what is left out nothing is missing, nor of what stands on another page.
      otherwise: (car) =>
        isOptional ? 0 : (loadStandIn(car)[place.split('.')[1] as keyof RollLoad] as number | undefined),
    })),
    read: (car) => {
      const values = read(car);
      return values.every((value, i) => value !== undefined || fields[i]![2]) &&
        values.some((value) => value !== undefined)
        ? (values as number[])
        : undefined;
    },
    write: (car, values) => write(car, values ?? fields.map(() => undefined)),
    partly: { read, write },
    summary: (values, display: Display) =>
      values.flatMap((value, i) => (value === undefined ? [] : [show(value, fields[i]![1], display)])).join(', '),
    ...more,
  };
}
