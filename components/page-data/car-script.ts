import { DATA_SCRIPT } from './data-marks.js';

/** What a JSON script holds that is a whole car, `{ "car": { … } }`: every element takes it, and no table beside it. */
export function carScript(host: HTMLElement): { car: unknown } | undefined {
  try {
    const data = JSON.parse(host.querySelector(DATA_SCRIPT)?.textContent ?? '') as { car: unknown };
    return Object.hasOwn(data, 'car') ? data : undefined;
  } catch {
    // No JSON, or none of an object: what reads corners tells what is wrong with it.
    return undefined;
  }
}
