import { expect } from 'chai';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import type { BumplineCompare } from '../../../components/bumpline-compare/bumpline-compare.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { LATE_PARTS } from '../contract/late-parts.js';

type Sheet = BumplineLowering & BumplineReadings & BumplineCompare & BumplineClearance;

const ELEMENTS = Object.keys(LATE_PARTS);
/** What each attribute takes. */
const ENUMERATED = { units: ['mm', 'in'], angles: ['degrees', 'arcminutes'], theme: ['light', 'dark'] } as const;

let place: HTMLElement | undefined;
const warned: string[] = [];
const { warn } = console;

async function put(markup: string): Promise<Sheet> {
  place?.remove();
  warned.length = 0;
  console.warn = (...words: unknown[]) => void warned.push(String(words[0]));
  try {
    place = document.createElement('main');
    place.style.width = '360px';
    place.innerHTML = markup;
    document.body.append(place);
    const element = place.querySelector<Sheet>(ELEMENTS.join(', '))!;
    await element.settled;
    await wait(0);
    element.requestUpdate();
    await element.settled;
    return element;
  } finally {
    console.warn = warn;
  }
}

describe('an attribute that takes one of a few words', () => {
  for (const name of ELEMENTS) {
    for (const [attribute, names] of Object.entries(ENUMERATED)) {
      for (const value of ['inch', 'blue', names[1]!.toUpperCase()]) {
        it(`<${name} ${attribute}="${value}">: told once in the console, and beside the answer, which stands`, async () => {
          const element = await put(`<${name} ${attribute}="${value}"></${name}>`);
          expect(element.problems).to.deep.include({ code: 'unknown-name', path: attribute, value, names });
          expect(warned.filter((text) => text.includes(`${attribute}="${value}"`))).to.have.length(1);
          expect(warned[0]).to.contain(names.join(' or '));
          expect(element.state).to.equal('example');
          const line = find(element, '.attributes');
          expect(line.textContent!.replace(/\s+/g, ' ').trim()).to.equal(
            `${attribute}: “${value}” is not understood. Use ${names.join(' or ')}.`,
          );
          // Quiet: it interrupts nobody's reading.
          expect(line.closest('[role=alert]')).to.equal(null);
        });
      }
    }

    it(`<${name}>: says nothing of what is understood, left out or empty`, async () => {
      for (const attributes of [
        '',
        'units angles theme',
        'units="in" angles="arcminutes" theme="dark"',
        'units="mm" angles="degrees" theme="light" keep-in-address',
      ]) {
        const element = await put(`<${name} ${attributes}></${name}>`);
        expect(element.problems, attributes).to.deep.equal([]);
        expect(warned, attributes).to.deep.equal([]);
      }
    });

    it(`<${name} keep-in-address="false">: is on all the same, and told`, async () => {
      const element = await put(`<${name} keep-in-address="false"></${name}>`);
      expect(element.problems.map(({ path }) => path)).to.deep.equal(['keep-in-address']);
      expect(warned).to.have.length(1);
      const inside = await put(`<bumpline-car keep-in-address="false"><${name}></${name}></bumpline-car>`);
      expect(inside.problems.map(({ path }) => path)).to.deep.equal(['keep-in-address']);
    });

    it(`<${name} car-id>: of a car that nobody has, told until somebody has it`, async () => {
      const element = await put(`<${name} car-id="shared"></${name}>`);
      expect(element.problems.map(({ path, value }) => [path, value])).to.deep.equal([['car-id', 'shared']]);
      place!.insertAdjacentHTML('beforeend', '<bumpline-car id="shared"></bumpline-car>');
      await wait(20);
      await element.settled;
      expect(element.problems).to.deep.equal([]);
    });
  }

  it('is told no more once a reader has chosen', async () => {
    const element = await put('<bumpline-lowering units="inch"></bumpline-lowering>');
    const select = root(element).querySelector<HTMLSelectElement>('select[aria-label="Lengths in"]')!;
    select.value = 'in';
    select.dispatchEvent(new Event('change'));
    await element.settled;
    expect(element.problems).to.deep.equal([]);
    expect(root(element).querySelector('.attributes')).to.equal(null);
  });

  it('of which the answer rests on is a problem: what a gauge read', async () => {
    const table =
      '<table><tr><td>-20</td><td>0.1</td></tr><tr><td>0</td><td>-0.2</td></tr><tr><td>20</td><td>-0.4</td></tr></table>';
    const element = await put(`<bumpline-readings quantity="tow">${table}</bumpline-readings>`);
    expect(element.state).to.equal('problem');
    expect(element.problems).to.deep.include({
      code: 'unknown-name',
      path: 'quantity',
      value: 'tow',
      names: ['camber', 'toe'],
    });
    expect(
      (await put(`<bumpline-readings quantity="toe" degree="auto">${table}</bumpline-readings>`)).answer,
    ).to.have.property('quantity', 'toe');
  });
});

/** The same length in every unit that a cell takes. */
const THIRTY_MM = [
  '30',
  '30 mm',
  '3 cm',
  '3cm',
  '1.1811023622 in',
  '1.1811023622 inch',
  '1.1811023622 inches',
  '1.1811023622"',
  '30mm',
  '30 MM',
];
const SIX_MM = ['6', '0.6 cm', '0.2362204724 in', '0.2362204724″'];

describe('a length in an attribute takes every unit that a cell takes', () => {
  const quoted = (text: string) => text.replaceAll('"', '&quot;');
  for (const text of THIRTY_MM) {
    it(`${text} is 30 mm`, async () => {
      const is30 = (mm: number | undefined) => expect(mm).to.be.closeTo(30, 1e-6);
      const lowering = await put(
        `<bumpline-lowering drop="${quoted(text)}" bump-travel="${quoted(text)}" drop-plus-minus="${quoted(text)}"></bumpline-lowering>`,
      );
      expect(lowering.problems).to.deep.equal([]);
      is30(lowering.answer!.drop);
      expect(lowering.answer!.bumpLeft).to.be.closeTo(0, 1e-6);
      is30((await put(`<bumpline-readings over="${quoted(text)}"></bumpline-readings>`)).answer!.over);
      const compare = await put(
        `<bumpline-compare over="${quoted(text)}" heights="0, ${quoted(text)}"></bumpline-compare>`,
      );
      expect(compare.problems).to.deep.equal([]);
      const clearance = await put(
        `<bumpline-clearance drop="${quoted(text)}" wheel-before="205/55R16, 6.5, ${quoted(text)}" wheel-after="205/55R16, 6.5, 45" limits="stop-gap ${quoted(text)}; stop-length 50 mm; stop-usable 0.5; motion-ratio 1"></bumpline-clearance>`,
      );
      expect(clearance.problems).to.deep.equal([]);
      is30(clearance.answer!.drop);
      is30(clearance.answer!.budget.bump.touch!.travel);
      // The other wheel’s offset is 45 mm.
      expect(clearance.answer!.wheels.plane).to.be.closeTo(30 - 45, 1e-6);
    });
  }

  for (const text of SIX_MM) {
    it(`a spacer of ${text} is 6 mm`, async () => {
      const element = await put(
        `<bumpline-clearance wheel-before="205/55R16, 6.5J, ET45" wheel-after="205/55R16, 16.51 cm, 45 mm, ${quoted(text)}"></bumpline-clearance>`,
      );
      expect(element.problems).to.deep.equal([]);
      expect(element.answer!.wheels.plane).to.be.closeTo(6, 1e-6);
    });
  }

  for (const text of ['33', '33°', '33 deg', '33°0′', '1980′']) {
    it(`a lock of ${text} is 33°`, async () => {
      const element = await put(`<bumpline-clearance lock="${text}"></bumpline-clearance>`);
      expect(element.problems).to.deep.equal([]);
      expect(element.answer!.isSteered).to.equal(true);
    });
  }

  it('and the ends of a domain, and the attributes of a table', async () => {
    const curve = await put(
      '<bumpline-lowering coefficients="-0.5 -0.0136" domain="-6 cm; 80 mm"></bumpline-lowering>',
    );
    expect(curve.answer!.curve.domain[0]).to.be.closeTo(-60, 1e-9);
    const rows =
      '<tr><th>Hub to arch (mm)</th><th>Camber</th></tr><tr><td>380</td><td>0.1</td></tr><tr><td>360</td><td>-0.4</td></tr><tr><td>340</td><td>-0.9</td></tr>';
    const table = await put(
      `<bumpline-readings over="10"><table data-zero="36.5 cm">${rows}</table></bumpline-readings>`,
    );
    expect(table.problems).to.deep.equal([]);
  });

  for (const [markup, path] of [
    ['<bumpline-lowering drop="3 ft"></bumpline-lowering>', 'drop'],
    ['<bumpline-lowering bump-travel="3 ft"></bumpline-lowering>', 'bumpTravel'],
    ['<bumpline-lowering drop-plus-minus="2 thou"></bumpline-lowering>', 'dropPlusMinus'],
    ['<bumpline-lowering limits="stop-gap 1 ft"></bumpline-lowering>', 'limits.stopGap'],
    ['<bumpline-readings over="1 ft"></bumpline-readings>', 'over'],
    ['<bumpline-compare over="1 ft"></bumpline-compare>', 'over'],
    ['<bumpline-compare heights="0, 1 ft"></bumpline-compare>', 'heights.1'],
    ['<bumpline-clearance wheel-after="205/55R16, 6.5, 1 ft"></bumpline-clearance>', 'after.offset'],
  ] as const) {
    it(`another unit is a problem that names it: ${markup}`, async () => {
      const element = await put(markup);
      expect(element.state).to.equal('problem');
      expect(element.problems.find((problem) => problem.path === path)?.code).to.equal('wrong-unit');
    });
  }
});
