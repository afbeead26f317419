import type { Problem } from '../../core/quantity/problem.js';
import type { Understanding } from '../../core/readings/table/understanding.js';

/** What is wrong with a table of readings: as a whole, then cell by cell. */
export const tableProblems = ({ problems, cells }: Understanding): Problem[] => [
  ...problems,
  ...cells.flatMap((row, i) =>
    row.flatMap(({ problem }, j) => (problem ? [{ ...problem, path: `table.${i}.${j}` }] : [])),
  ),
];
