import { type Box, contains, crosses, overlap, type Px } from './geometry.js';
import type { CompassDirection, Ink } from './items.js';

/** Text on the sheet. The width is an upper estimate from the number of characters: the widest common system font needs no more. */
export interface TextBox extends Box {
  text: string;
  size: number;
  bold: boolean;
  ink: Ink;
  anchor: 'start' | 'middle' | 'end';
}

export interface TextRequest {
  at: Px;
  text: string;
  size: number;
  bold: boolean;
  ink: Ink;
  places: readonly CompassDirection[];
  optional: boolean;
}

const GAP = 7;

/** As wide as they are high in the widest fonts: two of them stand in every length. */
const WIDE = /[mwMW%]/g;

/** Upper estimate of a text's width, px. Checked against a browser's own measure in the tests. */
export const textWidth = (text: string, size: number, bold: boolean): number => {
  const wide = text.match(WIDE)?.length ?? 0;
  return Math.ceil(
    size * (bold ? 0.7 * (text.length - wide) + 1.05 * wide : 0.62 * (text.length - wide) + 0.98 * wide),
  );
};

export const lineHeight = (size: number): number => Math.ceil(size * 1.25);

function boxAt(request: TextRequest, direction: CompassDirection): TextBox {
  const { at, text, size, bold, ink } = request;
  const width = textWidth(text, size, bold);
  const height = lineHeight(size);
  const across = direction.includes('e') ? 1 : direction.includes('w') ? -1 : 0;
  const down = direction.startsWith('s') ? 1 : direction.startsWith('n') ? -1 : 0;
  return {
    x: at[0] + across * GAP + ((across - 1) * width) / 2,
    y: at[1] + down * (across ? 0 : GAP - 4) + ((down - 1) * height) / 2,
    width,
    height,
    text,
    size,
    bold,
    ink,
    anchor: across > 0 ? 'start' : across ? 'end' : 'middle',
  };
}

/**
 * Finds each text a place inside `sheet` that touches nothing in `taken`, crossing as few `lines` as it can; texts placed are added to
 * `taken`. A text none of whose places is free goes to the nearest free spot of the sheet; what finds none at all is returned in `left`.
 */
export function placeTexts(
  requests: readonly TextRequest[],
  sheet: Box,
  taken: Box[],
  lines: readonly (readonly [Px, Px])[],
): { placed: TextBox[]; left: TextRequest[] } {
  const placed: TextBox[] = [];
  const left: TextRequest[] = [];
  const free = (box: Box) => contains(sheet, box) && !taken.some((other) => overlap(box, other));
  const crossed = (box: Box) => lines.reduce((count, [a, b]) => count + (crosses(a, b, box) ? 1 : 0), 0);

  for (const request of requests) {
    let best: TextBox | undefined;
    let fewest = Number.POSITIVE_INFINITY;
    for (const direction of request.places) {
      const box = boxAt(request, direction);
      const count = free(box) ? crossed(box) : fewest;
      if (count < fewest) {
        fewest = count;
        best = box;
      }
    }
    if (!best && !request.optional) {
      let nearest = Number.POSITIVE_INFINITY;
      for (let y = sheet.y; y < sheet.y + sheet.height; y += 6) {
        for (let x = sheet.x; x < sheet.x + sheet.width; x += 6) {
          const box = boxAt({ ...request, at: [x, y] }, 'n');
          const distance = Math.hypot(x - request.at[0], y - request.at[1]);
          if (distance < nearest && free(box)) {
            nearest = distance;
            best = box;
          }
        }
      }
    }
    if (best) {
      placed.push(best);
      taken.push(best);
    } else if (!request.optional) left.push(request);
  }
  return { placed, left };
}
