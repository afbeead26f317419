import type { SolvedLinks, SolvedSource } from '../curve-sources/solved-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { partOf } from '../linkage/parts/part-data.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { ifJoined, staticAngles } from '../linkage/parts/targets.js';
import { sweepTravel } from '../linkage/sweep.js';
import { ToeWindow } from '../linkage/toe-window.js';
import { opened } from '../linkage/travel.js';
import { InputError } from '../quantity/problem.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { standingAtDrop } from './aligned-at-drop.js';
import { amountForCamber } from './amount-for-camber.js';
import { PART_WAYS } from './camber-ways.js';
import { bumpUntil, damperLengthOf, type Standing, standingWithToe, strutToWheelPlane } from './corner-at.js';
import { type LinksInTurn, turnOf } from './cornering-links.js';
import { type LeastCostRequest, type OwnWay, USUAL_WINDOW_MM } from './least-cost-request.js';

/** A corner with parts on at a height, camber and toe set there, and what follows from that alone. mm and degrees. */
export interface Setup {
  drop: number;
  /** Static camber, as it then is. */
  camber: number;
  way?: OwnWay;
  /** Of the way's part, in the sense of `PART_WAYS`. */
  amount?: number;
  parts: PartData[];
  turn: LinksInTurn;
  rollCentreHeight: number;
  /** Between the contact points. */
  track: number;
  /** Of the strut; undefined of another corner. */
  motionRatio?: number;
  /** By how much the damper is longer than before, where it stands. */
  damperLonger: number;
  /** More bump travel than before, at the wheel. */
  bumpTravel: number;
  /** Peak to peak. Undefined where the tie rod is not known; NaN where the window cannot be driven. */
  bumpSteer?: number;
  scrubRadius: number;
  /** By how much the strut is further from the tyre. Undefined where no strut is beside it. */
  gapStrut?: number;
}

/** A ball joint that is put on; 0 mm is none. */
interface Joint {
  mm: number;
  correctTieRod?: boolean;
}

/** Where a linkage stands at a height, toe set, ready to take further parts. */
interface Stands {
  standing: Standing;
  parts: PartData[];
}

const NO_JOINT: Joint = { mm: 0 };

/** Puts setups together, one at a time, on the exact linkage. What was put together is kept. */
export class Setups {
  readonly #toe: number;
  readonly #isToeTold: boolean;
  readonly #request: LeastCostRequest;
  readonly #source: SolvedSource;
  readonly #links: SolvedLinks;
  readonly #jointed = new Map<string, Stands | undefined>();
  readonly #fitted = new Map<string, Setup | undefined>();
  readonly #before: Stands;
  /** The car as it is, toe set. */
  readonly asItIs: Setup;

  /** @throws InputError where the car cannot stand as it is */
  constructor(request: LeastCostRequest, source: SolvedSource, links: SolvedLinks) {
    this.#request = request;
    this.#source = source;
    this.#links = links;
    this.#toe = request.toe ?? staticAngles(links.linkage).toe;
    this.#isToeTold = source.driveway === undefined;
    const before = this.#bare(request.drop);
    if (!before) throw new InputError([{ code: 'outside-domain', path: 'drop', value: request.drop }]);
    this.#before = before;
    this.asItIs = this.#setup(request.drop, before);
  }

  /** All that were put together so far. */
  get all(): Setup[] {
    return [...this.#fitted.values()].filter((setup) => setup !== undefined);
  }

  /**
   * At a height with a ball joint on, camber as that leaves it or set by a way; undefined where the links, or what is sold, do not go so
   * far.
   */
  fitted(drop: number, joint: Joint, set?: { way: OwnWay; camber: number }): Setup | undefined {
    const key = [drop, joint.mm, joint.correctTieRod, set?.way, set?.camber].join('|');
    if (!this.#fitted.has(key)) this.#fitted.set(key, this.#fit(drop, joint, set));
    return this.#fitted.get(key);
  }

  #fit(drop: number, joint: Joint, set?: { way: OwnWay; camber: number }): Setup | undefined {
    const stands = this.#atDrop(drop, joint);
    if (!stands || !set) return stands && this.#setup(drop, stands);
    const { way, camber } = set;
    const { corner } = this.#links;
    const { most, data } = PART_WAYS[way];
    const { linkage } = stands.standing;
    const amount = amountForCamber(linkage, (mm) => data(mm, corner), { camber, toe: this.#toe });
    if (amount === undefined || Math.abs(amount) > most) return undefined;
    const fitted = this.#with(stands, data(amount, corner));
    return fitted && this.#setup(drop, fitted, { way, amount });
  }

  /** @returns undefined beyond reach */
  #atDrop(drop: number, joint: Joint): Stands | undefined {
    const key = [drop, joint.mm, joint.correctTieRod].join('|');
    if (!this.#jointed.has(key)) this.#jointed.set(key, this.#jointedAt(drop, joint));
    return this.#jointed.get(key);
  }

  #jointedAt(drop: number, { mm, correctTieRod }: Joint): Stands | undefined {
    if (mm === 0) return unlessRefused(() => this.#bare(drop));
    const bare = this.#atDrop(drop, NO_JOINT);
    return bare && this.#with(bare, { part: 'ballJointExtended', mm, ...(correctTieRod && { correctTieRod }) });
  }

  /** @throws InputError `outside-domain`, path `drop` */
  #bare(drop: number): Stands | undefined {
    const standing = this.#standing(standingAtDrop(this.#links.linkage, this.#source, { ...this.#request, drop }));
    return standing && { standing, parts: [] };
  }

  /** One more part, toe set again. */
  #with({ standing, parts }: Stands, part: PartData): Stands | undefined {
    const built = ifJoined(() => partOf(part)(opened(standing.linkage)));
    const again = built && this.#standing(built);
    return again && { standing: again, parts: [...parts, part] };
  }

  /** At its own travel 0, ready to be built on. */
  #standing(linkage: Linkage): Standing | undefined {
    const standing = standingWithToe(linkage, 0, this.#toe);
    if (!standing) return undefined;
    const { linkage: set } = standing;
    return { ...standing, linkage: { ...set, lengths: { ...set.lengths, tieRod: set.solver.tieRod } } };
  }

  #setup(drop: number, { standing, parts }: Stands, way?: { way: OwnWay; amount: number }): Setup {
    const { linkage } = standing;
    const { lowered, drop: now, steer, tyreRoll } = this.#request;
    const isDampers = lowered === 'dampers';
    // A damper that is made shorter for the height keeps its piston where it was.
    const { standing: like } = isDampers ? this.#atDrop(drop, NO_JOINT)! : this.#before;
    const here = sweepTravel(linkage, [0]);
    const length = damperLengthOf(like);
    const [gap, gapBefore] = [strutToWheelPlane(linkage), strutToWheelPlane(this.#before.standing.linkage)];
    const turn = {
      drop,
      roll: 0,
      ...(steer && { steer }),
      ...(tyreRoll !== undefined && { tyreRoll }),
      source: undefined,
    };
    return {
      drop,
      camber: here.camber[0]!,
      ...way,
      parts,
      turn: turnOf(linkage, turn, { isToeUnknown: !this.#isToeTold }),
      rollCentreHeight: here.rollCentreHeight[0]!,
      track: 2 * here.halfTrack[0]!,
      ...(linkage.kind === 'strut' && { motionRatio: here.motionRatio[0]! }),
      damperLonger: Number.isNaN(length) ? 0 : here.damperLength[0]! - length,
      bumpTravel: bumpUntil(standing, length) ?? (isDampers ? 0 : now - drop),
      ...(this.#isToeTold && { bumpSteer: this.#bumpSteer(linkage) }),
      scrubRadius: here.scrubRadius[0]!,
      ...(gap !== undefined && gapBefore !== undefined && { gapStrut: gap - gapBefore }),
    };
  }

  #bumpSteer(linkage: Linkage): number {
    const over = new ToeWindow(0, this.#request.window ?? USUAL_WINDOW_MM);
    return over.sweep(linkage) ? over.spread : Number.NaN;
  }
}
