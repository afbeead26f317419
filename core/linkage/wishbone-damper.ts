import { ARM_ANGLE, BALL, BALL_RATE, DAMPER_LENGTH, DAMPER_RATE, LOW, ROTATION, TURN_RATE } from './pose-layout.js';
import type { Solver } from './solver.js';
import { ARM_RATE, COSINE, SINE, upper } from './upper-point.js';

/** Wishbone: where its damper ends below, and how fast it shortens. */
export function placeDamper(pose: Float64Array, solver: Solver): void {
  const { damper } = solver;
  if (!damper) {
    pose[LOW] = pose[LOW + 1] = pose[LOW + 2] = pose[DAMPER_LENGTH] = pose[DAMPER_RATE] = Number.NaN;
    return;
  }
  const { top, base, radius, rise, on } = damper;
  let vx: number;
  let vy: number;
  let vz: number;
  if (on === 'carrier') {
    const x = pose[ROTATION]! * base[0] + pose[ROTATION + 1]! * base[1] + pose[ROTATION + 2]! * base[2];
    const y = pose[ROTATION + 3]! * base[0] + pose[ROTATION + 4]! * base[1] + pose[ROTATION + 5]! * base[2];
    const z = pose[ROTATION + 6]! * base[0] + pose[ROTATION + 7]! * base[1] + pose[ROTATION + 8]! * base[2];
    pose[LOW] = pose[BALL]! + x;
    pose[LOW + 1] = pose[BALL + 1]! + y;
    pose[LOW + 2] = pose[BALL + 2]! + z;
    vx = pose[BALL_RATE]! + pose[TURN_RATE + 1]! * z - pose[TURN_RATE + 2]! * y;
    vy = pose[BALL_RATE + 1]! + pose[TURN_RATE + 2]! * x - pose[TURN_RATE]! * z;
    vz = pose[BALL_RATE + 2]! + pose[TURN_RATE]! * y - pose[TURN_RATE + 1]! * x;
  } else {
    const isLower = on === 'lowerArm';
    const { out, up } = isLower ? solver.lower : solver.upper!;
    const cosine = isLower ? Math.cos(pose[ARM_ANGLE]!) : upper[COSINE]!;
    const sine = isLower ? Math.sin(pose[ARM_ANGLE]!) : upper[SINE]!;
    const rate = isLower ? 1 : upper[ARM_RATE]!;
    const alongOut = radius * cosine - rise * sine;
    const alongUp = radius * sine + rise * cosine;
    pose[LOW] = base[0] + alongOut * out[0] + alongUp * up[0];
    pose[LOW + 1] = base[1] + alongOut * out[1] + alongUp * up[1];
    pose[LOW + 2] = base[2] + alongOut * out[2] + alongUp * up[2];
    vx = rate * (alongOut * up[0] - alongUp * out[0]);
    vy = rate * (alongOut * up[1] - alongUp * out[1]);
    vz = rate * (alongOut * up[2] - alongUp * out[2]);
  }
  const x = top[0] - pose[LOW]!;
  const y = top[1] - pose[LOW + 1]!;
  const z = top[2] - pose[LOW + 2]!;
  const length = Math.sqrt(x * x + y * y + z * z);
  pose[DAMPER_LENGTH] = length;
  pose[DAMPER_RATE] = -(x * vx + y * vy + z * vz) / length;
}
