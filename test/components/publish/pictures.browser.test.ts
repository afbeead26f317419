import { executeServerCommand, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { FIRST_CAUTIONS } from '../../../components/element/first-cautions.js';
import { VERSION } from '../../../core/version.js';
import { type ContractElement, ELEMENTS } from '../contract/elements.js';
import { LATE_PARTS } from '../contract/late-parts.js';
import { all, clear, find, one, type Sheet, settled, textOf, withCar } from '../contract/stage.js';
import { savedBy } from './saved.js';

/** What can be taken along of each, as it opens: the kinds of its rows. */
const THINGS: Record<ContractElement['tag'], string[]> = {
  'bumpline-clearance': ['drawing', 'drawing', 'chart'],
  'bumpline-compare': ['chart', 'readings'],
  'bumpline-cornering': ['drawing', 'bars'],
  'bumpline-geometry': ['drawing', 'chart'],
  'bumpline-lowering': ['drawing', 'chart'],
  'bumpline-predict': ['chart', 'readings'],
  'bumpline-readings': ['chart', 'chart', 'readings'],
  'bumpline-static-camber': ['bars'],
  'bumpline-toe': ['drawing', 'chart'],
};

async function open(element: Sheet): Promise<void> {
  find<HTMLDetailsElement>(element, '.take-along')!.open = true;
  await settled(element);
}

/** The files of all buttons of one form. */
async function files(element: Sheet, form: string): Promise<[name: string, file: Blob][]> {
  const saved = await savedBy(async () => {
    for (const button of all<HTMLButtonElement>(element, `.things button[data-form=${form}]`)) {
      button.click();
      await settled(element);
    }
  });
  return [...saved];
}

const parsed = (source: string) => new DOMParser().parseFromString(source, 'image/svg+xml');
/** All that is written in it, each line by itself. */
const wordsOf = (picture: Document) =>
  [...picture.querySelectorAll('text')].map((text) => text.textContent!.replace(/\s+/g, ' ')).join(' ');

const PICTURE: Record<string, (record: ContractElement) => Promise<void>> = {
  async 'can be had of every drawing and chart, as SVG and as PNG, a row for each'(record) {
    const element = await one(record);
    await open(element);
    const rows = all(element, '.things > li');
    expect(rows.map(({ dataset }) => dataset.kind)).to.deep.equal(THINGS[record.tag]);
    for (const row of rows) {
      const forms = [...row.querySelectorAll<HTMLElement>('button')].map(({ dataset }) => dataset.form);
      expect(forms).to.deep.equal(row.dataset.kind === 'readings' ? ['csv', 'table'] : ['svg', 'png']);
      for (const button of row.querySelectorAll('button')) {
        const { width, height } = button.getBoundingClientRect();
        expect(Math.min(width, height)).to.be.at.least(44);
        // Who speaks what is seen finds it.
        expect(button.getAttribute('aria-label')).to.contain(textOf(button));
      }
    }
    const [svg, png] = [await files(element, 'svg'), await files(element, 'png')];
    expect(svg.map(([name]) => name.replace(/svg$/, 'png'))).to.deep.equal(png.map(([name]) => name));
    expect(svg).to.have.length(THINGS[record.tag].filter((kind) => kind !== 'readings').length);
    for (const [name] of svg)
      expect(name).to.match(new RegExp(`^${record.tag}-(?:drawing|chart|bars)-[a-z0-9-]+\\.svg$`));
    expect(textOf(find(element, '.take-along [role=status]'))).to.equal(`Saved as ${png.at(-1)![0]}.`);
  },

  async 'says in words below it what it shows, by what method, where it is from, whose it is and what it is not'(
    record,
  ) {
    const element = await one(record);
    await open(element);
    for (const [name, file] of await files(element, 'svg')) {
      const picture = parsed(await file.text());
      const words = wordsOf(picture);
      const title = find(element, '.sheet')!.getAttribute('aria-label')!;
      expect(words, name)
        .to.contain(title)
        .and.match(/\. Method: [^.]+;? ?every ± is a 95 % interval\./);
      expect(words).to.match(/Front left, worked out on \d{1,2} [A-Z][a-z]+ 20\d\d\./);
      expect(words.replaceAll(' ', '')).to.contain(`Source:${location.origin}${location.pathname}`);
      expect(words).to.contain(`worked out with Bumpline ${VERSION}. The numbers are an invented example’s.`);
      expect(words).to.contain(FIRST_CAUTIONS[LATE_PARTS[record.tag].caution]);
      expect(picture.querySelector('title')!.textContent).to.contain(title);
      // The answer stands in it, figure by figure.
      const figures = textOf(find(element, '.sentence')).match(/\d+\.\d+°/g) ?? [];
      for (const figure of figures) expect(words).to.contain(figure);
    }
  },

  async 'stands alone: it parses, and has no style sheet, no class, no script and nothing from elsewhere'(record) {
    const element = await one(record);
    await open(element);
    for (const [name, file] of await files(element, 'svg')) {
      expect(file.type).to.equal('image/svg+xml');
      const source = await file.text();
      const picture = parsed(source);
      expect(picture.querySelector('parsererror'), name).to.equal(null);
      expect(picture.documentElement.namespaceURI).to.equal('http://www.w3.org/2000/svg');
      const outside = /var\(|\sclass=|\sstyle=|<style|<script|foreignObject|<image|href|@|<!--|url\((?!#)|\bon\w+=/;
      expect(source.match(outside)?.[0]).to.equal(undefined);
      const looks = [...picture.querySelectorAll('*')].flatMap((part) =>
        ['fill', 'stroke'].flatMap((name) => part.getAttribute(name) ?? []),
      );
      expect(looks.filter((look) => !/^(?:none|rgb\(\d+, \d+, \d+\))$/.test(look))).to.deep.equal([]);
      expect(new Set(looks).size).to.be.greaterThan(2);
    }
  },

  async 'has all its words inside, however long they are'(record) {
    const element = await one(record);
    await open(element);
    for (const [name, file] of await files(element, 'svg')) {
      const picture = document.importNode(parsed(await file.text()).documentElement, true) as unknown as SVGSVGElement;
      document.body.append(picture);
      try {
        const { left, right, top, bottom } = picture.getBoundingClientRect();
        const texts = [...picture.querySelectorAll('text')];
        expect(texts.length).to.be.greaterThan(8);
        const cut = texts.filter((text) => {
          const box = text.getBoundingClientRect();
          return box.left < left || box.right > right || box.top < top || box.bottom > bottom;
        });
        expect(
          cut.map(({ textContent }) => textContent),
          name,
        ).to.deep.equal([]);
      } finally {
        picture.remove();
      }
    }
  },

  async 'is the same of a dark sheet as of a light one, and where colours are forced: light'(record) {
    const sources: string[][] = [];
    for (const [theme, isForced] of [
      ['light', false],
      ['dark', false],
      ['dark', true],
    ] as const) {
      const features = isForced ? [{ name: 'forced-colors', value: 'active' }] : [];
      await executeServerCommand('media-features', features);
      const element = await one(record, `theme="${theme}"`);
      await open(element);
      sources.push(await Promise.all((await files(element, 'svg')).map(([, file]) => file.text())));
    }
    for (const other of sources) expect(other).to.deep.equal(sources[0]);
    const [ground] = parsed(sources[0]![0]!).querySelectorAll('rect');
    expect(ground!.getAttribute('fill')).to.equal('rgb(255, 255, 255)');
  },

  async 'is as a PNG twice as large, and not of one colour'(record) {
    const element = await one(record);
    await open(element);
    const [svg, png] = [await files(element, 'svg'), await files(element, 'png')];
    for (const [i, [name, file]] of png.entries()) {
      expect(file.type).to.equal('image/png');
      const { documentElement: picture } = parsed(await svg[i]![1].text());
      const bitmap = await createImageBitmap(file);
      const [width, height] = ['width', 'height'].map((side) => Number(picture.getAttribute(side)));
      expect([bitmap.width, bitmap.height], name).to.deep.equal([2 * width!, 2 * height!]);
      const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
      context.drawImage(bitmap, 0, 0);
      const pixels = new Uint32Array(context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
      expect(pixels[0]).to.equal(0xffffffff);
      const inked = pixels.reduce((count, pixel) => count + (pixel === 0xffffffff ? 0 : 1), 0);
      expect(inked / pixels.length).to.be.greaterThan(0.01);
    }
  },

  async 'says whose numbers it is of: the page’s, a reader’s'(record) {
    const whose = async (element: Sheet) => {
      await open(element);
      const [[, file]] = (await files(element, 'svg')) as [[string, Blob]];
      return wordsOf(parsed(await file.text()));
    };
    const { attributes, inside, state } = record.page;
    const page = await one(record, attributes, inside);
    const PAGES = {
      ready: 'The numbers are those of the page.',
      incomplete: 'Some of the numbers are those of the page',
    };
    expect(await whose(page)).to.contain(PAGES[state]);
    expect(await whose(await withCar(record, record.own))).to.contain('The numbers are those of a reader of the page.');
  },
};

describe('a picture that is taken along', () => {
  before(() => setViewport({ width: 360, height: 780 }));
  afterEach(async () => {
    clear();
    await executeServerCommand('media-features', []);
  });

  for (const record of ELEMENTS) {
    describe(`of <${record.tag}>`, () => {
      for (const [contract, check] of Object.entries(PICTURE)) it(contract, () => check(record));
    });
  }
});
