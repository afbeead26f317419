import type { Box } from '../../../components/drawing/geometry.js';
import type { Layout } from '../../../components/drawing/layout.js';

/** Reads a sheet back from what is drawn on it, without the engine's own geometry. */

/** Bounds of path data in absolute M, L, Q, Z and the two relative half-circle arcs of a circle. */
export function boundsOf(d: string): [left: number, top: number, right: number, bottom: number] {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const [, command, rest] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const numbers = (rest!.match(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? []).map(Number);
    if (command === 'a') {
      const [radius, , , , , dx] = numbers as [number, number, number, number, number, number];
      const x = xs.at(-1)!;
      const y = ys.at(-1)!;
      xs.push(x + dx);
      ys.push(y - radius, y + radius, y);
    } else {
      numbers.forEach((value, i) => {
        (i % 2 ? ys : xs).push(value);
      });
    }
  }
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

const touch = (a: Box, b: Box): boolean =>
  Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 1e-9 &&
  Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 1e-9;

/** Everything wrong with a sheet, in words; empty when it is right. */
export function faultsOf(sheet: Layout): string[] {
  const faults: string[] = [];
  const { width, height } = sheet;
  for (const { d, look } of sheet.shapes) {
    if (/NaN|Infinity|undefined/.test(d)) faults.push(`not a number in ${look}: ${d}`);
    if (d === '') continue;
    const [left, top, right, bottom] = boundsOf(d);
    const half = 0.9;
    if (left < half || top < half || right > width - half || bottom > height - half) {
      faults.push(`outside the sheet: ${look} ${[left, top, right, bottom]} of ${width} × ${height}`);
    }
  }
  const boxes = [
    ...sheet.texts.map((text) => ({ ...text, name: text.text })),
    ...sheet.balloons.map((balloon) => ({ ...balloon, name: `balloon ${balloon.number}` })),
    ...sheet.chips.map((chip) => ({ ...chip, name: `value ${chip.key}` })),
  ];
  boxes.forEach((box, i) => {
    if (!(box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height)) {
      faults.push(`clipped: ${box.name}`);
    }
    for (const other of boxes.slice(0, i)) if (touch(box, other)) faults.push(`${other.name} on ${box.name}`);
  });
  for (const { width: w, height: h, number } of sheet.balloons) {
    if (w < 44 || h < 44) faults.push(`balloon ${number} is too small for a finger`);
  }
  for (const { width: w, height: h, frame, text, ...box } of sheet.chips) {
    if (w < 44 || h < 44) faults.push(`value ${text} is too small for a finger`);
    if (frame.x < box.x || frame.y < box.y) faults.push(`value ${text} is drawn outside what takes a finger`);
  }
  return faults;
}
