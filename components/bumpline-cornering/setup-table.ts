import { html, nothing, type TemplateResult } from 'lit';
import type { CorneringAnswer } from '../../core/answers/cornering-answer.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { shownName } from '../car/shown-names.words.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { lateralOf, rollText } from './bumpline-cornering.words.js';
import type { CorneringView } from './cornering-view.js';
import { renderFigures } from './figures-table.js';
import { ROLL } from './roll.labels.js';
import type { SetupTurn, SetupTurns } from './setup-turns.js';

const { setups: WORDS } = NAMES;

/** "25 mm lower, 22 mm joint". */
export function setupName({ drop, set }: Pick<SetupTurn, 'drop' | 'set'>, display: Display): string {
  const height =
    drop === 0 ? NAMES.stock : (drop < 0 ? NAMES.higher : NAMES.lower)(show(Math.abs(drop), 'drop', display));
  return set ? NAMES.withSet(height, shownName(set.setup.name)) : height;
}

export const signedAngle = (
  degrees: number,
  { units, language }: Display,
  quantity: 'camber' | 'toe' | 'steer' = 'camber',
) => formatQuantity(degrees, quantity, units, { language, sign: 'always' }).text;

/** The outer wheel of every setup in the same turn, with camber as the height leaves it and with camber set again. */
export function renderSetups(view: CorneringView, turns: SetupTurns): TemplateResult {
  const { answer, display } = view;
  const { rows, camber, fault } = turns;
  if (!answer || rows.length === 0)
    return html`<details class="setups"><summary>${WORDS.title}</summary><p class="note">${fault ?? WORDS.waiting}</p></details>`;
  const cell = (of: CorneringAnswer | undefined) => (of ? signedAngle(of.outer.inclination, display) : WORDS.none);
  const lateral = lateralOf(answer);
  const held =
    lateral !== undefined
      ? ROLL.heldLateral(show(lateral, 'lateral', display))
      : WORDS.heldRoll(rollText(answer.suspensionRoll, display));
  return html`<details class="setups prints">
    <summary>${WORDS.title}</summary>
    ${renderFigures(
      WORDS.title,
      html`<caption>${WORDS.caption}</caption>
      <thead>
        <tr>
          <th scope="col">${WORDS.setup}</th>
          <th scope="col">${WORDS.asLeft}</th>
          ${camber === undefined ? nothing : html`<th scope="col">${WORDS.setAgain(signedAngle(camber, display))}</th>`}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) => html`<tr class=${row.isNow ? 'now' : nothing}>
            <th scope="row">${setupName(row, display)}${row.roll === undefined ? nothing : html` <small class="of-roll">${ROLL.ofRoll(rollText(row.roll, display))}</small>`}</th>
            <td>${cell(row.asLeft)}</td>
            ${camber === undefined ? nothing : html`<td>${cell(row.setAgain)}</td>`}
          </tr>`,
        )}
      </tbody>`,
    )}
    <p class="note">${held} ${WORDS.setHow}</p>
  </details>`;
}
