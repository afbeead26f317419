/** All that reads a pasted sheet, the parser among it: one lazy module, fetched when there is something to read. */
export { parseQuantity } from '../../core/quantity/parse.js';
export { quantityIn } from '../../core/readings/table/quantity-in.js';
export { splitText } from '../../core/readings/table/split-text.js';
export { understand } from '../../core/readings/table/understand.js';
