import type { CONTROLS } from '../../../controls/controls.labels.js';

/** German words of the controls. */
export const CONTROLS_DE: typeof CONTROLS = {
  copied: 'Kopiert.',
  selected: 'Der Text ist markiert: Kopiere ihn mit der Tastatur oder durch langes Drücken.',
  copyLink: 'Link zu diesem Auto kopieren',
  shared: 'Geteilt.',
  noLink: 'Der Link konnte nicht erstellt werden. Prüfe die Verbindung und versuch es noch einmal.',
  tooLong: (most) =>
    `Dieses Auto ist zu lang für einen Link: Mail- und Chatprogramme schneiden Links nach ${most} Zeichen ab. Auch die Adresse dieser Seite enthält es nicht; nach dem Neuladen wäre es weg. Speichere es als Datei.`,
  saveFile: 'Als Datei speichern',
  saved: 'Als Datei gespeichert. „Datei öffnen“ liest sie wieder ein, hier oder auf einer anderen Seite.',
  notSaved: 'Die Datei konnte nicht gespeichert werden. Prüfe die Verbindung und versuch es noch einmal.',
  fileName: 'bumpline-car.json',
  openFile: 'Datei öffnen',
  opened: 'Datei öffnen',
  isOpen: (name) => `${name} ist geöffnet.`,
  notOpened: 'Die Datei konnte nicht geöffnet werden. Prüfe die Verbindung und versuch es noch einmal.',
  noJson:
    'In dieser Datei ist kein Auto. Geändert wurde nichts. Wähle eine Datei, die hier gespeichert wurde (bumpline-car.json).',
  badFile: (path, value) =>
    `In dieser Datei steht bei ${path}: ${value}. Das lässt sich nicht lesen. Geändert wurde nichts. Wähle eine Datei, die noch so ist, wie sie hier gespeichert wurde.`,
  nothing: 'nichts',
  lengths: 'Längen in',
  angles: 'Winkel in',
  degrees: 'Grad',
  arcminutes: 'Grad, Min.',
  numbers: 'Zahlen zeigen',
  numbersOnPaper: 'Zahlen',
  copyNumbers: 'Als CSV kopieren',
  csv: 'Zahlen als CSV',
};
