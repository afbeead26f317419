import { html, nothing, type TemplateResult } from 'lit';
import { isWishbone } from '../../core/document/car.js';
import { linkProblemText } from '../../core/document/link-problem.js';
import { isUsers } from '../../core/document/provenance.js';
import { wayOf } from '../../core/document/setup-in-use.js';
import { strutOf } from '../../core/document/strut-in-use.js';
import { type Query, unusualOf } from '../../core/document/unusual.js';
import type { Problem } from '../../core/quantity/problem.js';
import { choicesOf } from '../shared/choices.js';
import { renderNotes } from '../shared/notes.js';
import { sheetOfPath } from '../shared/sheet/car-sheets.js';
import { problemText, queryText } from '../shared/sheet/sheet.labels.js';
import { NAMES, unmeasuredText } from './bumpline-lowering.labels.js';
import type { LoweringApp } from './lowering-app.js';

/** What in a user's points looks like a slip of the keys: beside an answer, and above all where the links do not fit together. */
export function queriesOf({ problems, car }: LoweringApp): Query[] {
  if (!isUsers(car, 'corner') || wayOf(car) !== 'points' || car.curve || car.whole !== undefined) return [];
  const doNotFit = problems.some(({ code }) => code === 'cannot-close' || code === 'ends-swapped');
  return problems.length === 0 || doNotFit ? unusualOf(strutOf(car)) : [];
}

/** What is wrong, what looks wrong, and where to mend it. */
export function renderProblems(app: LoweringApp, onShow: (key: string) => void): TemplateResult {
  const { state, fault, problems, reading, car } = app;
  const queries = queriesOf(app);
  const isRead = wayOf(car) === 'readings';
  const link = app.model.address?.problem;
  const openSheet = (key: string, name: string) =>
    html`<button type="button" class="button" @click=${() => onShow(key)}>${name}</button>`;
  if (state === 'fault') {
    return html`<div class="problems" id="problems" role="alert">
      <p>${NAMES.fault}</p>
      <p class="fault-text">${fault}</p>
      <button type="button" class="button" @click=${() => app.ask()}>${NAMES.retry}</button>
    </div>`;
  }
  return html`${link ? html`<p class="queries" role="alert">${linkProblemText(link)}</p>` : nothing} ${renderNotes(app)}
  ${
    problems.length > 0
      ? html`<div class="problems" id="problems" role="alert">
          <ul>
            ${problems.map((problem) => {
              // Where a point looks wrong, that one is to be corrected, not the end of a link that cannot reach it.
              const isElsewhere = problem.code === 'cannot-close' && queries.length > 0;
              // What stands in a page's table or attributes a reader cannot mend.
              const isPages = state === 'problem' && !isUsers(car, 'corner') && car.whole === undefined;
              const sheet = isElsewhere || isPages || isWishbone(car) ? undefined : sheetOfPath(problem.path)?.sheet;
              return html`<li>
                ${isElsewhere ? NAMES.doNotFit : (isRead && unmeasuredText(problem, reading)) || problemText(problem, reading)} ${renderChoices(app, problem)}
                ${sheet ? openSheet(sheet.key, NAMES.correct) : nothing}
              </li>`;
            })}
          </ul>
        </div>`
      : nothing
  }
  ${
    queries.length > 0
      ? html`<ul class="queries" aria-label=${NAMES.suspects}>
          ${queries.map((query) => html`<li>${queryText(query, reading)} ${openSheet(query.path, NAMES.lookAgain)}</li>`)}
        </ul>`
      : nothing
  }`;
}

/** What stands in the sentence and can be read in two ways is asked about where it is told. */
function renderChoices(app: LoweringApp, problem: Problem): TemplateResult | typeof nothing {
  const { path, choices } = problem;
  if (!choices || (path !== 'drop' && path !== 'change')) return nothing;
  const take = (value: number) => {
    if (path === 'change') app.sentence.findDrop(value);
    else {
      app.setDrop(value);
      app.endStep();
    }
  };
  return html`<div class="choices">
    ${choicesOf(problem, path === 'drop' ? 'drop' : 'camberChange', app.reading).map(
      ({ value, text }) => html`<button type="button" class="button" @click=${() => take(value)}>${text}</button>`,
    )}
  </div>`;
}
