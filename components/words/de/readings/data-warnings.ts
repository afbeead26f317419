import type { WORDS } from '../../../bumpline-readings/data-warnings.words.js';

const COUNTED: Readonly<Record<string, string>> = { Höhe: 'Höhen', Wert: 'Werte', Messwert: 'Messwerte' };
/** By what was read, where it stands at the height called zero. */
const STATIC = { camber: 'der Sturz im Stand', toe: 'die Spur im Stand' } as const;

/** A pass after "von", "zwischen": the one without a name has an article. */
const dative = (pass: string): string => pass.replace(/^Der Durchgang/, 'dem Durchgang');

/** German words about readings that look wrong. */
export const WORDS_DE: typeof WORDS = {
  gauge: 'Winkelmessgerät',
  paired: 'Messuhren oder Maßband',
  noPass: 'Der Durchgang ohne Namen',
  pass: (name) => `Durchgang ${name}`,
  lower: (pass) => pass.replace(/^Der Durchgang/, 'der Durchgang'),
  listed: (passes) => passes.join(', ').replace(/, ([^,]*)$/, ' und $1'),
  count: (amount, word) => `${amount} ${amount === 1 ? word : (COUNTED[word] ?? word)}`,
  ownSet: ({ length }) =>
    length > 1
      ? 'gehören diese Durchgänge in einen eigenen Teilesatz'
      : 'gehört dieser Durchgang in einen eigenen Teilesatz',
  height: (at) => `die Höhe ${at}`,
  units: { arcminutes: 'Winkelminuten', degrees: 'Grad', in: 'Zoll', mm: 'Millimeter' },
  otherUnits: { arcminutes: 'Grad', degrees: 'Winkelminuten', in: 'Millimetern', mm: 'Zoll' },
  slip: ({ of, proposed, readings: [i] }, pen) => {
    const { travel, value } = pen.readings[i!]!;
    const [is, other] =
      of === 'travel' ? [WORDS_DE.height(pen.at(travel)), pen.at(proposed)] : [pen.typed(value), pen.typed(proposed)];
    return `${pen.reading(i!)}: ${is} passt nicht; ${other} würde passen.`;
  },
  fixes: {
    make: (value) => `Auf ${value} ändern`,
    aside: (value) => `${value} ausklammern`,
    swap: 'Werte tauschen',
    scale: (unit) => `Als ${unit} lesen`,
    turn: (of) => `Vorzeichen der ${of === 'travel' ? 'Höhen' : 'Werte'} umkehren`,
    newSet: () => 'Eigenen Teilesatz daraus machen',
    ownPass: 'Eigenen Durchgang daraus machen',
  },
  of: {
    'wrong-sign': (warning, pen) => [WORDS_DE.slip(warning, pen), 'Prüfe das Vorzeichen.'],
    'decimal-slip': (warning, pen) => [
      WORDS_DE.slip(warning, pen),
      'Prüfe, ob eine Ziffer oder das Komma verrutscht ist.',
    ],
    'mixed-units': ({ readings, of, unit, isWholePass, pass = '' }, pen) => {
      const what = of === 'travel' ? 'Höhe' : 'Wert';
      const first = pen.reading(readings[0]!);
      const last = pen.readings[readings.at(-1)!]!;
      const isOne = readings.length === 1 && !isWholePass;
      const which = isWholePass
        ? `${pen.pass(pass)}: Alle ${COUNTED[what]} sehen`
        : isOne
          ? `${first}: ${of === 'travel' ? 'Die Höhe' : 'Der Wert'} sieht`
          : `${first} bis ${pen.at(last.travel)}: ${WORDS_DE.count(readings.length, what)} sehen`;
      const fits = isOne ? `passt ${of === 'travel' ? 'sie' : 'er'}` : 'passen sie';
      return [
        `${which} nach ${WORDS_DE.units[unit].replace('Millimeter', 'Millimetern')} unter lauter ${WORDS_DE.otherUnits[unit]} aus; so gelesen ${fits}.`,
        `Prüfe, in welcher Einheit ${readings.length > 1 ? 'sie' : of === 'travel' ? 'sie' : 'er'} notiert ${readings.length > 1 ? 'wurden' : 'wurde'}.`,
      ];
    },
    swapped: ({ readings: [a, b] }, pen) => [
      `${pen.reading(a!)} und ${pen.at(pen.readings[b!]!.travel)}: Die Werte (${pen.typed(pen.readings[a!]!.value)} und ${pen.degrees(
        pen.readings[b!]!.value,
      )}) passen, wenn man sie tauscht.`,
      'Prüfe, ob sie in der falschen Reihenfolge eingegeben wurden.',
    ],
    'reversed-pass': ({ of, pass, other }, pen) => {
      const figures = of === 'travel' ? 'Höhen' : 'Werte';
      return other === undefined
        ? [
            `${pen.pass(pass)} läuft andersherum als die übrigen; mit umgekehrtem Vorzeichen seiner ${figures} passt er.`,
            of === 'travel'
              ? 'Prüfe, welche Richtung als Einfedern zählt.'
              : 'Prüfe, wie herum das Winkelmessgerät angesetzt war.',
          ]
        : [
            `${pen.pass(pass)} und ${WORDS_DE.lower(pen.pass(other))} laufen gegeneinander; kehrt man bei einem von beiden das Vorzeichen der ${figures} um, stimmen sie überein.`,
            of === 'travel'
              ? 'Prüfe, welcher von beiden das Einfedern positiv zählt.'
              : 'Prüfe, bei welchem das Winkelmessgerät umgedreht war.',
          ];
    },
    'slipped-within': ({ pass, shift, before, from, readings }, pen) => [
      `${pen.pass(pass)}: Zwischen ${pen.at(before)} und ${pen.at(from)} springen die Messwerte um ${pen.amount(shift)} und bleiben dort (${WORDS_DE.count(
        readings.length,
        'Messwert',
      )}).`,
      'Vielleicht ist das Winkelmessgerät verrutscht. Wenn ja, mach aus dem, was danach kam, einen eigenen Durchgang.',
    ],
    'slipped-between': ({ pass, offset, other }, pen) => [
      `${pen.pass(pass)} liegt ${pen.amount(offset)} ${offset < 0 ? 'unter' : 'über'} ${
        other === undefined ? 'den anderen Durchgängen' : dative(pen.pass(other))
      }.`,
      `Der Kurve schadet das nicht, denn jeder Durchgang hat seinen eigenen Nullpunkt. Betroffen ist ${STATIC[pen.name]}: Prüfe, wie das Winkelmessgerät angesetzt war.`,
    ],
    'body-moved': ({ pass, isWithin, other = '', mm, degrees }, pen) => {
      const moved = `die Karosserie um ${pen.length(mm)} ${mm < 0 ? 'abgesunken' : 'hochgekommen'}; das macht bis zu ${pen.amount(degrees)} aus`;
      return [
        isWithin
          ? `${pen.pass(pass)}: Während des Messens ist ${moved}.`
          : `Zwischen ${dative(pen.pass(other))} und ${dative(pen.pass(pass))} ist ${moved}.`,
        isWithin
          ? 'Setz das Auto satt auf die Unterstellböcke, prüfe, dass Feder und Anschlagpuffer ausgebaut sind, und miss den Durchgang noch einmal.'
          : 'Prüfe die Unterstellböcke, und stell die Höhen vor dem nächsten Durchgang neu ein.',
      ];
    },
    outlier: ({ readings: [i], expected }, pen) => [
      `${pen.reading(i!)}: ${pen.typed(pen.readings[i!]!.value)} passt nicht zu den anderen; nach ihnen wären es etwa ${pen.degrees(expected)}.`,
      'Miss noch einmal, oder klammere den Wert aus, wenn du den Grund kennst.',
    ],
    duplicate: ({ readings, isSameValue, odd }, pen) => {
      const values = readings.map((i) => pen.typed(pen.readings[i]!.value));
      const times = readings.length === 2 ? 'zweimal' : `${readings.length}-mal`;
      return [
        `${pen.reading(readings[0]!)} gibt es ${times}${
          isSameValue ? `, jedes Mal mit ${values[0]}` : `: ${values.slice(0, -1).join(', ')} und ${values.at(-1)}`
        }${odd === undefined ? '' : `; ${pen.typed(pen.readings[odd]!.value)} passt dort nicht`}.`,
        isSameValue ? 'Wurde der Wert zweimal eingegeben?' : 'Prüfe, ob einer der Werte zu einer anderen Höhe gehört.',
      ];
    },
    'few-readings': ({ dof, more }) => [
      dof === 0
        ? 'Es sind zu wenige Messwerte, um zu sagen, wie weit der Kurve zu trauen ist.'
        : `Nur ${WORDS_DE.count(dof, 'Messwert')} mehr, als die Kurve braucht: Weit ist ihr nicht zu trauen.`,
      `Miss mindestens ${more} weitere, am besten als eigenen Durchgang.`,
    ],
    'short-pass': ({ pass, readings }, pen) => [
      `${pen.pass(pass)} hat nur ${readings.length === 1 ? 'einen Messwert, und der sagt über die Kurve nichts' : 'zwei Messwerte, und die sagen über die Kurve wenig'}.`,
      'Ein Durchgang hat seinen eigenen Nullpunkt: Gib ihm drei Messwerte oder mehr, oder nenn den Durchgang, zu dem er gehört.',
    ],
    gap: ({ from, to, bend }, pen) => [
      `Zwischen ${pen.at(from)} und ${pen.at(to)} wurde nichts gemessen, und die Kurve krümmt sich dort um ${pen.amount(bend)}.`,
      'Miss dort ein paar Werte.',
    ],
    pattern: ({ degree, better }) => [
      `Die Messwerte pendeln um die Kurve vom Grad ${degree}: Sie ist dafür zu steif.`,
      `Versuch es mit Grad ${better}.`,
    ],
    'up-down': ({ upLessDown }, pen) => [
      `Aufwärts zeigt das Winkelmessgerät ${pen.amount(upLessDown)} ${upLessDown < 0 ? 'weniger' : 'mehr'} als abwärts. Das ist mehr, als es streut.`,
      'Such nach Spiel oder Reibung in Gelenken und Gummilagern, und fahr jede Höhe von derselben Seite an.',
    ],
    repeatability: ({ sd, limit }, pen) => [
      `Wiederholte Messwerte streuen um ${pen.amount(sd)}; bei einem Winkelmessgerät an der Nabe sind es selten mehr als ${pen.amount(limit)}.`,
      'Prüfe, ob das Winkelmessgerät fest sitzt, die Lenkung gerade festgestellt ist und jede Höhe sorgfältig eingestellt wird.',
    ],
    'two-sets': ({ passes, others, degrees }, pen) => [
      `${WORDS_DE.listed(others.map(pen.pass))} ${others.length > 1 ? 'ergeben' : 'ergibt'} eine andere Kurve als ${WORDS_DE.listed(
        passes.map(pen.pass).map(WORDS_DE.lower),
      )}: ${pen.amount(degrees)} Unterschied über den Federweg.`,
      `Waren andere Teile montiert? Dann ${WORDS_DE.ownSet(others)}.`,
    ],
    drift: ({ drift, apart }, pen) => {
      const isGauge = pen.instrument === WORDS_DE.gauge;
      const clamp = isGauge ? 'spann das Winkelmessgerät fester' : 'spann Messuhren oder Maßband fester';
      return [
        `${isGauge ? 'Das Winkelmessgerät ist' : 'Messuhren oder Maßband sind'} vom ersten bis zum letzten Messwert jedes Durchgangs um ${pen.amount(drift)} gewandert. Aus der Kurve ist das herausgerechnet.`,
        apart
          ? `Oder es waren andere Teile montiert (${WORDS_DE.listed(apart.passes.map(pen.pass).map(WORDS_DE.lower))}); dann ${WORDS_DE.ownSet(apart.passes)}. Wenn nicht, ${clamp}, und lies am Ende jedes Durchgangs die erste Höhe noch einmal ab.`
          : `${clamp.replace('spann', 'Spann')}${isGauge ? ' und lass es warm werden' : ''}. Sagt das nur ein einziger Messwert, prüfe diesen.`,
      ];
    },
    'pass-apart': ({ pass, other, degrees, mm, apart }, pen) => [
      `${pen.pass(pass)} läuft über seinen Federweg um ${pen.amount(degrees)} von ${other === undefined ? 'den anderen' : dative(pen.pass(other))} weg${
        mm === undefined ? '' : `, als wären seine Höhen ${pen.length(mm)} zu ${mm < 0 ? 'hoch' : 'niedrig'}`
      }. Das ± ist deshalb größer.`,
      `Prüfe, welche Höhe in diesem Durchgang null heißt und ob Winkelmessgerät oder Karosserie gewandert sind. ${
        apart
          ? `Waren andere Teile montiert? Dann ${WORDS_DE.ownSet(apart.passes)}.`
          : 'Ein weiterer Durchgang zeigt, welcher stimmt.'
      }`,
    ],
    correlated: ({ count: all, effective }) => [
      `Benachbarte Messwerte liegen gemeinsam daneben: ${all} Messwerte sagen nicht mehr als ${effective} unabhängige. Das ± ist deshalb größer.`,
      'Beim Messen kriecht etwas: Rüttle vor jedem Messwert am Rad, klopf ans Winkelmessgerät, und beginn den nächsten Durchgang ganz von vorn.',
    ],
    coarse: ({ step }, pen) => [
      `Jeder Wert ist ein Vielfaches von ${pen.amount(step)}. Für eine Kurve ist das grob.`,
      'Lies das Winkelmessgerät feiner ab, wenn es das hergibt.',
    ],
  },
};
