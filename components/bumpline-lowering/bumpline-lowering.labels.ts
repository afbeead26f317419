import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { CarDocument } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import type { AssumableKey } from '../../core/driveway/driveway.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { BalloonState } from '../drawing/items.js';
import { adviceFor } from '../element/doubts.words.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { type Display, dropText, pointsMissing, show } from './bumpline-lowering.words.js';

/** The next best measurement, or undefined where no doubt was stated or nothing stands out. */
export function hint(answer: LoweringAnswer, car: CarDocument, display: Display): string | undefined {
  const top = answer.contributions[0];
  if (!top || top.share < 0.2 || pointsMissing(car) > 0) return undefined;
  // Of readings alone there is nothing else to measure.
  if (top.id === 'readings' && answer.contributions.length === 1) return undefined;
  const share = `${formatNumber(top.share * 100, 0, display.language)}\u202f%`;
  const label = top.label.replace(/^the /, '');
  const name = top.id === 'caster' || top.id === 'bumpSteer' ? upper(label) : `The ${label}`;
  const advice = adviceFor(top.id);
  if (advice) {
    const makes = top.id === 'readings' ? 'make' : 'makes';
    return `${name} ${makes} ${share} of ${isUsers(car, 'corner') ? 'your' : 'this'} ±: ${advice}.`;
  }
  if (sourceKindOf(car) === 'driveway' && isUsers(car, 'corner'))
    return `${name} makes ${share} of your ±${drivewayAdvice(top.id, answer)}`;
  // All points are theirs, so it was measured: it can only be measured better.
  return isUsers(car, 'corner')
    ? `${name} makes ${share} of your ±: worth measuring again, with more care.`
    : `${name} makes ${share} of this ±.`;
}

const upper = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** What would narrow it. */
function drivewayAdvice(id: string, { driveway }: LoweringAnswer): string {
  if (id === 'method') return ': that is the most a tape can tell. Hard points tell more.';
  if (id === 'ballOffset') return ': it cannot be seen. Hard points tell more.';
  if (id === 'bumpSteer' && !driveway?.taken.bumpSteer.measured) return ': enter it if you know it.';
  if (id === 'caster' && !driveway?.taken.caster.measured) return ': an alignment sheet tells it.';
  if (id === 'kingpin') return ': the damper’s lean, measured on its tube, would tell more.';
  return driveway?.taken[id as AssumableKey]?.measured === false
    ? ': measure it next.'
    : ': worth measuring again, with more care.';
}

/** Everything that "Why ±" lists, as label and value. */
export function reasons(answer: LoweringAnswer, display: Display): { label: string; text: string }[] {
  const rows = [
    {
      label: 'Camber rate at stock height',
      text: show(answer.rateBefore.value, 'camberRate', display, answer.rateBefore.plusMinus),
    },
    {
      label: `Camber rate ${dropText(answer.drop, display)} ${answer.drop < 0 ? 'higher' : 'lower'}`,
      text: show(answer.rateAfter.value, 'camberRate', display, answer.rateAfter.plusMinus),
    },
  ];
  if (answer.rollCentre) {
    const { before, after } = answer.rollCentre;
    rows.push({
      label: `Roll centre over the ground, stock height and ${heightName(answer.drop, display)}`,
      text: [before, after].map((height) => show(Math.round(height), 'travel', display)).join(', '),
    });
  }
  if (answer.reversal) {
    const { travel, change } = answer.reversal;
    rows.push({
      label: 'Turns back at',
      text: `${show(travel.value, 'travel', display, travel.plusMinus)} of bump`,
    });
    rows.push({ label: 'Change up to there', text: show(change, 'camberChange', display) });
  }
  return rows;
}

/** What the readings do not reach, in words; undefined of any other problem. */
export function unmeasuredText({ code, path, value, limit = 0 }: Problem, display: Display): string | undefined {
  if (code !== 'outside-domain') return undefined;
  const end = show(Math.abs(limit), 'travel', display);
  const where = limit < 0 ? `${end} of droop` : `${end} of bump`;
  if (path === 'stockHeight') {
    const ends = limit > 0 ? 'begin' : 'end';
    return `Stock height was not measured: the readings ${ends} at ${where} from it, and every change is counted from there.`;
  }
  const name = `${path === 'other.drop' ? 'On the other side ' : ''}${dropText(Number(value), display)}`;
  return `${name} ${Number(value) < 0 ? 'higher' : 'lower'}: nothing was measured there. The readings end at ${where}.`;
}

/** What the cursor stands on, beside the chart. */
export function atCursor(travel: number, camber: number, change: number, display: Display): string {
  const { units, language } = display;
  const travelText = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  if (Number.isNaN(camber)) return `At ${travelText} of travel nothing was measured`;
  const camberText = formatQuantity(camber, 'camber', units, { language }).text;
  const changeText = formatQuantity(change, 'camberChange', units, { language, sign: 'always' }).text;
  return `At ${travelText} of travel: ${camberText} (${changeText} from stock height)`;
}

export const NAMES = {
  slider: 'Drop: how much less from hub centre to arch lip',
  chartX: 'Wheel travel',
  chartY: 'Camber',
  chartYChange: 'Camber change',
  stock: 'stock height',
  stop: 'stop',
  solid: 'solid',
  droop: 'full droop',
  outside: 'not known',
  unmeasured: 'not measured',
  parts: 'Parts',
  gauge:
    'A gauge on the hub reads the wheel’s inclination: its camber as long as the wheel points straight ahead. The gauge’s own zero moves every value and no change.',
  turns: 'turns back',
  before: 'as it was',
  ghost: 'Dashed: the same bump from where the car stood before.',
  numbers: 'Numbers this rests on',
  why: 'Why ±',
  doubtNote: 'Every ± on this page is a 95 % interval.',
  noDoubt: 'No ± is shown because none was stated for these numbers. Say how sure you are of each and it appears.',
  crossCamber: 'Cross-camber, left less right',
  dropRow: 'Drop',
  camberRow: 'Camber there',
  addOther: 'Add the other side',
  hidden: 'Hidden, and always assumed:',
  lookAgain: 'Look again',
  doNotFit: 'The links do not fit together. The likely cause:',
  axes: 'x forward of the axle, y out from the centreline, z up from the ground; left corner, stock height. In italics: not yours yet.',
  floor: 'Heights from the floor the car stands on. In italics: not yours yet.',
  suspects: 'What looks unusual in these points:',
  half: 'not complete',
} as const;

/** A balloon's name for who cannot see how it is drawn. */
export const balloonLabel = (title: string, state: BalloonState): string => `${title}${BALLOON_STATES[state]}`;

const BALLOON_STATES: Record<BalloonState, string> = {
  example: ', not yours yet',
  yours: '',
  next: ', worth measuring again',
  wanted: ', not yours yet, measure it next',
  problem: ', needs correcting',
};

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
  drop === 0 ? NAMES.stock : `${dropText(drop, display)} ${drop < 0 ? 'higher' : 'lower'}`;

/** The way in, by how much of it is done. */
export function wayIn(car: CarDocument, next: SheetSpec | undefined): string {
  if (!isUsers(car, 'corner')) return 'Put in my own car';
  return next ? `Next: ${next.title}` : 'My car’s numbers';
}
