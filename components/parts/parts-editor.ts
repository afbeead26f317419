import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ALIGNMENTS, type Alignment } from '../../core/curve-sources/source.js';
import { MOST_PARTS } from '../../core/document/counts.js';
import type { Corner } from '../../core/linkage/corner.js';
import { assumedBolt } from '../../core/linkage/parts/assumed-bolt.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { type Display, lower, show } from '../element/sentence.js';
import { placeOf } from './fitted-problem.js';
import { entryOf, hasTieRod, offeredParts, type PartEntry, type PartField } from './part-entries.js';
import { renderPartField, renderPlusMinus } from './part-field.js';
import { PARTS } from './parts.labels.js';
import { changePart, type PartsEdit, partPath, withList } from './parts-edit.js';
import { partProblemText } from './parts-text.js';
import { renderWherePart } from './where-part.js';

/**
 * A list of parts: each with its amounts, its ±, whether the tie rod is made to match, what to measure at the part itself, and what is
 * set again once all are on. Each valid text takes effect at once; what is no number stays in its field.
 */
export function renderParts(edit: PartsEdit): TemplateResult {
  const { parts = [] } = edit.setup;
  return html`<div class="parts-editor">
    ${parts.length === 0 ? html`<p class="note">${PARTS.none}</p>` : nothing}
    ${parts.map((data, at) => renderPart(edit, data, at))}
    ${parts.length < MOST_PARTS ? renderChooser(edit, parts.length) : nothing}
    ${parts.length > 0 ? renderAlignment(edit) : nothing}
  </div>`;
}

function renderPart(edit: PartsEdit, data: PartData, at: number): TemplateResult | typeof nothing {
  const entry = entryOf(data);
  if (!entry) return nothing;
  const { key, fields } = entry;
  const { title, plus } = PARTS.kinds[key];
  // What is assumed well enough for most stands folded, where it is shown how to measure it.
  const [asked, besides] = [false, true].map((isBeside) =>
    fields.filter((field) => (field.isBeside ?? false) === isBeside),
  ) as [PartField[], PartField[]];
  const { display, corner } = edit;
  const isField = (path: string) => path === 'plusMinus' || fields.some((field) => field.path === path);
  const problems = edit.problems.filter((problem) => {
    const place = placeOf(problem);
    return place?.at === at && !isField(place.path);
  });
  return html`<div class="part" role="group" aria-label=${title}>
    <div class="part-head">
      <b>${title}</b>
      <button type="button" class="button" aria-label="${PARTS.remove}: ${title}" title=${PARTS.remove} @click=${() => removePart(edit, at)}>×</button>
    </div>
    ${asked.map((field) => renderPartField(edit, data, at, entry, field))}
    <p class="note">${plus}</p>
    ${problems.map((problem) => html`<p class="problem" role="alert">${partProblemText(problem, edit.setup.parts ?? [], corner?.kind, display)}</p>`)}
    ${hasTieRod(data) ? renderTieRod(edit, data, at) : nothing}
    ${notesOf(edit, data).map((text) => html`<p class="note query">${text}</p>`)}
    ${renderPlusMinus(edit, data, at, entry)}
    ${edit.renderFinder?.(edit, data, at, entry) ?? nothing}
    <details class="part-where">
      <summary>${PARTS.where}</summary>
      ${renderWherePart(key, corner?.kind)}
      <p class="note">${PARTS.measures[entry.measure]}</p>
      ${besides.map((field) => renderPartField(edit, data, at, entry, field))}
    </details>
  </div>`;
}

function renderTieRod(
  edit: PartsEdit,
  data: Extract<PartData, { part: 'ballJointExtended' | 'ballJointMoved' }>,
  at: number,
): TemplateResult {
  const turn = ({ target }: Event) => {
    const { checked } = target as HTMLInputElement;
    const label = lower(PARTS.tieRod);
    changePart(edit, at, label, (part) => {
      const { correctTieRod: _, ...rest } = part as typeof data;
      return checked ? { ...rest, correctTieRod: true } : rest;
    });
    edit.end();
  };
  const isPlain = data.part === 'ballJointExtended' && data.joint !== 'upper';
  return html`<label class="check">
    <input type="checkbox" .checked=${live(data.correctTieRod === true)} @change=${turn} />
    <span>${isPlain ? PARTS.tieRod : PARTS.tieRodUpper}</span>
  </label>`;
}

/** What is assumed, what has no effect as it stands, and what a part does to the height. */
function notesOf({ setup, corner, display }: PartsEdit, data: PartData): string[] {
  const isReset = setup.alignment !== 'as-fitted';
  return [
    ...(data.part === 'tieRodLonger' && isReset ? [PARTS.rodUndone] : []),
    ...(data.part === 'knuckleBoltsTurned' && isAssumed(data, corner) ? [PARTS.bolt] : []),
    ...springNote(data, corner, display),
  ];
}

const isAssumed = (data: Extract<PartData, { part: 'knuckleBoltsTurned' }>, corner: Corner | undefined): boolean =>
  String(assumedBolt(corner)) === String(data.otherBolt);

/** A wishbone's spring usually stands on an arm: a longer joint on that arm turns it, and the car sits lower. */
function springNote(data: PartData, corner: Corner | undefined, display: Display): string[] {
  if (data.part !== 'ballJointExtended' || corner?.kind !== 'wishbone' || data.mm === 0) return [];
  const isUpper = data.joint === 'upper';
  const foot = corner.damper?.on ?? 'lowerArm';
  if (foot !== (isUpper ? 'upperArm' : 'lowerArm')) return [];
  const says = isUpper === data.mm > 0 ? PARTS.springOnArmUp : PARTS.springOnArm;
  return [says(show(Math.abs(data.mm), 'drop', display))];
}

/** One more part, folded until it is asked for. */
function renderChooser(edit: PartsEdit, count: number): TemplateResult {
  const add = (entry: PartEntry, event: Event) => {
    (event.target as Element).closest('details')!.open = false;
    edit.change(PARTS.added, (setup) => withList(setup, (all) => [...all, entry.begin(edit.corner)]));
    edit.end();
    void focusPart(edit, count, entry);
  };
  return html`<details class="add-part" ?open=${count === 0}>
    <summary>${PARTS.add}</summary>
    ${renderPartChoices(edit.corner, add)}
  </details>`;
}

/** Every part that the corner has a place for, as a button. */
export function renderPartChoices(
  corner: Corner | undefined,
  onChoose: (entry: PartEntry, event: Event) => void,
): TemplateResult {
  return html`<div class="choices part-choices">
    ${offeredParts(corner?.kind).map(
      (entry) =>
        html`<button type="button" class="button" @click=${(event: Event) => onChoose(entry, event)}>${PARTS.kinds[entry.key].title}</button>`,
    )}
  </div>`;
}

/** A new part waits for its amount. */
export async function focusPart(
  edit: Pick<PartsEdit, 'host' | 'path'>,
  at: number,
  { fields }: PartEntry,
): Promise<void> {
  await edit.host.updateComplete;
  edit.host.renderRoot.querySelector<HTMLInputElement>(`[id="${partPath(edit, at, fields[0]!.path)}"]`)?.focus();
}

function removePart(edit: PartsEdit, at: number): void {
  // Those behind it move up, and their texts would stand with other parts.
  for (let i = at; i < MOST_PARTS; i++) edit.drafts.dropAll(partPath(edit, i, ''));
  edit.change(PARTS.removed, (setup) => withList(setup, (all) => all.filter((_, i) => i !== at)));
  edit.end();
}

function renderAlignment(edit: PartsEdit): TemplateResult {
  const { setup, corner, problems, display } = edit;
  const chosen = setup.alignment ?? 'toe';
  const id = `${edit.path}alignment`;
  const problem = problems.find(({ path }) => path === 'alignment');
  const choose = ({ target }: Event) => {
    const alignment = (target as HTMLSelectElement).value as Alignment;
    edit.change(lower(PARTS.again), ({ alignment: _, ...rest }) =>
      alignment === 'toe' ? rest : { ...rest, alignment },
    );
    edit.end();
  };
  return html`<div class="field alignment">
    <label for=${id}>${PARTS.again}</label>
    <select class="text listed" id=${id} .value=${live(chosen)} aria-invalid=${problem ? 'true' : 'false'} @change=${choose}>
      ${ALIGNMENTS.map((one) => html`<option value=${one} ?selected=${one === chosen}>${PARTS.alignment[one]}</option>`)}
    </select>
    ${problem ? html`<p class="problem" role="alert">${partProblemText(problem, setup.parts ?? [], corner?.kind, display)}</p>` : nothing}
  </div>
  ${chosen === 'camber-and-toe' ? html`<p class="note">${PARTS.camberSet[corner?.kind ?? 'strut']}</p>` : nothing}`;
}
