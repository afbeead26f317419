import type { SLOT } from '../../../least-cost/slot.labels.js';

/** German words that stand there before the panel has come. */
export const SLOT_DE: typeof SLOT = {
  title: 'Eine gewünschte Neigung mit den geringsten Nachteilen',
  intro:
    'Sag, wie das kurvenäußere Rad in der Kurve zur Straße stehen soll. Dann wird jede Mischung aus Sturz, Höhe und Teilen berechnet, die du zulässt; aufgeführt werden die wenigen, die dich am wenigsten kosten.',
  coming: 'Kommt gleich …',
  lost: 'Dieser Teil konnte nicht geladen werden. Sobald die Verbindung wieder da ist, wird es noch einmal versucht.',
};
