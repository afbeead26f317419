import type { ClearanceAnswer } from '../../core/answers/clearance.js';
import { type CarDocument, drivewayOf } from '../../core/document/car.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import type { DrivewayKey } from '../../core/driveway/driveway.js';
import { formatNumber } from '../../core/quantity/format.js';
import { causeName } from '../element/causes.words.js';
import { type Display, show } from '../element/sentence.js';
import { notCovered } from '../inputs/sheet.labels.js';
import { NAMES } from './bumpline-clearance.labels.js';

/** A smaller share of the ± is not worth a word. */
const TOLD = 0.3;
/** Hidden, or nothing that one measures. */
const NO_MORE: readonly string[] = ['method', 'ballOffset', 'motion.arc', 'motion.forward', 'motion.toeBend'];

/** What makes most of the ± of the gap that decides, and what to do about it; undefined where nothing stands out. */
export function doubtHint({ places, worst }: ClearanceAnswer, car: CarDocument, display: Display): string | undefined {
  if (worst === undefined) return undefined;
  const { shares, decisive } = places[worst]!;
  const [top] = shares;
  // How sure the place is stands in its own sheet.
  if (!top || top.share < TOLD || top.id === 'place') return undefined;
  const { doubts: words } = NAMES;
  const percent = `${formatNumber(top.share * 100, 0, display.language)}\u202f%`;
  const size = show(Math.round(decisive.plusMinus), 'travel', display);
  const label = causeName(top.label).replace(NAMES.article, '');
  const isBare = top.id === 'caster' || top.label === words.bumpSteer || words.bare.test(label);
  const name = isBare ? label : words.the(label);
  return words.from(size, percent, name, adviceOn(top.id, car));
}

function adviceOn(id: string, car: CarDocument): string {
  if (NO_MORE.includes(id)) return '';
  const { doubts: words } = NAMES;
  if (isFromDriveway(car) && !(id in drivewayOf(car)) && id !== 'solid') {
    return id === 'caster' ? words.caster : words.next;
  }
  return id === 'motion.sideways' || id === 'motion.toe' || id === 'share' ? '' : words.again;
}

const isFromDriveway = (car: CarDocument): boolean =>
  sourceKindOf(car) === 'driveway' && car.whole === undefined && car.curve === undefined;

/** Which cars the ± does not cover, of a motion from the driveway. */
export const limitsOfDriveway = (car: CarDocument, display: Display): string | undefined =>
  isFromDriveway(car) ? notCovered(drivewayOf(car), display) : undefined;

/** What matters of a driveway only to a wheel that steers. */
export const STEERED_KEY: DrivewayKey = 'hubOffset';
