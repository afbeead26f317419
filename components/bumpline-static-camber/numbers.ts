import { numbersFormat } from '../controls/numbers-format.js';
import type { NumbersColumn } from '../controls/table.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { amountText } from './bumpline-static-camber.words.js';
import { asItIs, type Cost, costsOf, ofWay, sortedWays, type Turn } from './costs.js';
import type { StaticCamberView, WaysOnSheet } from './static-camber-view.js';
import { wayName } from './way-names.js';
import { nameOf } from './ways-table.js';

const { csv: WORDS, table: TABLE } = NAMES;

type Cell = number | string | null;

/** All figures as plain columns: a way a row, of each figure what it becomes and the change. */
export function numbers(
  view: Pick<StaticCamberView, 'car' | 'display' | 'over'>,
  answer: WaysOnSheet,
  turn: Turn,
): { columns: NumbersColumn[]; rows: Cell[][] } {
  const { display, car } = view;
  const { angle, shown, write } = numbersFormat(display);
  const figures = costsOf(answer).flatMap((cost) => columnsOf(cost).map((of) => ({ cost, of })));
  const isAngle = ({ quantity, key }: Cost) => quantity.after !== 'coordinate' || key === 'bumpSteer';
  const cell = (cost: Cost, size: number | undefined): Cell =>
    size === undefined || !Number.isFinite(size) ? null : shown(size, isAngle(cost) ? 'angle' : 'length');
  return {
    columns: [
      { label: WORDS.way },
      { label: WORDS.amount },
      { label: WORDS.reached },
      { label: WORDS.camber, unit: angle, format: write('camber', 'angle', 'always') },
      ...figures.map(({ cost, of }): NumbersColumn => {
        const { label } = nameOf(cost.key, view);
        const dimension = isAngle(cost) ? 'angle' : 'length';
        return {
          label: of === 'change' ? WORDS.change(label) : label,
          unit: isAngle(cost) ? angle : display.units.length,
          format: write(cost.quantity[of], dimension, of === 'change' ? 'always' : 'auto'),
        };
      }),
    ],
    rows: [
      [
        TABLE.asItIs,
        '',
        '',
        shown(answer.asItIs.camber, 'angle'),
        ...figures.map(({ cost, of }) => (of === 'after' ? cell(cost, asItIs(cost.key, answer, turn)) : null)),
      ],
      ...sortedWays(answer, turn, car.camberAdded ?? {}).map((way): Cell[] => [
        wayName(way, answer),
        amountText(way.way, way.isReached ? way.amount : way.ends!.amount, display),
        way.isReached ? WORDS.yes : WORDS.no,
        cell(figures.find(({ cost }) => cost.key === 'kingpin')!.cost, way.figures.camber),
        ...figures.map(({ cost, of }) => cell(cost, ofWay(cost.key, way, answer, turn)[of])),
      ]),
    ],
  };
}

/** Of bump travel and of the strut's gap nothing but the change is known. */
const columnsOf = ({ key }: Cost): readonly ('after' | 'change')[] =>
  key === 'bumpTravel' || key === 'gapStrut' ? ['change'] : ['after', 'change'];
