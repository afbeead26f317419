/** English words of the controls. */
export const CONTROLS = {
  copied: 'Copied.',
  selected: 'The text is selected: copy it with your keyboard or by a long press.',
  copyLink: 'Copy a link to this car',
  lengths: 'Lengths in',
  angles: 'Angles in',
  numbers: 'Show numbers',
  copyNumbers: 'Copy as CSV',
  csv: 'Numbers as CSV',
} as const;
