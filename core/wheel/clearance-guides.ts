/** What an authority, a statute or a regulation says of the room round a wheel. Examples: no reader's own rule need be among them. */
export interface ClearanceGuide {
  place: string;
  /** What kind of text it is, and whose. */
  what: string;
  says: string;
  /** When the text is from, or that it does not say. */
  dated: string;
  /** Where it was read, and how much of it. */
  source: string;
}

/*
 * Pages, cautions and sheets take their words from here, word for word; a test holds them to it. 5 mm to chassis parts and 10 mm to
 * bodywork are often said to be Austria's: no authority's text with these figures could be found.
 */

export const AUSTRIA: ClearanceGuide = {
  place: 'Austria',
  what: 'guide values of provincial authorities (Styria, Burgenland, Lower Austria)',
  says: '2\u00a0mm from wheel to brake, 4\u00a0mm to links, strut, spring and damper, 6\u00a0mm to everything else, in every load state and at full lock',
  dated: 'pages without a date',
  source: 'technik.steiermark.at, 11606852; burgenland.at; noel.gv.at. Excerpts read in 2026',
};

export const SWITZERLAND: ClearanceGuide = {
  place: 'Switzerland',
  what: 'an authority’s page (canton of Basel-Landschaft), after its directive 2a',
  says: 'lowered by up to 40\u00a0mm: travel left at full load, arms off their hard stops, wheels free in all states',
  dated: 'page without a date',
  source: 'baselland.ch. Excerpt read in 2026',
};

export const GERMANY: ClearanceGuide = {
  place: 'Germany',
  what: 'a statute, StVZO § 19 (2) and § 30 (1)',
  says: 'the approval ends where a change may be expected to endanger others; no millimetres in the parts that were read',
  dated: 'text of 2012, changed since',
  source: 'public copy of the federal statutes. Both paragraphs read',
};

export const EUROPE: ClearanceGuide = {
  place: 'European Union',
  what: 'a directive on periodic tests, 2014/45, Annex I 5.1.1 (c)',
  says: 'an axle changed so that it has too little clearance to other parts or to the ground is a defect',
  dated: '2014',
  source: 'legislation.gov.uk. Clause read',
};

export const BRITAIN: ClearanceGuide = {
  place: 'Great Britain',
  what: 'the annual test’s manual (MOT), 5.1.1 (c)',
  says: 'an unsafe modification of an axle is a major defect, and a dangerous one where stability or function is impaired',
  dated: 'page without a date',
  source: 'gov.uk. Clause read in 2026',
};

export const CLEARANCE_GUIDES: readonly ClearanceGuide[] = [AUSTRIA, SWITZERLAND, GERMANY, EUROPE, BRITAIN];

/** One published example as a sentence; the reader's own authority is named after it, wherever it stands. */
export const CLEARANCE_EXAMPLE = `As an example, guide values of Austrian provincial authorities ask for ${AUSTRIA.says} (excerpts read in 2026, undated).`;
