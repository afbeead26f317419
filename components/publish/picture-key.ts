import type { ChartModel } from '../chart/model.js';
import { nameOf } from '../chart/model.js';
import { POINT_MARKS } from '../chart/picture.js';
import { CAPTION } from './caption.words.js';
import type { MadePicture } from './savable.js';

/** What a line, a mark or a number in a picture stands for. */
export interface KeyEntry {
  text: string;
  /** The classes and the path of its sample, 28 px wide about a height of 0; none where a number stands in its text. */
  sample?: { look: string; d: string; dash?: readonly number[] | undefined };
}

/** As wide as the samples are, px. */
export const SAMPLE_PX = 28;

/** More lines than these do not all have their name beside them. */
const NAMED_LINES = 2;

/** What has to be said of a picture's signs where it stands alone. */
export const keyOf = ({ model, numbered = [] }: MadePicture): KeyEntry[] => [
  ...(model ? ofChart(model) : []),
  ...numbered.map(({ number, label }) => ({ text: `${number}\u00a0${label}` })),
];

function ofChart({ series, points = [], bands }: ChartModel): KeyEntry[] {
  // A line that goes on in other dashes is named once.
  const lines = series.filter(
    (one, i) => nameOf(one) && series.findIndex((other) => nameOf(other) === nameOf(one)) === i,
  );
  const marks = points.filter(({ name }) => name);
  const isNeeded = lines.length > NAMED_LINES || marks.length > 0;
  return [
    ...(isNeeded
      ? lines.map((one) => ({
          text: nameOf(one),
          sample: { look: `line ${one.role}`, d: `M0 0h${SAMPLE_PX}`, dash: one.dash },
        }))
      : []),
    ...marks.map(({ name, role, mark = 'cross' }) => ({
      text: name!,
      sample: { look: `points ${role}`, d: `M${SAMPLE_PX / 2} 0${POINT_MARKS[mark]}` },
    })),
    ...(bands.some(({ thin }) => !thin)
      ? [{ text: CAPTION.band, sample: { look: 'wash now', d: `M0 -6h${SAMPLE_PX}v12h-${SAMPLE_PX}z` } }]
      : []),
  ];
}
