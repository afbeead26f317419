import { expect } from 'chai';
import '../../../components/define.js';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import { OTHER_SHEETS, POINT_SHEETS, sheetOf } from '../../../components/inputs/car-sheets.js';
import { DRIVEWAY_SHEETS } from '../../../components/inputs/driveway-sheets.js';
import { LIMIT_SHEETS, LOAD_SHEETS } from '../../../components/inputs/limit-sheets.js';
import type { SheetSpec } from '../../../components/inputs/sheet-spec.js';
import { QUANTITIES } from '../../../core/quantity/quantities.js';
import { find, root, show, type, wait } from '../bumpline-lowering/set-up.js';

const SHEETS: readonly SheetSpec[] = [
  ...DRIVEWAY_SHEETS,
  ...POINT_SHEETS,
  ...OTHER_SHEETS,
  ...LIMIT_SHEETS,
  ...LOAD_SHEETS,
  sheetOf('stopGap')!,
];

/** Opens the sheet of a row in the lists, by its title. */
async function open(element: Element, title: string): Promise<HTMLInputElement[]> {
  for (const list of root(element).querySelectorAll('details')) list.open = true;
  await wait(0);
  await (element as BumplineClearance).settled;
  const row = [...root(element).querySelectorAll<HTMLElement>('.input-row')].find((one) =>
    one.querySelector('.name')!.textContent!.startsWith(title),
  );
  if (!row) return [];
  row.click();
  await wait(0);
  await (element as BumplineClearance).settled;
  return [...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')];
}

const unitOf = (input: HTMLInputElement) => input.closest('.entry-box')!.querySelector('.unit')!.textContent!.trim();

describe('every field of every sheet', () => {
  for (const angles of ['degrees', 'arcminutes'] as const) {
    it(`shows its own unit and the keys that it is written with, angles in ${angles}`, async () => {
      const element = await show(`<bumpline-lowering angles=${angles}></bumpline-lowering>`);
      let seen = 0;
      for (const sheet of SHEETS) {
        const inputs = await open(element, sheet.title);
        inputs.forEach((input, i) => {
          seen++;
          const { quantity, path } = sheet.fields[i]!;
          const { dimension, unit } = QUANTITIES[quantity];
          const isMinutes = dimension === 'angle' && angles === 'arcminutes';
          const shown = { plain: unit, length: 'mm', angle: isMinutes ? '° ′' : '°', angleRate: '' }[dimension];
          expect(unitOf(input), path).to.equal(shown);
          expect(input.inputMode, path).to.equal(isMinutes ? 'text' : 'decimal');
        });
        find<HTMLDialogElement>(element, 'dialog').close();
        await wait(0);
      }
      expect(seen).to.be.greaterThan(20);
    });
  }

  it('a share has no marks of degrees; while nobody gives it, it is the largest part of the ±, and given it is none', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    const given = async (title: string, text: string) => {
      const [input] = await open(element, title);
      await type(input!, text);
      await element.settled;
      return input!;
    };
    await given('Gap to the bump stop', '42');
    await given('Length of the bump stop', '50');
    const solid = () => element.answer!.budget!.bump.solid!;
    expect(solid().contributions!.map(({ id }) => id)).to.deep.equal(['stopUsable', 'stopGap']);
    expect(find(element, '.sentence').textContent).to.match(
      /leaves\s+\d+\s+±\s9\smm\s+of bump|leaves\s+\d+\s+±\s10\smm\s+of bump/,
    );
    expect(find(element, '.travel').textContent).to.match(/the share of the bump stop that gives, assumed 9\d\s%/);
    const share = await given('How far the stop gives', '0.6');
    expect(unitOf(share)).to.equal('');
    expect(share.inputMode).to.equal('decimal');
    expect(solid().contributions!.map(({ id }) => id)).to.deep.equal(['stopGap']);
    expect(find(element, '.travel').textContent).not.to.contain('assumed');
  });

  it('where a tyre’s whole size may be typed, the keyboard has letters', async () => {
    const place = document.createElement('main');
    place.innerHTML = '<bumpline-clearance></bumpline-clearance>';
    document.body.append(place);
    const element = place.querySelector('bumpline-clearance') as BumplineClearance;
    await element.settled;
    const [width, aspect] = await open(element, 'New wheel');
    expect(width!.inputMode).to.equal('text');
    expect(aspect!.inputMode).to.equal('decimal');
    place.remove();
  });
});
