import { expect } from 'chai';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { CarModel } from '../../../components/car/car-model.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { withShown } from '../../../core/document/setup-edits.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { independentRegression } from '../../reference/independent-regression.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { inventedReadings, type Read, show, tableOf } from './set-up.js';

const rendered = async (element: BumplineReadings) => {
  await wait(0);
  await element.settled;
};
const said = (element: Element) =>
  [...root(element).querySelectorAll('[aria-label="Worth a second look"] > li')].map((one) =>
    one.textContent!.replace(/[\s\u202f]+/g, ' ').trim(),
  );
const withSign = (readings: Read[], at: number): Read[] =>
  readings.map((one, i) => (i === at ? { ...one, value: -one.value } : one));

describe('what looks wrong in readings', () => {
  it('is nothing in the example', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    expect(said(element)).to.deep.equal([]);
  });

  it('names the reading whose sign is wrong; a press turns it, in a set that says whose it was, and undo turns it back', async () => {
    const readings = inventedReadings();
    const element = await show(`<bumpline-readings degree="2">${tableOf(withSign(readings, 4))}</bumpline-readings>`);
    const [first] = said(element);
    expect(first).to.match(/^Pass A, \+10 mm: 0\.\d+° does not fit; −0\.\d+° would\./);
    find<HTMLButtonElement>(element, '[aria-label="Worth a second look"] button').click();
    await rendered(element);
    expect(said(element)).to.deep.equal([]);
    expect(find(element, '.owner').textContent).to.equal('An invented car, changed');
    expect(element.answer!.change!.value).to.be.closeTo(independentRegression(readings, 2).change(25, 0).value, 1e-10);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(said(element)[0]).to.equal(first);
  });

  it('offers to set an outlier aside, never does so by itself, and takes it back in', async () => {
    const readings = inventedReadings().map((one, i) => (i === 3 ? { ...one, value: one.value + 0.37 } : one));
    const element = await show(`<bumpline-readings degree="2">${tableOf(readings)}</bumpline-readings>`);
    expect(element.answer!.used).to.have.length(readings.length);
    expect(said(element)[0]).to.match(/^Pass A, 0 mm/);
    find<HTMLButtonElement>(element, '[aria-label="Worth a second look"] button').click();
    await rendered(element);
    expect(element.answer!.used).to.have.length(readings.length - 1);
    const rest = readings.filter((_, i) => i !== 3);
    expect(element.answer!.fit.residualSd).to.be.closeTo(independentRegression(rest, 2).residualSd, 1e-10);
    const back = [...root(element).querySelectorAll('button')].find(
      ({ textContent }) => textContent!.trim() === 'Take it back in',
    )!;
    back.click();
    await rendered(element);
    expect(element.answer!.used).to.have.length(readings.length);
  });

  it('a reading of the example that is set aside makes no readings of the reader’s own', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    const model = new CarModel(EMPTY_CAR);
    model.update('set aside', (car) => withShown(car, (setup) => ({ ...setup, setAside: [3] })));
    element.car = model;
    await rendered(element);
    expect(find(element, '.owner').textContent).to.equal('Example, invented, changed');
    expect(element.state).to.equal('example');
    expect(element.answer!.used).to.have.length(EXAMPLE_READINGS.length - 1);
  });

  it('says which pass lies off when the gauge slipped between passes', async () => {
    const readings = inventedReadings().map((one) => (one.pass === 'B' ? { ...one, value: one.value - 1.5 } : one));
    const element = await show(`<bumpline-readings>${tableOf(readings)}</bumpline-readings>`);
    expect(said(element).join(' ')).to.contain('Pass B');
  });
});
