import type { CarDocument } from '../../core/document/car.js';
import { ownSetups } from '../../core/document/setup-in-use.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { shownName } from '../car/shown-names.words.js';
import { type DoubtKey, doubtFields } from '../element/doubts.words.js';
import type { Display } from '../element/sentence.js';
import { draftProblemText } from '../parts/parts-text.js';
import { LABELS } from './bumpline-compare.labels.js';
import { FIRST } from './bumpline-compare.words.js';
import { givenLabel } from './compare-lists.js';

/** What is asked of a set's instruments, under the set's name where it is one of several: `doubts.0.tapeScale`. */
function doubtOf(path: string, car: CarDocument): { label: string; quantity: Quantity } | undefined {
  const [key, index] = path.split('.').reverse();
  const field = doubtFields()[key as DoubtKey];
  const setup = index === undefined ? undefined : ownSetups(car)[Number(index)];
  return field && setup ? { ...field, label: LABELS.body.ofSet(shownName(setup.name), field.label) } : field;
}

/** A problem in words. */
export function problemText(problem: Problem, car: CarDocument, { units, language }: Display): string {
  const { path } = problem;
  const [first, row, column] = path.split('.');
  const ofPart =
    first === 'setups' ? draftProblemText(problem, ownSetups(car)[Number(row)], { units, language }) : undefined;
  if (ofPart !== undefined) return ofPart;
  const doubt = doubtOf(path, car);
  const isHeight = first === 'heights' && row !== undefined;
  const isOver = first === 'over';
  return explainProblem(problem, {
    label:
      first === 'table' && column
        ? LABELS.body.cell(Number(row) + 1, Number(column) + 1)
        : isOver
          ? FIRST.over
          : isHeight
            ? LABELS.body.height(Number(row) + 1)
            : (doubt?.label ?? givenLabel(path)),
    quantity: isOver ? 'travel' : isHeight ? 'drop' : doubt?.quantity,
    unitSystem: units,
    language,
  });
}
