import { cornerSourceOf, sourceOfSetup, withParts } from '../../core/answers/car-request.js';
import type { AnySource, LearntSource, PartsSource, ReadingsSource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { learntSourceOf } from '../../core/document/learnt-in-use.js';
import type { Setup } from '../../core/document/setup.js';
import { camberSetupOf, fittedSetup, sourceKindOf } from '../../core/document/setup-in-use.js';
import { pageWide } from '../../core/worker/page-wide.js';
import type { CarModel } from './car-model.js';

/** Cars whose sources are remembered: what undo and redo bring back. */
const REMEMBERED_AT_MOST = 4;

/**
 * The sources of one car's curves, whichever elements share it, known by identity: as long as the immutable parts of the document are
 * the same objects, so is the source, and the core is sent it once and solves it once.
 */
export class CarSources {
  static of(model: CarModel): CarSources {
    const all = pageWide('sources', () => new WeakMap<CarModel, CarSources>());
    const known = all.get(model) ?? new CarSources();
    all.set(model, known);
    return known;
  }

  #known: { parts: readonly unknown[]; source: AnySource | undefined }[] = [];
  readonly #ofSetups = new WeakMap<Setup, ReadingsSource>();
  /** By the corner, and by the list: a set's new name makes no new source. */
  readonly #ofParts = new WeakMap<AnySource, WeakMap<NonNullable<Setup['parts']>, PartsSource | LearntSource>>();

  /** What an answer about the car is made from. */
  of(car: CarDocument): AnySource {
    if (sourceKindOf(car) === 'readings') return this.ofSetup(camberSetupOf(car)!);
    const setup = fittedSetup(car);
    return (setup && this.ofParts(car, setup)) ?? this.ofCorner(car);
  }

  /** The corner with the parts of a set on it; undefined where there is nothing to put them on. */
  ofParts(car: CarDocument, setup: Setup): PartsSource | LearntSource | undefined {
    const of = this.ofCorner(car);
    const ofParts = this.#ofParts.get(of) ?? new WeakMap<NonNullable<Setup['parts']>, PartsSource | LearntSource>();
    this.#ofParts.set(of, ofParts);
    const known = setup.parts && ofParts.get(setup.parts);
    if (known && known.alignment === setup.alignment) return known;
    const source = withParts(of, setup);
    if (source) ofParts.set(setup.parts!, source);
    return source;
  }

  /** The corner itself, whatever readings there are: a curve that is given, what was measured in a driveway, or its hard points; corrected by readings where that is asked for. */
  ofCorner(car: CarDocument): AnySource {
    if (car.curve) return car.curve;
    const read = car.links === 'learnt' ? [car.setups, car.measuredAt] : [];
    return this.#knownBy([...cornerOf(car), car.links, ...read], () => cornerSourceOf(car));
  }

  /** The corner as readings correct it, whether other answers take it so or not; undefined where there is nothing to learn from. */
  ofLearnt(car: CarDocument): LearntSource | undefined {
    return this.#knownBy([...cornerOf(car), 'learnt', 'always', car.setups, car.measuredAt], () => learntSourceOf(car));
  }

  #knownBy<S extends AnySource | undefined>(parts: readonly unknown[], make: () => S): S {
    const known = this.#known.find(
      (one) => one.parts.length === parts.length && one.parts.every((part, i) => part === parts[i]),
    );
    if (known) return known.source as S;
    const source = make();
    this.#known = [...this.#known.slice(1 - REMEMBERED_AT_MOST), { parts, source }];
    return source;
  }

  /** The readings of a set that count. */
  ofSetup(setup: Setup): ReadingsSource {
    const source = this.#ofSetups.get(setup) ?? sourceOfSetup(setup);
    this.#ofSetups.set(setup, source);
    return source;
  }
}

/** What a corner is made from, by identity. */
const cornerOf = ({ by, given, provenance, whole }: CarDocument): unknown[] => [by, given, provenance.corner, whole];
