import { html, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import { type ProblemWords, renderProblems } from '../element/problems-block.js';
import type { SheetView } from '../element/sheet-view.js';
import { LINKS } from '../inputs/links.labels.js';
import type { OwnSheets } from '../inputs/own-sheets.js';
import { isElsewhere, queriesOf, renderQueries, sheetToMend } from '../inputs/queries.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import { problemText } from '../inputs/sheet.labels.js';
import type { GeometryView } from './geometry-view.js';
import { textOfPart } from './problems.js';

/** What an element about links knows of its problems besides. */
interface OwnWords extends Pick<ProblemWords, 'uses' | 'isToldElsewhere'> {
  /** Of what is asked, by the element's own names; undefined of any other. */
  text(problem: Problem): unknown;
  /** The sheets of what is asked. */
  sheets: OwnSheets;
  /** The fields of the sentence, by the paths of their problems. */
  fields: Readonly<Record<string, SentenceField>>;
}

/** What is wrong with a question about links with parts on, or with these, what looks wrong, and where to mend it. */
export function renderLinkedProblems(
  view: SheetView & Pick<GeometryView, 'sets'>,
  onShow: (key: string) => void,
  { uses, isToldElsewhere, text, sheets, fields }: OwnWords,
): TemplateResult {
  const queries = queriesOf(view);
  const block = renderProblems(view, {
    uses,
    ...(isToldElsewhere && { isToldElsewhere }),
    text: (problem) =>
      isElsewhere(problem, queries)
        ? LINKS.doNotFit
        : (text(problem) ?? textOfPart(problem, view, undefined) ?? problemText(problem, view.display)),
    fieldOf: (path) => fields[path],
    sheetOf: (problem) => sheets.of(problem.path)?.key ?? sheetToMend(problem, view, queries),
    onShow,
  });
  return html`${block} ${renderQueries(queries, view, onShow)}`;
}
