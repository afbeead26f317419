/** Records by their names, and each as its English one is. */
export interface FirstWords {
  'car/corrected-by': typeof import('../car/corrected-by.words.js').CORRECTED;
  'car/shown-names': typeof import('../car/shown-names.words.js').NAMES;
  'document/set-names': typeof import('../../core/document/set-names.js').SET_NAMES;
  'element/by-hand': typeof import('../element/by-hand.words.js').BY_HAND;
  'element/first': typeof import('../element/first.words.js').SHARED;
  'element/first-cautions': typeof import('../element/first-cautions.js').FIRST_CAUTIONS;
  'element/limits': typeof import('../element/limits.words.js').LIMITS;
  'element/part-cautions': typeof import('../element/part-cautions.js').PART_CAUTIONS;
  'element/shell': typeof import('../element/shell.words.js').SHELL;
  'element/travel-cautions': typeof import('../element/travel-cautions.js').TRAVEL_CAUTIONS;
  'element/wheel-cautions': typeof import('../element/wheel-cautions.js').WHEEL_CAUTIONS;
  'lowering/first': typeof import('../bumpline-lowering/first.words.js').FIRST;
  'quantity/format': typeof import('../../core/quantity/format.js').FORMAT;
  'readings/first': typeof import('../bumpline-readings/first.words.js').FIRST;
}

/** Of what lies under the sentence, whichever element it is. */
export interface LateWords {
  'alignment/alignment-open': typeof import('../alignment/alignment-open.words.js').OPEN;
  'chart/chart': typeof import('../chart/chart.labels.js').CHART;
  'chart/stack': typeof import('../chart/stack.labels.js').STACK;
  'controls/controls': typeof import('../controls/controls.labels.js').CONTROLS;
  'document/link-problem': typeof import('../../core/document/link-problem.js').LINK_PROBLEM;
  'drawing/corner': typeof import('../drawing/corner.labels.js').CORNER;
  'drawing/strut': typeof import('../drawing/strut.labels.js').STRUT;
  'driveway/driveway-why': typeof import('../../core/driveway/driveway-why.js').DRIVEWAY_WHY;
  'element/causes': typeof import('../element/causes.words.js').CAUSES;
  'element/cautions': typeof import('../element/cautions.js').OF_DIALOGS;
  'element/doubts': typeof import('../element/doubts.words.js').WORDS;
  'element/element': typeof import('../element/element.labels.js').SHEET;
  'element/parts': typeof import('../element/parts.labels.js').PARTS;
  'element/rests': typeof import('../element/rests.labels.js').RESTS;
  'geometry/labels': typeof import('../bumpline-geometry/bumpline-geometry.labels.js').NAMES;
  'inputs/inputs': typeof import('../inputs/inputs.labels.js').NAMES;
  'inputs/links': typeof import('../inputs/links.labels.js').LINKS;
  'inputs/sheets': typeof import('../inputs/sheets.labels.js').SHEETS;
  'inputs/way-in': typeof import('../inputs/way-in.labels.js').WAY_IN;
  'inputs/where': typeof import('../inputs/where.labels.js').WHERE;
  'least-cost/slot': typeof import('../least-cost/slot.labels.js').SLOT;
  'page-data/read': typeof import('../page-data/read.words.js').READ;
  'parts/fitted': typeof import('../parts/fitted.labels.js').FITTED;
  'parts/parts': typeof import('../parts/parts.labels.js').PARTS;
  'paste/zero': typeof import('../paste/zero.words.js').ZERO;
  'publish/readings-used': typeof import('../publish/readings-used.labels.js').READINGS_USED;
  'publish/slot': typeof import('../publish/slot.labels.js').SLOT;
  'quantity/explain': typeof import('../../core/quantity/explain.js').EXPLAIN;
  'quantity/explain-query': typeof import('../../core/quantity/explain-query.js').QUERY;
  'readings/labels': typeof import('../bumpline-readings/bumpline-readings.labels.js').NAMES;
}

/** Of what opens when it is asked for. */
export interface DialogWords {
  'alignment/alignment': typeof import('../alignment/alignment.labels.js').ALIGNMENT;
  'least-cost/least-cost': typeof import('../least-cost/least-cost.labels.js').NAMES;
  'paste/paste': typeof import('../paste/paste.labels.js').NAMES;
  'publish/caption': typeof import('../publish/caption.words.js').CAPTION;
  'publish/left-out': typeof import('../publish/left-out.words.js').LEFT_OUT;
  'publish/take-along': typeof import('../publish/take-along.labels.js').TAKE_ALONG;
  'readings/data-warnings': typeof import('../bumpline-readings/data-warnings.words.js').WORDS;
  'readings/reading-grid': typeof import('../bumpline-readings/reading-grid.labels.js').GRID;
}

/** Of each element's first answer, besides those that all share; nothing where those are all of it. */
export interface OwnFirstWords {
  clearance: { 'clearance/first': typeof import('../bumpline-clearance/first.words.js').FIRST };
  compare: { 'compare/first': typeof import('../bumpline-compare/first.words.js').FIRST };
  cornering: { 'cornering/first': typeof import('../bumpline-cornering/first.words.js').FIRST };
  geometry: { 'geometry/first': typeof import('../bumpline-geometry/first.words.js').FIRST };
  predict: { 'predict/first': typeof import('../bumpline-predict/first.words.js').FIRST };
  'static-camber': { 'static-camber/first': typeof import('../bumpline-static-camber/first.words.js').FIRST };
  toe: { 'toe/first': typeof import('../bumpline-toe/first.words.js').FIRST };
}

/** Of each element under its sentence, besides those that several share. */
export interface OwnLateWords {
  clearance: { 'clearance/labels': typeof import('../bumpline-clearance/bumpline-clearance.labels.js').NAMES };
  compare: { 'compare/labels': typeof import('../bumpline-compare/bumpline-compare.labels.js').LABELS };
  cornering: {
    'cornering/labels': typeof import('../bumpline-cornering/bumpline-cornering.labels.js').NAMES;
    'cornering/roll': typeof import('../bumpline-cornering/roll.labels.js').ROLL;
  };
  lowering: { 'lowering/labels': typeof import('../bumpline-lowering/bumpline-lowering.labels.js').NAMES };
  predict: { 'predict/labels': typeof import('../bumpline-predict/bumpline-predict.labels.js').NAMES };
  'static-camber': {
    'static-camber/labels': typeof import('../bumpline-static-camber/bumpline-static-camber.labels.js').NAMES;
  };
  toe: { 'toe/labels': typeof import('../bumpline-toe/bumpline-toe.labels.js').NAMES };
}

/** One file of a language, fetched when it is wanted: what it holds is its default. */
type File<Records> = () => Promise<{ readonly default: Records }>;
type Own<All, Part extends string> = { readonly [Name in keyof All & string as `${Name}/${Part}`]: File<All[Name]> };

/** All of a language, whole by its type: one that misses a word is no language. */
export type Language = {
  readonly first: File<FirstWords>;
  readonly late: File<LateWords>;
  readonly dialogs: File<DialogWords>;
} & Own<OwnFirstWords, 'first'> &
  Own<OwnLateWords, 'late'>;
