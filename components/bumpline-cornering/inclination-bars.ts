import { html, nothing, type TemplateResult } from 'lit';
import type { InclinationBars, WheelInTurn } from '../../core/answers/cornering-answer.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Display } from '../element/sentence.js';
import type { Bar, BarGroup, BarsMaker } from '../publish/savable.js';
import { NAMES } from './bumpline-cornering.labels.js';

const { bars: WORDS } = NAMES;

/** One setup's outer wheel. */
export interface BarRow {
  name: string;
  isNow: boolean;
  wheel: WheelInTurn;
}

/** What adds up, in its one order. */
const ORDER = [
  'static',
  'travel',
  'steer',
  'roll',
  'tyre',
  'rest',
] as const satisfies readonly (keyof InclinationBars)[];
/** Less than this is no bar, degrees: it is not shown in any figure either. */
const LEAST = 0.005;
/** Room left free at both ends, as a share of all. */
const MARGIN = 0.04;

const signed = (degrees: number, { units, language }: Display): string =>
  formatQuantity(degrees, 'camber', units, { language, sign: 'always' }).text;

/** A setup's bars, each from where the one before ends. */
function barsOf({ bars }: WheelInTurn) {
  let end = 0;
  return ORDER.flatMap((part) => {
    const from = end;
    end += bars[part];
    return Math.abs(bars[part]) < LEAST ? [] : [{ part, size: bars[part], from, to: end }];
  });
}

/** Ends of the one scale of all, degrees, with room at both. */
function scaleOf(all: readonly ReturnType<typeof barsOf>[]): [low: number, high: number] {
  const ends = [0, ...all.flatMap((bars) => bars.flatMap(({ from, to }) => [from, to]))];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const room = MARGIN * Math.max(most - least, LEAST);
  return [least - room, least + Math.max(most - least, LEAST) + room];
}

/** What each bar is drawn in: what moves with the height, what the turn does, the rest. */
const INKS = { static: 'soft', travel: 'now', steer: 'now', roll: 'limit', tyre: 'limit', rest: 'soft' } as const;

/** The same for a picture that is taken along; undefined where there are none. */
export function barsToSave(rows: readonly BarRow[], display: Display): ReturnType<BarsMaker['bars']> {
  if (rows.length === 0) return undefined;
  const all = rows.map(({ wheel }) => barsOf(wheel));
  const scale = scaleOf(all);
  const groups = rows.map(({ name, wheel: { inclination } }, i): BarGroup => {
    const ends = { from: 0, to: inclination, isSum: true, ink: 'soft' } as const;
    const sum: Bar = { name: WORDS.sum, text: signed(inclination, display), ...ends };
    const parts = all[i]!.map(
      ({ part, size, from, to }): Bar => ({
        name: WORDS.parts[part],
        text: signed(size, display),
        from,
        to,
        ink: INKS[part],
      }),
    );
    return { title: name, scale, bars: [...parts, sum] };
  });
  return { title: `${WORDS.title}. ${WORDS.note}`, columns: 1, groups };
}

/** Bars that add up to the outer wheel’s inclination to the road, for every setup on one scale. */
export function renderBars(rows: readonly BarRow[], display: Display): TemplateResult | typeof nothing {
  if (rows.length === 0) return nothing;
  const all = rows.map(({ wheel }) => barsOf(wheel));
  const [low, high] = scaleOf(all);
  const span = high - low;
  const at = (degrees: number) => `${((degrees - low) / span) * 100}%`;
  const spoken = rows.map(({ name, wheel }, i) =>
    WORDS.row(
      name,
      all[i]!.map(({ part, size }) => `${WORDS.parts[part]} ${signed(size, display)}`).join(', '),
      signed(wheel.inclination, display),
    ),
  );
  return html`<section class="adds-up" aria-label=${WORDS.title}>
    <p><b>${WORDS.title}</b></p>
    <div role="img" aria-label=${WORDS.chart(spoken.join('. '))}>
      ${rows.map(
        ({ name, wheel, isNow }, i) => html`<div class="bars ${isNow ? 'now' : ''}" style=${`--zero: ${at(0)}`}>
          <p class="bars-name">${name}</p>
          ${all[i]!.map(({ part, size, from, to }) => {
            const [left, right] = [Math.min(from, to), Math.max(from, to)];
            const place = `inset-inline-start: ${at(left)}; inline-size: ${((right - left) / span) * 100}%`;
            return html`<span>${WORDS.parts[part]}</span><span class="size">${signed(size, display)}</span>
              <div class="track ${part}"><i style=${place}></i></div>`;
          })}
          <span>${WORDS.sum}</span><span class="size"><b>${signed(wheel.inclination, display)}</b></span>
          <div class="track"><u style=${`inset-inline-start: ${at(wheel.inclination)}`}></u></div>
        </div>`,
      )}
    </div>
    <p class="note">${WORDS.note}${rows.some(({ wheel }) => Math.abs(wheel.bars.rest) >= LEAST) ? ` ${WORDS.rest}` : ''}</p>
  </section>`;
}
