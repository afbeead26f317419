import type { ContractElement } from './elements.js';

/**
 * What an element does not keep of the contract yet, and why. Each line is a test of its own that fails as soon as the element keeps
 * it: then the line goes.
 */
const ADOPTED = 'its style sheets are those of the document it was made in';
const OVER = 'how much bump readings are asked about is no part of its car: not undone, shared, linked or kept';

export const EXCEPTIONS: readonly { tag: ContractElement['tag']; contract: string; reason: string }[] = [
  {
    tag: 'bumpline-lowering',
    contract: 'keeps its number and goes on working after it was moved in the document',
    reason: 'what its page says is taken again, and with it the page’s drop',
  },
  ...(['bumpline-lowering', 'bumpline-readings', 'bumpline-compare', 'bumpline-clearance'] as const).map((tag) => ({
    tag,
    contract: 'keeps its looks and its number when another document adopts it',
    reason: ADOPTED,
  })),
  ...[
    'a committed value is undone and redone',
    'a reload and a link bring everything back',
    'a reload of a page with its own data brings back what was typed into it',
    'one car is shared through bumpline-car, with its undo',
    'keeps its number and goes on working after it was moved in the document',
  ].map((contract) => ({ tag: 'bumpline-readings' as const, contract, reason: OVER })),
  {
    tag: 'bumpline-readings',
    contract: 'a text that cannot be read stays in its field, is told, and the older answer is marked as one',
    reason: 'the older answer is dimmed and not said to be older',
  },
];
