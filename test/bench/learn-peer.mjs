import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { cornerSources } from '../../core/curve-sources/corner-doubt.ts';
import { learnCorner } from '../../core/learn/learn-corner.ts';
import { buildLinkage } from '../../core/linkage/build-linkage.ts';
import { movedBy } from '../../core/linkage/corner-source.ts';
import { sweepTravel } from '../../core/linkage/sweep.ts';
import { randomNumbers } from '../core/driveway/random-car.ts';
import { CARS } from '../core/learn/cells.ts';
import { drawnAfternoon, EXACT, readAfternoon, taped } from '../core/learn/study.ts';
import { abba } from './in-turn.mjs';

const HEIGHTS = Array.from({ length: 20 }, (_, i) => -57 + 6 * i);
/** What is known of a pass's zero beforehand, degrees: as the project's own. */
const ZERO_DEG = 20;

/** The same problem for a general-purpose library: 60 readings, 24 coordinates and 3 zeros, derivatives by differences. */
function byPeer(corner, readings, sd) {
  const sources = cornerSources(corner);
  const passes = [...new Set(readings.map(({ pass }) => pass))];
  const passOf = readings.map(({ pass }) => passes.indexOf(pass));
  const travels = Float64Array.from(HEIGHTS);
  const at = readings.map(({ travel }) => HEIGHTS.indexOf(travel));
  const count = passes.length + sources.length;
  const x = Array.from({ length: readings.length + count }, (_, i) => i);
  const y = x.map((i) => (i < readings.length ? readings[i].value / sd : 0));
  const model = (unknowns) => {
    const moved = sources.reduce((of, source, s) => movedBy(of, source, unknowns[passes.length + s]), corner);
    const { camber } = sweepTravel(buildLinkage(moved, { isOpen: true }), travels);
    return (i) =>
      i < readings.length ? (camber[at[i]] + ZERO_DEG * unknowns[passOf[i]]) / sd : unknowns[i - readings.length];
  };
  const start = new Array(count).fill(0);
  const { parameterValues } = levenbergMarquardt({ x, y }, model, {
    initialValues: start,
    gradientDifference: 1e-4,
    centralDifference: true,
    damping: 1e-3,
    maxIterations: 30,
    errorTolerance: 1e-12,
    improvementThreshold: 1e-10,
  });
  return { corner: sources.reduce((of, source, s) => movedBy(of, source, parameterValues[passes.length + s]), corner) };
}

export function peerTable() {
  const random = randomNumbers(1);
  const truth = CARS['strut, rack behind'](random);
  const corner = taped(random, truth);
  const day = drawnAfternoon(random, EXACT);
  const readings = readAfternoon(random, buildLinkage(truth), day, { heights: HEIGHTS });
  const sink = [];
  const own = () => {
    sink[0] = learnCorner({ corner, readings, allowances: EXACT });
  };
  own();
  const { sd } = sink[0].sets[0];
  const peer = () => {
    sink[1] = byPeer(corner, readings, sd);
  };
  const { a, b, ratio, quartiles } = abba(own, peer, 10);
  const [found, other] = [sink[0].known.corner, sink[1].corner].map(
    (of) => sweepTravel(buildLinkage(of), [-50, 50]).camber,
  );
  const apart = Math.abs(found[1] - found[0] - (other[1] - other[0]));
  console.log(
    `\n${readings.length} readings, 24 coordinates: learnt whole in ${a.toFixed(1)} ms, fit alone by ml-levenberg-marquardt with numerical derivatives ${b.toFixed(1)} ms: ${ratio.toFixed(1)} times as long (quartiles ${quartiles.map((one) => one.toFixed(1)).join(' to ')}); camber over 100 mm apart by ${apart.toExponential(1)}°`,
  );
}
