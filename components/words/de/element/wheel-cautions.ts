import type { WHEEL_CAUTIONS } from '../../../element/wheel-cautions.js';

/** What an authority asks of wheels, in German: the words of core/wheel/clearance-guides.ts, translated. */
export const WHEEL_CAUTIONS_DE: typeof WHEEL_CAUTIONS = {
  wheelRules:
    'Ein Beispiel: Richtwerte österreichischer Landesbehörden verlangen 2\u00a0mm vom Rad zur Bremse, 4\u00a0mm zu Lenkern, Federbein, Feder und Dämpfer und 6\u00a0mm zu allem anderen, in jedem Beladungszustand und bei vollem Lenkeinschlag (Auszüge, gelesen 2026, ohne Datum). Frag deine Behörde, was sie verlangt.',
};
