import { type CarDocument, withDrop } from '../../core/document/car.js';
import type { Fitment } from '../../core/document/fitment.js';
import { give, isUsers } from '../../core/document/provenance.js';
import { takeCorner } from '../../core/document/take-corner.js';
import { readAngleAttribute } from '../../core/quantity/angle-attribute.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { shown } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';
import { MM_PER_INCH } from '../../core/quantity/units.js';
import { TRAVEL_LIMIT_KEYS, type TravelLimits } from '../../core/travel/travel-limits.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import { readLimits } from '../page-data/limits-attribute.js';
import type { ClearanceAttributes } from './clearance-view.js';

/** What a page says of wheels, places and limits. */
export interface PageFitment {
  recipe: (car: CarDocument) => CarDocument;
  isGiven: boolean;
  problems: Problem[];
}

/**
 * Properties before attributes before the JSON script; of a script also the hard points by which the wheel moves.
 * Attributes are locale-free. What cannot be read is a problem.
 */
export function pageFitment(page: ClearanceAttributes, json: unknown): PageFitment {
  const problems: Problem[] = [];
  const isRecord = (value: unknown): value is Record<string, unknown> =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  /** A misspelt name would silently leave the example's in its place. */
  const checked = <T>(value: unknown, at: string, names: readonly string[]): T | undefined => {
    if (value === undefined || value === null) return undefined;
    if (!isRecord(value)) {
      problems.push({ code: 'wrong-shape', path: at, value: shown(value) });
      return undefined;
    }
    const unknown = Object.keys(value).filter((name) => !names.includes(name));
    problems.push(...unknown.map((name): Problem => ({ code: 'unknown-name', path: at, value: name, names })));
    return value as T;
  };
  const script =
    checked<{ fit?: unknown; limits?: unknown; drop?: unknown; corner?: unknown }>(json, 'JSON script', SCRIPT_NAMES) ??
    {};
  const fitmentOf = (value: unknown): Fitment | undefined => {
    const found = checked<Fitment>(value, 'fit', FITMENT_NAMES);
    const places: unknown = found?.places;
    if (places === undefined) return found;
    const all: unknown[] = Array.isArray(places) ? places : [];
    const strange = Array.isArray(places) ? all.flatMap((one, i) => (isRecord(one) ? [] : `places.${i}`)) : ['places'];
    problems.push(...strange.map((path): Problem => ({ code: 'wrong-shape', path, value: shown(places) })));
    return { ...found, places: all.filter(isRecord) as unknown as Fitment['places'] & object };
  };
  const scriptFitment = fitmentOf(script.fit);
  const givenFitment = fitmentOf(page.fit);
  const corner = script.corner === undefined ? undefined : takeCorner(script.corner);
  const wheel = (text: string | undefined, path: string): WheelSpec | undefined =>
    text === undefined || text === null ? undefined : readWheel(text, path, problems);
  const before = wheel(page.wheelBefore, 'before');
  const after = wheel(page.wheelAfter, 'after');
  const readLock = isSaid(page.lock) ? readAngleAttribute(String(page.lock), 'steer', 'lock') : undefined;
  if (readLock && !readLock.ok) problems.push(readLock.problem);
  const lock = readLock?.ok ? readLock.value : undefined;
  const fitment: Fitment = {
    ...scriptFitment,
    ...(before && { before }),
    ...(after && { after }),
    ...(lock !== undefined && { lock }),
    ...givenFitment,
  };
  const inScript = checked<TravelLimits>(script.limits, 'limits', TRAVEL_LIMIT_KEYS);
  const said =
    typeof page.limits === 'string'
      ? readLimits(page.limits, problems)
      : checked<TravelLimits>(page.limits, 'limits', TRAVEL_LIMIT_KEYS);
  const { stopGap, ...limits } = said ?? inScript ?? {};
  const dropText = page.drop ?? (script.drop as string | number | undefined);
  let drop: number | undefined;
  if (isSaid(dropText)) {
    const parsed = readLengthAttribute(typeof dropText === 'object' ? '?' : String(dropText), 'drop', 'drop');
    if (parsed.ok) drop = parsed.value;
    else problems.push(parsed.problem);
  }
  const hasFitment = Object.keys(fitment).length > 0;
  const hasLimits = stopGap !== undefined || Object.keys(limits).length > 0;
  const stands = {
    ...(hasFitment && { fit: fitment }),
    ...(hasLimits && { limits }),
    ...(stopGap !== undefined && { stopGap }),
  };
  return {
    problems,
    isGiven: hasFitment || hasLimits || drop !== undefined || corner !== undefined,
    recipe: (begun) => {
      const isCorner = corner && !isUsers(begun, 'corner');
      const car = isCorner ? { ...give(begun, 'corner', 'page', () => corner), by: 'points' as const } : begun;
      const isOwn = isUsers(car, 'fit');
      const fitted = !isOwn || hasFitment || hasLimits ? give(car, 'fit', 'page', () => stands) : car;
      return isOwn || drop === undefined || fitted.provenance.drop?.by === 'user'
        ? fitted
        : withDrop(fitted, drop, 'page');
    },
  };
}

const SCRIPT_NAMES = ['fit', 'limits', 'drop', 'corner'];
const FITMENT_NAMES: readonly (keyof Fitment)[] = [
  'before',
  'after',
  'places',
  'lock',
  'marginBodywork',
  'marginChassis',
  'allowance',
  'sideways',
  'camberBy',
];

const isSaid = (value: unknown): boolean => value !== undefined && value !== null;

/** `6.5`, `6.5J` or `6.5 in`, and whatever a length may be written in: inches. */
function readRim(text: string, path: string): ReturnType<typeof readLengthAttribute> {
  const bare = text.replace(/(\d)\s*j[a-z]*$/i, '$1');
  const read = readLengthAttribute(/[\d.]$/.test(bare) ? `${bare} in` : bare, 'coordinate', path);
  return read.ok ? { ok: true, value: read.value / MM_PER_INCH } : read;
}

/** `205/55R16, 6.5, 45` and a spacer. Each that cannot be read is a problem of its own. */
function readWheel(text: string, path: string, problems: Problem[]): WheelSpec | undefined {
  const [size = '', rim, offset, spacer, ...more] = text.split(',').map((part) => part.trim());
  if (rim === undefined || offset === undefined || more.length > 0) {
    problems.push({ code: 'wrong-shape', path, value: text });
    return undefined;
  }
  const length = (part: string, name: string) =>
    readLengthAttribute(part.replace(/^et\s*/i, ''), 'offset', `${path}.${name}`);
  const reads = [
    readRim(rim, `${path}.rimWidthInch`),
    length(offset, 'offset'),
    ...(spacer === undefined ? [] : [length(spacer, 'spacer')]),
  ];
  problems.push(...reads.flatMap((read) => (read.ok ? [] : [read.problem])));
  const [rimWidthInch, mm, wide] = reads.map((read) => (read.ok ? read.value : Number.NaN));
  return { size, rimWidthInch: rimWidthInch!, offset: mm!, ...(spacer !== undefined && { spacer: wide! }) };
}
