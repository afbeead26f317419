import { type CarDocument, changedByUser } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';

const REMEMBERED_STEPS = 100;

/** What a page says of a car: its corner or curve, heights, sets of readings, wheels with their places, what ends travel; or a whole one. */
export type PagePart = 'source' | 'heights' | 'setups' | 'fit' | 'limits' | 'car';

/** The page's address, where a car is kept in it. */
export interface KeptAddress {
  /** What happened to a link that carries no car. */
  readonly problem: 'newer' | 'damaged' | undefined;
  /** Whether the car came with the address: what a page says of its own car is not about this one. */
  readonly isLinked: boolean;
  /** Whether it is written there, too, and this car is the one of the page that is. */
  readonly isKept: boolean;
  /** Whether the car makes a longer address than programs take: then it is not in there. */
  readonly isTooLong: boolean;
  /** Goes to the place on the page that a freshly opened address names beside its car, once. */
  goToPlace(): void;
  /** One more element wants it; each call wants its `release`. @param keeps whether the car is written there as well */
  hold(host: Element, keeps: boolean): void;
  release(): void;
}

interface Step {
  label: string;
  car: CarDocument;
}

/**
 * The one place where a car's state lives. Elements read `car`, listen to `change`, and change it by `update` only; the document
 * itself is immutable, so a step back is the document before.
 */
export class CarModel extends EventTarget {
  #car: CarDocument;
  #past: Step[] = [];
  #future: Step[] = [];
  #openStep: string | undefined;
  /** By who says it, then by what it is said of. */
  readonly #pageProblems = new Map<object, Map<PagePart, Problem[]>>();
  /** Keeps it in the page's address, where an element was asked to. */
  address?: KeptAddress;
  /** Counts every change, undo and redo included. */
  revision = 0;

  constructor(car: CarDocument) {
    super();
    this.#car = car;
  }

  get car(): CarDocument {
    return this.#car;
  }

  /** What undo would take back, for its button; undefined when there is nothing. */
  get undoLabel(): string | undefined {
    return this.#past[this.#past.length - 1]?.label;
  }

  get redoLabel(): string | undefined {
    return this.#future[this.#future.length - 1]?.label;
  }

  /**
   * Changes the car. Changes with the same `step` one after another (a drag, typing in one field) are one step of undo, until
   * `endStep`.
   */
  update(label: string, recipe: (car: CarDocument) => CarDocument, step?: string): void {
    const next = changedByUser(this.#car, recipe(this.#car));
    if (next === this.#car) return;
    if (step === undefined || step !== this.#openStep) {
      this.#past.push({ label, car: this.#car });
      if (this.#past.length > REMEMBERED_STEPS) this.#past.shift();
    }
    this.#openStep = step;
    this.#future = [];
    this.#set(next);
  }

  endStep(): void {
    this.#openStep = undefined;
  }

  /** Takes the open step back as if it had not begun: what was typed turned out to be no value. */
  cancelStep(step: string): void {
    if (step !== this.#openStep) return;
    this.#openStep = undefined;
    const began = this.#past.pop();
    if (began) this.#set(began.car);
  }

  /** Takes over what a page says (attributes, light DOM): not a step of the user's, so nothing to undo. */
  replace(recipe: (car: CarDocument) => CarDocument): void {
    const next = recipe(this.#car);
    if (next !== this.#car) this.#set(next);
  }

  /** What is wrong with a page's data for this car, whichever of the elements that share it they stand in. */
  pageProblems(part: PagePart): Problem[] {
    return [...this.#pageProblems.values()].flatMap((parts) => parts.get(part) ?? []);
  }

  /** Tells the elements that share the car what is wrong with what a page says in one of them; nothing takes it back. */
  tellPageProblems(by: object, part: PagePart, problems: Problem[]): void {
    const parts = this.#pageProblems.get(by) ?? new Map<PagePart, Problem[]>();
    if (problems.length === 0 && !parts.has(part)) return;
    this.#pageProblems.set(by, parts);
    if (problems.length > 0) parts.set(part, problems);
    else parts.delete(part);
    this.dispatchEvent(new Event('change'));
  }

  /** Another car, with nothing to undo: what a page says is said of it again, on the event `restart`. */
  restart(car: CarDocument): void {
    this.#past = [];
    this.#future = [];
    this.#openStep = undefined;
    this.#car = car;
    this.dispatchEvent(new Event('restart'));
    this.#set(this.#car);
  }

  undo(): void {
    this.#move(this.#past, this.#future);
  }

  redo(): void {
    this.#move(this.#future, this.#past);
  }

  #move(from: Step[], to: Step[]): void {
    const step = from.pop();
    if (!step) return;
    to.push({ label: step.label, car: this.#car });
    this.#openStep = undefined;
    this.#set(step.car);
  }

  #set(car: CarDocument): void {
    this.#car = car;
    this.revision++;
    this.dispatchEvent(new Event('change'));
  }
}
