import { staticCamber, tried } from '../../core/answers/from-source.ts';
import { staticCamberSteps } from '../../core/answers/static-camber.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { assumedBolt } from '../../core/linkage/parts/assumed-bolt.ts';
import { finished } from '../../core/math/finished.ts';
import { figuresAt, secantRoot, standingWith } from '../reference/independent-static-camber.ts';
import { abba } from './in-turn.mjs';

/*
 * How fast six ways of adding camber are compared, beside the generic Newton solver of test/reference (numerical Jacobian, ml-matrix) that
 * does the same five parts, without the way that only lowers. Bundled and started by run.mjs; nothing here passes or fails.
 */
const PLANNED_MS = 30;
const [DROP, BY] = [25, -1];
const source = { kind: 'corner', corner: EXAMPLE_CORNER };
const solved = tried({ source }).source;
const sink = new Float64Array(1);
const request = { drop: DROP, by: BY };

const own = () => {
  sink[0] += finished(staticCamberSteps({ source: solved, ...request })).ways.length;
};
const CHANGES = [
  (mm) => ({ topBy: [0, mm, 0] }),
  (degrees) => ({ knuckleTurnedBy: { degrees, bolt: assumedBolt(EXAMPLE_CORNER) } }),
  (camber) => ({ spinCamberBy: camber }),
  (mm) => ({ armLongerBy: mm }),
  (mm) => ({ ballBy: [0, mm, 0] }),
];
const peer = () => {
  const wanted = standingWith(EXAMPLE_CORNER, {}, DROP).camber + BY;
  for (const change of CHANGES) {
    const stands = (amount) => standingWith(EXAMPLE_CORNER, change(amount), DROP);
    const amount = secantRoot((x) => stands(x).camber - wanted, 0, -1);
    sink[0] += figuresAt(stands(amount), 40, [-40, 40]).camber;
  }
};
const { a, ratio, quartiles } = abba(own, peer, 20);
console.log('Six ways of adding a degree of camber to the example corner, links solved:');
console.log(
  `  the independent solver takes × ${ratio.toFixed(0)} (${quartiles[0].toFixed(0)} to ${quartiles[1].toFixed(0)}) for five of them; ${((100 * a) / PLANNED_MS).toFixed(0)} % of the planned ${PLANNED_MS} ms`,
);
const anew = () => {
  sink[0] += staticCamber({ source, ...request }).ways.length;
};
console.log(`  solved anew from hard points × ${abba(own, anew, 60).ratio.toFixed(2)}`);
