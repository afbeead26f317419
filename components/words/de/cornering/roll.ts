import type { ROLL } from '../../../bumpline-cornering/roll.labels.js';

/** German words about where the roll of the body comes from. */
export const ROLL_DE: typeof ROLL = {
  title: 'Woher das Wanken kommt',
  is: (roll, from) => `Wanken auf den Federn: ${roll}, ${from}.`,
  from: {
    typed: 'von Hand eingegeben',
    marks: 'aus Kabelbindern',
    photo: 'aus einem Foto',
    load: 'aus der Querbeschleunigung',
  },
  usual: 'angenommen, bis du es änderst',
  ways: { typed: 'Von Hand', marks: 'Kabelbinder', photo: 'Foto', load: 'Querbeschleunigung' },
  step: {
    typed: 'Wanken von Hand',
    marks: 'Wanken aus Kabelbindern',
    photo: 'Wanken aus einem Foto',
    load: 'Wanken aus der Querbeschleunigung',
  },
  sliderLateral: 'Querbeschleunigung',
  peaks:
    'Kabelbinder zeigen nur Spitzenwerte: Auch ein Randstein oder das Bremsen schiebt sie. Wanken auf den Reifen steckt nicht darin.',
  innerTaken: 'Angenommen ist, dass das kurveninnere Rad so weit ausfedert, wie das kurvenäußere einfedert.',
  tyresOff: (size) => `Die ${size} Wanken auf den Reifen sind von dem abgezogen, was das Foto zeigt.`,
  tyresIn:
    'Wanken auf den Reifen zählt noch als Wanken auf den Federn: Gib es unter „Reifen“ ein, dann wird es abgezogen.',
  oneAxle:
    'Eine Achse allein ergibt noch kein Wanken: Angenommen ist, dass die andere im Verhältnis zu ihrer Steifigkeit dasselbe Wankmoment hat.',
  twoAxles: 'Beide Achsen zählen.',
  otherHalf: 'Die andere Achse zählt, sobald ihre Masse, Spurweite, Federrate und ihr Wankzentrum eingegeben sind.',
  noStop:
    'Kein Anschlagpuffer eingegeben, also zählen nur die Federn. Ein tiefergelegtes Auto berührt seine Puffer womöglich früher.',
  noStopRate:
    'Die Rate des Anschlagpuffers ist nicht eingegeben, also zählen nur die Federn, auch dort, wo der Puffer berührt wird.',
  doubtNote:
    'Jedes ± auf dieser Seite ist ein 95-%-Bereich. Dieses gilt für die Neigung des kurvenäußeren Rads und enthält das ± des Wankens.',
  stopTouched: (at, lift) =>
    `Der kurvenäußere Anschlagpuffer wird bei ${at} Wanken berührt. Von da an ist die Achse steifer, und ihre Mitte hebt sich um ${lift}.`,
  stopTouchedStanding: (lift) =>
    `Der Anschlagpuffer wird schon im Stand berührt: Die Achse ist von Anfang an steifer, und ihre Mitte hebt sich um ${lift}.`,
  stopFree: (at) => `Der Anschlagpuffer bleibt bis ${at} Wanken frei.`,
  liftLeftOut: 'Die Radwinkel enthalten dieses Anheben nicht.',
  transfer: (size) => `Das kurvenäußere Rad trägt ${size} mehr als in Ruhe.`,
  doubt: 'Das ± des Wankens kommt von der Höhe des Schwerpunkts.',
  doubtTaken: (plusMinus) =>
    `Das ± des Wankens kommt von der Höhe des Schwerpunkts: ±\u202f${plusMinus} ist angenommen, bis du sagst, wie sicher du bist.`,
  noRollDoubt: 'Du hast nicht angegeben, wie sicher du beim Wanken bist; deshalb enthält es hier kein ±.',
  missing: (names) => `Für die Rechnung aus der Querbeschleunigung brauchst du noch: ${names}.`,
  enter: 'Eingeben',
  needs: {
    lateral: 'Querbeschleunigung',
    springRate: 'Federrate',
    sprungMass: 'gefederte Masse der Achse',
    centreHeight: 'Höhe des Schwerpunkts',
  },
  heldLateral: (lateral) =>
    `Jede Abstimmung bei ${lateral} Querbeschleunigung. Wie weit eine jede wankt, folgt aus ihrem eigenen Wankzentrum und Schwerpunkt.`,
  ofRoll: (roll) => `${roll} Wanken`,
  tooFar: (roll) =>
    `Bei dieser Querbeschleunigung würde die Karosserie um ${roll} wanken, weiter, als wir rechnen können. Gib weniger davon ein, oder prüfe Federn, Stabilisator und Schwerpunkt.`,
  photoLess: (photo, tyres) =>
    `Das Foto zeigt ${photo} Wanken, weniger als die ${tyres} auf den Reifen allein. Korrigiere eines von beiden.`,
  back: {
    title: 'Zurück zur Neigung auf Serienhöhe',
    better: (now, stock) =>
      `Das ist nicht nötig: Auf dieser Höhe steht das kurvenäußere Rad schon aufrechter zur Fahrbahn (${now}) als auf Serienhöhe (${stock}). Weichere Federn oder ein weicherer Stabilisator würden das nur verschlechtern.`,
    both: (target, springs, bar, roll) =>
      `Damit das kurvenäußere Rad auf dieser Höhe wieder auf die ${target} der Serienhöhe kommt: ${springs}, oder ${bar}. Die Karosserie wankt dann um ${roll}.`,
    one: (target, what, roll) =>
      `Damit das kurvenäußere Rad auf dieser Höhe wieder auf die ${target} der Serienhöhe kommt: ${what}. Die Karosserie wankt dann um ${roll}.`,
    springs: (rate, now) => `Federn mit ${rate} statt ${now}`,
    bar: (rate, now) => `ein Stabilisator mit ${rate} am Ende statt ${now}`,
    newBar: (rate) => `ein Stabilisator mit ${rate} am Rad, wo keiner angegeben ist`,
    noBar: 'gar kein Stabilisator',
    alike: 'Beide Achsen gleich geändert.',
    refused: (target, nearest) =>
      `Keine Feder und kein Stabilisator an dieser Achse bringt das kurvenäußere Rad zurück auf die ${target} der Serienhöhe: Am nächsten kommt ${nearest}.`,
    refusedAtAll: (target) =>
      `Keine Feder und kein Stabilisator an dieser Achse bringt das kurvenäußere Rad zurück auf die ${target} der Serienhöhe.`,
    waiting: 'Wird berechnet …',
  },
  drawn: {
    ties: 'Ein Dämpfer: um seine Kolbenstange ein Kabelbinder, den das Dämpferrohr nach oben geschoben hat. Gemessen wird der Abstand zwischen Rohr und Kabelbinder.',
    photo:
      'Ein Auto von hinten in einer Linkskurve: Eine Linie durch beide Leuchten ist gegen die Linie durch die Aufstandspunkte beider Reifen geneigt. Gemessen wird der Winkel zwischen ihnen.',
    tie: 'Kabelbinder',
    gap: 'Weg des Dämpfers',
    body: 'Dämpferrohr',
    through: 'durch',
    lamps: 'die Leuchten',
    feet: 'durch die Reifenfüße',
  },
  sheets: {
    marks: {
      title: 'Wanken aus Kabelbindern',
      howTo:
        'Leg um jede Kolbenstange einen Kabelbinder und schieb ihn bei stehendem Auto bis auf das Dämpferrohr. Nach der Fahrt ist der Abstand unter dem Kabelbinder der Weg, den dieser Dämpfer eingetaucht ist. Ein Kabelbinder zeigt kein Ausfedern: Hast du für den kurveninneren Dämpfer keinen Wert, lass ihn leer.',
      labels: [
        'Äußerer Dämpfer, Weg hinein',
        'Innerer Dämpfer, Weg heraus',
        'Dämpferweg je Federweg am Rad',
        'Spurweite',
        'Wie sicher jeweils, ±',
      ],
    },
    photo: {
      title: 'Wanken aus einem Foto',
      howTo:
        'Genau von hinten oder vorn, mit dem Zoom aus großer Entfernung, die Kamera etwa so hoch wie die Leuchten. Miss den Winkel zwischen einer Linie durch beide Leuchten und einer durch die Aufstandspunkte beider Reifen, und zieh denselben Winkel am stehenden Auto ab.',
      labels: ['Ganzes Wanken auf dem Foto', 'Wie sicher, ±'],
    },
    lateral: {
      title: 'Querbeschleunigung',
      howTo:
        'Wie scharf die Kurve gefahren wird. Straßenreifen halten auf trockenem Asphalt etwa 0,8 bis 1 g (gängige Praxis, ohne Beleg). Jede Abstimmung wird beim selben Wert verglichen.',
      labels: ['Querbeschleunigung'],
    },
    springs: {
      title: 'Federn dieser Achse',
      howTo:
        'Rate einer Feder, wie sie aufgedruckt ist oder ihr Hersteller sie angibt. Hinter der Zahl darf eine Einheit stehen: 28 N/mm, 160 lb/in oder 2,9 kg/mm.',
      labels: ['Federrate', 'Weg der Feder je Federweg am Rad'],
    },
    masses: {
      title: 'Massen auf dieser Achse',
      howTo:
        'Beide Räder auf der Waage, mit Fahrer im Auto, abzüglich dessen, was die Federn nicht tragen: Räder, Reifen, Bremsen, Radträger, die Hälfte der Lenker und Wellen.',
      labels: ['Von den Federn getragen', 'Nicht von ihnen getragen', 'Spurweite'],
    },
    centre: {
      title: 'Schwerpunkt',
      howTo:
        'Höhe über der Fahrbahn auf Serienhöhe, von dem, was die Federn tragen. Kaum jemand kennt sie: 500 bis 600 mm sind bei einem Kleinwagen üblich (gängige Praxis, ohne Beleg). Gib also an, wie sicher du bist.',
      labels: ['Höhe auf Serienhöhe', 'Wie sicher, ±'],
    },
    rollCentre: {
      title: 'Wankzentrum dieser Achse',
      howTo:
        'Höhe über der Fahrbahn auf der jetzigen Höhe; unter der Fahrbahn ist negativ. Messwerte des Sturzes zeigen es nicht, Gelenkpunkte oder die sechs Maße schon. Es bleibt bei jeder Tieferlegung dasselbe.',
      labels: ['Höhe'],
    },
    bar: {
      title: 'Stabilisator dieser Achse',
      howTo:
        'Kraft an einem Ende je mm, um den sich dieses Ende bewegt, während das andere festgehalten ist: vom Hersteller. Die Übersetzung sagt, wie weit sich dieses Ende je mm am Rad bewegt.',
      labels: ['Rate am Ende', 'Weg des Stabilisatorendes je Federweg am Rad'],
    },
    stop: {
      title: 'Anschlagpuffer in der Kurve',
      howTo:
        'Der Abstand an der Kolbenstange, wo das Auto stand, als du ihn gemessen hast, und die Kraft je mm, sobald der Puffer berührt wird. Tiefergelegt mit kürzeren Federn ist der Abstand um die Tieferlegung kleiner.',
      labels: ['Abstand an der Kolbenstange', 'Rate des Puffers'],
    },
    other: {
      title: 'Andere Achse',
      howTo:
        'Ohne sie ist angenommen, dass die andere Achse im Verhältnis zu ihrer Steifigkeit dasselbe Wankmoment hat. Ihr Wankzentrum bleibt bei jeder Tieferlegung auf der Höhe, die du angibst.',
      labels: ['Von ihren Federn getragen', 'Spurweite', 'Wankzentrum, Höhe', 'Federrate'],
    },
    otherSprings: {
      title: 'Übersetzungen und Stabilisator der anderen Achse',
      howTo:
        'Wie weit sich ihre Feder und das Ende ihres Stabilisators je mm am Rad bewegen, und welche Kraft der Stabilisator dagegensetzt.',
      labels: [
        'Weg der Feder je Federweg am Rad',
        'Rate ihres Stabilisators',
        'Weg des Stabilisatorendes je Federweg am Rad',
      ],
    },
  },
  rates: {
    legend: 'Das ist eine ungewöhnliche Rate für diese Masse. Was trifft zu?',
    check: { label: 'Vielleicht eine andere Einheit: Ich sehe noch einmal nach', short: 'noch zu prüfen' },
    asTyped: { label: 'Sie ist in N/mm', short: 'in N/mm' },
  },
};
