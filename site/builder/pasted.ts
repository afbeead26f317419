import { readPageCar } from '../../components/page-data/page-car.js';
import { carOf, sourceOf } from '../../components/page-data/page-source.js';
import { readReadingSheet } from '../../components/page-data/reading-sheet.js';
import { tableProblems } from '../../components/page-data/table-problems.js';
import { type CarDocument, EMPTY_CAR } from '../../core/document/car.js';
import { asUsersOwn } from '../../core/document/own-car.js';
import { withPageCar } from '../../core/document/page-car.js';
import { readPastedPoints } from '../../core/document/pasted-points.js';
import { isFilled } from '../../core/document/provenance.js';
import type { Setup } from '../../core/document/setup.js';
import { withPageSetups } from '../../core/document/setups.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { splitText } from '../../core/readings/table/split-text.js';

/** What was pasted, as far as it is understood. */
export interface Pasted {
  /** As its user gave it. */
  car: CarDocument;
  problems: readonly Problem[];
}

const LANGUAGE = 'en';
const isRecord = (data: unknown): data is Record<string, unknown> => typeof data === 'object' && data !== null;

/**
 * A car in a text: a corner or a whole car as JSON, a saved file, or a table as spreadsheets copy it, of hard points, of measurements or
 * of readings.
 *
 * @param name of a set whose table gives none
 */
export function carIn(text: string, quantity: ReadingQuantity, name: string): Pasted {
  const bare = text.trim();
  if (bare === '') return { car: EMPTY_CAR, problems: [] };
  return /^[[{]/.test(bare) ? ofJson(bare) : ofTable(bare, quantity, name);
}

function ofJson(text: string): Pasted {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return { car: EMPTY_CAR, problems: [{ code: 'wrong-shape', path: 'JSON', value: String(error) }] };
  }
  // A saved file is a car without a word around it.
  const whole = isRecord(data) && !('car' in data) && ('provenance' in data || 'setups' in data) ? { car: data } : data;
  if (isRecord(whole) && 'car' in whole) {
    const { said, problems } = readPageCar(whole as { car: unknown });
    return { car: asUsersOwn(withPageCar(EMPTY_CAR, said)), problems };
  }
  const source = sourceOf({ light: { json: data, problems: [] } });
  return { car: asUsersOwn(carOf(source, EMPTY_CAR, false)), problems: source.problems };
}

function ofTable(text: string, quantity: ReadingQuantity, name: string): Pasted {
  const corner = readPastedPoints(text, LANGUAGE);
  const { points, ...others } = corner.given;
  if (Object.keys(points).length > 0 || isFilled(others)) {
    const { given, problems } = corner;
    return { car: asUsersOwn(carOf({ car: { given }, problems: [] }, EMPTY_CAR, false)), problems };
  }
  const found = readReadingSheet({ rows: splitText(text), caption: '', attributes: {}, language: LANGUAGE }, quantity);
  const setups = found.sets.map(
    (set): Setup => ({
      name: set.name || name,
      cornerName: EMPTY_CAR.cornerName,
      quantity,
      readings: set.readings.map((i) => found.readings[i]!),
      ...(found.overBase && { overBase: found.overBase }),
    }),
  );
  return { car: asUsersOwn(withPageSetups(EMPTY_CAR, setups)), problems: tableProblems(found) };
}
