/** Longer a part of a name is of no use, and some drives take no more than 255 bytes in all. */
const LONGEST_PART = 40;

/** A name as every drive takes it: letters and digits, joined by hyphens. Empty of one that has none. */
export const safeName = (text: string): string =>
  [
    ...text
      .normalize('NFC')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
      .replace(/^-/, ''),
  ]
    .slice(0, LONGEST_PART)
    .join('')
    .replace(/-$/, '');

/** `bumpline-lowering-drawing-front-left.svg` */
export const fileName = (parts: readonly string[], ending: string): string =>
  `${parts.map(safeName).filter(Boolean).join('-')}.${ending}`;
