import type { FIRST_CAUTIONS } from '../../../element/first-cautions.js';

/** German cautions under the sentence of a first answer. */
export const FIRST_CAUTIONS_DE: typeof FIRST_CAUTIONS = {
  predicted: 'Diese Zahlen ersetzen keine Prüfung am Auto und sind nie eine Erlaubnis zu fahren.',
  clearByHand:
    'Ein berechneter Freigang ist nie eine Erlaubnis zu fahren: Reifen, Bremsschlauch und Sensorkabel müssen überall frei bleiben, von Anschlag zu Anschlag der Lenkung, halb und voll eingefedert.',
  stands:
    'Auf den Rädern oder auf Unterstellböcken unter den Wagenheberaufnahmen: fester, ebener Boden, die anderen Räder mit Keilen gesichert. Nie unter ein Auto, das nur der Wagenheber hält, niemand im Auto, Handy weg.',
  afterHeight:
    'Eine neue Fahrzeughöhe verstellt Achsgeometrie, Scheinwerfereinstellung, Assistenzsensoren (Kalibrierung), den lastabhängigen Bremskraftregler (ALB) und die Bodenfreiheit.',
  rules:
    'Die Vorschriften sind von Land zu Land verschieden: Frag die Prüfstelle oder einen amtlich anerkannten Sachverständigen in deinem Land, bevor du fährst.',
};
