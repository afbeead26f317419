import type { GRID } from '../../../bumpline-readings/reading-grid.labels.js';

const ENDS: Readonly<Record<string, string>> = { front: 'vorn', rear: 'hinten' };

/** German words of the grid and its keys. */
export const GRID_DE: typeof GRID = {
  title: 'Messwerte, Höhe für Höhe',
  newRow: 'Neue Höhe',
  again: 'erste noch mal',
  againNote:
    'Lies am Ende jedes Durchgangs seine erste Höhe noch einmal ab, in der letzten Zeile: Daran siehst du, ob etwas gewandert ist.',
  addPass: 'Durchgang hinzufügen',
  onePass: 'Ein Durchgang',
  passName: 'Name dieses Durchgangs',
  way: 'Richtung, in die das Rad ging',
  up: 'aufwärts ↑',
  down: 'abwärts ↓',
  unsaid: 'Richtung nicht angegeben',
  removePass: 'Diesen Durchgang entfernen',
  removeRow: 'Diese Höhe entfernen',
  ownKeys: 'Mit der Tastatur des Geräts tippen',
  theseKeys: 'Tasten zum Drücken zeigen',
  body: 'Die Höhen sind Federweg ab der Höhe, die du null nennst: aufwärts ist plus.',
  phone: 'Neigungssensor dieses Handys verwenden',
  phoneStop: 'Beenden',
  phoneTake: 'Übernehmen',
  phoneWaiting: 'Warten auf den Sensor dieses Handys …',
  phoneDenied: 'Dieses Handy lässt die Seite seine Neigung nicht lesen.',
  steady: 'ruhig',
  unsteady: 'bewegt sich noch',
  phoneNote:
    'Halte das Handy mit der Rückseite flach ans Rad, immer in derselben Vorrichtung. Es zeigt bestenfalls auf ±1° genau, deshalb zählen nur Unterschiede. Geh nicht unter das Auto, und halte auch das Handy nicht darunter.',
  keys: {
    group: 'Tasten',
    erase: 'Letzte Ziffer löschen',
    sign: 'Vorzeichen wechseln',
    next: 'Weiter',
    nextLabel: 'Nächster Messwert',
    degrees: 'Grad',
    minutes: 'Minuten',
    mark: 'Dezimalzeichen',
    part: 'Zwischen vorn und hinten',
  },
  howRead: {
    label: 'Spur gemessen mit',
    gauge: 'Winkelmessgerät an der Nabe, als Winkel',
    dials: 'Zwei Messuhren an einer Platte',
    tape: 'Platte oder Felge und Maßband',
    base: 'Von der vorderen Messstelle zur hinteren',
    front: {
      dials: 'Wandert die Vorderseite des Rads nach innen, zeigt die vordere Messuhr',
      tape: 'Mit dem Maßband gemessen ab',
    },
    choose: 'Bitte wählen',
    told: (gauge, base) => `${gauge}, ${base}`,
    fronts: {
      dials: { inboard: 'mehr an', outboard: 'weniger an' },
      tape: { inboard: 'Schnur außerhalb des Rads', outboard: 'Fahrzeugmitte oder anderem Rad' },
    },
    notes: {
      dials:
        'Beide Messuhren auf einer Höhe; die Basis an der Platte von Taststift zu Taststift gemessen. Stell die Lenkung fest und rühr sie zwischen den Messwerten nicht an.',
      tape: 'Vorn und hinten auf einer Höhe, die Schnur parallel zur Fahrzeugmitte, die Basis an der Platte oder der Felge gemessen. Stell die Lenkung fest und rühr sie zwischen den Messwerten nicht an.',
    },
  },
  pair: 'vorn / hinten',
  pairNote: 'Tippe zu jeder Messung beide Zahlen ein, vorn / hinten. Die Spur, die sie ergeben, steht darunter.',
  sayOver: (cell) =>
    `${cell}: Gib oben an, wie weit die beiden Messstellen auseinanderliegen und wie die vordere zählt. Was du getippt hast, bleibt erhalten.`,
  onePart: (cell, part) =>
    part === 'pair'
      ? `${cell}: Hier gehören zwei Zahlen hin, vorn / hinten.`
      : `${cell}: Die Zahl ${ENDS[part]} fehlt.`,
  ofPart: (cell, part) => `${cell}, ${ENDS[part] ?? part}`,
  signs: {
    camber: 'Minus heißt oben nach innen, Plus oben nach außen',
    toe: 'Minus heißt Nachspur, Plus Vorspur',
  },
  arrows: { up: ' ↑', down: ' ↓' },
  againAt: (cell) => `${cell}, noch einmal`,
  farOff: (cell, value, meant) =>
    `${cell}: ${value} liegt weit ab von den Nachbarwerten. Ist es ${value} oder ${meant}?`,
};
