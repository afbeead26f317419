import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { WayAnswer } from '../../core/answers/static-camber.js';
import type { CamberCost } from '../../core/document/camber-costs.js';
import type { Bar, BarGroup, BarsMaker } from '../publish/savable.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { afterText, costText } from './cost-text.js';
import { asItIs, type Cost, costsOf, ofWay, type Turn } from './costs.js';
import type { StaticCamberView, WaysOnSheet } from './static-camber-view.js';
import { nameOf } from './ways-table.js';

type View = Pick<StaticCamberView, 'car' | 'display' | 'over'>;

/** A picture a figure: a bar from zero for each way, in the order of the list, so that eyes find a way in the same place. */
export function renderPictures(view: View, answer: WaysOnSheet, turn: Turn): TemplateResult {
  const { first, others } = figuresOf(view, answer);
  const grid = (costs: readonly Cost[]) => html`<div class="picture-grid">
    ${costs.map((cost) => guard(seenBy(cost, view, answer, turn), () => renderPicture(cost, view, answer, turn)))}
  </div>`;
  return html`<details class="pictures prints">
    <summary>${NAMES.pictures}</summary>
    ${grid(first)}
    <p class="note">${NAMES.picturesNote}</p>
    <details class="more-pictures">
      <summary>${NAMES.morePictures(others.length)}</summary>
      ${grid(others)}
    </details>
  </details>`;
}

/** Those that are shown first, and the rest. */
function figuresOf({ car }: View, answer: WaysOnSheet): Record<'first' | 'others', Cost[]> {
  const { sortBy } = car.camberAdded ?? {};
  const isFirst = ({ key }: Cost) => key === sortBy || FIRST.includes(key);
  const all = costsOf(answer);
  return { first: all.filter(isFirst), others: all.filter((cost) => !isFirst(cost)) };
}

/** The pictures in one that is taken along: those that are shown first, or all. */
export function picturesToSave(
  view: View,
  answer: WaysOnSheet,
  turn: Turn,
  isAll: boolean,
): ReturnType<BarsMaker['bars']> {
  const { first, others } = figuresOf(view, answer);
  const groups = [...first, ...(isAll ? others : [])].map((cost): BarGroup => {
    const { label, now, rows, ends } = pictureOf(cost, view, answer, turn);
    const bars = rows.map(
      ({ way, told, text }): Bar => ({
        name: NAMES.shorts[way.way],
        text,
        from: 0,
        to: Number.isFinite(told) ? told : 0,
        ink: 'now',
        isFaint: !way.isReached,
      }),
    );
    return { title: label, ...(now !== undefined && { aside: NAMES.now(now) }), scale: ends, bars };
  });
  return { title: NAMES.picturesNote, columns: 2, groups };
}

/** What most people weigh a way by, beside what they sort by; the others are a tap away. */
const FIRST: readonly CamberCost[] = ['inclinationAt30', 'inTurn', 'bumpSteer', 'scrubRadius', 'gapStrut'];

/** What a picture is made of: a drag whose answer is still to come, or the turn's, draws none of the others again. */
const seenBy = ({ key }: Cost, { display, over }: View, answer: WaysOnSheet, turn: Turn): unknown[] => [
  key,
  answer,
  key === 'inTurn' ? turn : undefined,
  over,
  JSON.stringify(display),
];

/** A figure with each way, and the ends of its scale. */
function pictureOf(cost: Cost, view: View, answer: WaysOnSheet, turn: Turn) {
  const { label } = nameOf(cost.key, view);
  const size = asItIs(cost.key, answer, turn);
  const now = size === undefined || !Number.isFinite(size) ? undefined : afterText(cost, size, view.display);
  const rows = answer.ways.map((way) => {
    const found = ofWay(cost.key, way, answer, turn);
    return { way, told: found.change ?? Number.NaN, text: costText(cost, found, view.display).main };
  });
  return { label, now, rows, ends: endsOf(cost, rows) };
}

function renderPicture(cost: Cost, view: View, answer: WaysOnSheet, turn: Turn): TemplateResult {
  const { label, now, rows, ends } = pictureOf(cost, view, answer, turn);
  const [low, high] = ends;
  const span = high - low;
  return html`<figure class="picture">
    <figcaption>${label}${now === undefined ? nothing : html` <small>${NAMES.now(now)}</small>`}</figcaption>
    <ul>
      ${rows.map(({ way, told, text }) => {
        const size = Number.isFinite(told) ? Math.min(high, Math.max(low, told)) : 0;
        const place = `--from: ${(Math.min(size, 0) - low) / span}; --size: ${Math.abs(size) / span}; --zero: ${-low / span}`;
        return html`<li class=${way.isReached ? '' : 'unreached'}>
          <span>${NAMES.shorts[way.way]}</span><span class="track" aria-hidden="true" .style=${place}></span><b>${text}</b>
        </li>`;
      })}
    </ul>
  </figure>`;
}

/** Smaller than this no gauge or tape tells apart, so that it fills no picture. */
const LEAST_SHOWN = { angle: 0.25, length: 5 };

/** Ends of a picture's scale: those of the ways that get there, of which alone the figures are of the same camber. */
function endsOf(
  { quantity }: Cost,
  rows: readonly { way: WayAnswer; told: number }[],
): readonly [low: number, high: number] {
  const sizes = rows.filter(({ way, told }) => way.isReached && Number.isFinite(told)).map(({ told }) => told);
  const [low, high] = [Math.min(0, ...sizes), Math.max(0, ...sizes)];
  const least = LEAST_SHOWN[quantity.after === 'coordinate' ? 'length' : 'angle'];
  const short = least - (high - low);
  if (short <= 0) return [low, high];
  return -low > high ? [low - short, high] : [low, high + short];
}
