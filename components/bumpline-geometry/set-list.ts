import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { MOST_SETUPS } from '../../core/document/counts.js';
import { addFitted, type LinkedSet, withLinkedSet } from '../../core/document/linked-sets.js';
import { addParts, removeSetup, renameSetup } from '../../core/document/setup-edits.js';
import { fitSetup } from '../../core/document/setup-in-use.js';
import type { Corner } from '../../core/linkage/corner.js';
import type { Problem } from '../../core/quantity/problem.js';
import { shownName } from '../car/shown-names.words.js';
import type { LinkedHost } from '../element/linked-app.js';
import { lower } from '../element/sentence.js';
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
const problemsOf = ({ problems }: Pick<SetsView, 'problems'>, set: LinkedSet): Problem[] =>
  problems.flatMap((problem) =>
    problem.path.startsWith(pathOf(set)) ? [{ ...problem, path: problem.path.slice(pathOf(set).length) }] : [],
  );

/** Which set's parts a problem is of. */
export const isOfSet = (problem: Problem, sets: readonly LinkedSet[]): boolean =>
  sets.some((set) => problem.path.startsWith(pathOf(set)));

/** What a list of sets knows of its element. */
export type SetsView = Pick<
  GeometryView,
  'sets' | 'shown' | 'choose' | 'display' | 'car' | 'drafts' | 'model' | 'problems' | 'change' | 'beginEdit' | 'endStep'
> & { host: LinkedHost };

/**
 * The sets of parts: which is on, what is in it, and its parts to edit.
 *
 * @param none the choice of having none on, where there is that choice
 * @param isOn what is said of a set that is chosen: of one that nobody bought yet not that it is on
 */
export function renderSets(
  view: SetsView,
  corner: Corner | undefined,
  none?: string,
  isOn: string = WORDS.isOn,
): TemplateResult {
  const { sets, shown, car } = view;
  const set = sets[shown];
  const isOwn = set?.by === 'user';
  const count = (car.setups ?? []).length;
  return html`<section class="sets" aria-label=${WORDS.title}>
    <div class="pick-row">
      ${
        sets.length > 1 || none !== undefined
          ? html`<label class="pick">${WORDS.choose}
              <select class="text listed" .value=${live(String(shown))} @change=${(event: Event) => view.choose(Number((event.target as HTMLSelectElement).value))}>
                ${none === undefined ? nothing : html`<option value="-1" ?selected=${shown < 0}>${none}</option>`}
                ${sets.map(({ setup }, i) => html`<option value=${i} ?selected=${i === shown}>${shownName(setup.name)}</option>`)}
              </select>
            </label>`
          : nothing
      }
      ${count < MOST_SETUPS ? html`<button type="button" class="button add-set" @click=${() => add(view)}>${WORDS.add}</button>` : nothing}
    </div>
    ${count < MOST_SETUPS ? nothing : html`<p class="note">${WORDS.most}</p>`}
    ${isOwn ? html`<p class="note">${isOn}</p>` : nothing}
    ${set ? renderSet(view, set, corner) : nothing}
  </section>`;
}

/** What is in a set, and its parts to edit where it is the user's. */
function renderSet(view: SetsView, set: LinkedSet, corner: Corner | undefined): TemplateResult {
  const { display, drafts, host } = view;
  const isOwn = set.by === 'user';
  const note = set.by === 'example' ? WORDS.isExample : set.by === 'page' ? WORDS.isPages : undefined;
  const remove = () => {
    drafts.dropAll(pathOf(set));
    view.change('setups', WORDS.removed, (before) => removeSetup(before, set.index!));
  };
  return html`<details class="set">
      <summary><b>${shownName(set.setup.name)}</b>: ${partsText(set.setup.parts ?? [], display)}</summary>
      ${note ? html`<p class="note">${note}</p>` : nothing}
      ${
        isOwn
          ? html`<label class="pick">${WORDS.name}
              <input class="text name" type="text" autocomplete="off" maxlength="60" .value=${live(set.setup.name)}
                @change=${(event: Event) => {
                  const { value } = event.target as HTMLInputElement;
                  view.change('setups', lower(WORDS.name), (before) => renameSetup(before, set.index!, value));
                  host.requestUpdate();
                }} />
            </label>`
          : nothing
      }
      ${isOwn ? renderOwn(view, set, corner) : html`<button type="button" class="button adopt" @click=${() => adopt(view)}>${WORDS.adopt}</button>`}
      ${isOwn ? html`<button type="button" class="text-button remove-set" @click=${remove}>${WORDS.remove}</button>` : nothing}
    </details>`;
}

const finders = new WeakMap<SetsView['host'], AmountFinder>();

/** One an element: it keeps what it found. */
function finderOf(host: SetsView['host']): AmountFinder {
  const finder = finders.get(host) ?? new AmountFinder(host);
  finders.set(host, finder);
  return finder;
}

/** Its parts to edit. */
function renderOwn(view: SetsView, set: LinkedSet, corner: Corner | undefined): TemplateResult {
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
function adopt(view: SetsView): void {
  const { sets, shown } = view;
  view.change('setups', WORDS.added, (before) => {
    const first = (before.setups ?? []).length;
    const added = sets.reduce((car, { setup, by }, i) => {
      // A prediction that was kept of them goes by their name.
      const isKept = before.predictions?.some(({ name }) => name === setup.name);
      return addParts(car, (by === 'example' && !isKept && WORDS.taken[i]) || setup.name, setup.parts ?? []);
    }, before);
    return fitSetup(added, first + Math.max(0, shown));
  });
  unfold(view);
}

function add(view: SetsView): void {
  view.change('setups', WORDS.added, (before) => addFitted(before, WORDS.newName, []));
  unfold(view);
}

function unfold({ host }: SetsView): void {
  void host.updateComplete.then(() => {
    const details = host.renderRoot.querySelector<HTMLDetailsElement>('.set');
    if (details) details.open = true;
  });
}
