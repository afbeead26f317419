import type { LABELS } from '../../../bumpline-compare/bumpline-compare.labels.js';

/** German words of the comparison of parts and heights, besides those of the first answer. */
export const LABELS_DE: typeof LABELS = {
  body: {
    pressOther: 'Tippe jetzt auf ein anderes Feld, um es mit diesem zu vergleichen.',
    one: 'Mit einem Teilesatz kannst du Höhen vergleichen. Füge einen zweiten hinzu, um Teile zu vergleichen.',
    ownOnly:
      'Das ist dein Auto, wie es ist: Du kannst Höhen vergleichen. Um Teile zu vergleichen, füge Teile hinzu oder Messwerte, die mit anderen Teilen entstanden sind.',
    overLess: (bump) => `Über ${bump} Einfedern vergleichen`,
    fromHigher: (place) => `Das Auto vergleichen: ${place}`,
    cell: (row, column) => `Tabelle dieser Seite, Zeile ${row}, Spalte ${column}`,
    height: (number) => `Höhe ${number}`,
    ofSet: (set, field) => `${set}: ${field}`,
    drop: (set) => `Tieferlegung: ${set}`,
    stock: 'Serienhöhe',
    even: (drop) => `gleichauf bei ${drop}`,
  },
  table: {
    title: (figure) => `${figure}, nach Teilen und Höhe. Tippe auf ein Feld, dann auf ein anderes.`,
    add: 'Höhe hinzufügen',
    remove: 'Diese Höhe entfernen',
    edit: 'Tieferlegung dieser Höhe',
    outside: 'nicht gemessen',
    beyond: 'jenseits von Block',
    overDroop: (droop) => `Beim Ausfedern: auf den nächsten ${droop} nach unten.`,
    inDroop: (change) => `${change} beim Ausfedern`,
    predicted: 'vorhergesagt',
    measured: 'gemessen',
    tieRod: (said) => `Spurstange ${said}`,
  },
  figures: {
    label: 'Zeigen',
    names: {
      change: 'Sturzänderung beim Einfedern',
      camberAtEnd: 'Sturz nach dem Einfedern',
      rate: 'Sturzänderung je Weg',
      toeChange: 'Spuränderung beim Einfedern',
      rollCentre: 'Höhe des Wankzentrums',
    },
    in: 'Vorspur',
    out: 'Nachspur',
    measureToe: 'messen',
    noCamber: 'unbekannt',
    noLinks: 'nur mit Lenkern',
    coming: '…',
    toeNote: 'Messwerte und sechs Maße sagen nichts über die Spur: Miss sie.',
    centreNote: 'Wankzentrum über dem Boden, beide Räder gleich bewegt.',
  },
  costs: {
    title: (cell) => `${cell}, außer dem Sturz:`,
    lowered: 'passend tiefer gesetzt',
    moved: 'passend versetzt',
    in: (size) => `${size} Vorspur`,
    out: (size) => `${size} Nachspur`,
    noToe: (within) => `keine Spur, die sich von null unterscheiden lässt (±\u202f${within})`,
    toeLink: (cell) => `Warum das Rad beim Einfedern lenkt und was das abflacht: ${cell}`,
    toe: (here) =>
      `Auf diesem Einfederweg kommt zu dem, was das Auto ohne das Teil tut, hinzu: ${here} (Vorspuränderung beim Einfedern, Bump Steer).`,
    toeUnless: (rod, here, other) =>
      `Auf diesem Einfederweg kommt zu dem, was das Auto ohne das Teil tut, hinzu: ${here} (Vorspuränderung beim Einfedern, Bump Steer), solange der Spurstangenkopf nicht ${rod} ist. Ist er ${rod}: ${other}.`,
    toeCorrected: (rod, here, other) =>
      `Ist der Spurstangenkopf ${rod}, kommt auf diesem Einfederweg zu dem, was das Auto ohne das Teil tut, hinzu: ${here} (Vorspuränderung beim Einfedern, Bump Steer). Bleibt er, wie er war: ${other}.`,
    measure: 'Spur: Miss sie. Sechs Maße können nicht zeigen, wie ein Teil das Rad beim Einfedern lenkt.',
    measureJoint: (rod) =>
      `Spur: Miss sie. Solange der Spurstangenkopf nicht ${rod} ist, lenkt dieses Gelenk das Rad beim Einfedern (Bump Steer). Sechs Maße können nicht zeigen, wie stark.`,
    measureCorrected: (rod) =>
      `Spur: Miss sie. Auch wenn der Spurstangenkopf ${rod} ist: Sechs Maße können nicht zeigen, wie weit das Rad beim Einfedern lenkt (Bump Steer).`,
    above: (size) => `Wankzentrum ${size} über dem Boden`,
    below: (size) => `Wankzentrum ${size} unter dem Boden`,
    centre: (here) => `${here}.`,
    centreHigher: (here, by, cell) => `${here}, ${by} höher als: ${cell}.`,
    centreLower: (here, by, cell) => `${here}, ${by} tiefer als: ${cell}.`,
    centreSame: (here, cell, within) => `${here}; nicht zu unterscheiden (±\u202f${within}) von: ${cell}.`,
  },
  lists: {
    fromTo: (from, to) =>
      `Von: ${from}. Nach: ${to}. Wie viel jeder Schritt an der Sturzänderung auf dem Einfederweg ändert.`,
    inOrder: (first, second) => `${first}, dann ${second}`,
    unmeasured: 'so weit wurde nichts gemessen',
    against: (reference) =>
      `Zum Vergleich: ${reference}. Gesucht ist die Tieferlegung, bei der dasselbe Einfedern den Sturz gleich stark ändert. Unterhalb dieser Höhe gleicht das Teil nur einen Teil der Tieferlegung aus.`,
    paths: 'Zwei Wege vom einen zum anderen',
    heightFirst: 'Erst die Höhe, dann das Teil',
    partFirst: 'Erst das Teil, dann die Höhe',
    interaction: 'Mehrwirkung des Teils bei Tieferlegung',
    notTold: ', von null nicht zu unterscheiden',
    rate: 'Allein nach der Sturzänderung je Weg',
    each: 'Sturzänderung je Weg und Sturz wie abgelesen',
    camber: (there, atEnd) => (atEnd === undefined ? `; ${there}` : `; ${there} bis ${atEnd}`),
    eachNote:
      'Wie schnell sich der Sturz auf jeder Höhe ändert, dann der Sturz selbst, dort und am Ende des Einfederwegs, wie ihn das Winkelmessgerät anzeigte. War dessen Nullpunkt falsch, ist es auch dieser Wert.',
    even: 'Gleichstand',
    doubt: 'Jedes ± ist ein 95-%-Bereich.',
    leftOut: 'Die eigenen Werte des Autos fehlen hier, weil sie keine Kurve ergeben:',
    leftOutSet: (name) => `Weggelassen ist ${name}:`,
    why: 'Warum ±, und was es nicht abdeckt',
    apart:
      'Winkelmessgerät, Maßband und Nullhöhe zählen für jeden Teilesatz getrennt, als hätte jeder eigene. Dasselbe Winkelmessgerät und dasselbe Maßband für beide macht einen Gleichstand kaum ein Zehntel Millimeter genauer.',
  },
  reach: {
    solid: (travel) => `Die Federung ist bei ${travel} auf Block`,
    curve: (name, travel) => `${name}: Die Kurve endet bei ${travel}`,
    readings: (name, travel) => `${name}: Die Messwerte enden bei ${travel}`,
    left: (ends, bump, height) => `${ends}, also nach ${bump} Einfedern (Höhe: ${height}).`,
    above: (ends, height) => `${ends}, noch oberhalb der gewählten Höhe (${height}).`,
  },
  wrong: {
    title: 'Was an den Messwerten falsch aussieht',
    more: (count) => `Und ${count} mehr: Sieh dir die Messwerte für sich an.`,
  },
  sets: {
    add: 'Messwerte von Teilen hinzufügen',
    added: 'Messwerte von Teilen hinzufügen',
    sets: 'Deine Teilesätze',
    allSets: 'Teilesätze',
    ofPage: 'von einer Seite',
    name: 'Name dieses Teilesatzes',
    renamed: 'Name eines Teilesatzes',
    remove: 'Diesen Teilesatz entfernen',
    removed: 'Teilesatz entfernen',
    addParts: 'Teile hinzufügen',
    addedParts: 'Teile hinzufügen',
    choose: 'Welches Teil zuerst?',
    parts: (text) => `Teile: ${text}`,
    noLinks:
      'Teile sitzen an den eigenen Lenkern des Autos. Dieses Auto ist nur eine Kurve: Gib Maße oder Gelenkpunkte ein, um zu sehen, was Teile bewirken.',
    missing:
      'Das Eingabefeld für Messwerte konnte nicht geladen werden. Drück noch einmal, sobald die Verbindung wieder steht.',
  },
  chart: {
    x: 'Einfedern ab der Höhe',
    y: 'Sturzänderung',
    solid: 'auf Block',
    described: (lines) => `Sturzänderung über Einfedern und Ausfedern, gezählt ab der jeweiligen Höhe: ${lines}.`,
    and: ' und ',
  },
};
