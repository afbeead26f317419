import { describe, expect, it } from 'vitest';
import {
  drawnWheels,
  gapIn,
  steeredTo,
  steerRange,
  tightest,
} from '../../../components/bumpline-clearance/drawn-wheels.js';
import { sectionView } from '../../../components/bumpline-clearance/section-view.js';
import { sideView } from '../../../components/bumpline-clearance/side-view.js';
import { crosses, type Px } from '../../../components/drawing/geometry.js';
import type { Drawing, Item, PathItem } from '../../../components/drawing/items.js';
import { type Layout, layout } from '../../../components/drawing/layout.js';
import { clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { tried } from '../../../core/answers/from-source.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { finished } from '../../core/answers/finished.js';
import { faultsOf } from '../drawing/sheet.js';

const MM = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
/** Of the element at 320, 360 and 390 px, and of half a desktop. */
const WIDTHS = [288, 312, 328, 344, 358, 450, 590];

const asked = clearanceRequestOf({ ...EMPTY_CAR, drop: 30 });
const { source } = tried({ source: asked.source });
const request = { ...asked, source };
const answer = finished(clearanceQuestions.clearanceSteered(request));
const motion = finished(clearanceQuestions.wheelMotion(request));
const drawn = drawnWheels(answer, asked);
const [left, right] = steerRange(motion);
const travels = [answer.drop, 45, answer.range[1]];
const steers = [left, -21, 0, 14, right];

const poses = travels.flatMap((travel) =>
  steers.map((steer) => ({ travel, steer, steered: steeredTo(drawn, motion, steer) })),
);

/** All that is drawn of a sheet as straight pieces, px: read back from its paths. */
function strokesOf({ shapes }: Layout): (readonly [Px, Px])[] {
  const strokes: (readonly [Px, Px])[] = [];
  for (const { d, look } of shapes) {
    if (/\bnone\b/.test(look)) continue;
    for (const [part] of d.matchAll(/M[^M]*/g)) {
      const points: Px[] = [];
      // The end of every command, and the middle of a rounded corner.
      for (const [, command, rest] of part.matchAll(/([MLQZa])([^MLQZa]*)/g)) {
        const numbers = (rest!.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
        if (command === 'Z') points.push(points[0]!);
        else if (command === 'a') {
          const [x, y] = points.at(-1)!;
          points.push([x + numbers[5]!, y]);
        } else {
          const [a, b] = [points.at(-1), numbers];
          if (command === 'Q') points.push([(a![0] + 2 * b[0]! + b[2]!) / 4, (a![1] + 2 * b[1]! + b[3]!) / 4]);
          points.push(numbers.slice(-2) as unknown as Px);
        }
      }
      for (let i = 1; i < points.length; i++) strokes.push([points[i - 1]!, points[i]!]);
    }
  }
  return strokes;
}

/** Labels on a line, a mark or a hatching, leaders of their own apart. */
function written(sheet: Layout): string[] {
  const strokes = strokesOf(sheet);
  return sheet.texts.flatMap((text) => {
    const own = text.leader;
    const over = strokes.some(
      ([a, b]) => crosses(a, b, text) && !(own && Math.hypot(a[0] - own[0][0], a[1] - own[0][1]) < 1),
    );
    return over ? [text.text] : [];
  });
}

const labels = ({ items }: Drawing) => items.flatMap((item) => (item.kind === 'label' ? [item.text] : []));
const hatched = (items: readonly Item[]) => items.filter((item) => item.kind === 'path' && item.hatch);

describe('the corner from the front, cut through the wheel and the tightest place', () => {
  const at = (i: number) => sectionView(drawn, answer.worst!, poses[i]!.steered, poses[i]!.travel, MM);

  it('shows arch, strut, hub, the new wheel and the old one dashed, by their names', () => {
    const drawing = at(2);
    expect(labels(drawing)).toEqual(['new wheel', 'old wheel']);
    // Panel over the strut and the disc of the rim are cut through.
    expect(hatched(drawing.items).length).toBeGreaterThanOrEqual(2);
    const dashed = drawing.items.filter((item) => item.kind === 'path' && item.dash === 'dashed');
    expect(dashed).toHaveLength(1);
    // The edge of the arch is where its gap is measured to.
    const dimension = drawing.items.find((item) => item.kind === 'dimension')!;
    const arch = drawing.items.find(
      (item) => item.kind === 'path' && item.points[0] !== undefined && item.points[0] === dimension.to,
    );
    expect(arch).toMatchObject({ weight: 'wide' });
  });

  it('writes on no line, mark or hatching, at any width, travel and steer', () => {
    for (const width of WIDTHS) {
      for (const [i, { travel, steer }] of poses.entries()) {
        const sheet = layout(at(i), width);
        expect(faultsOf(sheet), `${travel} mm, ${steer}° at ${width} px`).toEqual([]);
        expect(written(sheet), `${travel} mm, ${steer}° at ${width} px`).toEqual([]);
      }
    }
  });

  it('says the gap of the travel and the steer that it shows, true to scale', () => {
    for (const { steered, travel } of poses) {
      const drawing = sectionView(drawn, answer.worst!, steered, travel, MM);
      const { from, to, text } = drawing.items.find((item) => item.kind === 'dimension')!;
      const gap = gapIn(drawn, steered, answer.worst!, travel);
      expect(Number.parseFloat(text!.replace('−', '-'))).toBeCloseTo(gap, 1);
      expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeGreaterThan(0.95 * Math.abs(gap) - 0.3);
      expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeLessThan(1.05 * Math.abs(gap) + 0.3);
    }
    const asTight = tightest(drawn, answer.worst!);
    expect(gapIn(drawn, asTight, answer.worst!, answer.range[1])).toBeCloseTo(
      answer.places[answer.worst!]!.decisive.gap,
      2,
    );
  });

  it('keeps its scale while the wheel travels, and rises in it', () => {
    const scales = travels.map((travel) => layout(sectionView(drawn, 0, tightest(drawn, 0), travel, MM), 328).scale);
    for (const scale of scales) expect(scale).toBeCloseTo(scales[0]!, 6);
    const tops = travels.map((travel) => {
      const { items } = sectionView(drawn, 0, tightest(drawn, 0), travel, MM);
      const tyre = items.find((item) => item.kind === 'path' && item.fill === 'tyre') as PathItem;
      return Math.max(...tyre.points.map(([, up]) => up));
    });
    // Its top goes up by the travel, less what leans away.
    expect(tops.at(-1)! - tops[0]!).toBeGreaterThan(0.9 * (travels.at(-1)! - travels[0]!));
  });

  it('shows of what nobody measured no contact: a sketched strut stays beside a tyre that goes far in', () => {
    const wide = { ...request, after: { ...request.after, offset: 75 }, places: request.places.slice(0, 1) };
    const found = finished(clearanceQuestions.clearanceSteered(wide));
    const wheels = drawnWheels(found, { ...asked, after: wide.after, places: wide.places });
    const drawing = sectionView(wheels, 0, tightest(wheels, 0), found.drop, MM);
    const tyre = drawing.items.find((item) => item.kind === 'path' && item.fill === 'tyre') as PathItem;
    const inner = Math.min(...tyre.points.map(([x]) => x));
    const top = Math.max(...tyre.points.map(([, y]) => y));
    const strut = drawing.items
      .slice(0, drawing.items.indexOf(tyre))
      .flatMap((item) => (item.kind === 'path' && item.fill === 'sheet' && item.closed ? item.points : []));
    const beside = strut.filter(([x, y]) => x < inner + 60 && y > top - 90 && y < top);
    expect(beside.length).toBeGreaterThan(0);
    for (const [x] of beside) expect(x).toBeLessThan(inner);
  });
});

describe('the wheel in its arch, from the side', () => {
  it('writes on no line, puts no value on another, and moves with travel', () => {
    for (const width of WIDTHS) {
      for (const { travel, steer, steered } of poses) {
        const sheet = layout(sideView(drawn, steered, travel, 0, MM), width);
        expect(faultsOf(sheet), `${travel} mm, ${steer}° at ${width} px`).toEqual([]);
        expect(written(sheet)).toEqual([]);
      }
    }
  });

  it('has the arch through the lips that were measured', () => {
    const drawing = sideView(drawn, tightest(drawn, 0), answer.drop, 0, MM);
    const home = drawn.poses.at(0).centre;
    const open = (item: Item): item is PathItem => item.kind === 'path' && !item.closed && !item.dash;
    const arch = drawing.items.filter(open).at(-1)!;
    const radius = Math.max(...arch.points.map(([x, y]) => Math.hypot(x + home[0], y - home[2])));
    // The lips stand 371 to 379 mm from the hub.
    expect(radius).toBeGreaterThan(370);
    expect(radius).toBeLessThan(381);
  });
});
