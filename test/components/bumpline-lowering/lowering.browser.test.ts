import { expect } from 'chai';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { CarModel } from '../../../components/car/car-model.js';
import type { BumplineAnswerEvent } from '../../../components/element/events.js';
import type { LoweringAnswer } from '../../../core/answers/lowering.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import {
  find,
  meddle,
  REFERENCE_CHANGE_40,
  referenceCorner,
  referenceTable,
  root,
  sentenceOf,
  show,
  showPoints,
  type,
  WISHBONE_CHANGE_40,
  wait,
  wishboneCorner,
} from './set-up.js';

const near = (value: number | undefined, expected: number) => expect(Math.abs(value! - expected)).to.be.below(1e-5);

const press = async (element: BumplineLowering, label: string) => {
  [...root(element).querySelectorAll<HTMLButtonElement>('dialog .buttons button')]
    .find((button) => button.textContent?.trim() === label)!
    .click();
  await wait(0);
  await element.settled;
};
const title = (element: BumplineLowering) => find(element, '#sheet-title .title').textContent;
const fieldsOf = (element: BumplineLowering) => [
  ...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input'),
];

describe('<bumpline-lowering> and its sources', () => {
  it('opens with the example, marked so, with a full sentence, and one text field', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    expect(element.state).to.equal('example');
    expect(find(element, '.owner').textContent).to.equal('Example');
    expect(sentenceOf(element)).to.match(/^Lowering 30.mm adds \d\.\d\d° ±.\d\.\d\d° of negative camber\./);
    const fields = [...root(element).querySelectorAll<HTMLInputElement>('input:not([type=range])')];
    expect(fields.filter((field) => field.checkVisibility())).to.have.length(1);
  });

  it('says nothing of bump that is left until it knows the bump travel', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    expect(sentenceOf(element)).not.to.contain('leaves');
    element.setAttribute('bump-travel', '62');
    await element.settled;
    expect(sentenceOf(element)).to.match(/leaves 32.mm of bump/);
    element.setAttribute('drop', '70');
    await element.settled;
    expect(sentenceOf(element)).to.match(/puts it 8.mm past its solid stop/);
  });

  it('takes a corner as a property, set before or after upgrade', async () => {
    const element = await show('<bumpline-lowering drop="40"></bumpline-lowering>');
    element.corner = referenceCorner;
    await element.settled;
    expect(element.state).to.equal('ready');
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
    expect(sentenceOf(element)).to.contain('adds 0.37° of negative camber');

    const made = document.createElement('bumpline-lowering');
    made.corner = referenceCorner;
    made.drop = 40;
    element.replaceWith(made);
    await made.settled;
    near(made.answer?.change.value, REFERENCE_CHANGE_40);
  });

  it('takes a corner from a JSON script inside', async () => {
    const json = JSON.stringify(referenceCorner);
    const element = await show(
      `<bumpline-lowering drop="40"><script type="application/json">${json}</script></bumpline-lowering>`,
    );
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
    expect(find(element, '.owner').textContent).to.equal('this page’s points');
  });

  it('takes a corner from a table inside, and follows it when the page changes it', async () => {
    const element = await show(`<bumpline-lowering drop="40">${referenceTable}</bumpline-lowering>`);
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
    const before = element.innerHTML;
    element.querySelectorAll('td')[7]!.textContent = '705';
    await wait(0);
    await element.settled;
    expect(element.answer?.change.value).not.to.be.closeTo(REFERENCE_CHANGE_40, 1e-4);
    expect(element.innerHTML).to.equal(before.replace('<td>700</td>', '<td>705</td>'));
  });

  it('reads a table in inches and with decimal commas, in the table’s own language', async () => {
    const inches = referenceTable
      .replaceAll('(mm)', '(in)')
      .replace(/<td>(−?)(\d+)<\/td>/g, (_, sign, mm) => `<td>${sign}${(mm / 25.4).toFixed(6).replace('.', ',')}</td>`)
      .replace('<td colspan="3">310</td>', '<td>12,204724</td>')
      .replace('<table>', '<table lang="de">');
    const element = await show(`<bumpline-lowering drop="40">${inches}</bumpline-lowering>`);
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
  });

  it('takes the example in place of the rows that a table lacks, and says so', async () => {
    const part = referenceTable.replace(/<tr><th>Top mount.*?<\/tr>/, '');
    const element = await show(`<bumpline-lowering>${part}</bumpline-lowering>`);
    expect(element.state).to.equal('incomplete');
    expect(find(element, '.owner').textContent).to.contain('7 of 8');
  });

  it('does not take a table marked as the example for data', async () => {
    const marked = referenceTable.replace('<table>', '<table data-example>');
    const element = await show(`<bumpline-lowering>${marked}</bumpline-lowering>`);
    expect(element.state).to.equal('example');
  });

  it('takes coefficients of a curve, without a drawing', async () => {
    const element = await show(
      '<bumpline-lowering drop="30" coefficients="-0.5 -0.0136 0.00011" domain="-60 80"></bumpline-lowering>',
    );
    expect(element.state).to.equal('ready');
    near(element.answer?.change.value, -0.0136 * 30 + 0.00011 * 900);
    expect(find(element, '.drawing')).to.equal(null);
    // d/dt = 0 at 0.0136 / (2 · 0.00011)
    expect(sentenceOf(element)).to.match(/turns back 61\.8.mm lower/);
  });

  it('answers for a double wishbone, without the strut’s drawing and fields', async () => {
    const element = await show('<bumpline-lowering drop="40"></bumpline-lowering>');
    element.corner = wishboneCorner;
    await element.settled;
    expect(element.state).to.equal('ready');
    near(element.answer?.change.value, WISHBONE_CHANGE_40);
    expect(find(element, '.drawing')).to.equal(null);
    expect(find(element, '.inputs')).to.equal(null);
    expect(find(element, '.chart')).not.to.equal(null);
  });

  it('answers again after it was moved in the document', async () => {
    const element = await show('<bumpline-lowering drop="40"></bumpline-lowering>');
    const parent = element.parentElement!;
    element.remove();
    element.corner = referenceCorner;
    parent.append(element);
    await element.settled;
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
    expect(find(element, '.drawing svg')).not.to.equal(null);
  });

  it('shares a car that two elements are given', async () => {
    const car = new CarModel({ ...EMPTY_CAR, drop: 20 });
    const first = await show('<bumpline-lowering></bumpline-lowering>');
    const second = document.createElement('bumpline-lowering');
    first.after(second);
    first.car = car;
    second.car = car;
    await Promise.all([first.settled, second.settled]);
    await type(find(first, '.drop'), '35');
    await second.settled;
    expect(find<HTMLInputElement>(second, '.drop').value).to.match(/^35/);
    near(second.answer?.change.value, first.answer!.change.value);
  });
});

describe('<bumpline-lowering> while it is used', () => {
  it('follows the drop as it is typed, tells the page, and speaks half a second after', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const heard: unknown[] = [];
    element.addEventListener('bumpline-change', (event) => heard.push([event.path, event.value]));
    let answers = 0;
    element.addEventListener('bumpline-answer', () => answers++);
    await type(find(element, '.drop'), '25', false);
    expect(element.answer?.drop).to.equal(25);
    expect(heard).to.deep.equal([['drop', 25]]);
    expect(answers).to.equal(1);
    const status = find(element, '[role=status]');
    expect(status.textContent).to.equal('');
    await wait(700);
    expect(status.textContent).to.match(/^Lowering 25.mm adds/);
  });

  it('does not speak of what only the page did', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    element.drop = 20;
    await element.settled;
    await wait(700);
    expect(find(element, '[role=status]').textContent).to.equal('');
  });

  it('keeps the last answer dimmed and the text as typed while a drop cannot be read', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const before = find(element, '.says').textContent;
    await type(find(element, '.drop'), '3o');
    expect(element.state).to.equal('stale');
    expect(find<HTMLInputElement>(element, '.drop').value).to.equal('3o');
    expect(find(element, '.says').textContent).to.equal(': no answer yet.');
    expect(find(element, '.before').textContent)
      .to.match(/^Before: Lowering 30.mm/)
      .and.to.contain(before);
    expect(find(element, '.problems').textContent).to.contain('3o');
    await type(find(element, '.drop'), '30');
    expect(element.state).to.equal('example');
    expect(find(element, '.problems')).to.equal(null);
  });

  it('names the end of what is known for a drop beyond it', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await type(find(element, '.drop'), '140');
    expect(element.problems[0]).to.include({ code: 'outside-domain', path: 'drop', limit: 120 });
    expect(find(element, '.problems').textContent).to.match(/140.mm.*120.mm/);
  });

  it('moves with the slider, one undo step a drag', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const slider = find<HTMLInputElement>(element, 'input[type=range]');
    for (const value of ['31', '36', '44']) {
      slider.value = value;
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await element.settled;
    }
    slider.dispatchEvent(new Event('change', { bubbles: true }));
    expect(element.answer?.drop).to.equal(44);
    expect(slider.getAttribute('aria-valuetext')).to.match(/^44.mm$/);
    const undo = find<HTMLButtonElement>(element, '.undo');
    expect(undo.textContent?.trim()).to.match(/^Undo: drop 30.mm$/);
    undo.click();
    await element.settled;
    expect(element.answer?.drop).to.equal(30);
    find<HTMLButtonElement>(element, '.redo').click();
    await element.settled;
    expect(element.answer?.drop).to.equal(44);
    expect(find(element, '.redo')).to.equal(null);
  });

  it('replaces the example point by point from its sheets', async () => {
    const element = await showPoints('<bumpline-lowering drop="40"></bumpline-lowering>');
    const points = [
      referenceCorner.lowerArm.front,
      referenceCorner.lowerArm.rear,
      referenceCorner.lowerArm.ball,
      referenceCorner.strut.top,
      referenceCorner.strut.low,
      referenceCorner.tieRod.inner,
      referenceCorner.tieRod.outer,
      referenceCorner.wheelCentre,
    ];
    for (const [index, point] of points.entries()) {
      root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[index]!.click();
      await wait(0);
      await element.updateComplete;
      const fields = root(element).querySelectorAll<HTMLInputElement>('dialog .fields input');
      for (const [axis, value] of point.entries()) await type(fields[axis]!, String(value));
      find<HTMLDialogElement>(element, 'dialog').close();
      await wait(0);
      expect(find(element, '.owner').textContent).to.equal(
        index < 7 ? `${index + 1} of 8 points yours` : 'points yours, camber and toe the example’s',
      );
    }
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await wait(0);
    await element.settled;
    for (const [name, value] of [
      ['Static camber', '-0.5'],
      ['Static toe, this wheel alone', '0.1'],
      ['Loaded radius', '310'],
    ]) {
      [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')]
        .find((row) => row.textContent?.includes(name!))!
        .click();
      await wait(0);
      await element.updateComplete;
      await type(find(element, 'dialog .fields input'), value!);
      find<HTMLDialogElement>(element, 'dialog').close();
      await wait(0);
    }
    await element.settled;
    expect(element.state).to.equal('ready');
    expect(find(element, '.owner').textContent).to.equal('all yours');
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
    // A tape was assumed for each of them, so there is a ±.
    expect(element.answer?.change.plusMinus).to.be.above(0);
  });

  it('says of a user’s own car only the bump travel that the user gave, not the page’s', async () => {
    const element = await showPoints('<bumpline-lowering drop="30" bump-travel="62"></bumpline-lowering>');
    expect(sentenceOf(element)).to.contain('leaves 32');
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    const row = () =>
      [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')].find((button) =>
        button.textContent?.includes('Bump travel left'),
      )!;
    const give = async (open: HTMLElement, values: readonly (string | number)[]) => {
      open.click();
      await wait(0);
      await element.updateComplete;
      const fields = root(element).querySelectorAll<HTMLInputElement>('dialog .fields input');
      for (const [i, value] of values.entries()) await type(fields[i]!, String(value));
      find<HTMLDialogElement>(element, 'dialog').close();
      await wait(0);
      await element.settled;
    };
    const { ball } = referenceCorner.lowerArm;
    await give(root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[2]!, ball);
    expect(element.answer?.bumpLeft).to.equal(undefined);
    expect(sentenceOf(element)).not.to.contain('of bump');
    expect(row().textContent?.replace(/\s+/g, ' ')).to.contain('enter');

    await give(row(), [70]);
    expect(element.answer?.bumpLeft).to.equal(40);
    expect(sentenceOf(element)).to.contain('leaves 40');
    // A later point does not take it away.
    await give(root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[2]!, [ball[0] + 1]);
    expect(element.answer?.bumpLeft).to.equal(40);
  });

  it('gives no answer without the limits that its attribute says, while what reads them comes', async () => {
    const answers: (number | undefined)[] = [];
    const hear = (event: Event) => {
      answers.push((event as BumplineAnswerEvent<LoweringAnswer>).answer.bumpLeft);
    };
    document.addEventListener('bumpline-answer', hear);
    await showPoints(
      '<bumpline-lowering drop="20" limits="stop-gap 30; stop-length 40; stop-usable 0.5; motion-ratio 1"></bumpline-lowering>',
    );
    document.removeEventListener('bumpline-answer', hear);
    expect(answers.length).to.be.above(0);
    expect(answers.every((left) => left === 30)).to.equal(true);
  });

  it('takes what ends travel from one attribute: both ends in sentence, chart and list; a reader’s own car leaves it behind', async () => {
    const element = await showPoints(
      '<bumpline-lowering drop="20" limits="stop-gap 30; stop-length 40; stop-usable 0.5; motion-ratio 1"></bumpline-lowering>',
    );
    const { touch, solid } = element.answer!.budget!.bump;
    // With a motion ratio of 1 by hand: 30 mm less the drop, and half of 40 mm more.
    expect([touch!.left, solid!.left]).to.deep.equal([10, 30]);
    expect(sentenceOf(element).replace(/\u202f/g, ' ')).to.contain(
      'leaves 30 mm of bump, ended by the bump stop and touched after 10 mm.',
    );
    expect(find(element, '.slider').textContent)
      .to.match(/stop touched 30.mm/)
      .and.to.match(/solid 50.mm/);
    find<HTMLDetailsElement>(element, '.travel').open = true;
    await wait(0);
    await element.settled;
    expect(find(element, '.travel dl').textContent!.replace(/\u202f/g, ' ')).to.contain(
      '30 mm, ended by the bump stop',
    );
    element.limits = 'stop-gap 30; stop-width 3';
    await element.settled;
    await wait(0);
    await element.settled;
    expect(element.problems.map(({ path, value }) => [path, value])).to.deep.equal([['limits', 'stop-width 3']]);
    element.limits = 'stop-gap 30; motion-ratio 1';
    await element.settled;
    await wait(0);
    await element.settled;
    root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[2]!.click();
    await wait(0);
    await element.updateComplete;
    const fields = root(element).querySelectorAll<HTMLInputElement>('dialog .fields input');
    for (const [i, value] of referenceCorner.lowerArm.ball.entries()) await type(fields[i]!, String(value));
    find<HTMLDialogElement>(element, 'dialog').close();
    await element.settled;
    expect(element.answer!.budget).to.equal(undefined);
  });

  it('keeps the texts of a point that is not complete yet', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    const open = async () => {
      root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[2]!.click();
      await wait(0);
      await element.updateComplete;
      return [...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')];
    };
    const fields = await open();
    await type(fields[0]!, '12');
    await type(fields[1]!, '690');
    find<HTMLDialogElement>(element, 'dialog').close();
    await wait(0);
    expect(element.state).to.equal('example');
    const again = await open();
    expect(again.map((field) => field.value)).to.deep.equal(['12', '690', '']);
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('falls back to the answer from before when what is being typed turns out to be no value', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const before = find(element, '.says').textContent;
    const drop = find<HTMLInputElement>(element, '.drop');
    for (const text of ['1', '1,', '1,2', '1,20']) await type(drop, text, false);
    await type(drop, '1,200');
    expect(element.problems[0]).to.include({ code: 'ambiguous', path: 'drop' });
    expect(element.answer?.drop).to.equal(30);
    // Never the new drop with the old answer in one sentence.
    expect(find(element, '.says').textContent).to.equal(': no answer yet.');
    expect(find(element, '.before').textContent)
      .to.match(/^Before: Lowering 30.mm/)
      .and.to.contain(before);
    expect(drop.value).to.equal('1,200');

    // The text goes first: no number that was given before goes with it.
    expect(find(element, '.undo').textContent?.trim()).to.equal('Undo: “1,200”');
    find<HTMLButtonElement>(element, '.undo').click();
    await element.settled;
    expect(drop.value).to.match(/^30/);
    expect(element.state).to.equal('example');
    expect(find(element, '.undo')).to.equal(null);
  });

  it('falls back to the answer from before when the number goes beyond what is known', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const drop = find<HTMLInputElement>(element, '.drop');
    for (const text of ['1', '14']) await type(drop, text, false);
    expect(element.answer?.drop).to.equal(14);
    await type(drop, '140');
    expect(element.problems[0]).to.include({ code: 'outside-domain' });
    expect(element.answer?.drop).to.equal(30);
    find<HTMLButtonElement>(element, '.undo').click();
    await element.settled;
    expect(element.state).to.equal('example');
    expect(drop.value).to.match(/^30/);
  });

  it('takes a text that is typed a second time, and reads it again in another unit', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const [length] = [...root(element).querySelectorAll<HTMLSelectElement>('.head select')];
    const choose = async (unit: string) => {
      length!.value = unit;
      length!.dispatchEvent(new Event('change', { bubbles: true }));
      await element.settled;
    };
    await choose('in');
    const drop = find<HTMLInputElement>(element, '.drop');
    await type(drop, '26');
    expect(element.problems[0]).to.include({ code: 'out-of-range', path: 'drop' });
    await choose('mm');
    expect(element.problems).to.have.length(0);
    expect(element.answer?.drop).to.equal(26);
    expect(drop.value).to.match(/^26.mm$/);
    // The same text as the one that was wrong: the browser tells of no change, only that the field was left.
    await type(drop, '2x');
    drop.focus();
    drop.value = '22';
    drop.dispatchEvent(new InputEvent('input', { bubbles: true }));
    drop.blur();
    await element.settled;
    expect(drop.value).to.match(/^22.mm$/);
  });

  it('asks at once about a figure that looks like a slip of the keys, and blames it where the links no longer fit', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[2]!.click();
    await wait(0);
    await element.settled;
    for (const [axis, value] of ['-4', '694', '87'].entries()) await type(fieldsOf(element)[axis]!, value);
    expect(find(element, 'dialog .query').textContent).to.contain('87').and.to.contain('swapped digits');
    // Not an error: the answer comes all the same.
    expect(element.problems).to.have.length(0);
    await type(fieldsOf(element)[2]!, '861');
    expect(element.problems.map(({ code }) => code)).to.include('cannot-close');
    expect(find(element, 'dialog .query').textContent).to.contain('861');
    find<HTMLDialogElement>(element, 'dialog').close();
    await wait(0);
    await element.settled;
    const labels = [...root(element).querySelectorAll('.drawing button')].map((b) => b.getAttribute('aria-label'));
    expect(labels.filter((label) => label?.includes('needs correcting'))).to.deep.equal([
      '3 Lower ball joint, needs correcting',
    ]);
    find<HTMLButtonElement>(element, '.queries .button').click();
    await wait(0);
    await element.settled;
    expect(title(element)).to.equal('Lower ball joint');
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('offers the readings of an ambiguous drop where it is told', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await type(find(element, '.drop'), '1,200');
    const [small] = [...root(element).querySelectorAll<HTMLButtonElement>('.problems .button')];
    expect(small!.textContent?.trim()).to.equal('1.2\u202fmm');
    small!.click();
    await element.settled;
    expect(element.problems).to.have.length(0);
    expect(element.answer?.drop).to.equal(1.2);
  });

  it('steps the drop with the arrow keys in its field, and Escape leaves a text that was not meant', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const drop = find<HTMLInputElement>(element, '.drop');
    const strike = (key: string) => drop.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
    strike('ArrowUp');
    strike('ArrowUp');
    strike('ArrowDown');
    await element.settled;
    expect(element.answer?.drop).to.equal(31);
    await type(drop, '3x', false);
    strike('Escape');
    await element.settled;
    expect(drop.value).to.match(/^31/);
    expect(element.problems).to.have.length(0);
  });

  it('leads from the first point through all that makes a car one’s own, and says how far it is', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    const way = find<HTMLButtonElement>(element, '.own');
    expect(way.textContent?.trim()).to.equal('Put in my own car');
    way.click();
    await wait(0);
    await element.settled;
    const titles = [title(element)];
    expect(find(element, '#sheet-title small').textContent).to.equal('Front left · 1 of 12');
    for (let i = 0; i < 11; i++) {
      await press(element, 'Next');
      titles.push(title(element));
    }
    expect(titles.slice(9)).to.deep.equal(['Static camber', 'Static toe, this wheel alone', 'Bump travel left']);
    expect(
      [...root(element).querySelectorAll('dialog .buttons button')].map((b) => b.textContent?.trim()),
    ).to.deep.equal(['Back', 'Done']);
    await press(element, 'Done');
    expect(find<HTMLDialogElement>(element, 'dialog').open).to.equal(false);
    // Nothing was given: nothing is claimed.
    expect(find(element, '.owner').textContent).to.equal('Example');
  });

  it('does not drop half a point in silence, nor go on over a number that cannot be read', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    find<HTMLButtonElement>(element, '.own').click();
    await wait(0);
    await element.settled;
    await press(element, 'Next');
    await type(fieldsOf(element)[0]!, '24');
    await press(element, 'Next');
    expect(title(element)).to.equal('Lower arm, front pivot');
    expect(find(element, 'dialog [role=alert]').textContent).to.match(/^y and z are missing: .*stays the example’s/);
    await type(fieldsOf(element)[1]!, '36o');
    await press(element, 'Next');
    await press(element, 'Next');
    expect(title(element)).to.equal('Lower arm, front pivot');
    expect(root(element).activeElement).to.equal(fieldsOf(element)[1]);
    await type(fieldsOf(element)[1]!, '360');
    await press(element, 'Done');
    expect(title(element)).to.equal('Lower arm, front pivot');
    await press(element, 'Done');
    expect(find<HTMLDialogElement>(element, 'dialog').open).to.equal(false);
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await wait(0);
    await element.settled;
    expect(root(element).querySelectorAll('.input-row')[1]!.textContent).to.contain('not complete');
  });

  it('has a key for the sign, which number pads lack', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[5]!.click();
    await wait(0);
    await element.settled;
    const [x] = fieldsOf(element);
    expect(x!.inputMode).to.equal('decimal');
    expect(root(element).querySelectorAll('dialog .sign')).to.have.length(1);
    await type(x!, '132', false);
    find<HTMLButtonElement>(element, 'dialog .sign').click();
    await element.settled;
    expect(x!.value).to.equal('−132');
    find<HTMLButtonElement>(element, 'dialog .sign').click();
    await element.settled;
    expect(x!.value).to.equal('132');
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('keeps a page’s car for what a user has not given, and says so', async () => {
    const element = await show('<bumpline-lowering drop="40"></bumpline-lowering>');
    element.corner = { ...referenceCorner, plusMinus: { other: 2 } };
    await element.settled;
    expect(find(element, '.owner').textContent).to.equal('this page’s points');
    find<HTMLButtonElement>(element, '.own').click();
    await wait(0);
    await element.settled;
    await press(element, 'Next');
    expect(fieldsOf(element).map((field) => field.placeholder)).to.deep.equal(['20', '340', '195']);
    for (const [axis, value] of ['20', '340', '195'].entries()) await type(fieldsOf(element)[axis]!, value);
    await press(element, 'Done');
    expect(find(element, '.owner').textContent).to.equal('1 of 8 points yours');
    near(element.answer?.change.value, REFERENCE_CHANGE_40);
    expect(sentenceOf(element)).to.match(
      /adds 0\.37° of negative camber\..* But 7 points of this are still the page’s\.$/,
    );
    expect(find(element, '.own').textContent?.trim()).to.equal('Next: Lower arm, rear pivot');
  });

  it('takes the loaded radius from the wheel centre’s height until it is given', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[7]!.click();
    await wait(0);
    await element.settled;
    for (const [axis, value] of ['0', '738', '305'].entries()) await type(fieldsOf(element)[axis]!, value);
    await press(element, 'Done');
    expect(element.answer?.corner?.loadedRadius).to.equal(305);
  });

  it('asks about a text that can be read in two ways and takes the one that is chosen', async () => {
    const element = await showPoints('<bumpline-lowering></bumpline-lowering>');
    root(element).querySelectorAll<HTMLButtonElement>('.drawing button')[2]!.click();
    await wait(0);
    await element.updateComplete;
    const fields = root(element).querySelectorAll<HTMLInputElement>('dialog .fields input');
    await type(fields[0]!, '-4');
    await type(fields[1]!, '694');
    await type(fields[2]!, '1,176');
    expect(element.problems[0]).to.include({ code: 'ambiguous', path: 'lowerArm.ball.2' });
    const choice = [...root(element).querySelectorAll<HTMLButtonElement>('dialog .field .button')];
    expect(choice.map((button) => button.textContent?.trim())).to.deep.equal(['1.176\u202fmm', '1176\u202fmm']);
    choice[0]!.click();
    await element.settled;
    expect(element.problems.filter(({ code }) => code === 'ambiguous')).to.have.length(0);
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('changes units without changing the answer', async () => {
    const element = await show('<bumpline-lowering bump-travel="62"></bumpline-lowering>');
    const { change } = element.answer!;
    const [length, angle] = [...root(element).querySelectorAll<HTMLSelectElement>('.head select')];
    for (const [select, value] of [
      [length!, 'in'],
      [angle!, 'arcminutes'],
    ] as const) {
      select.value = value;
      select.dispatchEvent(new Event('change', { bubbles: true }));
    }
    await element.settled;
    expect(sentenceOf(element)).to.match(
      /^Lowering 1\.18.in adds 0°24′ ±.\d′ of negative camber and leaves 1\.26.in of bump/,
    );
    expect(element.answer!.change).to.deep.equal(change);
    // What the field shows is read back as the same drop.
    await type(find(element, '.drop'), '1.25');
    expect(element.answer!.drop).to.be.closeTo(31.75, 1e-9);
  });

  it('moves drawing, table and read-out with the cursor and renders nothing else', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>', 420);
    await wait(300);
    let renders = 0;
    element.addController({ hostUpdated: () => void renders++ });
    const figure = () => find(element, '.drawing svg').innerHTML;
    const before = figure();
    const chart = find(element, '.chart [tabindex]');
    expect(chart, 'the chart came').not.to.equal(null);
    chart.focus();
    for (let i = 0; i < 12; i++) {
      chart.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true, composed: true }));
    }
    await wait(100);
    expect(figure()).not.to.equal(before);
    expect(find(element, '.at-cursor').textContent).to.match(/^At \+42.mm of travel: −\d\.\d\d°/);
    expect(renders).to.equal(0);
    chart.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true, composed: true }));
    await wait(100);
    expect(find(element, '.at-cursor').textContent).to.equal('');
  });
});

describe('<bumpline-lowering> when something is wrong', () => {
  it('lists every problem of a corner by name, and shows the author’s own content', async () => {
    const broken = {
      ...referenceCorner,
      loadedRadius: 'big',
      lowerArm: { ...referenceCorner.lowerArm, ball: [-5, 700] },
    };
    const element = await show('<bumpline-lowering><p>Fallback</p></bumpline-lowering>');
    const fresh = document.createElement('bumpline-lowering');
    fresh.innerHTML = '<p>Fallback</p>';
    fresh.corner = broken;
    element.replaceWith(fresh);
    await fresh.settled;
    expect(fresh.state).to.equal('problem');
    expect(fresh.problems.map(({ path }) => path)).to.have.members(['loadedRadius', 'lowerArm.ball.2']);
    const text = find(fresh, '.problems').textContent;
    expect(text).to.contain('Loaded radius').and.to.contain('Lower ball joint, z');
    expect(fresh.querySelector('p')!.checkVisibility()).to.equal(true);
  });

  it('lets a corner that was handed over broken be corrected by hand', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const fresh = document.createElement('bumpline-lowering');
    fresh.drop = 40;
    fresh.corner = { ...referenceCorner, lowerArm: { ...referenceCorner.lowerArm, ball: [-5, 'wide', 185] } };
    element.replaceWith(fresh);
    await fresh.settled;
    expect(fresh.state).to.equal('problem');
    find<HTMLButtonElement>(fresh, '.problems .button').click();
    await wait(0);
    await fresh.updateComplete;
    const fields = root(fresh).querySelectorAll<HTMLInputElement>('dialog .fields input');
    for (const [axis, value] of ['-5', '700', '185'].entries()) await type(fields[axis]!, value);
    find<HTMLDialogElement>(fresh, 'dialog').close();
    await fresh.settled;
    expect(fresh.state).to.equal('ready');
    near(fresh.answer?.change.value, REFERENCE_CHANGE_40);
  });

  it('names an attribute that cannot be read', async () => {
    const element = await show('<bumpline-lowering drop="low"></bumpline-lowering>');
    expect(element.problems[0]).to.include({ path: 'drop', code: 'not-a-number', value: 'low' });
    expect(find(element, '.problems').textContent).to.contain('low');
  });

  it('names coefficients without a domain', async () => {
    const element = await show('<bumpline-lowering coefficients="-0.5 -0.01"></bumpline-lowering>');
    expect(element.state).to.equal('problem');
    expect(element.problems.map(({ path }) => path)).to.include('domain');
  });

  it('owns up to a fault, keeps the numbers, and tries again', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await type(find(element, '.drop'), '26');
    meddle.reply = { ok: false, fault: 'test fault' };
    element.corner = referenceCorner;
    await element.settled;
    expect(element.state).to.equal('fault');
    expect(find(element, '.problems').textContent).to.contain('test fault');
    expect(find<HTMLInputElement>(element, '.drop').value).to.match(/^26/);
    meddle.reply = undefined;
    find<HTMLButtonElement>(element, '.problems .button').click();
    await element.settled;
    expect(element.state).to.equal('ready');
    expect(element.answer?.drop).to.equal(26);
  });

  it('asks nothing of the core for another drop: what is solved is answered on the page, in the task of the input', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const before = element.answer!;
    meddle.reply = { ok: false, fault: 'nobody is to ask' };
    const slider = find<HTMLInputElement>(element, 'input[type=range]');
    for (const drop of [31, 32, 33]) {
      slider.value = String(drop);
      slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
      expect(element.answer?.drop).to.equal(drop);
      expect(element.answer!.curve).to.equal(before.curve);
      expect(element.answer!.motion).to.equal(before.motion);
    }
    await element.settled;
    meddle.reply = undefined;
    expect(element.state).to.equal('example');
  });

  it('marks the balloon of a point that is wrong', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    element.corner = referenceCorner;
    await element.settled;
    find<HTMLButtonElement>(element, '.drawing button[aria-label^="3 "]').click();
    await wait(0);
    await element.settled;
    await type(root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')[0]!, '-5');
    await type(root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')[1]!, '300');
    await type(root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')[2]!, '185');
    find<HTMLDialogElement>(element, 'dialog').close();
    await element.settled;
    expect(element.state).to.equal('stale');
    const labels = [...root(element).querySelectorAll('.drawing button')].map((b) => b.getAttribute('aria-label'));
    expect(labels.find((label) => label?.startsWith('3 '))).to.contain('needs correcting');
  });
});
