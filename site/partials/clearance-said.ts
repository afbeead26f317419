import { FIRST, lowerWord, outWord, sentence } from '../../components/bumpline-clearance/bumpline-clearance.words.js';
import { pageFitment } from '../../components/bumpline-clearance/page-fitment.js';
import { notYours, standInWords } from '../../components/bumpline-clearance/whose-car.words.js';
import { fill, plain, show } from '../../components/element/sentence.js';
import { clearanceQuestions } from '../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../core/answers/fitment-request.js';
import { tried } from '../../core/answers/from-source.js';
import { EMPTY_CAR } from '../../core/document/car.js';
import { finished } from '../../core/math/finished.js';
import { planeOf } from '../../core/wheel/wheel.js';
import { attribute, type Element, findAll, textOf } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** Of wheels in attributes, and of car and places in a JSON script. */
export function clearanceSaid(element: Element): Said {
  const [script] = findAll(element, (one) => one.tagName === 'script' && attribute(one, 'type') === 'application/json');
  const page = {
    fit: undefined,
    limits: attribute(element, 'limits'),
    drop: attribute(element, 'drop'),
    wheelBefore: attribute(element, 'wheel-before'),
    wheelAfter: attribute(element, 'wheel-after'),
    lock: attribute(element, 'lock'),
  };
  const { recipe, problems } = pageFitment(page, script && JSON.parse(textOf(script)));
  checkNone(element, problems);
  const car = recipe(EMPTY_CAR);
  const request = clearanceRequestOf(car);
  const { before, after, places, isLeft, lock } = request;
  const answer = finished(clearanceQuestions.clearanceSteered(tried(request)));
  const told = { answer, places, isLeft, lock, isSteering: answer.isSteered };
  const size = (mm: number, quantity: 'drop' | 'offset') => show(Math.abs(mm), quantity, DISPLAY);
  const plane = planeOf(after) - planeOf(before);
  const decisive = answer.worst === undefined ? undefined : answer.places[answer.worst]!.decisive;
  const { touch, solid } = answer.budget.bump;
  const steer = decisive && Math.abs(decisive.toe);
  return {
    stretches: [
      ...fill(FIRST.lead, {
        lead: notYours(car),
        drop: `${size(car.drop, 'drop')} ${lowerWord(car.drop)}`,
        plane: `${size(plane, 'offset')} ${outWord(plane)}`,
        rest: sentence(told, DISPLAY),
      }),
      plain(standInWords(car)),
    ],
    figures: [
      ...figures('plane', plane, undefined, 'offset'),
      ...(steer === undefined ? [] : [{ key: 'steer', shown: `${Math.round(steer)}°`, value: steer.toFixed(0) }]),
      ...(decisive ? figures('gap', decisive.gap, decisive.plusMinus, 'travel') : []),
      ...(touch && solid ? figures('stop-before', Math.round(solid.left - touch.left), undefined, 'travel') : []),
    ],
  };
}
