import { broken, compareCars } from '../core/answers/between-samples-study.ts';

/*
 * How far the worst gap that clearance names lies from the least that a far finer grid of travel and steering finds, walked by the
 * solver itself: random invented cars: all of those of which the tests walk a part, and three further seeds. Throws where a gap is more than 0.01 mm
 * too hopeful, or a verdict another.
 */
const CARS = { 11: 16, 12: 16, 21: 60, 22: 60, 23: 60 };
let wrong = 0;

for (const [seed, cars] of Object.entries(CARS)) {
  const compared = compareCars(cars, Number(seed));
  wrong += broken(compared).length;
  const over = compared.map(({ said, found }) => said - found).sort((a, b) => a - b);
  const other = compared.filter(({ isVerdictSame }) => !isVerdictSame).length;
  console.log(
    `seed ${seed}: ${compared.length} places on ${cars} cars; too hopeful by ${Math.max(0, over.at(-1)).toFixed(4)} mm at most` +
      `; below the grid's own least by ${(-over[Math.floor(over.length / 2)]).toFixed(4)} mm in the middle; ${other} verdicts another`,
  );
}
if (wrong > 0) throw new Error(`${wrong} places are not as promised.`);
