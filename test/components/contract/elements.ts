import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT } from '../../../core/document/example-fitment.js';
import { byUser } from '../../../core/document/own-car.js';
import type { Setup } from '../../../core/document/setup.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { referenceCorner } from '../reference-corner.js';
import type { LATE_PARTS } from './late-parts.js';

/** What the suite needs to know of an element. All of them have a number in their sentence that is edited in place. */
export interface ContractElement {
  tag: keyof typeof LATE_PARTS;
  /** Two numbers typed into the sentence, mm or degrees. */
  numbers: readonly [string, string];
  /** What an answer says of that number; any figure that it changes. */
  read(answer: never): number | undefined;
  /** The light DOM of a page that gives its own data, and the state that it makes; without it `example`. */
  page: { inside: string; attributes?: string; state: 'ready' | 'incomplete' };
  /** A car of which some is the user's own, and one of which all is; undefined where one value makes it theirs. */
  begun: CarDocument | undefined;
  own: CarDocument;
}

const TRAVELS = [-40, -20, 0, 20, 40, 60];
const table = (...slopes: number[]) =>
  `<table><thead><tr><th>Travel (mm)</th>${slopes.map((_, i) => `<th>${slopes.length > 1 ? ['Standard joints', 'Lowered joints'][i] : 'Camber'} (°)</th>`).join('')}</tr></thead><tbody>${TRAVELS.map(
    (t) => `<tr><th>${t}</th>${slopes.map((slope) => `<td>${(slope * t).toFixed(3)}</td>`).join('')}</tr>`,
  ).join('')}</tbody></table>`;
/** Invented: a straight line that no gauge reads exactly. */
const set = (name: string, slope: number): Setup => ({
  name,
  cornerName: 'Front left',
  quantity: 'camber',
  readings: ['1', '2'].flatMap((pass) =>
    TRAVELS.map((travel, i) => ({
      travel,
      value: Math.round(100 * (slope * travel + (i % 2 ? 0.02 : -0.02))) / 100,
      pass,
    })),
  ),
});
const user = (more: Partial<CarDocument>): CarDocument => byUser({ ...EMPTY_CAR, ...more });
const { armLength, camber: _, ...others } = EXAMPLE_DRIVEWAY;
const MEASURED = user({ given: { points: {}, measures: { armLength: armLength!, ...others } } });
const POINTS = JSON.stringify(referenceCorner);
const PLACE = { name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 12, distance: 375, out: 24 } } as const;

/** An element that joins this list is tested by it from its first day. */
export const ELEMENTS: readonly ContractElement[] = [
  {
    tag: 'bumpline-geometry',
    numbers: ['24', '26'],
    read: (answer: { drop: number }) => answer.drop,
    page: { inside: `<script type="application/json">${POINTS}</script>`, state: 'ready' },
    begun: user({ by: 'points', given: takeCorner({ lowerArm: { ball: referenceCorner.lowerArm.ball } }).given }),
    own: user({ by: 'points', ...takeCorner(referenceCorner) }),
  },
  {
    tag: 'bumpline-lowering',
    numbers: ['24', '26'],
    read: (answer: { drop: number }) => answer.drop,
    page: { inside: `<script type="application/json">${POINTS}</script>`, state: 'ready' },
    begun: user({ given: { points: {}, measures: { armLength: { value: 352, plusMinus: 3 } } } }),
    own: MEASURED,
  },
  {
    tag: 'bumpline-predict',
    numbers: ['24', '26'],
    read: (answer: { drop: number }) => answer.drop,
    page: { inside: `<script type="application/json">${POINTS}</script>${table(-0.009)}`, state: 'ready' },
    begun: user({
      by: 'points',
      given: takeCorner({ lowerArm: { ball: referenceCorner.lowerArm.ball } }).given,
      setups: [set('Mine', -0.009)],
    }),
    own: user({ by: 'points', ...takeCorner(referenceCorner), setups: [set('Mine', -0.009)] }),
  },
  {
    tag: 'bumpline-readings',
    numbers: ['30', '20'],
    read: (answer: { over: number }) => answer.over,
    page: { inside: table(-0.012), state: 'ready' },
    begun: undefined,
    own: user({ setups: [set('Mine', -0.012)] }),
  },
  {
    tag: 'bumpline-static-camber',
    numbers: ['2', '1.5'],
    read: (answer: { by: number }) => answer.by,
    page: { inside: `<script type="application/json">${POINTS}</script>`, state: 'ready' },
    begun: user({ by: 'points', given: takeCorner({ lowerArm: { ball: referenceCorner.lowerArm.ball } }).given }),
    own: user({ by: 'points', ...takeCorner(referenceCorner) }),
  },
  {
    tag: 'bumpline-toe',
    numbers: ['24', '26'],
    read: (answer: { drop: number }) => answer.drop,
    page: { inside: `<script type="application/json">${POINTS}</script>`, state: 'ready' },
    begun: user({ by: 'points', given: takeCorner({ lowerArm: { ball: referenceCorner.lowerArm.ball } }).given }),
    own: user({ by: 'points', ...takeCorner(referenceCorner) }),
  },
  {
    tag: 'bumpline-cornering',
    numbers: ['24', '26'],
    read: (answer: { drop: number }) => answer.drop,
    page: { inside: `<script type="application/json">${POINTS}</script>`, state: 'ready' },
    begun: user({ by: 'points', given: takeCorner({ lowerArm: { ball: referenceCorner.lowerArm.ball } }).given }),
    own: user({ by: 'points', ...takeCorner(referenceCorner) }),
  },
  {
    tag: 'bumpline-compare',
    numbers: ['30', '20'],
    read: (answer: { cells: { change?: { value: number } }[][] }) => answer.cells[0]![0]!.change?.value,
    page: { inside: table(-0.012, -0.016), state: 'ready' },
    begun: user({ setups: [set('Mine', -0.012)] }),
    own: user({ setups: [set('Mine', -0.012), set('Mine too', -0.016)] }),
  },
  {
    tag: 'bumpline-clearance',
    numbers: ['10', '15'],
    read: (answer: { wheels: { plane: number } }) => answer.wheels.plane,
    page: {
      inside: '',
      attributes: 'wheel-before="205/55R16, 6.5, 45" wheel-after="225/45R17, 7.5, 35"',
      state: 'incomplete',
    },
    begun: user({ fit: { before: EXAMPLE_FITMENT.before, places: [] } as never }),
    own: user({
      ...MEASURED,
      fit: { before: EXAMPLE_FITMENT.before, after: EXAMPLE_FITMENT.after, places: [PLACE] },
      stopGap: 32,
      limits: { stopLength: 50 },
    }),
  },
];
