import type { SLOT } from '../../../publish/slot.labels.js';

/** German words of the fold before what is in it has come. */
export const SLOT_DE: typeof SLOT = {
  pictures: 'Bilder speichern',
  readings: 'Messwerte speichern',
  both: 'Bilder und Messwerte speichern',
  coming: 'Wird geladen …',
  lost: 'Dieser Teil konnte nicht geladen werden. Sobald die Verbindung wieder steht, wird es noch einmal versucht.',
};
