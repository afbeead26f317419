import 'axe-core';
import { emulateMedia, executeServerCommand, sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { CarModel } from '../../../components/car/car-model.js';
import { FIRST_CAUTIONS } from '../../../components/element/first-cautions.js';
import { carToLink } from '../../../core/document/link.js';
import { meddle } from './cores.js';
import { type ContractElement, ELEMENTS } from './elements.js';
import { LATE_PARTS } from './late-parts.js';
import {
  all,
  clear,
  field,
  find,
  one,
  press,
  put,
  read,
  root,
  type Sheet,
  setAddress,
  settled,
  textOf,
  type,
  unfold,
  wait,
  withCar,
} from './stage.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;
async function violations(element: Element, rules?: string[]): Promise<string[]> {
  const found = await axe.run(element, {
    ...(rules && { runOnly: rules }),
    rules: { region: { enabled: false } },
  });
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

const sentence = (element: Element) => textOf(find(element, '.sentence'));
const modelOf = (element: Sheet) => (element as unknown as { app: { model: CarModel } }).app.model;
const isShown = (element: Element, selector: string) => find(element, selector)?.checkVisibility() === true;
const CONTROLS = 'button, summary, select, input, textarea, [role=button], [role=slider]';

/** As assistive technology names it, the ways that our controls are named. */
function nameOf(control: HTMLElement): string {
  const inside = control.getRootNode() as ShadowRoot;
  const ids = (control.getAttribute('aria-labelledby') ?? '').split(/\s+/).filter(Boolean);
  const labels = [...((control as HTMLInputElement).labels ?? [])];
  return [
    control.getAttribute('aria-label') ?? '',
    ...ids.map((id) => textOf(inside.getElementById(id))),
    ...labels.map(textOf),
    control.matches('button, summary, [role=button]') ? textOf(control) : '',
  ]
    .join(' ')
    .trim();
}

/** What a host page's styles would hand down. */
const INHERITED = `font: italic 300 10px/3 cursive; letter-spacing: 0.3em; word-spacing: 1em; text-align: right; text-indent: 3em;
  text-shadow: 1px 1px 2px red; text-transform: uppercase; white-space: pre; color: lime; hyphens: auto; cursor: wait;
  list-style: square inside; border-collapse: separate; quotes: none; font-variant: small-caps; visibility: inherit`;
const HANDED_DOWN = [
  'font-style',
  'font-weight',
  'font-size',
  'line-height',
  'letter-spacing',
  'word-spacing',
  'text-align',
  'text-indent',
  'text-shadow',
  'text-transform',
  'white-space',
  'color',
  'hyphens',
  'font-variant-caps',
  'direction',
] as const;
const stylesOf = (element: Element, selector = '.sentence') => {
  const style = getComputedStyle(find(element, selector)!);
  return Object.fromEntries(HANDED_DOWN.map((name) => [name, style.getPropertyValue(name)]));
};

const CONTRACT: Record<string, (record: ContractElement) => Promise<void>> = {
  async 'a damaged link is told, and the example stands'(record) {
    setAddress('#car=1&drop=3&check=0');
    const { tag } = record;
    for (const markup of [
      `<${tag} keep-in-address></${tag}>`,
      `<bumpline-car keep-in-address><${tag}></${tag}></bumpline-car>`,
    ]) {
      const [element] = await put(tag, markup);
      expect(element!.state).to.equal('example');
      expect(textOf(find(element!, '.queries, .problems'))).to.match(/\blink\b/i);
    }
  },

  async 'a committed value is undone and redone'(record) {
    const element = await one(record);
    const before = read(record, element);
    await type(element, record.numbers[0]);
    const after = read(record, element);
    expect(after).not.to.equal(before);
    await press(element, '.undo');
    expect(read(record, element)).to.equal(before);
    expect(element.state).to.equal('example');
    await press(element, '.redo');
    expect(read(record, element)).to.equal(after);
  },

  async 'an unread text is undone by itself, and no number goes with it'(record) {
    const element = await one(record);
    await type(element, record.numbers[0]);
    const after = read(record, element);
    await type(element, 'abc');
    expect(element.state).to.equal('stale');
    expect(textOf(find(element, '.undo'))).to.contain('“abc”');
    await press(element, '.undo');
    expect(element.state).to.be.oneOf(['example', 'incomplete']);
    expect(field(element).value).to.match(new RegExp(`^${record.numbers[0]}`));
    expect(read(record, element)).to.equal(after);
  },

  async 'a text that cannot be read stays in its field, is told, and the older answer is marked as one'(record) {
    const element = await one(record);
    await type(element, 'abc');
    expect(element.state).to.equal('stale');
    expect(field(element).value).to.equal('abc');
    expect(field(element).getAttribute('aria-invalid')).to.equal('true');
    expect(textOf(find(element, '#problems'))).to.contain('“abc”');
    expect(element.problems).to.have.length(1);
    expect(sentence(element)).to.match(/Before:|Last answer:/);
    expect(isShown(element, '.cautions.first')).to.equal(true);
    await type(element, record.numbers[0]);
    expect(element.state).to.be.oneOf(['example', 'incomplete']);
    expect(element.problems).to.deep.equal([]);
  },

  async 'a fault of the core is owned up to, and trying again brings the answer'(record) {
    meddle.reply = { ok: false, fault: 'broken on purpose' };
    const element = await one(record, record.page.attributes, record.page.inside);
    expect(element.state).to.equal('fault');
    expect(textOf(find(element, '#problems'))).to.contain('broken on purpose');
    expect(sentence(element)).not.to.match(/\d\.\d/);
    meddle.reply = undefined;
    await press(element, '#problems button');
    expect(element.state).to.equal(record.page.state);
  },

  async 'says whose numbers they are: the example’s, the page’s, begun, all one’s own'(record) {
    const { page, begun, own } = record;
    const owner = (element: Sheet) => textOf(find(element, '.owner'));
    const example = await one(record);
    expect(example.state).to.equal('example');
    expect(owner(example)).to.match(/^Example/);
    const given = await one(record, page.attributes, page.inside);
    expect(given.state).to.equal(page.state);
    expect(owner(given))
      .to.match(/page/)
      .and.not.to.match(/^Example/);
    if (begun) {
      const half = await withCar(record, begun);
      expect(half.state).to.equal('incomplete');
      expect(owner(half)).to.match(/yours|your/i);
    }
    const whole = await withCar(record, own);
    expect(whole.state).to.equal('ready');
    expect(owner(whole)).not.to.match(/^Example|page/);
  },

  async 'a reload and a link bring everything back'(record) {
    setAddress(`#${carToLink(record.own)}`);
    const element = await one(record, 'keep-in-address');
    expect(element.state).to.equal('ready');
    await type(element, record.numbers[0]);
    const [figure, car] = [read(record, element), modelOf(element).car];
    await wait(450);
    const again = await one(record, 'keep-in-address');
    expect(again.state).to.equal('ready');
    expect(read(record, again)).to.be.closeTo(figure!, 1e-9);
    expect(carToLink(modelOf(again).car)).to.equal(carToLink(car));
    expect(modelOf(again).car).to.deep.equal(car);
  },

  async 'a reload of a page with its own data brings back what was typed into it'(record) {
    const { attributes, inside, state } = record.page;
    const shown = () => one(record, `keep-in-address ${attributes ?? ''}`, inside);
    const element = await shown();
    await type(element, record.numbers[0]);
    const figure = read(record, element);
    await wait(450);
    const again = await shown();
    expect(again.state).to.equal(state);
    expect(read(record, again)).to.be.closeTo(figure!, 1e-9);
  },

  async 'one car is shared through bumpline-car, with its undo'(record) {
    const { tag } = record;
    const [first, second] = (await put(tag, `<bumpline-car><${tag}></${tag}><${tag}></${tag}></bumpline-car>`)) as [
      Sheet,
      Sheet,
    ];
    const before = read(record, second);
    await type(first, record.numbers[0]);
    await settled(second);
    expect(read(record, second)).to.equal(read(record, first));
    expect(read(record, second)).not.to.equal(before);
    await press(second, '.undo');
    await settled(first);
    expect([read(record, first), read(record, second)]).to.deep.equal([before, before]);
  },

  async 'is asked by keyboard alone, and the answer is said once it rests'(record) {
    const { tag } = record;
    const [element] = await put(tag, `<button id="start">start</button><${tag}></${tag}>`);
    document.querySelector<HTMLElement>('#start')!.focus();
    for (let i = 0; i < 30 && root(element!).activeElement !== field(element!); i++) await sendKeys({ press: 'Tab' });
    expect(root(element!).activeElement).to.equal(field(element!));
    const before = read(record, element!);
    await sendKeys({ type: record.numbers[0] });
    await sendKeys({ press: 'Enter' });
    await settled(element!);
    expect(read(record, element!)).not.to.equal(before);
    await wait(700);
    expect(textOf(find(element!, '[role=status]'))).to.contain(record.numbers[0]);
    await sendKeys({ press: 'Tab' });
    expect(root(element!).activeElement).not.to.equal(field(element!));
    await sendKeys({ down: 'Shift' });
    await sendKeys({ press: 'Tab' });
    await sendKeys({ up: 'Shift' });
    expect(root(element!).activeElement).to.equal(field(element!));
  },

  async 'has nothing for axe to find with everything unfolded, in the light and the dark'(record) {
    const element = await one(record, 'theme="light"');
    await unfold(element);
    expect(await violations(element)).to.deep.equal([]);
    element.setAttribute('theme', 'dark');
    await settled(element);
    expect(await violations(element, ['color-contrast', 'link-in-text-block'])).to.deep.equal([]);
  },

  async 'can be read in forced colours: text, controls and lines are none of them the paper’s colour'(record) {
    await executeServerCommand('media-features', [{ name: 'forced-colors', value: 'active' }]);
    expect(matchMedia('(forced-colors: active)').matches).to.equal(true);
    const element = await one(record);
    await unfold(element);
    const probe = document.createElement('p');
    probe.style.color = 'Canvas';
    document.body.append(probe);
    const paper = getComputedStyle(probe).color;
    probe.remove();
    const lost = all(element, '.sentence, .sentence b, button, summary, select, .cautions, svg text, th, td')
      .filter((part) => part.checkVisibility() && textOf(part) !== '')
      .filter((part) => {
        const { color, fill, backgroundColor } = getComputedStyle(part);
        return (
          (part.matches('svg text') ? fill : color) === paper && [paper, 'rgba(0, 0, 0, 0)'].includes(backgroundColor)
        );
      });
    expect(lost.map((part) => part.outerHTML.slice(0, 100))).to.deep.equal([]);
    const strokes = all<SVGElement>(element, 'svg path, svg line').map((line) => getComputedStyle(line).stroke);
    // Not every element draws; one that does draws in another colour.
    if (find(element, 'svg') === null) return;
    expect(strokes.some((stroke) => stroke !== 'none' && stroke !== paper)).to.equal(true);
  },

  async 'names every control, and no label is one of none'(record) {
    const element = await one(record);
    await unfold(element);
    const controls = all(element, CONTROLS).filter((control) => control.checkVisibility());
    expect(controls.filter((control) => nameOf(control) === '').map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
    const idle = all<HTMLLabelElement>(element, 'label').filter(({ control }) => control === null);
    expect(idle.map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
    // No name twice among what is typed into: by its name alone it could not be told which.
    const names = controls.filter((control) => control.matches('input, select, textarea')).map(nameOf);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).to.deep.equal([]);
  },

  async 'has its caution right under its sentence, under an older answer too, and none where there is no answer'(
    record,
  ) {
    const text = FIRST_CAUTIONS[LATE_PARTS[record.tag].caution];
    const expectCaution = (element: Sheet) => {
      expect(textOf(find(element, '.cautions.first'))).to.equal(text);
      expect(isShown(element, '.cautions.first')).to.equal(true);
      expect(find(element, '.cautions.first')!.previousElementSibling!.className).to.contain('sentence');
    };
    const element = await one(record);
    expectCaution(element);
    await type(element, 'abc');
    expectCaution(element);
    meddle.reply = { ok: false, fault: 'broken on purpose' };
    expect(find(await one(record, record.page.attributes, record.page.inside), '.cautions.first')).to.equal(null);
  },

  async 'answers alike where a page says lang="en_US", a German decimal comma included'(record) {
    const { tag } = record;
    const expected = read(record, await one(record));
    const [american, german] = (await put(
      tag,
      `<div lang="en_US"><${tag}></${tag}></div><div lang="de_DE"><${tag}></${tag}></div>`,
    )) as [Sheet, Sheet];
    expect([american.state, german.state]).to.deep.equal(['example', 'example']);
    expect([read(record, american), read(record, german)]).to.deep.equal([expected, expected]);
    expect(sentence(american)).to.match(/\d\.\d|\d mm/);
    await type(german, `${record.numbers[0]},5`);
    await type(american, `${record.numbers[0]}.5`);
    expect(read(record, german)).to.equal(read(record, american));
  },

  async 'stands on a page that is written from right to left: its own text and signs the other way, nothing wider'(
    record,
  ) {
    const { tag } = record;
    const [element] = await put(tag, `<div dir="rtl" lang="ar"><${tag}></${tag}></div>`);
    await unfold(element!);
    expect(stylesOf(element!).direction).to.equal('ltr');
    expect(find(element!, '.sheet')!.scrollWidth).to.be.at.most(360);
    expect(element!.scrollWidth).to.be.at.most(360);
  },

  async 'takes nothing over from a host page’s inherited styles'(record) {
    const { tag } = record;
    const plain = stylesOf(await one(record));
    const [element] = await put(tag, `<div style="${INHERITED.replaceAll('\n', ' ')}"><${tag}></${tag}></div>`);
    expect(stylesOf(element!)).to.deep.equal(plain);
    expect(find(element!, '.sheet')!.scrollWidth).to.be.at.most(360);
  },

  async 'keeps its number and goes on working after it was moved in the document'(record) {
    const { tag } = record;
    const [element] = await put(tag, `<${tag}></${tag}><aside></aside>`);
    await type(element!, record.numbers[0]);
    const figure = read(record, element!);
    document.querySelector('main aside')!.append(element!);
    await settled(element!);
    expect(read(record, element!)).to.equal(figure);
    await type(element!, record.numbers[1]);
    expect(read(record, element!)).not.to.equal(figure);
    await press(element!, '.undo');
    expect(read(record, element!)).to.equal(figure);
  },

  async 'keeps its looks and its number when another document adopts it'(record) {
    const element = await one(record);
    await type(element, record.numbers[0]);
    const figure = read(record, element);
    const before = getComputedStyle(find(element, '.sentence')!).fontSize;
    const frame = document.createElement('iframe');
    element.parentElement!.append(frame);
    frame.contentDocument!.body.append(element);
    await settled(element);
    const view = frame.contentWindow!;
    expect(view.getComputedStyle(find(element, '.sentence')!).fontSize).to.equal(before);
    expect(view.getComputedStyle(find(element, '.cautions')!).display).to.not.equal('inline');
    expect(read(record, element)).to.equal(figure);
    await type(element, record.numbers[1]);
    expect(read(record, element)).not.to.equal(figure);
  },

  async 'answers the same on the page’s own thread, where no worker is allowed'(record) {
    const { attributes, inside, state } = record.page;
    const inWorker = await one(record, attributes, inside);
    await type(inWorker, record.numbers[0]);
    const [figure, said] = [read(record, inWorker), sentence(inWorker)];
    meddle.isOnPage = true;
    const element = await one(record, attributes, inside);
    expect(element.state).to.equal(state);
    await type(element, record.numbers[0]);
    expect(read(record, element)).to.equal(figure);
    expect(sentence(element)).to.equal(said);
  },

  async 'stands twice on a page, each with a car of its own'(record) {
    const { tag } = record;
    const [first, second] = (await put(tag, `<${tag}></${tag}><${tag}></${tag}>`)) as [Sheet, Sheet];
    const before = read(record, second);
    await type(first, record.numbers[0]);
    await settled(second);
    expect(read(record, second)).to.equal(before);
    expect(find(second, '.undo')).to.equal(null);
    await type(second, record.numbers[1]);
    expect(read(record, first)).not.to.equal(read(record, second));
    for (const element of [first, second]) {
      const ids = all(element, '[id]').map(({ id }) => id);
      expect(ids.filter((id, i) => ids.indexOf(id) !== i)).to.deep.equal([]);
    }
  },

  async 'prints its sentence and caution in ink on paper, and nothing beside it'(record) {
    const element = await one(record, 'theme="dark"');
    await emulateMedia({ media: 'print' });
    for (const part of ['.sentence', '.cautions.first']) expect(isShown(element, part), part).to.equal(true);
    const { color } = getComputedStyle(find(element, '.sheet')!);
    expect([color, getComputedStyle(element).backgroundColor]).to.deep.equal(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    expect(find(element, '.sheet')!.scrollWidth).to.be.at.most(360);
  },
};

describe('the contract of every element, at 360 × 780', () => {
  const { error } = console;
  before(async () => {
    await setViewport({ width: 360, height: 780 });
    // Told where an observer had to be told a frame later, as in a frame that adopts an element: no error of anybody's.
    const { onerror } = window;
    window.onerror = (...told) => /ResizeObserver loop/.test(String(told[0])) || onerror?.(...told);
  });
  beforeEach(() => {
    console.error = () => {};
  });
  afterEach(async () => {
    clear();
    console.error = error;
    meddle.reply = undefined;
    meddle.isOnPage = false;
    setAddress('');
    await executeServerCommand('media-features', []);
    await emulateMedia({ media: 'screen' });
  });

  for (const record of ELEMENTS) {
    describe(`<${record.tag}>`, () => {
      for (const [contract, check] of Object.entries(CONTRACT)) {
        it(contract, () => check(record));
      }
    });
  }
});
