import { html, nothing, type TemplateResult } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { DEFAULT_DOUBTS, DOUBT_KEYS } from '../../core/readings/doubts.js';
import type { Reading } from '../../core/readings/reading.js';
import { shownName } from '../car/shown-names.words.js';
import { numbersFormat } from '../controls/numbers-format.js';
import { renderTable } from '../controls/table.js';
import { doubtText } from '../element/doubts.words.js';
import type { Display } from '../element/sentence.js';
import { READINGS_USED as WORDS } from './readings-used.labels.js';

/** The readings that an answer rests on, and how well their instruments were taken to be: a table for each set. */
export function renderReadingsUsed(sets: readonly Setup[], display: Display): TemplateResult | typeof nothing {
  if (sets.length === 0) return nothing;
  return html`<section class="readings-used">
    <p><b>${WORDS.title}</b></p>
    ${sets.map((setup, i) => {
      const instruments = DOUBT_KEYS.map((key) =>
        WORDS.instruments[key](doubtText(key, setup.doubts?.[key] ?? DEFAULT_DOUBTS[key], display)),
      );
      return html`${renderTable({ id: `readings-used-${i}`, ...tableOf(setup, display) })}
        <p class="note">${WORDS.taken(instruments.join(', '))}</p>`;
    })}
    <p class="note">${WORDS.note}</p>
  </section>`;
}

/** A row a height, a column for each pass and way. */
function tableOf({ name, cornerName, quantity, readings, setAside = [] }: Setup, display: Display) {
  const { units, language } = display;
  const { shown, write } = numbersFormat(display);
  const keyOf = ({ pass, going }: Reading) => JSON.stringify([pass, going]);
  const columns = new Map(readings.map((reading) => [keyOf(reading), reading]));
  const heights = [...new Set(readings.map(({ travel }) => travel))].sort((a, b) => a - b);
  const textOf = (reading: Reading, index: number) => {
    const sign = quantity === 'toe' ? 'always' : 'auto';
    const value = formatQuantity(reading.value, quantity, units, { language, sign, unit: false }).text;
    const told = reading.again ? WORDS.again(value) : value;
    return setAside.includes(index) ? WORDS.aside(told) : told;
  };
  const cell = (key: string, at: number) =>
    readings
      .flatMap((reading, i) => (reading.travel === at && keyOf(reading) === key ? [textOf(reading, i)] : []))
      .join(', ') || null;
  return {
    caption: WORDS.caption(name, cornerName, quantity),
    columns: [
      { label: WORDS.travel, unit: units.length, format: write('travel', 'length', 'always') },
      ...[...columns.values()].map(({ pass, going }) => ({
        label: `${pass === undefined ? WORDS.onePass : shownName(pass)}${going ? WORDS.ways[going] : ''}`,
        unit: units.angle === 'arcminutes' ? '° ′' : '°',
      })),
    ],
    rows: heights.map((at) => [shown(at, 'length'), ...[...columns.keys()].map((key) => cell(key, at))]),
  };
}
