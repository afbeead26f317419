import type { TemplateResult } from 'lit';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { renderSlider, type SliderOptions } from '../controls/slider.js';
import type { SliderTick } from '../controls/slider-ticks.js';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import type { ClearanceView } from './clearance-view.js';

/** The slider's ends, mm from the wheel that was on. */
const FURTHEST_IN_MM = -20;
const FURTHEST_OUT_MM = 50;

/**
 * How far out the new wheel is.
 *
 * @param whole the last answer with what would just clear: while the wheel is moved, where it just clears stays where it is
 */
export function renderPlaneSlider(
  view: ClearanceView,
  whole: DrawnClearance | undefined,
  step: NonNullable<SliderOptions['step']>,
): TemplateResult {
  const { display, plane } = view;
  const ticks: SliderTick[] = [{ at: 0, label: NAMES.asBefore, kind: 'plain' }];
  for (const { by = 0 } of whole?.justClear?.find(({ id }) => id === 'plane')?.ends ?? []) {
    // Rounded to the side that still clears.
    const isBelow = by > 0 === (whole!.verdict === 'clears');
    const at = (isBelow ? Math.floor : Math.ceil)(whole!.wheels.plane + by);
    ticks.push({ at, label: `${NAMES.justClears} ${show(at, 'offset', display)}`, kind: 'limit' });
  }
  return renderSlider({
    id: 'plane-slider',
    label: NAMES.slider,
    quantity: 'offset',
    display,
    value: plane,
    min: Math.min(FURTHEST_IN_MM, Math.floor(plane)),
    max: Math.max(FURTHEST_OUT_MM, Math.ceil(plane)),
    ticks,
    onInput: (mm) => view.dragPlane(mm),
    onChange: () => view.endDrag(),
    step,
  });
}
