import type { CarDocument } from '../../core/document/car.js';
import { carToLink } from '../../core/document/link.js';
import { asUsersOwn, isAnyUsers } from '../../core/document/own-car.js';
import { asPageCar } from '../../core/document/page-car.js';
import { isFilled } from '../../core/document/provenance.js';
import { LEFT_OUT } from './left-out.words.js';
import { attributesText } from './markup-text.js';
import type { Snippet, SnippetTag } from './snippet.js';

/** A frame with one element in it, on the page of the site that holds it. */
export interface FrameWish {
  tag: SnippetTag;
  car: CarDocument;
  /** Of the element, as the frame's address has them. */
  attributes?: Readonly<Record<string, string>>;
  /** Of the site that the frame comes from, with a slash at its end. */
  site: string;
  /** What it is called for who does not see it. */
  title: string;
  /** That stands where no script gives it another, px. */
  height: number;
}

/** All that anybody gave of a car, as its user's own: what a link carries. */
function inLink(car: CarDocument): string {
  const { predictions: _, ...said } = asUsersOwn(car);
  return isAnyUsers(said) ? `#${carToLink(said)}` : '';
}

/** The frame, as an author pastes it: options in its address, and the car behind them. */
export function frameSnippetOf({ tag, car, attributes = {}, site, title, height }: FrameWish): Snippet {
  const options = new URLSearchParams(attributes).toString();
  const src = `${site}embed/${tag.replace('bumpline-', '')}/${options && `?${options}`}${inLink(car)}`;
  const frame = attributesText({
    src,
    title,
    width: '100%',
    height: String(height),
    style: 'display: block; border: 0',
    loading: 'lazy',
    allow: 'clipboard-write',
  });
  return {
    html: `<iframe${frame}></iframe>`,
    by: isFilled(asPageCar(car)) ? 'json' : isFilled(attributes) ? 'attributes' : 'example',
    left: [
      ...(car.predictions?.length ? [LEFT_OUT.predictions(car.predictions.length)] : []),
      ...(car.curve ? [LEFT_OUT.linkedCurve] : []),
    ],
  };
}

/** The line that gives every frame of a page its height, once a page. */
export const framesScript = (site: string, integrity?: string): string =>
  `<script${attributesText({ src: `${site}embed/bumpline-frames.js`, ...(integrity && { integrity, crossorigin: 'anonymous' }), async: '' })}></script>`;
