import { expect } from 'chai';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import type { CarDocument } from '../../../core/document/car.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { show } from './set-up.js';

const rendered = async (element: BumplineReadings) => {
  await wait(0);
  await element.settled;
};

/** The example's readings as the user's own, going up only where it is asked for. */
async function own(isAllUp = false): Promise<BumplineReadings> {
  const readings = EXAMPLE_SETUP.readings.filter(({ going }) => !isAllUp || going === 'up');
  const car: CarDocument = {
    ...EMPTY_CAR,
    by: 'readings',
    provenance: { corner: { by: 'user' }, setups: { by: 'user' } },
    setups: [{ ...EXAMPLE_SETUP, name: 'Mine', readings }],
  };
  const element = await show('<bumpline-readings></bumpline-readings>');
  const { CarModel } = await import('../../../components/car/car-model.js');
  element.car = new CarModel(car);
  await rendered(element);
  for (const details of root(element).querySelectorAll('details')) details.open = true;
  await rendered(element);
  return element;
}

const fields = (element: BumplineReadings) => [
  ...root(element).querySelectorAll<HTMLInputElement>('.instrument input'),
];

async function say(element: BumplineReadings, index: number, text: string): Promise<void> {
  const field = fields(element)[index]!;
  field.value = text;
  field.dispatchEvent(new Event('change', { bubbles: true }));
  await rendered(element);
}

describe('gauge, tape and zero height of a set of readings', () => {
  it('stand with their defaults, and what is said of them counts in the ±', async () => {
    const element = await own();
    expect(fields(element).map(({ value }) => value.replace(/\s/g, ' '))).to.deep.equal([
      '±1 %',
      '±1 %',
      '±2 mm',
      '±0.13°',
    ]);
    const before = element.answer!.change!.plusMinus!;
    await say(element, 0, '5 %');
    const { change, contributions } = element.answer!;
    // 5 % of the change, in quadrature with what was there, 1 % of it gauge.
    const gauge = 0.05 * Math.abs(change!.value);
    expect(change!.plusMinus!).to.be.closeTo(Math.hypot(before, gauge), 0.1 * gauge);
    expect(contributions[0]!.id).to.equal('gaugeScale');
    expect(find(element, '.shares').textContent).to.contain('the gauge’s scale');
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(element.answer!.change!.plusMinus!).to.equal(before);
  });

  it('go back to the default where a field is emptied, and keep a text that is no share', async () => {
    const element = await own();
    const before = element.answer!.change!.plusMinus!;
    await say(element, 1, '3');
    expect(element.answer!.change!.plusMinus!).to.be.above(before);
    await say(element, 1, '');
    expect(element.answer!.change!.plusMinus!).to.equal(before);
    await say(element, 2, 'about two');
    expect(element.state).to.equal('stale');
    expect(find(element, '#problems').textContent).to.contain('Zero height');
    expect(fields(element)[2]!.value).to.equal('about two');
    await say(element, 2, '4 mm');
    expect(element.state).to.equal('ready');
    expect(element.answer!.contributions.map(({ id }) => id)).to.contain('zeroHeight');
  });

  it('say below the chart what became of the gauge’s drift, and list what is in no ±', async () => {
    const told = await own();
    expect(find(told, '.passes .drift').textContent).to.match(/No drift of the gauge shows in these passes: .*±/s);
    const up = await own(true);
    expect(find(up, '.passes .drift').textContent).to.contain('every ± allows for ±0.13° a pass');
    expect(find(up, '.not-in').textContent).to.contain('Not in any ±');
    expect(find(up, '.not-in').textContent).to.contain('Read the first height again');
    expect(find(up, '.shares').textContent).to.contain('the gauge’s drift');
  });

  it('come with a table of a page, and with a new set of parts but for its zero height', async () => {
    const rows = [-30, -20, -10, 0, 10, 20, 30, 40].map(
      (t) => `<tr><td>${t}</td><td>${(-0.5 - 0.014 * t).toFixed(2)}</td></tr>`,
    );
    const table = (doubts: string) =>
      `<bumpline-readings><table ${doubts}><tr><th>Travel (mm)</th><th>Camber (°)</th></tr>${rows.join('')}</table></bumpline-readings>`;
    const plain = (await show(table(''))).answer!.change!.plusMinus!;
    const rough = await show(table('data-doubts="gauge-scale 20 %"'));
    expect(rough.answer!.change!.plusMinus!).to.be.above(plain + 0.01);
    const wrong = await show(table('data-doubts="gauge 3 %"'));
    expect(wrong.problems.map(({ path }) => path)).to.deep.equal(['doubts']);

    const element = await own();
    await say(element, 0, '3');
    await say(element, 2, '5');
    find<HTMLButtonElement>(element, '.new-setup').click();
    await rendered(element);
    find<HTMLDetailsElement>(element, '.instruments').open = true;
    expect(fields(element).map(({ value }) => value.replace(/\s/g, ' '))).to.deep.equal([
      '±3 %',
      '±1 %',
      '±2 mm',
      '±0.13°',
    ]);
  });

  it('a text that is no number goes with its set, and stands in the fields of no other', async () => {
    const element = await own();
    await say(element, 2, 'about two');
    expect(element.state).to.equal('stale');
    find<HTMLButtonElement>(element, '.new-setup').click();
    await rendered(element);
    find<HTMLDetailsElement>(element, '.instruments').open = true;
    expect(fields(element)[2]!.value.replace(/\s/g, ' ')).to.equal('±2 mm');
    expect(element.problems.map(({ path }) => path)).not.to.contain('zeroHeight');
  });
});
