import { sendKeys } from '@web/test-runner-commands';
import 'axe-core';
import { expect } from 'chai';
import { LitElement } from 'lit';
import type { Drawing } from '../../../components/drawing/items.js';
import { layout } from '../../../components/drawing/layout.js';
import { drawingStyles, renderDrawing } from '../../../components/drawing/render.js';
import { theme } from '../../../components/theme/theme.js';
import { allBalloons, exampleDrawing } from './example-drawing.js';

const { axe } = window as unknown as { axe: typeof import('axe-core') };

class TestDrawing extends LitElement {
  static override styles = [theme, drawingStyles];
  static override properties = { drawing: {}, width: {} };
  declare drawing: Drawing;
  declare width: number;
  selected: string[] = [];
  override render() {
    return renderDrawing(layout(this.drawing, this.width), { onSelect: (key) => this.selected.push(key) });
  }
}
customElements.define('test-drawing', TestDrawing);

const keys = [
  'lowerArm.front',
  'lowerArm.rear',
  'lowerArm.ball',
  'strut.top',
  'strut.low',
  'tieRod.inner',
  'tieRod.outer',
  'wheelCentre',
];

async function show(width: number, travel = 30): Promise<TestDrawing> {
  document.body.replaceChildren();
  const element = document.createElement('test-drawing') as TestDrawing;
  element.drawing = exampleDrawing(travel);
  element.width = width;
  element.style.width = `${width}px`;
  document.body.append(element);
  await element.updateComplete;
  return element;
}
const buttonsOf = (element: TestDrawing) => [...element.renderRoot.querySelectorAll('button')];

describe('the drawing in a page', () => {
  it('reaches every balloon with Tab in the order of its number, and selects with Enter and Space', async () => {
    const element = await show(330);
    for (let i = 0; i < keys.length; i++) {
      await sendKeys({ press: 'Tab' });
      const focused = element.shadowRoot!.activeElement!;
      expect(focused.getAttribute('aria-label')).to.match(new RegExp(`^${i + 1} \\w+`));
      await sendKeys({ press: i % 2 ? 'Enter' : 'Space' });
    }
    expect(element.selected).to.deep.equal(keys);
  });

  it('selects on a click at the middle of what is drawn, at the width of the layout and at another', async () => {
    for (const shown of [330, 400]) {
      const element = await show(330);
      element.style.width = `${shown}px`;
      const rings = [...element.renderRoot.querySelectorAll('.ring')].map((ring) => ring.getBoundingClientRect());
      for (const ring of rings) {
        const hit = element.shadowRoot!.elementFromPoint(ring.x + ring.width / 2, ring.y + ring.height / 2);
        (hit as HTMLElement).click();
      }
      expect(element.selected).to.deep.equal(keys);
    }
  });

  it('gives each balloon at least 44 × 44 px of its own', async () => {
    for (const width of [290, 330, 560]) {
      const boxes = buttonsOf(await show(width)).map((button) => button.getBoundingClientRect());
      boxes.forEach((box, i) => {
        expect(Math.min(box.width, box.height)).to.be.at.least(44);
        for (const other of boxes.slice(0, i)) {
          const apart =
            box.left >= other.right || other.left >= box.right || box.top >= other.bottom || other.top >= box.bottom;
          expect(apart).to.equal(true);
        }
      });
    }
  });

  it('needs no more room for any text than the layout keeps for it', async () => {
    for (const travel of [-40, 0, 30]) {
      const element = await show(560, travel);
      const kept = layout(element.drawing, 560).texts;
      const drawn = [...element.renderRoot.querySelectorAll<SVGTextElement>('svg > text')];
      expect(drawn.length).to.equal(kept.length);
      drawn.forEach((text, i) => {
        expect(text.getComputedTextLength(), kept[i]!.text).to.be.at.most(kept[i]!.width);
        const box = text.getBBox();
        expect(box.x, kept[i]!.text).to.be.at.least(kept[i]!.x - 0.5);
        expect(box.x + box.width, kept[i]!.text).to.be.at.most(kept[i]!.x + kept[i]!.width + 0.5);
      });
    }
  });

  it('passes axe, as one named picture and named buttons', async () => {
    const element = await show(330);
    const { violations } = await axe.run(element);
    expect(violations.map((violation) => violation.id)).to.deep.equal([]);
    expect(element.renderRoot.querySelector('svg')!.getAttribute('aria-label')).to.match(/^Front view/);
  });

  it('has no buttons where nobody listens, and tells the states apart without colour', async () => {
    const element = await show(330);
    element.render = () => renderDrawing(layout(element.drawing, 330));
    element.requestUpdate();
    await element.updateComplete;
    expect(buttonsOf(element)).to.have.length(0);
    const look = (state: string) => {
      const number = allBalloons.findIndex((balloon) => balloon.state === state);
      const mark = element.renderRoot.querySelectorAll('svg > g')[number]!;
      const text = getComputedStyle(mark.querySelector('text')!);
      const ring = getComputedStyle(mark.querySelector('.ring')!);
      return [text.fontStyle, text.fontWeight, ring.strokeWidth, mark.childElementCount].join();
    };
    const looks = ['example', 'yours', 'problem', 'next'].map(look);
    expect(new Set(looks).size).to.equal(4);
  });

  it('stands without inline styles where a content security policy forbids them', async () => {
    const policy = document.createElement('meta');
    policy.httpEquiv = 'Content-Security-Policy';
    policy.content = "style-src 'none'";
    document.head.append(policy);
    const refused: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => refused.push(event.violatedDirective));
    const element = await show(330);
    await new Promise((resolve) => setTimeout(resolve, 50));
    const [first] = buttonsOf(element);
    const box = element.renderRoot.querySelector('.ring')!.getBoundingClientRect();
    const target = first!.getBoundingClientRect();
    expect(refused).to.deep.equal([]);
    expect(target.x + target.width / 2).to.be.closeTo(box.x + box.width / 2, 1);
    expect(target.y + target.height / 2).to.be.closeTo(box.y + box.height / 2, 1);
    expect(target.width).to.equal(44);
  });
});
