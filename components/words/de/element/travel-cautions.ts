import type { TRAVEL_CAUTIONS } from '../../../element/travel-cautions.js';

/** Hazards of moving a corner through its travel, and of where that travel ends, in German. */
export const TRAVEL_CAUTIONS_DE: typeof TRAVEL_CAUTIONS = {
  springOut:
    'Bau Feder und Anschlagpuffer aus, bevor du eine Ecke durch ihren Federweg bewegst: Ist eines davon noch drin, hebt der Wagenheber das Auto von den Unterstellböcken. Bleib unter der Höhe, in der der Anschlagpuffer auf Block wäre, sonst schlägt der Dämpfer an und tut dasselbe.',
  spring:
    'Eine gespannte Feder kann töten: nur mit einem Federspanner, der für diese Feder gemacht ist und mindestens ihren halben Umfang fasst, oder in der Werkstatt.',
  carried:
    'Zuerst lösen: Gestänge der Niveausensoren, Kabel der Verstelldämpfer, Koppelstangen des Stabilisators. Danach muss immer etwas den Querlenker tragen: Bremsschlauch, Sensorkabel und Antriebswelle dürfen nicht hängen und nichts halten. Ein Gasdruckdämpfer drückt.',
  hub: 'Miss den Federweg an der Nabe: Ohne die Last der Feder bewegt sich ein Domlager aus Gummi.',
  bushes:
    'Löse die Schrauben der Gummilager nur so weit, bis das Gummi frei ist, und zieh sie zuletzt fest, in Fahrzeughöhe.',
  stop: 'Ein Anschlagpuffer, der in der Kurve berührt, macht diese Achse plötzlich steifer. Ein gekürzter lässt den Dämpfer an seinem eigenen Ende anschlagen und brechen.',
  otherLimits:
    'Kürzere Dämpfer behalten ihren Hub, aber jede andere Grenze rückt um die Tieferlegung näher: Reifen zum Radlauf, Antriebswelle, Querlenker zur Karosserie, Bremsschlauch.',
};
