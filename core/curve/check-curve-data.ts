import { InputError, type Problem } from '../quantity/problem.js';
import { checkDomain, checkFinite, isList } from './check.js';
import { type Curve, curveOf, END_TOLERANCE_MM } from './curve.js';
import type { CurveData } from './curve-data.js';

/** All that is wrong with a curve's data; empty when it can be evaluated. */
export function curveDataProblems(data: CurveData): Problem[] {
  const problems: Problem[] = [];
  const wrong = (path: string, value: unknown) => problems.push({ code: 'wrong-shape', path, value });
  const list = (path: string, values: unknown, lengths?: number[]) => {
    if (!isList(values)) wrong(path, values);
    else if (lengths && !lengths.includes(values.length))
      wrong(path, `${values.length} numbers, ${lengths.join(' or ')} wanted`);
    else checkFinite(problems, path, values);
  };

  checkDomain(problems, 'domain', data.domain);
  if (data.measured !== undefined) checkDomain(problems, 'measured', data.measured);
  if (!Array.isArray(data.sources)) wrong('sources', data.sources);
  if (problems.length > 0) return problems;

  if (data.kind === 'polynomial') {
    const n = data.coefficients?.length;
    list('coefficients', data.coefficients);
    if (n === 0) problems.push({ code: 'missing', path: 'coefficients', value: data.coefficients });
    list('factor', data.factor, [0, n * n]);
    checkFinite(problems, 'centre', [data.centre]);
    checkFinite(problems, 'scale', [data.scale]);
    if (data.scale === 0) problems.push({ code: 'out-of-range', path: 'scale', value: 0, limit: 0 });
    const further = data.effects === undefined ? 0 : data.sources.length - n;
    if (data.effects !== undefined) list('effects', data.effects, [Math.max(0, further) * n]);
    const hasDoubt = data.factor?.length > 0 || data.effects !== undefined;
    if (hasDoubt && (data.sources.length !== n + further || further < 0 || !(data.factor?.length > 0)))
      wrong('sources', `${data.sources.length} sources, ${n} wanted`);
  } else if (data.kind === 'sampled') {
    const { travel, sources, domain } = data;
    const n = travel?.length;
    list('travel', travel);
    list('value', data.value, [n]);
    list('slope', data.slope, [n]);
    list('parts', data.parts, [0, n * sources.length]);
    if (n < 2) wrong('travel', `${n} samples, at least 2 wanted`);
    if (problems.length > 0) return problems;
    for (let i = 1; i < n; i++) {
      if (!(travel[i]! > travel[i - 1]!)) {
        problems.push({ code: 'out-of-range', path: `travel.${i}`, value: travel[i], limit: travel[i - 1]! });
      }
    }
    const ends = [travel[0]!, travel[n - 1]!];
    // Asking beyond the samples would be extrapolation.
    domain.forEach((end, i) => {
      if ((ends[i]! - end) * (i ? 1 : -1) < -END_TOLERANCE_MM) {
        problems.push({ code: 'out-of-range', path: `domain.${i}`, value: end, limit: ends[i]! });
      }
    });
  } else {
    wrong('kind', (data as { kind: unknown }).kind);
  }
  return problems;
}

/** Gives the data of a curve its methods back. Throws InputError with everything that is wrong with the data. */
export function curveFrom(data: CurveData): Curve {
  const problems = curveDataProblems(data);
  if (problems.length > 0) throw new InputError(problems);
  return curveOf(data);
}
