import type { PART_CAUTIONS } from '../../../element/part-cautions.js';

/** Hazards of parts that hold a wheel on, or steer it, in German. */
export const PART_CAUTIONS_DE: typeof PART_CAUTIONS = {
  wheelParts:
    'Trag- und Geschwindigkeitsindex nicht niedriger, als das Auto es verlangt; Felgenbreite für den Reifen freigegeben; Distanzscheiben mit voller Einschraubtiefe und Nabenzentrierung. Wer Radhausschale oder Radlauf ausschneidet, kann Kabel freilegen und Nähte, die dann rosten.',
  camber:
    'Sturzschrauben halten allein durch Klemmkraft: nur Schrauben, die dafür gemacht sind, neue Muttern, das Drehmoment des Herstellers. Viel negativer Sturz nutzt die Innenkanten der Reifen ab und verlängert den Bremsweg.',
  lowJoint:
    'Ein längeres Gelenk biegt seinen Zapfen stärker: nur Teile, die dafür ausgelegt sind, bei Traggelenk und Spurstangenkopf. Es erreicht früher das Ende seines Schwenkwinkels: Voll ausgefedert, voll eingefedert und voll eingeschlagen darf es nicht klemmen und die Felge nicht berühren. Wird die Spurstange nicht angepasst, ändert sich die Spur beim Einfedern. Neue selbstsichernde Muttern, danach Achsvermessung.',
  armPart:
    'Andere Lenker oder Drehpunkte verschieben alles, was den Federweg begrenzt: Voll ausgefedert, voll eingefedert und voll eingeschlagen darf nichts klemmen oder scheuern, auch Antriebswelle, Bremsschlauch und Felge nicht. Teile, die für das Auto gemacht sind, neue selbstsichernde Muttern, danach Achsvermessung.',
  topMount:
    'Das Domlager hält diese Ecke des Autos: ein verstellbares Domlager, das für das Auto gemacht ist, jede Schraube mit dem Drehmoment des Herstellers. Voll eingefedert und voll eingeschlagen müssen Reifen und Feder im Radhaus frei bleiben. Danach Achsvermessung.',
  knuckle:
    'Ein Radträger oder Achszapfen, der gebogen, erhitzt oder geschweißt wurde, kann brechen: nur ein Teil, das dafür gemacht und bearbeitet ist. Antriebswelle und Bremssattel müssen passen wie vorher.',
  steering:
    'Löst sich ein Gelenk der Lenkung, ist das Auto nicht mehr lenkbar: Teile, die für das Auto gemacht sind, volle Einschraubtiefe, neue selbstsichernde Muttern oder Splinte, ein- und ausgefedert frei von Anschlag zu Anschlag der Lenkung. Danach Achsvermessung.',
};
