import type { LateWords } from '../language.js';
import { OPEN_DE } from './alignment/alignment-open.js';
import { CHART_DE } from './chart/chart.js';
import { STACK_DE } from './chart/stack.js';
import { CONTROLS_DE } from './controls/controls.js';
import { LINK_PROBLEM_DE } from './core/document/link-problem.js';
import { DRIVEWAY_WHY_DE } from './core/driveway/driveway-why.js';
import { EXPLAIN_DE } from './core/quantity/explain.js';
import { QUERY_DE } from './core/quantity/explain-query.js';
import { CORNER_DE } from './drawing/corner.js';
import { STRUT_DE } from './drawing/strut.js';
import { CAUSES_DE } from './element/causes.js';
import { OF_DIALOGS_DE } from './element/cautions.js';
import { WORDS_DE } from './element/doubts.js';
import { SHEET_DE } from './element/element.js';
import { PARTS_DE as ELEMENT_PARTS_DE } from './element/parts.js';
import { RESTS_DE } from './element/rests.js';
import { NAMES_DE as GEOMETRY_NAMES_DE } from './geometry/labels.js';
import { NAMES_DE as INPUTS_NAMES_DE } from './inputs/inputs.js';
import { LINKS_DE } from './inputs/links.js';
import { SHEETS_DE } from './inputs/sheets.js';
import { WAY_IN_DE } from './inputs/way-in.js';
import { WHERE_DE } from './inputs/where.js';
import { SLOT_DE as LEAST_COST_SLOT_DE } from './least-cost/slot.js';
import { READ_DE } from './page-data/read.js';
import { FITTED_DE } from './parts/fitted.js';
import { PARTS_DE as PARTS_PARTS_DE } from './parts/parts.js';
import { ZERO_DE } from './paste/zero.js';
import { READINGS_USED_DE } from './publish/readings-used.js';
import { SLOT_DE as PUBLISH_SLOT_DE } from './publish/slot.js';
import { NAMES_DE as READINGS_NAMES_DE } from './readings/labels.js';

/** German words of what lies under the sentence, whichever element it is. */
const WORDS: LateWords = {
  'alignment/alignment-open': OPEN_DE,
  'chart/chart': CHART_DE,
  'chart/stack': STACK_DE,
  'controls/controls': CONTROLS_DE,
  'document/link-problem': LINK_PROBLEM_DE,
  'drawing/corner': CORNER_DE,
  'drawing/strut': STRUT_DE,
  'driveway/driveway-why': DRIVEWAY_WHY_DE,
  'element/causes': CAUSES_DE,
  'element/cautions': OF_DIALOGS_DE,
  'element/doubts': WORDS_DE,
  'element/element': SHEET_DE,
  'element/parts': ELEMENT_PARTS_DE,
  'element/rests': RESTS_DE,
  'geometry/labels': GEOMETRY_NAMES_DE,
  'inputs/inputs': INPUTS_NAMES_DE,
  'inputs/links': LINKS_DE,
  'inputs/sheets': SHEETS_DE,
  'inputs/way-in': WAY_IN_DE,
  'inputs/where': WHERE_DE,
  'least-cost/slot': LEAST_COST_SLOT_DE,
  'page-data/read': READ_DE,
  'parts/fitted': FITTED_DE,
  'parts/parts': PARTS_PARTS_DE,
  'paste/zero': ZERO_DE,
  'publish/readings-used': READINGS_USED_DE,
  'publish/slot': PUBLISH_SLOT_DE,
  'quantity/explain': EXPLAIN_DE,
  'quantity/explain-query': QUERY_DE,
  'readings/labels': READINGS_NAMES_DE,
};

export default WORDS;
