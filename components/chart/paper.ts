import { html, type TemplateResult } from 'lit';
import { type ChartFrame, layOut } from './field.js';
import type { ChartModel } from './model.js';
import { drawChart } from './picture.js';
import { placeWords } from './words.js';

let pen: CanvasRenderingContext2D | null | undefined;

/** Without a canvas (a privacy setting may take it away) a generous guess keeps labels apart. */
const measureIn =
  (family: string) =>
  (text: string, weight: number, size = 13): number => {
    pen ??= document.createElement('canvas').getContext('2d');
    if (!pen) return Math.ceil(text.length * 0.6 * size);
    pen.font = `${weight} ${size}px ${family}`;
    return Math.ceil(pen.measureText(text).width);
  };

/**
 * A chart as a picture in SVG.
 *
 * @param place CSS px
 * @param scale how many times larger than it was laid out it is drawn
 * @param clip an id that no other picture of the document has
 */
export function picture(
  model: ChartModel,
  place: { width: number; height: number },
  scale: number,
  family: string,
  clip: string,
): { template: TemplateResult; frame: ChartFrame; measure: ReturnType<typeof measureIn>; width: number } {
  const [width, height] = [place.width / scale, place.height / scale];
  const measure = measureIn(family);
  const frame = layOut(model, width, height, measure);
  const words = placeWords(model, frame, measure);
  const template = html`<svg viewBox="0 0 ${width} ${height}" width=${place.width} height=${place.height} role="img" aria-label=${model.description}>
    ${drawChart(model, frame, words, clip)}
  </svg>`;
  return { template, frame, measure, width };
}
