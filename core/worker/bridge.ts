import type { ClearanceQuestions } from '../answers/clearance-questions.js';
import { type Bridge, createBridge } from './create-bridge.js';
import { asking } from './errors.js';
import type * as alignmentLayer from './layers/alignment.js';
import { base } from './layers/base.generated.js';
import type * as baseLayer from './layers/base.js';
import type * as corneringLayer from './layers/cornering.js';
import type * as fitLayer from './layers/fit.js';
import type * as geometryLayer from './layers/geometry.js';
import type * as learnLayer from './layers/learn.js';
import type * as leastCostLayer from './layers/leastCost.js';
import type * as loweringLayer from './layers/lowering.js';
import type * as partsLayer from './layers/parts.js';
import type * as rolledLayer from './layers/rolled.js';
import type * as staticCamberLayer from './layers/staticCamber.js';
import type * as toeLayer from './layers/toe.js';
import { pageKey, pageWide } from './page-wide.js';

export { type Bridge, type BridgeMode, type BridgeOptions, createBridge } from './create-bridge.js';
export { WorkerFault } from './errors.js';

/** What the layers of the core are asked, all of them. */
export type Questions = typeof baseLayer.questions &
  typeof fitLayer.questions &
  typeof loweringLayer.questions &
  typeof geometryLayer.questions &
  typeof partsLayer.questions &
  typeof staticCamberLayer.questions &
  typeof leastCostLayer.questions &
  typeof learnLayer.questions &
  typeof toeLayer.questions &
  typeof corneringLayer.questions &
  typeof rolledLayer.questions &
  typeof alignmentLayer.questions &
  ClearanceQuestions;

/** Where the page keeps its bridge. */
export const BRIDGE = pageKey('worker');

let own: Bridge<Questions> | undefined;

/** The page's one bridge to the core: all elements, and all copies of this version on the page, share its worker. */
export function coreBridge(): Bridge<Questions> {
  if (own) return own;
  const shared = pageWide('worker', () => createBridge<Questions>({ layers: [base] }));
  own = {
    // The errors must be of this copy's classes, whichever copy made the bridge.
    ask: asking(shared.askForReply),
    askForReply: shared.askForReply,
    join: shared.join,
    get mode() {
      return shared.mode;
    },
    end: shared.end,
  };
  return own;
}
