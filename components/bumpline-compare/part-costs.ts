import { html, nothing, type TemplateResult } from 'lit';
import { type ComparedCurve, costsOf, type Told } from '../../core/answers/compare.js';
import type { AnySource, LearntSource, PartsSource } from '../../core/curve-sources/source.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { show, upper } from '../element/sentence.js';
import { entryOf, hasTieRod } from '../parts/part-entries.js';
import { LABELS } from './bumpline-compare.labels.js';
import { cellName } from './bumpline-compare.words.js';
import type { CompareView } from './compare-view.js';

const { costs: NAMES } = LABELS;

/** Links with parts on, as they were measured or as readings correct them. */
type WithParts = PartsSource | (LearntSource & Pick<PartsSource, 'parts'>);

/** What parts cost elsewhere: toe in bump, with the tie-rod end made to match and without, and where the roll centre goes. */
export class PartCosts {
  readonly #view: CompareView;
  /** The other way round with the tie rod, by source. */
  readonly #others = new WeakMap<WithParts, ComparedCurve>();
  readonly #asked = new WeakSet<WithParts>();
  #coming: Promise<void> | undefined;

  constructor(view: CompareView) {
    this.#view = view;
  }

  get settled(): Promise<unknown> {
    return Promise.resolve(this.#coming);
  }

  render(): TemplateResult | typeof nothing {
    const { cells, curves } = this.#view;
    const sources = curves.known?.sources;
    const at = [cells.to, cells.from].find(({ curve }) => isWithParts(sources?.[curve]));
    if (!at) return nothing;
    const source = sources![at.curve] as WithParts;
    if (source.parts.length === 0) return nothing;
    const lines = [this.#toe(source, at), this.#rollCentre(at)].filter((line) => line !== undefined);
    return html`<div class="costs"><p class="costs-title">${NAMES.title(this.#name(at))}</p><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></div>`;
  }

  #name(at: { curve: number; height: number }): string {
    const { names, request } = this.#view.answer!;
    return upper(cellName(at, { names, heights: request.heights }, this.#view.display));
  }

  #toe(source: WithParts, at: { curve: number; height: number }): string | undefined {
    const { answer } = this.#view;
    const cell = answer!.comparison.cells[at.curve]?.[at.height];
    if (!cell?.change) return undefined;
    const joints = source.parts.filter(hasTieRod);
    const rod = joints.every(isLowered) ? NAMES.lowered : NAMES.moved;
    const isCorrected = joints.length > 0 && joints.every(({ correctTieRod }) => correctTieRod);
    if (!cell.toeChange) {
      if (joints.length === 0) return NAMES.measure;
      return isCorrected ? NAMES.measureCorrected(rod) : NAMES.measureJoint(rod);
    }
    const curve = answer!.request.curves[at.curve]!;
    const here = this.#added(curve, at.height);
    if (!here) return undefined;
    if (joints.length === 0) return NAMES.toe(here);
    const other = this.#otherWay(source);
    const there = other && this.#added(other, at.height);
    if (!there) return NAMES.toe(here);
    return isCorrected ? NAMES.toeCorrected(rod, here, there) : NAMES.toeUnless(rod, here, there);
  }

  /** How much more than the bare car's at the same height: what both share cancels. */
  #added(curve: ComparedCurve, height: number): string | undefined {
    const { request, own } = this.#view.answer!;
    const bare = request.curves[own];
    const curves = bare ? [bare, curve] : [];
    const added = bare && costsOf({ ...request, curves }, { curve: 0, height }, { curve: 1, height }).toeChange;
    return added && this.#toeText(added);
  }

  #toeText({ value, plusMinus, isTold }: Told): string {
    const { display } = this.#view;
    if (!isTold && plusMinus !== undefined) return NAMES.noToe(show(plusMinus, 'toe', display));
    const size = show(Math.abs(value), 'toe', display, plusMinus);
    return value < 0 ? NAMES.out(size) : NAMES.in(size);
  }

  /** The same parts with the tie rod the other way, once that is known. */
  #otherWay(source: WithParts): ComparedCurve | undefined {
    const known = this.#others.get(source);
    if (!known && !this.#asked.has(source)) {
      this.#asked.add(source);
      this.#coming = this.#ask(source);
    }
    return known;
  }

  async #ask(source: WithParts): Promise<void> {
    const { curves, host } = this.#view;
    const isCorrected = source.parts.filter(hasTieRod).every(({ correctTieRod }) => correctTieRod);
    const turned = (part: PartData): PartData => (hasTieRod(part) ? { ...part, correctTieRod: !isCorrected } : part);
    try {
      this.#others.set(source, await curves.toeOf({ ...source, parts: source.parts.map(turned) }));
      host.requestUpdate();
    } catch {
      // The other way round it does not go on: then there is nothing to say of it.
    }
  }

  #rollCentre(at: { curve: number; height: number }): string | undefined {
    const { answer, cells, display } = this.#view;
    const { request, comparison } = answer!;
    const found = comparison.cells[at.curve]?.[at.height]?.rollCentre;
    if (!found) return undefined;
    const size = show(Math.abs(found.value), 'coordinate', display, found.plusMinus);
    const here = found.value < 0 ? NAMES.below(size) : NAMES.above(size);
    const other = at.curve === cells.to.curve && at.height === cells.to.height ? cells.from : cells.to;
    const difference = request.curves[other.curve]?.shares && costsOf(request, other, at).rollCentre;
    if (!difference || (other.curve === at.curve && other.height === at.height)) return NAMES.centre(here);
    const { value, plusMinus, isTold } = difference;
    const name = cellName(other, { names: answer!.names, heights: request.heights }, display);
    if (!isTold) return NAMES.centreSame(here, name, show(plusMinus ?? 0, 'coordinate', display));
    const by = show(Math.abs(value), 'coordinate', display, plusMinus);
    return value < 0 ? NAMES.centreLower(here, by, name) : NAMES.centreHigher(here, by, name);
  }
}

const isWithParts = (source: AnySource | undefined): boolean =>
  source?.kind === 'parts' || (source?.kind === 'learnt' && source.parts !== undefined);

/** Whether a joint puts the arm's outer end lower, so that the rod's end goes down with it. */
function isLowered(part: PartData): boolean {
  const key = entryOf(part)?.key;
  return (
    (key === 'lowerJoint' && 'mm' in part && part.mm >= 0) ||
    (key === 'lowerJointMoved' && 'vector' in part && part.vector[2] < 0)
  );
}
