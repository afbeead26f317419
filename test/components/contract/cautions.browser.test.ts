import { expect } from 'chai';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { ChartController } from '../../../components/chart/chart.js';
import { ChartStack } from '../../../components/chart/chart-stack.js';
import { DrawingSlot } from '../../../components/drawing/drawing-slot.js';
import { FIRST_CAUTIONS } from '../../../components/element/first-cautions.js';
import { SheetBody } from '../../../components/element/sheet-body.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { LATE_PARTS } from './late-parts.js';
import { until } from './stage.js';

const ELEMENTS = Object.entries(LATE_PARTS).map(([name, { app, caution, hazards, ...more }]) => ({
  name,
  hazards: hazards as readonly string[],
  isDrawn: !('hasNoDrawing' in more),
  text: FIRST_CAUTIONS[caution],
  body: `/components/${name}/${app.replace(/-app$/, '-body')}.ts`,
}));

/** What comes after the first answer: the class that a module has. */
async function bodyIn(module: string): Promise<object> {
  const found = Object.values<{ prototype?: unknown }>(await import(module)).find(
    ({ prototype }) => prototype instanceof SheetBody,
  );
  return found!.prototype as object;
}

let place: HTMLElement | undefined;
let restore: (() => void) | undefined;
/** How often something was asked of what is broken. */
let thrown = 0;

/** Has a method throw until the test is over. */
function breaking(owner: object, method: string): void {
  const real = (owner as Record<string, unknown>)[method];
  (owner as Record<string, unknown>)[method] = () => {
    thrown++;
    throw new Error(`broken on purpose: ${method}`);
  };
  const before = restore;
  restore = () => {
    (owner as Record<string, unknown>)[method] = real;
    before?.();
  };
}

async function put(name: string, isBroken = false): Promise<BumplineLowering> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = `<${name}></${name}>`;
  const element = place.querySelector(name) as BumplineLowering;
  document.body.append(place);
  if (isBroken) {
    const before = thrown;
    await until('what is broken is asked', () => thrown > before);
    await until('there is an answer', () => root(element).querySelector('.cautions.first'));
    // Whatever it takes along with it is gone by then.
    await wait(150);
  } else await element.settled;
  return element;
}

function expectCaution(element: Element, text: string, hazards: readonly string[]): void {
  const own = find(element, '.sheet > aside.cautions');
  expect(own.checkVisibility()).to.equal(true);
  for (const words of hazards) expect(own.textContent).to.contain(words);
  const caution = find(element, '.cautions.first');
  expect(caution.textContent).to.equal(text);
  expect(caution.checkVisibility()).to.equal(true);
  // Right under the sentence, before anything that can come late or fail.
  expect(caution.previousElementSibling!.className).to.equal('sentence');
  expect(find(element, '.sentence').textContent).to.match(/\d/);
}

describe('the caution of a first answer', () => {
  const { error } = console;
  beforeEach(() => {
    console.error = () => {};
    // What a lifecycle callback throws is reported to the page as well.
    window.onerror = () => true;
    window.onunhandledrejection = (event) => event.preventDefault();
  });
  afterEach(() => {
    restore?.();
    restore = undefined;
    console.error = error;
    window.onerror = null;
    window.onunhandledrejection = null;
  });

  for (const { name, text, hazards, body, isDrawn } of ELEMENTS) {
    it(`<${name}>: stands under its sentence, in the very rendering that brings it`, async () => {
      place?.remove();
      place = document.createElement('main');
      document.body.append(place);
      const element = document.createElement(name) as BumplineLowering;
      let bare = 0;
      const isWhole = () =>
        root(element).querySelector('.cautions.first') &&
        hazards.every((words) => root(element).querySelector('aside.cautions')?.textContent.includes(words));
      place.append(element);
      const watch = new MutationObserver(() => {
        const says = root(element).querySelector('.sentence')?.textContent ?? '';
        if (/\d\.\d|of bump|°/.test(says) && !/Working|no answer/.test(says) && !isWhole()) bare++;
      });
      watch.observe(root(element), { childList: true, subtree: true, characterData: true });
      await element.settled;
      watch.disconnect();
      expect(bare).to.equal(0);
      expectCaution(element, text, hazards);
    });

    for (const method of ['render', 'renderTools']) {
      it(`<${name}>: stands, and so does the sentence, when ${method} of what came late throws`, async () => {
        breaking(await bodyIn(body), method);
        const element = await put(name);
        expectCaution(element, text, hazards);
        expect(root(element).querySelector('.queries[role=alert]')!.textContent).to.contain('could not be drawn');
      });
    }

    if (!isDrawn) continue;
    it(`<${name}>: stands when what it draws throws`, async () => {
      for (const owner of [ChartController.prototype, ChartStack.prototype])
        for (const method of ['render', 'hostUpdated']) breaking(owner, method);
      breaking(DrawingSlot.prototype, 'draw');
      expectCaution(await put(name, true), text, hazards);
    });
  }

  it('stands when the drawing throws', async () => {
    for (const owner of [DrawingSlot.prototype] as object[]) {
      for (const method of Object.getOwnPropertyNames(owner)) {
        const { value } = Object.getOwnPropertyDescriptor(owner, method)!;
        if (method !== 'constructor' && typeof value === 'function') breaking(owner, method);
      }
    }
    expectCaution(await put('bumpline-lowering', true), FIRST_CAUTIONS.predicted, []);
    expectCaution(await put('bumpline-clearance', true), FIRST_CAUTIONS.clearByHand, []);
  });

  it('is not there where a page’s mistake leaves no answer', async () => {
    await put('bumpline-lowering');
    place!.innerHTML = '<bumpline-lowering drop="low"></bumpline-lowering>';
    const bad = place!.querySelector('bumpline-lowering')!;
    await bad.settled;
    expect(root(bad).querySelector('.cautions.first')).to.equal(null);
  });
});
