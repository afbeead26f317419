import fc from 'fast-check';

/** What could end, open or bend something in HTML, in a script or in Markdown, and what is in names by rights. */
const MARKS = [
  '<',
  '>',
  '&',
  '"',
  "'",
  '\n',
  '\n\n',
  '</script>',
  '<!--',
  '-->',
  '</table>',
  '*',
  '_',
  '`',
  '|',
  'Pass',
  'ä',
  ' ',
  'a',
  '1',
];

export const nastyText: fc.Arbitrary<string> = fc
  .array(fc.constantFrom(...MARKS), { maxLength: 9 })
  .map((some) => some.join(''));
