import type { ChartModel } from '../../../components/chart/model.js';

export const signed = (digits: number, unit: string) => (value: number) =>
  `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(digits)}${unit}`;
const bare = (digits: number) => (value: number) => (value === 0 ? '0' : signed(digits, '')(value));

/** An invented curve: camber against travel, degrees and mm. No real car's. */
export const camber = (travel: number, rate = 0.0165): number => -0.5 - rate * travel + 0.00012 * travel * travel;

/** A full model from invented figures, of everything a chart can show. */
export function exampleModel(drop = 30): ChartModel {
  const x = Float64Array.from({ length: 151 }, (_, i) => i - 60);
  const y = x.map((travel) => camber(travel));
  const doubt = x.map((travel) => 0.02 + 0.0011 * Math.abs(travel));
  const coarse = Float64Array.from({ length: 16 }, (_, i) => 10 * i - 60);
  return {
    x: { label: 'Wheel travel, mm', format: signed(0, ' mm'), tick: bare(0), domain: [-60, 90] },
    y: { label: 'Camber, °', format: signed(2, '°'), tick: bare(1), minSpan: 0.2 },
    series: [
      { id: 'before', label: 'old arms', x: coarse, y: coarse.map((travel) => camber(travel, 0.0105)), role: 'before' },
      { id: 'now', label: 'now', x, y, role: 'now' },
    ],
    bands: [{ of: 'now', low: y.map((v, i) => v - doubt[i]!), high: y.map((v, i) => v + doubt[i]!) }],
    regions: [
      { from: -Infinity, to: -45, label: 'not measured', kind: 'outside' },
      { from: 62, to: Infinity, label: 'bump stop', kind: 'limit' },
    ],
    markers: [
      { x: 0, y: camber(0), label: 'as built', kind: 'before' },
      { x: drop, y: camber(drop), label: `${drop} mm lower`, kind: 'now' },
      { x: 69, y: camber(69), label: 'turns', kind: 'turn' },
    ],
    description: `Camber against wheel travel, an invented example. At ${drop} mm lower ${signed(2, '°')(camber(drop))}.`,
  };
}
