import type { OPEN } from '../../../alignment/alignment-open.words.js';

/** German words of the button that opens the alignment sheet. */
export const OPEN_DE: typeof OPEN = {
  open: 'Vermessungsprotokoll',
  close: 'Vermessungsprotokoll schließen',
  missing:
    'Dieser Teil konnte nicht geladen werden. Prüfe die Verbindung und drück den Knopf noch einmal; verloren ist nichts.',
};
