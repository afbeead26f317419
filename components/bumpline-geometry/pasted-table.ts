import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, givenByUser, isWishbone } from '../../core/document/car.js';
import type { GivenCorner } from '../../core/document/car-schema.js';
import type { readPastedPoints } from '../../core/document/pasted-points.js';
import { give } from '../../core/document/provenance.js';
import type { Display } from '../element/sentence.js';
import { problemText } from '../inputs/sheet.labels.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { sheetValuesText } from '../inputs/sheet-values.js';
import { NAMES } from './bumpline-geometry.labels.js';

const { pasted: WORDS } = NAMES;

type Read = ReturnType<typeof readPastedPoints>;

/** Whether a text means to be JSON: else it is a table. */
export const isJson = (text: string): boolean => /^\s*[{[]/.test(text);

/** The names of all that was read. */
const keysOf = ({ points, measures, plusMinus: _, ...values }: GivenCorner): string[] => [
  ...Object.keys(points),
  ...Object.keys(measures ?? {}),
  ...Object.keys(values),
];

export const rowCount = ({ given }: Read): number => keysOf(given).length;

/** What was read of a pasted table, and what was not, before it is taken. */
export function renderRead(
  read: Read,
  car: CarDocument,
  display: Display,
  sheetOf: (key: string) => SheetSpec | undefined,
  onTake: () => void,
): TemplateResult {
  const { given, problems } = read;
  const taken = withPoints(car, given);
  const count = rowCount(read);
  const rows = keysOf(given).flatMap((key) => sheetOf(key) ?? []);
  return html`<div class="pasted">
    ${
      count > 0
        ? html`<p>${WORDS.read(count)}</p>
            <ul class="pasted-rows">
              ${rows.map((sheet) => html`<li><span>${sheet.title}</span><b>${sheetValuesText(sheet, taken, display)}</b></li>`)}
            </ul>`
        : nothing
    }
    ${
      problems.length > 0
        ? html`<p>${WORDS.notRead}</p>
            <ul class="pasted-not">
              ${problems.map((problem) => html`<li>${problemText(problem, display)}</li>`)}
            </ul>`
        : nothing
    }
    ${count > 0 ? html`<button type="button" class="button main take-table" @click=${onTake}>${WORDS.take(count)}</button>` : nothing}
  </div>`;
}

/** The car with the rows of a table in place of its own; what the table does not name stays, but for another kind of links. */
export function withPoints(car: CarDocument, { points, plusMinus, measures, ...values }: GivenCorner): CarDocument {
  const hasPoints = Object.keys(points).length > 0;
  const join = (before: GivenCorner): GivenCorner => ({
    ...before,
    ...values,
    points: { ...before.points, ...points },
    ...((before.plusMinus || plusMinus) && { plusMinus: { ...before.plusMinus, ...plusMinus } }),
    ...((before.measures || measures) && { measures: { ...before.measures, ...measures } }),
  });
  const taken = isWishbone(car)
    ? give(car, 'corner', 'user', () => ({ given: join({ points: {} }) }))
    : givenByUser(car, join);
  return hasPoints ? { ...taken, by: 'points' } : measures ? { ...taken, by: 'driveway' } : taken;
}
