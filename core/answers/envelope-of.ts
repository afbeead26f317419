import type { FittedWheel } from '../wheel/fitted-wheel.js';
import type { Envelope } from '../wheel/gaps.js';
import { tyreSection } from '../wheel/tyre-section.js';

/** One wheel on the hub. @param shift outboard of the wheel that was on */
export const envelopeOf = (
  { spec, dimensions, sectionWidth, freeRadius }: FittedWheel,
  shift: number,
  width = sectionWidth,
  radius = freeRadius,
): Envelope => ({
  shift,
  section: tyreSection({
    sectionWidth: width,
    freeRadius: radius,
    rimRadius: dimensions.rimDiameter / 2,
    rimWidth: spec.rimWidthInch * 25.4,
    treadWidth: spec.treadWidth,
    shoulderRadius: spec.shoulderRadius,
    rimProtector: spec.rimProtector,
  }),
});
