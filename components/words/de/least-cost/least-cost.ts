import type { NAMES } from '../../../least-cost/least-cost.labels.js';

/** German words of the panel that finds the setups for a wanted inclination. */
export const NAMES_DE: typeof NAMES = {
  ask: 'Gewünschte Neigung eingeben',
  noWanted:
    'Gesucht wird erst, wenn du sagst, was du willst. Vorgeschlagen wird kein Wert: Was ein Reifen mag, sagen sein Verschleiß und seine Temperaturen.',
  waiting: 'Die Abstimmungen werden probiert …',
  fault: 'Die Suche ist fehlgeschlagen. Das ist unser Fehler, nicht deiner; deine Zahlen bleiben erhalten.',
  weights: 'Was dir wichtig ist',
  weightStep: 'was wichtig ist',
  costs: {
    bumpTravel: 'Verlorener Einfederweg',
    bumpSteer: 'Spuränderung beim Einfedern',
    scrubChange: 'Änderung des Lenkrollradius',
    price: 'Geld',
  },
  heads: {
    bumpTravel: 'Verlorener Einfederweg',
    bumpSteer: 'Bump Steer',
    scrubChange: 'Änderung des Lenkrollradius',
    price: 'Preis',
  },
  weight: {
    none: 'ist egal',
    matters: 'ist wichtig',
    most: 'ist am wichtigsten',
  },
  fold: 'Grenzen, Teile und Preise',
  foldNote: 'Kursiv: was angenommen wird, bis du etwas anderes sagst.',
  correct: 'Korrigieren',
  table: (wanted) => `Abstimmungen, die das kurvenäußere Rad auf ${wanted} bringen`,
  setup: 'Abstimmung',
  best: 'am besten',
  bestInAll: 'insgesamt am besten in allem, was dir wichtig ist',
  order: 'In dieser Reihenfolge: zuerst die insgesamt beste in allem, was dir wichtig ist.',
  above: (reach, tried) => `Ergebnisse oben: Jetzt kommen ${reach} von ${tried} Abstimmungen dahin.`,
  aboveNone: 'Ergebnisse oben: Sie gelten noch für die Frage davor.',
  toResults: 'Zeigen',
  wonTravel: (size) => `${size} gewonnen`,
  left: (size) => `${size} übrig`,
  gap: (size) => `Abstand zum Federbein ${size}`,
  open: (size) => `${size} + offen`,
  allOpen: 'offen',
  unknownToe: 'nicht bekannt',
  counts: (tried, reach) => `${tried} Abstimmungen probiert, ${reach}.`,
  reachOne: '1 kommt innerhalb deiner Grenzen dahin',
  reachMany: (count) => `${count} kommen innerhalb deiner Grenzen dahin`,
  chosen: (shown) =>
    `${shown}: die beste in jedem Nachteil, der dir wichtig ist, dann die insgesamt besten, je eine von jeder Mischung aus Teilen. Keine andere Abstimmung ist in allen Nachteilen besser als eine von diesen.`,
  shown: { one: 'Die gezeigte', many: (count) => `Die ${count} gezeigten` },
  solved:
    'Jede ist an der genauen Radaufhängung berechnet, mit neu eingestellter Spur. „Offen“: Ein Teil darin hat noch keinen Preis. Gib 0 ein für das, was du hast.',
  driveway: 'Bump Steer ist nicht bekannt: Sechs Maße mit dem Maßband sagen nichts über die Spurstange.',
  held: (roll) =>
    `Das Wanken ist für alle Abstimmungen auf ${roll} festgehalten. In einer echten Kurve ändern es Höhe, Federn und Stabilisatoren: Gib an, was das Auto wanken lässt, dann wird es berechnet.`,
  alike: 'Für die andere Achse ist dasselbe Wankmoment je Steifigkeit angenommen.',
  worked: (lateral, roll) => `Das Wanken ist für jede Abstimmung bei ${lateral} berechnet (${roll} wie es ist).`,
  asItIs: (inclination, roll) => `Wie es ist: ${inclination} zur Straße bei ${roll} Wanken.`,
  row: {
    asItIs: 'Nichts geändert',
    set: (camber) => `Sturz im Stand ${camber}`,
    by: (way, amount) => `${way}, ${amount}`,
    stock: 'auf Serienhöhe',
    lower: (size) => `${size} unter Serienhöhe`,
    higher: (size) => `${size} über Serienhöhe`,
    joint: (size) => `Traggelenk um ${size} verlängert`,
    rods: 'Spurstangenköpfe passend dazu',
    spring: (rate) => `Federn mit ${rate}`,
    bar: (rate) => `Stabilisator mit ${rate}`,
    onStop: 'Vorher geht der Einfederweg aus: Der Anschlagpuffer ist auf Block, und die Werte gelten nicht.',
    comes: (inclination, roll) => `${inclination} zur Straße bei ${roll} Wanken`,
  },
  ways: {
    topMount: 'verstellbares Domlager',
    knuckleBolts: 'Sturzschrauben',
    knuckle: 'Radträger mit eingearbeitetem Sturz',
    longerArm: 'Querlenker',
    ballJoint: 'im Radträger versetztes Traggelenk',
  },
  none: 'keine',
  notGiven: 'nicht angegeben',
  to: (from, to) => `${from} bis ${to}`,
  limited: (what, size) => `${what} ${size}`,
  priced: (price) => `Preis ${price}`,
  problems: {
    nearest: (wanted, nearest) =>
      `Keine Abstimmung, die du zulässt, bringt das kurvenäußere Rad auf ${wanted}. Am nächsten kommt ${nearest}: Frag danach, oder lass unter „Grenzen, Teile und Preise“ mehr zu.`,
    useNearest: (nearest) => `${nearest} nehmen`,
    none: (wanted) =>
      `Keine Abstimmung, die du zulässt, bringt das kurvenäußere Rad auf ${wanted}. Lass unter „Grenzen, Teile und Preise“ mehr zu.`,
    limit: (name, value, best) =>
      `${name}: Keine Abstimmung hält ${value} ein; die beste kommt auf ${best}. Gib das ein, oder eine weniger strenge Grenze.`,
    limits: 'Keine Abstimmung hält alle deine Grenzen zugleich ein. Lockere eine davon.',
    load: 'Federn und Stabilisatoren ändern nichts, solange das Wanken festgehalten ist. Gib an, was das Auto wanken lässt, oder nimm sie heraus.',
    otherLoad:
      'Mit den Angaben zu Anschlagpuffer, Übersetzungen oder der anderen Achse lässt sich das Wanken nicht berechnen. Korrigiere sie dort, wo nach dem Wanken gefragt wird, unter „Sturz in der Kurve“.',
    tooFar:
      'Bei dieser Querbeschleunigung würde das Auto zu weit wanken, um es zu berechnen. Gib weniger ein, oder prüfe Federn, Stabilisator und Schwerpunkt.',
    noToe:
      'Bump Steer, höchstens: Bei einem mit dem Maßband gemessenen Auto nicht bekannt. Nimm diese Grenze heraus, oder gib die acht Gelenkpunkte ein.',
    noWay: 'Sturz wird eingestellt über: Diese Bauart hat kein solches Teil. Wähl ein anderes.',
    turn: 'So, wie es ist, kommt das Auto nicht durch diese Kurve: Einem Rad oder der Lenkung geht der Weg aus. Frag nach weniger Wanken oder einer weiteren Kurve.',
    needsLeft:
      'Restlicher Einfederweg, mindestens: Gib den jetzigen restlichen Einfederweg ein, damit er erhalten bleiben kann.',
    needsGap: 'Abstand zum Federbein, mindestens: Gib den jetzigen Abstand ein, damit er erhalten bleiben kann.',
  },
  sheets: {
    wanted: {
      title: 'Gewünschte Neigung',
      label: 'Kurvenäußeres Rad zur Straße',
      howTo:
        'Des belasteten kurvenäußeren Rads zur Straße in der Kurve: Minus heißt oben weiter innen. Eine einfache Wahl ist 0°, senkrecht zur Straße, oder etwas Minus; Verschleiß und Temperaturen deines Reifens sagen, was passt.',
    },
    tolerance: {
      title: 'Darf abweichen um',
      label: 'Toleranz',
      howTo:
        'Abstimmungen, die auf beiden Seiten höchstens so weit danebenliegen, gelten als Treffer. Sturz und Höhe gehen in Stufen; lass ihnen ein Zehntelgrad.',
    },
    camber: {
      title: 'Sturz im Stand zur Auswahl',
      labels: ['Von', 'Bis', 'Preis dessen, was ihn einstellt'],
      howTo:
        'In Stufen von einem Zehntelgrad, abgelesen dort, wo das Auto dann steht. Der Preis gilt für Domlager, Schrauben oder Querlenker; 0, wenn du sie hast.',
      by: 'Sturz wird eingestellt über',
    },
    height: {
      title: 'Höhe zur Auswahl',
      labels: ['Tieferlegung, von', 'Tieferlegung, bis', 'Preis des Einstellens'],
      howTo:
        'Unter Serienhöhe, in Stufen von 5 mm. Der Preis gilt für Federn oder Gewindefahrwerk; 0, wenn deines verstellbar ist.',
    },
    joints: {
      title: 'Verlängerte Traggelenke',
      labels: ['Erstes: länger um', 'Sein Preis', 'Zweites: länger um', 'Sein Preis'],
      howTo:
        'Um wie viel tiefer die Kugelmitte im Radträger steht als mit dem, was jetzt montiert ist. Ohne wird immer mitprobiert.',
      rods: 'Spurstangenköpfe',
      kept: 'wie sie sind',
      corrected: 'passend tiefer gesetzt',
    },
    load: {
      title: 'Was das Auto wanken lässt',
      labels: [
        'Querbeschleunigung',
        'Gefederte Masse auf dieser Achse',
        'Schwerpunkt auf Serienhöhe',
        'Federrate',
        'Rate ihres Stabilisators',
      ],
      howTo:
        'Dann ändern Höhe, Federn und Stabilisatoren das Wanken. Schwerpunkt: von allem, was die Federn tragen, über der Straße auf Serienhöhe; 500 bis 600 mm sind bei einem kleinen Auto üblich (gängige Praxis, ohne Beleg). Die Rate eines Stabilisators ist die Kraft an einem Ende je Millimeter dieses Endes; lass sie leer, wenn es keinen gibt.',
    },
    springs: {
      title: 'Federn zur Auswahl',
      labels: ['Erste: Rate', 'Preis des Paars', 'Zweite: Rate', 'Preis des Paars'],
      howTo:
        'Raten anderer Federn für diese Achse. Deine werden immer mitprobiert. Nur wo du sagst, was das Auto wanken lässt.',
    },
    bars: {
      title: 'Stabilisatoren zur Auswahl',
      labels: ['Erster: Rate', 'Sein Preis', 'Zweiter: Rate', 'Sein Preis'],
      howTo:
        'Kraft an einem Ende je Millimeter dieses Endes. Deiner wird immer mitprobiert. Nur wo du sagst, was das Auto wanken lässt.',
    },
    limits: {
      title: 'Grenzen',
      labels: ['Restlicher Einfederweg, mindestens', 'Bump Steer, höchstens', 'Änderung des Lenkrollradius, höchstens'],
      howTo:
        'Abstimmungen jenseits davon fallen weg. Der restliche Einfederweg zählt vom jetzigen aus. Bump Steer: von Spitze zu Spitze, über so viel Ein- und Ausfedern, wie die Wege oben betrachtet werden.',
    },
    gap: {
      title: 'Abstand vom Federbein zum Reifen',
      labels: ['Wie er jetzt ist', 'Mindestens'],
      howTo: 'Wo der Reifen dem Federbein oder seinem Federteller am nächsten kommt. Miss mit gerade stehendem Rad.',
    },
  },
};
