import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { MOST_PLACES } from '../../core/document/fitment.js';
import { fitmentInUse } from '../../core/document/fitment-in-use.js';
import { isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { ownFitment, wheelInUse } from '../../core/document/wheels-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { tyreDimensions } from '../../core/wheel/tyre-dimensions.js';
import { upper } from '../element/sentence.js';
import { runOf as carRunOf, sheetOf as carSheetOf, firstMissing, listOf, sheetOfPath } from '../inputs/car-sheets.js';
import { renderInputRow } from '../inputs/input-row.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import { LIMIT_SHEETS } from '../inputs/limit-sheets.js';
import { problemText as carProblemText } from '../inputs/sheet.labels.js';
import { sheetProblemText } from '../inputs/sheet-problem.js';
import type { SheetField, SheetSpec } from '../inputs/sheet-spec.js';
import { fittedProblemText } from '../parts/fitted-problem.js';
import { NAMES, problemText, rimText } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';
import { amountText } from './clearance-lists.js';
import type { ClearanceView } from './clearance-view.js';
import { limitsOfDriveway, STEERED_KEY } from './doubt-words.js';
import { FINE_SHEETS, WHEEL_SHEETS } from './fitment-sheets.js';
import { drawnPlace, type PendingPlaces, placeSheet } from './place-sheet.js';
import { renderWhereWheel } from './where-wheel.js';

type View = Pick<ClearanceView, 'car' | 'display'>;

/** What is chosen of a place that is still to come: one an element. */
const pending = new WeakMap<View, PendingPlaces>();

function pendingOf(app: View): PendingPlaces {
  const found = pending.get(app) ?? new Map();
  pending.set(app, found);
  return found;
}

function fitmentSheetOf(app: View, key: string): SheetSpec | undefined {
  const index = /^places\.(\d+)$/.exec(key)?.[1];
  if (index !== undefined && Number(index) < MOST_PLACES) return placeSheet(Number(index), app.car, pendingOf(app));
  return [...WHEEL_SHEETS, ...FINE_SHEETS].find((sheet) => sheet.key === key);
}

/** Own places, and the one to come. */
const placeCount = (car: CarDocument): number => ownFitment(car).places?.length ?? 0;

/** Wheels, one place after the other, then what ends travel: in the order in which one leads to the next. */
const fitmentRun = (app: View): SheetSpec[] => [
  ...WHEEL_SHEETS,
  ...Array.from({ length: placeCount(app.car) + 1 }, (_, i) => fitmentSheetOf(app, `places.${i}`)!),
  carSheetOf('stopGap')!,
  LIMIT_SHEETS[0]!,
  ...FINE_SHEETS.filter(({ key }) => key === 'lock'),
];

/** The first of them that nobody gave, then of how the wheel moves; a place more is never missing. */
export function firstMissingFitment(app: View): SheetSpec | undefined {
  const { car } = app;
  const isMissing = ({ key, read }: SheetSpec) =>
    !read(car) && (key !== `places.${placeCount(car)}` || placeCount(car) === 0);
  const missing = fitmentRun(app).find(isMissing);
  if (missing) return missing;
  const motion = firstMissing(car);
  if (motion && motion.key !== 'bumpTravel') return isUsers(car, 'corner') ? motion : carSheetOf('way');
  return steeredRun(car).find(({ read }) => !read(car));
}

/** What is asked besides of a wheel that steers. */
const steeredRun = (car: CarDocument): SheetSpec[] =>
  sourceKindOf(car) === 'driveway' && fitmentInUse(car).lock ? [carSheetOf(STEERED_KEY)!] : [];

export function fitmentSheetOfPath(
  app: View,
  path: string,
): { sheet: SheetSpec; field: SheetField | undefined } | undefined {
  // A width is missing where the rim is not the tyre's: that is to be looked at first.
  const rim = /^(before|after)\.sectionWidth$/.exec(path)?.[1];
  if (rim) {
    const sheet = WHEEL_SHEETS.find(({ key }) => key === rim)!;
    return { sheet, field: sheet.fields.find(({ path: at }) => at === `${rim}.rimWidthInch`) };
  }
  const place = /^places\.\d+/.exec(path)?.[0];
  const sheets = place ? [fitmentSheetOf(app, place)!] : [...FINE_SHEETS, ...WHEEL_SHEETS];
  for (const sheet of sheets) {
    const field = sheet?.fields.find((one) => one.path === path);
    if (sheet && (field || sheet.key === place || path === sheet.key || path === `${sheet.key}.size`))
      return { sheet, field };
  }
  return sheetOfPath(path === 'limits.stopGap' ? 'stopGap' : path);
}

/** A problem in words, by the sheets of the fitment or of the car. */
export function describeProblem(app: View, problem: Problem, open?: SheetSpec): string {
  const { display, car } = app;
  const { path, code } = problem;
  const ofParts = fittedProblemText(problem, car, display);
  if (ofParts !== undefined) return ofParts;
  const own = /^plusMinus\.(.+)$/.exec(path)?.[1];
  const sure = own === undefined ? undefined : fitmentSheetOf(app, own);
  if (sure) return sheetProblemText(sure, problem, display)!;
  const which = path.startsWith('before') ? 'before' : 'after';
  if (path === `${which}.sectionWidth` && code === 'missing') {
    const { spec, whose } = wheelInUse(car, which);
    const { fit, permittedRimInch } = tyreDimensions(spec.size, spec.rimWidthInch);
    // Two values of different people need not go together.
    const other = (value: 'size' | 'rimWidthInch', text: string) =>
      whose[value] === 'example' || whose[value] === 'page' ? text : '';
    const stands =
      whose.size === whose.rimWidthInch
        ? ''
        : other('size', NAMES.sizeNotYours) + other('rimWidthInch', NAMES.rimNotYours);
    return rimText(spec, fit === 'stretched', which === 'before', permittedRimInch, stands, display.language);
  }
  const isFitment = /^(before|after|places|margin|allowance|camberBy|sideways|lock|drop|plane|limits|loads)/.test(path);
  return isFitment
    ? problemText(problem, display, (at) => fitmentSheetOfPath(app, at))
    : carProblemText(problem, display, open);
}

/** "Too close to tell: arch lip at 12 o’clock, 8 ± 7 mm." */
function answerLine({ answer, asked, display }: ClearanceView): string | undefined {
  if (!answer || !asked || answer.worst === undefined) return undefined;
  const found = answer.places[answer.worst]!;
  const name = placeName(asked.places[answer.worst]!, asked.isLeft).replace(NAMES.article, '');
  return `${upper(verdictText(found))}: ${name}, ${amountText(found.decisive, display)}.`;
}

/** The sheets of wheels, places and limits, and under them those of the car's geometry. */
export const fitmentKit = (app: ClearanceView, car: SheetKit): SheetKit => ({
  ...car,
  sheetOf: (key) => fitmentSheetOf(app, key) ?? car.sheetOf(key),
  // Wheels, places and stop are one run; how the wheel moves is another, and the gap says in it what bump travel would.
  runOf: (document, { key }) => {
    const own = fitmentRun(app);
    return own.some((sheet) => sheet.key === key)
      ? own
      : [...carRunOf(document).filter((sheet) => sheet.key !== 'bumpTravel'), ...steeredRun(document)];
  },
  drawn(sheet) {
    if (WHEEL_SHEETS.includes(sheet)) return renderWhereWheel();
    const index = /^places\.(\d+)$/.exec(sheet.key)?.[1];
    if (index === undefined) return car.drawn?.(sheet) ?? nothing;
    return drawnPlace(Number(index), app.car, pendingOf(app));
  },
  answer: () => answerLine(app),
  describeProblem: (problem, sheet) => describeProblem(app, problem, sheet),
  standIn: (sheet) => sheet.standIn?.(app.car) ?? car.standIn?.(sheet),
});

/** Every number the answer rests on, each a button that opens its sheet. */
export function renderFitmentInputs(
  app: View,
  onSelect: (key: string) => void,
  /** Whether what nobody gave is shown as what stands in for it; a page's own data that cannot be read has nothing in its place. */
  standsIn = true,
): TemplateResult {
  const { car, display } = app;
  const standIn = (sheet: SheetSpec) => (standsIn ? sheet.standIn?.(car) : undefined);
  const rows = (sheets: readonly SheetSpec[]) =>
    sheets.map((sheet) =>
      renderInputRow(sheet, { car, display, standIn: standIn(sheet), showsOthers: standsIn, onSelect }),
    );
  const shown = standsIn ? fitmentInUse(car).places.length : 0;
  const count = ownFitment(car).places ? placeCount(car) : shown;
  const places = Array.from({ length: count }, (_, i) => fitmentSheetOf(app, `places.${i}`)!);
  const isRead = sourceKindOf(car) === 'readings';
  const fine = FINE_SHEETS.filter(({ key }) => (key === 'sideways' ? isRead : key === 'lock' ? !isRead : true));
  return html`<details class="inputs">
    <summary>${NAMES.numbers}</summary>
    <p class="note">${NAMES.italics} ${limitsOfDriveway(car, display)}</p>
    <ul>
      ${rows(WHEEL_SHEETS)} ${rows(places)}
      <li>
        <button type="button" class="input-row" @click=${() => onSelect(`places.${placeCount(car)}`)}>
          <span class="item">+</span><span class="name">${NAMES.addPlace}</span>
        </button>
      </li>
      ${rows(listOf(car).filter(({ key }) => key === 'bumpTravel'))} ${rows(fine)}
      ${rows(listOf(car).filter(({ key }) => !HEIGHTS.has(key) && !isLimit(key)))}
    </ul>
    <p class="note">${NAMES.looked}</p>
  </details>`;
}

const HEIGHTS = new Set(['stopGap', 'bumpTravel', 'other', 'dropPlusMinus']);
const isLimit = (key: string): boolean => key.startsWith('limits.') || key.startsWith('loads.');
