import { describe, expect, it } from 'vitest';
import { type Costed, chosenOf, frontOf, isNoWorse, type SetupCosts } from '../../../core/answers/least-cost-front.js';
import { finished } from './finished.js';

const costs = (more: Partial<SetupCosts> = {}): SetupCosts => ({
  bumpTravel: 10,
  bumpSteer: 0.2,
  scrubChange: 2,
  price: 300,
  unpriced: 0,
  ...more,
});
let order = 0;
const setup = (more: Partial<SetupCosts> = {}, others: Partial<Costed> = {}): Costed => ({
  costs: costs(more),
  miss: 0,
  changes: 1,
  order: order++,
  hardware: `${order}`,
  ...others,
});

describe('a price that nobody gave', () => {
  it('never beats a known one, however much cheaper the rest is', () => {
    expect(isNoWorse(costs({ price: 0, unpriced: 1 }), costs())).toBe(false);
    expect(isNoWorse(costs({ price: 100, unpriced: 1 }), costs({ unpriced: 2 }))).toBe(false);
    const [known, open] = [setup(), setup({ price: 0, unpriced: 1 })];
    expect(finished(frontOf([known, open]))).toHaveLength(2);
  });

  it('is beaten where the known ones cost no more and nothing else is open', () => {
    expect(isNoWorse(costs(), costs({ unpriced: 1 }))).toBe(true);
    expect(isNoWorse(costs({ unpriced: 1 }), costs({ unpriced: 3 }))).toBe(true);
    expect(isNoWorse(costs({ price: 301 }), costs({ unpriced: 1 }))).toBe(false);
  });

  it('is best in nothing, and counts as the highest in the order', () => {
    const [known, open] = [setup({ price: 500 }), setup({ price: 0, unpriced: 1, bumpTravel: 9.9 })];
    const shown = chosenOf([known, open], {
      price: 'most',
      bumpTravel: 'none',
      bumpSteer: 'none',
      scrubChange: 'none',
    });
    expect(shown.map(({ one }) => one)[0]).toBe(known);
    expect(shown[0]!.bestIn).toContain('price');
    expect(shown[1]!.bestIn).not.toContain('price');
  });
});

describe('frontOf', () => {
  it('keeps of setups that cost the same the one that comes nearest to what is wanted', () => {
    const [far, near] = [setup({}, { miss: 0.09 }), setup({}, { miss: 0.01 })];
    expect(finished(frontOf([far, near]))).toEqual([near]);
    expect(finished(frontOf([near, far]))).toEqual([near]);
  });

  it('takes for the same what differs by less than anybody sets', () => {
    const [one, other] = [
      setup({ scrubChange: 2.0001 }, { miss: 0.02 }),
      setup({ bumpTravel: 10.0001 }, { miss: 0.01 }),
    ];
    expect(finished(frontOf([one, other]))).toEqual([other]);
  });
});

describe('chosenOf', () => {
  it('shows the best in each cost that counts, then by score one of each mix of parts, five at the most', () => {
    const best = [
      setup({ bumpTravel: 0, price: 900 }),
      setup({ bumpSteer: 0.01, price: 900 }),
      setup({ scrubChange: 0, price: 900 }),
      setup({ price: 0, bumpTravel: 30 }),
    ];
    const others = Array.from({ length: 6 }, (_, i) =>
      setup({ price: 310 + i, bumpTravel: 9 - i }, { hardware: 'same' }),
    );
    const shown = chosenOf([...others, ...best]).map(({ one }) => one);
    expect(shown).toHaveLength(5);
    for (const one of best) expect(shown).toContain(one);
    expect(shown.filter(({ hardware }) => hardware === 'same')).toHaveLength(1);
  });

  it('puts what matters most first, and nothing but fewer changes where nothing matters', () => {
    const [cheap, low] = [setup({ price: 0, bumpTravel: 20 }, { changes: 2 }), setup({ price: 900, bumpTravel: 0 })];
    expect(chosenOf([cheap, low], { price: 'most' })[0]!.one).toBe(cheap);
    expect(chosenOf([cheap, low], { bumpTravel: 'most' })[0]!.one).toBe(low);
    const none = { bumpTravel: 'none', bumpSteer: 'none', scrubChange: 'none', price: 'none' } as const;
    expect(chosenOf([cheap, low], none)[0]!.one).toBe(low);
  });
});
