import type { PropertyValues } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { type LinkedSet, linkedSets } from '../../core/document/linked-sets.js';
import type { Setup } from '../../core/document/setup.js';
import { fitSetup } from '../../core/document/setup-in-use.js';
import { withPageSetups } from '../../core/document/setups.js';
import type { Problem } from '../../core/quantity/problem.js';
import { givenSetups, setupProblems } from '../page-data/given-setups.js';
import { CornerApp, type CornerHost } from './corner-app.js';
import { partCautions } from './part-cautions.js';

/** What a page may say of one corner's links and of the parts on them. */
export interface LinkedHost extends CornerHost {
  corner: unknown;
  setups: readonly Setup[] | undefined;
}

/** The app of an element that is about one corner's links and which set of parts is on. */
export abstract class LinkedApp<
  Host extends LinkedHost,
  Answer extends { drop: number },
  Request extends object,
> extends CornerApp<Host, Answer, Request> {
  /** Which of the example's sets somebody chose: nothing of anybody's car. */
  #chosenExample: number | undefined;

  /** The sets of parts of the car as it is edited. */
  get sets(): readonly LinkedSet[] {
    return linkedSets(this.car);
  }

  /** Which of them is on; below 0: none. */
  get shown(): number {
    const { sets, car } = this;
    return sets[0]?.by === 'example' ? (this.#chosenExample ?? this.exampleShown) : this.shownOf(car, sets);
  }

  /** Which of the example's sets is on until somebody chooses. */
  protected abstract get exampleShown(): number;
  /** Which of somebody's own sets is on. */
  protected abstract shownOf(car: CarDocument, sets: readonly LinkedSet[]): number;
  /** What a change of the set is called where it is taken back. */
  protected abstract readonly chosenStep: string;

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('setups')) this.loadSetups();
  }

  protected loadSetups(): void {
    const { setups } = this.host;
    this.pageGivesSetups(setups && givenSetups(setups), setups ? setupProblems(setups) : []);
  }

  protected pageGivesSetups(given: readonly Setup[] | undefined, problems: Problem[]): void {
    const isAny = given !== undefined && given.length > 0;
    this.cars.pageGives('setups', (car) => withPageSetups(car, given), isAny, true, problems);
  }

  /** Of all parts in its sets, whichever is on. */
  protected get partHazards(): string[] {
    return partCautions(this.sets.map(({ setup }) => setup));
  }

  /** Has another of the sets on; below 0: none. */
  choose(set: number): void {
    const { by, index } = this.sets[Math.max(set, 0)]!;
    if (by !== 'example') {
      this.change('setups', this.chosenStep, (car) => fitSetup(car, set < 0 ? undefined : index));
      return;
    }
    this.#chosenExample = set;
    this.speak();
    this.ask();
    this.host.requestUpdate();
  }
}
