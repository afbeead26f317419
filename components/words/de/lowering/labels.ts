import type { NAMES } from '../../../bumpline-lowering/bumpline-lowering.labels.js';
import { cornerName } from '../corner-name.js';

/** German words of the element besides those of its first answer. */
export const NAMES_DE: typeof NAMES = {
  slider: 'Tieferlegung, von Radmitte bis Radlaufkante',
  chartX: 'Federweg',
  chartY: 'Sturz',
  chartYChange: 'Sturzänderung',
  stock: 'Serienhöhe',
  touched: 'Puffer berührt',
  solid: 'auf Block',
  end: 'voll eingefedert',
  droop: 'voll ausgefedert',
  outside: 'nicht bekannt',
  unmeasured: 'nicht gemessen',
  parts: 'Teile',
  gauge:
    'Ein Winkelmessgerät an der Radnabe zeigt die Neigung des Rads. Sie ist der Sturz, solange das Rad genau geradeaus steht. Der Nullpunkt des Geräts verschiebt jeden Wert, aber keine Änderung.',
  turns: 'kehrt um',
  before: 'gleiches Einfedern ab Serienhöhe',
  lowered: 'tiefergelegt',
  raised: 'höhergelegt',
  ghost: 'Gestrichelt: gleiches Einfedern ab Serienhöhe.',
  numbers: 'Verwendete Maße',
  why: 'Warum ±',
  doubtNote: 'Jedes ± ist ein 95-%-Bereich.',
  noDoubt:
    'Es steht kein ± da, weil für diese Zahlen keines angegeben ist. Gib an, wie sicher du dir bei jeder bist, dann erscheint es.',
  crossCamber: 'Sturzunterschied (links minus rechts)',
  dropRow: 'Tieferlegung',
  camberRow: 'Sturz dort',
  addOther: 'Andere Seite dazu',
  hidden: 'Von außen nicht zu sehen, daher immer angenommen:',
  printed: (corner, date, method) =>
    `${corner} · gedruckt am ${date} · ${method.replace(/\.$/, '')}. Jedes ± ist ein 95-%-Bereich.`,
  methods: {
    curve: 'aus einer gegebenen Kurve',
    readings: (whose, degree) =>
      `${whose}: eine Ausgleichskurve vom Grad ${degree} durch den Sturz, den ein Winkelmessgerät an der Radnabe angezeigt hat, innerhalb des gemessenen Federwegs`,
    driveway: (limits) =>
      `Maße mit Maßband und Winkelmesser, als Federbein gerechnet, das in der Vorderansicht flach liegt; das ± deckt ab, was dabei wegfällt. ${limits}`,
    points: 'Gelenkpunkte, räumlich genau gelöst; das ± deckt ab, wie genau sie gemessen sind',
  },
  chart: (stock, there, height) => `Sturz über dem Federweg. ${stock} auf Serienhöhe, ${there} ${height}.`,
  columns: { travel: 'Federweg', camber: 'Sturz', change: 'Änderung' },
  table: (corner) => `Sturz über dem Federweg, ${cornerName(corner)}`,
  frontView: (where, camber) => `Vorderansicht des Federbeins, ${where}: Sturz ${camber}`,
  ofTravel: (travel) => `bei ${travel} Federweg`,
  lower: (size) => `${size} tiefer`,
  higher: (size) => `${size} höher`,
  inBump: (travel) => `${travel} eingefedert`,
  inDroop: (travel) => `${travel} ausgefedert`,
  hints: {
    the: (label) => label,
    article: /^(?:the|der|die|das) /,
    advice: (name, _isMany, share, isYours, advice) =>
      `${isYours ? 'Von deinem' : 'Von diesem'} ± kommen ${share} daher: ${name}. Das hilft: ${advice}.`,
    yours: (name, share, advice) => `Von deinem ± kommen ${share} daher: ${name}${advice}`,
    others: (name, share) => `Von diesem ± kommen ${share} daher: ${name}.`,
    method: '. Mit dem Maßband wird das nicht enger, mit Gelenkpunkten schon.',
    hidden: '. Das ist von außen nicht zu sehen; Gelenkpunkte machen es enger.',
    bumpSteer: '. Gib es ein, wenn du es kennst.',
    caster: '. Er steht auf einem Vermessungsprotokoll.',
    kingpin: '. Miss die Neigung des Dämpfers an seinem Rohr, dann wird es enger.',
    next: '. Miss das als Nächstes.',
    again: '. Noch einmal genauer messen lohnt sich.',
  },
  reasons: {
    rateBefore: 'Sturzänderung je Weg auf Serienhöhe',
    rateAfter: (height) => `Sturzänderung je Weg ${height}`,
    rollCentre: (height) => `Wankzentrum über dem Boden, auf Serienhöhe und ${height}`,
    turnsAt: 'Kehrt um bei',
    changeToThere: 'Sturzänderung bis dort',
  },
  unmeasuredStock: (doBegin, where) =>
    `Die Serienhöhe ist nicht gemessen: Die Messwerte ${doBegin ? 'beginnen' : 'enden'} ${where} davon entfernt, und jede Änderung zählt von dort an.`,
  otherSide: (height) => `Auf der anderen Seite ${height}`,
  nothingThere: (height, where) => `${height}: Dort ist nichts gemessen. Die Messwerte enden bei ${where}.`,
  cursorUnmeasured: (travel) => `Bei ${travel} Federweg ist nichts gemessen`,
  cursor: (travel, camber, change) => `Bei ${travel} Federweg: ${camber} (${change} gegenüber Serienhöhe)`,
  balloons: {
    example: ', Beispielwert',
    yours: '',
    next: ', noch einmal messen lohnt sich',
    wanted: ', Beispielwert, als Nächstes messen',
    problem: ', bitte korrigieren',
  },
};
