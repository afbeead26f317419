import type { Problem } from '../../core/quantity/problem.js';
import { allProblems } from '../element/all-problems.js';
import type { InputView } from './sheet-edits.js';

/** The same element, and at its fields also what is wrong with a question that stands beside its own. */
export function withProblems(view: InputView, more: () => readonly Problem[]): InputView {
  const { host, drafts } = view;
  return {
    host,
    drafts,
    get model() {
      return view.model;
    },
    get display() {
      return view.display;
    },
    get problems() {
      return allProblems([...view.problems], [...more()]);
    },
    changed: (path, value) => view.changed(path, value),
    answered: () => view.answered(),
    beginEdit: () => view.beginEdit(),
    endEdit: () => view.endEdit(),
  };
}
