import type { FITTED } from '../../../parts/fitted.labels.js';

/** German words of the set of parts that is on a car, and of why it does not go on. */
export const FITTED_DE: typeof FITTED = {
  label: 'Teile am Auto',
  none: 'keine',
  step: (name) => `Teile am Auto: ${name}`,
  cannotSet: {
    toe: 'Mit diesen Teilen lässt sich die bisherige Spur nicht wieder einstellen. Wähle kleinere Maße, prüfe ihre Vorzeichen oder lass nichts neu einstellen.',
    camber:
      'Mit diesen Teilen lässt sich der bisherige Sturz nicht wieder einstellen. Wähle kleinere Maße, prüfe ihre Vorzeichen oder lass nur die Spur neu einstellen.',
  },
  links: {
    tieRod: 'die Spurstange',
    strut: 'das Federbein',
    upperArm: 'der obere Querlenker',
    lowerArm: 'der untere Querlenker',
  },
  /** A part by the name of the function that makes it, without an article: it begins sentences. */
  what: {
    ballJointExtended: 'Traggelenk',
    ballJointMoved: 'Traggelenk',
    armLonger: 'Querlenker',
    innerPivotsRaised: 'Innere Drehpunkte',
    topMountMoved: 'Domlager',
    knuckleBoltsTurned: 'Sturzschrauben',
    spinAxisTurned: 'Radträger',
    tieRodEndRaised: 'Spurstangenkopf',
    tieRodLonger: 'Länge der Spurstange',
    rackRaised: 'Zahnstange',
    wheelOffset: 'Einpresstiefe',
  },
};
