import { expect } from 'chai';
import type { CarModel } from '../../../components/car/car-model.js';
import { readingsCsv } from '../../../components/publish/readings-csv.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { byUser } from '../../../core/document/own-car.js';
import type { Setup } from '../../../core/document/setup.js';
import { all, clear, find, one, press, put, type Sheet, settled, textOf, withCar } from '../contract/stage.js';
import { savedBy } from './saved.js';

/** Invented: two passes each way, the first height read again at the end of each, instruments of which something was said. */
const SETUP: Setup = {
  name: 'Ünlike arms / 2',
  cornerName: 'Front left',
  quantity: 'camber',
  doubts: { gaugeScale: 0.5, zeroHeight: 1 },
  readings: ['Pass 1', 'Pass 2'].flatMap((pass) => [
    ...[-20, -10, 0, 10, 20].map((travel) => ({
      travel,
      value: ((pass === 'Pass 1' ? -1.2 : -1.25) * travel) / 100,
      pass,
      going: 'up' as const,
    })),
    ...[10, 0, -10].map((travel) => ({ travel, value: (-1.21 * travel) / 100, pass, going: 'down' as const })),
    { travel: -20, value: 0.25, pass, going: 'down' as const },
  ]),
};
const OWN = byUser({ ...EMPTY_CAR, by: 'readings', drop: 10, setups: [SETUP] });
const modelOf = (element: Sheet) => (element as unknown as { app: { model: CarModel } }).app.model;

async function own(tag: 'bumpline-readings' | 'bumpline-lowering' | 'bumpline-geometry', car = OWN): Promise<Sheet> {
  const element = await withCar({ tag } as never, car);
  find<HTMLDetailsElement>(element, '.take-along')!.open = true;
  await settled(element);
  return element;
}

describe('readings that are taken along', () => {
  const { writeText } = navigator.clipboard;
  const allow = (write: typeof writeText) =>
    Object.defineProperty(navigator.clipboard, 'writeText', { configurable: true, value: write });
  afterEach(() => {
    clear();
    allow(writeText);
  });

  it('are a file of CSV in the name of their set, marked as UTF-8 for spreadsheets', async () => {
    const element = await own('bumpline-readings');
    const [[name, file]] = (await savedBy(() => press(element, '[data-form=csv]'))) as unknown as [[string, Blob]];
    expect(name).to.equal('bumpline-readings-ünlike-arms-2.csv');
    expect(file.type).to.equal('text/csv');
    const bytes = new Uint8Array(await file.arrayBuffer());
    expect([...bytes.slice(0, 3)]).to.deep.equal([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).to.equal(readingsCsv([SETUP]));
    expect(textOf(find(element, '.take-along [role=status]'))).to.equal(`Saved as ${name}.`);
  });

  it('are an HTML table that an element reads back to the same readings, passes, ways and instruments', async () => {
    let copied = '';
    allow(async (text) => {
      copied = text;
    });
    const element = await own('bumpline-readings');
    await press(element, '[data-form=table]');
    expect(textOf(find(element, '.take-along [role=status]'))).to.match(/^The HTML table is copied\. [^.]+\.$/);
    const [again] = await put('bumpline-readings', `<bumpline-readings>${copied}</bumpline-readings>`);
    expect(again!.problems).to.deep.equal([]);
    const [read] = modelOf(again!).car.setups!;
    const sorted = ({ readings }: Setup) =>
      readings.map((reading) => JSON.stringify(Object.entries(reading).sort())).sort();
    expect(sorted(read!)).to.deep.equal(sorted(SETUP));
    expect([read!.name, read!.doubts]).to.deep.equal([SETUP.name, SETUP.doubts]);
    expect(again!.answer).to.deep.include({ over: (element.answer as { over: number }).over });
  });

  it('stand in a field to be copied where the clipboard is closed', async () => {
    allow(() => Promise.reject(new DOMException('', 'NotAllowedError')));
    const element = await own('bumpline-readings');
    await press(element, '[data-form=table]');
    const field = find<HTMLTextAreaElement>(element, '.take-along textarea')!;
    expect(field.checkVisibility()).to.equal(true);
    expect(field.value).to.match(/^<table[\s\S]*<\/table>$/);
    expect(textOf(find(element, '.take-along [role=status]'))).to.match(/selected/);
  });

  it('can be had of an answer that rests on them, and not of one that does not', async () => {
    const offered = (element: Sheet) => all(element, '.things [data-form=csv]').length;
    expect(offered(await own('bumpline-lowering'))).to.equal(1);
    expect(offered(await own('bumpline-lowering', EMPTY_CAR))).to.equal(0);
    expect(offered(await own('bumpline-geometry'))).to.equal(0);
  });
});

describe('the fold of what can be taken along', () => {
  afterEach(clear);

  it('fetches nothing before it is opened', async () => {
    const element = await one({ tag: 'bumpline-lowering' });
    expect(find(element, '.take-along .things')).to.equal(null);
    expect(find(element, '.take-along')!.hasAttribute('open')).to.equal(false);
  });

  it('says that no PNG can be made, and saves the SVG instead', async () => {
    const element = await own('bumpline-lowering', EMPTY_CAR);
    const { decode } = HTMLImageElement.prototype;
    const { warn } = console;
    HTMLImageElement.prototype.decode = () => Promise.reject(new DOMException('', 'EncodingError'));
    console.warn = () => {};
    try {
      expect((await savedBy(() => press(element, '[data-kind=chart] [data-form=png]'))).size).to.equal(0);
      expect(textOf(find(element, '.take-along [role=status]'))).to.match(
        /^This page’s rules.*no PNG.*Save the SVG instead$/,
      );
      const saved = await savedBy(() => press(element, '.svg-instead'));
      expect([...saved.keys()]).to.deep.equal(['bumpline-lowering-chart-front-left.svg']);
      expect(find(element, '.svg-instead')).to.equal(null);
    } finally {
      HTMLImageElement.prototype.decode = decode;
      console.warn = warn;
    }
  });

  it('of several charts saves the one that is chosen, under its name', async () => {
    const element = await own('bumpline-geometry', EMPTY_CAR);
    const choice = find<HTMLSelectElement>(element, '.take-along select')!;
    choice.value = 'toe';
    choice.dispatchEvent(new Event('change', { bubbles: true }));
    const saved = await savedBy(() => press(element, '[data-kind=chart] [data-form=svg]'));
    const [[name, file]] = [...saved] as [[string, Blob]];
    expect(name).to.equal('bumpline-geometry-chart-toe-in-front-left.svg');
    expect(await file.text()).to.contain('Toe-in over wheel travel');
  });
});
