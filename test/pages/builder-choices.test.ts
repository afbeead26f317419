import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { EXAMPLE_SETUP } from '../../core/document/setups.js';
import {
  type Choices,
  choicesIn,
  FORMS,
  HOSTS,
  PARTS,
  queryOf,
  SPOKEN,
  siteIn,
  widthIn,
} from '../../site/builder/choices.js';
import { madeOf } from '../../site/builder/made.js';
import { OPTIONS, TAGS } from '../../site/builder/options.js';
import { carIn } from '../../site/builder/pasted.js';

const word = fc.string({ maxLength: 20 });

describe('what an author chose on the builder’s page', () => {
  const choices: fc.Arbitrary<Choices> = fc.constantFrom(...TAGS).chain((tag) =>
    fc.record({
      tag: fc.constant(tag),
      form: fc.constantFrom(...FORMS),
      host: fc.constantFrom(...HOSTS),
      show: fc.option(fc.subarray([...PARTS]), { nil: undefined }),
      units: fc.constantFrom('mm' as const, 'in' as const),
      angles: fc.constantFrom('degrees' as const, 'arcminutes' as const),
      language: fc.constantFrom(...SPOKEN),
      theme: fc.constantFrom('' as const, 'light' as const, 'dark' as const),
      width: word,
      at: word,
      text: fc.string(),
      options: fc
        .record(Object.fromEntries(OPTIONS[tag].map((name) => [name, fc.string({ minLength: 1, maxLength: 20 })])), {
          requiredKeys: [],
        })
        .map((options) => ({ ...options }) as Record<string, string>),
    }),
  );

  it('comes back from the address as it was, whatever was typed', () => {
    fc.assert(
      fc.property(choices, (chosen) => {
        const wellFormed = JSON.parse(
          JSON.stringify(chosen).replace(/\\u[dD][89a-fA-F][0-9a-fA-F]{2}/g, '?'),
        ) as Choices;
        const expected = { ...wellFormed, show: wellFormed.show };
        expect(choicesIn(new URLSearchParams(queryOf(expected).toString()))).toEqual(expected);
      }),
      { seed: 14, numRuns: 300 },
    );
  });

  it('is as at first where an address says nothing, or nonsense', () => {
    const first = choicesIn(new URLSearchParams());
    expect(first).toMatchObject({
      tag: 'bumpline-lowering',
      form: 'element',
      host: 'plain',
      show: undefined,
      options: {},
    });
    const odd = new URLSearchParams('element=wing&form=x&host=y&units=ft&theme=red&onclick=alert(1)&drop=30');
    expect(choicesIn(odd)).toEqual({ ...first, options: { drop: '30' } });
    expect(queryOf(first).toString()).toBe('element=lowering');
  });
});

describe('what stands in a field', () => {
  it.each([
    ['your-site.example', 'https://your-site.example/'],
    ['https://a.example/x/bumpline-standalone.js', 'https://a.example/x/'],
    ['/files', '/files/'],
    ['../embed/?v=1', '../embed/'],
  ])('siteIn: %s is %s', (text, site) => {
    expect(siteIn(text)).toBe(site);
  });
  it.each(['', ' ', 'two words', 'a"b', 'a<b'])('siteIn: “%s” is no address', (text) => {
    expect(siteIn(text)).toBeUndefined();
  });
  it('widthIn: pixels of a column, and nothing else', () => {
    expect([widthIn('640'), widthIn(' 320 px ')]).toEqual([640, 320]);
    expect(['', '10', '640%', '40em', '9000', '-640'].map(widthIn)).toEqual(Array(6).fill(undefined));
  });
});

describe('carIn: a car in a pasted text', () => {
  const read = (text: string) => carIn(text, 'camber', 'Pasted');

  it('of hard points and of measurements, parted by tabs, commas or blanks', () => {
    for (const sep of ['\t', ', ', '   ']) {
      const { car, problems } = read(['Ball joint', '-5', '700', '185'].join(sep));
      expect([car.given.points, problems]).toEqual([{ 'lowerArm.ball': [-5, 700, 185] }, []]);
      expect(car).toMatchObject({ by: 'points', provenance: { corner: { by: 'user' } } });
    }
    expect(read('Lower arm length\t338\nStatic camber\t-0.6°').car.given).toMatchObject({
      measures: { armLength: { value: 338 } },
      camber: -0.6,
    });
  });

  it('of readings, in passes and sets', () => {
    const { car, problems } = read(
      'Travel (mm)\tStock 1\tStock 2\tLowered 1\n-20\t0.1\t0.12\t0.2\n0\t-0.1\t-0.1\t0\n20\t-0.3\t-0.3\t-0.1',
    );
    expect(problems).toEqual([]);
    expect(car.setups!.map(({ name, readings }) => [name, readings.length])).toEqual([
      ['Stock', 6],
      ['Lowered', 3],
    ]);
    expect(car.by).toBe('readings');
  });

  it('as JSON: a corner, a whole car, a saved file', () => {
    expect(read(JSON.stringify(EXAMPLE_CORNER)).car.given.points).toMatchObject({ 'lowerArm.ball': [0, 694, 176] });
    expect(read(JSON.stringify({ car: { setups: [EXAMPLE_SETUP] } })).car.setups).toEqual([EXAMPLE_SETUP]);
    const file = { ...EMPTY_CAR, drop: 20, provenance: { drop: { by: 'user' } } };
    expect(read(JSON.stringify(file)).car).toMatchObject({ drop: 20, provenance: { drop: { by: 'user' } } });
  });

  it('names what is not understood, and keeps the rest; of nothing it makes nothing', () => {
    const { car, problems } = read('Ball joint\t-5\t700\t185\nxyz\t1\t2\t3');
    expect(car.given.points).toEqual({ 'lowerArm.ball': [-5, 700, 185] });
    expect(problems).toMatchObject([{ path: 'xyz' }]);
    expect(read('{ "car": ').problems).toMatchObject([{ path: 'JSON' }]);
    expect(read('  ')).toEqual({ car: EMPTY_CAR, problems: [] });
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => void carIn(text, 'toe', 'x')),
      { numRuns: 300 },
    );
  });
});

describe('madeOf: what is copied', () => {
  const known = {
    car: EMPTY_CAR,
    title: 'A title',
    site: 'https://here.example/',
    unknownSite: 'https://your-site.example/',
    integrity: 'sha384-a',
    framesIntegrity: undefined,
    stylesIntegrity: 'sha384-b',
  };
  const made = (query: string) => madeOf(choicesIn(new URLSearchParams(query)), known).html;

  it('has the lines that keep the place of the elements and fetch them, with the author’s address and the file’s hash', () => {
    expect(made('drop=30&units=in&show=chart&width=640').split('\n')).toEqual([
      '<link rel="stylesheet" href="https://your-site.example/bumpline.css" integrity="sha384-b" crossorigin="anonymous">',
      '<script type="module" src="https://your-site.example/bumpline-standalone.js" integrity="sha384-a" crossorigin="anonymous"></script>',
      '<bumpline-lowering drop="30" show="sentence chart" units="in" style="max-width:640px"></bumpline-lowering>',
    ]);
    expect(made('at=files.example')).toContain('src="https://files.example/bumpline-standalone.js"');
    expect(made('form=div&drop=30')).toContain('<div data-bumpline="lowering" data-drop="30">');
  });

  it('has a frame of this site, with the options in its address, and the line that gives it its height', () => {
    expect(made('element=toe&form=frame&drop=30&show=chart&theme=dark').split('\n')).toEqual([
      '<iframe src="https://here.example/embed/toe/?drop=30&amp;show=sentence+chart&amp;theme=dark" title="A title" width="100%" height="900" style="display: block; border: 0" loading="lazy" allow="clipboard-write"></iframe>',
      '<script src="https://here.example/embed/bumpline-frames.js" async></script>',
    ]);
  });
});
