import type { FIRST_CAUTIONS } from '../../../components/element/first-cautions.js';

/**
 * By element: the module with its first answer, which caution comes with that, the article that shows it, and whether it has neither
 * chart nor drawing, so that none can throw; and whether the first number of its sentence is an angle: it is a length else. Nothing here needs a
 * browser: the pages tier takes every later file away from what was built (test/pages/first-cautions.test.ts).
 */
export const LATE_PARTS = {
  'bumpline-geometry': { app: 'geometry-app', caution: 'predicted', page: 'what-a-lower-ball-joint-does' },
  'bumpline-lowering': { app: 'lowering-app', caution: 'predicted', page: 'what-lowering-does-to-camber' },
  'bumpline-predict': { app: 'predict-app', caution: 'predicted', page: 'measure-once-predict-the-rest' },
  'bumpline-readings': { app: 'readings-app', caution: 'predicted', page: 'measure-your-own-camber-curve' },
  'bumpline-static-camber': {
    app: 'static-camber-app',
    caution: 'predicted',
    page: 'ways-to-add-camber',
    hasNoDrawing: true,
    asks: 'angle',
  },
  'bumpline-toe': { app: 'toe-app', caution: 'predicted', page: 'the-wheel-that-steers-itself' },
  'bumpline-cornering': { app: 'cornering-app', caution: 'predicted', page: 'camber-in-the-turn' },
  'bumpline-compare': { app: 'compare-app', caution: 'predicted', page: 'height-or-part' },
  'bumpline-clearance': { app: 'clearance-app', caution: 'clearByHand', page: 'will-it-clear-at-full-bump' },
} as const satisfies Record<
  string,
  { app: string; caution: keyof typeof FIRST_CAUTIONS; page: string; hasNoDrawing?: true; asks?: 'angle' }
>;
