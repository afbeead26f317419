import type { CAUSES } from '../../../element/causes.words.js';
import { NAMES_DE } from '../car/shown-names.js';

/** Without an article, as names stand in lists, by the labels of the core. */
const NAMES: Readonly<Record<string, string>> = {
  // core/curve-sources/corner-doubt
  'lower arm, front pivot': 'Querlenker, vorderer Drehpunkt',
  'lower arm, rear pivot': 'Querlenker, hinterer Drehpunkt',
  'ball joint': 'Traggelenk',
  'upper arm, front pivot': 'Querlenker oben, vorderer Drehpunkt',
  'upper arm, rear pivot': 'Querlenker oben, hinterer Drehpunkt',
  'upper ball joint': 'Traggelenk oben',
  'damper, upper end': 'Dämpfer, oberes Ende',
  'damper, lower end': 'Dämpfer, unteres Ende',
  'top mount': 'Domlager',
  'low point of the damper': 'Dämpfer, Punkt unten',
  'tie rod, inner end': 'Spurstange, inneres Ende',
  'tie rod, outer end': 'Spurstange, äußeres Ende',
  'wheel centre': 'Radmitte',
  // core/driveway/driveway
  'height of the wheel centre': 'Höhe der Radmitte',
  'height of the ball joint': 'Höhe des Traggelenks',
  'height of the arm’s pivot axis': 'Höhe des Querlenker-Drehpunkts',
  'height of the top mount': 'Höhe des Domlagers',
  'lower arm length': 'Länge des Querlenkers',
  'lean of the damper': 'Neigung des Dämpfers',
  'ball joint offset': 'Abstand des Traggelenks von der Dämpferachse',
  'ball joint to the tyre’s middle': 'Traggelenk bis Reifenmitte',
  track: 'Spurweite',
  caster: 'Nachlauf',
  'bump steer': 'Vorspuränderung beim Einfedern',
  'kingpin inclination': 'Spreizung',
  'static camber': 'Sturz im Stand',
  // core/curve, core/readings, core/learn
  'the readings': 'Messwerte',
  'scatter of readings': 'Streuung der Messwerte',
  'passes that run apart': 'Durchgänge, die auseinanderlaufen',
  "gauge's zero in each pass": 'Nullpunkt des Winkelmessgeräts in jedem Durchgang',
  'the gauge’s drift inside a pass': 'Drift des Winkelmessgeräts in einem Durchgang',
  'the drift of dials or tape inside a pass': 'Drift von Messuhren oder Maßband in einem Durchgang',
  'the gauge’s drift, alike in all passes': 'Drift des Winkelmessgeräts, in allen Durchgängen gleich',
  'the gauge’s scale': 'Skala des Winkelmessgeräts',
  'the scale of dials or tape': 'Skala von Messuhren oder Maßband',
  'the tape’s scale': 'Skala des Maßbands',
  'the zero height': 'Höhe des Nullpunkts',
  'up against down': 'Unterschied zwischen aufwärts und abwärts',
  'constant term': 'Konstante der Kurve',
  // core/answers, core/travel, core/wheel
  'the method': 'Rechenverfahren',
  'the drop': 'Tieferlegung',
  roll: 'Wankwinkel',
  'sideways motion': 'Querbewegung des Rads',
  'fore and aft motion': 'Längsbewegung des Rads',
  'the place as measured': 'Messung der Stelle',
  'where the suspension is solid': 'Lage des Endes, an dem die Federung auf Block ist',
  'how much of the way the place goes': 'Anteil des Wegs, den die Stelle mitgeht',
  'the gap to the bump stop': 'Abstand zum Anschlagpuffer',
  'the share of the bump stop that gives, assumed': 'Anteil, um den der Anschlagpuffer nachgibt (angenommen)',
  'the camber gauge': 'Messgerät für den Sturz',
  'the toe gauge': 'Messgerät für die Spur',
  'the toe readings': 'Messwerte der Spur',
  'the rod’s length': 'Länge der Spurstange',
  'the lever': 'Länge des Spurhebels',
  'the rule': 'Faustregel selbst',
  'match of the tie-rod end': 'Anpassung des Spurstangenkopfs',
};

/** core/linkage/parts/part-kinds: of whose part a tolerance is. */
const OF_PART: Readonly<Record<string, string>> = {
  'ball joint': 'des Traggelenks',
  arm: 'des Querlenkers',
  'inner pivots': 'der inneren Drehpunkte',
  'top mount': 'des Domlagers',
  'knuckle bolts': 'der Schrauben am Radträger',
  knuckle: 'des Radträgers',
  'tie-rod end': 'des Spurstangenkopfs',
  'tie rod': 'der Spurstange',
  rack: 'der Zahnstange',
  'wheel offset': 'der Einpresstiefe',
};

const WAYS: Readonly<Record<string, string>> = { forward: 'längs', sideways: 'quer', height: 'Höhe' };
const OF_PASS: Readonly<Record<string, string>> = { zero: 'Nullpunkt', height: 'Höhe', drift: 'Drift' };

function passName(name: string): string {
  const number = /^(?:Pass )?(\d+)$/.exec(name)?.[1];
  return number === undefined ? name : NAMES_DE.pass(number);
}

function named(label: string): string {
  const known = NAMES[label];
  if (known !== undefined) return known;
  const [, point, way] = /^(.*), (forward|sideways|height)$/.exec(label) ?? [];
  if (way !== undefined) return `${named(point!)}, ${WAYS[way]}`;
  const [, part] = /^tolerance of the (.*)$/.exec(label) ?? [];
  if (part !== undefined) return `Toleranz ${OF_PART[part] ?? `(${part})`}`;
  const [, what, pass] = /^(zero|height|drift) of pass (.*)$/s.exec(label) ?? [];
  if (what !== undefined) return `${OF_PASS[what]}: ${passName(pass!)}`;
  const [, power] = /^coefficient of travel to the power (\d+)$/.exec(label) ?? [];
  return power === undefined ? label : `Koeffizient von Federweg hoch ${power}`;
}

/** German names of causes of doubt. */
export const CAUSES_DE: typeof CAUSES = { named };
