import { type CarDocument, EMPTY_CAR, takeCorner } from '../../core/document/car.js';
import type { Fit } from '../../core/document/fit.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { TravelLimits } from '../../core/travel/travel-limits.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import { readLimits } from '../shared/limits-attribute.js';
import type { BumplineClearance } from './bumpline-clearance.js';

type Given = Pick<BumplineClearance, 'drop' | 'fit' | 'limits' | 'lock' | 'wheelAfter' | 'wheelBefore'>;

/** What a page says of wheels, places and limits. */
export interface PageFit {
  recipe: (car: CarDocument) => CarDocument;
  isGiven: boolean;
  problems: Problem[];
}

/**
 * Properties before attributes before the JSON script; of a script also the hard points by which the wheel moves.
 * Attributes are locale-free. What cannot be read is a problem.
 */
export function pageFit(page: Given, json: unknown): PageFit {
  const problems: Problem[] = [];
  const script = (json ?? {}) as { fit?: Fit; limits?: TravelLimits; drop?: unknown; corner?: unknown };
  if (json !== undefined && (typeof json !== 'object' || json === null)) {
    problems.push({ code: 'wrong-shape', path: 'JSON script', value: json });
  }
  const corner = script.corner === undefined ? undefined : takeCorner(script.corner);
  const wheel = (text: string | undefined, path: string): WheelSpec | undefined =>
    text === undefined || text === null ? undefined : readWheel(text, path, problems);
  const before = wheel(page.wheelBefore, 'before');
  const after = wheel(page.wheelAfter, 'after');
  const lock = page.lock === undefined || page.lock === null ? undefined : Number(page.lock);
  const fit: Fit = {
    ...script.fit,
    ...(before && { before }),
    ...(after && { after }),
    ...(lock !== undefined && { lock }),
    ...page.fit,
  };
  const said = typeof page.limits === 'string' ? readLimits(page.limits, problems) : page.limits;
  const { stopGap, ...limits } = said ?? script.limits ?? {};
  const dropText = page.drop ?? (script.drop as string | number | undefined);
  let drop: number | undefined;
  if (dropText !== undefined && dropText !== null) {
    const parsed = readLengthAttribute(String(dropText), 'drop', 'drop');
    if (parsed.ok) drop = parsed.value;
    else problems.push(parsed.problem);
  }
  const hasFit = Object.keys(fit).length > 0;
  const hasLimits = stopGap !== undefined || Object.keys(limits).length > 0;
  const stands = { ...(hasFit && { fit }), ...(hasLimits && { limits }), ...(stopGap !== undefined && { stopGap }) };
  return {
    problems,
    isGiven: hasFit || hasLimits || drop !== undefined || corner !== undefined,
    recipe: (begun) => {
      const { whole: _whole, ...others } = begun;
      const car = corner && begun.givenBy !== 'user' ? { ...others, ...corner, by: 'points' as const } : begun;
      if (car.fitGivenBy === 'user') return hasFit || hasLimits ? { ...car, fitStandIn: stands } : car;
      const { fit: _fit, limits: _limits, fitGivenBy: _by, ...rest } = car;
      return {
        ...rest,
        ...stands,
        ...((hasFit || hasLimits) && { fitGivenBy: 'page' as const }),
        drop: drop ?? car.drop ?? EMPTY_CAR.drop,
      };
    },
  };
}

/** `205/55R16, 6.5, 45` and a spacer: what is no number reaches the answer as NaN and is named there. */
function readWheel(text: string, path: string, problems: Problem[]): WheelSpec | undefined {
  const [size = '', rim, offset, spacer, ...more] = text.split(',').map((part) => part.trim());
  if (rim === undefined || offset === undefined || more.length > 0) {
    problems.push({ code: 'wrong-shape', path, value: text });
    return undefined;
  }
  return {
    size,
    rimWidthInch: Number(rim),
    offset: Number(offset),
    ...(spacer !== undefined && { spacer: Number(spacer) }),
  };
}
