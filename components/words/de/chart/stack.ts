import type { STACK } from '../../../chart/stack.labels.js';

/** German words around a stack of charts. */
export const STACK_DE: typeof STACK = {
  chart: 'Diagramm',
  closer: 'Vergrößern',
  closerAt: 'Um die Ablesestelle vergrößern',
  all: 'Ganzer Federweg',
  howTo: 'Zieh über ein Diagramm, um es zu vergrößern; ein Doppelklick zeigt wieder den ganzen Federweg.',
  slow: 'Die Diagramme werden noch geladen …',
  lost: 'Die Diagramme konnten nicht geladen werden. Die Zahlen stehen unten in der Tabelle.',
  slider: (name) => `Federweg, abgelesen am Diagramm: ${name}`,
};
