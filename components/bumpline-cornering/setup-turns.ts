import { loadOf } from '../../core/answers/car-roll.js';
import type { CorneringAnswer } from '../../core/answers/cornering-answer.js';
import type { CorneringRequest } from '../../core/answers/cornering-request.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { Corner } from '../../core/linkage/corner.js';
import { InputError } from '../../core/quantity/problem.js';
import { CarSources } from '../car/car-sources.js';
import { rolledIn } from '../car/rolled-question.js';
import { solve } from '../car/solved-sources.js';
import { turnIn } from './cornering-question.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';
import { type StopLeft, stopLeft } from './stop-left.js';

type Request = CorneringRequest<AnySource>;

/** More than a phone's screen compares; the first sets of the list. */
const MOST_SETS = 4;

/** One setup in the turn, static camber as the height leaves it and set again. */
export interface SetupTurn {
  drop: number;
  set: LinkedSet | undefined;
  /** What stands in the sentence. */
  isNow: boolean;
  /** Undefined where a wheel does not reach. */
  asLeft: CorneringAnswer | undefined;
  setAgain: CorneringAnswer | undefined;
  /** Of the body on its springs, degrees: each setup’s own where the lateral acceleration is held. */
  roll: number | undefined;
}

interface Setup {
  drop: number;
  set: LinkedSet | undefined;
  source: AnySource;
}

/** The car's setups in the same turn: at stock height, at the drop, and at the drop with each set of parts. */
export class SetupTurns {
  readonly #view: CorneringView;
  #asked: TurnOnSheet | undefined;
  #found: TurnOnSheet | undefined;
  #run: Promise<void> = Promise.resolve();
  #rows: readonly SetupTurn[] = [];
  #level: CorneringAnswer | undefined;
  #camber: number | undefined;
  #corner: Corner | undefined;
  #stop: StopLeft | undefined;
  #fault: string | undefined;

  constructor(view: CorneringView) {
    this.#view = view;
  }

  /** The last that were found whole. */
  get rows(): readonly SetupTurn[] {
    return this.#rows;
  }

  /** What stands in the sentence, but without roll. */
  get level(): CorneringAnswer | undefined {
    return this.#level;
  }

  /** To which static camber is set again, degrees: what was typed, else that of stock height. */
  get camber(): number | undefined {
    return this.#camber;
  }

  /** The links themselves, without parts. */
  get corner(): Corner | undefined {
    return this.#corner;
  }

  /** What stop and damper leave of bump where the car stands, where somebody told. */
  get stop(): StopLeft | undefined {
    return this.#stop;
  }

  /** Whether the rows are those of an answer. */
  isOf(answer: TurnOnSheet): boolean {
    return this.#found?.request === answer.request;
  }

  get fault(): string | undefined {
    return this.#fault;
  }

  get settled(): Promise<void> {
    return this.#run;
  }

  /** Asks for the turn of the newest answer. */
  ask(): void {
    const { answer } = this.#view;
    if (!answer || this.#asked?.request === answer.request) return;
    this.#asked = answer;
    this.#run = this.#find(answer);
  }

  /** Asks again what came to a fault. */
  retry(): void {
    if (!this.#fault) return;
    this.#asked = undefined;
    this.ask();
  }

  async #find(answer: TurnOnSheet): Promise<void> {
    const { request } = answer;
    const isNewest = () => this.#asked === answer;
    const car = this.#view.answeredCar;
    const turn = async (
      changed: Partial<Request>,
    ): Promise<(CorneringAnswer & { suspensionRoll?: number }) | undefined> => {
      if (!isNewest()) return undefined;
      const { camber: _, ...others } = request;
      const asked = { ...others, ...changed };
      try {
        // The body level is level at any load.
        if (answer.load && changed.roll === undefined) {
          return await rolledIn({ ...asked, by: { load: loadOf(car, asked.drop) } }, {});
        }
        return await turnIn(asked, {});
      } catch (error) {
        // Another setup may not reach what this one does.
        if (error instanceof InputError) return undefined;
        throw error;
      }
    };
    try {
      const given = car.turn?.camber;
      const level = await turn({ roll: 0, ...(given !== undefined && { camber: given }) });
      const rows: SetupTurn[] = [];
      let camber = given;
      for (const { drop, set, source } of this.#setups(answer)) {
        const asLeft = await turn({ source, drop });
        camber ??= asLeft?.outer.bars.static;
        const setAgain = camber === undefined ? undefined : await turn({ source, drop, camber });
        if (!isNewest()) return;
        const isNow = drop === answer.drop && set?.setup === answer.set?.setup;
        rows.push({ drop, set, isNow, asLeft, setAgain, roll: asLeft?.suspensionRoll });
      }
      const solved = await solve(this.#bare(answer), { slot: {} });
      const stop = await stopLeft(car, request.source);
      if (!isNewest()) return;
      this.#corner = 'problems' in solved ? undefined : solved.links?.corner;
      this.#stop = stop;
      this.#found = answer;
      this.#level = level;
      this.#camber = camber;
      this.#rows = rows;
      this.#fault = undefined;
    } catch (error) {
      if (!isNewest()) return;
      this.#fault = error instanceof Error ? error.message : String(error);
    }
    this.#view.host.requestUpdate();
  }

  /** What stands in the sentence, with no parts on. */
  #bare({ request }: Pick<TurnOnSheet, 'request'>): AnySource {
    const { model, answeredCar, hasLinks } = this.#view;
    return hasLinks ? CarSources.of(model).ofCorner(answeredCar) : request.source;
  }

  #setups({ drop, request }: TurnOnSheet): Setup[] {
    const { model, answeredCar: car, hasLinks, sets } = this.#view;
    const sources = CarSources.of(model);
    const bare = this.#bare({ request });
    const heights = drop === 0 ? [0] : [0, drop];
    const listed = hasLinks ? sets.slice(0, MOST_SETS) : [];
    return [
      ...heights.map((height): Setup => ({ drop: height, set: undefined, source: bare })),
      ...listed.flatMap((set): Setup[] => {
        const source = sources.ofParts(car, set.setup);
        return source ? [{ drop, set, source }] : [];
      }),
    ];
  }
}
