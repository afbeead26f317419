import { expect } from 'chai';
import { LitElement } from 'lit';
import { live } from 'lit/directives/live.js';
import { Drafts } from '../../../components/inputs/drafts.js';
import { renderParts } from '../../../components/parts/parts-editor.js';
import type { Setup } from '../../../core/document/setup.js';
import { emptySetup } from '../../../core/document/setup-edits.js';
import type { Corner } from '../../../core/linkage/corner.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import type { Problem } from '../../../core/quantity/problem.js';
import { METRIC } from '../../../core/quantity/units.js';
import { find, referenceCorner, root, wishboneCorner } from '../bumpline-lowering/set-up.js';

/** The least that an element has to be to hold a list of parts. */
class EditorHost extends LitElement {
  setup: Setup = { ...emptySetup('Parts', 'camber', 'Front left'), parts: [] };
  corner: Corner | undefined;
  problems: readonly Problem[] = [];
  steps: (string | undefined)[] = [];
  readonly drafts = new Drafts();
  #before: Setup | undefined;

  constructor() {
    super();
    this.drafts.parser = { parse: parseQuantity, live };
  }

  override render() {
    return renderParts({
      host: this,
      drafts: this.drafts,
      display: { units: METRIC, language: 'en' },
      path: '',
      setup: this.setup,
      corner: this.corner,
      problems: this.problems,
      change: (label, recipe, step) => {
        this.#before ??= this.setup;
        this.setup = recipe(this.setup);
        this.steps.push(step ?? label);
        this.requestUpdate();
      },
      cancel: () => {
        if (this.#before) this.setup = this.#before;
        this.requestUpdate();
      },
      begin: () => {
        this.#before = this.setup;
      },
      end: () => {
        this.#before = undefined;
        this.requestUpdate();
      },
    });
  }
}
customElements.define('parts-editor-host', EditorHost);

let host: EditorHost | undefined;
async function shown(setup: Partial<Setup> = {}, corner: unknown = referenceCorner): Promise<EditorHost> {
  host?.remove();
  host = new EditorHost();
  host.setup = { ...host.setup, ...setup };
  host.corner = corner as Corner;
  document.body.append(host);
  await host.updateComplete;
  return host;
}
const choices = (element: Element) =>
  [...root(element).querySelectorAll('.part-choices .button')].map(({ textContent }) => textContent!.trim());
async function press(element: EditorHost, words: string): Promise<void> {
  const all = [...root(element).querySelectorAll<HTMLButtonElement>('button')];
  all.find(({ textContent }) => textContent!.trim() === words)!.click();
  await element.updateComplete;
  await element.updateComplete;
}
async function write(element: EditorHost, path: string, text: string, leave = true): Promise<HTMLInputElement> {
  const input = find<HTMLInputElement>(element, `[id="${path}"]`);
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  if (leave) input.dispatchEvent(new Event('change'));
  await element.updateComplete;
  return input;
}
const text = (element: Element) => root(element).textContent!.replace(/[\s\u202f]+/g, ' ');

describe('the list of parts', () => {
  it('begins with the chooser open, by what the corner has a place for', async () => {
    const strut = await shown();
    expect(find<HTMLDetailsElement>(strut, '.add-part').open).to.equal(true);
    expect(choices(strut)).to.include('Top mount, moved').and.not.include('Upper ball joint, longer');
    expect(choices(await shown({}, wishboneCorner)))
      .to.include('Upper arm, longer')
      .and.not.include('Knuckle bolts, turned');
  });

  it('adds a part, goes to its amount, and takes the amount the way a mechanic counts it', async () => {
    const element = await shown();
    await press(element, 'Top mount, moved');
    expect((root(element).activeElement as HTMLElement).id).to.equal('parts.0.vector.1');
    await write(element, 'parts.0.vector.1', '15');
    await write(element, 'parts.0.vector.0', '4');
    expect(element.setup.parts).to.deep.equal([{ part: 'topMountMoved', vector: [-4, -15, 0] }]);
    expect(find<HTMLDetailsElement>(element, '.add-part').open).to.equal(false);
  });

  it('keeps what is no number in its field, says so there, and goes back to what stood before', async () => {
    const element = await shown({ parts: [{ part: 'armLonger', mm: 8 }] });
    const input = await write(element, 'parts.0.mm', '1', false);
    expect(element.setup.parts).to.deep.equal([{ part: 'armLonger', mm: 1 }]);
    await write(element, 'parts.0.mm', '1x');
    expect(input.value).to.equal('1x');
    expect(element.setup.parts).to.deep.equal([{ part: 'armLonger', mm: 8 }]);
    expect(find(element, '.problem').textContent).to.contain('Longer by');
    await write(element, 'parts.0.mm', '10');
    expect(root(element).querySelector('.problem')).to.equal(null);
    expect(element.setup.parts).to.deep.equal([{ part: 'armLonger', mm: 10 }]);
    // Each text is one step.
    expect(new Set(element.steps)).to.deep.equal(new Set(['parts.0.mm']));
  });

  it('says what the core finds wrong at the amount, or at the part', async () => {
    const element = await shown({
      parts: [
        { part: 'topMountMoved', vector: [0, -15, 0] },
        { part: 'armLonger', mm: 140 },
      ],
    });
    element.problems = [
      { code: 'out-of-range', path: 'parts.0.vector.1', value: -15, limit: -10 },
      { code: 'cannot-close', path: 'parts.1', value: undefined, other: 'tieRod' },
    ];
    element.requestUpdate();
    await element.updateComplete;
    const [mount, arm] = root(element).querySelectorAll('.part');
    expect(
      mount!
        .querySelector('.problem')!
        .textContent!.replace(/[\s\u202f]+/g, ' ')
        .trim(),
    ).to.equal('Inboard is 15 mm, which is not possible. Enter 10 mm or less.');
    expect(arm!.querySelector('[role=alert]')!.textContent).to.equal(
      'With the arm the tie rod no longer reaches. Choose a smaller amount, or check its sign.',
    );
  });

  it('takes a part off with what was half typed for it, and those behind it move up', async () => {
    const element = await shown({
      parts: [
        { part: 'armLonger', mm: 8 },
        { part: 'rackRaised', mm: 3 },
      ],
    });
    await write(element, 'parts.1.mm', 'x');
    find<HTMLButtonElement>(element, '.part-head .button').click();
    await element.updateComplete;
    expect(element.setup.parts).to.deep.equal([{ part: 'rackRaised', mm: 3 }]);
    expect(find<HTMLInputElement>(element, '[id="parts.0.mm"]').value).to.equal('3');
    expect(element.drafts.problems).to.have.length(0);
  });

  it('says what is assumed of the other bolt until it is measured', async () => {
    const element = await shown();
    await press(element, 'Knuckle bolts, turned');
    expect(text(element)).to.contain('Assumed until you measure it');
    await write(element, 'parts.0.otherBolt.2', '72');
    expect(text(element)).not.to.contain('Assumed until you measure it');
    expect(element.setup.parts![0]).to.deep.include({ part: 'knuckleBoltsTurned', degrees: 0 });
  });

  it('warns where the joint itself lowers the car: the spring stands on its arm', async () => {
    const damper = { top: [0, 500, 700], low: [0, 600, 250] };
    const joint = { part: 'ballJointExtended', mm: 22 } as const;
    const warned = async (corner: object, part: object = joint) => {
      const found = /lowers the car by about (\d+) mm|lifts the car by about (\d+) mm/.exec(
        text(await shown({ parts: [part as typeof joint] }, corner)),
      );
      return found?.[0];
    };
    expect(await warned({ ...wishboneCorner, damper })).to.equal('lowers the car by about 22 mm');
    expect(await warned({ ...wishboneCorner, damper }, { ...joint, mm: -10 })).to.equal('lifts the car by about 10 mm');
    expect(await warned({ ...wishboneCorner, damper: { ...damper, on: 'carrier' } })).to.equal(undefined);
    expect(await warned({ ...wishboneCorner, damper }, { ...joint, joint: 'upper' })).to.equal(undefined);
    expect(await warned(referenceCorner)).to.equal(undefined);
  });

  it('says that setting toe again takes a longer tie rod back out, unless nothing is set', async () => {
    const parts = [{ part: 'tieRodLonger', mm: 2 }] as const;
    expect(text(await shown({ parts }))).to.contain('takes this part’s length back out');
    expect(text(await shown({ parts, alignment: 'as-fitted' }))).not.to.contain('back out');
  });

  it('leaves cautions to its element, outside of every fold, and has a picture with what to measure at every part', async () => {
    const element = await shown({
      parts: [
        { part: 'ballJointExtended', mm: 22 },
        { part: 'ballJointMoved', vector: [0, 0, -5] },
        { part: 'wheelOffset', mm: 5 },
      ],
    });
    expect(root(element).querySelectorAll('.cautions')).to.have.length(0);
    for (const part of root(element).querySelectorAll('.part')) {
      expect(part.querySelector('.part-where svg[role=img]')).not.to.equal(null);
      expect(part.querySelector('.part-where p')!.textContent!.length).to.be.greaterThan(40);
    }
  });

  it('passes over a part that nobody knows', async () => {
    const element = await shown({ parts: [{ part: 'longerJoint', mm: 2 } as never, { part: 'rackRaised', mm: 3 }] });
    expect(root(element).querySelectorAll('.part')).to.have.length(1);
  });
});
