import { words } from '../../core/quantity/words.js';

/** English words of what is saved, and of what is written into it. */
export const TAKE_ALONG = words('publish/take-along', {
  kinds: { drawing: 'Drawing', chart: 'Chart', bars: 'Bars' },
  which: (what: string): string => `${what}: which one`,
  readings: 'Readings',
  as: (what: string, form: string): string => `${what} as ${form}`,
  svg: 'SVG',
  png: 'PNG',
  csv: 'CSV',
  table: 'Copy HTML table',
  copyTable: 'Copy HTML table of the readings',
  tableText: 'Readings as an HTML table',
  saved: (name: string): string => `Saved as ${name}.`,
  tableCopied: 'The HTML table is copied. A Bumpline element that it stands in reads these readings from it.',
  tables: (count: number): string =>
    `It is ${count} tables, because the sets were not all read with the same instruments: put each into an element of its own.`,
  notExact:
    'All readings are in it, but an element reads some of them back differently. A link to this car keeps them as they are.',
  aside: (count: number): string =>
    count === 1
      ? 'The reading that was set aside is left out.'
      : `The ${count} readings that were set aside are left out.`,
  noPng: 'This page’s rules, or your browser’s settings, let no PNG be made. The SVG shows the same.',
  svgInstead: 'Save the SVG instead',
  notSaved: 'The file could not be saved. Try again, or use another browser.',
  noTable: 'The table could not be fetched. Check your connection and try again.',
  note: 'Each picture says in words below it what it shows, where its numbers come from and whose they are. It is light whatever the page is. An SVG stays sharp at any size; a PNG can be sent and shown anywhere.',
});
