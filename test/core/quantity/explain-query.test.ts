import { describe, expect, it } from 'vitest';
import type { Query, QueryCode } from '../../../core/document/unusual.js';
import { explainQuery } from '../../../core/quantity/explain-query.js';

const CARRY_ON = 'which is unusual on a road car. Check for swapped digits; if it is right, carry on.';
const ball: Query = { code: 'slope', path: 'lowerArm.ball', value: 34.2, quantity: 'linkAngle', limit: 25 };

/** One of each, so that a new code without a sentence fails to compile here. */
const EACH: Record<QueryCode, [Omit<Query, 'code' | 'limit'>, string]> = {
  track: [{ path: 'wheelCentre', value: 4000, quantity: 'coordinate' }, 'the track would be 4000\u202fmm'],
  height: [{ path: 'lowerArm.ball', value: 87, quantity: 'coordinate' }, 'it is 87\u202fmm above the ground'],
  'radius-differs': [
    { path: 'loadedRadius', value: 99, quantity: 'coordinate' },
    'the wheel centre’s height and the loaded radius differ by 99\u202fmm',
  ],
  length: [{ path: 'upperArm.ball', value: 99.96, quantity: 'coordinate' }, 'the arm is 100\u202fmm long'],
  slope: [{ path: 'tieRod.outer', value: -40.4, quantity: 'linkAngle' }, 'the tie rod slopes 40° down to the wheel'],
  'damper-lean': [
    { path: 'strut.top', value: -12.6, quantity: 'linkAngle' },
    'the damper leans 13° outboard at the top',
  ],
  caster: [{ path: 'strut.top', value: -31, quantity: 'linkAngle' }, 'caster is −31°'],
  kingpin: [{ path: 'strut.top', value: 31, quantity: 'linkAngle' }, 'kingpin inclination is 31°'],
  'scrub-radius': [
    { path: 'wheelCentre', value: -131.25, quantity: 'coordinate' },
    'the scrub radius is −131.3\u202fmm',
  ],
};

describe('explainQuery', () => {
  it.each(Object.entries(EACH))('%s: the point, the figure with its name, and what to do', (code, [rest, words]) => {
    const query = { ...rest, code: code as QueryCode, limit: 0 };
    expect(explainQuery(query, { label: 'That point' })).toBe(`That point: ${words}, ${CARRY_ON}`);
    expect(explainQuery(query)).toBe(`${rest.path}: ${words}, ${CARRY_ON}`);
  });

  it('says which way, and which link', () => {
    expect(explainQuery(ball, { label: 'Ball joint' })).toContain(
      'Ball joint: the arm slopes 34° up to the wheel, which',
    );
    expect(explainQuery({ ...ball, code: 'damper-lean', path: 'strut.low' })).toContain('leans 34° inboard at the top');
    expect(explainQuery({ ...ball, code: 'length', path: 'tieRod.inner' })).toContain('the tie rod is');
  });

  it('in the unit and with the decimal mark of the reader', () => {
    const height: Query = { code: 'height', path: 'lowerArm.ball', value: 87, quantity: 'coordinate', limit: 100 };
    const inch = { length: 'in', angle: 'degrees' } as const;
    expect(explainQuery(height, { unitSystem: inch })).toContain('it is 3.43\u202fin above');
    expect(explainQuery(height, { unitSystem: inch, language: 'de' })).toContain('it is 3,43\u202fin above');
    expect(explainQuery(ball, { unitSystem: { length: 'mm', angle: 'arcminutes' } })).toContain('slopes 34°12′ up');
  });
});
