import { emulateMedia, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { type ContractElement, ELEMENTS } from './elements.js';
import { LATE_PARTS } from './late-parts.js';
import { all, clear, find, one, type Sheet, settled, textOf } from './stage.js';

/** What each rests on: the values of a list, readings, or both; and where its figures stand. */
const PAPER: Record<ContractElement['tag'], { rests: string[]; figures: string; pictures: number }> = {
  'bumpline-clearance': { rests: ['.inputs'], figures: '.numbers', pictures: 3 },
  'bumpline-compare': { rests: ['.readings-used'], figures: 'table.compare', pictures: 1 },
  'bumpline-cornering': { rests: ['.inputs'], figures: '.numbers', pictures: 1 },
  'bumpline-geometry': { rests: ['.inputs'], figures: '.numbers', pictures: 12 },
  'bumpline-lowering': { rests: ['.inputs'], figures: '.numbers', pictures: 2 },
  'bumpline-predict': { rests: ['.inputs', '.readings-used'], figures: '.numbers', pictures: 1 },
  'bumpline-readings': { rests: ['.readings-used'], figures: '.numbers', pictures: 2 },
  'bumpline-static-camber': { rests: ['.inputs'], figures: '.numbers', pictures: 0 },
  'bumpline-toe': { rests: ['.inputs'], figures: '.numbers', pictures: 2 },
};

const isShown = (part: Element) =>
  part.checkVisibility({ visibilityProperty: true }) && part.getClientRects().length > 0;
const shown = (element: Sheet, selector: string) => all(element, selector).filter(isShown);

/** Paper takes what stands there when the event is over. */
async function print(element: Sheet): Promise<void> {
  // A4 with its margins, CSS px.
  element.parentElement!.style.width = '680px';
  await settled(element);
  dispatchEvent(new Event('beforeprint'));
  await emulateMedia({ media: 'print' });
  expect(element.isConnected).to.equal(true);
}

async function endPrint(element: Sheet): Promise<void> {
  await emulateMedia({ media: 'screen' });
  dispatchEvent(new Event('afterprint'));
  await settled(element);
}

const folds = (element: Sheet) =>
  all<HTMLDetailsElement>(element, 'details').map(({ className, open }) => [className, open]);

const CONTRACT: Record<string, (record: ContractElement) => Promise<void>> = {
  async 'has what it rests on, its figures, its pictures and its cautions, none of them folded away'(record) {
    const element = await one(record);
    await print(element);
    const { rests, figures, pictures } = PAPER[record.tag];
    expect(shown(element, '.sentence')).to.have.length(1);
    for (const part of rests) {
      const values = shown(element, `${part} :is(.value, td)`).map(textOf);
      expect(values.length, part).to.be.greaterThan(8);
      expect(values.filter((value) => value === '')).to.deep.equal([]);
    }
    expect(shown(element, `${figures} tr`).length, figures).to.be.greaterThan(1);
    expect(shown(element, 'svg[role=img]')).to.have.length(pictures);
    for (const hazard of LATE_PARTS[record.tag].hazards)
      expect(textOf(find(element, 'aside.cautions'))).to.contain(hazard);
    expect(shown(element, '.cautions.first')).to.have.length(1);
  },

  async 'has no button, no slider, no fold that is shut, and nothing to scroll'(record) {
    const element = await one(record);
    await print(element);
    const tools =
      '.button, .text-button, .numbers-copy, .take-along, .head select, textarea, input[type=range], [role=slider]';
    expect(shown(element, tools).map(({ className }) => className)).to.deep.equal([]);
    // What a set of parts is, its title says.
    const shut = shown(element, 'details:not([open]) > summary').filter((one) => !one.closest('.set'));
    expect(shut.map(textOf)).to.deep.equal([]);
    const sheet = find(element, '.sheet')!;
    expect(sheet.scrollWidth).to.be.at.most(sheet.clientWidth);
    const wide = shown(element, 'table').filter((table) => {
      const { right } = table.getBoundingClientRect();
      return right > sheet.getBoundingClientRect().right + 1;
    });
    expect(wide.map(({ className }) => className)).to.deep.equal([]);
  },

  async 'prints light from a dark sheet: text, lines and ground'(record) {
    const element = await one(record, 'theme="dark"');
    await print(element);
    expect(getComputedStyle(element).backgroundColor).to.equal('rgb(255, 255, 255)');
    const light = shown(element, 'p, td, th, summary, li, .value, svg text').filter((part) => {
      const { color, fill } = getComputedStyle(part);
      const [r, g, b] = (part.matches('svg text') ? fill : color).match(/\d+/g)!.map(Number);
      return textOf(part) !== '' && 0.2126 * r! + 0.7152 * g! + 0.0722 * b! > 140;
    });
    expect(light.map((part) => part.outerHTML.slice(0, 80))).to.deep.equal([]);
  },

  async 'is folded again afterwards as it was, with its tables whole'(record) {
    const element = await one(record);
    const [before, tables] = [folds(element), all(element, '.numbers table').length];
    await print(element);
    await endPrint(element);
    expect(folds(element)).to.deep.equal(before);
    for (const details of all<HTMLDetailsElement>(element, '.numbers')) details.open = true;
    await settled(element);
    expect(all(element, '.numbers table')).to.have.length(tables);
  },
};

describe('the paper of every element, as wide as A4', () => {
  before(() => setViewport({ width: 720, height: 900 }));
  afterEach(async () => {
    await emulateMedia({ media: 'screen' });
    dispatchEvent(new Event('afterprint'));
    clear();
  });

  for (const record of ELEMENTS) {
    describe(`<${record.tag}>`, () => {
      for (const [contract, check] of Object.entries(CONTRACT)) it(contract, () => check(record));
    });
  }
});
