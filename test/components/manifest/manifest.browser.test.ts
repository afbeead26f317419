import { expect } from 'chai';
import type { CarModel } from '../../../components/car/car-model.js';
import { MANIFEST } from '../../../components/manifest/manifest.generated.js';
import type { Attribute } from '../../../components/manifest/manifest.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { type PointRowKind, pointRowKinds } from '../../../core/document/point-rows.js';
import { ELEMENTS } from '../contract/elements.js';
import { all, clear, find, one, root, type Sheet, textOf, type } from '../contract/stage.js';

/*
 * What the manifest says of an element, and so its reference page and its types, the element does: every attribute, event and row of a
 * table is tried. One that joins the manifest is tried by itself where its words or limits say a value, and else needs a line in VALUES.
 */

const declared = new Map(
  MANIFEST.modules.flatMap(({ declarations }) => declarations.map((one) => [one.tagName, one] as const)),
);

/** Of an attribute, a value that is not what it is without; where the manifest's words or limits do not say one. */
const VALUES: Readonly<Record<string, string>> = {
  'author-page': '/snippets/',
  'car-id': 'nobody',
  coefficients: '-0.5 -0.02 0.0001',
  domain: '-60 80',
  heights: '0, 15',
  language: 'de',
  limits: 'stop-gap 12; stop-length 50',
  setup: 'nobody’s parts',
  theme: 'dark',
  'toe-page': '/toe/',
  'wheel-after': '245/40R17, 8, 35',
  'wheel-before': '175/65R14, 5.5, 40',
};
/** What else has to be said for an attribute to mean anything. */
const BESIDE: Readonly<Record<string, string>> = {
  coefficients: 'domain="-60 80"',
  domain: 'coefficients="-0.5 -0.02 0.0001"',
  'drop-plus-minus': 'drop="30"',
};
/** Readings, invented: without any a degree of the curve is nobody's. */
const READINGS = `<table><tr><th>Travel (mm)</th><th>Camber (°)</th></tr>${[-40, -30, -20, -10, 0, 10, 20, 30, 40, 50]
  .map(
    (mm, i) =>
      `<tr><th>${mm}</th><td>${(-0.012 * mm + 0.0001 * mm * mm + (i % 2 ? 0.02 : -0.02)).toFixed(2)}</td></tr>`,
  )
  .join('')}</table>`;
const INSIDE: Readonly<Record<string, string>> = { degree: READINGS, quantity: READINGS.replace('Camber', 'Angle') };
/** That of it which is seen only once a reader does something has a test of its own. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'keep-in-address': 'test/components/contract/address.browser.test.ts',
  'toe-page': 'test/components/bumpline-compare/parts.browser.test.ts',
};

/** One that differs from what it is without. */
function triedOf({ name, values, isWords, default: without, minimum, maximum, unit }: Attribute): string | undefined {
  if (VALUES[name] !== undefined) return VALUES[name];
  if (isWords) return values![0];
  if (values) return values.find((word) => without?.replaceAll("'", '') !== word);
  if (minimum === undefined || maximum === undefined) return undefined;
  if (unit === '') return '2';
  return String(without === undefined ? Math.min(12, maximum) : Math.round(Number(without) * 8) / 10);
}

/** All that an element tells and shows. */
const shownBy = (element: Sheet): string =>
  [
    textOf(root(element) as unknown as Node),
    JSON.stringify(element.answer),
    JSON.stringify(element.problems),
    getComputedStyle(find(element, '.sheet')!).color,
    ...all(element, 'a').map((link) => link.getAttribute('href')),
    ...all<HTMLInputElement>(element, 'input').map(({ value }) => value),
  ].join('\n');

const modelOf = (element: Sheet) => (element as unknown as { app: { model: CarModel } }).app.model;

describe('what the manifest says', () => {
  afterEach(clear);

  it('is of every element', () => {
    expect([...declared.keys()].sort()).to.eql([...ELEMENTS.map(({ tag }) => tag), 'bumpline-car'].sort());
  });

  for (const record of ELEMENTS) {
    const { tag } = record;
    const { attributes = [], members, events = [] } = declared.get(tag)!;

    describe(`of <${tag}>`, () => {
      it('each attribute sets its property, and the element shows or answers something else', async () => {
        const without = new Map<string, string>();
        for (const attribute of attributes) {
          const { name, fieldName } = attribute;
          const [beside = '', inside = ''] = [BESIDE[name], INSIDE[name]];
          const key = `${beside}${inside}`;
          if (!without.has(key)) without.set(key, shownBy(await one(record, beside, inside)));
          if (name === 'keep-in-address') {
            const element = await one(record, name);
            expect((element as unknown as Record<string, unknown>)[fieldName], name).to.equal(true);
            continue;
          }
          const value = triedOf(attribute);
          expect(value, `a value of ${name} to try`).not.to.equal(undefined);
          const element = await one(record, `${beside} ${name}="${value}"`, inside);
          expect(String((element as unknown as Record<string, unknown>)[fieldName]), name).to.equal(value);
          if (ELSEWHERE[name] === undefined)
            expect(shownBy(element), `${name}="${value}"`).not.to.equal(without.get(key));
        }
      });

      it('each number has the limits that are told: beyond them the element says so', async () => {
        for (const { name, maximum, isList } of attributes) {
          if (maximum === undefined) continue;
          const far = String(maximum * 10 + 10);
          const element = await one(
            record,
            `${BESIDE[name] ?? ''} ${name}="${isList ? `0, ${far}` : far}"`,
            INSIDE[name],
          );
          expect(element.problems.length, `${name}="${far}"`).to.be.greaterThan(0);
        }
      });

      it('each property is there, and a read-only one cannot be set', async () => {
        const element = (await one(record)) as Sheet & Record<string, unknown>;
        for (const { name, kind, readonly, static: isStatic } of members) {
          const from = (isStatic ? element.constructor : element) as Record<string, unknown>;
          expect(name in from, name).to.equal(true);
          if (kind === 'method') expect(from[name], name).to.be.a('function');
          if (readonly && !isStatic) expect(() => Object.assign(from, { [name]: 1 }), name).to.throw(TypeError);
        }
      });

      it('each event comes, and carries just what is told', async () => {
        const element = await one(record);
        const heard = new Map<string, Event>();
        for (const { name } of events) element.addEventListener(name, (event) => heard.set(name, event));
        await type(element, record.numbers[0]);
        await type(element, 'much');
        await type(element, record.numbers[1]);
        for (const { name, fields } of events) {
          const event = heard.get(name);
          expect(event, name).not.to.equal(undefined);
          const own = Object.keys(event!).filter((key) => key !== 'isTrusted');
          expect(own.sort(), name).to.eql(fields.map((field) => field.name).sort());
        }
      });
    });
  }

  describe('of rows that a table may have', () => {
    const [lowering] = ELEMENTS.filter(({ tag }) => tag === 'bumpline-lowering');
    /** A value that the example could have; of what is measured, half way between the limits. */
    const valuesOf = ({ key, holds, least, most }: PointRowKind): number[] => {
      if (holds === 'measure') return [Math.round(least + 0.4 * (most - least))];
      const point = key.split('.').reduce((at: unknown, part) => (at as Record<string, unknown>)[part], EXAMPLE_CORNER);
      return [point].flat() as number[];
    };
    const rowOf = (kind: PointRowKind, name: string): string => {
      const cells = valuesOf(kind);
      const span = kind.holds === 'point' ? '' : ' colspan="3"';
      return `<tr><th>${name}</th>${cells.map((cell) => `<td${span}>${cell}</td>`).join('')}</tr>`;
    };
    const tableOf = (rows: string): string =>
      `<table><tr><th>What</th><th>x (mm)</th><th>y (mm)</th><th>z (mm)</th></tr>${rows}</table>`;

    for (const holds of [['point', 'single'], ['measure']] as const) {
      it(`each of ${holds.join(' and ')} is read, under each of its names`, async () => {
        const kinds = pointRowKinds().filter((kind) => (holds as readonly string[]).includes(kind.holds));
        const most = Math.max(...kinds.map(({ names }) => names.length));
        for (let i = 0; i < most; i++) {
          const rows = kinds.map((kind) => rowOf(kind, kind.names[Math.min(i, kind.names.length - 1)]!)).join('');
          const element = await one(lowering!, '', tableOf(rows));
          const { given } = modelOf(element).car;
          const unread = kinds.filter((kind) => {
            const { points, measures = {}, ...rest } = given;
            return ![points, measures, rest].some((held) => kind.key in held);
          });
          expect(unread.map(({ names }) => names)).to.eql([]);
        }
      });
    }

    it('one under a name that is not told is not read, and said', async () => {
      const element = await one(lowering!, '', tableOf('<tr><th>Flywheel</th><td>1</td><td>2</td><td>3</td></tr>'));
      expect(element.problems.length).to.be.greaterThan(0);
    });
  });
});
