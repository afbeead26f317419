import { expect } from 'chai';
import type { BumplineProblemEvent } from '../../../components/element/events.js';
import { ELEMENTS } from './elements.js';
import { clear, one, type } from './stage.js';

/* What a page is told, and what its style sheet can ask. */

describe('an element and its page', () => {
  afterEach(clear);

  for (const record of ELEMENTS) {
    const { tag } = record;

    it(`<${tag}>: tells what is wrong when it changes, and when nothing is any more`, async () => {
      const element = await one(record);
      const told: (readonly string[])[] = [];
      element.parentElement!.addEventListener('bumpline-problem', ({ problems }: BumplineProblemEvent) => {
        told.push(problems.map(({ path }) => path));
        expect(problems).to.deep.equal(element.problems);
      });
      await type(element, 'nonsense');
      expect(told).to.have.length(1);
      expect(told[0]).to.have.length(1);
      element.setAttribute('angles', 'arcminutes');
      await element.settled;
      element.removeAttribute('angles');
      await element.settled;
      expect(told).to.have.length(1);
      await type(element, record.numbers[0]);
      expect(told.at(-1)).to.deep.equal([]);
      expect(told).to.have.length(2);
    });

    it(`<${tag}>: can be styled by its state, which is one at a time`, async () => {
      const element = document.createElement(tag);
      document.body.append(element);
      const states = ['waiting', 'example', 'incomplete', 'ready', 'stale', 'problem', 'fault'];
      const now = () => states.filter((state) => element.matches(`:state(${state})`));
      await element.updateComplete;
      expect(now()).to.deep.equal([element.state]);
      await element.settled;
      expect(now()).to.deep.equal([element.state]);
      expect(element.state).to.equal('example');
      element.remove();
    });
  }

  it('tells what an author wrote that nobody understands', async () => {
    const seen: string[] = [];
    const hear = ({ problems }: BumplineProblemEvent) => seen.push(...problems.map(({ path }) => path));
    document.addEventListener('bumpline-problem', hear);
    await one({ tag: 'bumpline-lowering' }, 'theme="blue"');
    document.removeEventListener('bumpline-problem', hear);
    expect(seen).to.deep.equal(['theme']);
  });

  it('types the answer of its event', async () => {
    const element = document.createElement('bumpline-lowering');
    const drops: number[] = [];
    // Checked by the compiler: no cast, no annotation.
    element.addEventListener('bumpline-answer', (event) => drops.push(event.answer.drop));
    element.drop = 20;
    document.body.append(element);
    await element.settled;
    element.remove();
    expect(drops.at(-1)).to.equal(20);
  });
});
