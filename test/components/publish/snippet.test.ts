import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { marked } from 'marked';
import { serializeOuter } from 'parse5';
import { describe, expect, it } from 'vitest';
import { readPageCar } from '../../../components/page-data/page-car.js';
import { SNIPPET_TAGS } from '../../../components/publish/relevant.js';
import {
  divSnippetOf,
  jsonSnippetOf,
  type SnippetTag,
  snippetOf,
  tablesOf,
} from '../../../components/publish/snippet.js';
import { loweringRequestOf, sourceOfSetup, toeSourceOf } from '../../../core/answers/car-request.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { byUser } from '../../../core/document/own-car.js';
import { camberSetupOf, setupOn } from '../../../core/document/setup-in-use.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { cars } from '../../core/document/random-cars.js';
import { fittedCars } from '../../core/document/random-fitments.js';
import { readCars } from '../../core/document/random-setups.js';
import { nastyText } from './nasty-text.js';
import { carOnPage } from './page-of.js';
import { elementsIn, tablesIn, textIn } from './read-markup.js';

const anyCar = fc.oneof(cars, fittedCars, readCars);
const user = (more: Partial<CarDocument>): CarDocument => byUser({ ...EMPTY_CAR, ...more });
const POINTS = user({ by: 'points', ...takeCorner(EXAMPLE_CORNER), bumpTravel: 62, drop: 25 });
const { stopGap, ...limits } = EXAMPLE_LIMITS;

/** To the places that a table is read to: a source that is compared is compared so. */
const rounded = (data: unknown): unknown =>
  JSON.parse(JSON.stringify(data ?? null), (_, value) =>
    typeof value === 'number' ? Number(value.toFixed(5)) : value,
  );
/** The ± of every point by itself, whoever said it of all. */
function spelled(data: unknown): unknown {
  const { corner } = (data ?? {}) as { corner?: { plusMinus?: object } };
  return corner ? { ...(data as object), corner: { ...corner, plusMinus: undefined, sure: corner.plusMinus } } : data;
}

/** What each element is asked of a car, but for readings: they are compared where their tables are. */
const question = (tag: SnippetTag, car: CarDocument): unknown => {
  if (tag === 'bumpline-readings') return car.setups?.length ?? 0;
  if (tag === 'bumpline-clearance') return clearanceRequestOf(car);
  if (tag === 'bumpline-compare') return [car.setups?.map(({ name, parts }) => [name, parts]), car.links];
  const { source, limits: ends, ...lowering } = loweringRequestOf(car);
  const asked =
    tag === 'bumpline-lowering' ? { ...lowering, ...ends } : { drop: lowering.drop, measuredAt: lowering.measuredAt };
  const read = camberSetupOf(car);
  const isRead = source.kind === 'readings' && read;
  const of = isRead ? { ...sourceOfSetup(read), readings: read.readings.length } : spelled(source);
  const toe = tag === 'bumpline-toe' ? toeSourceOf(car)?.kind : undefined;
  return { of, asked, toe, on: setupOn(car)?.parts };
};

describe('a snippet has the element asked the same on a page', () => {
  it.each(SNIPPET_TAGS)('%s: of whatever car, with all that it is asked of', (tag) => {
    const kinds: Record<string, number> = {};
    fc.assert(
      fc.property(anyCar, fc.constantFrom('en', 'de'), (car, language) => {
        const { html, by } = snippetOf({ tag, car, language });
        kinds[by] = (kinds[by] ?? 0) + 1;
        const page = carOnPage(tag, html).car;
        // What was set aside is not in a table.
        const isAside = by === 'table' && car.setups?.some(({ setAside }) => setAside);
        if (!isAside) expect(rounded(question(tag, page))).toEqual(rounded(question(tag, car)));
      }),
      { seed: 4, numRuns: 50 },
    );
    expect(kinds.json).toBeGreaterThan(0);
  });

  it('by attributes and a table where these say all of it, and by JSON beside the table where not', () => {
    const table = snippetOf({ tag: 'bumpline-lowering', car: POINTS });
    expect(table.by).toBe('table');
    expect(table.html).toMatch(/^<bumpline-lowering drop="25" bump-travel="62">\n <table lang="en">/);
    expect(table.left).toEqual([]);
    const json = snippetOf({ tag: 'bumpline-lowering', car: { ...POINTS, measuredAt: 15 } });
    expect(json.by).toBe('json');
    expect(
      elementsIn(json.html)
        .map(({ tagName }) => tagName)
        .slice(0, 3),
    ).toEqual(['bumpline-lowering', 'script', 'table']);
    expect(carOnPage('bumpline-lowering', json.html).car).toMatchObject({ measuredAt: 15, drop: 25, bumpTravel: 62 });
  });

  it('of wheels by attributes alone, and with places by JSON', () => {
    const { before, after, lock } = EXAMPLE_FITMENT;
    const wheels = user({ fit: { before, after, lock: lock! }, stopGap: stopGap!, limits });
    const tag = 'bumpline-clearance';
    expect(snippetOf({ tag, car: wheels }).html).toBe(
      '<bumpline-clearance drop="30" limits="stop-gap 34; stop-gap-plus-minus 2; stop-length 55; stop-usable 0.5; stroke-droop 78" wheel-before="205/55R16, 6.5, 45" wheel-after="215/45R17, 7.5, 40" lock="33"></bumpline-clearance>',
    );
    expect(snippetOf({ tag, car: user({ fit: EXAMPLE_FITMENT }) }).by).toBe('json');
  });

  it('of two sets by one table, their own drop being the second height', () => {
    const car = user({ by: 'readings', setups: EXAMPLE_SETUPS, drop: 20 });
    const { html, by } = snippetOf({ tag: 'bumpline-compare', car });
    expect(by).toBe('table');
    expect(carOnPage('bumpline-compare', html).attributes).toEqual({ heights: '0, 20' });
  });

  it('of a car of which nobody gave anything by nothing but what is asked for', () => {
    const wish = { tag: 'bumpline-lowering', car: EMPTY_CAR } as const;
    expect(snippetOf(wish)).toEqual({ html: '<bumpline-lowering></bumpline-lowering>', by: 'example', left: [] });
    const asked = { ...wish, attributes: { drop: '40' }, show: ['chart'], units: 'in', theme: 'dark' } as const;
    expect(snippetOf({ ...asked, angles: 'arcminutes', width: 640 }).html).toBe(
      '<bumpline-lowering drop="40" show="sentence chart" units="in" angles="arcminutes" theme="dark" style="max-width:640px"></bumpline-lowering>',
    );
  });
});

describe('what a snippet does not have is told', () => {
  const prediction = { name: 'x' } as never;
  const lost = (car: CarDocument, tag: SnippetTag = 'bumpline-lowering') => divSnippetOf({ tag, car }).left.join('\n');

  it('kept predictions, sets that the answer is not made from, readings that were set aside', () => {
    const car = { ...POINTS, setups: EXAMPLE_SETUPS, predictions: [prediction] };
    expect(snippetOf({ tag: 'bumpline-lowering', car }).left.join('\n')).toMatch(
      /1 kept prediction[\s\S]*sets of parts/,
    );
    const aside = user({ by: 'readings', setups: [{ ...EXAMPLE_SETUPS[0]!, setAside: [1, 2] }] });
    expect(snippetOf({ tag: 'bumpline-readings', car: aside })).toMatchObject({
      by: 'table',
      left: [expect.stringContaining('2 readings')],
    });
  });

  it('and all that a div cannot say without JSON: whatever is lost, something says so', () => {
    expect(lost({ ...POINTS, measuredAt: 15, lowered: 'springs' })).toMatch(
      /lowered already[\s\S]*How the car was lowered/,
    );
    expect(lost(POINTS)).toBe('');
    fc.assert(
      fc.property(anyCar, fc.constantFrom(...SNIPPET_TAGS), (car, tag) => {
        const whole = snippetOf({ tag, car });
        expect(divSnippetOf({ tag, car }).left.length > whole.left.length).toBe(whole.by === 'json');
      }),
      { seed: 6, numRuns: 50 },
    );
  });

  it('a div has the same content in another wrapper', () => {
    const { html } = divSnippetOf({ tag: 'bumpline-lowering', car: POINTS, units: 'in' });
    expect(html).toMatch(
      /^<div data-bumpline="lowering" data-drop="25" data-bump-travel="62" data-units="in">\n <table/,
    );
    expect(html.endsWith('</table>\n</div>')).toBe(true);
  });
});

describe('the text that is pasted', () => {
  const nasty = nastyText;

  it('is HTML that Markdown leaves alone, whatever the car holds and its parts are called', () => {
    fc.assert(
      fc.property(
        anyCar,
        fc.constantFrom(...SNIPPET_TAGS),
        nasty,
        nasty,
        nasty,
        (random, tag, name, place, sentence) => {
          const setups = random.setups?.map((setup) => ({ ...setup, name: name.slice(0, 60) }));
          const places = random.fit?.places?.map((one) => ({ ...one, name: place.slice(0, 60) }));
          const car = {
            ...random,
            ...(setups && { setups }),
            ...(places && { fit: { ...random.fit, places } }),
          } as CarDocument;
          const wish = {
            tag,
            car,
            sentence: { text: `${sentence} 0.27° of it`, figure: { text: '0.27°', value: -0.27 } },
          };
          for (const { html } of [snippetOf(wish), divSnippetOf(wish), tablesOf(wish)]) {
            const lines = html.split('\n');
            if (html !== '') expect(lines.filter((line) => line.trim() === '' || /^ {4}/.test(line))).toEqual([]);
            expect(lines.filter((line) => line.lastIndexOf('<') > line.lastIndexOf('>'))).toEqual([]);
            expect(html).not.toMatch(/<!--/);
            const tags = elementsIn(html).map(({ tagName }) => tagName);
            const known = [tag, 'div', 'p', 'data', 'script', 'table', 'caption', 'thead', 'tbody', 'tr', 'th', 'td'];
            expect(tags.filter((one) => !known.includes(one))).toEqual([]);
          }
          const [paragraph] = elementsIn(snippetOf(wish).html).filter(({ tagName }) => tagName === 'p');
          expect(textIn(paragraph!).trim()).toBe(wish.sentence.text.replace(/\s+/g, ' ').trim());
          const script = elementsIn(snippetOf(wish).html).find(({ tagName }) => tagName === 'script');
          if (script) expect(textIn(script)).not.toMatch(/</);
        },
      ),
      { seed: 9, numRuns: 60 },
    );
  });

  const indented = (text: string) => text.replace(/^(?=.)/gm, '   ');
  const PLACES: readonly ((html: string) => string)[] = [
    (html) => `It is _low_ now:\n\n${html}\n\nAnd **this** came of it.`,
    (html) => `1. Look at this:\n\n${indented(html)}\n\n   And at *that*.`,
  ];
  const LIBRARIES: readonly ((text: string) => string)[] = [
    (text) => new MarkdownIt({ html: true, linkify: true, typographer: true }).render(text),
    (text) => marked.parse(text, { async: false, gfm: true }),
  ];
  /** What a browser makes of the element in some HTML, white space between tags aside. */
  const treeOf = (html: string, tag: string): string =>
    serializeOuter(elementsIn(html).find(({ tagName }) => tagName === tag)!)
      .replace(/\s+/g, ' ')
      .replace(/> </g, '><');

  it('goes through Markdown as it is, between paragraphs and in a list', () => {
    fc.assert(
      fc.property(anyCar, fc.constantFrom(...SNIPPET_TAGS), nasty, (random, tag, name) => {
        const setups = random.setups?.map((setup) => ({ ...setup, name: name.slice(0, 60) }));
        const car = { ...random, ...(setups && { setups }) } as CarDocument;
        const wish = { tag, car, sentence: { text: `It adds 0.27° to *${name}*.` } };
        for (const [html, own] of [
          [snippetOf(wish).html, tag],
          [divSnippetOf(wish).html, 'div'],
        ] as const) {
          for (const place of PLACES)
            for (const render of LIBRARIES) expect(treeOf(render(place(html)), own)).toBe(treeOf(html, own));
        }
      }),
      { seed: 21, numRuns: 60 },
    );
  });

  it('names the answer’s number beside the text that shows it', () => {
    const sentence = {
      text: 'Lowering 25 mm adds 0.27° of negative camber.',
      figure: { text: '0.27°', value: -0.2749 },
    };
    expect(snippetOf({ tag: 'bumpline-lowering', car: POINTS, sentence }).html.split('\n')[1]).toBe(
      ' <p>Lowering 25 mm adds <data value="-0.2749">0.27°</data> of negative camber.</p>',
    );
  });

  it('of JSON alone is read as a whole car, and of tables alone holds what readers see', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        const { html } = jsonSnippetOf({ tag: 'bumpline-lowering', car });
        expect(readPageCar(JSON.parse(html)).problems).toEqual([]);
      }),
      { seed: 2, numRuns: 60 },
    );
    expect(tablesIn(tablesOf({ tag: 'bumpline-lowering', car: POINTS }).html)).toHaveLength(1);
    const both = { ...POINTS, setups: EXAMPLE_SETUPS };
    expect(tablesIn(tablesOf({ tag: 'bumpline-predict', car: both }).html)).toHaveLength(2);
  });
});
