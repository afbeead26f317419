import type { FIRST_CAUTIONS } from '../../../components/element/first-cautions.js';

/**
 * By element: the module with its first answer, which caution comes with that, the article that shows it, and whether it has neither
 * chart nor drawing, so that none can throw; and whether the first number of its sentence is an angle: it is a length else. `hazards`: words
 * of the cautions that are its own. Nothing here needs a browser: the pages tier takes every later file away from what was built
 * (test/pages/first-cautions.test.ts).
 */
export const LATE_PARTS = {
  'bumpline-geometry': {
    hazards: ['end of its swing'],
    app: 'geometry-app',
    caution: 'predicted',
    page: 'what-a-lower-ball-joint-does',
  },
  'bumpline-lowering': {
    hazards: ['full bump by hand', 'A compressed spring can kill'],
    app: 'lowering-app',
    caution: 'predicted',
    page: 'what-lowering-does-to-camber',
  },
  'bumpline-predict': {
    hazards: ['end of its swing', 'Spring and bump stop out before you move a corner', 'level-sensor links'],
    app: 'predict-app',
    caution: 'predicted',
    page: 'measure-once-predict-the-rest',
  },
  'bumpline-readings': {
    hazards: [
      'Spring and bump stop out before you move a corner',
      'A compressed spring can kill',
      'level-sensor links',
      'Measure travel at the hub',
      'Loosen the bush bolts',
    ],
    app: 'readings-app',
    caution: 'predicted',
    page: 'measure-your-own-camber-curve',
  },
  'bumpline-static-camber': {
    hazards: [
      'The top mount holds the corner',
      'by clamp force alone',
      'bent, heated or welded can break',
      'Other arms or pivots',
      'end of its swing',
    ],
    app: 'static-camber-app',
    caution: 'predicted',
    page: 'ways-to-add-camber',
    hasNoDrawing: true,
    asks: 'angle',
  },
  'bumpline-toe': {
    hazards: ['A steering joint that comes apart', 'end of its swing'],
    app: 'toe-app',
    caution: 'predicted',
    page: 'the-wheel-that-steers-itself',
  },
  'bumpline-cornering': {
    hazards: ['by clamp force alone', 'A stop met in a turn', 'end of its swing'],
    app: 'cornering-app',
    caution: 'predicted',
    page: 'camber-in-the-turn',
  },
  'bumpline-compare': {
    hazards: [
      'end of its swing',
      'Spring and bump stop out before you move a corner',
      'A compressed spring can kill',
      'level-sensor links',
      'full bump by hand',
    ],
    app: 'compare-app',
    caution: 'predicted',
    page: 'height-or-part',
  },
  'bumpline-clearance': {
    hazards: [
      'full bump by hand',
      'A compressed spring can kill',
      'A stop met in a turn',
      'Load and speed index',
      'by clamp force alone',
      'from wheel to brake',
    ],
    app: 'clearance-app',
    caution: 'clearByHand',
    page: 'will-it-clear-at-full-bump',
  },
} as const satisfies Record<
  string,
  {
    hazards: readonly string[];
    app: string;
    caution: keyof typeof FIRST_CAUTIONS;
    page: string;
    hasNoDrawing?: true;
    asks?: 'angle';
  }
>;
