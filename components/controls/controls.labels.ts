import { words } from '../../core/quantity/words.js';

/** English words of the controls. */
export const CONTROLS = words('controls/controls', {
  copied: 'Copied.',
  selected: 'The text is selected: copy it with your keyboard or by a long press.',
  copyLink: 'Copy a link to this car',
  shared: 'Shared.',
  noLink: 'The link could not be made. Check your connection and try again.',
  tooLong: (most: number): string =>
    `This car is too long for a link: mail and chat programs cut off links over ${most} characters. The address does not hold it either, so a reload would lose it. Save it as a file.`,
  saveFile: 'Save it as a file',
  saved: 'Saved as a file. “Open a file” reads it again, here or on another page.',
  notSaved: 'The file could not be saved. Check your connection and try again.',
  fileName: 'bumpline-car.json',
  openFile: 'Open a file',
  opened: 'open a file',
  isOpen: (name: string): string => `${name} is open.`,
  notOpened: 'The file could not be opened. Check your connection and try again.',
  noJson: 'There is no car in this file. Nothing was changed. Choose a file that was saved here (bumpline-car.json).',
  badFile: (path: string, value: string): string =>
    `In this file ${path} is ${value}, which cannot be read. Nothing was changed. Choose a file just as it was saved here.`,
  nothing: 'missing',
  lengths: 'Lengths in',
  angles: 'Angles in',
  degrees: 'degrees',
  arcminutes: 'deg, min',
  numbers: 'Show numbers',
  numbersOnPaper: 'Numbers',
  copyNumbers: 'Copy as CSV',
  csv: 'Numbers as CSV',
});
