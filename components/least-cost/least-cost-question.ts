import { loadOf, rollPlace } from '../../core/answers/car-roll.js';
import type { CorneringRequest } from '../../core/answers/cornering-request.js';
import type { LeastCostAnswer } from '../../core/answers/least-cost-answer.js';
import type { LeastCostRequest, LoadInTurn } from '../../core/answers/least-cost-request.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { bumpTravelOf, type CarDocument } from '../../core/document/car.js';
import { LEAST_COSTS } from '../../core/document/cost-weights.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { leastCost } from '../../core/worker/layers/leastCost.generated.js';
import { sourceLayers } from '../car/source-layers.js';
import { AnswerController, type AnswerWay, askCore } from '../element/answer-controller.js';
import type { SheetView } from '../element/sheet-view.js';
import { sheetWith, USUAL_CAMBER_DEG, USUAL_TOLERANCE_DEG, usualHeights, usualWay } from './least-cost-kit.js';

/** What an element about links has on its sheet, as far as the search needs it. */
export interface LinksOnSheet {
  source: AnySource;
  drop: number;
  /** Where the links were measured, mm below stock height. */
  measuredAt: number;
  asItIs: { camber: number };
  window: readonly [number, number];
}

export type LeastCostView = Pick<
  SheetView<LinksOnSheet>,
  'host' | 'car' | 'answeredCar' | 'answer' | 'display' | 'problems' | 'change' | 'endStep' | 'addStyles' | 'announcer'
>;

/** The turn of a car, as the element has it. Its roll is undefined until it is worked out. */
export type TurnOf = (car: CarDocument) => Pick<CorneringRequest, 'tyreRoll' | 'steer'> & { roll: number | undefined };

/** A request, and which settings its lists were made of. */
export interface Asked {
  request: LeastCostRequest<AnySource>;
  keys: Readonly<Record<'joints' | 'springs' | 'bars', readonly string[]>>;
}

/** Of two that may be bought, those that are given. */
function listed<T>(settings: Record<string, unknown>, names: readonly string[], make: (value: number) => T) {
  const given = names.filter((name) => settings[name] !== undefined);
  return {
    keys: given,
    list: given.map((name) => {
      const price = settings[`${name}Price`] as number | undefined;
      return { ...make(settings[name] as number), ...(price !== undefined && { price }) };
    }),
  };
}

/**
 * What is asked about a car; undefined until somebody says what is wanted.
 *
 * @param turn its roll is held where nothing makes it
 */
export function askedOf(
  answer: LinksOnSheet,
  car: CarDocument,
  { roll, ...turn }: ReturnType<TurnOf>,
): Asked | undefined {
  const { leastCost: own = {}, camberReadLower, lowered } = car;
  const { wanted } = car.turn ?? {};
  if (wanted === undefined) return undefined;
  const { source, drop, measuredAt, asItIs, window } = answer;
  const [low, high] = USUAL_CAMBER_DEG;
  const [top, bottom] = usualHeights(car);
  const joints = listed(own, ['joint', 'joint2'], (mm) => ({ mm, correctTieRod: own.rods === 'corrected' }));
  const springs = listed(own, ['spring', 'spring2'], (rate) => ({ rate }));
  const bars = listed(own, ['bar', 'bar2'], (rate) => ({ rate }));
  const load = car.turn?.rollFrom === 'load' ? (loadOf(car, drop) as LoadInTurn) : undefined;
  // The roll that marks show is on its way.
  if (!load && roll === undefined) return undefined;
  const bump = bumpTravelOf(car);
  const limits = {
    ...(own.leastBump !== undefined && { bumpLeft: own.leastBump }),
    ...(own.leastGap !== undefined && { gapStrut: own.leastGap }),
    ...(own.mostBumpSteer !== undefined && { bumpSteer: own.mostBumpSteer }),
    ...(own.mostScrub !== undefined && { scrubChange: own.mostScrub }),
  };
  const weights = Object.fromEntries(LEAST_COSTS.flatMap((cost) => (own[cost] ? [[cost, own[cost]]] : [])));
  const request: LeastCostRequest<AnySource> = {
    source,
    drop,
    measuredAt,
    ...(camberReadLower !== undefined && { camberReadLower }),
    inclination: wanted,
    tolerance: own.tolerance ?? USUAL_TOLERANCE_DEG,
    ...(load ? { load } : { roll: roll! }),
    ...turn,
    camber: {
      from: own.camberFrom ?? Math.min(low, Math.floor(asItIs.camber)),
      to: own.camberTo ?? Math.max(high, Math.ceil(asItIs.camber)),
      ways: [{ way: own.way ?? usualWay(car), ...(own.wayPrice !== undefined && { price: own.wayPrice }) }],
    },
    height: {
      from: own.heightFrom ?? Math.min(top, own.heightTo ?? top),
      to: own.heightTo ?? Math.max(bottom, own.heightFrom ?? bottom),
      ...(own.heightPrice !== undefined && { price: own.heightPrice }),
    },
    ...(lowered && { lowered }),
    joints: joints.list,
    springs: springs.list,
    bars: bars.list,
    window,
    // It is given where the car stands, or where it was measured: lowering since has taken of it.
    ...(bump !== undefined && { bumpLeft: Math.max(0, lowered === 'dampers' ? bump : bump - (drop - measuredAt)) }),
    ...(own.gapStrut !== undefined && { gapStrut: own.gapStrut }),
    ...(Object.keys(limits).length > 0 && { limits }),
    ...(Object.keys(weights).length > 0 && { weights }),
  };
  return { request, keys: { joints: joints.keys, springs: springs.keys, bars: bars.keys } };
}

const OF_LIMITS: Readonly<Record<string, string>> = {
  'limits.bumpLeft': 'leastBump',
  'limits.gapStrut': 'leastGap',
  'limits.bumpSteer': 'mostBumpSteer',
  'limits.scrubChange': 'mostScrub',
  gapStrut: 'gapStrut',
  tolerance: 'tolerance',
  'camber.from': 'camberFrom',
  'camber.to': 'camberTo',
  'camber.ways.0.price': 'wayPrice',
  'camber.ways.0.way': 'way',
  'height.from': 'heightFrom',
  'height.to': 'heightTo',
  'height.price': 'heightPrice',
};

/** Where in the car a problem of the search stands. */
export function pathInCar(path: string, keys: Asked['keys']): string {
  if (path === 'inclination') return 'turn.wanted';
  if (path === 'roll' || path === 'tyreRoll') return `turn.${path}`;
  if (path.startsWith('steer.')) return path.replace('steer.', 'turn.');
  if (path === 'bumpLeft') return 'bumpTravel';
  const own = OF_LIMITS[path];
  if (own) return `leastCost.${own}`;
  if (path.startsWith('load.')) return rollPlace(path) ?? 'load';
  const [list, at, field] = path.split('.');
  const key = keys[list as keyof Asked['keys']]?.[Number(at)];
  return key ? `leastCost.${key}${field === 'price' ? 'Price' : ''}` : path;
}

const ask = askCore('leastCost', [leastCost], ({ source }: { source: AnySource }) => sourceLayers(source));

const SEARCH: AnswerWay<LeastCostAnswer, Asked> = async ({ request, keys }, options) => {
  try {
    return await ask(request, options);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map((one) => inCar(one, { request, keys })));
  }
};

/** Of a span with more steps than are tried its end is at fault: how far it may go. */
function inCar(problem: Problem, { request, keys }: Asked): Problem {
  const [, name] = /^(camber|height)\.step$/.exec(problem.path) ?? [];
  const span = name && request[name as 'camber' | 'height'];
  if (!span) return { ...problem, path: pathInCar(problem.path, keys) };
  const limit = span.from + ((span.to - span.from) * Number(problem.value)) / problem.limit!;
  return { ...problem, path: pathInCar(`${name}.to`, keys), value: span.to, limit: Math.floor(limit + 1e-9) };
}

/**
 * Whether a value cannot stand as it was typed, whatever else is given. What the search cannot reach with it is told beside
 * the search alone.
 */
export const isOfValue = ({ path, code }: Problem): boolean =>
  sheetWith(path) !== undefined &&
  code !== 'wrong-shape' &&
  !(code === 'out-of-range' && (path === 'turn.wanted' || /\.(?:least|most)[A-Z]/.test(path)));

const isSame = (a: Asked | undefined, b: Asked | undefined): boolean =>
  a?.request.source === b?.request.source && textOf(a) === textOf(b);
const textOf = (asked: Asked | undefined): string | undefined =>
  asked && JSON.stringify({ ...asked.request, source: undefined });

/** A pause in a drag, ms. */
const AFTER_MS = 160;

/** What waits for a pause to be over. */
class Pause {
  over: Promise<void> = Promise.resolve();
  #end: (() => void) | undefined;

  begin(): void {
    if (this.#end) return;
    this.over = new Promise((resolve) => {
      this.#end = resolve;
    });
  }

  end(): void {
    this.#end?.();
    this.#end = undefined;
  }
}

/** The setups of the car on the sheet, searched beside the element's own question. */
export class LeastCostSearch {
  readonly #view: LeastCostView;
  readonly #turnOf: TurnOf;
  readonly #answers: AnswerController<LeastCostAnswer, Asked>;
  #asked: Asked | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  readonly #pause = new Pause();

  constructor(view: LeastCostView, turnOf: TurnOf) {
    const { host } = view;
    this.#view = view;
    this.#turnOf = turnOf;
    this.#answers = new AnswerController(host, SEARCH, () => host.requestUpdate());
  }

  ask(): void {
    const { answer, answeredCar, car } = this.#view;
    if (!answer) return;
    // What is asked here changes nothing of the element's own answer: the newest counts.
    const settings = { turn: car.turn, leastCost: car.leastCost, bumpTravel: car.bumpTravel, lowered: car.lowered };
    const asked = askedOf(answer, { ...answeredCar, ...settings } as CarDocument, this.#turnOf(car));
    if (isSame(asked, this.#asked)) return;
    this.#asked = asked;
    clearTimeout(this.#timer);
    if (!asked) {
      this.#pause.end();
      return;
    }
    // A drag, and what is half typed, is let go by: a search takes the worker longer than a frame.
    this.#pause.begin();
    this.#timer = setTimeout(() => {
      if (this.#asked === asked) this.#answers.ask(asked);
      this.#pause.end();
    }, AFTER_MS);
  }

  /** What is asked now; undefined until somebody says what is wanted. */
  get asked(): Asked | undefined {
    return this.#asked;
  }

  /** The newest good answer, and what it was asked by. */
  get found(): { answer: LeastCostAnswer; asked: Asked } | undefined {
    const { answer, answered } = this.#answers;
    return this.#asked && answer && answered ? { answer, asked: answered } : undefined;
  }

  /** Whether that is the answer to what is asked now. */
  get isCurrent(): boolean {
    return this.#answers.answered === this.#asked && this.problems.length === 0;
  }

  get problems(): readonly Problem[] {
    return this.#asked ? this.#answers.problems : [];
  }

  get fault(): string | undefined {
    return this.#asked && this.#answers.fault;
  }

  async settle(): Promise<void> {
    await this.#pause.over;
    await this.#answers.settle();
  }

  retry(): void {
    if (!this.fault) return;
    this.#asked = undefined;
    this.ask();
  }
}
