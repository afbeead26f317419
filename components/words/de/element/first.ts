import type { SHARED } from '../../../element/first.words.js';

/** German words that first answers share. */
export const SHARED_DE: typeof SHARED = {
  inside: (name) => name,
  thePages: 'von dieser Seite',
  theExamples: 'aus dem Beispiel',
  withParts: 'Mit „{name}“: ',
  example: 'Beispiel',
  exampleNot: 'Beispiel, nicht {car}',
  yourCar: 'dein Auto',
  pagesCar: 'das Auto dieser Seite',
  cautions: 'Sicherheitshinweise',
  beforeWork: 'Bevor du am Auto arbeitest',
  unread: 'die Daten dieser Seite sind nicht lesbar',
  slow: 'Zeichnung, Diagramm und Felder werden noch geladen …',
  lost: 'Zeichnung, Diagramm und Felder konnten nicht geladen werden. Sobald du wieder online bist, versuchen wir es noch einmal; hilft das nicht, lade die Seite neu.',
  undrawn: 'Ein Teil hiervon konnte nicht gezeichnet werden. Das ist unser Fehler; deine Zahlen bleiben erhalten.',
};
