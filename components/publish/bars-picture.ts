import { html, svg } from 'lit';
import { measureIn } from '../chart/measure.js';
import { PAPER } from '../theme/theme.js';
import type { Bar, BarGroup, BarsMaker, MadePicture, PictureRoom } from './savable.js';
import { wrapped } from './wrapped.js';

const TITLE_PX = 13;
const TEXT_PX = 12;
const ROW_PX = 19;
const BAR_PX = 11;
/** Between columns and between groups, px. */
const BETWEEN = 24;
const GAP = 8;
const FAINT = 0.35;

/** Groups of bars, one below the other in columns: a name, its bar from zero or from where another ends, and its figure. */
export function barsPicture(
  made: ReturnType<BarsMaker['bars']>,
  { width, family }: PictureRoom,
): MadePicture | undefined {
  if (!made) return undefined;
  const { title, columns, groups } = made;
  const wide = (width - (columns - 1) * BETWEEN) / columns;
  const measure = measureIn(family);
  const widest = (texts: readonly string[], weight: number) =>
    Math.max(0, ...texts.map((text) => measure(text, weight, TEXT_PX)));
  const bars = groups.flatMap((group) => group.bars);
  const name =
    widest(
      bars.map((one) => one.name),
      400,
    ) + GAP;
  const text =
    widest(
      bars.map((one) => one.text),
      600,
    ) + GAP;
  const place = { left: name, width: wide - name - text, right: wide };
  let bottom = 0;
  const fits = (line: string) => measure(line, 700, TITLE_PX) <= wide;
  const placed = Array.from({ length: Math.ceil(groups.length / columns) }, (_, row) => {
    const inRow = groups.slice(row * columns, (row + 1) * columns);
    const heads = inRow.map((group) => headOf(group, fits));
    const above = Math.max(...heads.map((head) => head.length));
    const top = bottom;
    bottom += ROW_PX * (above + Math.max(...inRow.map((group) => group.bars.length))) + BETWEEN / 2;
    return inRow.map(
      (group, i) => svg`<g transform="translate(${i * (wide + BETWEEN)} ${top})">
        ${heads[i]!.map((line, k) => drawHead(line, group.aside, ROW_PX * k))}
        ${drawBars(group, ROW_PX * above, place)}
      </g>`,
    );
  });
  const height = bottom - BETWEEN / 2;
  return {
    template: html`<svg viewBox="0 0 ${width} ${height}" width=${width} height=${height}>${placed}</svg>`,
    height,
    title,
  };
}

/** A title in lines that fit, what stands behind it in the last of them, or below. */
function headOf({ title, aside }: BarGroup, fits: (line: string) => boolean): string[] {
  const lines = wrapped(title, fits);
  if (aside === undefined) return lines;
  const last = `${lines.at(-1)} ${aside}`;
  return fits(last) ? [...lines.slice(0, -1), last] : [...lines, aside];
}

function drawHead(line: string, aside = '', top: number) {
  const isLast = aside !== '' && line.endsWith(aside);
  const main = isLast ? line.slice(0, -aside.length) : line;
  return svg`<text x="0" y=${top + TITLE_PX} font-size=${TITLE_PX} fill=${PAPER.ink!}><tspan font-weight="700">${main}</tspan>${isLast ? svg`<tspan fill=${PAPER.soft!}>${aside}</tspan>` : ''}</text>`;
}

interface Place {
  left: number;
  width: number;
  right: number;
}

function drawBars({ scale: [low, high], bars }: BarGroup, top: number, { left, width, right }: Place) {
  const at = (size: number) => left + ((Math.min(high, Math.max(low, size)) - low) / (high - low)) * width;
  return svg`<path d="M${at(0)} ${top}v${ROW_PX * bars.length}" stroke=${PAPER.hair!}></path>
    ${bars.map((bar, i) => drawBar(bar, top + ROW_PX * (i + 0.5), at, right))}`;
}

function drawBar(
  { name, text, from, to, isSum, ink, isFaint }: Bar,
  y: number,
  at: (size: number) => number,
  right: number,
) {
  const [start, end] = [Math.min(at(from), at(to)), Math.max(at(from), at(to))];
  const baseline = y + 0.36 * TEXT_PX;
  const mark = isSum
    ? svg`<path d="M${at(to)} ${y - ROW_PX / 2 + 1}v${ROW_PX - 2}" stroke=${PAPER.ink!} stroke-width="3"></path>`
    : svg`<rect x=${start} y=${y - BAR_PX / 2} width=${from === to ? 0 : Math.max(1, end - start)} height=${BAR_PX} fill=${PAPER[ink]!} fill-opacity=${isFaint ? FAINT : 1}></rect>`;
  const colour = isFaint ? PAPER.soft! : PAPER.ink!;
  return svg`${mark}<text x="0" y=${baseline} font-size=${TEXT_PX} fill=${colour}>${name}</text>
    <text x=${right} y=${baseline} font-size=${TEXT_PX} font-weight=${isSum ? 700 : 400} text-anchor="end" fill=${colour}>${text}</text>`;
}
