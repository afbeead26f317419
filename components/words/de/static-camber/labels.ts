import type { NAMES } from '../../../bumpline-static-camber/bumpline-static-camber.labels.js';
import { cornerName } from '../corner-name.js';

/** German words of what lies under the sentence. */
export const NAMES_DE: typeof NAMES = {
  slider: 'Sturz dazu (− mehr negativ)',
  asItIs: 'nichts dazu',
  costs: {
    kingpin: () => ({ label: 'Spreizung', short: 'Spreizung' }),
    scrubRadius: () => ({ label: 'Lenkrollradius', short: 'Lenkrollr.' }),
    caster: () => ({ label: 'Nachlauf', short: 'Nachlauf' }),
    casterTrail: () => ({ label: 'Nachlaufstrecke', short: 'Nachl.-Str.' }),
    halfTrack: () => ({ label: 'Halbe Spurweite', short: 'Halbe Spurw.' }),
    camberChange: (over) => ({ label: `Sturzgewinn auf den nächsten ${over} Einfedern`, short: 'Sturzgewinn' }),
    toeBefore: () => ({ label: 'Spur vor der Achsvermessung', short: 'Spur vorher' }),
    bumpSteer: (over) => ({
      label: `Vorspuränderung (Bump Steer) innerhalb von ±${over}, nach der Achsvermessung`,
      short: 'Bump Steer',
    }),
    rollCentreHeight: () => ({ label: 'Höhe des Wankzentrums', short: 'Wankzentr.' }),
    inclinationAt15: () => ({ label: 'Kurvenäußeres Rad bei 15° Lenkeinschlag', short: 'Außen, 15°' }),
    inclinationAt30: () => ({ label: 'Kurvenäußeres Rad bei 30° Lenkeinschlag', short: 'Außen, 30°' }),
    innerAt15: () => ({ label: 'Kurveninneres Rad bei 15° Lenkeinschlag', short: 'Innen, 15°' }),
    innerAt30: () => ({ label: 'Kurveninneres Rad bei 30° Lenkeinschlag', short: 'Innen, 30°' }),
    inTurn: () => ({ label: 'Kurvenäußeres Rad zur Straße, in der Kurve', short: 'In der Kurve' }),
    bumpTravel: () => ({ label: 'Einfederweg', short: 'Einfederweg' }),
    gapStrut: () => ({ label: 'Abstand vom Federbein zum Reifen', short: 'Federb.-Abst.' }),
  },
  groups: {
    steering: 'Lenkachse',
    setting: 'Spur',
    travel: 'Über dem Federweg',
    turn: 'Neigung zur Straße',
    room: 'Platz',
  },
  table: {
    asked: (by, sense) => `${by} ${sense} Sturz`,
    title: (asked) => `Wege zum Ziel „${asked}“, und was jeder ändert`,
    way: 'Weg',
    asItIs: 'Wie es ist',
    camber: (angle) => `${angle} Sturz`,
    sortBy: 'Sortieren nach',
    unsorted: 'wie aufgeführt',
    sortStep: 'Reihenfolge der Wege',
    sorted: (what, order) => `Sortiert nach: ${what}, ${order}.`,
    first: {
      smallest: ['kleinstes zuerst', 'größtes zuerst'],
      largest: ['größtes zuerst', 'kleinstes zuerst'],
      most: ['meistes zuerst', 'wenigstes zuerst'],
      least: ['wenigstes zuerst', 'meistes zuerst'],
    },
    unreachedLast: 'Wege, die nicht reichen, stehen zuletzt.',
    turn: 'Umkehren',
    scroll: 'Für weitere Spalten seitwärts wischen oder scrollen.',
    legend: 'Fett: die Änderung; darunter der neue Wert. Vorspur ist positiv.',
    notKnown: 'nicht bekannt',
    notReached: 'nicht erreicht',
    waiting: '…',
  },
  ways: {
    topMount: 'Verstellbares Domlager',
    knuckleBolts: 'Sturzschrauben am Radträger',
    knuckle: 'Bearbeiteter Radträger',
    longerArm: 'Längerer Querlenker',
    ballJoint: 'Versetztes Traggelenk',
    lowering: 'Tieferlegen, zum Vergleich',
  },
  shorts: {
    topMount: 'Domlager',
    knuckleBolts: 'Schrauben',
    knuckle: 'Radträger',
    longerArm: 'Querlenker',
    ballJoint: 'Traggelenk',
    lowering: 'Tieferlegen',
  },
  shorterArm: 'Kürzerer Querlenker',
  raising: 'Höherlegen, zum Vergleich',
  ends: (end, given) => `reicht nicht: ${end} ergibt ${given}`,
  needs: (amount) => ` (nötig: ${amount})`,
  none: 'bewirkt hier nichts',
  before: 'Vor dem Kauf: was du wissen solltest',
  pictures: 'Als Balken, Größe für Größe',
  whichPictures: { first: 'die wichtigsten', all: 'alle' },
  now: (figure) => `jetzt ${figure}`,
  morePictures: (count) => `${count} weitere Größen`,
  picturesNote:
    'Jeder Balken ist die Änderung einer Größe. Blasse Balken gehören zu Wegen, die nicht reichen, und können über den Rand hinausgehen.',
  noToe:
    'Sechs Maße mit Maßband und Winkelmesser sagen nichts über die Spurstange; Bump Steer und Spur vor der Achsvermessung sind daher nicht bekannt. Gib die acht Gelenkpunkte ein, oder miss die Spur über dem Federweg.',
  wishbone:
    'Ein Doppelquerlenker hat weder ein Domlager, das das Rad aufrecht hält, noch Schrauben an einem Federbein: Diese zwei Wege fallen weg.',
  turnNote: (roll, tyres, steer) =>
    `„In der Kurve“ heißt ${roll} Wanken der Federung${tyres}, ${steer}, bei dieser Tieferlegung, mit neu eingestellter Spur.`,
  turnAt: (roll, lateral) => `${roll} (bei ${lateral}, für jeden Weg neu berechnet)`,
  turnMarks: (roll) => `${roll} (aus den Kabelbindern)`,
  turnComing: 'In der Kurve: Das Wanken wird berechnet.',
  turnNoRoll:
    'In der Kurve: Das Wanken lässt sich aus den Angaben dafür nicht berechnen. Korrigiere sie, oder gib das Wanken selbst ein.',
  turnTyres: (angle) => ` und ${angle} an den Reifen`,
  turnStraight: 'Lenkung geradeaus',
  turnRadius: (radius, wheelbase) => `Kurvenradius ${radius} bei einem Radstand von ${wheelbase}`,
  turnSolid: (taken, left, short) =>
    `Vorher geht der Anschlagpuffer des kurvenäußeren Rads auf Block: Dieses Wanken braucht ${taken} Einfedern, übrig sind nur ${left}, also ${short} zu wenig. So weit kommt das Auto nie.`,
  turnSolidWith: (ways) => `Bei diesen Wegen geht der Anschlagpuffer des kurvenäußeren Rads vorher auf Block: ${ways}.`,
  turnFault: 'Die Kurve ließ sich nicht berechnen; die übrigen Werte gelten.',
  turnBeyond: (roll, limit) =>
    `In der Kurve: Bei ${roll} Wanken geht einem Rad dieses Autos der Federweg aus; die Lenker reichen bis ${limit}. Frag nach weniger Wanken.`,
  turnTight: (radius, limit) =>
    `In der Kurve: Ein Radius von ${radius} ist enger als der volle Lenkeinschlag, der bei ${limit} endet. Frag nach einer weiteren Kurve.`,
  steerNote:
    'Bei 15° und 30° Lenkeinschlag: die Neigung des Rads zur Straße bei waagerechtem Aufbau, mit dem Sturz aus dem Nachlauf.',
  roomNote:
    'Einfederweg: was der Dämpferhub am Rad gewinnt. Abstand vom Federbein: wie weit sich das Federbein von der nächsten Kante des Reifens entfernt.',
  archNote: 'Der Abstand vom Reifen zum Radlauf wird hier nicht berechnet: Miss ihn danach noch einmal.',
  boltNote: 'Sturzschrauben: Der Radträger dreht sich um die untere Schraube; wo sie sitzt, ist angenommen.',
  limits:
    'Wie weit jeder Weg geht, richtet sich danach, was solche Teile meist zulassen, nicht nach Gesetz oder Reglement.',
  aligned:
    'Nach jedem dieser Wege ist eine Achsvermessung nötig: zuerst die Höhe, dann den Sturz, dann die Spur einstellen.',
  competition: 'Reglements schränken manche dieser Wege oft ein. Lies das deiner Klasse, bevor du kaufst.',
  bolts:
    'Exzenterschrauben halten ihre Einstellung allein durch Klemmkraft: Zieh sie mit dem Drehmoment des Herstellers an und prüfe sie nach einiger Fahrt noch einmal.',
  links: 'Die Lenker gelten als starr: Nachgiebigkeit von Gummilagern und Reifen und Spiel sind nicht enthalten.',
  noDoubt:
    'Das sind Unterschiede am selben Auto; ein Fehler in seinen Punkten hebt sich daher größtenteils auf. Ein ± wird dafür nicht berechnet.',
  noParts: 'keine Teile',
  points: 'Gelenkpunkte eingeben',
  next: (title) => `Als Nächstes: ${title}`,
  edit: 'Gelenkpunkte ändern',
  numbers: (corner) => `Wege zu mehr Sturz im Stand, ${cornerName(corner)}`,
  csv: {
    way: 'Weg',
    amount: 'Betrag',
    reached: 'Erreicht',
    yes: 'ja',
    no: 'nein',
    camber: 'Sturz',
    change: (what) => `${what}, Änderung`,
  },
  problems: {
    by: 'Sturz dazu',
    over: 'Federweg',
    unreached: (asked, sense, most) =>
      `Sturz dazu: Kein Weg hier bringt ${asked} ${sense} Sturz; das meiste sind ${most}. Frag nach ${most} oder weniger.`,
    nothing: (asked, sense) =>
      `Sturz dazu: Kein Weg hier bringt diesem Auto ${asked} ${sense} Sturz. Frag nach weniger oder nach der anderen Richtung.`,
    most: (asked, most) => `Sturz dazu: ${asked} ist mehr, als ein Straßenauto verträgt. Gib ${most} oder weniger ein.`,
    useMost: (most) => `${most} nehmen`,
  },
  sheets: {
    over: {
      title: 'Betrachteter Federweg',
      label: 'Einfedern',
      howTo:
        'Der Sturzgewinn gilt für so viel Einfedern von dort, wo das Auto steht; Bump Steer für ebenso viel Ein- und Ausfedern. Ein Bordstein, Bremsen oder eine Kurve braucht meist etwa 40 mm.',
    },
    roll: {
      title: 'Wanken in der Kurve',
      label: 'Wanken der Federung',
      change: 'Wanken ändern',
      howTo:
        'Wie weit sich der Aufbau in der Kurve auf der Federung neigt: aus einem Foto genau von hinten (ohne den Anteil der Reifen), oder aus Kabelbindern an beiden Dämpfern. Ein Straßenauto, hart durch die Kurve gefahren, wankt um etwa 3°.',
    },
  },
};
