import { expect } from 'chai';
import { CarModel } from '../../../components/shared/car-model.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { STRAIGHT_UP_CORNER } from '../../reference/clearance-scenarios.js';
import { show as showClearance } from '../bumpline-clearance/set-up.js';
import { show as showCompare } from '../bumpline-compare/set-up.js';
import { find, root, show, type, wait } from '../bumpline-lowering/set-up.js';
import { show as showReadings } from '../bumpline-readings/set-up.js';

/** Everything an element warns of, dialogs apart. */
const cautions = (element: Element) =>
  [...root(element).querySelectorAll('.cautions')]
    .filter((one) => !one.closest('dialog'))
    .map((one) => one.textContent!.replace(/\s+/g, ' '))
    .join(' ');

const HAND = ['spring and bump stop out', 'no further', 'Quit at once', 'under it or beside the arm'];

describe('cautions of the elements', () => {
  it('lowering: full bump by hand, by how much hub to arch may shrink, in whose car', async () => {
    const element = await show('<bumpline-lowering drop="30" bump-travel="62"></bumpline-lowering>');
    for (const part of HAND) expect(cautions(element)).to.contain(part);
    expect(cautions(element)).to.contain(
      'until hub to arch is 32 mm shorter than on its wheels, 30 mm lower, and no further (this page’s car; work out your own)',
    );
    await type(find(element, '.sentence input'), '20');
    expect(cautions(element)).to.contain('42 mm shorter');
  });

  it('lowering: the user’s own bump travel is theirs, and without any no height is made up', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    expect(cautions(element)).to.contain('to the hub-to-arch height where the stop would be solid and no further.');
    element.car = new CarModel({
      ...EMPTY_CAR,
      provenance: { corner: { by: 'user' }, bumpTravel: { by: 'user' } },
      bumpTravel: 62,
    });
    await element.settled;
    expect(cautions(element)).to.match(/32\smm shorter than on its wheels, 30\smm lower, and no further\. Quit/);
  });

  it('clearance: to which hub-to-arch height, from the lip that was measured and the stop', async () => {
    const element = await showClearance('<bumpline-clearance></bumpline-clearance>');
    for (const part of [...HAND, 'clamp force', 'from wheel to brake']) expect(cautions(element)).to.contain(part);
    // Nobody's stop: no height to the millimetre without saying whose.
    expect(cautions(element)).to.contain('(the example; work out your own)');
    element.car = new CarModel({
      ...EMPTY_CAR,
      provenance: { corner: { by: 'user' }, fit: { by: 'user' } },
      by: 'points',
      whole: STRAIGHT_UP_CORNER,
      fit: {
        lock: 0,
        places: [{ name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 12, distance: 367, out: 20 } }],
      },
      // Solid at (22 + 0.5 · 50) / 0.96 = 48.96 mm: 318.04 mm hub to arch, rounded to the safe side.
      stopGap: 22,
      limits: { stopLength: 50, motionRatio: 0.96 },
      drop: 25,
    });
    await element.settled;
    expect(element.problems).to.deep.equal([]);
    expect(cautions(element)).to.match(/Raise the arm slowly to 319\smm hub to arch and no further\. Quit/);
  });

  it('compare: a longer stud, what is disconnected first, and the height once somebody has said what ends bump', async () => {
    const element = await showCompare('<bumpline-compare></bumpline-compare>');
    for (const part of [...HAND, 'end of its swing', 'level-sensor links, adaptive-damper leads'])
      expect(cautions(element)).to.contain(part);
    expect(cautions(element)).to.contain('to the hub-to-arch height where the stop would be solid');
  });

  it('readings: all that a corner needs before it is moved through its travel', async () => {
    const element = await showReadings('<bumpline-readings></bumpline-readings>');
    for (const part of [
      'Spring and bump stop out before you move a corner',
      'the damper bottoms',
      'level-sensor links, adaptive-damper leads',
      'Measure travel at the hub',
      'only until the rubber is free',
      'A compressed spring can kill',
    ])
      expect(cautions(element)).to.contain(part);
  });

  it('stand in the sheet where the hand is, and no button puts any of them away', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLDetailsElement>(element, '.travel').open = true;
    await wait(0);
    await element.settled;
    [...root(element).querySelectorAll<HTMLButtonElement>('.travel button')]
      .find((row) => row.textContent!.includes('Driveshaft'))!
      .click();
    await wait(0);
    await element.settled;
    const inSheet = find(element, 'dialog .cautions');
    expect(inSheet.textContent).to.contain('Spring and bump stop out before you move a corner');
    expect(inSheet.textContent).to.contain('Disconnect first');
    for (const one of root(element).querySelectorAll('.cautions')) {
      expect(one.querySelector('button, summary')).to.equal(null);
      expect(one.closest('details')).to.equal(null);
    }
  });
});
