import { html, type TemplateResult } from 'lit';
import type { SheetView } from '../element/sheet-view.js';
import { ALIGNMENT } from './alignment.labels.js';
import { camberLines, heightLines } from './alignment-words.js';
import type { WheelPlan } from './wheel-plan.js';

/** Height, camber, toe: what is to be done to each, and what it does to the next. */
export function renderOrder(
  { car, display }: Pick<SheetView, 'car' | 'display'>,
  plans: readonly WheelPlan[],
  { isByArm, toe = [] }: { isByArm: boolean; toe?: readonly string[] },
): TemplateResult {
  const steps = [
    [ALIGNMENT.height.title, heightLines(plans, car, display)],
    [ALIGNMENT.camber.title, camberLines(plans, car, display, isByArm)],
    [ALIGNMENT.toeStep.title, [ALIGNMENT.toeStep.again, ...toe]],
  ] as const;
  return html`<ol class="order">${steps.map(([title, lines]) => html`<li><b>${title}</b>${lines.map((line) => html` <span>${line}</span>`)}</li>`)}</ol>`;
}
