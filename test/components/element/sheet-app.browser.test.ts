import { expect } from 'chai';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { carToLink } from '../../../core/document/link.js';
import { find, root, sentenceOf, type, wait } from '../bumpline-lowering/set-up.js';
import { LATE_PARTS } from '../contract/late-parts.js';

const start = location.href.replace(/#.*$/, '');
let place: HTMLElement | undefined;

async function put(markup: string): Promise<BumplineLowering> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = markup;
  document.body.append(place);
  // What all of them have is what is looked at.
  const element = place.querySelector(':scope > *') as BumplineLowering;
  await element.settled;
  return element;
}

const press = (on: Element, init: KeyboardEventInit): boolean =>
  on.dispatchEvent(new KeyboardEvent('keydown', { bubbles: true, composed: true, cancelable: true, ...init }));

const told = (element: Element): string =>
  [...root(element).querySelectorAll('.queries, .problems')].map(({ textContent }) => textContent).join(' ');

afterEach(() => {
  history.replaceState(null, '', start);
  place?.remove();
});

/** What can be typed into the first number of a sentence: a number, and a text that can be read in two ways. */
const TYPED = {
  length: {
    number: '3',
    ambiguous: '1,200',
    both: /1\.2.mm or 1.?200.mm/,
    first: /^1\.2\d?\d?.mm/,
    taken: /1\.2\d*.mm/,
  },
  // Decimal degrees, or degrees and minutes.
  angle: { number: '2', ambiguous: '1.30', both: /1\.30° or 1°30′/, first: /^1\.30°/, taken: /1\.3°/ },
};

for (const [name, row] of Object.entries(LATE_PARTS)) {
  const typed = TYPED['asks' in row ? row.asks : 'length'];
  describe(`<${name}>, as every sheet`, () => {
    const input = (element: Element) => find<HTMLInputElement>(element, '.sentence input');

    it('leaves the page’s own words where they stand until the answer takes their place', async () => {
      place = document.createElement('main');
      place.innerHTML = `<${name}><p>A word of the author’s.</p></${name}>`;
      document.body.append(place);
      const element = place.firstElementChild as BumplineLowering;
      const words = element.querySelector('p')!;
      const tops = new Set<number>();
      for (;;) {
        // As a frame is about to paint it.
        await new Promise(requestAnimationFrame);
        if (find(element, '.sentence')) break;
        tops.add(words.getBoundingClientRect().top - place.getBoundingClientRect().top);
      }
      expect(element.answer, 'a sentence without an answer').not.to.equal(undefined);
      await element.settled;
      expect(tops.size, [...tops].join()).to.be.at.most(1);
      expect(words.assignedSlot).to.equal(null);
      expect(find(element, '.sentence').textContent).to.match(/\d/);
    });

    it('tells of a damaged link beside what else is wrong, and hides neither', async () => {
      history.replaceState(null, '', `${start}#car=1&drop=3&check=0`);
      const element = await put(`<${name} keep-in-address></${name}>`);
      await type(input(element), '3o');
      expect(told(element)).to.contain('damaged').and.to.contain('3o');
    });

    it('never has a text that cannot be read in one sentence with the answer to another', async () => {
      const element = await put(`<${name}></${name}>`);
      const before = find(element, '.says').textContent!.trim();
      await type(input(element), typed.ambiguous);
      expect(find(element, '.says').textContent).to.match(/no answer yet/);
      expect(find(element, '.before').textContent).to.contain(before);
      expect(find(element, '#problems').textContent).to.match(typed.both);
    });

    it('takes back a text that cannot be read by Ctrl+Z, and leaves what is being typed to the browser', async () => {
      const element = await put(`<${name}></${name}>`);
      const before = input(element).value;
      await type(input(element), typed.number, false);
      expect(press(input(element), { key: 'z', ctrlKey: true }), 'while it is typed').to.equal(true);
      await type(input(element), '3o');
      expect(press(input(element), { key: 'z', ctrlKey: true }), 'once it was left').to.equal(false);
      await element.settled;
      expect(input(element).value.replace(new RegExp(`^${typed.number}\\D.*`), before)).to.equal(before);
      expect(element.problems).to.deep.equal([]);
    });

    it('asks of a text that can be read in two ways which one is meant, where it is told', async () => {
      const element = await put(`<${name}></${name}>`);
      await type(input(element), typed.ambiguous);
      const choices = [...root(element).querySelectorAll<HTMLButtonElement>('#problems .choices button')];
      expect(choices.map(({ textContent }) => textContent!.trim())[0]).to.match(typed.first);
      choices[0]!.click();
      await element.settled;
      expect(sentenceOf(element)).to.match(typed.taken);
      expect(element.problems).to.deep.equal([]);
    });

    it('keeps its place in the page’s address with another’s drop, without a word of it', async () => {
      history.replaceState(null, '', `${start}#${carToLink({ ...EMPTY_CAR, drop: 18 })}`);
      const element = await put(`<${name} keep-in-address></${name}>`);
      expect(told(element)).to.equal('');
      expect(element.state).to.equal('example');
    });
  });
}

for (const name of ['bumpline-lowering', 'bumpline-clearance']) {
  it(`<${name}> tells each thing that is wrong with one attribute`, async () => {
    const element = await put(`<${name} limits="stop-gap 22; spring-rate 30; tyre 5"></${name}>`);
    const wrong = element.problems.filter(({ path }) => path === 'limits').map(({ value }) => value);
    expect(wrong).to.deep.equal(['spring-rate 30', 'tyre 5']);
    expect(told(element)).to.contain('spring-rate 30').and.to.contain('tyre 5');
  });
}

it('<bumpline-compare> takes a number back by Ctrl+Z where the focus is in no field, and on again with Shift', async () => {
  const element = await put('<bumpline-compare></bumpline-compare>');
  const over = find<HTMLInputElement>(element, '.sentence input');
  const before = over.value;
  await type(over, '30');
  expect(over.value).to.match(/^30/);
  const slider = find<HTMLInputElement>(element, 'input[type=range]');
  expect(press(slider, { key: 'z', ctrlKey: true })).to.equal(false);
  await wait(0);
  await element.settled;
  expect(over.value).to.equal(before);
  press(slider, { key: 'Z', metaKey: true, shiftKey: true });
  await wait(0);
  await element.settled;
  expect(over.value).to.match(/^30/);
});
