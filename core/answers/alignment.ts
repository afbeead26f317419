import type { TriedSource } from '../curve-sources/solved-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { numberChecks } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { type SettingSteps, settingSteps, type WheelSetting } from './alignment-steps.js';
import { type Figures, figureSlopes } from './figure-slopes.js';
import { linksOf } from './links-of.js';
import type { Doubted } from './lowering.js';
import { checkReach } from './within-reach.js';

/** What is to be set on one wheel, in which order, and how each moves the next? mm and degrees. */
export interface AlignmentRequest<S = TriedSource> extends Pick<WheelSetting, 'camber' | 'toe'> {
  /** Hard points or a driveway, bare or with parts on; of a left corner, also for a right wheel. */
  source: S;
  /** Travel from stock height to where the wheel stands. */
  drop: number;
  /** Travel from stock height to where the source was measured. Default 0. */
  measuredAt?: number;
  /** By how much lower it is to stand. Default 0. */
  lower?: number;
  camberWanted?: number | undefined;
  toeWanted?: number | undefined;
  /** Of what was read: half-widths of 95 %, degrees. */
  camberPlusMinus?: number;
  toePlusMinus?: number;
}

/** Numbers that follow each other: what is read → after the height → after camber → the rod. */
export interface AlignmentAnswer {
  /** What the height, and then camber, change by themselves. Toe is left out where the tie rod is not known. */
  byHeight: { camber: Doubted; toe?: Doubted };
  byCamber: { toe?: Doubted };
  /** By how much camber is to change then; 0 where none is wanted. */
  camberChange: Doubted;
  /** The top mount outboard, or the upper arm longer, for it, mm. */
  camberAmount: Doubted;
  /** By how much toe is to change then. Without a rod, and where toe was not read: left out. */
  toeChange?: Doubted;
  /** By how much the tie rod is to be longer for it, mm. */
  rodLonger?: Doubted;
  /** What a mm more rod does to toe, degrees of toe-in. */
  toePerMm?: Doubted;
  /** What 5 mm lower does. */
  lowered: { camber: Doubted; toe?: Doubted };
  /** What a degree more negative camber at the top mount does to toe. */
  toePerNegativeDegree?: Doubted;
}

/** By how many standard uncertainties a source is put off either way: all of it is smooth on this scale. */
const NUDGE = 0.1;

/**
 * By the exact linkage, with ± by central differences (first order: GUM, JCGM 100:2008, 5.1.2): of the links' sources, and of both gauges.
 * A source a step.
 *
 * @throws InputError of what is wrong with the source; `wrong-shape`, path `source`, of one without links; from `drop`, `measuredAt`,
 *   `alignment.lower`, `alignment.camber`, `alignment.toe`, `alignment.camberWanted`, `alignment.toeWanted`,
 *   `alignment.camberTolerance`, `alignment.toeTolerance`; and as `settingSteps`
 */
export function* alignmentSteps(request: AlignmentRequest): Generator<undefined, AlignmentAnswer> {
  const { source, drop, measuredAt = 0, lower = 0, camber, toe, camberWanted, toeWanted } = request;
  const { linkage, moved, sources } = linksOf(source, problemsOf(request));
  const travel = drop - measuredAt;
  checkReach(linkage.reach, [
    ['drop', travel, drop],
    ['alignment.lower', travel + lower, lower],
  ]);
  const isToeTold = !('driveway' in source && source.driveway);
  const asked: WheelSetting = {
    travel,
    lower,
    camber,
    camberWanted,
    ...(isToeTold && { toe, toeWanted }),
  };
  const figures = (of: Linkage, by: Partial<WheelSetting> = {}): Figures =>
    flat(settingSteps(of, { ...asked, ...by }), asked);
  const here = figures(linkage);
  const rows: Figures[] = [];
  for (const one of sources) {
    const beside = (times: number) => unlessRefused(() => figures(moved(one, times)));
    rows.push(figureSlopes(here, beside(NUDGE), beside(-NUDGE), NUDGE));
    yield undefined;
  }
  const all: Source[] = [...sources];
  for (const gauge of ['camber', 'toe'] as const) {
    const half = request[`${gauge}PlusMinus`] ?? 0;
    const { [gauge]: value } = asked;
    if (!(half > 0) || value === undefined) continue;
    const by = (NUDGE * half) / NORMAL_95;
    const beside = (off: number) => unlessRefused(() => figures(linkage, { [gauge]: value + off }));
    rows.push(figureSlopes(here, beside(by), beside(-by), NUDGE));
    all.push({ id: `gauge.${gauge}`, label: `the ${gauge} gauge`, dof: Number.POSITIVE_INFINITY });
  }
  const doubted = (name: string): Doubted => {
    const value = here[name]!;
    if (all.length === 0) return { value };
    const plusMinus = plusMinus95({ value, parts: Float64Array.from(rows, (row) => row[name]!) }, all);
    return Number.isFinite(plusMinus) ? { value, plusMinus } : { value };
  };
  return {
    byHeight: { camber: doubted('heightCamber'), ...(isToeTold && { toe: doubted('heightToe') }) },
    byCamber: isToeTold ? { toe: doubted('camberToe') } : {},
    camberChange: doubted('camberChange'),
    camberAmount: doubted('camberAmount'),
    lowered: { camber: doubted('loweredCamber'), ...(isToeTold && { toe: doubted('loweredToe') }) },
    ...(isToeTold && { toePerMm: doubted('toePerMm'), toePerNegativeDegree: doubted('toePerNegativeDegree') }),
    ...(isToeTold &&
      toe !== undefined &&
      toeWanted !== undefined && { toeChange: doubted('toeChange'), rodLonger: doubted('rodLonger') }),
  };
}

/** What is told of the steps. */
function flat(steps: SettingSteps, { camberWanted, toeWanted }: WheelSetting): Figures {
  const { asRead, afterHeight, afterCamber, lowered, camberAmount, rodLonger, toePerMm, toePerNegativeDegree } = steps;
  return {
    heightCamber: afterHeight.camber - asRead.camber,
    heightToe: afterHeight.toe - asRead.toe,
    camberChange: camberWanted === undefined ? 0 : camberWanted - afterHeight.camber,
    camberToe: afterCamber.toe - afterHeight.toe,
    camberAmount,
    toeChange: (toeWanted ?? afterCamber.toe) - afterCamber.toe,
    rodLonger,
    toePerMm,
    loweredCamber: lowered.camber,
    loweredToe: lowered.toe,
    toePerNegativeDegree,
  };
}

function problemsOf(request: AlignmentRequest): Problem[] {
  const problems: Problem[] = [];
  const number = numberChecks(problems);
  const { drop, camber, toe, plusMinusToe } = QUANTITIES;
  const ranges = {
    drop: ['drop', drop],
    measuredAt: ['measuredAt', drop],
    lower: ['alignment.lower', drop],
    camber: ['alignment.camber', camber],
    toe: ['alignment.toe', toe],
    camberWanted: ['alignment.camberWanted', camber],
    toeWanted: ['alignment.toeWanted', toe],
    camberPlusMinus: ['alignment.camberTolerance', plusMinusToe],
    toePlusMinus: ['alignment.toeTolerance', plusMinusToe],
  } as const;
  for (const [key, [path, { min, max }]] of Object.entries(ranges)) {
    const value = request[key as keyof typeof ranges];
    if (value !== undefined || key === 'drop') number(path, value, min, max);
  }
  return problems;
}
