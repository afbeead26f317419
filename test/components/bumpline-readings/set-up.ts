import '../../../components/define.js';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';

let place: HTMLElement | undefined;

/** Puts markup on the page and waits for its element; takes away what the test before put there. */
export async function show(markup: string, widthPx = 360): Promise<BumplineReadings> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = `${widthPx}px`;
  place.innerHTML = markup;
  document.body.append(place);
  const element = place.querySelector('bumpline-readings') as BumplineReadings;
  await element.settled;
  return element;
}

export interface Read {
  travel: number;
  value: number;
  pass?: string;
  going?: 'up' | 'down';
}

/** Invented, in quarters of a degree's hundredths: three passes over another curve than the example's, the second not complete. */
export function inventedReadings(): Read[] {
  const noise = [3, -2, 1, -4, 2, 0, -1, 4, -3, 1, 2, -2, 0, 3, -1, -3, 2, 1, -2, 4, -4, 0, 1, -1, 3, -3, 2, -2, 1, 0];
  let k = 0;
  const passes = [
    { pass: 'A', zero: 0.03, from: -30, to: 40 },
    { pass: 'B', zero: -0.06, from: -10, to: 40 },
    { pass: 'C', zero: 0.01, from: -30, to: 40 },
  ];
  return passes.flatMap(({ pass, zero, from, to }) => {
    const found: Read[] = [];
    for (let travel = from; travel <= to; travel += 10) {
      const x = travel / 50;
      const value = -0.8 - 0.9 * x + 0.45 * x * x + zero + noise[k++ % noise.length]! * 0.004;
      found.push({ travel, value: Math.round(value * 1000) / 1000, pass });
    }
    return found;
  });
}

export const tableOf = (readings: readonly Read[], attributes = ''): string => {
  const passes = [...new Set(readings.map(({ pass }) => pass!))];
  const heights = [...new Set(readings.map(({ travel }) => travel))];
  const cell = (travel: number, pass: string) => {
    const found = readings.find((one) => one.travel === travel && one.pass === pass);
    return found
      ? `<td><data value="${found.value}">${String(found.value).replace('-', '−')}</data></td>`
      : '<td></td>';
  };
  return `<table ${attributes}>
    <caption>An invented car</caption>
    <thead><tr><th>Wheel travel (mm)</th>${passes.map((pass) => `<th>Pass ${pass} (°)</th>`).join('')}</tr></thead>
    <tbody>${heights
      .map(
        (travel) =>
          `<tr><th>${String(travel).replace('-', '−')}</th>${passes.map((pass) => cell(travel, pass)).join('')}</tr>`,
      )
      .join('')}</tbody>
  </table>`;
};
