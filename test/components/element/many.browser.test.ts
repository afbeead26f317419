import { expect } from 'chai';
import type { LitElement } from 'lit';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { until } from '../contract/stage.js';
import '../../../components/define.js';

/* Many elements on one page: those out of sight are drawn late, and never say anything that is not so. */

type Sheet = LitElement & { settled: Promise<void>; answer: unknown; state: string };
const TAGS = ['bumpline-clearance', 'bumpline-compare', 'bumpline-lowering', 'bumpline-readings'];
const FAR = '<div style="height: 6000px"></div>';

let place: HTMLElement | undefined;
let isIdle = true;
const held: (() => void)[] = [];
const { requestIdleCallback: idle } = globalThis;

/** The page is not idle until `rest` is called. */
function keepBusy(): void {
  isIdle = false;
  globalThis.requestIdleCallback = (callback) => {
    if (isIdle) return idle(callback);
    held.push(() => idle(callback));
    return 0;
  };
}
function rest(): void {
  isIdle = true;
  for (const go of held.splice(0)) go();
  globalThis.requestIdleCallback = idle;
}

function put(markup: string): Sheet[] {
  place?.remove();
  scrollTo(0, 0);
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = markup;
  document.body.append(place);
  return [...place.querySelectorAll<Sheet>(TAGS.join(', '))];
}

afterEach(() => {
  rest();
  place?.remove();
});

function slide(element: Sheet, by = -1): void {
  const slider = find<HTMLInputElement>(element, 'input[type=range]');
  slider.value = String(slider.valueAsNumber + by);
  slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
}

const says = (element: Sheet): string => find(element, '.says').textContent!.replace(/\s+/g, ' ').trim();
/** Whether what lies under the sentence is there. */
const isWhole = (element: Sheet): boolean => root(element).querySelector('.copy-link') !== null;

describe('thirty elements that share a car', () => {
  for (const tag of ['bumpline-clearance', 'bumpline-lowering']) {
    it(`draw nothing out of sight while it is dragged, then follow one after another (<${tag}>)`, async function (this: Mocha.Context) {
      this.timeout(180_000);
      const [near, ...far] = put(
        `<bumpline-car><${tag}></${tag}>${FAR}${`<${tag}></${tag}>`.repeat(29)}</bumpline-car>`,
      );
      for (const element of [near!, ...far]) await element.settled;
      slide(near!);
      await near!.settled;
      await until('all have come to rest', () => far.every((element) => says(element) === says(near!)));
      await wait(600);
      let frame = 0;
      let isOver = false;
      const count = () => {
        frame++;
        if (!isOver) requestAnimationFrame(count);
      };
      requestAnimationFrame(count);
      const frames: number[] = [];
      let touched = 0;
      const watching = new MutationObserver((records) => {
        touched += records.length;
      });
      for (const element of far) {
        const { performUpdate } = element as unknown as { performUpdate(): void };
        Object.assign(element, {
          performUpdate(this: Sheet) {
            frames.push(frame);
            performUpdate.call(this);
          },
        });
        watching.observe(root(element), { subtree: true, childList: true, characterData: true, attributes: true });
      }
      for (let i = 0; i < 6; i++) {
        slide(near!);
        await wait(50);
      }
      expect(frames, 'renderings out of sight').to.deep.equal([]);
      expect(touched, 'what was touched out of sight, drawings too').to.equal(0);
      find(near!, 'input[type=range]').dispatchEvent(new Event('change', { bubbles: true }));
      await until('all say the same', () => far.every((element) => says(element) === says(near!)));
      isOver = true;
      watching.disconnect();
      expect(frames.length).to.be.at.least(far.length);
      expect(new Set(frames).size, 'frames in which something was rendered').to.equal(frames.length);
    });
  }
});

for (const tag of TAGS) {
  describe(`<${tag}> far below the window`, () => {
    const both = `<${tag}></${tag}>${FAR}<${tag}><p>The author’s own words.</p></${tag}>`;

    async function putFar(): Promise<Sheet> {
      keepBusy();
      const [near, far] = put(both);
      await near!.settled;
      await until('both have an answer', () => far!.answer !== undefined);
      await wait(100);
      return far!;
    }

    it('has its answer and says it, and leaves the rest for later', async () => {
      const far = await putFar();
      expect(find(far, '.sentence').textContent).to.match(/\d/);
      expect(isWhole(far)).to.equal(false);
    });

    it('is whole when it comes near', async () => {
      const far = await putFar();
      far.scrollIntoView();
      await until('it is whole', () => isWhole(far));
    });

    it('is whole for who waits for it', async () => {
      const far = await putFar();
      await far.settled;
      expect(isWhole(far)).to.equal(true);
    });

    it('is whole when the page is idle', async () => {
      const far = await putFar();
      rest();
      await until('it is whole', () => isWhole(far));
    });

    it('is whole on paper once its files have come, before the event of printing is over', async () => {
      // Nothing of the tests before has a turn left.
      await wait(400);
      for (let i = 0; i < 3; i++) await new Promise((resolve) => idle(resolve));
      const far = await putFar();
      // Its files come when the page is idle for the first time; for the second it is not.
      held.splice(0).forEach((go) => {
        go();
      });
      await wait(200);
      expect(isWhole(far)).to.equal(false);
      dispatchEvent(new Event('beforeprint'));
      const seen = {
        isWhole: isWhole(far),
        charts: [...root(far).querySelectorAll('.chart-box')].map((box) => box.querySelector('svg') !== null),
        drawings: [...root(far).querySelectorAll('.drawing-place')].map((box) => box.querySelector('svg') !== null),
        lists: root(far).querySelectorAll('details').length > 0,
      };
      dispatchEvent(new Event('afterprint'));
      expect(seen.isWhole).to.equal(true);
      expect(seen.lists, 'lists').to.equal(true);
      expect([...seen.charts, ...seen.drawings]).to.not.contain(false);
    });

    it('takes what was changed elsewhere before it was ever drawn', async () => {
      keepBusy();
      const [near, far] = put(`<bumpline-car>${both}</bumpline-car>`);
      await near!.settled;
      await until('both have an answer', () => far!.answer !== undefined);
      const input = find<HTMLInputElement>(near!, '.sentence input');
      input.focus();
      input.value = String(Number.parseFloat(input.value) + 2);
      input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      input.dispatchEvent(new Event('change', { bubbles: true }));
      input.blur();
      await near!.settled;
      expect(isWhole(far!)).to.equal(false);
      far!.scrollIntoView();
      await until('it is whole', () => isWhole(far!));
      expect(says(far!)).to.equal(says(near!));
    });
  });
}
