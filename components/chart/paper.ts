import { html, type TemplateResult } from 'lit';
import type { MadePicture, PictureRoom } from '../publish/savable.js';
import { type ChartFrame, layOut } from './field.js';
import { measureIn } from './measure.js';
import type { ChartModel } from './model.js';
import { drawChart } from './picture.js';
import { placeWords } from './words.js';

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

/** How high a chart that is taken along is, as a share of its width. */
const HIGH = 0.6;

/** A chart that stands alone, in any colours and with its own id: nothing else is in its file. */
export function pictureToTake(model: ChartModel, { width, family }: PictureRoom): MadePicture {
  const height = HIGH * width;
  const { template } = picture(model, { width, height }, 1, family, 'plot');
  return { template, height, title: model.description, within: 'chart-sheet', model };
}
