import { readFileSync } from 'node:fs';

/*
 * test/reference/bump_steer_planar.csv: a strut that moves in one plane, and by how much the ends of several rods come nearer or further
 * apart over travel while the wheel does not steer. Derived by plane kinematics in a program of its own (see the file's first line).
 * Its centre of curvature there rests on differences; worked out again with forty digits (mpmath, derivatives of the same closed form)
 * it is (260.5563252398, 268.4082562327), radius 379.4977840033 mm.
 */

/** Its points, as the file's first line has them: y and z, mm. */
export const PLANAR_STRUT = {
  pivot: [340, 200],
  ball: [700, 185],
  top: [585, 835],
  wheelCentre: [745, 310],
  outer: [640, 262],
  instantCentre: [-2366.686217009, 312.778592375],
  centreOfCurvature: [260.5563252398, 268.4082562327],
  radius: 379.4977840033,
} as const;

export interface PlanarRod {
  name: string;
  inner: readonly [y: number, z: number];
  length: number;
  /** At each of `PLANAR_TRAVELS`, mm. */
  misfit: readonly number[];
}

export const PLANAR_TRAVELS = [-60, -40, -20, 0, 20, 40, 60] as const;

/** The rods of the file. */
export const PLANAR_RODS: readonly PlanarRod[] = readFileSync(new URL('bump_steer_planar.csv', import.meta.url), 'utf8')
  .split(/\r?\n/)
  .slice(2)
  .filter((line) => line.trim() !== '')
  .map((line) => {
    const [, name, rest] = /^(?:"([^"]*)"|[^,]*),(.*)$/.exec(line)!;
    const [y, z, length, ...misfit] = rest!.split(',').map(Number) as [number, number, number, ...number[]];
    return { name: name ?? line.slice(0, line.indexOf(',')), inner: [y, z], length, misfit };
  });
