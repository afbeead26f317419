import { html, nothing, type TemplateResult } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, otherCorner } from '../../core/document/car.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { shownName } from '../car/shown-names.words.js';
import { isChangeOnly, NAMES } from './bumpline-lowering.labels.js';
import { type Display, show } from './bumpline-lowering.words.js';

/** Left and right of an axle side by side; nothing until the other side is given. */
export function renderSides(
  answer: LoweringAnswer,
  car: CarDocument,
  display: Display,
): TemplateResult | typeof nothing {
  const { other } = answer;
  if (!other || !car.other || isChangeOnly(answer)) return nothing;
  const corner = answeredCorner(car);
  const sides = [
    { name: corner, drop: answer.drop, camber: answer.camberAfter },
    { name: otherCorner(corner), drop: car.other.drop, camber: other.camberAfter },
  ].sort((a, b) => a.name.localeCompare(b.name, 'en'));
  const { units, language } = display;
  const difference = formatQuantity(sides[0]!.camber - sides[1]!.camber, 'camberChange', units, {
    language,
    sign: 'always',
  });
  const row = (label: string, cells: string[]) =>
    html`<tr><th scope="row">${label}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`;
  return html`<table class="sides">
    <caption>${NAMES.crossCamber}: <b>${difference.text}</b></caption>
    <thead>
      <tr><td></td>${sides.map(({ name }) => html`<th scope="col">${shownName(name)}</th>`)}</tr>
    </thead>
    <tbody>
      ${row(
        NAMES.dropRow,
        sides.map(({ drop }) => show(drop, 'drop', display)),
      )}
      ${row(
        NAMES.camberRow,
        sides.map(({ camber }) => show(camber, 'camber', display)),
      )}
    </tbody>
  </table>`;
}
