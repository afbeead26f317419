import type { LINKS } from '../../../inputs/links.labels.js';

/** German words around the numbers that links rest on. */
export const LINKS_DE: typeof LINKS = {
  lookAgain: 'Noch einmal ansehen',
  doNotFit: 'Die Lenker passen nicht zusammen. Wahrscheinliche Ursache:',
  axes: 'x von der Achse nach vorn, y von der Fahrzeugmitte nach außen, z vom Boden nach oben; linke Ecke, so wie das Auto beim Messen stand. Kursiv: Beispielwerte; ersetze sie durch deine.',
  floor: 'Höhen ab dem Boden, auf dem das Auto steht. Kursiv: Beispielwerte; ersetze sie durch deine.',
  suspects: 'Was an diesen Punkten auffällt:',
  half: 'unvollständig',
};
