import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { carToLink } from '../../../core/document/link.js';
import { find, referenceTable, root, sentenceOf, show, type, wait } from './set-up.js';

const bare = () => location.href.replace(/#.*$/, '');
const setAddress = (hash: string) => history.replaceState(null, '', `${bare()}${hash}`);

describe('<bumpline-lowering> asked from the other end', () => {
  it('finds the drop that gives a change', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    expect(root(element).querySelectorAll('.sentence input')).to.have.length(1);
    find<HTMLButtonElement>(element, '.asked').click();
    await element.settled;
    expect(root(element).activeElement).to.equal(find(element, '.change'));
    await type(find(element, '.change'), '0.3');
    // To a tenth of a millimetre, a few thousandths of a degree.
    expect(element.answer!.change.value).to.be.closeTo(-0.3, 0.002);
    expect(element.answer!.drop).to.be.below(30);
    expect(sentenceOf(element)).to.contain('adds 0.30°');
    find<HTMLButtonElement>(element, '.undo').click();
    await element.settled;
    expect(element.answer!.drop).to.equal(30);
  });

  it('is done by keyboard alone: Enter opens it, Enter finds the drop and leaves the focus there', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLButtonElement>(element, '.asked').focus();
    await sendKeys({ press: 'Enter' });
    await element.settled;
    await sendKeys({ type: '0.3' });
    await sendKeys({ press: 'Enter' });
    await wait(50);
    await element.settled;
    expect(element.answer!.change.value).to.be.closeTo(-0.3, 0.002);
    expect(root(element).activeElement).to.equal(find(element, '.asked'));
  });

  it('asks about a change that can be read in two ways, where it is typed, and keeps the sentence', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLButtonElement>(element, '.asked').click();
    await element.settled;
    await type(find(element, '.change'), '0.20');
    expect(element.state).to.equal('example');
    expect(find<HTMLInputElement>(element, '.change').value).to.equal('0.20');
    const [decimal] = [...root(element).querySelectorAll<HTMLButtonElement>('.problems .button')];
    expect(decimal!.textContent).to.equal('0.20°');
    decimal!.click();
    await element.settled;
    expect(element.problems).to.have.length(0);
    expect(element.answer!.change.value).to.be.closeTo(-0.2, 0.002);
  });

  it('forgets a question about another car', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLButtonElement>(element, '.asked').click();
    await element.settled;
    await type(find(element, '.change'), '2');
    expect(element.problems).to.have.length(1);
    await type(find(element, '.drop'), '25');
    expect(element.problems).to.have.length(0);
    expect(sentenceOf(element)).to.match(/^Lowering 25.mm adds/);
  });

  it('says the most that lowering can add when more is asked for', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLButtonElement>(element, '.asked').click();
    await element.settled;
    await type(find(element, '.change'), '-2');
    expect(element.problems[0]).to.include({ code: 'outside-domain', path: 'change', value: 2 });
    const most = Math.abs(element.answer!.reversal!.change);
    expect(find(element, '.problems').textContent).to.contain(most.toFixed(2));
    expect(element.answer!.drop).to.equal(30);
  });
});

describe('<bumpline-lowering keep-in-address>', () => {
  afterEach(() => setAddress(''));

  const own = {
    version: 1,
    cornerName: 'Front right',
    by: 'driveway',
    provenance: { corner: { by: 'user' } },
    given: { points: {}, camber: -1, measures: { armLength: { value: 352, plusMinus: 3 } } },
    drop: 24,
  } as const;

  it('opens with the car that the address carries', async () => {
    setAddress(`#${carToLink(own)}`);
    const element = await show('<bumpline-lowering keep-in-address drop="30" bump-travel="62"></bumpline-lowering>');
    expect(find(element, '.head b').textContent).to.equal('Front right');
    expect(find(element, '.owner').textContent).to.equal('1 of 6 are yours');
    expect(element.answer!.drop).to.equal(24);
    // The page's bump travel is not that car's.
    expect(element.answer!.bumpLeft).to.equal(undefined);
  });

  it('keeps what is given in the address, for a reload', async () => {
    const element = await show('<bumpline-lowering keep-in-address></bumpline-lowering>');
    await type(find(element, '.drop'), '26');
    await wait(450);
    expect(location.hash).to.match(/^#car=1&drop=26&check=/);
    const again = await show('<bumpline-lowering keep-in-address></bumpline-lowering>');
    expect(again.answer!.drop).to.equal(26);
    // Without the attribute the address is none of its business.
    const other = await show('<bumpline-lowering></bumpline-lowering>');
    expect(other.answer!.drop).to.equal(30);
  });

  it('takes a drop alone as one of the page’s own car', async () => {
    setAddress('');
    const first = await show(`<bumpline-lowering keep-in-address drop="40">${referenceTable}</bumpline-lowering>`);
    const change = first.answer!.change.value;
    await type(find(first, '.drop'), '26');
    await wait(450);
    expect(location.hash).to.contain('drop=26');
    const again = await show(`<bumpline-lowering keep-in-address drop="40">${referenceTable}</bumpline-lowering>`);
    expect(again.answer!.drop).to.equal(26);
    expect(find(again, '.owner').textContent).to.equal('this page’s points');
    await type(find(again, '.drop'), '40');
    expect(again.answer!.change.value).to.be.closeTo(change, 1e-9);
  });

  it('refuses a damaged link politely and shows the example', async () => {
    setAddress(`#${carToLink(own).replace('352', '353')}`);
    const element = await show('<bumpline-lowering keep-in-address></bumpline-lowering>');
    expect(element.state).to.equal('example');
    expect(element.answer!.drop).to.equal(30);
    expect(find(element, '[role=alert]').textContent).to.contain('damaged');
  });

  it('leaves an ordinary anchor alone', async () => {
    setAddress('#why-it-slows');
    const element = await show('<bumpline-lowering keep-in-address></bumpline-lowering>');
    expect(element.state).to.equal('example');
    expect(find(element, '[role=alert]')).to.equal(null);
    expect(location.hash).to.equal('#why-it-slows');
  });
});

describe('<bumpline-lowering> with both sides of an axle', () => {
  it('says how far left and right are apart', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await wait(0);
    await element.settled;
    const open = async (name: string) => {
      [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')]
        .find((row) => row.textContent?.includes(name))!
        .click();
      await wait(0);
      await element.settled;
      return [...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')];
    };
    const [camber] = await open('Static camber');
    await type(camber!, '-0.6');
    find<HTMLDialogElement>(element, 'dialog').close();
    const [drop, there] = await open('The other side');
    await type(drop!, '20');
    await type(there!, '-1.1');
    find<HTMLDialogElement>(element, 'dialog').close();
    await wait(0);
    await element.settled;
    const cells = [...root(element).querySelectorAll('.sides tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent!.trim()),
    );
    const { camberAfter, other } = element.answer!;
    const shown = (camber: number) => `−${Math.abs(camber).toFixed(2)}°`;
    expect(cells).to.deep.equal([
      ['', 'Front left', 'Front right'],
      ['Drop', '30\u202fmm', '20\u202fmm'],
      ['Camber there', shown(camberAfter), shown(other!.camberAfter)],
    ]);
    expect(other!.difference).to.be.closeTo(camberAfter - other!.camberAfter, 1e-12);
    expect(sentenceOf(element)).to.contain(`Left and right differ by ${Math.abs(other!.difference).toFixed(2)}°.`);
  });
});

describe('<bumpline-lowering> on paper', () => {
  it('unfolds its inputs and the ± for printing, and says which corner, when and how', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const inputs = find<HTMLDetailsElement>(element, '.inputs');
    // Changed while it was folded: a measurement, from its dimension in the drawing.
    root(element).querySelector<HTMLButtonElement>('.drawing button')!.click();
    await wait(0);
    await element.settled;
    await type(find(element, 'dialog .fields input'), '352');
    find<HTMLDialogElement>(element, 'dialog').close();
    await wait(0);
    await element.settled;
    dispatchEvent(new Event('beforeprint'));
    await element.updateComplete;
    expect(inputs.open).to.equal(true);
    expect(find(element, '.input-row').checkVisibility()).to.equal(true);
    expect(root(element).querySelectorAll('.input-row')[1]!.textContent).to.contain('352');
    const text = find(element, '.printed').textContent!;
    expect(text)
      .to.contain('Front left')
      .and.to.contain(String(new Date().getFullYear()))
      .and.to.contain('flat in front view')
      .and.to.contain('more than 9° of caster');
    expect(find(element, '.printed').checkVisibility()).to.equal(false);
    dispatchEvent(new Event('afterprint'));
    expect(inputs.open).to.equal(false);
  });
});
