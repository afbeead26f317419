import fc from 'fast-check';
import { expect, it } from 'vitest';
import { frameSnippetOf, framesScript } from '../../../components/publish/frame-snippet.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { carFromLink } from '../../../core/document/link.js';
import { asPageCar } from '../../../core/document/page-car.js';
import { EXAMPLE_SETUP, withPageSetups } from '../../../core/document/setups.js';
import { cars } from '../../core/document/random-cars.js';
import { fittedCars } from '../../core/document/random-fitments.js';
import { readCars } from '../../core/document/random-setups.js';
import { attributesOf, elementsIn } from './read-markup.js';

const wish = {
  tag: 'bumpline-static-camber',
  site: 'https://your-site.example/',
  title: 'Five ways',
  height: 900,
} as const;

it('frameSnippetOf: its address holds the whole car and the options, whatever they are', () => {
  fc.assert(
    fc.property(fc.oneof(cars, fittedCars, readCars), fc.string(), (car, odd) => {
      const { html } = frameSnippetOf({
        ...wish,
        car,
        title: `A "${odd}"`,
        attributes: { show: 'sentence chart', by: odd },
      });
      const [frame, ...others] = elementsIn(html);
      expect(others).toEqual([]);
      const { src, title } = attributesOf(frame!);
      const url = new URL(src!);
      expect(url.pathname).toBe('/embed/static-camber/');
      expect([...url.searchParams]).toEqual([
        ['show', 'sentence chart'],
        ['by', odd.isWellFormed() ? odd : expect.anything()],
      ]);
      expect(title).toBe(`A "${odd}"`.replace(/\s+/g, ' ').trim());
      const read = carFromLink(url.hash);
      expect(read.ok && asPageCar(read.car)).toEqual(asPageCar({ ...car }));
      expect(html.split('\n')).toHaveLength(1);
    }),
    { seed: 3, numRuns: 100 },
  );
});

it('frameSnippetOf: what a page gave of a car is in it as well, and of the example nothing but the options', () => {
  const page = withPageSetups(EMPTY_CAR, [EXAMPLE_SETUP]);
  const { src } = attributesOf(elementsIn(frameSnippetOf({ ...wish, car: page }).html)[0]!);
  const read = carFromLink(new URL(src!).hash);
  expect(read.ok && read.car.setups).toEqual([EXAMPLE_SETUP]);
  expect(frameSnippetOf({ ...wish, car: EMPTY_CAR, attributes: { drop: '30' } }).html).toBe(
    '<iframe src="https://your-site.example/embed/static-camber/?drop=30" title="Five ways" width="100%" height="900" style="display: block; border: 0" loading="lazy" allow="clipboard-write"></iframe>',
  );
});

it('framesScript: one line, checked by its hash where that is known', () => {
  expect(framesScript('https://your-site.example/')).toBe(
    '<script src="https://your-site.example/embed/bumpline-frames.js" async></script>',
  );
  expect(framesScript('../', 'sha384-x')).toBe(
    '<script src="../embed/bumpline-frames.js" integrity="sha384-x" crossorigin="anonymous" async></script>',
  );
});
