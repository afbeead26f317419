import type { Prediction } from '../../core/document/predictions.js';
import { interpolate } from '../../core/math/interpolate.js';
import { toCsv } from '../controls/csv.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import { fromText, lengthText } from './bumpline-predict.words.js';
import { heightName } from './chart.js';
import type { Agreed } from './predict-view.js';

const { record: WORDS } = NAMES;

/** The change that was predicted over the bump that was asked, with its ±. */
export function keptChange({ start, step, change, plusMinus, drop, over }: Prediction): {
  value: number;
  plusMinus: number;
} {
  const travels = Float64Array.from(change, (_, i) => start + i * step);
  return {
    value: interpolate(travels, Float64Array.from(change), drop + over),
    plusMinus: interpolate(travels, Float64Array.from(plusMinus), drop + over),
  };
}

/** "−0.47° ± 0.03° over 40 mm of bump, 25 mm lower" */
export function keptText(prediction: Prediction, display: Display): string {
  const { quantity, over, drop } = prediction;
  const { value, plusMinus } = keptChange(prediction);
  const change = show(value, quantity === 'toe' ? 'toe' : 'camberChange', display, plusMinus);
  return WORDS.change(change, lengthText(over, display) + fromText(over), heightName(drop, display));
}

/** A prediction, and what was measured of it, as JSON for others: mm and degrees. */
export const recordJson = (prediction: Prediction, agreed: Agreed | undefined): string =>
  `${JSON.stringify(
    {
      prediction,
      ...(agreed && {
        measured: {
          readings: [...agreed.travel].map((travel, i) => ({ travel, change: rounded(agreed.value[i]!) })),
          inside: agreed.inside,
          chiSquare: rounded(agreed.chiSquare),
          degreesOfFreedom: agreed.dof,
          chance: rounded(agreed.chance),
          ...(agreed.change && { change: agreed.change }),
        },
      }),
    },
    undefined,
    1,
  )}\n`;

const rounded = (figure: number): number => Number(figure.toFixed(4)) + 0;

/** The same as a table: mm and degrees. */
export function recordCsv({ start, step, change, plusMinus }: Prediction, agreed: Agreed | undefined): string {
  const { columns } = WORDS;
  const rows: (number | null)[][] = [
    ...change.map((value, i) => [start + i * step, value, plusMinus[i]!, null]),
    ...[...(agreed?.travel ?? [])].map((travel, i) => [travel, null, null, rounded(agreed!.value[i]!)]),
  ];
  return toCsv(
    [
      { label: columns.travel, unit: 'mm' },
      { label: columns.predicted, unit: '°' },
      { label: columns.plusMinus, unit: '°' },
      { label: columns.measured, unit: '°' },
    ],
    rows.sort(([a], [b]) => a! - b!),
  );
}
