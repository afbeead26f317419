import { html, nothing, type TemplateResult } from 'lit';
import { linkProblemText } from '../../core/document/link-problem.js';
import { choicesOf } from '../shared/choices.js';
import { renderNotes } from '../shared/notes.js';
import { NAMES } from './bumpline-clearance.labels.js';
import type { ClearanceApp } from './clearance-app.js';
import { fitSheetOfPath, tell } from './fit-kit.js';

/** What is wrong, and where to mend it. */
export function renderProblems(app: ClearanceApp, onShow: (key: string) => void): TemplateResult {
  const { state, fault, problems, reading, model } = app;
  const link = model.address?.problem;
  if (state === 'fault') {
    return html`<div class="problems" id="problems" role="alert">
      <p>${NAMES.fault}</p>
      <p class="fault-text">${fault}</p>
      <button type="button" class="button" @click=${() => app.ask()}>${NAMES.retry}</button>
    </div>`;
  }
  const choices = (problem: (typeof problems)[number]) => {
    if (!problem.choices || (problem.path !== 'drop' && problem.path !== 'plane')) return nothing;
    const quantity = problem.path === 'drop' ? 'drop' : 'offset';
    const take = (value: number) => {
      app.drafts.drop(problem.path);
      if (problem.path === 'drop') app.changeDrop(value);
      else app.changePlane(value);
      app.endStep();
    };
    return html`<div class="choices">
      ${choicesOf(problem, quantity, reading).map(
        ({ value, text }) => html`<button type="button" class="button" @click=${() => take(value)}>${text}</button>`,
      )}
    </div>`;
  };
  return html`${link ? html`<p class="queries" role="alert">${linkProblemText(link)}</p>` : nothing} ${renderNotes(app)}
  ${
    problems.length > 0
      ? html`<div class="problems" id="problems" role="alert">
          <ul>
            ${problems.map((problem) => {
              // What stands in a page's attributes or data a reader cannot mend.
              const sheet = app.isUnread ? undefined : fitSheetOfPath(app, problem.path)?.sheet;
              return html`<li>
                ${tell(app, problem)} ${choices(problem)}
                ${sheet ? html`<button type="button" class="button" @click=${() => onShow(sheet.key)}>${NAMES.correct}</button>` : nothing}
              </li>`;
            })}
          </ul>
        </div>`
      : nothing
  }`;
}
