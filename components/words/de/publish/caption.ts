import { counted, upper } from '../../../element/sentence.js';
import type { CAPTION } from '../../../publish/caption.words.js';
import { cornerName } from '../corner-name.js';

/** German words that are written below a picture. */
export const CAPTION_DE: typeof CAPTION = {
  method: (parts) => `Verfahren: ${parts.join('; ')}.`,
  readings: (name, count, passes) =>
    `eine Ausgleichskurve durch ${counted(count, 'Messwert', 'Messwerte')} in ${counted(passes, 'Durchgang', 'Durchgängen')}, „${name}“`,
  more: (count) => `und ${counted(count, 'weitere Messreihe', 'weitere Messreihen')}`,
  overBase: {
    dials: (base) => `Spur mit zwei Messuhren im Abstand von ${base}`,
    tape: (base) => `Spur mit einem Maßband über ${base}`,
  },
  driveway: 'Maße mit Maßband und Winkelmesser, gerechnet als ebenes Federbein in der Vorderansicht',
  points: 'Gelenkpunkte, räumlich gerechnet',
  curve: 'eine vorgegebene Kurve',
  interval: 'jedes ± ist ein 95-%-Bereich',
  where: (corner, date) => `${upper(cornerName(corner))}, berechnet am ${date}.`,
  source: (address, version) => `Quelle: ${address}, berechnet mit Bumpline ${version}.`,
  noAddress: (version) => `Berechnet mit Bumpline ${version}.`,
  whose: {
    example: 'Die Zahlen stammen aus einem erfundenen Beispiel.',
    yours: 'Die Zahlen stammen von einem Leser der Seite.',
    partlyYours:
      'Ein Teil der Zahlen stammt von einem Leser der Seite; der Rest steht für das, was nicht angegeben wurde.',
    pages: 'Die Zahlen stammen von der Seite.',
    partlyPages: 'Ein Teil der Zahlen stammt von der Seite; der Rest aus einem erfundenen Beispiel.',
  },
  band: '95-%-Bereich',
};
