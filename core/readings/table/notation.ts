import { decimalMark } from '../../quantity/format.js';
import { type Parsed, parseQuantity } from '../../quantity/parse.js';
import type { Quantity } from '../../quantity/quantities.js';
import { ARCMINUTES_PER_DEGREE, METRIC, mmFromInches, type UnitSystem } from '../../quantity/units.js';
import type { Asker } from './ask.js';
import { withoutMarks } from './cell-kind.js';
import type { CellUnit, UnderstandOptions } from './understanding.js';

/** A cell that counts, with what its column says of it. */
export interface Figure {
  at: [row: number, column: number];
  text: string;
  quantity: Quantity;
  unit: CellUnit;
  /** The column's unit was named, or degrees and minutes were. */
  hasUnit: boolean;
  inMinutes: boolean;
}

/** How the sheet writes its numbers. */
export interface Notation {
  read(figure: Figure): Parsed;
}

const ENDS_IN_DIGIT = /[\d.,¼-¾⅐-⅞]$/;
const isAngle = ({ unit }: Figure) => unit === 'degrees' || unit === 'arcminutes';
/** A bare number with decimals: its whole part, mark and decimals. */
const DECIMALS = /^\D{0,2}(\d*)([.,])(\d+)$/;
/** The same with two decimals that can be minutes, as in 1.30 for 1°30′. */
export const AS_MINUTES = /^\D{0,2}(\d*)[.,]([0-5]\d)$/;
const plain = (text: string) =>
  withoutMarks(text)
    .replace(/(?:mm|cm|in|inch|inches|°|deg|["”″])\.?$/i, '')
    .trim();

function parse({ text, quantity, unit, at }: Figure, angle: UnitSystem['angle'] = 'degrees'): Parsed {
  const bare = withoutMarks(text);
  const mark = unit === 'cm' ? ' cm' : unit === 'arcminutes' ? "'" : '';
  if (unit === 'thou') return fromThou(bare, quantity, `rows.${at.join('.')}`);
  const suffix = mark && ENDS_IN_DIGIT.test(bare) ? mark : '';
  return parseQuantity(bare + suffix, quantity, { length: unit === 'in' ? 'in' : 'mm', angle }, `rows.${at.join('.')}`);
}

const THOU = /\s*(?:thou(?:sandths?)?|mils?)\.?$/i;
/** Read as so many mm, so that the marks of a number mean what they mean elsewhere. */
function fromThou(text: string, quantity: Quantity, path: string): Parsed {
  const parsed = parseQuantity(text.replace(THOU, ''), quantity, METRIC, path);
  if (parsed.ok) return { ...parsed, value: mmFromInches(parsed.value / 1000) };
  const { choices } = parsed.problem;
  return choices
    ? { ok: false, problem: { ...parsed.problem, choices: choices.map((one) => mmFromInches(one / 1000)) } }
    : parsed;
}

/** 0.75 or 0.125 cannot be degrees and minutes, and who writes it means decimals everywhere. */
function isSurelyDecimal({ text }: Figure): boolean {
  const bare = withoutMarks(text);
  return DECIMALS.test(bare) && !/[.,]00?$/.test(bare) && !AS_MINUTES.test(bare);
}

/** Degrees by both ways of reading; undefined where the figure cannot be degrees and minutes. */
function bothWays(figure: Figure): [decimal: number, minutes: number] | undefined {
  const [, degrees, minutes] = AS_MINUTES.exec(withoutMarks(figure.text)) ?? [];
  const parsed = parse(figure, 'degrees');
  const decimal = parsed.ok ? parsed.value : parsed.problem.choices?.[0];
  if (minutes === undefined || minutes === '00' || decimal === undefined) return undefined;
  return [decimal, Math.sign(decimal) * (Number(degrees) + Number(minutes) / ARCMINUTES_PER_DEGREE)];
}

/** Which marks stand before decimals beyond doubt, by any cell with other than three digits behind one. */
function provenMarks(texts: Iterable<string>): Set<string> {
  const proven = new Set<string>();
  for (const text of texts) {
    const [, whole, mark, decimals] = DECIMALS.exec(plain(text)) ?? [];
    if (mark && (decimals!.length !== 3 || !/^[1-9]/.test(whole!) || whole!.length > 3)) proven.add(mark);
  }
  return proven;
}

/** What 1,500 is, and whether 1.30 is degrees and minutes: by the evidence of all cells, else asked once for all. */
export function notationOf(figures: readonly Figure[], options: UnderstandOptions, asker: Asker): Notation {
  const proven = provenMarks(figures.map(({ text }) => text));
  const markOf = (text: string) => (text.includes(',') ? ',' : '.');
  /** The reading that the sheet's other cells settle, or undefined. */
  const settled = ({ text }: Figure): 0 | 1 | undefined => {
    const mark = markOf(text);
    if (options.language !== undefined) return decimalMark(options.language) === mark ? 0 : 1;
    return proven.has(mark) && !proven.has(mark === ',' ? '.' : ',') ? 0 : undefined;
  };
  const lengths = new Map(figures.filter((figure) => !isAngle(figure)).map((figure) => [figure, parse(figure)]));
  const doubtful: { figure: Figure; choices: number[] }[] = [];
  for (const [figure, parsed] of lengths) {
    const choices = parsed.ok ? undefined : parsed.problem.choices;
    if (choices && settled(figure) === undefined) doubtful.push({ figure, choices });
  }
  let comma: string | undefined;
  if (doubtful.length > 0) {
    const { figure, choices } = doubtful[0]!;
    comma = asker.ask({
      id: 'comma',
      code: 'comma',
      cells: doubtful.map((one) => one.figure.at),
      example: figure.text,
      choices: [
        { id: 'decimal', value: choices[0]! },
        { id: 'thousands', value: choices[1]! },
      ],
      likeliest: 'decimal',
    });
  }
  const areMinutes = minutesOf(figures, options, asker);
  const headed = figures.filter(({ inMinutes }) => inMinutes);
  const headedAreMinutes = !headed.some(isSurelyDecimal);

  return {
    read: (figure) => {
      const asMinutes =
        isAngle(figure) && figure.unit === 'degrees' && (figure.inMinutes ? headedAreMinutes : areMinutes(figure));
      const both = asMinutes ? bothWays(figure) : undefined;
      if (both) return within(both[1], figure);
      const parsed = lengths.get(figure) ?? parse(figure);
      if (parsed.ok || !parsed.problem.choices) return parsed;
      const { choices } = parsed.problem;
      if (isAngle(figure)) return within(choices[0]!, figure);
      const which = settled(figure) ?? (comma === 'thousands' ? 1 : 0);
      return within(choices[which]!, figure);
    },
  };
}

/** One of several readings of a text, which may be an impossible one. */
function within(value: number, figure: Figure): Parsed {
  const parsed = parseQuantity(value.toFixed(9), figure.quantity, METRIC, `rows.${figure.at.join('.')}`);
  return parsed.ok ? { ok: true, value } : { ok: false, problem: { ...parsed.problem, value: figure.text } };
}

function minutesOf(figures: readonly Figure[], options: UnderstandOptions, asker: Asker): (figure: Figure) => boolean {
  const open = figures.filter(
    (figure) => isAngle(figure) && figure.unit === 'degrees' && !figure.inMinutes && !figure.hasUnit,
  );
  const withDecimals = open.filter(({ text }) => DECIMALS.test(withoutMarks(text)));
  const twofold: { figure: Figure; choices: number[] }[] = [];
  for (const figure of withDecimals) {
    const choices = bothWays(figure);
    if (choices) twofold.push({ figure, choices });
    else if (isSurelyDecimal(figure)) return () => false;
  }
  const example = twofold.find(({ figure }) => !parse(figure, options.units.angle).ok);
  if (!example) return () => false;
  const whole = new Set(twofold.map(({ choices }) => Math.trunc(choices[0]!)));
  const minutesAreLikely = options.units.angle === 'arcminutes' || (whole.size > 2 && twofold.length >= 12);
  const chosen = asker.ask({
    id: 'minutes',
    code: 'minutes',
    cells: twofold.map(({ figure }) => figure.at),
    example: example.figure.text,
    choices: [
      { id: 'decimal', value: example.choices[0]! },
      { id: 'minutes', value: example.choices[1]! },
    ],
    likeliest: minutesAreLikely ? 'minutes' : 'decimal',
    published: 'decimal',
  });
  return ({ hasUnit }) => chosen === 'minutes' && !hasUnit;
}
