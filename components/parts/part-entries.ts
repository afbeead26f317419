import type { Corner, Vector3 } from '../../core/linkage/corner.js';
import { assumedBolt } from '../../core/linkage/parts/assumed-bolt.js';
import { numbersIn, type PartData, withAmount } from '../../core/linkage/parts/part-kinds.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import { PARTS } from './parts.labels.js';

export type EntryKey = keyof typeof PARTS.kinds;

/** One number of a part, as it is asked for. */
export interface PartField {
  /** In the data: `mm`, `vector.1`, … */
  path: string;
  label: string;
  quantity: Quantity;
  /** −1: a mechanic counts it the other way than the data do. */
  sense: 1 | -1;
  /** In a list, where a part has several. */
  brief?: string;
  /** Not of the part itself: where it is put on. */
  isBeside?: true;
}

/** One line of the chooser. */
export interface PartEntry {
  key: EntryKey;
  /** The part as it is added: nothing changed yet. */
  begin(corner: Corner | undefined): PartData;
  fields: readonly PartField[];
  /** Only where there is such a place. */
  only?: Corner['kind'];
  /** Its doubt is an angle's. */
  isAngle?: true;
  /** Its first amount is looked for by a goal: what it may lead to, and between which amounts, as they are asked for. */
  find?: { goal: 'rate' | 'camber'; between: readonly [least: number, most: number] };
  /** What to measure at the part itself. */
  measure: keyof typeof PARTS.measures;
}

const { fields: FIELDS } = PARTS;

const field = (path: string, label: string, quantity: Quantity = 'partLength', sense: 1 | -1 = 1): PartField => ({
  path,
  label,
  quantity,
  sense,
});
/** One of several. */
const among = (brief: keyof typeof PARTS.brief, ...rest: Parameters<typeof field>): PartField => ({
  ...field(...rest),
  brief: PARTS.brief[brief],
});

const beside = (path: string, label: string, sense: 1 | -1 = 1): PartField => ({
  ...field(path, label, 'coordinate', sense),
  isBeside: true,
});

const NOWHERE: Vector3 = [0, 0, 0];
const MOVED = worded(() => [
  among('out', 'vector.1', FIELDS.out),
  among('down', 'vector.2', FIELDS.down, 'partLength', -1),
  among('ahead', 'vector.0', FIELDS.ahead),
]);
const PIVOTS = worded(() => [among('front', 'front', FIELDS.front), among('rear', 'rear', FIELDS.rear)]);

/** In the order in which they are offered. */
export const PART_ENTRIES: readonly PartEntry[] = worded(() => [
  {
    key: 'lowerJoint',
    measure: 'joint',
    begin: () => ({ part: 'ballJointExtended', mm: 0 }),
    fields: [field('mm', FIELDS.lower)],
    find: { goal: 'rate', between: [-20, 60] },
  },
  {
    key: 'upperJoint',
    measure: 'joint',
    begin: () => ({ part: 'ballJointExtended', mm: 0, joint: 'upper' }),
    fields: [field('mm', FIELDS.higher)],
    only: 'wishbone',
  },
  {
    key: 'arm',
    measure: 'arm',
    begin: () => ({ part: 'armLonger', mm: 0 }),
    fields: [field('mm', FIELDS.longer)],
    find: { goal: 'camber', between: [-30, 30] },
  },
  {
    key: 'upperArm',
    measure: 'arm',
    begin: () => ({ part: 'armLonger', mm: 0, arm: 'upper' }),
    fields: [field('mm', FIELDS.longer)],
    find: { goal: 'camber', between: [-30, 30] },
    only: 'wishbone',
  },
  {
    key: 'topMount',
    measure: 'topMount',
    begin: () => ({ part: 'topMountMoved', vector: NOWHERE }),
    fields: [
      among('inboard', 'vector.1', FIELDS.inboard, 'partLength', -1),
      among('rearward', 'vector.0', FIELDS.rearward, 'partLength', -1),
      among('up', 'vector.2', FIELDS.up),
    ],
    find: { goal: 'camber', between: [-40, 40] },
    only: 'strut',
  },
  {
    key: 'bolts',
    measure: 'bolts',
    begin: (corner) => ({ part: 'knuckleBoltsTurned', degrees: 0, otherBolt: assumedBolt(corner) }),
    fields: [
      field('degrees', FIELDS.turned, 'partAngle'),
      beside('otherBolt.1', FIELDS.boltIn, -1),
      beside('otherBolt.2', FIELDS.boltUp),
      beside('otherBolt.0', FIELDS.boltAhead),
    ],
    find: { goal: 'camber', between: [-6, 6] },
    only: 'strut',
    isAngle: true,
  },
  {
    key: 'spin',
    measure: 'spin',
    begin: () => ({ part: 'spinAxisTurned', camber: 0 }),
    fields: [among('camber', 'camber', FIELDS.camber, 'partAngle'), among('toe', 'toe', FIELDS.toe, 'partAngle')],
    find: { goal: 'camber', between: [-6, 6] },
    isAngle: true,
  },
  {
    key: 'rodEnd',
    measure: 'rodEnd',
    begin: () => ({ part: 'tieRodEndRaised', mm: 0 }),
    fields: [field('mm', FIELDS.raised)],
  },
  {
    key: 'rod',
    measure: 'rod',
    begin: () => ({ part: 'tieRodLonger', mm: 0 }),
    fields: [field('mm', FIELDS.longer)],
  },
  {
    key: 'rack',
    measure: 'rack',
    begin: () => ({ part: 'rackRaised', mm: 0 }),
    fields: [field('mm', FIELDS.raised)],
  },
  {
    key: 'pivots',
    measure: 'pivots',
    begin: () => ({ part: 'innerPivotsRaised', front: 0, rear: 0 }),
    fields: PIVOTS,
  },
  {
    key: 'upperPivots',
    measure: 'pivots',
    begin: () => ({ part: 'innerPivotsRaised', front: 0, rear: 0, arm: 'upper' }),
    fields: PIVOTS,
    only: 'wishbone',
  },
  {
    key: 'lowerJointMoved',
    measure: 'jointMoved',
    begin: () => ({ part: 'ballJointMoved', vector: NOWHERE }),
    fields: MOVED,
  },
  {
    key: 'upperJointMoved',
    measure: 'jointMoved',
    begin: () => ({ part: 'ballJointMoved', vector: NOWHERE, joint: 'upper' }),
    fields: MOVED,
    only: 'wishbone',
  },
  {
    key: 'wheel',
    measure: 'wheel',
    begin: () => ({ part: 'wheelOffset', mm: 0 }),
    fields: [field('mm', FIELDS.wheelOut)],
  },
]);

/** Those that a kind of corner has a place for. Of one that is not known yet: a strut's. */
export const offeredParts = (kind: Corner['kind'] = 'strut'): readonly PartEntry[] =>
  PART_ENTRIES.filter(({ only = kind }) => only === kind);

const isUpper = (part: object): boolean =>
  ('joint' in part && part.joint === 'upper') || ('arm' in part && part.arm === 'upper');

/** What a part is in the chooser; undefined of one that a page's script made up. */
export function entryOf(data: PartData): PartEntry | undefined {
  return PART_ENTRIES.find((entry) => {
    const begun = entry.begin(undefined);
    return begun.part === data.part && isUpper(begun) === isUpper(data);
  });
}

/** What stands in a field, as it is asked for; undefined where the data leave it out. */
export function amountIn(data: PartData, { path, sense }: PartField): number | undefined {
  const found = numbersIn(data, path.split('.')[0]!).find(([at]) => at === path);
  return found && (sense * found[1] || 0);
}

/** The part with another amount. @param amount as it is asked for */
export const withField = (data: PartData, { path, sense }: PartField, amount: number): PartData =>
  withAmount(data, path, sense * amount || 0);

/** Whether the tie rod can be made to match. */
export const hasTieRod = (
  data: PartData,
): data is Extract<PartData, { part: 'ballJointExtended' | 'ballJointMoved' }> =>
  data.part === 'ballJointExtended' || data.part === 'ballJointMoved';
