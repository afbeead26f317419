import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { MOST_SETUPS } from '../../core/document/counts.js';
import { addFitted, type LinkedSet, withLinkedSet } from '../../core/document/linked-sets.js';
import { addParts, removeSetup, renameSetup } from '../../core/document/setup-edits.js';
import { fitSetup } from '../../core/document/setup-in-use.js';
import type { Corner } from '../../core/linkage/corner.js';
import type { Problem } from '../../core/quantity/problem.js';
import { amountAskedOf } from '../parts/amount-asked.js';
import { AmountFinder } from '../parts/amount-finder.js';
import { renderParts } from '../parts/parts-editor.js';
import { partsText } from '../parts/parts-text.js';
import { NAMES } from './bumpline-geometry.labels.js';
import type { GeometryView } from './geometry-view.js';

const { sets: WORDS } = NAMES;

/** Before what is typed into a set's fields. */
const pathOf = ({ index }: LinkedSet): string => `setups.${index}.`;

/** What is wrong with a set's parts, by its own paths. */
const problemsOf = ({ problems }: Pick<GeometryView, 'problems'>, set: LinkedSet): Problem[] =>
  problems.flatMap((problem) =>
    problem.path.startsWith(pathOf(set)) ? [{ ...problem, path: problem.path.slice(pathOf(set).length) }] : [],
  );

/** Which set's parts a problem is of. */
export const isOfSet = (problem: Problem, sets: readonly LinkedSet[]): boolean =>
  sets.some((set) => problem.path.startsWith(pathOf(set)));

/** The sets of parts: which is on, what is in it, and its parts to edit. */
export function renderSets(view: GeometryView, corner: Corner | undefined): TemplateResult {
  const { sets, shown, display, car, drafts, host } = view;
  const set = sets[shown]!;
  const isOwn = set.by === 'user';
  const count = (car.setups ?? []).length;
  const note = set.by === 'example' ? WORDS.isExample : set.by === 'page' ? WORDS.isPages : undefined;
  const remove = () => {
    drafts.dropAll(pathOf(set));
    view.change('setups', WORDS.removed, (before) => removeSetup(before, set.index!));
  };
  return html`<section class="sets" aria-label=${WORDS.title}>
    ${
      sets.length > 1
        ? html`<label class="pick">${WORDS.choose}
            <select class="text listed" .value=${live(String(shown))} @change=${(event: Event) => view.choose(Number((event.target as HTMLSelectElement).value))}>
              ${sets.map(({ setup }, i) => html`<option value=${i} ?selected=${i === shown}>${setup.name}</option>`)}
            </select>
          </label>`
        : nothing
    }
    ${isOwn ? html`<p class="note">${WORDS.isOn}</p>` : nothing}
    <details class="set">
      <summary><b>${set.setup.name}</b>: ${partsText(set.setup.parts ?? [], display)}</summary>
      ${note ? html`<p class="note">${note}</p>` : nothing}
      ${
        isOwn
          ? html`<label class="pick">${WORDS.name}
              <input class="text name" type="text" autocomplete="off" maxlength="60" .value=${live(set.setup.name)}
                @change=${(event: Event) => {
                  const { value } = event.target as HTMLInputElement;
                  view.change('setups', WORDS.name.toLowerCase(), (before) => renameSetup(before, set.index!, value));
                  host.requestUpdate();
                }} />
            </label>`
          : nothing
      }
      ${isOwn ? renderOwn(view, set, corner) : html`<button type="button" class="button adopt" @click=${() => adopt(view)}>${WORDS.adopt}</button>`}
      ${isOwn ? html`<button type="button" class="text-button remove-set" @click=${remove}>${WORDS.remove}</button>` : nothing}
    </details>
    ${
      count < MOST_SETUPS
        ? html`<button type="button" class="button add-set" @click=${() => add(view)}>${WORDS.add}</button>`
        : html`<p class="note">${WORDS.most}</p>`
    }
  </section>`;
}

const finders = new WeakMap<GeometryView['host'], AmountFinder>();

/** One an element: it keeps what it found. */
function finderOf(host: GeometryView['host']): AmountFinder {
  const finder = finders.get(host) ?? new AmountFinder(host);
  finders.set(host, finder);
  return finder;
}

/** Its parts to edit. */
function renderOwn(view: GeometryView, set: LinkedSet, corner: Corner | undefined): TemplateResult {
  const { host, drafts, display, model } = view;
  return renderParts({
    host,
    drafts,
    display,
    path: pathOf(set),
    setup: set.setup,
    corner,
    problems: problemsOf(view, set),
    ...finderOf(host).of(amountAskedOf(model, view.car, view.car.drop)),
    change: (label, recipe, step) => {
      view.change('setups', label, (before) => withLinkedSet(before, set, recipe), step);
    },
    cancel: (step) => model.cancelStep(step),
    begin: () => {
      model.endStep();
      view.beginEdit();
    },
    end: () => view.endStep(),
  });
}

/** Parts of a page or the example become the user's own, all of them, so that they can still be compared. */
function adopt(view: GeometryView): void {
  const { sets, shown } = view;
  view.change('setups', WORDS.added, (before) => {
    const first = (before.setups ?? []).length;
    const added = sets.reduce(
      (car, { setup, by }, i) => addParts(car, (by === 'example' && WORDS.taken[i]) || setup.name, setup.parts ?? []),
      before,
    );
    return fitSetup(added, first + shown);
  });
  unfold(view);
}

function add(view: GeometryView): void {
  view.change('setups', WORDS.added, (before) => addFitted(before, WORDS.newName, []));
  unfold(view);
}

function unfold({ host }: GeometryView): void {
  void host.updateComplete.then(() => {
    const details = host.renderRoot.querySelector<HTMLDetailsElement>('.set');
    if (details) details.open = true;
  });
}
