import { STRUT_POINT_KEYS } from '../linkage/corner.js';
import { type CarDocument, dropBy, EMPTY_CAR, type GivenCorner, givenByUser, wayBy } from './car.js';
import { LINK_ROWS } from './link-fields.js';
import { readRows, writeRows } from './link-rows.js';
import { Damaged, sound } from './link-text.js';
import { byUser, usersOnly } from './own-car.js';
import { indexInUse } from './setup-in-use.js';

/*
 * A car in the fragment of a link, to be read by people as well: names and values joined by & and =, mm and degrees, `~` before
 * a ±, points as x,y,z. Only what somebody gave: what stands in belongs to the page or is the example's.
 *
 *     car=1&corner=front-left&by=driveway&drop=30&armLength=338~3&check=…
 */
const VERSION = '1';

export type CarFromLink = { ok: true; car: CarDocument } | { ok: false; reason: 'not-a-car' | 'newer' | 'damaged' };

/** The fragment of a link that carries the car, without its #. */
export function carToLink(car: CarDocument): string {
  const own = usersOnly(car);
  const written = {
    ...own,
    ...(dropBy(car) !== 'user' && { drop: undefined }),
    ...(wayBy(car) !== 'user' && { cornerName: undefined, by: undefined }),
    given: spelledOut(own.given),
    // Somebody who opens the link counts from 1.
    setup: own.setups && indexInUse(own) + 1,
    fitted: own.fitted !== undefined ? own.fitted + 1 : undefined,
    // Says something of the camber that is given only.
    camberReadLower: car.provenance.corner?.by === 'user' ? car.camberReadLower : undefined,
  };
  const text = [['car', VERSION], ...writeRows(LINK_ROWS, written)].map((pair) => pair.join('=')).join('&');
  return `${text}&check=${check(text)}`;
}

/** A corner with the ± of each point beside it. */
function spelledOut({ plusMinus = {}, ...given }: GivenCorner): GivenCorner {
  const each: GivenCorner['plusMinus'] = {};
  for (const key of STRUT_POINT_KEYS) {
    const { [key]: value = plusMinus.other } = plusMinus;
    if (given.points[key] && value !== undefined) each[key] = value;
  }
  return { ...given, plusMinus: each };
}

/** FNV-1a (Fowler, Noll, Vo; 32 bit): one character changed always changes it. */
function check(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}

/** What a link carries. Never throws, whatever the text is; a leading # does not matter. */
export function carFromLink(link: string): CarFromLink {
  // Mail and messengers escape marks that need no escaping.
  const text = link.replace(/^#/, '').replace(/%(7e|2c|2f)/gi, decodeURIComponent);
  if (!text.startsWith('car=')) return { ok: false, reason: 'not-a-car' };
  const [, body, sum] = /^(.*)&check=([0-9a-z]*)$/s.exec(text) ?? [];
  const version = /^car=([1-9]\d{0,3})(&|$)/.exec(text)?.[1];
  if (body === undefined || sum !== check(body) || version === undefined) return { ok: false, reason: 'damaged' };
  if (version !== VERSION) return { ok: false, reason: 'newer' };
  try {
    return { ok: true, car: carIn(body.split('&').slice(1)) };
  } catch (error) {
    if (error instanceof Damaged) return { ok: false, reason: 'damaged' };
    throw error;
  }
}

function carIn(texts: readonly string[]): CarDocument {
  const pairs = new Map<string, string>();
  for (const text of texts) {
    const [key, value, more] = text.split('=');
    if (!key || value === undefined || more !== undefined || pairs.has(key)) throw new Damaged();
    pairs.set(key, value);
  }
  const { setup, fitted, ...found } = readRows(LINK_ROWS, pairs) as Partial<CarDocument>;
  // What is left over is unknown; one of the sets is in use, if there are any.
  const { length = 0 } = found.setups ?? [];
  sound((pairs.size === 0 && (length > 0 ? setup! <= length : setup === undefined)) || undefined);
  sound(fitted === undefined || found.setups?.[fitted - 1]?.parts ? true : undefined);
  const given = { ...EMPTY_CAR.given, ...found.given };
  const whole = byUser({
    ...EMPTY_CAR,
    ...found,
    given,
    ...(setup! > 1 && { setup: setup! - 1 }),
    ...(fitted !== undefined && { fitted: fitted - 1 }),
  });
  const { drop, way, ...parts } = whole.provenance;
  const isWay = found.cornerName !== undefined || found.by !== undefined;
  const provenance = { ...parts, ...(found.drop !== undefined && { drop }), ...(isWay && { way }) };
  const car = { ...whole, provenance } as CarDocument;
  // The other side is that of the user's own car, and so are readings.
  return car.other || car.setups ? givenByUser(car, (corner) => corner) : car;
}
