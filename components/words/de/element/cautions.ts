import type { OF_DIALOGS } from '../../../element/cautions.js';

/** German cautions of dialogs alone. */
export const OF_DIALOGS_DE: typeof OF_DIALOGS = {
  hardTurn:
    'So scharfe Kurven gehören auf eine abgesperrte Strecke, nach deren Regeln, nie auf die Straße. Der Fahrer fährt nur; ein Datenlogger zeichnet den Wert auf.',
  onCourse:
    'Auf abgesperrter Strecke, nach deren Regeln, nie auf der Straße. Jemand anderes macht das Foto, von dort, wo Zuschauer stehen dürfen; der Fahrer fährt nur. Kabelbinder anbringen und ablesen nur auf ebenem Boden: Motor aus, Feststellbremse angezogen, Räder mit Keilen gesichert, kein Körperteil unter dem Auto.',
};
