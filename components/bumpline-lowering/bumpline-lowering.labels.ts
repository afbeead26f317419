import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { CarDocument } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { camberSetupOf, sourceKindOf } from '../../core/document/setup-in-use.js';
import type { AssumableKey } from '../../core/driveway/driveway.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { words } from '../../core/quantity/words.js';
import type { BalloonState } from '../drawing/items.js';
import { causeName } from '../element/causes.words.js';
import { adviceFor } from '../element/doubts.words.js';
import { dropText } from '../element/drop-words.js';
import { upper } from '../element/sentence.js';
import { type Display, pointsMissing, show } from './bumpline-lowering.words.js';

/** All English words of the element besides those of its first answer. */
export const NAMES = words('lowering/labels', {
  slider: 'Drop, from hub centre to arch lip',
  chartX: 'Wheel travel',
  chartY: 'Camber',
  chartYChange: 'Camber change',
  stock: 'stock height',
  touched: 'stop touched',
  solid: 'stop solid',
  end: 'full bump',
  droop: 'full droop',
  outside: 'not known',
  unmeasured: 'not measured',
  parts: 'Parts',
  gauge:
    'A gauge on the hub reads the wheel’s inclination, which is its camber as long as the wheel points straight ahead. The gauge’s own zero moves every value, but no change.',
  turns: 'turns back',
  before: 'same bump from stock height',
  lowered: 'lowered',
  raised: 'raised',
  ghost: 'Dashed: the same bump from stock height.',
  numbers: 'Measurements used',
  why: 'Why ±',
  doubtNote: 'Every ± is a 95 % interval.',
  noDoubt: 'No ± is shown, because none was stated for these numbers. Say how sure you are of each, and it appears.',
  crossCamber: 'Cross-camber (left minus right)',
  dropRow: 'Drop',
  camberRow: 'Camber there',
  addOther: 'Add the other side',
  hidden: 'Out of sight, so always assumed:',
  printed: (corner: string, date: string, method: string): string =>
    `${corner} · printed ${date} · ${method.replace(/\.$/, '')}. Every ± is a 95 % interval.`,
  methods: {
    curve: 'from a given curve',
    readings: (whose: string, degree: number): string =>
      `${whose}: a curve of degree ${degree} fitted to the camber that a gauge on the hub read, within the travel that was read`,
    driveway: (limits: string): string =>
      `measurements with tape and gauge, taken as a strut that is flat in front view; the ± covers what that leaves out. ${limits}`,
    points: 'hard points, solved exactly in three dimensions; the ± covers how well they were measured',
  },
  chart: (stock: string, there: string, height: string): string =>
    `Camber over wheel travel. ${stock} at stock height, ${there} ${height}.`,
  columns: { travel: 'Travel', camber: 'Camber', change: 'Change' },
  table: (corner: string): string => `Camber over wheel travel, ${corner.toLowerCase()}`,
  frontView: (where: string, camber: string): string => `Front view of the strut at ${where}: camber ${camber}`,
  ofTravel: (travel: string): string => `${travel} of travel`,
  lower: (size: string): string => `${size} lower`,
  higher: (size: string): string => `${size} higher`,
  inBump: (travel: string): string => `${travel} of bump`,
  inDroop: (travel: string): string => `${travel} of droop`,
  hints: {
    the: (label: string): string => `The ${label}`,
    article: /^the /,
    advice: (name: string, isMany: boolean, share: string, isYours: boolean, advice: string): string =>
      `${name} ${isMany ? 'account' : 'accounts'} for ${share} of ${isYours ? 'your' : 'this'} ±: ${advice}.`,
    yours: (name: string, share: string, advice: string): string => `${name} accounts for ${share} of your ±${advice}`,
    others: (name: string, share: string): string => `${name} accounts for ${share} of this ±.`,
    method: ', and a tape cannot narrow it. Hard points can.',
    hidden: ', and it is out of sight. Hard points narrow it.',
    bumpSteer: ': enter it if you know it.',
    caster: ': it stands on an alignment sheet.',
    kingpin: ': measuring the damper’s lean on its tube would narrow it.',
    next: ': measure it next.',
    again: ': worth measuring again, more carefully.',
  },
  reasons: {
    rateBefore: 'Camber rate at stock height',
    rateAfter: (height: string): string => `Camber rate ${height}`,
    rollCentre: (height: string): string => `Roll centre above the ground, at stock height and ${height}`,
    turnsAt: 'Turns back at',
    changeToThere: 'Camber change up to there',
  },
  unmeasuredStock: (doBegin: boolean, where: string): string =>
    `Stock height was not measured: the readings ${doBegin ? 'begin' : 'end'} at ${where} from it, and every change is counted from there.`,
  otherSide: (height: string): string => `On the other side ${height}`,
  nothingThere: (height: string, where: string): string =>
    `${height}: nothing was measured there. The readings end at ${where}.`,
  cursorUnmeasured: (travel: string): string => `At ${travel} of travel nothing was measured`,
  cursor: (travel: string, camber: string, change: string): string =>
    `At ${travel} of travel: ${camber} (${change} from stock height)`,
  balloons: {
    example: ', example value',
    yours: '',
    next: ', worth measuring again',
    wanted: ', example value, measure it next',
    problem: ', needs correcting',
  },
});

/** The next best measurement, or undefined where no doubt was stated or nothing stands out. */
export function hint(answer: LoweringAnswer, car: CarDocument, display: Display): string | undefined {
  const top = answer.contributions[0];
  if (!top || top.share < 0.2 || pointsMissing(car) > 0) return undefined;
  // Of readings alone there is nothing else to measure.
  if (top.id === 'readings' && answer.contributions.length === 1) return undefined;
  const share = `${formatNumber(top.share * 100, 0, display.language)}\u202f%`;
  const { hints } = NAMES;
  const label = causeName(top.label).replace(hints.article, '');
  const name = top.id === 'caster' || top.id === 'bumpSteer' ? upper(label) : hints.the(label);
  const advice = adviceFor(top.id, camberSetupOf(car));
  const isYours = isUsers(car, 'corner');
  if (advice) return hints.advice(name, top.id === 'readings', share, isYours, advice);
  if (!isYours) return hints.others(name, share);
  // Of points all are theirs, so it was measured: it can only be measured better.
  return hints.yours(name, share, sourceKindOf(car) === 'driveway' ? drivewayAdvice(top.id, answer) : hints.again);
}

/** What would narrow it. */
function drivewayAdvice(id: string, { driveway }: LoweringAnswer): string {
  const { hints } = NAMES;
  if (id === 'method') return hints.method;
  if (id === 'ballOffset') return hints.hidden;
  if (id === 'bumpSteer' && !driveway?.taken.bumpSteer.measured) return hints.bumpSteer;
  if (id === 'caster' && !driveway?.taken.caster.measured) return hints.caster;
  if (id === 'kingpin') return hints.kingpin;
  return driveway?.taken[id as AssumableKey]?.measured === false ? hints.next : hints.again;
}

/** Everything that "Why ±" lists, as label and value. */
export function reasons(answer: LoweringAnswer, display: Display): { label: string; text: string }[] {
  const { reasons: words } = NAMES;
  const rows = [
    {
      label: words.rateBefore,
      text: show(answer.rateBefore.value, 'camberRate', display, answer.rateBefore.plusMinus),
    },
    {
      label: words.rateAfter(placed(answer.drop, display)),
      text: show(answer.rateAfter.value, 'camberRate', display, answer.rateAfter.plusMinus),
    },
  ];
  if (answer.rollCentre) {
    const { before, after } = answer.rollCentre;
    rows.push({
      label: words.rollCentre(heightName(answer.drop, display)),
      text: [before, after].map((height) => show(Math.round(height), 'travel', display)).join(', '),
    });
  }
  if (answer.reversal) {
    const { travel, change } = answer.reversal;
    rows.push({
      label: words.turnsAt,
      text: NAMES.inBump(show(travel.value, 'travel', display, travel.plusMinus)),
    });
    rows.push({ label: words.changeToThere, text: show(change, 'camberChange', display) });
  }
  return rows;
}

/** What the readings do not reach, in words; undefined of any other problem. */
export function unmeasuredText({ code, path, value, limit = 0 }: Problem, display: Display): string | undefined {
  if (code !== 'outside-domain') return undefined;
  const end = show(Math.abs(limit), 'travel', display);
  const where = limit < 0 ? NAMES.inDroop(end) : NAMES.inBump(end);
  if (path === 'stockHeight') return NAMES.unmeasuredStock(limit > 0, where);
  const height = placed(Number(value), display);
  return NAMES.nothingThere(path === 'other.drop' ? NAMES.otherSide(height) : height, where);
}

/** What the cursor stands on, beside the chart. */
export function atCursor(travel: number, camber: number, change: number, display: Display): string {
  const { units, language } = display;
  const travelText = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  if (Number.isNaN(camber)) return NAMES.cursorUnmeasured(travelText);
  const camberText = formatQuantity(camber, 'camber', units, { language }).text;
  const changeText = formatQuantity(change, 'camberChange', units, { language, sign: 'always' }).text;
  return NAMES.cursor(travelText, camberText, changeText);
}

/** A balloon's name for who cannot see how it is drawn. */
export const balloonLabel = (title: string, state: BalloonState): string => `${title}${NAMES.balloons[state]}`;

/** Whether nobody said where the camber stands at stock height: only changes of it are known then. */
export const isChangeOnly = ({ driveway }: LoweringAnswer): boolean => driveway !== undefined && !driveway.camber;

/** Camber, or where only its changes are known the change from stock height, with its sign. */
export function camberLabel(answer: LoweringAnswer, camber: number, { units, language }: Display): string {
  return isChangeOnly(answer)
    ? formatQuantity(camber, 'camberChange', units, { language, sign: 'always' }).text
    : formatQuantity(camber, 'camber', units, { language }).text;
}

/** "30 mm lower", at the marker of the new height. */
export const heightName = (drop: number, display: Display): string =>
  drop === 0 ? NAMES.stock : placed(drop, display);

const placed = (drop: number, display: Display): string =>
  (drop < 0 ? NAMES.higher : NAMES.lower)(dropText(drop, display));
