import { compareCars } from '../core/answers/between-samples-study.ts';

/*
 * How far the worst gap that clearance names lies from the least that a far finer grid of travel and steering finds, walked by the
 * solver itself: random invented cars, three seeds. Printed; nothing passes or fails here.
 */
const CARS = 60;

for (const seed of [21, 22, 23]) {
  const compared = compareCars(CARS, seed);
  const over = compared.map(({ said, found }) => said - found).sort((a, b) => a - b);
  const other = compared.filter(({ isVerdictSame }) => !isVerdictSame).length;
  console.log(
    `seed ${seed}: ${compared.length} places on ${CARS} cars; too hopeful by ${Math.max(0, over.at(-1)).toFixed(4)} mm at most` +
      `; below the grid's own least by ${(-over[Math.floor(over.length / 2)]).toFixed(4)} mm in the middle; ${other} verdicts another`,
  );
}
