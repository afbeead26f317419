import { expect } from 'chai';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { CarModel } from '../../../components/car/car-model.js';
import { EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { independentRegression } from '../../reference/independent-regression.js';
import { find, root, sentenceOf, type, wait } from '../bumpline-lowering/set-up.js';
import { inventedReadings, show, tableOf } from './set-up.js';

const rendered = async (element: BumplineReadings) => {
  await wait(0);
  await element.settled;
};
const field = (element: Element) => find<HTMLInputElement>(element, '.sentence input');
const unfold = async (element: BumplineReadings, selector: string) => {
  find<HTMLDetailsElement>(element, selector).open = true;
  await rendered(element);
  await wait(50);
};

describe('<bumpline-readings>', () => {
  it('opens with a full answer about the example, marked so', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    expect(element.state).to.equal('example');
    expect(find(element, '.owner').textContent).to.equal('Example');
    expect(sentenceOf(element)).to.match(
      /^From 49 readings in 3 passes: 25\smm of bump adds 0\.3\d° ±\s0\.0\d\d?° of negative camber; the gauge repeated within 0\.0\d°\.$/,
    );
  });

  it('answers a table inside it as a general-purpose regression does: change, its doubt, residual', async () => {
    const readings = inventedReadings();
    const element = await show(`<bumpline-readings degree="2">${tableOf(readings)}</bumpline-readings>`);
    const other = independentRegression(readings, 2);
    const { fit, change, over } = element.answer!;
    expect(element.state).to.equal('ready');
    expect(fit.dof).to.equal(other.dof);
    expect(fit.residualSd).to.be.closeTo(other.residualSd, 1e-10);
    expect(fit.rSquared).to.be.closeTo(other.rSquared, 1e-10);
    expect(change!.value).to.be.closeTo(other.change(over, 0).value, 1e-10);
    // Two-sided 95 % of Student's t: NIST/SEMATECH e-Handbook 1.3.6.7.2.
    const t = { 17: 2.11, 16: 2.12, 18: 2.101 }[other.dof]!;
    // … and beside the scatter gauge, tape and zero height, and a drift that passes without a way do not tell: 0.13° over the 70 or 50 mm of a pass.
    const scatter = t * other.change(over, 0).standardError;
    expect(change!.plusMinus!).to.be.above(Math.hypot(scatter, (0.13 * over) / 71));
    expect(change!.plusMinus!).to.be.below(1.2 * Math.hypot(scatter, (0.13 * over) / 50));
  });

  it('shows the sets of a page’s table one at a time, without the averages beside them, and says so', async () => {
    const heights = [-30, -20, -10, 0, 10, 20, 30, 40];
    const camber = (slope: number, k: number) => (t: number) => (-0.5 + slope * t + 0.02 * Math.sin(t + k)).toFixed(2);
    const columns = [camber(-0.012, 1), camber(-0.012, 2), camber(-0.018, 3), camber(-0.018, 4)];
    const mean = (a: string, b: string) => ((Number(a) + Number(b)) / 2).toFixed(3);
    const rows = heights.map((t) => {
      const [a, b, c, d] = columns.map((column) => column(t)) as [string, string, string, string];
      return `<tr>${[t, a, b, mean(a, b), c, d].map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
    });
    const heads = ['Travel (mm)', 'Stock 1', 'Stock 2', 'Stock mean', 'Lowered 1', 'Lowered 2'];
    const element = await show(
      `<bumpline-readings><table><caption>Invented</caption><tr>${heads.map((head) => `<th>${head}</th>`).join('')}</tr>${rows.join('')}</table></bumpline-readings>`,
    );
    expect(element.problems).to.deep.equal([]);
    expect(find(element, '.owner').textContent).to.equal('Stock, 1 of 2 sets of parts');
    expect(element.answer!.used).to.have.length(16);
    expect(element.answer!.change!.value).to.be.closeTo(25 * -0.012, 0.03);
    expect(find(element, '.left-out').textContent).to.equal(
      'Column D, “Stock mean”, is the average of columns B and C: left out.',
    );
    const choice = find<HTMLSelectElement>(element, '.which-set select');
    expect([...choice.options].map(({ text }) => text)).to.deep.equal(['Stock', 'Lowered']);
    choice.value = '1';
    choice.dispatchEvent(new Event('change'));
    await rendered(element);
    expect(find(element, '.owner').textContent).to.equal('Lowered, 2 of 2 sets of parts');
    expect(element.answer!.change!.value).to.be.closeTo(25 * -0.018, 0.03);
  });

  it('says of the example that it is not the car that was measured', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    const model = new CarModel(EMPTY_CAR);
    model.update('arm', (car) =>
      givenByUser(car, (given) => ({ ...given, measures: { armLength: { value: 350, plusMinus: 3 } } })),
    );
    element.car = model;
    await rendered(element);
    expect(find(element, '.owner').textContent).to.equal('Example, not your car');
  });

  it('asks over another travel in the sentence, and says where nothing was measured', async () => {
    const readings = inventedReadings();
    const element = await show(`<bumpline-readings degree="2">${tableOf(readings)}</bumpline-readings>`);
    await type(field(element), '40');
    expect(element.answer!.change!.value).to.be.closeTo(independentRegression(readings, 2).change(40, 0).value, 1e-10);
    await type(field(element), '60');
    expect(element.answer!.change).to.equal(undefined);
    expect(sentenceOf(element)).to.contain('is not known: the readings span −30');
    await type(field(element), '-20');
    expect(sentenceOf(element)).to.match(/20\smm of droop/);
  });

  it('takes `readings` as data, and the order of them changes nothing', async () => {
    const readings = inventedReadings();
    const element = await show('<bumpline-readings></bumpline-readings>');
    element.readings = readings;
    await element.settled;
    const { change, fit } = element.answer!;
    element.readings = [...readings].reverse();
    await element.settled;
    expect(element.answer!.change).to.deep.equal(change);
    expect([...element.answer!.fit.powerCoefficients]).to.deep.equal([...fit.powerCoefficients]);
  });

  it('marks each pass by its own shape, and names it with its zero', async () => {
    const element = await show(`<bumpline-readings>${tableOf(inventedReadings())}</bumpline-readings>`);
    await wait(300);
    const paths = [...root(element).querySelectorAll('.passes path')].map((path) => path.getAttribute('d'));
    expect(new Set(paths).size).to.equal(3);
    expect(root(element).querySelectorAll('.chart-sheet .points')).to.have.length(3);
    expect(find(element, '.passes').textContent).to.match(/Pass B: 6 readings, zero −0\.0\d/);
  });

  it('takes another degree by choice, of somebody else’s readings without making them the reader’s', async () => {
    const readings = inventedReadings();
    const element = await show(`<bumpline-readings>${tableOf(readings)}</bumpline-readings>`);
    await unfold(element, '.how');
    const select = find<HTMLSelectElement>(element, '.how select');
    select.value = '1';
    select.dispatchEvent(new Event('change'));
    await rendered(element);
    expect(element.answer!.fit.degree).to.equal(1);
    expect(element.answer!.fit.residualSd).to.be.closeTo(independentRegression(readings, 1).residualSd, 1e-10);
    expect(find(element, '.owner').textContent).to.equal('An invented car');
  });

  it('says what R² says and does not say in one line', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    await unfold(element, '.how');
    expect(find(element, '.how .note').textContent).to.match(
      /^R² 0\.9\d+: the share of the readings’ spread that the curve explains\./,
    );
  });

  it('gives the numbers behind the chart, the plain means beside the curve', async () => {
    const readings = inventedReadings();
    const element = await show(`<bumpline-readings>${tableOf(readings)}</bumpline-readings>`);
    await unfold(element, '.numbers');
    const rows = [...root(element).querySelectorAll('.numbers tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent!.trim()),
    );
    expect(rows).to.have.length(8);
    const at = readings.filter(({ travel }) => travel === 20).map(({ value }) => value);
    const mean = at.reduce((sum, value) => sum + value, 0) / at.length;
    const row = rows.find(([travel]) => travel === '+20')!;
    expect(row.at(-2)).to.equal(mean.toFixed(2).replace('-', '−'));
    expect(row.at(-1)).to.equal(String(at.length));
  });

  it('begins a set of one’s own, named, on a corner, and undoes it', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    await unfold(element, '.setups');
    find<HTMLButtonElement>(element, '.new-setup').click();
    await rendered(element);
    expect(element.state).to.equal('incomplete');
    expect(sentenceOf(element)).to.contain('No camber readings yet');
    const name = find<HTMLInputElement>(element, '.setups .name');
    name.value = 'Longer arms';
    name.dispatchEvent(new Event('change'));
    await rendered(element);
    expect(find(element, '.owner').textContent).to.equal('Longer arms, yours');
    find<HTMLButtonElement>(element, '.undo').click();
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(element.state).to.equal('example');
  });

  it('takes where its zero lies to stock height, keeps what it cannot read, and tells which', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    await unfold(element, '.setups');
    find<HTMLButtonElement>(element, '.new-setup').click();
    await rendered(element);
    const zero = () =>
      [...root(element).querySelectorAll<HTMLLabelElement>('.setups .pick')]
        .find(({ textContent }) => textContent!.includes('At zero the car was lowered by'))!
        .querySelector('input')!;
    const give = async (text: string) => {
      zero().value = text;
      zero().dispatchEvent(new Event('change'));
      await rendered(element);
    };
    await give('low');
    expect(zero().value).to.equal('low');
    expect(find(element, '#problems').textContent).to.contain('Drop at zero: “low” cannot be read');
    await give('30');
    expect(zero().value.replace(/\u202f/g, ' ')).to.equal('30 mm');
    expect(root(element).querySelector('#problems')).to.equal(null);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(zero().value.replace(/\u202f/g, ' ')).to.equal('0 mm');
  });
});
