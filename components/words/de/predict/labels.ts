import type { NAMES } from '../../../bumpline-predict/bumpline-predict.labels.js';
import { cornerName } from '../corner-name.js';

/** A pass within a sentence: the one without a name has an article. */
const inside = (pass: string): string => pass.replace(/^Der Durchgang/, 'der Durchgang');

/** German words of what parts would do, besides those of the first answer. */
export const NAMES_DE: typeof NAMES = {
  chartX: 'Federweg',
  chartY: 'Sturzänderung',
  chartToe: 'Vorspuränderung',
  chart: (height) =>
    `Vorhersage über dem Federweg, gezählt vom Höhenstand des Autos (${height}), mit dem Band, das Messwerte und Maßband übrig lassen, dem breiteren, das das Maßband allein ließe, und den Messwerten.`,
  predicted: 'Vorhersage',
  stock: 'jetzt',
  heights: {
    stock: 'Serienhöhe',
    lower: (size) => `${size} tiefer`,
    higher: (size) => `${size} höher`,
  },
  unmeasured: 'nicht gemessen',
  legend: 'Band: Messwerte und Maßband, 95 %. Dünne Linien: nur Maßband. Kreuze: deine Messwerte.',
  legendExample: 'Band: Messwerte und Maßband, 95 %. Dünne Linien: nur Maßband. Kreuze: Messwerte.',
  legendFitted: 'Kreise: Messwerte mit den Teilen.',
  legendBeyond: 'Gestrichelt: nicht gemessen.',
  cursor: (travel, predicted, tape, isMeasured) =>
    `${travel}: Vorhersage ${predicted}, nach dem Maßband allein ${tape}${isMeasured ? '' : '; gemessen wurde dort nichts'}`,
  cursorUnknown: (travel) => `${travel}: nicht bekannt`,
  columns: { travel: 'Federweg', predicted: 'Vorhersage', tape: '± nur Maßband', stock: 'Jetzt' },
  numbersOf: (corner) => `Vorhergesagte Änderung über dem Federweg, ${cornerName(corner)}`,
  slider: 'Tieferlegung (− höher als Serie)',
  of: {
    legend: 'Zeigen',
    camber: 'Sturz',
    toe: 'Spur',
    unknown:
      'Sturzmesswerte und sechs Maße mit dem Maßband sagen nichts über die Spur. Füge dafür auch Spurmesswerte ein, oder gib die Gelenkpunkte ein.',
  },
  figures: {
    title: 'Woraus die Änderung besteht',
    what: '',
    change: (over) => `Änderung, ${over}`,
    rollCentre: 'Wankzentrum',
    withSet: 'Mit den Teilen',
    asItIs: 'Jetzt',
    byTape: 'Nur Maßband',
    shifted: 'Messwerte verschoben',
    notKnown: 'nicht bekannt',
    waiting: '…',
  },
  found: {
    title: 'Was die Messwerte sagen',
    together: 'Messwerte und Maßband passen zusammen.',
    goodness: (perDof, dof, chance) =>
      `Chi-Quadrat: ${perDof} je Freiheitsgrad (${dof}); so schlecht passen die Lenker durch Zufall in ${chance} der Fälle.`,
    hardly: (times) =>
      `Messwerte und Maßband passen kaum zusammen: Durch Zufall allein läge nur eines von ${times} Autos so weit daneben.`,
    doubtful: (times) =>
      `Messwerte und Maßband widersprechen sich. Eines von beiden ist falsch, und nichts verrät, welches. Die Messwerte grenzen hier deshalb nichts ein, und das ± des Maßbands zählt ${times}-fach. Der Fehler kann noch größer sein.`,
    pulls: (names) => `Am weitesten daneben: ${names}. Miss das zuerst nach.`,
    odd: (pass, chi) =>
      `${pass} gehört nicht zu den anderen: Seine Kurve ist eine andere (Chi-Quadrat ${chi} je Freiheitsgrad gegen die übrigen; üblich ist etwa 1). Wurde er an diesem Auto gemessen, mit denselben Teilen?`,
    oddHeight: (pass, size, isHigher) =>
      `${pass} gehört nicht zu den anderen: Er sieht aus, als wäre er ${size} ${isHigher ? 'höher' : 'tiefer'} begonnen oder mit anderen Teilen gemessen worden. Prüfe, welche Höhe null heißt und welche Teile am Auto waren.`,
    oddEither: (one, other) =>
      `${one} und ${inside(other)} zeigen nicht dieselbe Kurve. Einer von beiden gehört zu einem anderen Auto oder zu anderen Teilen, oder er wurde auf einer anderen Höhe begonnen.`,
    few: (readings, heights) =>
      `Es gibt nur ${readings} auf ${heights} ${heights === '1' ? 'Höhe' : 'Höhen'}, deshalb ist das ± groß. Sechs Höhen oder mehr, in zwei Durchgängen, sagen viel mehr.`,
    oneSided: (side, other) =>
      `Gemessen wurde nur beim ${side}. Über das ${other} sagen allein die Lenker etwas, deshalb ist das ± dort größer.`,
    noZero:
      'Auf der Höhe, die null heißt, wurde nichts gemessen. Das kostet nichts: Der Nullpunkt jedes Durchgangs ergibt sich aus all seinen Messwerten.',
    turns: (times) =>
      `Ein Durchgang ging ${times}-mal von einem Ende zum anderen. Hast du das Winkelmessgerät dazwischen neu genullt, dann gib jedem Teil einen eigenen Durchgang: mit einer Überschrift, die den Durchgang nennt, oder mit einer Spalte für die Durchgänge.`,
    passHigher: (pass, size) => `${pass} wurde ${size} höher begonnen als die anderen.`,
    passLower: (pass, size) => `${pass} wurde ${size} tiefer begonnen als die anderen.`,
    pass: (name) => `Durchgang ${name}`,
    thePass: 'Der Durchgang',
    passOfSet: (set) => `Der Durchgang von „${set}“`,
    passIn: (pass, set) => `${pass} von „${set}“`,
    sides: { bump: 'Einfedern', droop: 'Ausfedern' },
    passesTaken: 'Das ist berücksichtigt.',
    slip: (pass, nth, travel, size, isMore) =>
      `${pass}: Ab dem ${nth}. Messwert, bei ${travel}, zeigt das Winkelmessgerät ${size} ${isMore ? 'mehr' : 'weniger'}. Hat es sich auf seiner Halterung bewegt?`,
    look: 'Diese Messwerte ansehen',
    aside: 'Ausklammern',
    asideStep: 'Messwerte nach einem Verrutschen ausklammern',
    from: 'ab hier',
    travel: 'Federweg',
    reading: 'Winkelmessgerät',
    limits: 'Was das ± abdeckt',
    unseen:
      'Drei Dinge können Messwerte nicht zeigen, deshalb deckt das ± sie ab: eine Drift, die in jedem Durchgang gleich ist, die Skalen von Winkelmessgerät und Maßband, und wie weit das Teil sein Gelenk wirklich versetzt.',
    wrongIf: (drift, gauge, tape, zero) =>
      `Der Fehler kann größer sein, wenn das Winkelmessgerät in jedem Durchgang um mehr als ${drift} wandert, seine Skala um mehr als ${gauge} falsch ist, die des Maßbands um mehr als ${tape} oder die Höhe, die null heißt, um mehr als ${zero}; oder wenn ein Teil nicht das ist, als was es verkauft wird.`,
    alternate:
      'Miss jeden zweiten Durchgang abwärts: Dann zeigt sich eine Drift, die in jedem Durchgang gleich ist, und das ± wird kleiner.',
    droop: (joint, more, end, to) =>
      `Mit einem Gelenk, das ${joint} tiefer sitzt, stehen die Lenker so, wie Messwerte sie etwa ${more} weiter ausgefedert zeigen würden. Deine enden bei ${end}; miss bis ${to}.`,
    beyond: (to, end) =>
      `Von ${end}, wo deine Messwerte enden, bis ${to} stützt sich die Vorhersage allein auf die Lenker.`,
    below: (to, end) =>
      `Von ${to} bis ${end}, wo deine Messwerte beginnen, stützt sich die Vorhersage allein auf die Lenker.`,
  },
  next: {
    title: 'Was du als Nächstes am besten misst',
    brings: (what, then, now) =>
      now === undefined
        ? `${what}: Damit wären es etwa ${then}.`
        : `${what}: Statt ${now} wären es damit etwa ${then}.`,
    waiting: 'Wird berechnet …',
    none: 'Keine einzelne weitere Messung würde das ± viel kleiner machen.',
    mendFirst: 'Finde zuerst, was oben nicht zusammenpasst. Bis dahin macht keine weitere Messung das ± kleiner.',
    what: {
      toeSweep: 'Die Spur über den Federweg messen',
      otherWay: 'Noch ein Durchgang, andersherum gemessen (von voll eingefedert abwärts)',
      anotherPass: 'Noch ein Durchgang, auf denselben Höhen',
      moreTravel: (mm) => `Jeden Durchgang an beiden Enden ${mm} weiter messen`,
      otherSide: 'Messwerte auf der Seite des Federwegs, die fehlt, in jedem Durchgang',
      caster: 'Der Nachlauf aus einem Vermessungsprotokoll',
      again: (name) => `${name}, sorgfältig gemessen`,
      point: (name, size) => `${name}, auf ±\u202f${size} nachgemessen`,
    },
  },
  links: {
    title: 'Diese Lenker auf den anderen Seiten',
    use: 'Diese Lenker auf den anderen Seiten verwenden',
    back: 'Zurück zu den Lenkern nach Maßband',
    isUsed: (count) =>
      `Jede Seite zu diesem Auto verwendet jetzt seine Lenker, korrigiert durch ${count}: Tieferlegung, Vergleich, Freigang, Spur, Kurvenfahrt und Sturz im Stand.`,
    isNot: 'Die anderen Seiten verwenden weiter die Lenker nach Maßband.',
    useStep: 'Lenker nach Messwerten korrigiert',
    backStep: 'Lenker wie gemessen',
  },
  record: {
    title: 'Hat es gestimmt?',
    why: 'Halte diese Vorhersage fest, bevor du die Teile einbaust. Miss die Kurve danach mit ihnen noch einmal, dann wird beides verglichen.',
    keep: 'Vorhersage festhalten',
    keepStep: 'Vorhersage festgehalten',
    kept: (date, version, what) => `Festgehalten am ${date}, Version ${version}: ${what}.`,
    change: (change, over, drop) => `${change} über ${over}, ${drop}`,
    paste: 'Messwerte mit diesen Teilen einfügen',
    pasteName: 'Messwerte mit den Teilen',
    pasteStep: 'Messwerte mit den Teilen',
    notBefore:
      'Vor diesen Messwerten wurde keine Vorhersage festgehalten. Die gezeigte entsteht erst jetzt, allein aus den Messwerten ohne die Teile.',
    agrees: (measured, predicted) =>
      `Mit den Teilen gemessen: ${measured}. Vorhergesagt: ${predicted}. Beides passt zusammen.`,
    differs: (measured, predicted, difference) =>
      `Mit den Teilen gemessen: ${measured}. Vorhergesagt: ${predicted}. Der Unterschied ist ${difference}, mehr, als beide ± zulassen.`,
    likely: 'Sieh nach, was eingebaut ist (wahres Maß des Teils, Spurstange), dann, welche Höhe null heißt.',
    otherZero: (from) =>
      `Beides passt zusammen, wenn diese Höhen ${fromHeight(from)} zählen${from === NAMES_DE.heights.stock ? '' : ', dem Höhenstand des Autos'}. Tun sie das?`,
    countFrom: (from) => `Ab ${from === NAMES_DE.heights.stock ? from : `„${from}“`} zählen`,
    zeroStep: 'Höhe, die null heißt',
    over: (over, from) => `Über ${over} ${fromHeight(from)}, so weit gemessen wurde.`,
    inside: (inside, all) => `${inside} von ${all} Messwerten liegen im Band.`,
    chi: (chi, dof, chance) =>
      `Chi-Quadrat der Unterschiede gegen beide ±: ${chi} bei ${dof} Freiheitsgraden; so groß durch Zufall in ${chance} der Fälle.`,
    comparing: 'Vergleich mit den Messwerten …',
    remove: 'Diese Aufzeichnung entfernen',
    removeStep: 'Vorhersage entfernt',
    save: 'Aufzeichnung speichern',
    copy: 'Als CSV kopieren',
    saved: 'Die Aufzeichnung ist gespeichert.',
    notSaved: 'Die Aufzeichnung konnte nicht gespeichert werden.',
    fileName: 'prediction.json',
    text: 'Aufzeichnung als CSV',
    columns: {
      travel: 'Federweg ab Serienhöhe',
      predicted: 'Vorhergesagte Änderung',
      plusMinus: '±',
      measured: 'Gemessene Änderung',
    },
  },
  needs: {
    title: 'Was dafür nötig ist',
    readings: 'Sturz über den Federweg gemessen, bevor die Teile ans Auto kommen',
    links: 'Die Lenker: sechs Längen und Winkel mit dem Maßband oder acht Gelenkpunkte',
    points: (count) => `Die übrigen Gelenkpunkte: ${count} von 8 sind eingegeben`,
    done: 'vorhanden',
    missing: 'fehlt',
    why: 'Messwerte geben die Kurve, wie sie jetzt ist, genau. Das Maßband gibt die Lenker, ungefähr. Erst zusammen zeigen sie, was ein anderes Teil täte.',
    curve: 'Diese Seite gibt nur eine Kurve an, und eine Kurve hat keine Lenker, an die Teile passen.',
  },
  paste: 'Serienmesswerte einfügen',
  pasteMore: 'Weitere Serienmesswerte einfügen',
  meanwhile: {
    tape: (change, asked, set) =>
      `Nach dem Maßband allein: Sturz ${change} über ${asked}, mit „${set}“. Messwerte des Autos, wie es dasteht, machen das ± kleiner.`,
    readings: (change, asked) =>
      `Nach deinen Messwerten allein, so wie das Auto dasteht: Sturz ${change} über ${asked}. Für das, was Teile ändern würden, sind auch die Lenker nötig.`,
    moved: (change, asked, set) =>
      `Nach deinen Messwerten allein, ihre Kurve um das 1,1-Fache des Gelenks verschoben: Sturz ${change} über ${asked}, mit „${set}“. Das ± ist das der Messwerte allein.`,
  },
  isAsked: 'Nach diesem Teilesatz fragst du. Die anderen Seiten nehmen ihn als eingebaut, bis du einen anderen wählst.',
  into: {
    told: (read, set) => `„${read}“ gilt als mit „${set}“ gemessen und zählt deshalb nicht als Serienmessung.`,
    back: 'Nein, gemessen wurde das Auto, wie es dasteht',
    step: 'Messwerte des Autos, wie es dasteht',
  },
  pasted: 'Serienmesswerte',
  readings: 'Serienmesswerte',
  missing:
    'Dieser Teil konnte nicht geladen werden. Prüfe die Verbindung und drück den Knopf noch einmal; verloren ist nichts.',
  tape: 'Mit dem Maßband messen',
  points: 'Gelenkpunkte eingeben',
  next_: (title) => `Weiter: ${title}`,
  edit: 'Maße meines Autos',
  startOver: { name: 'Neu anfangen', step: 'Neuanfang' },
  doubtNote: 'Jedes ± auf dieser Seite ist ein 95-%-Bereich.',
  rigid: 'Die Lenker gelten als starr: Das Nachgeben von Gummilagern und Reifen und Spiel sind nicht enthalten.',
  aligned: 'Mit den Teilen gilt die Spur im Stand als neu eingestellt.',
  noParts: 'keine Teile',
  problems: {
    apart: (times) =>
      `Die Serienmesswerte passen nicht zum Auto, wie es gemessen wurde: Beides liegt ${times}-mal so weit auseinander, wie beide ± zulassen.`,
    turned: {
      camber:
        'Mit umgekehrtem Vorzeichen des Sturzes passen sie. Ist es vertauscht? Der Sturz ist negativ, wenn das Rad oben nach innen steht.',
      travel:
        'Mit umgekehrtem Vorzeichen des Federwegs passen sie. Ist es vertauscht? Der Federweg ist beim Einfedern positiv, wenn das Rad nach oben geht.',
      both: 'Mit umgekehrten Vorzeichen von Sturz und Federweg passen sie. Der Sturz ist negativ, wenn das Rad oben nach innen steht; der Federweg ist beim Einfedern positiv.',
      centimetres: 'Als Zentimeter gelesen, passen die Höhen. Sind es Zentimeter?',
      inches: 'Als Zoll gelesen, passen die Höhen. Sind es Zoll?',
    },
    another: 'Sind sie von diesem Auto, mit seinen Serienteilen? Umgekehrte Vorzeichen helfen nicht.',
    again: (names) => `Wenn ja, prüfe, welche Höhe null heißt, und miss dann nach: ${names}.`,
    outOfReach:
      'Serienmesswerte: Die Lenker, wie gemessen, erreichen nicht jede Höhe, auf der gemessen wurde. Prüfe die Lenker auf Tippfehler und die Höhe, die null heißt.',
    heights: (count, needed) =>
      `Serienmesswerte: Sie liegen auf ${count} ${count === '1' ? 'Höhe' : 'Höhen'}, nötig sind ${needed}. Miss auf mehr Höhen, über den Federweg verteilt.`,
  },
  sheets: {
    over: {
      title: 'Gefragter Federweg',
      label: 'Einfedern',
      howTo:
        'Die Änderung gilt für so viel Einfedern ab dem Höhenstand des Autos. Bordstein, Bremsen oder eine Kurve brauchen üblicherweise etwa 40 mm.',
    },
  },
};

/** "ab Serienhöhe", "ab „25 mm tiefer“" */
function fromHeight(height: string): string {
  return height === NAMES_DE.heights.stock ? `ab ${height}` : `ab „${height}“`;
}
