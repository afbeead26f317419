import { words } from '../../core/quantity/words.js';

/** English words around a stack of charts. */
export const STACK = words('chart/stack', {
  chart: 'Chart',
  closer: 'Zoom in',
  closerAt: 'Zoom in at the cursor',
  all: 'All travel',
  howTo: 'Drag across a chart to zoom in; double-click for all travel.',
  slow: 'The charts are still loading …',
  lost: 'The charts could not be fetched. The numbers are in the table below.',
  slider: (name: string): string => `Wheel travel, read off the chart of ${name}`,
});
