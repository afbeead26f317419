import { reservedHeight, reservedHeights, reservingStyles } from '../../components/delivery/reserved-heights.mjs';

/** Those that are something to see. */
const sheets = (): string[] => Object.keys(reservedHeights().heights);

/** In site.css, every element that is something to see. */
const SHEET = 'bumpline-sheet';

/** What the site's own elements have besides: a line that leads to the snippet builder, em. */
const AUTHOR_LINE = 2.75;

export const siteRoom = (): string => reservingStyles({ shows: false, more: AUTHOR_LINE });

/** The style sheet with `bumpline-sheet` as the elements that it stands for, and with the room that they keep before they come. */
export const withElements = (css: string): string =>
  `${css}\n${siteRoom()}`.replace(new RegExp(`(?<![\\w-])${SHEET}(?![\\w-])`, 'g'), `:is(${sheets().join(', ')})`);

/**
 * A page with each `%RESERVED <tag> <width>%` as the height kept for that element in a column so wide, px.
 *
 * @throws {Error} where none was measured
 */
export const withReservedHeights = (html: string): string =>
  html.replace(/%RESERVED ([\w-]+) (\d+)%/g, (_, tag: string, width: string) =>
    String(reservedHeight(tag, Number(width))),
  );
