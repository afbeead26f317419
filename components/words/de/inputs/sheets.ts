import { BUMP_STEER_OVER_MM, COVERED } from '../../../../core/driveway/driveway.js';
import { formatNumber } from '../../../../core/quantity/format.js';
import type { SHEETS } from '../../../inputs/sheets.labels.js';

/** German words of all that can be given of a car. */
export const SHEETS_DE: typeof SHEETS = {
  points: {
    'lowerArm.front': {
      title: 'Querlenker, vorderer Drehpunkt',
      howTo: 'Mitte des vorderen Lagers, dort, wo seine Schraube durch den Lenker geht.',
    },
    'lowerArm.rear': {
      title: 'Querlenker, hinterer Drehpunkt',
      howTo:
        'Mitte des hinteren Lagers. Jeder andere zweite Punkt auf der Linie, um die der Lenker schwenkt, geht auch.',
    },
    'lowerArm.ball': {
      title: 'Traggelenk unten',
      howTo: 'Mitte der Kugel, nicht der Mutter am Zapfen: etwa einen halben Kugeldurchmesser tief im Gehäuse.',
    },
    'strut.top': {
      title: 'Domlager',
      howTo: 'Mitte des Lagers oder Gummis, um die die Kolbenstange kippt.',
    },
    'strut.low': {
      title: 'Dämpfer, Punkt unten',
      howTo:
        'Irgendein Punkt weit unten auf der Mittellinie des Dämpferrohrs. Er legt die Linie fest, an der das Federbein gleitet.',
    },
    'tieRod.inner': {
      title: 'Spurstange, inneres Ende',
      howTo: 'Mitte der Kugel unter der Manschette der Zahnstange, Lenkung gerade.',
    },
    'tieRod.outer': {
      title: 'Spurstange, äußeres Ende',
      howTo: 'Mitte der Kugel am Spurhebel, Lenkung gerade.',
    },
    wheelCentre: {
      title: 'Radmitte',
      howTo: 'Mitte der Radnabe, in der Mittelebene des Reifens. Miss x von hier aus, dann ist es 0.',
    },
  },
  axes: ['x, von der Achse nach vorn', 'y, von der Fahrzeugmitte nach außen', 'z, vom Boden nach oben'],
  camber: {
    title: 'Sturz im Stand',
    howTo: 'Aus einem Vermessungsprotokoll, oder mit einem Winkelmessgerät an der Nabe. Oben nach innen ist negativ.',
  },
  toe: {
    title: 'Spur im Stand, nur dieses Rad',
    howTo: 'Die Hälfte der Gesamtspur der Achse. Vorspur ist positiv.',
  },
  loadedRadius: {
    title: 'Reifenradius unter Last',
    howTo:
      'Radmitte senkrecht hinunter zum Boden, das Auto auf den Rädern. Bis du ihn eingibst, gilt die Höhe deiner Radmitte.',
  },
  bumpTravel: {
    title: 'Restlicher Einfederweg',
    howTo:
      'Wie weit das Rad vom jetzigen Stand deines Autos aus noch einfedern kann, Radmitte bis Radlaufkante, bis der Anschlagpuffer auf Block ist. Berechne ihn aus dem Abstand an der Kolbenstange und der halben Länge des Puffers, oder nimm die Angabe des Herstellers: Drück das Rad dafür nie mit dem Wagenheber in den Anschlag.',
  },
  stopGap: {
    title: 'Abstand zum Anschlagpuffer',
    howTo:
      'Entlang der Kolbenstange, vom Ende des Anschlagpuffers bis zum Dämpferrohr, so wie das Auto jetzt steht. Die Übersetzung des Dämpfers macht daraus Federweg am Rad.',
    label: 'Abstand an der Stange',
  },
  instead: {
    gap: 'Ich habe den Abstand an der Kolbenstange gemessen',
    wheel: 'Ich habe ihn am Rad gemessen',
  },
  other: {
    title: 'Andere Seite',
    howTo:
      'Das andere Rad derselben Achse: wie weit es dort heruntergekommen ist, Radmitte bis Radlaufkante, und sein Sturz im Stand, abgelesen wie auf dieser Seite des Autos.',
    drop: 'Tieferlegung dort',
    camber: 'Sturz im Stand dort',
  },
  dropPlusMinus: {
    title: 'Genauigkeit der Tieferlegung',
    howTo:
      'Wie weit die Tieferlegung in 95 von 100 Fällen danebenliegen kann. Mit dem Maßband von Radmitte bis Radlaufkante: etwa ±3 mm.',
  },
  driveway: {
    armLength: {
      title: 'Länge des Querlenkers',
      howTo:
        'Von der Mitte der inneren Schraube des Lenkers gerade nach außen bis zur Mitte des Traggelenks. Bei zwei inneren Schrauben: von der Linie durch beide.',
    },
    pivotHeight: {
      title: 'Höhe des Querlenker-Drehpunkts',
      howTo:
        'Vom Boden hinauf zur Mitte der inneren Schraube. Bei zweien: zur Linie durch beide, vom Traggelenk aus gerade nach innen.',
    },
    ballHeight: {
      title: 'Höhe des Traggelenks',
      howTo: 'Vom Boden hinauf zur Mitte der Kugel in ihrem Gehäuse: nicht zur Mutter, nicht zur Staubmanschette.',
    },
    wheelCentreHeight: {
      title: 'Höhe der Radmitte',
      howTo: 'Vom Boden senkrecht hinauf zur Mitte der Radnabe.',
    },
    damperLean: {
      title: 'Neigung des Dämpfers',
      howTo:
        'Null das Winkelmessgerät auf dem Boden, quer zum Auto, und leg es dann an das Dämpferrohr. Nicht an die Feder, nicht an die Lenkachse. Oben zum Motor hin ist positiv.',
    },
    topHeight: {
      title: 'Höhe des Domlagers',
      howTo:
        'Vom Boden hinauf zur Mitte des Domlagers: Haube offen, eine gerade Latte waagerecht über den Federbeindom und bis über den Kotflügel hinaus gelegt.',
    },
    track: {
      title: 'Spurweite',
      howTo:
        'Von Radmitte zu Radmitte quer über das Auto: von der Innenkante des einen Reifens zur Außenkante des anderen. Nur das Wankzentrum braucht sie.',
    },
    hubOffset: {
      title: 'Traggelenk bis Reifenmitte',
      label: 'Gerade nach außen',
      howTo:
        'Auf dem Boden: ein Lot von der Mitte des Traggelenks, und von dort gerade nach außen bis zur Mitte des Reifens. Dieser Abstand bewegt das Rad beim Lenken vor und zurück.',
    },
    caster: {
      title: 'Nachlauf',
      howTo: `Aus einem Vermessungsprotokoll, auf der Höhe, auf der das Auto stand. Oben nach hinten geneigt ist positiv. Lässt du ihn weg, deckt das ± kein Auto mit mehr als ${COVERED.caster}° ab.`,
    },
    bumpSteer: {
      title: 'Vorspuränderung (Bump Steer)',
      label: 'Spuränderung',
      howTo: `Wenn du sie kennst: wie sehr sich die Spur dieses Rads auf den ersten ${BUMP_STEER_OVER_MM} mm Einfedern ändert. Vorspur ist positiv. Lässt du sie weg, deckt das ± kein Auto mit mehr als ${formatNumber(COVERED.bumpSteer, 3, 'de')}° je mm ab.`,
    },
    kingpin: {
      title: 'Spreizung',
      howTo:
        'Aus einem Vermessungsprotokoll, wenn du nicht an den Dämpfer kommst. Sie gehört zu einer anderen Linie als der des Dämpfers: Wie weit das Traggelenk neben dieser liegt (0 bis 40 mm), ist nicht bekannt; das ± deckt es ab.',
    },
  },
  ways: {
    onlyKingpin: 'Ich habe nur die Spreizung, aus einem Vermessungsprotokoll',
    leanAfterAll: 'Ich kann die Neigung des Dämpfers doch messen',
    by: 'Was kannst du messen?',
    driveway: {
      short: 'Maßband und Winkelmesser',
      label: 'Sechs Maße mit Maßband und Winkelmesser, Auto auf den Rädern: zehn Minuten, nur Sturz',
    },
    points: {
      short: 'Gelenkpunkte',
      label: 'Acht Gelenkpunkte in drei Richtungen: ein Nachmittag, kleineres ±',
    },
    readings: {
      short: 'Messwerte',
      label: 'Deine Messwerte: der Sturz, wie du ihn über den Federweg abgelesen hast',
    },
    stands: 'Wie steht das Auto, während du misst?',
    standsWhere: {
      title: 'Höhe beim Messen',
      howTo:
        'Punkte, Sturz, Spur und restlicher Einfederweg sind die des Autos, wie es beim Messen stand. Die Tieferlegung im Satz zählt immer ab Serienhöhe.',
    },
    stock: { short: 'Serienhöhe', label: 'Auf Serienhöhe' },
    lowered: { short: 'schon tiefergelegt', label: 'Schon tiefergelegt' },
    corner: 'Welche Ecke ist es?',
    way: {
      title: 'Dein Auto',
      howTo: 'Gib ein, was du hast. Was du weglässt, wird angenommen, mit einem großen ±.',
    },
    lowerBy: {
      title: 'Wie viel tiefer es steht',
      howTo: 'Radmitte bis Radlaufkante, senkrecht nach oben: wie viel kürzer das jetzt ist als auf Serienhöhe.',
      label: 'Tiefer um',
    },
    loaded: 'Wie war das Auto beladen, als abgelesen wurde?',
    empty: { short: 'leer', label: 'Leer' },
    driver: { short: 'mit Fahrer', label: (mm) => `Mit Fahrer, etwa ${mm} mm tiefer` },
    full: { short: 'beladen', label: (mm) => `Beladen, etwa ${mm} mm tiefer` },
    how: 'Wie ist es tiefergelegt?',
    springs: {
      short: 'Federn',
      label: 'Kürzere Federn auf denselben Dämpfern: Die Tieferlegung geht vom Einfederweg ab',
    },
    dampers: {
      short: 'Dämpfer',
      label:
        'Gewindefahrwerk mit verschraubbarem Fußteil oder gekürzte Dämpfer: Der Hub bleibt, andere Grenzen rücken näher',
    },
  },
  /** By the first value of each sheet. */
  ends: {
    stopLength: {
      title: 'Länge des Anschlagpuffers',
      howTo:
        'Seine Länge ausgebaut und nicht zusammengedrückt, dann, was seither von ihm abgeschnitten wurde (0 für nichts). Der Abstand ist der, den du mit dem gekürzten Puffer misst. Ist ein Puffer zu weit gekürzt, schlägt der Dämpfer an seinem eigenen Ende an und bricht.',
      labels: ['Ursprüngliche Länge des Puffers', 'Davon abgeschnitten'],
      second: 'abgeschnitten',
    },
    stopUsable: {
      title: 'Wie weit der Puffer nachgibt',
      howTo:
        'Welcher Anteil der Pufferlänge zusammengedrückt ist, wenn der Puffer auf Block ist: 0,5 für die Hälfte, wie bei Schaumstoff üblich (gängige Praxis, ohne Quelle). Bis du etwas eingibst, gilt die Hälfte, und das ± deckt alles von einem Drittel bis zu zwei Dritteln ab. Was du eingibst, gilt als bekannt: Lass das Feld leer, wenn der Hersteller nichts angibt und du keinen Puffer zusammengedrückt hast.',
      labels: ['Anteil seiner Länge'],
    },
    strokeBump: {
      title: 'Restlicher Dämpferhub, Einfedern',
      howTo:
        'Wie weit die Kolbenstange vom jetzigen Stand des Autos aus noch einfahren kann, bevor der Dämpfer selbst am Ende ist. Vom Hersteller, oder am ausgebauten Dämpfer: Schieb die blanke Stange von Hand hinein, bis sie ansteht.',
      labels: ['Stange fährt noch ein'],
    },
    strokeDroop: {
      title: 'Restlicher Dämpferhub, Ausfedern',
      howTo:
        'Wie viel mehr von der Kolbenstange zu sehen ist, wenn der Dämpfer ganz ausgezogen ist, als im jetzigen Stand des Autos: vom Hersteller, oder mit beiden Rädern der Achse hängend und dem Auto auf Unterstellböcken.',
      labels: ['Stange fährt noch aus'],
    },
    springBind: {
      title: 'Bis die Federn auf Block sind',
      howTo:
        'Alle Lücken zwischen den Windungen im Stand zusammengezählt, entlang der Feder. Eine Windung, die schon an der nächsten anliegt, zählt nicht.',
      labels: ['Restlicher Weg der Feder'],
    },
    shaftBump: {
      title: 'Antriebswelle',
      howTo:
        'Federweg am Rad nach oben und unten vom jetzigen Stand des Autos aus, bis ein Gelenk am Ende seines Beugewinkels oder seines Verschiebewegs ist. Nimm die Angabe des Herstellers, oder dreh die Welle auf jeder Höhe von Hand, Feder und Anschlagpuffer ausgebaut, und nie weiter als bis dorthin, wo der Puffer auf Block wäre.',
      labels: ['Beim Einfedern', 'Beim Ausfedern'],
      second: 'beim Ausfedern',
    },
    motionRatio: {
      title: 'Übersetzung',
      howTo:
        'Um wie viel der Dämpfer je mm Federweg am Rad kürzer wird, 0,91 bis 1,00 bei 95 von 100 zufällig erfundenen Federbeinen. Lass sie weg, wo die Lenker bekannt sind: Dann wird sie über den ganzen Federweg berechnet.',
      labels: ['Dämpferweg je Federweg am Rad'],
    },
    springRate: {
      title: 'Federrate',
      howTo: 'Von einer Feder, wie sie daraufsteht oder wie der Hersteller sie angibt.',
      labels: ['Rate'],
    },
    cornerMass: {
      title: 'Radlast',
      howTo:
        'Was auf diesem Rad lastet, mit Fahrer im Auto, und was davon die Feder nicht trägt: Rad, Reifen, Bremse, Radträger, die Hälfte von Lenker und Welle.',
      labels: ['Auf der Waage', 'Rad, Bremse, Radträger'],
      second: 'ungefedert',
    },
    stopRate: {
      title: 'Rate des Anschlagpuffers',
      howTo:
        'Mittlere Kraft je mm, sobald er berührt ist. Ohne sie ist nicht bekannt, wie weit eine Last in den Puffer hineingeht.',
      labels: ['Rate'],
    },
    gasForce: {
      title: 'Gasdruckkraft des Dämpfers',
      howTo: 'Die Kraft, die die Kolbenstange von selbst herausdrückt.',
      labels: ['Kraft'],
    },
    loadFactor: {
      title: 'Stoßlast (× statisch)',
      howTo:
        'Die gesamte Radlast, um die es gehen soll, als Vielfaches der statischen gefederten Last an dieser Ecke: 2 für „2 g“. Lässt du das Feld leer, gilt 2.',
      labels: ['Vielfaches der statischen Last'],
    },
  },
};
