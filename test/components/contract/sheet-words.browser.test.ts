import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { ELEMENTS } from './elements.js';
import { all, clear, find, one, type Sheet, settled, textOf, unfold, until } from './stage.js';

/** What a program calls things: nobody else does. */
const INTERNAL = /\b[a-z]+[A-Z]\w*\.|\b[a-zA-Z]+\.[a-zA-Z]+\b(?=:| is\b)|\bNaN\b|\bundefined\b/;

/** No number, too much, nothing but a sign, emptied. */
const NONSENSE = ['xyz', '99999', '-', ''] as const;
/** One dialog stands in many elements, and is the same code in each: it is visited in so many of them. */
const ENOUGH = 2;
const seen = new Map<string, number>();

const TABLES: readonly string[] = ['bumpline-readings', 'bumpline-compare'];

/** Rows of all there is to ask of a turn. */
const TURN = {
  wanted: -0.5,
  rollFrom: 'load',
  marks: { outer: 20 },
  photo: 3,
  load: { lateral: 0.8, sprungMass: 700, centreHeight: 520, springRate: 28 },
} as const;

function enter(input: HTMLInputElement, text: string): void {
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.dispatchEvent(new Event('change', { bubbles: true }));
  input.blur();
}

/** As a reader sees it: of fields and styles nothing. */
const shown = (element: Sheet): string =>
  [...element.shadowRoot!.children]
    .filter(({ localName }) => localName !== 'style')
    .map(textOf)
    .join(' ');

/** Every row that opens a dialog; a dialog is told by its title. */
async function eachSheet(
  element: Sheet,
  visit: (inputs: HTMLInputElement[], title: string) => Promise<void>,
): Promise<number> {
  const rows = () => all<HTMLButtonElement>(element, 'button.input-row');
  const count = rows().length;
  let visited = 0;
  for (let i = 0; i < count; i++) {
    const row = rows()[i];
    if (!row) continue;
    const { key = String(i) } = row.dataset;
    const times = seen.get(key) ?? 0;
    visited++;
    if (times >= ENOUGH) continue;
    seen.set(key, times + 1);
    row.click();
    await element.updateComplete;
    await settled(element);
    const dialog = find<HTMLDialogElement>(element, 'dialog[aria-labelledby=sheet-title]');
    if (!dialog?.open) {
      visited--;
      continue;
    }
    const inputs = all<HTMLInputElement>(element, 'dialog[open] .fields input, dialog[open] .figure input');
    await visit(inputs, textOf(dialog.querySelector('h2')));
    dialog.close();
    await settled(element);
  }
  return visited;
}

describe('the words of every dialog', () => {
  afterEach(clear);

  for (const record of ELEMENTS) {
    it(`<${record.tag}> names no figure as the program does, whatever is typed`, async function () {
      this.timeout(180_000);
      const element = await one(record);
      element.car = new CarModel({ ...record.own, turn: { ...TURN, ...record.own.turn } });
      await settled(element);
      await unfold(element);
      await until('late parts', () => !find(element, '.least-cost') || find(element, '.least-cost .wanted'));
      await unfold(element);
      const wrong: string[] = [];
      let turn = 0;
      const visited = await eachSheet(element, async (inputs, title) => {
        // One of each kind across the fields; the next dialog begins with another.
        inputs.forEach((input, k) => {
          enter(input, NONSENSE[(k + turn) % NONSENSE.length]!);
        });
        turn++;
        await settled(element);
        const found = INTERNAL.exec(shown(element));
        if (found) wrong.push(`${title}: ${found.input.slice(Math.max(0, found.index - 30), found.index + 60)}`);
      });
      expect(wrong).to.deep.equal([]);
      // Readings are entered in a table, and setups are compared by theirs.
      if (!TABLES.includes(record.tag)) expect(visited).to.be.greaterThan(5);
    });
  }
});
