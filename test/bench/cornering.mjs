import { corneringOf } from '../../core/answers/cornering.ts';
import { camberForInclination, rollForInclination } from '../../core/answers/cornering-questions.ts';
import { cornering, corneringDoubt, tried } from '../../core/answers/from-source.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { buildLinkage } from '../../core/linkage/build-linkage.ts';
import { finished } from '../../core/math/finished.ts';
import { corneringCoverage } from '../core/answers/cornering-coverage.ts';
import { quantile, times } from './in-turn.mjs';

/*
 * A turn beside what it takes to put a linkage together once, and how often the ± of a driveway holds the true inclination. Bundled and
 * started by run.mjs; nothing here passes or fails.
 */
const source = { kind: 'corner', corner: EXAMPLE_CORNER };
const turn = { drop: 25, roll: 3 };
const steer = { radius: 30, wheelbase: 2.5 };
const solved = tried({ source }).source;
const median = (task, count) =>
  quantile(
    [...times(task, count)].sort((a, b) => a - b),
    0.5,
  );
const one = median(() => buildLinkage(EXAMPLE_CORNER), 300);
const told = (name, task, count) => console.log(`  ${name} × ${(median(task, count) / one).toFixed(1)}`);

console.log('Beside a linkage put together, links solved:');
told('rolled', () => corneringOf({ source: solved, ...turn }), 200);
told('rolled and steered', () => corneringOf({ source: solved, ...turn, steer }), 200);
told('and set again', () => corneringOf({ source: solved, ...turn, steer, camber: -1.5, toe: 0 }), 200);
told('solved anew', () => cornering({ source, ...turn, steer }), 60);
told('its doubt', () => corneringDoubt({ source, ...turn, steer }), 20);
told(
  'camber for an inclination',
  () => finished(camberForInclination({ source: solved, ...turn, inclination: 1 })),
  40,
);
told('roll for an inclination', () => finished(rollForInclination({ source: solved, ...turn, inclination: 1 })), 40);

const CARS = 150;
console.log(`The ± of a driveway's inclination holds the true one, ${CARS} cars a seed, outer and inner wheel:`);
for (const angle of [undefined, 8, 15, 25]) {
  for (const seed of [1, 2]) {
    const { outer, inner, plusMinus, error } = corneringCoverage({ seed, cars: CARS, steer: angle });
    const percent = [outer, inner].map((share) => `${(100 * share).toFixed(1)} %`).join(', ');
    console.log(
      `  steer ${angle ?? 0}°, seed ${seed}: ${percent}; mean ± ${plusMinus.toFixed(2)}°, error ${error.toFixed(2)}°`,
    );
  }
}
