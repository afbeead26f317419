import 'axe-core';
import { expect } from 'chai';
import type { SHOWN, Shown } from '../../../components/element/shown.js';
import { ELEMENTS } from './elements.js';
import {
  all,
  charted,
  clear,
  field,
  find,
  one,
  press,
  read,
  root,
  type Sheet,
  settled,
  textOf,
  type,
} from './stage.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;

/* What an author may have shown of an element: the sentence with its caution always, of the rest what was asked for. */

/** What each has besides its sentence. */
const HAS: Record<string, readonly Shown[]> = {
  'bumpline-clearance': ['drawing', 'chart', 'table'],
  'bumpline-compare': ['chart', 'table'],
  'bumpline-cornering': ['drawing', 'chart', 'table'],
  'bumpline-geometry': ['drawing', 'chart', 'table'],
  'bumpline-lowering': ['drawing', 'chart', 'table'],
  'bumpline-predict': ['chart', 'table'],
  'bumpline-readings': ['chart', 'table'],
  'bumpline-static-camber': ['table'],
  'bumpline-toe': ['drawing', 'chart', 'table'],
} satisfies Record<string, readonly Exclude<(typeof SHOWN)[number], 'sentence'>[]>;

/** Every set of the parts that an element has. */
function setsOf(parts: readonly Shown[]): Shown[][] {
  const sets: Shown[][] = [[]];
  for (const part of parts) sets.push(...sets.map((set) => [...set, part]));
  return sets;
}

const PICTURE: Record<Shown, string> = {
  sentence: '.sentence',
  drawing: '[part~=drawing]',
  chart: '[part~=chart]',
  table: '[part~=table]',
};

const isSeen = (element: Sheet, selector: string): boolean =>
  all(element, selector).some((part) => part.checkVisibility() && part.getBoundingClientRect().height > 10);

describe('the parts of an element that an author shows', () => {
  afterEach(clear);

  for (const record of ELEMENTS) {
    const { tag, page } = record;
    const has = HAS[tag]!;

    it(`<${tag}>: the class says which it has`, async () => {
      const element = await one(record);
      const { shows } = element.constructor as unknown as { shows: readonly Shown[] };
      expect([...shows]).to.deep.equal(['sentence', ...has]);
    });

    for (const set of setsOf(has)) {
      const show = ['sentence', ...set].join(' ');
      it(`<${tag} show="${show}">: shows these and no others, with the number and the cautions of the whole`, async () => {
        const whole = await one(record, page.attributes, page.inside);
        const [number, sentence] = [read(record, whole), textOf(find(whole, '.sentence'))];
        // In another order: it is one set.
        const words = ['sentence', ...[...set].reverse()].reverse().join(' ');
        const element = await one(record, `show="${words}" ${page.attributes ?? ''}`, page.inside);
        await charted(element);
        expect(element.problems).to.deep.equal([]);
        expect(element.state).to.equal(page.state);
        expect(read(record, element)).to.equal(number);
        expect(textOf(find(element, '.sentence'))).to.equal(sentence);
        for (const part of has) expect(isSeen(element, PICTURE[part]), part).to.equal(set.includes(part));
        // The number in the sentence, and nothing else that asks.
        const asking = all<HTMLInputElement>(element, 'input, textarea').filter(
          (input) => input.checkVisibility() && !input.closest('.sentence, [part~=drawing], [part~=table], .compact'),
        );
        expect(asking).to.deep.equal([]);
        expect(isSeen(element, '.cautions.first')).to.equal(true);
        const fold = find<HTMLDetailsElement>(element, 'aside.cautions details')!;
        expect(fold.open).to.equal(false);
        expect(fold.querySelectorAll('li').length).to.be.greaterThan(2);
      });
    }

    it(`<${tag} show="sentence">: a number typed into it is answered as in the whole, and can be taken back`, async () => {
      const [first, second] = record.numbers;
      const whole = await one(record);
      await type(whole, first);
      const expected = read(record, whole);
      const element = await one(record, 'show="sentence"');
      const before = read(record, element);
      await type(element, first);
      expect(read(record, element)).to.equal(expected);
      await type(element, second);
      await press(element, '.undo');
      expect(read(record, element)).to.equal(expected);
      await press(element, '.undo');
      expect(read(record, element)).to.equal(before);
    });

    it(`<${tag} show="sentence">: what cannot be read is told, and stays in its field`, async () => {
      const element = await one(record, 'show="sentence"');
      await type(element, 'nonsense');
      expect(field(element).value).to.equal('nonsense');
      expect(textOf(find(element, '#problems'))).to.contain('nonsense');
    });

    it(`<${tag} show="sentence">: a press shows the whole with what was typed, and a keyboard goes on at the sentence`, async () => {
      const element = await one(record, 'show="sentence"');
      await type(element, record.numbers[0]);
      const number = read(record, element);
      find(element, '.whole')!.focus();
      await press(element, '.whole');
      expect(find(element, '.whole')).to.equal(null);
      expect(find(element, '.body')).not.to.equal(null);
      expect(read(record, element)).to.equal(number);
      expect(find(element, 'aside.cautions details')).to.equal(null);
      expect(root(element).activeElement?.closest('.sentence')).not.to.equal(null);
    });

    it(`<${tag} show="${['sentence', ...has].join(' ')}">: has no fault that axe finds`, async () => {
      const element = await one(record, `show="${['sentence', ...has].join(' ')}"`);
      await charted(element);
      const { violations } = await axe.run(element, { rules: { region: { enabled: false } } });
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).to.deep.equal([]);
    });
  }

  it('a word that is not understood is told, and the rest is shown', async () => {
    const record = ELEMENTS.find(({ tag }) => tag === 'bumpline-lowering')!;
    const element = await one(record, 'show="sentence, Chart drawng"');
    await charted(element);
    expect(element.problems.map(({ path }) => path)).to.deep.equal(['show']);
    expect(textOf(find(element, '.attributes'))).to.contain('drawng');
    expect(isSeen(element, PICTURE.chart)).to.equal(true);
    expect(isSeen(element, PICTURE.drawing)).to.equal(false);
  });

  it('with no word that is understood the whole is shown', async () => {
    const record = ELEMENTS.find(({ tag }) => tag === 'bumpline-readings')!;
    const element = await one(record, 'show="drawn"');
    expect(find(element, '.compact')).to.equal(null);
    expect(find(element, '.body')).not.to.equal(null);
  });

  it('what is shown can be changed later, there and back', async () => {
    const record = ELEMENTS.find(({ tag }) => tag === 'bumpline-lowering')!;
    const element = await one(record, 'show="sentence drawing"');
    for (const [show, drawing, chart] of [
      ['sentence chart', false, true],
      ['sentence drawing chart', true, true],
      [null, true, true],
      ['sentence drawing', true, false],
    ] as const) {
      if (show === null) element.removeAttribute('show');
      else element.setAttribute('show', show);
      await settled(element);
      await charted(element);
      expect(all(element, '.drawing svg').length > 0, `${show}: drawing`).to.equal(drawing);
      expect(isSeen(element, PICTURE.chart), `${show}: chart`).to.equal(chart);
    }
  });

  it('printed, the cautions of a part stand open', async () => {
    const record = ELEMENTS.find(({ tag }) => tag === 'bumpline-lowering')!;
    const element = await one(record, 'show="sentence"');
    dispatchEvent(new Event('beforeprint'));
    expect(find<HTMLDetailsElement>(element, 'aside.cautions details')!.open).to.equal(true);
    dispatchEvent(new Event('afterprint'));
    expect(find<HTMLDetailsElement>(element, 'aside.cautions details')!.open).to.equal(false);
  });
});
