import type { Doubted } from '../../core/answers/lowering.js';
import { toeAcross, USUAL_ACROSS_MM } from '../../core/answers/toe.js';
import type { CarDocument } from '../../core/document/car.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { pointsMissing } from '../bumpline-lowering/bumpline-lowering.words.js';
import { type Display, show } from '../element/sentence.js';
import { ALIGNMENT } from './alignment.labels.js';
import { isExamples, type WheelPlan } from './wheel-plan.js';

/** A figure with its sign and its ±. */
export const signed = ({ value, plusMinus }: Doubted, quantity: Quantity, { units, language }: Display): string =>
  formatQuantity(value, quantity, units, { language, sign: 'always', plusMinus }).text;

/** A size, whose way is said in words. */
const size = ({ value, plusMinus }: Doubted, quantity: Quantity, display: Display): string =>
  show(Math.abs(value), quantity, display, plusMinus);

const only = (value: number): Doubted => ({ value });

/** "0.7 ± 0.2 turns". */
export function turnsText({ turns }: WheelPlan, display: Display): string | undefined {
  if (!turns) return undefined;
  const { turns: value, plusMinus } = turns;
  const text = size({ value, ...(plusMinus !== undefined && { plusMinus }) }, 'turns', display);
  return text === '1' ? ALIGNMENT.oneTurn(text) : ALIGNMENT.turns(text);
}

/** "1.05 ± 0.3 mm shorter". */
export function rodText({ rodLonger }: WheelPlan, display: Display): string | undefined {
  if (!rodLonger) return undefined;
  return `${size(rodLonger, 'partLength', display)} ${rodLonger.value < 0 ? ALIGNMENT.shorter : ALIGNMENT.longer}`;
}

/** What to turn on a wheel, in sentences; empty where nothing can be said yet. */
export function turnLines(plan: WheelPlan, car: CarDocument, display: Display): string[] {
  const { rodLonger, toeThen, toe, toePerTurn, isToeWithin } = plan;
  const wheel = ALIGNMENT.sides[plan.side];
  if (!rodLonger || toeThen === undefined || toe === undefined) return [];
  if (isToeWithin) return [ALIGNMENT.nothing(wheel)];
  const way = rodLonger.value < 0 ? ALIGNMENT.shorter : ALIGNMENT.longer;
  const by = size(rodLonger, 'partLength', display);
  const turns = turnsText(plan, display);
  const isMoved = Math.abs(toeThen - toe) >= 0.005;
  const wanted = signed(only(car.alignment!.toeWanted!), 'toe', display);
  return [
    turns ? ALIGNMENT.turn(wheel, by, way, turns) : ALIGNMENT.rod(wheel, by, way),
    (isMoved ? ALIGNMENT.toeThen : ALIGNMENT.toe)(signed(only(toeThen), 'toe', display), wanted),
    ...(toePerTurn === undefined ? [] : [ALIGNMENT.perTurn(signed(only(toePerTurn), 'toe', display))]),
  ];
}

/** Both wheels together, in degrees and across a diameter: the sum of both lengths, for a length goes by each wheel's own angle. */
export function totalText({ alignment, toe }: CarDocument, display: Display): string | undefined {
  const wanted = alignment?.toeWanted;
  if (wanted === undefined) return undefined;
  const across = toe?.across ?? USUAL_ACROSS_MM;
  return ALIGNMENT.total(
    signed(only(2 * wanted), 'toe', display),
    signed(only(2 * toeAcross(wanted, across)), 'travel', display),
    show(across, 'diameter', display),
  );
}

/** What the rod's figures rest on, and what is not the reader's own of it. */
export function restsOn(plans: readonly WheelPlan[], car: CarDocument): { how: string; warning?: string } {
  if (!plans.some(({ rodLonger }) => rodLonger)) return { how: '' };
  if (plans.some(({ rodLonger, isByRule }) => rodLonger && isByRule)) return { how: ALIGNMENT.byRule };
  const warning = isExamples(car) ? ALIGNMENT.examples : pointsMissing(car) > 0 ? ALIGNMENT.ofSome : undefined;
  return { how: ALIGNMENT.byLinks, ...(warning && { warning }) };
}

const LOWER_MM = 5;

/** The step of the height: what is to be done on each wheel, and what it does to the rest. */
export function heightLines(plans: readonly WheelPlan[], car: CarDocument, display: Display): string[] {
  const { height: WORDS } = ALIGNMENT;
  const wanted = car.alignment?.heightWanted;
  const changes = plans.flatMap((plan) => {
    const { height, lower, found, side } = plan;
    if (height.now === undefined || wanted === undefined || Math.abs(lower) < 0.5) return [];
    const way = lower < 0 ? WORDS.higher : WORDS.lower;
    const from = show(height.now, 'cornerHeight', display);
    const to = show(wanted, 'cornerHeight', display);
    const change = WORDS.change(ALIGNMENT.sides[side], from, to, show(Math.abs(lower), 'drop', display), way);
    if (!found) return [change];
    const camber = signed(found.byHeight.camber, 'camberChange', display);
    const { toe } = found.byHeight;
    return [`${change} ${toe ? WORDS.makes(camber, signed(toe, 'toe', display)) : WORDS.makesCamber(camber)}`];
  });
  const one = plans.find(({ found }) => found)?.found;
  const each =
    changes.length > 0 || !one
      ? []
      : [
          one.lowered.toe
            ? WORDS.each(
                show(LOWER_MM, 'drop', display),
                signed(one.lowered.camber, 'camberChange', display),
                signed(one.lowered.toe, 'toe', display),
              )
            : WORDS.eachCamber(show(LOWER_MM, 'drop', display), signed(one.lowered.camber, 'camberChange', display)),
        ];
  return [WORDS.set, ...changes, ...each];
}

/** The step of camber. */
export function camberLines(
  plans: readonly WheelPlan[],
  car: CarDocument,
  display: Display,
  isByArm: boolean,
): string[] {
  const { camber: WORDS } = ALIGNMENT;
  const wanted = car.alignment?.camberWanted;
  const changes = plans.flatMap(({ camber, found, side, isCamberWithin }) => {
    if (camber === undefined || wanted === undefined || !found) return [];
    const wheel = ALIGNMENT.sides[side];
    if (isCamberWithin) return [WORDS.within(wheel)];
    const change = WORDS.change(
      wheel,
      signed(only(camber), 'camber', display),
      signed(only(wanted), 'camber', display),
      signed(found.camberChange, 'camberChange', display),
    );
    const { camberAmount, byCamber } = found;
    const at = isByArm
      ? WORDS.arm(
          size(camberAmount, 'partLength', display),
          camberAmount.value < 0 ? ALIGNMENT.shorter : ALIGNMENT.longer,
        )
      : WORDS.mount(size(camberAmount, 'partLength', display), camberAmount.value < 0 ? WORDS.inboard : WORDS.outboard);
    return [`${change} ${at}${byCamber.toe ? ` ${WORDS.makes(signed(byCamber.toe, 'toe', display))}` : ''}`];
  });
  const one = plans.find(({ found }) => found?.toePerNegativeDegree)?.found?.toePerNegativeDegree;
  const each = one && changes.length === 0 ? [(isByArm ? WORDS.eachArm : WORDS.each)(signed(one, 'toe', display))] : [];
  return [...changes, ...each];
}
