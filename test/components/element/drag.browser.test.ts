import { expect } from 'chai';
import type { LitElement } from 'lit';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { meddle } from '../contract/cores.js';
import { until } from '../contract/stage.js';
import '../../../components/define.js';

/*
 * What a step of a drag costs, as counts that are the same on every machine. The figures are those of today, rounded up: they may only
 * fall, and are lowered on purpose.
 */
type Sheet = LitElement & { settled: Promise<void>; answer: unknown; state: string };

const MOST: Record<string, { attributes: number; childLists: number }> = {
  // Its corner is drawn whole: strut, hub and rim move with the wheel.
  'bumpline-clearance': { attributes: 45, childLists: 9 },
  // Words beside its curves stand where nothing is drawn, which moves with the drop, and some on a plate.
  'bumpline-compare': { attributes: 20, childLists: 30 },
  'bumpline-lowering': { attributes: 75, childLists: 13 },
};
/** Properties and methods that have the browser lay the page out at once. */
const LAYOUT_READS = [
  [HTMLElement.prototype, 'offsetWidth'],
  [HTMLElement.prototype, 'offsetHeight'],
  [Element.prototype, 'clientWidth'],
  [Element.prototype, 'clientHeight'],
  [Element.prototype, 'getBoundingClientRect'],
] as const;

let place: HTMLElement;

async function put(markup: string): Promise<Sheet[]> {
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = markup;
  document.body.append(place);
  const found = [...place.querySelectorAll<Sheet>('bumpline-clearance, bumpline-compare, bumpline-lowering')];
  for (const element of found) await element.settled;
  await wait(100);
  return found;
}

afterEach(() => {
  place.remove();
  meddle.isOnPage = false;
});

function slide(element: Sheet, by = -1): void {
  const slider = find<HTMLInputElement>(element, 'input[type=range]');
  slider.value = String(slider.valueAsNumber + by);
  slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
}

/** What `run` does to an element, counted. */
async function counted(element: Sheet, run: () => Promise<void>) {
  const counts = { renders: 0, reads: 0, attributes: 0, childLists: 0 };
  const { performUpdate } = element as unknown as { performUpdate: () => void };
  Object.assign(element, {
    performUpdate(this: Sheet) {
      counts.renders++;
      performUpdate.call(this);
    },
  });
  const watching = new MutationObserver((records) => {
    for (const { type } of records) counts[type === 'attributes' ? 'attributes' : 'childLists']++;
  });
  watching.observe(root(element), { subtree: true, childList: true, characterData: true, attributes: true });
  const restore = LAYOUT_READS.map(([prototype, name]) => {
    const own = Object.getOwnPropertyDescriptor(prototype, name)!;
    const read = own.get ?? (own.value as () => unknown);
    const spy = function (this: Element) {
      if (this.getRootNode() === root(element)) counts.reads++;
      return read.call(this) as unknown;
    };
    Object.defineProperty(prototype, name, { ...own, ...(own.get ? { get: spy } : { value: spy }) });
    return () => Object.defineProperty(prototype, name, own);
  });
  await run();
  await wait(0);
  for (const one of restore) one();
  watching.disconnect();
  Reflect.deleteProperty(element, 'performUpdate');
  return counts;
}

for (const tag of Object.keys(MOST)) {
  describe(`a step of a drag in <${tag}>`, () => {
    it('is one rendering, reads no layout, and touches no more than it did', async () => {
      const [element] = await put(`<${tag}></${tag}>`);
      // The first step may fetch and learn.
      slide(element!);
      await element!.settled;
      const { renders, reads, attributes, childLists } = await counted(element!, async () => {
        slide(element!);
        find(element!, 'input[type=range]').dispatchEvent(new Event('change', { bubbles: true }));
        await wait(60);
      });
      expect(renders, 'renders').to.equal(1);
      expect(reads, 'layout reads').to.equal(0);
      expect(attributes, 'attributes').to.be.at.most(MOST[tag]!.attributes);
      expect(childLists, 'child lists and texts').to.be.at.most(MOST[tag]!.childLists);
    });

    it('shows its sentence in a frame in which neither drawing nor chart is touched; they follow', async () => {
      const [element] = await put(`<${tag}></${tag}>`);
      slide(element!);
      await element!.settled;
      // A chart comes when its place comes near.
      const chart = find(element!, '.chart-box');
      chart.closest('details')?.setAttribute('open', '');
      chart.scrollIntoView();
      await until('the charts have come', () => find(element!, '.chart-box').childElementCount > 0);
      await wait(200);
      const places = [...root(element!).querySelectorAll('.drawing-place, .chart-box')];
      const says = find(element!, '.says').textContent;
      const pictures = () => places.map((one) => one.innerHTML).join('');
      const before = pictures();
      slide(element!, tag === 'bumpline-compare' ? 1 : -6);
      // The last that is done before this frame is painted.
      await new Promise(requestAnimationFrame);
      await null;
      expect(find(element!, '.says').textContent).not.to.equal(says);
      expect(pictures()).to.equal(before);
      await until('they follow', () => pictures() !== before);
    });

    for (const mode of ['worker', 'page'] as const) {
      it(`says at once what it says at rest, figure by figure, with the core ${mode === 'worker' ? 'in its worker' : 'on the page'}`, async () => {
        meddle.isOnPage = mode === 'page';
        const [element] = await put(`<${tag}></${tag}>`);
        const slider = find<HTMLInputElement>(element!, 'input[type=range]');
        const says = () => find(element!, '.says').textContent!.replace(/\s+/g, ' ').trim();
        slide(element!);
        await element!.settled;
        const [min, max] = [Number(slider.min), Number(slider.max)];
        // Fractions of the slider's way, as if at random and the same each time.
        for (const share of [0.83, 0.11, 0.47, 0.62, 0.29, 0.95, 0.5, 0.05]) {
          slider.value = String(Math.round(min + share * (max - min)));
          slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
          await new Promise(requestAnimationFrame);
          const atOnce = says();
          slider.dispatchEvent(new Event('change', { bubbles: true }));
          await element!.settled;
          expect(says(), `at ${slider.value}`).to.equal(atOnce);
        }
      });
    }

    it('draws nothing out of sight, which says the same after a rest', async () => {
      const [near, far] = await put(
        `<bumpline-car><${tag}></${tag}><div style="height: 6000px"></div><${tag}></${tag}></bumpline-car>`,
      );
      scrollTo(0, 0);
      slide(near!);
      await near!.settled;
      await far!.settled;
      await wait(500);
      await far!.settled;
      await wait(100);
      const { renders } = await counted(far!, async () => {
        for (let i = 0; i < 5; i++) {
          slide(near!);
          await wait(20);
        }
      });
      expect(renders).to.equal(0);
      const says = (element: Sheet) => find(element, '.sentence').textContent;
      await until('what is out of sight follows', () => says(far!) === says(near!));
      expect(says(far!)).to.equal(says(near!));
    });

    it('is drawn at once for who waits for it, however far away', async () => {
      const [near, far] = await put(
        `<bumpline-car><${tag}></${tag}><div style="height: 6000px"></div><${tag}></${tag}></bumpline-car>`,
      );
      scrollTo(0, 0);
      await wait(100);
      slide(near!);
      await Promise.all([near!.settled, far!.settled]);
      expect(find(far!, '.sentence').textContent).to.equal(find(near!, '.sentence').textContent);
    });
  });
}
