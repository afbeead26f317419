import { InputError, type Problem } from '../quantity/problem.js';
import { checkDomain, checkFinite, isList } from './check.js';
import type { CurveData } from './curve-data.js';

export interface CoefficientsInput {
  /** Low power first: degrees, degrees per mm, degrees per mm², … with travel in mm from reference height, bump positive. */
  coefficients: number[];
  /** Travels, mm, between which they hold; the lower one first. */
  domain: [number, number];
  /** Camber by default. */
  quantity?: 'camber' | 'toe';
  /** One for each coefficient, in its unit. The coefficients then count as independent: a fit's are not, so give a fit's curve instead. */
  standardUncertainties?: number[];
}

/** A curve from known coefficients. Throws InputError with everything that is wrong with them. */
export function curveFromCoefficients(input: CoefficientsInput): CurveData {
  const { coefficients, domain, quantity = 'camber', standardUncertainties } = input;
  const problems: Problem[] = [];
  const list = (path: string, values: unknown) => {
    if (isList(values)) checkFinite(problems, path, values);
    else problems.push({ code: values === undefined ? 'missing' : 'wrong-shape', path, value: values });
  };
  list('coefficients', coefficients);
  if (coefficients?.length === 0) problems.push({ code: 'missing', path: 'coefficients', value: coefficients });
  checkDomain(problems, 'domain', domain);
  if (quantity !== 'camber' && quantity !== 'toe') {
    problems.push({ code: 'wrong-shape', path: 'quantity', value: quantity });
  }
  if (standardUncertainties !== undefined) {
    const path = 'standardUncertainties';
    list(path, standardUncertainties);
    if (isList(standardUncertainties)) {
      if (standardUncertainties.length !== coefficients?.length) {
        problems.push({ code: 'wrong-shape', path, value: standardUncertainties, other: 'coefficients' });
      }
      Array.from(standardUncertainties).forEach((value, i) => {
        if (value < 0) problems.push({ code: 'out-of-range', path: `${path}.${i}`, value, limit: 0 });
      });
    }
  }
  if (problems.length > 0) throw new InputError(problems);

  const n = coefficients.length;
  const factor = new Float64Array(standardUncertainties ? n * n : 0);
  standardUncertainties?.forEach((u, k) => {
    factor[k * n + k] = u;
  });
  return {
    kind: 'polynomial',
    quantity,
    domain: [domain[0], domain[1]],
    sources: (standardUncertainties ?? []).map((_, k) => ({
      id: `coefficients.${k}`,
      label: k === 0 ? 'constant term' : `coefficient of travel to the power ${k}`,
      dof: Number.POSITIVE_INFINITY,
    })),
    centre: 0,
    scale: 1,
    coefficients: Float64Array.from(coefficients),
    factor,
  };
}
