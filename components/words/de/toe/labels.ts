import type { NAMES } from '../../../bumpline-toe/bumpline-toe.labels.js';
import { cornerName } from '../corner-name.js';

/** German words of toe over wheel travel, besides those of the first answer. */
export const NAMES_DE: typeof NAMES = {
  chartX: 'Federweg',
  chartY: 'Spuränderung, Vorspur +',
  chart: (height) =>
    `Wie weit das Rad über dem Federweg nach innen oder außen dreht, gezählt vom Höhenstand des Autos (${height}).`,
  asIs: 'jetzt',
  stock: 'Serienhöhe',
  lower: (size) => `${size} tiefer`,
  higher: (size) => `${size} höher`,
  unmeasured: 'nicht gemessen',
  band: 'Das Band ist der 95-%-Bereich des Rads, wie es jetzt ist, bei gerader Lenkung.',
  ofOne: 'Kurven, Zahlen und Beilegscheiben gelten für ein Rad.',
  table: (corner) => `Spur über dem Federweg, ${cornerName(corner)}`,
  columns: {
    travel: 'Federweg',
    toe: 'Vorspur',
    change: 'Änderung',
    after: (what) => `Änderung, ${what}`,
  },
  cursor: (travel, toe, change) => `${travel}: Spur ${toe}, ${change} ab Höhenstand`,
  cursorUnmeasured: (travel) => `${travel}: nicht bekannt`,
  noParts: 'keine Teile',
  from: 'Quelle der Spur',
  fromLinks: 'Gelenkpunkte',
  fromStep: 'Quelle der Spur',
  paste: 'Spurmesswerte einfügen',
  readings: 'Spurmesswerte',
  pasted: 'Spurmesswerte',
  points: 'Gelenkpunkte eingeben',
  next: (title) => `Weiter: ${title}`,
  edit: 'Gelenkpunkte ändern',
  doubtNote: 'Jedes ± auf dieser Seite ist ein 95-%-Bereich.',
  links: 'Die Lenker gelten als starr: Das Nachgeben von Gummilagern und Reifen und Spiel sind nicht enthalten.',
  numbers: 'Zahlen',
  missing:
    'Dieser Teil konnte nicht geladen werden. Prüfe die Verbindung und drück den Knopf noch einmal; verloren ist nichts.',
  unknown: {
    title: 'Die Spur ist noch nicht bekannt',
    driveway:
      'Sechs Maße mit Maßband und Winkelmesser geben Sturz und Wankzentrum, sagen aber nichts über die Spurstange. Miss die Spur über dem Federweg mit einem Winkelmessgerät, zwei Messuhren oder einem Maßband, oder gib die acht Gelenkpunkte ein.',
    curve:
      'Eine Sturzkurve sagt nichts über die Spurstange. Miss die Spur über dem Federweg mit einem Winkelmessgerät, zwei Messuhren oder einem Maßband, oder gib die acht Gelenkpunkte ein.',
  },
  steered: {
    this: 'eingeschlagen',
    other: 'anderes Rad',
    fold: 'Lenkung einschlagen',
    label: 'Zahnstange nach links (+) oder rechts (−)',
    ahead: 'geradeaus',
    outer: (angle, change, other, over) =>
      `Um ${angle} eingeschlagen ist dies das kurvenäußere Rad: ${change} auf ${over} Einfedern, das kurveninnere ${other}.`,
    inner: (angle, change, other, over) =>
      `Um ${angle} eingeschlagen ist dies das kurveninnere Rad: ${change} auf ${over} Einfedern, das kurvenäußere ${other}.`,
  },
  cure: {
    title: 'Was gegen die Vorspuränderung beim Einfedern (Bump Steer) hilft',
    fold: 'Dicke und Einbau der Beilegscheiben',
    choose: 'Versetzt wird',
    adjust: { outerEnd: 'Spurstange außen', rack: 'Zahnstange', innerEnd: 'Spurstange innen' },
    how: {
      outerEnd:
        'Setz Beilegscheiben oder einen Spurstangenkopf mit Konus zwischen die Spurstange und den Spurhebel am Radträger.',
      rack: 'Setz Distanzstücke unter die Halter der Zahnstange; sie versetzen die Spurstangen beider Räder.',
      innerEnd: 'Versetz das innere Gelenk der Spurstange an der Zahnstange; das ändert nur dieses Rad.',
    },
    slider: {
      outerEnd: 'Äußeres Ende nach oben (+) oder unten (−)',
      rack: 'Zahnstange nach oben (+) oder unten (−)',
      innerEnd: 'Inneres Ende nach oben (+) oder unten (−)',
    },
    asIs: 'unversetzt',
    asItIs: 'Noch ist nichts versetzt.',
    ticks: {
      slope: 'waagerecht im Stand',
      leastSquares: 'kleinste Quadrate',
      minimax: 'am flachsten',
      all: 'am flachsten',
    },
    what: {
      outerEnd: (size, way) => `Spurstangenkopf ${size} ${way}`,
      rack: (size, way) => `Zahnstange ${size} ${way}`,
      innerEnd: (size, way) => `Spurstange innen ${size} ${way}`,
    },
    down: 'tiefer',
    up: 'höher',
    fromTo: (low, high) => `${low} bis ${high}`,
    noRod:
      'Zum Weg dieses Gelenks passt keine Länge der Spurstange, deshalb macht es auch keine andere Beilegscheibe besser.',
    beyond: 'So weit reichen die Lenker nicht. Versuch es im Satz mit weniger Federweg.',
    best: (what, window, after, before) =>
      `Am flachsten wird die Spur so: ${what}. Von ${window} ändert sie sich dann insgesamt um ${after} statt um ${before}.`,
    none: (before, window) =>
      `Flacher wird es nicht: Von ${window} ändert sich die Spur insgesamt um ${before}, und dieses Ende zu versetzen macht das nicht kleiner.`,
    shown: (what, spread, window) => `${what}: Von ${window} ändert sich die Spur insgesamt um ${spread}.`,
    toeSet: 'In jeder Stellung des Reglers gilt die Spur im Stand als über die Länge der Spurstange neu eingestellt.',
    each: (mm, size, over) => `Je ${mm} Beilegscheibe wird die Spuränderung auf ${over} Einfedern um ${size} anders.`,
    tooShort: (size, part) =>
      `Der Rest bleibt, weil die Spurstange für ${part} um ${size} zu kurz ist; keine Beilegscheibe macht es besser.`,
    tooLong: (size, part) =>
      `Der Rest bleibt, weil die Spurstange für ${part} um ${size} zu lang ist; keine Beilegscheibe macht es besser.`,
    part: { strut: 'diesen Querlenker mit diesem Federbein', wishbone: 'dieses Paar Querlenker' },
    outOfRange: (range) => `Bis ${range} hält keine Stellung die Kurve der Spur dort waagerecht, wo das Auto steht.`,
    atEnd: (range) => `Weiter als ${range} probieren wir nicht; darüber hinaus wäre es noch flacher.`,
    facts: {
      slope: 'Waagerecht im Stand',
      leastSquares: 'Kleinste Quadrate',
      minimax: 'Am flachsten',
    },
    fact: (amount, after) => `${amount}, übrig bleiben ${after}`,
    noSlope: 'nicht erreichbar',
    use: (what) => `Probieren: ${what}`,
    step: 'Ende der Spurstange',
    rackStep: 'Lenkeinschlag',
    adjustStep: 'Was versetzt wird',
    again:
      'Bau es ein und miss die Spur dann noch einmal: Keine Rechnung weiß von einem ausgeschlagenen Gelenk, einem weichen Gummilager oder einer verrutschten Markierung.',
    waiting: 'Was die Spur flach macht, wird berechnet …',
  },
  shim: {
    title: 'Was gegen die Vorspuränderung beim Einfedern (Bump Steer) hilft',
    needs:
      'Aus Messwerten allein ergibt sich die Beilegscheibe auf etwa 15\u202f% genau, wenn Länge und Seite der Spurstange und der Spurhebel bekannt sind.',
    enter: (what) => `Eingeben: ${what}`,
    found: (what, rod) =>
      `${what}: Damit bliebe die Spur um den Höhenstand des Autos etwa gleich. Das folgt aus der Steigung deiner Messwerte und diesen Maßen: ${rod}.`,
    flat: 'Die Steigung deiner Messwerte ist zu klein, um sie von null zu unterscheiden; eine Beilegscheibe ergibt sich daraus nicht.',
    rod: (length, arm, side) => `Spurstange ${length}, Spurhebel ${arm}, ${side}`,
    rule: 'Die Regel stammt aus einer Studie an zufälligen Federbeinen, und das ± deckt ab, was sie offen lässt. Leg erst einen Teil der Beilegscheiben unter, miss die Spur noch einmal, dann den Rest.',
  },
  sheets: {
    wheels: {
      title: 'Spur eines Rads oder beider Räder',
      howTo:
        'Ob der Satz angibt, wie weit jedes Rad dreht, oder beide zusammen, wie die Gesamtspur in einem Vermessungsprotokoll.',
      items: {
        one: { label: 'Ein Rad', short: 'ein Rad' },
        both: { label: 'Beide Räder zusammen (Gesamtspur)', short: 'beide Räder' },
      },
    },
    across: {
      title: 'Messdurchmesser für Spur als Länge',
      label: 'Durchmesser',
      howTo:
        'Spur in Millimetern oder Zoll ist der Unterschied zwischen Vorder- und Hinterkante. Sie hängt deshalb davon ab, an welchem Durchmesser du misst: am Felgenhorn oder am Reifen.',
    },
    steeringRatio: {
      title: 'Lenkübersetzung',
      label: 'Lenkrad zu Rad',
      howTo:
        'Um wie viel Grad sich das Lenkrad dreht, wenn die Räder um ein Grad einschlagen: oft 14 bis 18. Sieh im Werkstatthandbuch nach, oder dreh das Lenkrad um eine Viertelumdrehung und miss, wie weit ein Rad einschlägt.',
    },
    rodLength: {
      title: 'Länge der Spurstange',
      label: 'Gelenk zu Gelenk',
      howTo:
        'Von der Mitte des Gelenks an der Zahnstange bis zur Mitte des Gelenks am Radträger, entlang der Spurstange.',
    },
    lever: {
      title: 'Spurhebel',
      label: 'Spurstangengelenk zur Lenkachse',
      howTo:
        'Von oben gesehen: vom äußeren Gelenk der Spurstange bis zur Linie durch das untere Traggelenk und das Domlager, im rechten Winkel zur Spurstange.',
    },
    rackSide: {
      title: 'Seite der Spurstange',
      howTo: 'Sie entscheidet, in welche Richtung eine Beilegscheibe wirkt.',
      items: {
        behind: { label: 'Hinter der Achse', short: 'hinter der Achse' },
        ahead: { label: 'Vor der Achse', short: 'vor der Achse' },
      },
    },
    zeroAt: {
      title: 'Nullpunkt der Messwerte',
      label: 'Unter Serienhöhe',
      howTo:
        'Wie weit das Auto tiefergelegt war, als der Federweg der Messwerte null war. War null der Höhenstand des Autos, ist das die Tieferlegung.',
    },
  },
  drawing: {
    title: (where) => `Vorderansicht von Lenkern und Spurstange, ${where}`,
    ofTravel: (travel) => `bei ${travel} Federweg`,
    aim: (across, height) => `Gestrichelt: Ziel ${across}, ${height}`,
    up: (size) => `${size} höher`,
    down: (size) => `${size} tiefer`,
    inboard: (size) => `${size} weiter innen`,
    outboard: (size) => `${size} weiter außen`,
    level: 'Gestrichelt: soll parallel zum Lenker liegen',
    should: (is, should) => `Spurstange ${is}; passend ${should}, bis zum Ring`,
    isOnly: (is) => `Spurstange ${is}`,
  },
};
