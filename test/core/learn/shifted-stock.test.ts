import { describe, expect, it } from 'vitest';
import { predict } from '../../../core/answers/from-source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';

const asked = (parts: readonly PartData[], drop = 25) =>
  predict({
    source: {
      kind: 'learnt',
      of: { kind: 'corner', corner: { ...EXAMPLE_CORNER, plusMinus: { other: 10 } } },
      readings: EXAMPLE_READINGS,
    },
    parts,
    drop,
  });

describe('the stock curve begun earlier, without links', () => {
  it('comes near what the links say of a joint with its rod, and is told of nothing else', () => {
    const joint: PartData = { part: 'ballJointExtended', mm: 22, correctTieRod: true };
    const found = asked([joint]);
    expect(Math.abs(found.shifted! - found.predicted.value)).toBeLessThan(0.05);
    expect(asked([{ part: 'ballJointExtended', mm: 22 }]).shifted).toBeUndefined();
    expect(asked([{ part: 'armLonger', mm: 10 }]).shifted).toBeUndefined();
    expect(asked([]).shifted).toBeUndefined();
  });

  it('is not told where nothing was read so far down', () => {
    const far: PartData = { part: 'ballJointExtended', mm: 40, correctTieRod: true };
    // 40 mm of joint ask for 44 mm more droop than stock height, and readings begin at −35 mm.
    expect(asked([far], 0).shifted).toBeUndefined();
    expect(asked([far], 25).shifted).toBeDefined();
  });
});
