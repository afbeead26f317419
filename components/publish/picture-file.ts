import { html, nothing, render, type SVGTemplateResult, svg } from 'lit';
import { measureIn } from '../chart/measure.js';
import { lineHeight } from '../drawing/text.js';
import { PAPER } from '../theme/theme.js';
import type { Caption } from './caption.js';
import { type KeyEntry, keyOf, SAMPLE_PX } from './picture-key.js';
import type { MadePicture, PictureRoom } from './savable.js';
import { wrapped } from './wrapped.js';
import { withWrittenStyles } from './written-styles.js';

/** Fonts of one measure, of which nearly every machine has one: words keep their places wherever the picture is opened. */
const FAMILY = "Helvetica, Arial, 'Liberation Sans', 'Nimbus Sans', sans-serif";

/** As wide as a column of an article: words keep the size that they are made for. */
export const ROOM: PictureRoom = { width: 640, family: FAMILY };

const MARGIN = 16;
/** Between what is said and the next, px. */
const GAP = 8;
const KEY_SIZE = 13;

/** A picture that stands alone: the text of its file, and how large it is, CSS px. */
export interface PictureFile {
  source: string;
  width: number;
  height: number;
}

/**
 * A picture with all that is to be said of it, as an SVG that needs nothing else. It has paper's colours on white, whatever the page's
 * are: it will be looked at on other pages, in a message or in print, and nobody can switch it there.
 *
 * @param root where the style sheets are that it is drawn by; nothing is seen of it there
 */
export function pictureFile(made: MadePicture, caption: Caption, root: HTMLElement | DocumentFragment): PictureFile {
  const { width: room } = ROOM;
  const { title, texts, method, source, caution } = caption;
  const key = placeKey(keyOf(made), MARGIN + made.height + GAP);
  const said = placeTexts([title, ...texts, method, source, caution], key.bottom);
  const [width, height] = [room + 2 * MARGIN, Math.ceil(said.bottom + MARGIN)];
  const within = made.within ?? nothing;
  const template = html`<svg viewBox="0 0 ${width} ${height}" width=${width} height=${height} role="img" font-family=${FAMILY}>
    <title>${[title, ...texts].join(' ')}</title>
    <rect width=${width} height=${height} fill=${PAPER.paper!}></rect>
    <g class=${within} transform="translate(${MARGIN} ${MARGIN})">${made.template}</g>
    <g class=${within}>${key.samples}</g>${key.texts}${said.texts}
  </svg>`;
  const stage = document.createElement('div');
  // The reset of the element: nothing of the page's type reaches it.
  stage.classList.add('inside', 'to-take');
  stage.ariaHidden = 'true';
  Object.assign(stage.style, { position: 'fixed', visibility: 'hidden', forcedColorAdjust: 'none' });
  for (const [name, colour] of Object.entries(PAPER)) stage.style.setProperty(`--_${name}`, colour);
  stage.style.setProperty('--_sans', FAMILY);
  root.append(stage);
  try {
    render(template, stage);
    const alone = withWrittenStyles(stage.querySelector('svg')!);
    // What it is of is said by the whole.
    const inner = alone.querySelector('svg')!;
    for (const name of ['role', 'aria-label']) inner.removeAttribute(name);
    return { source: new XMLSerializer().serializeToString(alone), width, height };
  } finally {
    stage.remove();
  }
}

/** Entries in columns, as many as there is room for. */
function placeKey(entries: readonly KeyEntry[], top: number) {
  const step = lineHeight(KEY_SIZE);
  const samples: SVGTemplateResult[] = [];
  const texts: SVGTemplateResult[] = [];
  const leadOf = ({ sample }: KeyEntry) => (sample ? SAMPLE_PX + GAP : 0);
  const widest = Math.max(0, ...entries.map((one) => leadOf(one) + widthOf(one.text, KEY_SIZE, false))) + 2 * GAP;
  const columns = Math.max(1, Math.floor((ROOM.width + 2 * GAP) / widest));
  const rows = Math.ceil(entries.length / columns);
  for (const [i, entry] of entries.entries()) {
    const { text, sample } = entry;
    const lead = leadOf(entry);
    const [x, y] = [MARGIN + Math.floor(i / rows) * widest, top + ((i % rows) + 0.5) * step];
    if (sample) {
      const { look, d, dash } = sample;
      samples.push(
        svg`<path class=${look} transform="translate(${x} ${y})" stroke-dasharray=${dash?.join(' ') ?? nothing} d=${d}></path>`,
      );
    }
    texts.push(textAt(text, x + lead, y + 0.36 * KEY_SIZE, { size: KEY_SIZE, weight: 400, colour: PAPER.ink! }));
  }
  return { samples, texts, bottom: entries.length > 0 ? top + rows * step + GAP : top };
}

const measure = measureIn(FAMILY);
/** Fonts that stand in for ours are hardly wider than by this. */
const WIDER = 1.06;

/** CSS px. */
const widthOf = (text: string, size: number, isBold: boolean): number =>
  Math.ceil(WIDER * measure(text, isBold ? 700 : 400, size));

interface Type {
  /** CSS px. */
  size: number;
  weight: number;
  colour: string;
}

/** From what a picture is about to what it rests on. */
const FIRST: Type = { size: 16, weight: 700, colour: PAPER.ink! };
const SECOND: Type = { size: 14, weight: 400, colour: PAPER.ink! };
const REST: Type = { size: 12, weight: 400, colour: PAPER.soft! };

/** Paragraphs below one another: the title, the answer, the rest. */
function placeTexts(paragraphs: readonly string[], top: number) {
  const texts: SVGTemplateResult[] = [];
  let bottom = top;
  for (const [i, paragraph] of paragraphs.entries()) {
    const type = i === 0 ? FIRST : i === 1 ? SECOND : REST;
    for (const line of wrapped(paragraph, (line) => widthOf(line, type.size, type.weight > 400) <= ROOM.width)) {
      bottom += lineHeight(type.size);
      texts.push(textAt(line, MARGIN, bottom - 0.3 * type.size, type));
    }
    bottom += i < 2 ? GAP : GAP / 2;
  }
  return { texts, bottom };
}

const textAt = (text: string, x: number, y: number, { size, weight, colour }: Type): SVGTemplateResult =>
  svg`<text x=${x} y=${y} font-size=${size} font-weight=${weight} fill=${colour}>${text}</text>`;
