import { expect } from 'chai';
import { speak } from '../../../core/quantity/words.js';
import { ELEMENTS } from './elements.js';
import {
  all,
  clear,
  field,
  find,
  one,
  put,
  read,
  root,
  type Sheet,
  settled,
  textOf,
  type,
  unfold,
  withCar,
} from './stage.js';

/* German as the proof that an element speaks what its page does. What is said is asked of the elements alone, never of records. */

/** Words that stand in every English text of some length and in no German one. */
const ENGLISH =
  /\b(?:the|of|and|with|your|you|is|are|to|from|than|by|no|not|it|that|this|which|at|for|where|one|its)\b/gi;

/** Every text that somebody sees or hears: between tags and in spoken attributes, its own name and the page's words apart. */
function saidBy(element: Sheet): string[] {
  const texts: string[] = [];
  const walk = document.createTreeWalker(root(element), NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT, (node) =>
    (node as Element).matches?.('style, script, .data') ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_ACCEPT,
  );
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    if (node instanceof Text) texts.push(node.data);
    else
      for (const name of ['aria-label', 'aria-description', 'title', 'placeholder', 'alt'])
        texts.push((node as Element).getAttribute(name) ?? '');
  }
  return texts.map((text) => text.replace(/\s+/g, ' ').trim()).filter(Boolean);
}

const englishIn = (texts: readonly string[]): string[] => texts.filter((text) => text.match(ENGLISH) !== null);
const sentence = (element: Sheet) => textOf(find(element, '.sentence'));
/** Figures as they stand in a text, whichever mark they have. */
const figures = (text: string): string[] => (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((one) => one.replace(',', '.'));

describe('an element on a German page', () => {
  const before = document.documentElement.lang;
  beforeEach(() => {
    document.documentElement.lang = 'de';
  });
  afterEach(() => {
    clear();
    document.documentElement.lang = before;
    speak('en');
  });

  for (const record of ELEMENTS) {
    describe(record.tag, () => {
      it('says its sentence in German, with the figures of the English one and a decimal comma', async () => {
        const german = await one(record);
        const said = sentence(german);
        expect(find(german, '.inside')!.lang).to.equal('de');
        expect(englishIn([said])).to.eql([]);
        const english = await one(record, 'language="en"');
        expect(find(english, '.inside')!.lang).to.equal('en');
        expect(figures(said).sort()).to.eql(figures(sentence(english)).sort());
        if (/\d\.\d/.test(sentence(english))) expect(said).to.match(/\d,\d/);
        expect(said).not.to.match(/\d\.\d/);
      });

      it('has no English text in any of its folds, for the example and for a reader’s own car', async () => {
        for (const make of [() => one(record), () => withCar(record, record.own)]) {
          const element = await make();
          await unfold(element);
          expect(englishIn(saidBy(element))).to.eql([]);
        }
      });

      it('takes a number with a comma, and tells in German what is no number', async () => {
        const element = await one(record);
        const [number] = record.numbers;
        await type(element, `${number},0`);
        expect(element.problems).to.eql([]);
        const asked = read(record, element);
        await type(element, 'viel');
        expect(element.problems.length).to.be.greaterThan(0);
        expect(englishIn(all(element, '[role=alert], .problem, .problems').map(textOf))).to.eql([]);
        await type(element, `${number}.0`);
        expect(read(record, element)).to.equal(asked);
      });

      it('speaks English again when it is told so, and German when it no longer is', async () => {
        const element = await one(record);
        const german = sentence(element);
        element.setAttribute('language', 'en');
        await settled(element);
        const english = sentence(element);
        expect(englishIn([english])).to.eql([english]);
        expect(find(element, '.inside')!.lang).to.equal('en');
        element.removeAttribute('language');
        await settled(element);
        expect(sentence(element)).to.equal(german);
      });
    });
  }

  it('keeps its language beside one in English, whoever spoke last', async () => {
    const [german, english] = await put(
      'bumpline-lowering',
      '<bumpline-lowering></bumpline-lowering><bumpline-lowering language="en"></bumpline-lowering>',
    );
    await unfold(german!);
    await unfold(english!);
    for (const drop of ['21', '22']) {
      for (const element of [german!, english!]) await type(element, drop);
      expect(englishIn(saidBy(german!))).to.eql([]);
      expect(englishIn([sentence(english!)])).to.eql([sentence(english!)]);
    }
    expect(field(german!).value).to.equal(field(english!).value);
  });

  it('is English in a language that nobody has written, and says so of an attribute that names none', async () => {
    document.documentElement.lang = 'fr';
    const [lowering] = ELEMENTS.filter(({ tag }) => tag === 'bumpline-lowering');
    const element = await one(lowering!);
    expect(find(element, '.inside')!.lang).to.equal('en');
    expect(sentence(element)).to.match(/\d\.\d/);
    element.setAttribute('language', 'fr');
    await settled(element);
    expect(element.problems.map(({ path }) => path)).to.include('language');
  });

  it('follows the country of a page for its numbers', async () => {
    document.documentElement.lang = 'de-CH';
    const [lowering] = ELEMENTS.filter(({ tag }) => tag === 'bumpline-lowering');
    const element = await one(lowering!);
    expect(englishIn([sentence(element)])).to.eql([]);
    expect(sentence(element)).to.match(/\d\.\d/);
  });
});
