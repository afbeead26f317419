import { counted } from '../../../element/sentence.js';
import type { LEFT_OUT } from '../../../publish/left-out.words.js';

/** What a snippet does not have of a car, told to its author in German. */
export const LEFT_OUT_DE: typeof LEFT_OUT = {
  predictions: (count) =>
    `${counted(count, 'gespeicherte Vorhersage', 'gespeicherte Vorhersagen')}: Eine Vorhersage ist deine eigene Aufzeichnung, sie bleibt also bei dir.`,
  sets: 'Deine Teilesätze und Messwerte: Diese Antwort wird nicht aus ihnen berechnet.',
  curve: 'Die Kurve, die ein Skript der Seite übergeben hat: Gib stattdessen ihre Koeffizienten an.',
  linkedCurve:
    'Die Kurve: Die Adresse eines Rahmens enthält Maße und Messwerte, aber keine Kurve. Verwende stattdessen das Element.',
  aside: (count) => `${counted(count, 'Messwert, den', 'Messwerte, die')} du ausgeklammert hast.`,
  passes:
    'Die Namen deiner Durchgänge: Mit ihnen ließe sich eine Tabelle von Messwerten nicht lesen, deshalb sind sie nummeriert.',
  fields: {
    cornerName: 'Welche Ecke des Autos es ist: Eine Tabelle gilt immer für vorn links.',
    by: 'Aus welchen deiner Maße die Antwort berechnet wird.',
    given: 'Ein Wert, den eine Tabelle nicht genau wiedergeben kann.',
    whole: 'Die Lenker einer Doppelquerlenkerachse.',
    curve: 'Die Unsicherheit der Koeffizienten der Kurve.',
    setups: 'Teilesätze: was verbaut ist, auf welcher Höhe ihr Nullpunkt lag oder an welcher Ecke gemessen wurde.',
    setup: 'Welcher Teilesatz zuerst gezeigt wird.',
    fitted: 'Welcher Teilesatz verbaut ist.',
    drop: 'Die Tieferlegung.',
    dropPlusMinus: 'Das ± der Tieferlegung.',
    bumpTravel: 'Der Einfederweg.',
    stopGap: 'Der Abstand zum Anschlagpuffer.',
    limits: 'Was den Federweg außerdem beendet.',
    compare: 'Welche Felder des Vergleichs gewählt sind.',
    readingsOver: 'Der Federweg, über den die Messwerte angegeben werden.',
    readingsDegree: 'Der Grad der Kurve.',
    toe: 'Was du zur Spur eingestellt hast, außer dem Einfedern, über das sie angegeben wird.',
    turn: 'Wie die Kurvenfahrt beschrieben ist, außer ihrem Wankwinkel.',
    camberAdded: 'Wie die Wege zu mehr Sturz sortiert sind.',
    alignment: 'Was im Vermessungsprotokoll steht.',
    predict: 'Welcher Winkel vorhergesagt wird.',
    links: 'Dass die Lenker anhand von Messwerten korrigiert sind.',
    leastCost: 'Was du zu den Kosten angegeben hast.',
    loads: 'Federraten, Massen und Lasten.',
    fit: 'Stellen im Radlauf, Reserven und was sonst über die Räder bekannt ist.',
    lowered: 'Wie das Auto tiefergelegt wurde.',
    camberReadLower: 'Wie viel tiefer das Auto stand, als sein Sturz gemessen wurde.',
    measuredAt: 'Dass das Auto beim Messen schon tiefergelegt war.',
    other: 'Die andere Seite der Achse.',
  },
};
