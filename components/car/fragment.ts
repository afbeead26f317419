/*
 * What a page's fragment can be: a place on the page, a car, or both, joined by `&` (`#sources&car=1&…`). A link to a car that
 * the address does not keep says which of the page's it is: `at=2&car=1&…`.
 */

/** The longest address with a car in it, characters: common practice, no source. Chat programs and mail cut longer ones short. */
export const LONGEST_LINK = 8000;

export interface Fragment {
  /** The id of a place on the page, as it stands in the address; '' without one. */
  section: string;
  /** What carries a car, from `car=` on. */
  car: string | undefined;
  /** Which of the page's cars it is, from 1; undefined of the one that the address keeps. */
  at: number | undefined;
  /** Neither a car nor a place: a router's, or made for another purpose. It is never written over. */
  isForeign: boolean;
}

const CAR = /^#?(?:([^&=/?!]*)&)?(?:at=([1-9]\d?)&)?(car=.*)$/s;

/** @param isPlace whether an id is one of the page's */
export function readFragment(hash: string, isPlace: (id: string) => boolean = isPlaceHere): Fragment {
  const [, section = '', at, car] = CAR.exec(hash) ?? [];
  if (car !== undefined) return { section, car, at: at === undefined ? at : Number(at), isForeign: false };
  const id = hash.replace(/^#/, '');
  return { section: id, car, at: undefined, isForeign: id !== '' && !isPlace(decoded(id)) };
}

/** The fragment of a place with a car, with its #; '' of neither. */
export function writeFragment(section: string, car: string | undefined, at?: number): string {
  const parts = [...(section ? [section] : []), ...(car && at ? [`at=${at}`] : []), ...(car ? [car] : [])];
  return parts.length > 0 ? `#${parts.join('&')}` : '';
}

/** Escapes that are none stand for themselves. */
function decoded(id: string): string {
  try {
    return decodeURIComponent(id);
  } catch {
    return id;
  }
}

/** `#top` leads to the start of a page that has no such id (HTML, "find a potential indicated element"). */
const isPlaceHere = (id: string): boolean => id.toLowerCase() === 'top' || placeOf(id) !== undefined;

const placeOf = (id: string): Element | undefined =>
  document.getElementById(id) ?? document.querySelector(`a[name="${CSS.escape(id)}"]`) ?? undefined;

/** A browser knows no place by a fragment that carries a car as well: brings a freshly opened page there. */
export function goToPlace(section: string): void {
  const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  // After a reload and on the way back the reader is where they were.
  if (section && (entry?.type ?? 'navigate') === 'navigate') placeOf(decoded(section))?.scrollIntoView();
}
