import type { Setup } from '../../core/document/setup.js';
import { readingsInUse } from '../../core/document/setup-in-use.js';
import { DOUBT_KEYS } from '../../core/readings/doubts.js';
import { VERSION } from '../../core/version.js';
import { shownName } from '../car/shown-names.words.js';
import { dateText, today } from '../element/day.js';
import { doubtText } from '../element/doubts.words.js';
import { FIRST_CAUTIONS } from '../element/first-cautions.js';
import { type Display, lower, show, upper } from '../element/sentence.js';
import type { SheetView } from '../element/sheet-view.js';
import { CAPTION } from './caption.words.js';
import { READINGS_USED } from './readings-used.labels.js';
import type { RestsOn } from './rests-on.js';

/** What is written below a picture, so that it tells by itself what it is. */
export interface Caption {
  /** What the element is about. */
  title: string;
  /** The answer, and what the picture shows. */
  texts: readonly string[];
  method: string;
  source: string;
  caution: string;
}

/** With a capital and an end; a ± stays with the value before it. */
function asSentence(text: string): string {
  const whole = upper(text.trim()).replaceAll(' ±', '\u00a0±');
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}

/** More sets of readings than these would be a list. */
const MOST_SETS = 3;

type Told = Pick<SheetView, 'completeness' | 'display' | 'frame' | 'host' | 'isOwn' | 'said' | 'spoken'>;

/** @param shown what the picture shows, in words */
export function captionOf(view: Told, restsOn: RestsOn, shown: string): Caption {
  const { frame, spoken, said = spoken, display, host } = view;
  const where = CAPTION.where(upper(lower(shownName(frame.corner))), dateText(today(), display));
  const address = addressOf(host.ownerDocument);
  return {
    title: frame.title,
    texts: [said, shown].map(asSentence),
    method: `${CAPTION.method(methodsOf(restsOn, display))} ${where}`,
    source: `${address ? CAPTION.source(address, VERSION) : CAPTION.noAddress(VERSION)} ${whoseOf(view)}`,
    caution: FIRST_CAUTIONS[frame.caution],
  };
}

/** Where the numbers come from. */
function methodsOf({ sets, links }: RestsOn, display: Display): string[] {
  const more = sets.length - MOST_SETS;
  return [
    ...(links ? [CAPTION[links]] : sets.length === 0 ? [CAPTION.curve] : []),
    ...sets.slice(0, MOST_SETS).map((setup) => readingsText(setup, display)),
    ...(more > 0 ? [CAPTION.more(more)] : []),
    CAPTION.interval,
  ];
}

/** How many, and what they were read with as far as somebody said. */
function readingsText(setup: Setup, display: Display): string {
  const { name, doubts, overBase } = setup;
  const used = readingsInUse(setup);
  const passes = new Set(used.map(({ pass }) => pass)).size;
  return [
    CAPTION.readings(name, used.length, passes),
    ...DOUBT_KEYS.flatMap((key) => {
      const stated = doubts?.[key];
      return stated === undefined ? [] : [READINGS_USED.instruments[key](doubtText(key, stated, display))];
    }),
    ...(overBase ? [CAPTION.overBase[overBase.by](show(overBase.base, 'coordinate', display))] : []),
  ].join(', ');
}

function whoseOf({ completeness, isOwn }: Told): string {
  const { whose } = CAPTION;
  if (completeness === 'example') return whose.example;
  if (completeness === 'ready') return isOwn ? whose.yours : whose.pages;
  return isOwn ? whose.partlyYours : whose.partlyPages;
}

/**
 * The address of the page, as it says itself, without the car that it may carry; of a page inside another, of that one. Undefined of a
 * page that has none on the web: where a file lies on a disk is nobody's business.
 */
export function addressOf(page: Document): string | undefined {
  const canonical = page.querySelector<HTMLLinkElement>('link[rel=canonical]')?.href;
  const found = [canonical, page.URL, page.baseURI].find((one) => one !== undefined && /^https?:/.test(one));
  return found?.replace(/#.*$/, '');
}
