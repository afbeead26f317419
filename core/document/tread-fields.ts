/** What is read across a tread, as the car document names it: place by place, of up to three runs, and how far a second reading differs. */
export const TREAD_FIELDS = {
  temperature: [
    'hotInner',
    'hotMiddle',
    'hotOuter',
    'changedInner',
    'changedMiddle',
    'changedOuter',
    'againInner',
    'againMiddle',
    'againOuter',
    'hotRepeat',
  ],
  tread: ['treadInner', 'treadMiddle', 'treadOuter', 'treadRepeat'],
} as const;
