import type { NAMES } from '../../../bumpline-cornering/bumpline-cornering.labels.js';

/** German words of the wheels in a turn, besides those of the first answer. */
export const NAMES_DE: typeof NAMES = {
  ends: {
    outer: 'Dort geht dem kurvenäußeren Rad der Einfederweg aus.',
    inner: 'Dort geht dem kurveninneren Rad der Ausfederweg aus.',
  },
  slider: 'Wankwinkel auf den Federn',
  usualRoll: '3°, angenommen',
  turn: 'Wanken, Lenkung, Reifen und Sturz',
  asked: {
    straight: 'Lenkung geradeaus.',
    steered: (radius) => `Eingelenkt für eine Kurve mit ${radius} Radius.`,
    steer: 'Lenken',
    noTyres: 'Wanken auf den Reifen zählt nicht mit.',
    tyres: (size) => `Auf den Reifen kommen ${size} Wanken hinzu.`,
    tyre: 'Reifen',
    asLeft: 'Sturz im Stand so, wie er sich aus der Höhe ergibt.',
    set: (size) => `Sturz im Stand neu eingestellt auf ${size}.`,
    camber: 'Sturz',
    noTrack: 'Keine Spurweite eingegeben.',
    trackIs: (size) => `Spurweite ${size}.`,
    track: 'Spurweite',
  },
  // Both stand in one line over the drawing.
  outer: 'äußeres Rad',
  inner: 'inneres Rad',
  stock: 'Serienhöhe',
  lower: (size) => `${size} tiefer`,
  higher: (size) => `${size} höher`,
  withSet: (height, set) => `${height}, ${set}`,
  noParts: 'ohne Teile',
  drawing: {
    title: (times, outer, inner) =>
      `Die Achse von hinten in einer Linkskurve, ${times}. Kurvenäußeres Rad ${outer} zur Fahrbahn, kurveninneres Rad ${inner}.`,
    times: (count) => `Neigungen ${count}-fach vergrößert`,
    asIs: 'Neigungen maßstäblich',
    turn: 'Linkskurve, von hinten',
    wheel: (name, size) => `${name} ${size}`,
    rollCentre: 'Wankzentrum',
    rollCentreAt: (height) => `Wankzentrum ${height}`,
    rollCentreFar: 'Wankzentrum außerhalb des Bilds',
    from: (height) => `waagerecht: ${height}`,
  },
  bars: {
    title: 'Wie es sich zusammensetzt',
    chart: (rows) => `Balken, die zusammen die Neigung des kurvenäußeren Rads zur Fahrbahn ergeben. ${rows}.`,
    row: (name, parts, sum) => `${name}: ${parts}; zusammen ${sum}`,
    note: 'Kurvenäußeres Rad; Plus heißt oben nach außen. Jeder Balken beginnt, wo der darüber endet.',
    sum: 'zur Fahrbahn',
    parts: {
      static: 'Sturz im Stand',
      travel: 'Einfedern',
      steer: 'Lenken',
      roll: 'Wanken',
      tyre: 'Reifen',
      rest: 'Rest',
    },
    rest: 'Rest: Ein eingeschlagenes Rad macht nicht das ganze Wanken mit.',
  },
  setups: {
    title: 'Abstimmungen nebeneinander',
    caption: 'Neigung des kurvenäußeren Rads zur Fahrbahn',
    setup: 'Abstimmung',
    asLeft: 'Sturz, wie er sich aus der Höhe ergibt',
    setAgain: (camber) => `Sturz neu eingestellt auf ${camber}`,
    heldRoll: (roll) =>
      `Jede Abstimmung bei ${roll} Wanken der Karosserie. Bei gleicher Querbeschleunigung wankt ein tieferes Auto anders stark; wie stark, hängt von Federn, Schwerpunkt und Wankzentrum ab.`,
    setHow: 'Der Sturz wird auf jeder Höhe neu eingestellt: am Domlager, bei Doppelquerlenkern am oberen Querlenker.',
    none: 'nicht erreichbar',
    waiting: 'Wird berechnet …',
  },
  wheels: {
    title: 'Beide Räder, restlicher Federweg, Wankzentrum',
    caption: (roll) => `Beide Räder bei ${roll} Wanken der Karosserie`,
    what: 'Größe',
    unit: 'Einheit',
    outer: 'Außen',
    inner: 'Innen',
    rows: {
      travel: 'Federweg in der Kurve',
      camber: 'Sturz zur Karosserie',
      inclination: 'Neigung zur Fahrbahn',
      plusMinus: '± dazu, 95\u202f%',
      toe: 'Vorspur',
      steer: 'Lenkwinkel, in die Kurve',
      stopLeft: 'Restlicher Einfederweg bis zum Puffer',
      solidLeft: 'Restlicher Einfederweg bis auf Block',
      bumpLeft: 'Restlicher Einfederweg, bis die Lenker klemmen',
      droopLeft: 'Restlicher Ausfederweg, bis die Lenker klemmen',
    },
    first: {
      outer: 'Zuerst sind die Lenker des kurvenäußeren Rads am Ende, beim Einfedern.',
      inner: 'Zuerst sind die Lenker des kurveninneren Rads am Ende, beim Ausfedern.',
    },
    links:
      'Kein Anschlagpuffer eingegeben. Er beendet das Einfedern lange vor den Lenkern, und sobald er berührt wird, wankt das Auto weniger als auf seinen Federn allein.',
    stop: 'Abstand zum Anschlagpuffer eingeben',
    touched: (left) =>
      `Vorher wird der Anschlagpuffer berührt: ${left} vor dem Einfederweg, den dieses Wanken braucht. Von da an ist die Achse steifer, wankt weniger und hebt sich.`,
    ackermann: (outer, inner, radius) =>
      `Eine Kurve mit ${radius} Radius verlangt außen ${outer} und innen ${inner}, damit kein Rad radiert (Ackermann, ohne Schräglaufwinkel).`,
    rack: (size) => `Die Zahnstange steht ${size} zur Kurve hin.`,
    rollCentre: (height, aside) => `Wankzentrum: ${height}, ${aside}.`,
    level: (height) => `Bei waagerechter Karosserie: ${height}.`,
    above: (size) => `${size} über der Fahrbahn`,
    below: (size) => `${size} unter der Fahrbahn`,
    far: 'Es liegt dort, wo sich zwei fast parallele Linien schneiden; wähle also kein Teil danach aus.',
    out: (size) => `${size} zum kurvenäußeren Rad hin`,
    in: (size) => `${size} zum kurveninneren Rad hin`,
    middle: 'in der Mitte',
    perDegree: (size) => `Jedes weitere Grad Wanken ändert die Neigung des kurvenäußeren Rads um ${size}.`,
  },
  wanted: {
    title: 'Die Neigung erreichen, die du willst',
    enter: 'Zielwert eingeben',
    note: 'Wir kennen keine Daten zur besten Neigung, deshalb schlagen wir keine vor. Deine zeigen dir die Reifentemperaturen quer über die Lauffläche und eine Stoppuhr.',
    now: (size) => `Gewünscht: ${size} zur Fahrbahn, kurvenäußeres Rad.`,
    camber: (size, change) =>
      `Bei diesem Wanken braucht es dafür ${size} Sturz im Stand, eingestellt auf der jetzigen Höhe (${change}).`,
    tooMuch: (most) =>
      `Kein Teil stellt mehr als etwa ${most} ein: Nimm dir einen kleineren Wert vor oder weniger Wanken.`,
    more: (size) => `${size} negativer`,
    less: (size) => `${size} weniger negativ`,
    same: 'wie er ist',
    roll: (size, now) => `Mit dem Sturz, wie er ist, braucht es dafür ${size} Wanken der Karosserie statt ${now}.`,
    noCamber: (limit) => `Bei diesem Wanken führt kein Sturz im Stand dorthin: Am nächsten kommt ${limit}.`,
    noRoll: (limit) => `Mit dem Sturz, wie er ist, führt kein Wanken dorthin: Am nächsten kommt ${limit}.`,
    change: 'Ändern',
    waiting: 'Wird berechnet …',
  },
  sheets: {
    tyreRoll: {
      title: 'Wanken auf den Reifen',
      label: 'Anteil der Reifen',
      howTo:
        'Ein Foto genau von hinten zeigt das ganze Wanken der Karosserie, auf Federn und Reifen; Kabelbinder zeigen den Anteil der Federn. Gib den Unterschied ein. Lässt du das leer, gilt 0.',
    },
    radius: {
      title: 'Radius der Kurve',
      label: 'Radius',
      howTo:
        'Von der Kurvenmitte bis zur Mitte der Hinterachse. Mit dem Radstand ergibt er die Lenkwinkel bei Schritttempo, ohne Schräglaufwinkel. Lass ihn für Lenkung geradeaus leer.',
    },
    wheelbase: {
      title: 'Radstand',
      label: 'Radstand',
      howTo:
        'Von der Mitte der Vorderachse bis zur Mitte der Hinterachse: aus dem Handbuch, oder mit einem Maßband am Auto entlang.',
    },
    track: {
      title: 'Spurweite',
      label: 'Spurweite',
      howTo:
        'Von Radmitte zu Radmitte quer zum Auto: Miss von der Innenkante des einen Reifens bis zur Außenkante des anderen. Sie bestimmt, wie weit sich ein Rad bei gegebenem Wanken bewegt.',
    },
    camber: {
      title: 'Sturz im Stand, neu eingestellt',
      label: 'Sturz im Stand',
      howTo:
        'Der Sturz, den eine Achsvermessung auf der jetzigen Höhe einstellt. Lass das leer für den Sturz, der sich aus Höhe und Teilen ergibt. Oben nach innen ist negativ.',
    },
    wanted: {
      title: 'Neigung, die du willst',
      label: 'Kurvenäußeres Rad zur Fahrbahn',
      howTo:
        'Der Winkel des kurvenäußeren Rads zur Fahrbahn in dieser Kurve; Plus heißt oben nach außen. Wir kennen keinen besten Wert: Es ist dein Ziel.',
    },
  },
  steerNeeds: 'Die Lenkung zählt, sobald Radius und Radstand eingegeben sind.',
  noSteer:
    'Messwerte und Kurven enthalten keine Lenkung. Für Lenkung, Wankzentrum und Teile gib Gelenkpunkte oder die sechs Maße ein.',
  doubtNote:
    'Jedes ± auf dieser Seite ist ein 95-%-Bereich. Dieses gilt für die Neigung des kurvenäußeren Rads, wobei das Wanken als genau bekannt gilt.',
  links:
    'Lenker und Reifen gelten als starr, die Fahrbahn als eben, links und rechts als gleich. Das kurvenäußere Rad federt so weit ein, wie das kurveninnere ausfedert.',
};
