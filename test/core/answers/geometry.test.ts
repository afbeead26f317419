import { describe, expect, it } from 'vitest';
import { geometry, geometryDoubt } from '../../../core/answers/from-source.js';
import { GEOMETRY_OUTPUTS, type GeometryAnswer, type GeometryOutput } from '../../../core/answers/geometry.js';
import { changeDifference, outputAt, outputChange } from '../../../core/answers/geometry-at.js';
import { rollCentre } from '../../../core/answers/roll-centre.js';
import { curveOf } from '../../../core/curve/curve.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import type { AnySource, PartsSource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { type StrutCorner, withHardPoint } from '../../../core/linkage/corner.js';
import { finished } from '../../../core/math/finished.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import wishbone from '../../reference/derived_double_wishbone_3d.json' with { type: 'json' };
import { withLoweredJoint } from '../../reference/independent-joint.js';
import {
  type IndependentCorner,
  type IndependentPose,
  independentStrutSweep,
  type Point,
} from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';
import { problemsOf } from '../problems-of.js';

/*
 * Angles, half track, scrub radius and caster trail come from the positions of test/reference/independent-strut.ts; roll centre, instant
 * centre and motion ratio from how its positions change, by central differences and plane geometry. Nothing of it is from core/.
 */

const corner: StrutCorner = { ...referenceCorner, plusMinus: { other: 2 } };
const of = { kind: 'corner', corner } as const;
const JOINT = { part: 'ballJointExtended', mm: 22 } as const;
const withJoint: PartsSource = { kind: 'parts', of, parts: [JOINT] };
const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
const TRAVELS = [-50, -20, 0, 25, 45, 90];
/** Of central differences, mm. */
const STEP = 0.05;

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** All outputs of the second solver at a travel. */
function second(of: IndependentCorner, travel: number): Record<GeometryOutput, number> {
  const [below, here, above] = independentStrutSweep(of, [travel - STEP, travel, travel + STEP]) as [
    IndependentPose,
    IndependentPose,
    IndependentPose,
  ];
  const rate = (read: (pose: IndependentPose) => Point): Point =>
    minus(read(above), read(below)).map((by) => by / (2 * STEP)) as unknown as Point;
  // Where the steering axis meets the ground.
  const up = minus(of.strut.top, here.ball);
  const share = (here.contact[2] - here.ball[2]) / up[2];
  const contact = rate((pose) => pose.contact);
  // How fast the carrier turns, from how two directions fixed to it change: ω = (ȧ × ḃ)/(ȧ · b).
  const toBall = (pose: IndependentPose) => minus(pose.ball, pose.wheelCentre);
  const [spin, ball] = [rate((pose) => pose.spin), rate(toBall)];
  const turn = cross(spin, ball)[0] / dot(spin, toBall(here));
  const wheel = rate((pose) => pose.wheelCentre);
  return {
    camber: here.camber,
    toe: here.toe,
    caster: here.caster,
    kingpin: here.kingpin,
    scrubRadius: here.contact[1] - (here.ball[1] + share * up[1]),
    casterTrail: here.ball[0] + share * up[0] - here.contact[0],
    halfTrack: here.contact[1],
    rollCentreHeight: (here.contact[1] * contact[1]) / contact[2],
    motionRatio: -(above.damperLength - below.damperLength) / (2 * STEP),
    instantCentreY: here.wheelCentre[1] - wheel[2] / turn,
    instantCentreZ: here.wheelCentre[2] + wheel[1] / turn,
  };
}

const at = ({ travel, outputs }: GeometryAnswer, output: GeometryOutput, where: number) =>
  outputs[output]![travel.indexOf(where)]!;

describe('geometry', () => {
  it.each([
    ['the bare links', of as AnySource, referenceCorner as IndependentCorner],
    ['a 22 mm lower joint', withJoint, withLoweredJoint(referenceCorner, { mm: 22, isTieRodCorrected: false })],
  ])('gives every output of %s as a second solver and plane geometry do', (_, source, built) => {
    const answer = geometry({ source, travels: TRAVELS });
    expect(Object.keys(answer.outputs)).toEqual([...GEOMETRY_OUTPUTS]);
    for (const travel of TRAVELS) {
      const expected = second(built, travel);
      for (const output of GEOMETRY_OUTPUTS) {
        // Far away, a centre stands where two nearly parallel lines meet: as good as their angle.
        const scale = Math.max(1, Math.abs(expected[output]) / 1000);
        expect(at(answer, output, travel) / scale, `${output} at ${travel} mm`).toBeCloseTo(
          expected[output] / scale,
          3,
        );
      }
    }
  });

  it('gives a double wishbone’s angles and roll centre as its derived reference has them, and no motion ratio without a damper', () => {
    // test/reference/derived_double_wishbone_3d.json: two unrelated formulations that agree to 1e-12.
    const travels = wishbone.results.map(({ wheel_travel_mm }) => wheel_travel_mm);
    const answer = geometry({ source: { kind: 'corner', corner: wishboneCorner }, travels });
    expect(Object.keys(answer.outputs)).not.toContain('motionRatio');
    for (const row of wishbone.results) {
      const value = (output: GeometryOutput) => at(answer, output, row.wheel_travel_mm);
      expect(value('camber')).toBeCloseTo(row.camber_deg, 9);
      expect(value('toe')).toBeCloseTo(row.toe_in_deg, 9);
      expect(value('caster')).toBeCloseTo(row.caster_deg, 9);
      expect(value('kingpin')).toBeCloseTo(row.kpi_deg, 9);
      expect(value('scrubRadius')).toBeCloseTo(row.scrub_radius_mm, 6);
      expect(value('rollCentreHeight')).toBeCloseTo(row.roll_centre_lowest_point_mm, 6);
    }
  });

  it('looks at 60 mm of droop to 100 mm of bump by 2.5 mm where the links reach so far, stock height among them', () => {
    const { travel, reach, motion } = geometry({ source: of });
    expect([travel[0], travel.at(-1)]).toEqual([-60, 100]);
    expect(travel).toHaveLength(65);
    expect(travel).toContain(0);
    expect(reach.bump).toBeGreaterThan(100);
    expect(motion.travel).toEqual(travel);
  });

  it('leaves NaN where a travel is out of reach, and moves no joint there', () => {
    const { outputs, motion } = geometry({ source: of, travels: [0, 290] });
    for (const output of GEOMETRY_OUTPUTS) {
      expect(outputs[output]![0]).not.toBeNaN();
      expect(outputs[output]![1]).toBeNaN();
    }
    expect([...motion.travel]).toEqual([0]);
  });

  it('answers no toe from a driveway, with or without parts, and its ± of the rest says how little a tape knows', () => {
    for (const source of [driveway, { kind: 'parts', of: driveway, parts: [JOINT] } as const]) {
      expect(Object.keys(geometry({ source }).outputs)).not.toContain('toe');
      const { parts, travel, sources } = geometryDoubt({ source });
      expect(Object.keys(parts)).not.toContain('toe');
      const row = travel.indexOf(20);
      const plusMinus =
        NORMAL_95 * Math.hypot(...parts.rollCentreHeight!.slice(row * sources.length, (row + 1) * sources.length));
      expect(plusMinus).toBeGreaterThan(5);
      expect(plusMinus).toBeLessThan(25);
    }
  });

  it('tells all that is wrong at once: the source’s, a travel’s, and a part’s by its place', () => {
    const found = (request: Parameters<typeof geometry>[0]) =>
      problemsOf(() => geometry(request)).map(({ path }) => path);
    expect(found({ source: withJoint, travels: [0, Number.NaN] })).toEqual(['travels.1']);
    expect(found({ source: { ...withJoint, parts: [JOINT, { part: 'armLonger', mm: 900 }] } })).toEqual(['parts.1.mm']);
    expect(found({ source: { kind: 'coefficients', coefficients: [0, -0.01], domain: [-50, 50] } })).toEqual([
      'source',
    ]);
    const strutOnly = { part: 'topMountMoved', vector: [0, -10, 0] } as const;
    const onWishbone = { kind: 'parts', of: { kind: 'corner', corner: wishboneCorner }, parts: [strutOnly] } as const;
    expect(found({ source: onWishbone })[0]).toMatch(/^parts\.0/);
  });
});

describe('geometryDoubt', () => {
  it('of a driveway is what the camber curve and the roll centre are given elsewhere, with parts and without', () => {
    const uncorrected = { part: 'ballJointExtended', mm: 22 } as const;
    for (const source of [
      driveway,
      { kind: 'parts', of: driveway, parts: [{ ...uncorrected, correctTieRod: true }] } as const,
      { kind: 'parts', of: driveway, parts: [uncorrected] } as const,
    ]) {
      const links = { curves: geometry({ source }), doubt: geometryDoubt({ source }) };
      const solved = solveSource(source);
      const curve = curveOf(solved.camber);
      const change = plusMinus95(curve.changeEstimate(60, 20), curve.data.sources);
      expect(outputChange(links, 'camber', 60, 20).plusMinus!).toBeCloseTo(change, 4);
      const { travel, sources, parts } = finished(rollCentre({ source: solved }))!;
      const row = travel.indexOf(20) * sources.length;
      const plusMinus = NORMAL_95 * Math.hypot(...parts.slice(row, row + sources.length));
      expect(outputAt(links, 'rollCentreHeight', 20).plusMinus! / plusMinus).toBeCloseTo(1, 2);
    }
  });

  it('of what a part changes of a change is by second differences what the second solver says, each cause with its share', () => {
    const links = (source: AnySource) => ({ curves: geometry({ source }), doubt: geometryDoubt({ source }) });
    const found = changeDifference(links(withJoint), links(of), 'camber', 60, 20);
    const lowered = (one: IndependentCorner, mm = 22) => withLoweredJoint(one, { mm, isTieRodCorrected: false });
    const change = (one: IndependentCorner) => {
      const [from, to] = independentStrutSweep(one, [20, 60]);
      return to!.camber - from!.camber;
    };
    const effect = (one: IndependentCorner, mm = 22) => change(lowered(one, mm)) - change(one);
    expect(found.value).toBeCloseTo(effect(corner), 5);
    // Of the joint’s own tolerance, ±1 mm.
    const ofPart = ((effect(corner, 22.2) - effect(corner, 21.8)) / 0.4) * (1 / NORMAL_95);
    const { share } = found.contributions.find(({ id }) => id.startsWith('part.'))!;
    const standard = found.plusMinus! / NORMAL_95;
    expect(Math.sqrt(share) * standard).toBeCloseTo(Math.abs(ofPart), 4);
    expect(found.contributions.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
    expect(new Set(found.contributions.map(({ id }) => id)).size).toBe(found.contributions.length);
    expect(found.contributions.map(({ id }) => id).join()).not.toMatch(/forward|sideways|height/);
  });

  it('is what moving one hard point does to the second solver, through the part, for angles and roll centre alike', () => {
    for (const [source, build] of [
      [of, (one: IndependentCorner) => one],
      [withJoint, (one: IndependentCorner) => withLoweredJoint(one, { mm: 22, isTieRodCorrected: false })],
    ] as const) {
      const { parts, travel, sources } = geometryDoubt({ source });
      const where = travel[2]!;
      for (const [key, axis, name] of [
        ['lowerArm.ball', 2, 'height'],
        ['strut.top', 1, 'sideways'],
      ] as const) {
        const off = (by: number) => {
          const point = [...(key === 'strut.top' ? corner.strut.top : corner.lowerArm.ball)] as [
            number,
            number,
            number,
          ];
          point[axis] += by;
          return second(build(withHardPoint(referenceCorner, key, point) as IndependentCorner), where);
        };
        const [more, less] = [off(0.1), off(-0.1)];
        const s = sources.findIndex(({ id }) => id === `${key}.${name}`);
        for (const output of ['camber', 'toe', 'caster', 'kingpin', 'rollCentreHeight'] as const) {
          const expected = (((more[output] - less[output]) / 0.2) * 2) / NORMAL_95;
          const found = parts[output]![2 * sources.length + s]!;
          expect(found, `${key} ${output}`).toBeCloseTo(expected, output === 'rollCentreHeight' ? 1 : 3);
        }
      }
    }
  });

  it('names what a set of parts shares with the bare links alike, so that it cancels in what the part changes', () => {
    const [bare, fitted] = [geometryDoubt({ source: of }), geometryDoubt({ source: withJoint })];
    const ids = fitted.sources.map(({ id }) => id);
    for (const { id } of bare.sources) expect(ids).toContain(id);
    const spread = (of: (s: number) => number, count: number) =>
      NORMAL_95 * Math.hypot(...Array.from({ length: count }, (_, s) => of(s)));
    const row = fitted.travel.indexOf(20);
    const read = (doubt: typeof bare, id: string) => {
      const s = doubt.sources.findIndex((one) => one.id === id);
      return s < 0 ? 0 : doubt.parts.rollCentreHeight![doubt.travel.indexOf(20) * doubt.sources.length + s]!;
    };
    expect(row).toBeGreaterThan(0);
    const own = spread((s) => read(fitted, ids[s]!), ids.length);
    const change = spread((s) => read(fitted, ids[s]!) - read(bare, ids[s]!), ids.length);
    expect(change).toBeLessThan(own / 2);
  });
});
