import type { Language } from './language.js';

/** German. */
export const LANGUAGE: Language = {
  first: () => import('./de/first.js'),
  late: () => import('./de/late.js'),
  dialogs: () => import('./de/dialogs.js'),
  'clearance/first': () => import('./de/clearance-first.js'),
  'compare/first': () => import('./de/compare-first.js'),
  'cornering/first': () => import('./de/cornering-first.js'),
  'geometry/first': () => import('./de/geometry-first.js'),
  'predict/first': () => import('./de/predict-first.js'),
  'static-camber/first': () => import('./de/static-camber-first.js'),
  'toe/first': () => import('./de/toe-first.js'),
  'clearance/late': () => import('./de/clearance-late.js'),
  'compare/late': () => import('./de/compare-late.js'),
  'cornering/late': () => import('./de/cornering-late.js'),
  'lowering/late': () => import('./de/lowering-late.js'),
  'predict/late': () => import('./de/predict-late.js'),
  'static-camber/late': () => import('./de/static-camber-late.js'),
  'toe/late': () => import('./de/toe-late.js'),
};
