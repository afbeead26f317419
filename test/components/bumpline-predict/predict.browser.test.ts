import { expect } from 'chai';
import { chartModel, linesOf } from '../../../components/bumpline-predict/chart.js';
import type { PredictOnSheet, PredictView } from '../../../components/bumpline-predict/predict-view.js';
import { CarModel } from '../../../components/car/car-model.js';
import { predict } from '../../../core/answers/from-source.js';
import type { PredictedShape } from '../../../core/answers/predict.js';
import { curveOf } from '../../../core/curve/curve.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { learntSourceOf } from '../../../core/document/learnt-in-use.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { EXAMPLE_PARTS } from '../../../core/document/linked-sets.js';
import { byUser } from '../../../core/document/own-car.js';
import { predictInUse } from '../../../core/document/predict-in-use.js';
import type { Setup } from '../../../core/document/setup.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { interpolate } from '../../../core/math/interpolate.js';
import { METRIC } from '../../../core/quantity/units.js';
import { all, clear, find, press, settled, textOf, type, unfold, until } from '../contract/stage.js';
import { type Element, fitted, JOINT, LINKS, OWN, STOCK, said, shown, TAPED, withCar } from './set-up.js';

/** By the core, without worker and element. */
const byCore = (car: CarDocument, more: Partial<Parameters<typeof predict>[0]> = {}) =>
  predict({ source: learntSourceOf(predictInUse(car).car)!, parts: JOINT.parts!, drop: 25, ...more });

const figures = (element: Element) => all(element, '.figures tbody tr').map(textOf);
const rounded = (size: number) => `${Math.abs(size).toFixed(2)}°`;

async function choose(element: Element, selector: string, value: string): Promise<void> {
  const select = find<HTMLSelectElement>(element, selector)!;
  select.value = value;
  select.dispatchEvent(new Event('change', { bubbles: true }));
  await settled(element);
}

/** A sheet of the first pass of a set. */
const table = (heading: string, { readings }: Pick<Setup, 'readings'>) =>
  [
    `Travel (mm)\t${heading}`,
    ...readings.filter(({ pass }) => pass === readings[0]!.pass).map(({ travel, value }) => `${travel}\t${value}`),
  ].join('\n');

/** Types into the first field of the dialog that is open. */
async function fill(element: Element, text: string): Promise<void> {
  const input = find<HTMLInputElement>(element, 'dialog[open] #field-0')!;
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  await settled(element);
}

/** Pastes a sheet by a button of the element, and takes it. @param before what is answered in the dialog first */
async function pasteInto(element: Element, button: string, sheet: string, before?: () => Promise<void>): Promise<void> {
  await press(element, button);
  await until('the dialog', () => find(element, 'dialog[open] textarea'));
  const text = find<HTMLTextAreaElement>(element, 'dialog[open] textarea')!;
  text.value = sheet;
  text.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  await until('the readings', () => find<HTMLButtonElement>(element, '#paste-take')?.disabled === false);
  await before?.();
  await press(element, '#paste-take');
  await settled(element);
}

describe('<bumpline-predict>', () => {
  afterEach(clear);

  it('opens with the invented example: what a joint would do, how well that is known, and what the tape alone would say', async () => {
    const element = await shown('drop="25"');
    const { predicted, byTape } = byCore({ ...EMPTY_CAR, drop: 25 });
    expect(element.state).to.equal('example');
    expect(textOf(find(element, '.owner'))).to.match(/^Example/);
    expect(said(element)).to.contain('Measured once, 52 readings. With “22 mm joint + rod end”');
    expect(said(element)).to.contain(`camber −${rounded(predicted.value)}`);
    expect(said(element)).to.contain(`±\u202f${rounded(predicted.plusMinus!)}`.replace('\u202f', ' ').trim());
    expect(element.answer!.predicted.value).to.be.closeTo(predicted.value, 1e-9);
    expect(element.answer!.predicted.plusMinus).to.be.closeTo(predicted.plusMinus!, 1e-9);
    expect(said(element)).to.contain(rounded(byTape.plusMinus!));
    expect(predicted.plusMinus!).to.be.lessThan(byTape.plusMinus! / 2);
  });

  it('says of one’s own car what the core says of it, from tape measurements as from hard points', async () => {
    for (const car of [OWN, { ...TAPED, setups: [STOCK, JOINT], fitted: 1 }]) {
      const element = await withCar(car);
      expect(element.state).to.equal('ready');
      expect(textOf(find(element, '.owner'))).to.match(/your 52 readings in 3 passes$/);
      const { predicted, stock, rollCentre, stockRollCentre } = byCore(car);
      expect(element.answer!.predicted.value).to.be.closeTo(predicted.value, 1e-9);
      const [withParts, asItIs] = figures(element);
      expect(withParts).to.contain(rounded(predicted.value)).and.to.contain(rollCentre!.value.toFixed(0));
      expect(asItIs).to.contain(rounded(stock.value)).and.to.contain(stockRollCentre!.value.toFixed(0));
    }
  });

  it('asks over another wheel travel, and of toe where the tie rod is known', async () => {
    const element = await withCar(OWN);
    await press(element, '.asked');
    const over = find<HTMLInputElement>(element, '.over input')!;
    over.value = '20';
    over.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    over.blur();
    await settled(element);
    expect(element.answer!.predicted.value).to.be.closeTo(byCore(OWN, { over: 20 }).predicted.value, 1e-9);
    await choose(element, 'select.of', 'toe');
    const { predicted } = byCore(OWN, { over: 20, quantity: 'toe' });
    expect(element.answer!.predicted.value).to.be.closeTo(predicted.value, 1e-9);
    expect(said(element)).to.contain(': toe ');
  });

  it('draws the band of readings and tape inside that of the tape alone, and travel that nobody measured apart', async () => {
    const element = await shown('drop="40"');
    find(element, '.chart-place')!.scrollIntoView();
    await until('the chart', () => all(element, '.chart-sheet path').length > 3);
    const { curves, measured } = element.answer!;
    expect(measured[1]).to.equal(65);
    expect(curves.predicted.sources.length).to.be.greaterThan(3);
    expect(textOf(find(element, '.legend'))).to.match(/Dashed: not measured/);
    expect(textOf(find(element, '.found'))).to.match(/From 65 mm, where your readings end/);
    expect(textOf(find(element, '.chart-place'))).to.contain('not measured');
  });

  it('lays the readings on the curve as it is, whatever zero gauge and links have', async () => {
    for (const car of [OWN, { ...TAPED, setups: [STOCK, JOINT], fitted: 1 }]) {
      const element = await withCar(car);
      const answer = element.answer as PredictOnSheet;
      const stock = byCore(car).curves.stock;
      const lines = linesOf(answer, { moved: undefined, drop: 25, stock });
      const { points } = chartModel(answer, lines, {
        drop: 25,
        display: { units: METRIC, language: 'en' },
        agreed: undefined,
        stock,
      });
      const { x, y } = points![0]!;
      const off = x.map((at, i) => Math.abs(y[i]! - interpolate(lines.stock!.x, lines.stock!.y, at)));
      expect(Math.max(...off)).to.be.lessThan(0.08);
      expect(x.length).to.be.greaterThan(20);
    }
  });

  it('says what is missing of a car with readings alone, and of one with links alone, and how to give it', async () => {
    const read = await withCar({ ...EMPTY_CAR, setups: [STOCK], by: 'readings' });
    expect(read.state).to.equal('incomplete');
    expect(read.answer).to.equal(undefined);
    expect(all(read, '.needs li').map(({ className }) => className)).to.deep.equal(['done', 'missing']);
    expect(find(read, '.button.main')!.className).to.contain('tape');
    const linked = await withCar(LINKS);
    expect(linked.state).to.equal('incomplete');
    expect(all(linked, '.needs li').map(({ className }) => className)).to.deep.equal(['missing', 'done']);
    expect(find(linked, '.button.main')!.className).to.contain('paste');
    const { given } = takeCorner({ lowerArm: { ball: EXAMPLE_CORNER.lowerArm.ball } });
    const begun = await withCar({ ...EMPTY_CAR, by: 'points', given, setups: [STOCK] });
    expect(textOf(find(begun, '.needs'))).to.contain('1 of 8 are given');
    expect(textOf(find(begun, '.button.main'))).to.match(/^Next: /);
  });

  it('says meanwhile what one half says by itself: the tape of the parts, or the readings of the joint', async () => {
    const links = await withCar({ ...LINKS, setups: [JOINT], fitted: 0 });
    const byTape = byCore(OWN).byTape;
    expect(textOf(find(links, '.meanwhile')).replaceAll('\u202f', ' ')).to.contain(
      `By the tape alone: camber −${rounded(byTape.value)} ± ${rounded(byTape.plusMinus!)} over 40 mm of bump, 25 mm lower`,
    );
    const read = await withCar({ ...EMPTY_CAR, setups: [STOCK], by: 'readings', drop: 25 });
    const { shifted } = byCore(OWN);
    expect(textOf(find(read, '.meanwhile')).replaceAll('\u202f', ' ')).to.contain(
      `By your readings alone, their curve moved by 1.1 times the joint: camber −${rounded(shifted!)}`,
    );
  });

  it('refuses in its dialog a size that no car has, where no answer says so yet', async () => {
    const element = await withCar({ ...EMPTY_CAR, setups: [STOCK], drop: 25 });
    await press(element, '.button.tape');
    await fill(element, '3520');
    all<HTMLButtonElement>(element, 'dialog[open] .buttons .main').at(-1)!.click();
    await settled(element);
    expect(textOf(find(element, 'dialog[open] .problem'))).to.match(
      /3520 mm, which is not possible\. Enter 700 mm or less/,
    );
    await fill(element, '338');
    all<HTMLButtonElement>(element, 'dialog[open] .buttons .main').at(-1)!.click();
    await settled(element);
    expect(textOf(find(element, '#sheet-title'))).not.to.contain('Lower arm length');
  });

  it('starts over in one step, which is taken back in one', async () => {
    const element = await withCar(OWN);
    await press(element, '.keep');
    await press(element, '.start-over');
    expect(element.state).to.equal('example');
    expect(element.car.car.setups ?? []).to.deep.equal([]);
    expect(element.car.car.predictions).to.equal(undefined);
    expect(element.car.car.drop).to.equal(OWN.drop);
    expect(find(element, '.start-over')).to.equal(null);
    await press(element, '.undo');
    expect(element.state).to.equal('ready');
    expect(element.car.car.predictions).to.have.length(1);
  });

  it('leads back to the sentence after a dialog whose button is gone, and after readings were taken', async () => {
    const element = await withCar(TAPED);
    element.scrollIntoView({ block: 'end' });
    await pasteInto(element, '.button.paste', table('Camber (°)', STOCK));
    await until('the focus', () => (element.renderRoot as ShadowRoot).activeElement?.matches('.sentence'));
    expect(find(element, '.sentence')!.getBoundingClientRect().top).to.be.within(0, 780);
    const { given, ...rest } = TAPED;
    const { topHeight: _, ...measures } = given.measures!;
    const begun = await withCar({ ...rest, setups: [STOCK], given: { ...given, measures } });
    find<HTMLButtonElement>(begun, '.button.own')!.focus();
    await press(begun, '.button.own');
    await fill(begun, '822');
    find<HTMLButtonElement>(begun, 'dialog[open] .buttons .button:not(.main)')!.focus();
    find<HTMLDialogElement>(begun, 'dialog[open]')!.close();
    await settled(begun);
    await until('the focus', () => (begun.renderRoot as ShadowRoot).activeElement !== null);
  });

  it('learns from a page’s points and readings, both inside', async () => {
    const rows = STOCK.readings
      .filter(({ pass }) => pass === 'Pass 1')
      .map(({ travel, value }) => `<tr><th>${travel}</th><td>${value}</td></tr>`)
      .join('');
    const element = await shown(
      'drop="25"',
      `<script type="application/json">${JSON.stringify(EXAMPLE_CORNER)}</script><table><thead><tr><th>Travel (mm)</th><th>Camber (°)</th></tr></thead><tbody>${rows}</tbody></table>`,
    );
    expect(element.state).to.equal('ready');
    expect(textOf(find(element, '.owner'))).to.match(/readings in 1 pass from this page$/);
  });

  it('has every other answer take the links as corrected, and takes that back', async () => {
    const element = await withCar(OWN);
    await press(element, '.use-links');
    expect(element.car.car.links).to.equal('learnt');
    expect(textOf(find(element, '.links-from'))).to.contain('52 readings');
    await press(element, '.undo');
    expect(element.car.car.links).to.equal(undefined);
    await press(element, '.redo');
    await press(element, '.use-links');
    expect(element.car.car.links).to.equal(undefined);
  });

  it('names a gauge that moved, in the sentence and by its readings, which can be set aside', async () => {
    const readings = STOCK.readings.map((one) =>
      one.pass === 'Pass 2' && one.travel >= 20 ? { ...one, value: one.value + 0.25 } : one,
    );
    const element = await withCar({ ...OWN, setups: [{ ...STOCK, readings }, JOINT] });
    expect(said(element)).to.contain('the gauge seems to have moved');
    expect(textOf(find(element, '.slip'))).to.match(
      /From the 6th reading of pass 2 on, at 15 mm, the gauge reads 0\.2\d° less/,
    );
    await unfold(element);
    await press(element, '.set-aside');
    const { setAside = [] } = element.car.car.setups![0]!;
    expect(setAside.map((i) => readings[i]!.travel).every((travel) => travel <= 15)).to.equal(true);
    expect(find(element, '.slip')).to.equal(null);
    expect(said(element)).not.to.contain('moved');
    await press(element, '.undo');
    expect(find(element, '.slip')).not.to.equal(null);
  });

  it('says in the sentence that readings and tape contradict each other, and is wider than the tape’s claim then', async () => {
    const { given, ...rest } = OWN;
    const top = EXAMPLE_CORNER.strut.top;
    const points = { ...given.points, 'strut.top': [top[0], top[1] + 30, top[2]] as const };
    const element = await withCar({ ...rest, given: { ...given, points } as typeof given });
    expect(said(element)).to.match(
      /the tape alone would claim ± [\d.]+°\. But readings and tape contradict each other/,
    );
    expect(element.answer!.widened).to.be.greaterThan(1.2);
    expect(textOf(find(element, '.found'))).to.match(/Furthest off: /);
  });

  it('refuses readings that no corner near the taped one gives, in words at the readings, and keeps the last answer dimmed', async () => {
    const element = await withCar(OWN);
    const readings = STOCK.readings.map((one) => ({ ...one, value: -3 * one.value }));
    element.car.update('readings', (car) => ({ ...car, setups: [{ ...STOCK, readings }, JOINT] }));
    await settled(element);
    expect(element.state).to.equal('stale');
    expect(textOf(find(element, '#problems'))).to.match(
      /^Stock readings do not fit the car as it was measured: the two are \d+(?:\.\d)? times as far apart .* No sign turned round makes them fit/,
    );
    expect(find(element, '.sentence .before')).not.to.equal(null);
    // Nothing is said of readings that are gone, and nothing of them can be kept.
    expect(find(element, '.found')).to.equal(null);
    expect(find(element, '.next')).to.equal(null);
    expect(find<HTMLButtonElement>(element, '.keep')!.disabled).to.equal(true);
  });

  it('shows no answer of the example beside readings of one’s own that are refused, and nothing to keep', async () => {
    const element = await shown();
    element.car = new CarModel({ ...EMPTY_CAR, drop: 25 });
    await settled(element);
    expect(element.state).to.equal('example');
    element.car.update('tape', (car) => ({ ...byUser({ ...TAPED, setups: car.setups ?? [] }) }));
    await settled(element);
    expect(element.state).to.equal('incomplete');
    const readings = STOCK.readings.map((one) => ({ ...one, value: -3 * one.value }));
    element.car.update('readings', (car) => byUser({ ...car, setups: [{ ...STOCK, readings }] }));
    await settled(element);
    expect(element.state).to.equal('problem');
    expect(element.answer).to.equal(undefined);
    expect(find(element, '.sentence .before')).to.equal(null);
    expect(find(element, '.keep')).to.equal(null);
    expect(find(element, '.found')).to.equal(null);
    expect(find(element, '.figures')).to.equal(null);
    expect(find(element, '.button.paste')).not.to.equal(null);
  });

  it('asks whether a sign is reversed, where readings fit with it turned round', async () => {
    for (const [turned, words] of [
      [STOCK.readings.map((one) => ({ ...one, value: -one.value })), /With the sign of camber reversed they fit/],
      [STOCK.readings.map((one) => ({ ...one, travel: -one.travel })), /With the sign of travel reversed they fit/],
    ] as const) {
      const element = await withCar({ ...OWN, setups: [{ ...STOCK, readings: turned }, JOINT] });
      const told = textOf(find(element, '#problems')) || textOf(find(element, '.found'));
      expect(told).to.match(words);
      expect(told).not.to.contain('Furthest off');
    }
  });

  it('names a pass that does not belong, beside the fit as a number, and says nowhere that readings and tape agree', async () => {
    const other = fitted().readings.filter(({ pass }) => pass === '1');
    const more = other.map((one) => ({ ...one, pass: 'Pass 3' }));
    const element = await withCar({ ...OWN, setups: [{ ...STOCK, readings: [...STOCK.readings, ...more] }, JOINT] });
    expect(said(element)).to.contain('one pass does not belong');
    const found = textOf(find(element, '.found'));
    expect(found).to.match(/Pass 3 does not belong with the others/);
    expect(found).to.match(/Chi-square: \d+\.\d\d per degree of freedom/);
    expect(found).not.to.contain('Readings and tape agree');
    expect(find(element, '.slip')).to.equal(null);
    const own = await withCar(OWN);
    expect(textOf(find(own, '.found'))).to.match(/Readings and tape agree\. Chi-square: \d/);
  });

  it('calls a pass without a name by its set, where there are several', async () => {
    const other = fitted().readings.filter(({ pass }) => pass === '1');
    const more = { ...STOCK, name: 'Sunday', readings: other.map(({ pass: _, ...one }) => one) };
    const element = await withCar({ ...OWN, setups: [STOCK, JOINT, more], fitted: 1 });
    expect(textOf(find(element, '.found'))).to.contain('The pass of “Sunday” does not belong');
  });

  it('says what there is little of: heights, one side of the travel, the height called zero, passes in one', async () => {
    const of = async (readings: typeof STOCK.readings) => {
      const element = await withCar({ ...OWN, setups: [{ ...STOCK, readings }, JOINT] });
      return textOf(find(element, '.found'));
    };
    const at = (...heights: number[]) => STOCK.readings.filter(({ travel }) => heights.includes(travel));
    const few = await of(at(-30, -10, 10, 30));
    expect(few).to.match(/There are only \d+ readings at 4 heights/);
    expect(await of(STOCK.readings.filter(({ travel }) => travel >= 0))).to.match(/Everything was read in bump/);
    expect(await of(STOCK.readings.filter(({ travel }) => travel <= 0))).to.match(/Everything was read in droop/);
    expect(await of(STOCK.readings.filter(({ travel }) => travel !== 0))).to.match(
      /Nothing was read at the height called zero/,
    );
    const list = STOCK.readings.map(({ travel, value }) => ({ travel, value }));
    expect(await of(list)).to.match(/One pass went from end to end 3 times/);
    const whole = await of(STOCK.readings);
    expect(whole).not.to.match(/only|Everything was read|called zero\. That|up and down/);
  });

  it('says of six sizes by tape why toe cannot be asked', async () => {
    const element = await withCar({ ...TAPED, setups: [STOCK, JOINT], fitted: 1 });
    expect(find(element, 'select.of')).to.equal(null);
    expect(textOf(find(element, '.no-toe'))).to.contain('say nothing of toe');
  });

  it('refuses readings at too few heights in words', async () => {
    const readings = STOCK.readings.filter(({ travel }) => [0, 5, 10].includes(travel));
    const element = await withCar({ ...OWN, setups: [{ ...STOCK, readings }, JOINT] });
    // The example's answer, which stood here before, is of another car.
    expect(element.state).to.equal('problem');
    expect(textOf(find(element, '#problems'))).to.match(/they stand at 3 heights, and 4 are needed/);
  });

  it('learns from one side of travel, and says where the prediction leans on the links alone', async () => {
    const readings = STOCK.readings.filter(({ travel }) => travel >= 20);
    const element = await withCar({ ...OWN, setups: [{ ...STOCK, readings }, JOINT] });
    expect(element.state).to.equal('ready');
    expect(textOf(find(element, '.found'))).to.match(
      /A joint 22 mm lower puts the links where readings about 24 mm further/,
    );
    const whole = await withCar(OWN);
    expect(element.answer!.predicted.plusMinus!).to.be.greaterThan(whole.answer!.predicted.plusMinus!);
  });

  it('names the next best measurement with the ± that it would bring', async () => {
    const element = await withCar(OWN);
    const [best] = byCore(OWN).next;
    // A pass more leaves nine tenths: nobody is sent under a car for that.
    expect(best!.left).to.be.greaterThan(0.9);
    expect(textOf(find(element, '.next .hint'))).to.contain('No single further measurement');
    // Of hard points there is no field for the rod's length, or for caster.
    expect(textOf(find(element, '.next'))).not.to.match(/Caster|tie rod’s length/);
    const up = STOCK.readings.map((one) => ({ ...one, going: 'up' as const }));
    const oneWay = await withCar({ ...OWN, setups: [{ ...STOCK, readings: up }, JOINT] });
    const now = oneWay.answer!.predicted.plusMinus!;
    const { source } = oneWay.answer as PredictOnSheet;
    const [first] = predict({ source, parts: JOINT.parts!, drop: 25 }).next;
    expect(first!.id).to.equal('otherWay');
    expect(first!.plusMinus).to.be.lessThan(0.7 * now);
    expect(textOf(find(oneWay, '.next .hint')).replaceAll('\u202f', ' ')).to.equal(
      `One more pass, read the other way (from full bump down), would bring the ± ${now.toFixed(2)}° of this answer to about ± ${first!.plusMinus.toFixed(2)}°.`,
    );
    oneWay.units = 'in';
    await settled(oneWay);
    expect(textOf(find(oneWay, '.next'))).not.to.contain('millimetre');
  });

  it('moves its lines with a part that is being changed before the answer comes', async () => {
    const element = await withCar(OWN);
    const [, other] = EXAMPLE_PARTS;
    const view = (element as unknown as { app: PredictView }).app;
    const before = element.answer;
    const seen: { shape: PredictedShape; answer: unknown }[] = [];
    const update = element.requestUpdate.bind(element);
    element.requestUpdate = (...args) => {
      if (view.moved) seen.push({ shape: view.moved, answer: element.answer });
      update(...args);
    };
    element.car.update('part', (car) => ({ ...car, setups: [STOCK, { ...JOINT, parts: other!.parts! }] }));
    await settled(element);
    const [first] = seen;
    const { travel, value } = first!.shape;
    const at = (mm: number) => value[travel.indexOf(mm)]!;
    const source = learntSourceOf(OWN)!;
    const solved = curveOf(solveSource({ ...source, parts: other!.parts! }).camber);
    expect(first!.answer).to.equal(before);
    expect(at(65) - at(25)).to.be.closeTo(solved.change(65, 25), 1e-6);
    expect(view.moved).to.equal(undefined);
    expect(element.answer!.predicted.value).to.be.closeTo(byCore(OWN, { parts: other!.parts! }).predicted.value, 1e-9);
  });

  it('changes its drop in the sentence, in one step that is taken back', async () => {
    const element = await withCar(OWN);
    const before = element.answer!.predicted.value;
    await type(element, '10');
    expect(element.answer!.predicted.value).to.be.closeTo(byCore(OWN, { drop: 10 }).predicted.value, 1e-9);
    await press(element, '.undo');
    expect(element.answer!.predicted.value).to.equal(before);
  });

  it('has a link that brings the question, the choice of links and the record back', async () => {
    const element = await withCar(OWN);
    await press(element, '.keep');
    await press(element, '.use-links');
    const link = carFromLink(carToLink(element.car.car));
    expect(link.ok).to.equal(true);
    if (!link.ok) return;
    expect(link.car.predictions).to.deep.equal(element.car.car.predictions);
    expect(link.car.links).to.equal('learnt');
    const again = await shown();
    again.car = new CarModel(link.car);
    await settled(again);
    expect(textOf(find(again, '.kept'))).to.equal(textOf(find(element, '.kept')));
  });
});

describe('the record of <bumpline-predict>', () => {
  afterEach(clear);

  it('keeps a prediction with its day and version, and no reading that comes later changes it', async () => {
    const element = await withCar(OWN);
    await press(element, '.keep');
    const [kept] = element.car.car.predictions!;
    expect(kept!.made).to.match(/^\d{4}-\d\d-\d\d$/);
    expect(textOf(find(element, '.kept')))
      .to.contain('version')
      .and.to.contain('−0.47');
    element.car.update('readings', (car) => ({ ...car, setups: [STOCK, fitted()] }));
    await settled(element);
    expect(element.car.car.predictions).to.deep.equal([kept]);
    expect(textOf(find(element, '.agreement'))).to.contain('They agree');
    expect(textOf(find(element, '.record'))).to.match(/\d+ of 40 readings stand inside the band/);
    expect(textOf(find(element, '.record'))).to.contain('Chi-square');
  });

  it('does not make the prediction from what was read with the parts on', async () => {
    const before = await withCar(OWN);
    const { value, plusMinus } = before.answer!.predicted;
    const after = await withCar({ ...OWN, setups: [STOCK, fitted(1.3)] });
    expect(after.answer!.predicted.value).to.be.closeTo(value, 1e-9);
    expect(after.answer!.predicted.plusMinus).to.be.closeTo(plusMinus!, 1e-9);
  });

  it('says that parts do not do what was predicted, and where no prediction was kept before', async () => {
    const element = await withCar({ ...OWN, setups: [STOCK, fitted(1.5)] });
    expect(textOf(find(element, '.agreement'))).to.contain('They differ by');
    expect(textOf(find(element, '.record'))).to.contain('No prediction was kept before these readings');
    expect(find(element, '.keep')).to.equal(null);
  });

  it('takes readings that are pasted into the set of parts, in one step', async () => {
    const element = await withCar(OWN);
    await press(element, '.keep');
    await press(element, '.paste-fitted');
    await until('the dialog', () => find(element, 'dialog[open] textarea'));
    const rows = fitted().readings.filter(({ pass }) => pass === '1');
    const text = find<HTMLTextAreaElement>(element, 'dialog[open] textarea')!;
    text.value = ['Travel (mm)\tCamber (°)', ...rows.map(({ travel, value }) => `${travel}\t${value}`)].join('\n');
    text.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    await until('the readings', () => find<HTMLButtonElement>(element, '#paste-take')?.disabled === false);
    await press(element, '#paste-take');
    const { setups } = element.car.car;
    expect(setups!.map(({ name, readings }) => [name, readings.length])).to.deep.equal([
      [STOCK.name, STOCK.readings.length],
      [JOINT.name, rows.length],
    ]);
    expect(textOf(find(element, '.agreement'))).to.contain('They agree');
    await press(element, '.undo');
    expect(element.car.car.setups![1]!.readings).to.deep.equal([]);
  });

  it('takes readings with the parts of the example on, which become somebody’s own with them', async () => {
    const element = await withCar({ ...LINKS, setups: [STOCK] });
    expect((element.answer as PredictOnSheet).set!.by).to.equal('example');
    await pasteInto(element, '.paste-fitted', table('Camber (°)', fitted()));
    const { setups, fitted: on } = element.car.car;
    expect(setups!.map(({ parts, readings }) => [parts !== undefined, readings.length])).to.deep.equal([
      [false, STOCK.readings.length],
      [true, 20],
    ]);
    expect(setups![on!]!.parts).to.deep.equal(JOINT.parts);
    expect(textOf(find(element, '.agreement'))).to.contain('They agree');
  });

  it('does not take a column that names parts as stock readings: it goes to the parts, says so, and can be had back', async () => {
    for (const heading of ['Lower joint', JOINT.name]) {
      const element = await withCar(OWN);
      await pasteInto(element, '.button.paste', table(heading, fitted()));
      expect(said(element)).to.contain(`${STOCK.readings.length} readings`);
      expect(element.car.car.setups!.map(({ readings }) => readings.length)).to.deep.equal([STOCK.readings.length, 20]);
      expect(textOf(find(element, '.into'))).to.contain('does not count as a stock reading');
      await press(element, '.as-stock');
      expect(element.car.car.setups!.map(({ readings }) => readings.length)).to.deep.equal([
        STOCK.readings.length,
        0,
        20,
      ]);
      clear();
    }
  });

  it('takes another pass of stock readings as such, whatever its heading says of the day', async () => {
    const element = await withCar(OWN);
    await pasteInto(element, '.button.paste', table('Sunday', { ...JOINT, readings: STOCK.readings.slice(0, 20) }));
    expect(find(element, '.into')).to.equal(null);
    expect(element.car.car.setups!.filter(({ parts }) => !parts)).to.have.length(2);
  });

  it('asks from where the heights of pasted readings are counted, and finds out afterwards', async () => {
    const element = await withCar(OWN);
    const { drop } = OWN;
    const shifted = fitted().readings.map((one) => ({ ...one, travel: one.travel - drop }));
    await pasteInto(element, '.paste-fitted', table('Camber (°)', { ...JOINT, readings: shifted }));
    expect(textOf(find(element, '.agreement'))).not.to.contain('They agree');
    expect(textOf(find(element, '.other-zero'))).to.contain('counted from 25 mm lower, where the car stands');
    await press(element, '.count-from');
    expect(element.car.car.setups![1]!.zeroAt).to.equal(drop);
    expect(textOf(find(element, '.agreement'))).to.contain('They agree');
    expect(find(element, '.other-zero')).to.equal(null);
    clear();
    const asked = await withCar(OWN);
    await pasteInto(asked, '.paste-fitted', table('Camber (°)', { ...JOINT, readings: shifted }), async () => {
      expect(all(asked, '.zero-question .answer').map(textOf)).to.deep.equal([
        'From stock height assumed',
        'From where it stands now, 25 mm lower',
      ]);
      find<HTMLButtonElement>(asked, '.zero-question .answer:last-child')!.click();
      await asked.updateComplete;
    });
    expect(asked.car.car.setups![1]!.zeroAt).to.equal(drop);
    expect(textOf(find(asked, '.agreement'))).to.contain('They agree');
  });

  it('is taken along as CSV and removed in one step', async () => {
    const element = await withCar(OWN);
    await press(element, '.keep');
    await press(element, '.copy-record');
    await press(element, '.remove-record');
    expect(element.car.car.predictions).to.equal(undefined);
    await press(element, '.undo');
    expect(element.car.car.predictions).to.have.length(1);
  });

  it('is offered of no car that nobody measured', async () => {
    const element = await shown('drop="25"');
    expect(find(element, '.record')).to.equal(null);
    expect(find(element, '.links-from')).to.equal(null);
  });
});
