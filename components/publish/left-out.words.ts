import type { PageCar } from '../../core/document/page-car.js';
import { words } from '../../core/quantity/words.js';
import { counted } from '../element/sentence.js';

/** What a snippet does not have of a car, told to its author. */
export const LEFT_OUT = words('publish/left-out', {
  predictions: (count: number): string =>
    `${counted(count, 'kept prediction')}: a prediction is your own record, so it stays with you.`,
  sets: 'Your sets of parts and readings: this answer is not made from them.',
  curve: 'The curve that a script of the page handed over: give its coefficients instead.',
  linkedCurve: 'The curve: a frame’s address holds measurements and readings, and no curve. Use the element instead.',
  aside: (count: number): string => `${counted(count, 'reading')} that you set aside.`,
  passes: 'The names of your passes: a table of readings could not be read with them, so they are numbered.',
  /** By the field that nothing but JSON can hold. */
  fields: {
    cornerName: 'Which corner of the car it is: a table is taken to be of the front left.',
    by: 'Which of your measurements the answer is made from.',
    given: 'A value that a table cannot say exactly.',
    whole: 'The links of a double wishbone.',
    curve: 'The uncertainty of the curve’s coefficients.',
    setups: 'Sets of parts: what is fitted, the height their zero stood at, or which corner they were read on.',
    setup: 'Which of the sets is shown first.',
    fitted: 'Which set of parts is fitted.',
    drop: 'The drop.',
    dropPlusMinus: 'The ± of the drop.',
    bumpTravel: 'The bump travel.',
    stopGap: 'The gap to the bump stop.',
    limits: 'What else ends travel.',
    compare: 'Which cells of the comparison are chosen.',
    readingsOver: 'The travel over which the readings are told.',
    readingsDegree: 'The degree of the curve.',
    toe: 'What you set for toe, besides the bump it is told over.',
    turn: 'How the turn is described, besides its roll.',
    camberAdded: 'How the ways to add camber are sorted.',
    alignment: 'What stands on the alignment sheet.',
    predict: 'Which angle the prediction is of.',
    links: 'That the links are corrected by readings.',
    leastCost: 'What you said about costs.',
    loads: 'Spring rates, masses and loads.',
    fit: 'Places in the arch, margins, and what else is known of the wheels.',
    lowered: 'How the car was lowered.',
    camberReadLower: 'How much lower the car stood when its camber was read.',
    measuredAt: 'That the car was lowered already when it was measured.',
    other: 'The other side of the axle.',
  } satisfies Readonly<Partial<Record<keyof PageCar, string>>>,
});
