import type { PARTS } from '../../../parts/parts.labels.js';

/** German words of the list of parts: what each is called, what its amounts are, what to measure at the part itself. */
export const PARTS_DE: typeof PARTS = {
  add: 'Teil hinzufügen',
  added: 'Teil hinzufügen',
  remove: 'Dieses Teil abnehmen',
  removed: 'Teil abnehmen',
  changed: (part) => `Maß: ${part}`,
  trusted: (part) => `± für „${part}“`,
  none: 'Noch keine Teile. Wähle unten eines aus.',
  plusMinus: '±',
  within: 'Das Teil entspricht der Angabe auf',
  where: 'Wo es wirkt und was zu messen ist',
  find: {
    title: 'Wie groß muss es sein?',
    rate: (height) => `Ziel, ${height}: je mm Einfedern wieder so viel Sturzänderung wie auf Serienhöhe.`,
    camber: (height) => `Gewünschter Sturz im Stand, ${height}`,
    lower: (drop) => `${drop} tiefer`,
    higher: (drop) => `${drop} höher`,
    stock: 'auf Serienhöhe',
    find: 'Berechnen',
    waiting: 'Wird berechnet …',
    found: (field, size) => `${field} ${size}.`,
    open: 'Zu den Lenkern ist kein ± angegeben, deshalb steht hier keines.',
    besides: 'Das ± ist das der Lenker und der anderen Teile; das des Teils selbst kommt hinzu.',
    use: (size) => `${size} übernehmen`,
    rateEnds: (size, rate, wanted) =>
      `Nicht erreichbar: Bei ${size} ist Schluss, mit ${rate} auf 10 mm Einfedern; gewünscht ist ${wanted}.`,
    camberEnds: (size, camber, wanted) =>
      `Nicht erreichbar: Bei ${size} ist Schluss, mit ${camber}; gewünscht ist ${wanted}.`,
    untold:
      'Aus dem, was über die Lenker bekannt ist, lässt es sich nicht sagen: Das ± ist größer als jedes solche Teil. Pass die Spurstange mit an, oder miss mehr.',
    failed: 'Es ließ sich nicht berechnen. Drück noch einmal.',
    unknown: 'Der Sturz im Stand wurde nicht gemessen. Gib ihn zuerst bei den anderen Maßen ein.',
  },
  tieRod: 'Spurstangenkopf passend tiefer',
  tieRodUpper: 'Spurstangenkopf mit versetzt',
  rod: { corrected: 'Spurstange angepasst', asItWas: 'Spurstange wie vorher' },
  again: 'Nach dem Einbau neu einstellen',
  alignment: {
    toe: 'Spur',
    'camber-and-toe': 'Spur und Sturz',
    'as-fitted': 'Nichts',
  },
  camberSet: {
    strut: 'Der Sturz wird am Domlager eingestellt, danach die Spur an der Spurstange.',
    wishbone: 'Der Sturz wird über die Länge des oberen Querlenkers eingestellt, danach die Spur an der Spurstange.',
  },
  rodUndone:
    'Wird die Spur neu eingestellt, hebt das die Länge dieses Teils wieder auf. Wähle „Nichts“, um zu sehen, was es allein bewirkt.',
  bolt: 'Angenommen, bis du es misst: Die andere Schraube liegt auf der Linie des Dämpfers, 60 mm über der Radmitte.',
  springOnArm: (size) =>
    `Die Feder steht auf diesem Lenker. Dieses Gelenk allein senkt das Auto um etwa ${size}; die Antwort hält die Höhe der Radmitte fest, also zähl das zur Tieferlegung hinzu.`,
  springOnArmUp: (size) =>
    `Die Feder steht auf diesem Lenker. Dieses Gelenk allein hebt das Auto um etwa ${size}; die Antwort hält die Höhe der Radmitte fest, also zieh das von der Tieferlegung ab.`,
  notOn: {
    strut: (part) => `An einem Federbein ist dafür kein Platz: ${part}. Nimm dieses Teil ab.`,
    wishbone: (part) => `An Doppelquerlenkern ist dafür kein Platz: ${part}. Nimm dieses Teil ab.`,
  },
  drawn:
    'Die Ecke von vorn. Die Stelle, an der dieses Teil wirkt, ist markiert, mit einem Pfeil in die positive Richtung.',
  fields: {
    lower: 'Kugelmitte tiefer um',
    higher: 'Kugelmitte höher um',
    out: 'Nach außen',
    ahead: 'Nach vorn',
    down: 'Nach unten',
    up: 'Nach oben',
    longer: 'Länger um',
    front: 'Vorderer Drehpunkt höher um',
    rear: 'Hinterer Drehpunkt höher um',
    inboard: 'Nach innen',
    rearward: 'Nach hinten',
    turned: 'Geschwenkt um',
    boltIn: 'Andere Schraube, von der Radmitte nach innen',
    boltUp: 'Andere Schraube, über der Radmitte',
    boltAhead: 'Andere Schraube, vor der Radmitte',
    camber: 'Zusätzlicher Sturz',
    toe: 'Zusätzliche Vorspur',
    raised: 'Höher um',
    wheelOut: 'Rad weiter außen um',
  },
  /** As a list says which of several amounts it is. */
  brief: {
    out: 'nach außen',
    down: 'nach unten',
    ahead: 'nach vorn',
    front: 'vorn',
    rear: 'hinten',
    inboard: 'nach innen',
    rearward: 'nach hinten',
    up: 'nach oben',
    camber: 'Sturz',
    toe: 'Vorspur',
  },
  kinds: {
    lowerJoint: {
      title: 'Traggelenk unten, länger',
      short: 'Traggelenk unten',
      what: 'Traggelenk unten',
      plus: '+ senkt das äußere Ende des Querlenkers, − hebt es.',
    },
    lowerJointMoved: {
      title: 'Traggelenk unten, versetzt',
      short: 'Traggelenk unten',
      what: 'Traggelenk unten',
      plus: 'Wohin die Kugelmitte im Radträger wandert; negativ ist andersherum.',
    },
    upperJoint: {
      title: 'Traggelenk oben, länger',
      short: 'Traggelenk oben',
      what: 'Traggelenk oben',
      plus: '+ hebt das äußere Ende des Querlenkers über den Radträger, − senkt es.',
    },
    upperJointMoved: {
      title: 'Traggelenk oben, versetzt',
      short: 'Traggelenk oben',
      what: 'Traggelenk oben',
      plus: 'Wohin die Kugelmitte im Radträger wandert; negativ ist andersherum.',
    },
    arm: {
      title: 'Querlenker, länger',
      short: 'Querlenker',
      what: 'Querlenker',
      plus: '+ rückt den Fuß des Rads nach außen: mehr negativer Sturz.',
    },
    upperArm: {
      title: 'Querlenker oben, länger',
      short: 'Querlenker oben',
      what: 'Querlenker oben',
      plus: '+ rückt das Rad oben nach außen: weniger negativer Sturz.',
    },
    pivots: {
      title: 'Innere Drehpunkte, höher',
      short: 'Drehpunkte',
      what: 'Höhere innere Drehpunkte',
      plus: '+ hebt das innere Ende des Querlenkers in der Karosserie, − senkt es.',
    },
    upperPivots: {
      title: 'Innere Drehpunkte oben, höher',
      short: 'Drehpunkte oben',
      what: 'Höhere innere Drehpunkte oben',
      plus: '+ hebt das innere Ende des oberen Querlenkers in der Karosserie, − senkt es.',
    },
    topMount: {
      title: 'Domlager, versetzt',
      short: 'Domlager',
      what: 'Versetztes Domlager',
      plus: 'Nach innen bringt negativen Sturz, nach hinten Nachlauf. Negativ ist andersherum.',
    },
    bolts: {
      title: 'Sturzschrauben am Radträger',
      short: 'Sturzschrauben',
      what: 'Sturzschrauben',
      plus: '+ schwenkt das Rad oben nach innen: mehr negativer Sturz.',
    },
    spin: {
      title: 'Sturz im Radträger',
      short: 'Radträger',
      what: 'Radträger',
      plus: 'Kommt hinzu, wie Sturz geschrieben wird: − neigt das Rad oben nach innen.',
    },
    rodEnd: {
      title: 'Spurstangenkopf, höher',
      short: 'Spurstangenkopf',
      what: 'Höherer Spurstangenkopf',
      plus: '+ hebt das äußere Ende der Spurstange am Radträger, − senkt es.',
    },
    rod: {
      title: 'Spurstange, länger',
      short: 'Spurstange',
      what: 'Länge der Spurstange',
      plus: '+ macht sie länger, − kürzer.',
    },
    rack: {
      title: 'Zahnstange, höher',
      short: 'Zahnstange',
      what: 'Höhere Zahnstange',
      plus: '+ hebt die Zahnstange in der Karosserie, − senkt sie.',
    },
    wheel: {
      title: 'Einpresstiefe oder Distanzscheibe',
      short: 'Rad nach außen',
      what: 'Einpresstiefe',
      plus: '+ rückt das Rad nach außen: eine Distanzscheibe oder eine kleinere ET.',
    },
  },
  /** What to measure at the part itself. */
  measures: {
    joint:
      'Leg das alte und das neue Gelenk nebeneinander. Miss an beiden vom Sitz des Konus bis zur Mitte der Kugel. Nur der Unterschied zählt: Ein längerer Zapfen, dessen Kugel bleibt, wo sie war, ändert nichts.',
    jointMoved:
      'Leg beide Teile nebeneinander. Miss, wie weit die Kugelmitte gegenüber den Bohrungen oder dem Konus versetzt ist, die das Teil halten.',
    arm: 'Leg beide Lenker auf eine Werkbank. Miss an beiden von der Linie durch die inneren Lager bis zur Mitte der Kugel.',
    pivots:
      'Miss vorher und nachher von einer festen Stelle der Karosserie, etwa dem Längsträger, bis zur Mitte jeder inneren Schraube.',
    topMount:
      'Miss, wie weit sich die Mitte des Lagers im Dom bewegt, nicht, wie weit die Platte unter ihren Schrauben gleitet. Nach oben heißt: ein Domlager, dessen Lager höher sitzt.',
    bolts:
      'Den Winkel gibt ein Winkelmessgerät an der Nabe, vorher und nachher an derselben Stelle. Die andere Schraube ist die, die bleibt: Miss von der Radmitte bis zu ihrer Mitte.',
    spin: 'Beide Radträger auf einer Werkbank: an jedem ein Winkelmessgerät an der Anlagefläche der Nabe, gegen die Aufnahme des Dämpfers gemessen.',
    rodEnd:
      'Leg beide Spurstangenköpfe nebeneinander. Miss an beiden vom Sitz des Konus bis zur Mitte der Kugel; zähl die Dicke einer Distanzhülse hinzu.',
    rod: 'Zähl die Umdrehungen: Eine Umdrehung ist die Steigung des Gewindes.',
    rack: 'Die Dicke der Distanzstücke, oder die Höhe des inneren Spurstangengelenks über dem Boden, vorher und nachher.',
    wheel: 'Alte ET minus neue ET, plus die Dicke einer Distanzscheibe.',
  },
};
