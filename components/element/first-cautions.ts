import { worded, words } from '../../core/quantity/words.js';

/**
 * What stands under the sentence of a first answer, and what holds of every element: of these one on a page says the latter
 * (once-a-page.ts).
 */
export const FIRST_CAUTIONS = words('element/first-cautions', {
  predicted: 'These numbers are no fitting check, and never permission to drive.',
  clearByHand:
    'A clearance by numbers is never permission to drive: tyre, brake hose and sensor lead must stay free everywhere, from lock to lock, half way up and at full bump.',
  stands:
    'On its wheels, or on axle stands (jack stands) under the jacking points: hard level ground, the other wheels chocked. Never under a car on a jack, nobody inside, phone away.',
  afterHeight:
    'A new height puts out wheel alignment, headlamp aim, driver-assistance sensors (calibration), the load-sensing brake valve and ground clearance.',
  rules: 'Rules differ by country: ask your own authority or a licensed inspector before you drive.',
});

/** What one element on a page says for all. */
export const GENERAL_CAUTIONS: readonly string[] = worded(() => [
  FIRST_CAUTIONS.stands,
  FIRST_CAUTIONS.afterHeight,
  FIRST_CAUTIONS.rules,
]);
