import { html, type TemplateResult } from 'lit';
import type { Corner } from '../../core/linkage/corner.js';
import type { Problem } from '../../core/quantity/problem.js';
import { renderProblems as renderBlock } from '../element/problems-block.js';
import { LINKS } from '../inputs/links.labels.js';
import { isElsewhere, queriesOf, renderQueries, sheetToMend } from '../inputs/queries.js';
import { problemText } from '../inputs/sheet.labels.js';
import { draftProblemText, partProblemText } from '../parts/parts-text.js';
import type { GeometryView } from './geometry-view.js';

const USES = ['given', 'drop', 'setups', 'measuredAt', 'camberReadLower'] as const;

/** What is wrong with the links or with the parts on them, what looks wrong, and where to mend it. */
export function renderProblems(view: GeometryView, onShow: (key: string) => void): TemplateResult {
  const { display, sentence } = view;
  const queries = queriesOf(view);
  const block = renderBlock(view, {
    uses: USES,
    text: (problem) =>
      textOfPart(problem, view, view.answer?.bare.curves.corner.kind) ??
      (isElsewhere(problem, queries) ? LINKS.doNotFit : problemText(problem, display)),
    fieldOf: (path) => (path === 'drop' ? sentence.drop : undefined),
    sheetOf: (problem) => sheetToMend(problem, view, queries),
    onShow,
  });
  return html`${block} ${renderQueries(queries, view, onShow)}`;
}

/** Of a set of parts, by its name. @param kind of the corner that they are on */
export function textOfPart(
  problem: Problem,
  { sets, display, drafts }: Pick<GeometryView, 'sets' | 'display' | 'drafts'>,
  kind: Corner['kind'] | undefined,
): string | undefined {
  const set = sets.find(({ index }) => problem.path.startsWith(`setups.${index}.`));
  if (!set) return undefined;
  // A text is counted as it was typed, what the core says as the data count it.
  if (drafts.problem(problem.path)) return draftProblemText(problem, set.setup, display);
  const own = { ...problem, path: problem.path.replace(/^setups\.\w+\./, '') };
  const { name, parts = [] } = set.setup;
  return `${name}: ${partProblemText(own, parts, kind, display)}`;
}
