import { cornerSourceOf } from '../../core/answers/car-request.js';
import type { CamberSource } from '../../core/curve-sources/source.js';
import { type CarDocument, drivewayOf, givenPointCount, hasMeasured } from '../../core/document/car.js';
import { givenBy } from '../../core/document/provenance.js';
import { STRUT_POINT_KEYS } from '../../core/linkage/corner.js';
import { DRIVEWAY_COUNT, measuredCount } from '../car/measured-count.js';
import { say } from '../element/sentence.js';
import { FIRST } from './first.words.js';

/** The car's own curve, by what was given of its corner besides readings. */
export interface OwnCurve {
  /** For people: "Your hard points", "This page’s measurements". */
  name: string;
  /** Where not all of it was given: "4 of 6". */
  count?: string;
  by: 'user' | 'page' | 'example';
  kind: CamberSource['kind'] | 'learnt';
  /** What stands in for what is missing. */
  standIn?: string | undefined;
  /** Whether camber itself is known, and not its changes alone. */
  knowsCamber: boolean;
}

const { own: WORDS } = FIRST;

/** The example's links, where parts are to be put on and nothing of a car was given. */
export function exampleCurveOf(car: CarDocument): OwnCurve | undefined {
  const { kind } = cornerSourceOf(car);
  if (kind !== 'driveway' && kind !== 'corner') return undefined;
  return {
    name: WORDS.example,
    by: 'example',
    kind,
    count: WORDS.invented,
    standIn: WORDS.enterYours,
    knowsCamber: true,
  };
}

/** Undefined where nothing was given that a curve could come from: the example is not the car's. */
export function ownCurveOf(car: CarDocument): OwnCurve | undefined {
  const { given, whole, curve } = car;
  const by = !curve && givenBy(car, 'corner') === 'user' ? 'user' : 'page';
  if (!curve && whole === undefined && !hasMeasured(given) && givenPointCount(car) === 0) return undefined;
  const source = cornerSourceOf(car);
  if (source.kind === 'readings' || source.kind === 'parts') return undefined;
  // Readings correct what was measured: how much of that was given counts as before.
  const { kind } = source.kind === 'learnt' ? source.of : source;
  const isPart = kind === 'driveway' || (kind === 'corner' && whole === undefined);
  const [count, all] =
    kind === 'driveway' ? [measuredCount(car), DRIVEWAY_COUNT] : [givenPointCount(car), STRUT_POINT_KEYS.length];
  // The other kind of which nothing was given: the example would answer.
  if (isPart && count === 0) return undefined;
  const isWhole = !isPart || count >= all;
  return {
    name: say(by === 'user' ? WORDS.yours : WORDS.pages, { what: WORDS[source.kind] }),
    by,
    kind: source.kind,
    ...(!isWhole && {
      count: say(WORDS.count, { count: String(count), all: String(all) }),
      standIn: kind === 'driveway' ? WORDS.restAssumed : WORDS.restExample,
    }),
    knowsCamber:
      kind === 'driveway'
        ? drivewayOf(car).camber !== undefined
        : kind !== 'corner' || whole !== undefined || given.camber !== undefined,
  };
}
