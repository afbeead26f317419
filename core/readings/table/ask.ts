import { readLengthAttribute } from '../../quantity/attribute.js';
import type { SheetQuestion, UnderstandOptions } from './understanding.js';

/** A question before it is known whether it is answered; without choices a number of mm is asked for. */
export type Draft = Pick<
  SheetQuestion,
  'id' | 'code' | 'cells' | 'example' | 'groups' | 'isApart' | 'isGuess' | 'by'
> & {
  choices?: SheetQuestion['choices'];
  /** Numbers that can be an answer, mm. */
  range?: readonly [least: number, most: number];
  /** The likeliest answer; undefined where nothing speaks for one. */
  likeliest?: string;
  /** Of a published table, where nobody is asked; the likeliest by default. */
  published?: string;
};

/** Cells that cannot be read with certainty before these are answered. */
const ABOUT_CELLS: readonly SheetQuestion['code'][] = ['pairs', 'comma', 'minutes', 'unit', 'base', 'front-sign'];

/** Collects what the sheet does not say, and gives the answers that count now. */
export class Asker {
  readonly questions: SheetQuestion[] = [];
  /** Id of the open question that a cell waits for, by `row,column`. */
  readonly waiting = new Map<string, string>();
  readonly #options: UnderstandOptions;

  constructor(options: UnderstandOptions) {
    this.#options = options;
  }

  /** Nobody can be asked about a published table. */
  get isPublished(): boolean {
    return this.#options.language !== undefined;
  }

  /** The user's answer where it is one, else the likeliest. */
  ask({
    id,
    code,
    cells,
    example,
    choices = [],
    range = [0, 0],
    likeliest,
    published = likeliest,
    groups,
    isApart,
    isGuess,
    by,
  }: Draft): string | undefined {
    const given = this.#options.answers?.[id];
    const mm = numberIn(given) ?? Number.NaN;
    const isAnswer =
      given !== undefined &&
      (choices.length > 0 ? choices.some((choice) => choice.id === given) : mm >= range[0] && mm <= range[1]);
    if (isAnswer) likeliest = given;
    if (this.isPublished) return isAnswer ? given : published;
    if (!isAnswer && ABOUT_CELLS.includes(code)) for (const at of cells) this.waiting.set(at.join(), id);
    this.questions.push({
      id,
      code,
      cells,
      example,
      choices,
      ...(groups && { groups }),
      ...(isApart !== undefined && { isApart }),
      ...(choices.length === 0 && { range }),
      ...(isGuess && !isAnswer && { isGuess }),
      ...(by && { by }),
      ...(likeliest !== undefined && { chosen: likeliest }),
      isAnswered: isAnswer,
    });
    return likeliest;
  }
}

/** Of an answer: mm, with a decimal point. */
export function numberIn(answer: string | undefined): number | undefined {
  const read = answer === undefined ? undefined : readLengthAttribute(answer, 'coordinate', 'answer');
  return read?.ok ? read.value : undefined;
}
