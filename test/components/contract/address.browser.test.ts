import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { type ContractElement, ELEMENTS } from './elements.js';
import {
  clear,
  field,
  find,
  one,
  press,
  put,
  read,
  type Sheet,
  setAddress,
  settled,
  textOf,
  type,
  until,
  wait,
} from './stage.js';

/* What every element does with a page's address: everything given is in it, and nothing of the page's own is lost. */

const modelOf = (element: Sheet) => (element as unknown as { app: { model: CarModel } }).app.model;
/** After the pause in editing after which the address follows, ms. */
const PAUSE_MS = 450;
const carIn = (hash: string) => /(?:^#|&)(car=.*)$/s.exec(hash)?.[1] ?? '';
/** The address holds the car as it is now, behind a section or alone. */
async function kept(element: Sheet, fragment = /^#/): Promise<void> {
  await until('the address holds the car', () => {
    const { hash } = location;
    return fragment.test(hash) && carIn(hash) === carToLink(modelOf(element).car);
  });
  await settled(element);
}
/** Somebody is about to follow a link: what has not been written into the address yet is written now, if it ever is. */
const goOn = () => void dispatchEvent(new Event('pointerdown'));
/** The same without the pause, for who goes on at once. */
const writtenAtOnce = (element: Sheet): Promise<void> => {
  goOn();
  return kept(element);
};
/** What makes the link may have to come first. */
async function copy(element: Sheet): Promise<void> {
  await press(element, '.copy-link');
  await until('it is said what became of the link', () => textOf(find(element, '.link-said')) !== '');
}

const CONTRACT: Record<string, (record: ContractElement) => Promise<void>> = {
  async 'a link to a section keeps the car, and so does a reload from there'(record) {
    const [element] = await put(record.tag, `<h2 id="why">Why</h2><${record.tag} keep-in-address></${record.tag}>`);
    await type(element!, record.numbers[0]);
    const figure = read(record, element!);
    await kept(element!);
    location.hash = '#why';
    await kept(element!, /^#why&/);
    expect(read(record, element!)).to.equal(figure);
    expect(location.hash).to.match(/^#why&car=1&/);
    await type(element!, record.numbers[1]);
    const newer = read(record, element!);
    await kept(element!);
    expect(location.hash).to.match(/^#why&car=1&/);
    const again = await one(record, 'keep-in-address');
    expect(read(record, again)).to.equal(newer);
  },

  async 'the way back to a section keeps the newest number'(record) {
    const [element] = await put(record.tag, `<h2 id="why">Why</h2><${record.tag} keep-in-address></${record.tag}>`);
    await type(element!, record.numbers[0]);
    await kept(element!);
    location.hash = '#why';
    await kept(element!, /^#why&/);
    await type(element!, record.numbers[1]);
    const figure = read(record, element!);
    history.back();
    await kept(element!, /^#car=1&/);
    expect(location.hash).to.match(/^#car=1&/);
    expect(read(record, element!)).to.equal(figure);
    expect(carIn(location.hash)).to.equal(carToLink(modelOf(element!).car));
    history.forward();
    await kept(element!, /^#why&/);
    expect(location.hash).to.match(/^#why&car=1&/);
    expect(read(record, element!)).to.equal(figure);
  },

  async 'an address that is pasted is read, and the way back brings the car that was there'(record) {
    const element = await one(record, 'keep-in-address');
    await type(element, record.numbers[0]);
    const figure = read(record, element);
    await writtenAtOnce(element);
    const isOwn = () => carToLink(modelOf(element).car) === carToLink(record.own);
    location.hash = `#${carToLink(record.own)}`;
    await until('the address is read', isOwn);
    await settled(element);
    expect(element.state).to.equal('ready');
    expect(carToLink(modelOf(element).car)).to.equal(carToLink(record.own));
    history.back();
    await until('the car before is back', () => !isOwn());
    await settled(element);
    expect(read(record, element)).to.equal(figure);
    expect(carToLink(modelOf(element).car)).not.to.equal(carToLink(record.own));
  },

  async 'a fragment that is somebody else’s is never written over'(record) {
    for (const hash of ['#/route', '#!/a/b?c=1', '#no-such-place', '#a=1&b=2', '#/x?y&car=1']) {
      setAddress(hash);
      const element = await one(record, 'keep-in-address');
      await type(element, record.numbers[0]);
      goOn();
      expect(location.hash, hash).to.equal(hash);
      if (hash === '#/route') await wait(PAUSE_MS);
      expect(location.hash, hash).to.equal(hash);
      clear();
    }
  },

  async 'what a page keeps in the history’s state stays there'(record) {
    history.replaceState({ of: 'the page', list: [1] }, '');
    const element = await one(record, 'keep-in-address');
    await type(element, record.numbers[0]);
    await writtenAtOnce(element);
    expect(history.state).to.include({ of: 'the page' });
    expect(location.hash).to.match(/^#car=1&/);
    history.replaceState('a text', '');
    await type(element, record.numbers[1]);
    await writtenAtOnce(element);
    expect(history.state).to.equal('a text');
    expect(carIn(location.hash)).to.equal(carToLink(modelOf(element).car));
  },

  async 'of two cars on a page one has the address, whichever is changed, and the other is told of once'(record) {
    const { tag } = record;
    const { warn } = console;
    const told: unknown[] = [];
    console.warn = (text: unknown) => void told.push(text);
    const markup = `<${tag} keep-in-address></${tag}><${tag} keep-in-address></${tag}>`;
    const [first, second] = (await put(tag, markup)) as [Sheet, Sheet];
    console.warn = warn;
    expect(told.filter((text) => /keeps one car/.test(String(text)))).to.have.length(1);
    await type(second, record.numbers[1]);
    goOn();
    expect(location.hash).to.equal('');
    await type(first, record.numbers[0]);
    const figure = read(record, first);
    await writtenAtOnce(first);
    expect(carIn(location.hash)).to.equal(carToLink(modelOf(first).car));
    const [again, other] = (await put(tag, markup)) as [Sheet, Sheet];
    expect(read(record, again)).to.equal(figure);
    expect(read(record, other)).not.to.equal(figure);
  },

  async 'copies a link before anything is given, kept in the address or not, and says so where everybody sees it'(
    record,
  ) {
    const copied: string[] = [];
    const clipboard = { writeText: async (text: string) => void copied.push(text) };
    Object.defineProperty(navigator, 'clipboard', { value: clipboard, configurable: true });
    try {
      for (const attributes of ['', 'keep-in-address']) {
        setAddress('');
        const element = await one(record, attributes);
        await copy(element);
        expect(copied.pop()).to.equal(location.href);
        const said = find(element, '.link-said')!;
        expect(said.getAttribute('role')).to.equal('status');
        expect(textOf(said)).to.equal('Copied.');
        expect(said.checkVisibility()).to.equal(true);
        await type(element, record.numbers[0]);
        const figure = read(record, element);
        await press(element, '.copy-link');
        await until('the link is copied', () => copied.length > 0);
        const { hash } = new URL(copied.pop()!);
        expect(carFromLink(carIn(hash)).ok).to.equal(true);
        setAddress(hash);
        const again = await one(record, attributes);
        expect(read(record, again), attributes).to.equal(figure);
      }
    } finally {
      delete (navigator as unknown as { clipboard?: unknown }).clipboard;
    }
  },

  async 'a phone passes the link on by its own sheet; put away, nothing is copied, and where it fails the link is'(
    record,
  ) {
    const shared: string[] = [];
    const copied: string[] = [];
    let outcome: Error | undefined;
    const { matchMedia } = globalThis;
    const stubs = {
      share: async ({ url }: ShareData) => {
        if (outcome) throw outcome;
        shared.push(url!);
      },
      clipboard: { writeText: async (text: string) => void copied.push(text) },
    };
    for (const [name, value] of Object.entries(stubs))
      Object.defineProperty(navigator, name, { value, configurable: true });
    globalThis.matchMedia = (query) =>
      query === '(pointer: coarse)' ? ({ matches: true } as MediaQueryList) : matchMedia(query);
    try {
      const element = await one(record);
      await copy(element);
      expect([shared, copied]).to.deep.equal([[location.href], []]);
      expect(textOf(find(element, '.link-said'))).to.equal('Shared.');
      outcome = new DOMException('put away', 'AbortError');
      await press(element, '.copy-link');
      await until('nothing is said of what was put away', () => textOf(find(element, '.link-said')) === '');
      expect(copied).to.deep.equal([]);
      outcome = new DOMException('not here', 'NotAllowedError');
      await press(element, '.copy-link');
      await until('the link is copied', () => copied.length > 0);
      await settled(element);
      expect(copied).to.deep.equal([location.href]);
      expect(textOf(find(element, '.link-said'))).to.equal('Copied.');
    } finally {
      globalThis.matchMedia = matchMedia;
      for (const name of Object.keys(stubs)) Reflect.deleteProperty(navigator, name);
    }
  },

  async 'the link of a page’s second car is the second’s'(record) {
    const { tag } = record;
    const copied: string[] = [];
    const clipboard = { writeText: async (text: string) => void copied.push(text) };
    Object.defineProperty(navigator, 'clipboard', { value: clipboard, configurable: true });
    try {
      const markup = `<${tag}></${tag}><${tag}></${tag}>`;
      const [, second] = (await put(tag, markup)) as [Sheet, Sheet];
      await type(second, record.numbers[0]);
      const figure = read(record, second);
      await copy(second);
      setAddress(new URL(copied[0]!).hash);
      const [one_, two] = (await put(tag, markup)) as [Sheet, Sheet];
      expect(read(record, two)).to.equal(figure);
      expect(read(record, one_)).not.to.equal(figure);
    } finally {
      delete (navigator as unknown as { clipboard?: unknown }).clipboard;
    }
  },

  async 'is saved as a file and opened from it, as one step of undo; what is no such file is told, and nothing changes'(
    record,
  ) {
    const { carFile } = await import('../../../components/controls/car-file.js');
    const element = await one(record);
    const before = carToLink(modelOf(element).car);
    const open = async (text: string) => {
      const field = find<HTMLInputElement>(element, '.car-file')!;
      const files = new DataTransfer();
      files.items.add(new File([text], 'car.json', { type: 'application/json' }));
      field.files = files.files;
      field.dispatchEvent(new Event('change'));
      // It is emptied when the file has been read.
      await until('the file is read', () => field.value === '');
      await settled(element);
    };
    for (const wrong of ['no JSON', '{}', '{"version":1,"drop":900}']) {
      await open(wrong);
      expect(textOf(find(element, '.link-said')), wrong).to.match(/Nothing was changed/);
      expect(carToLink(modelOf(element).car)).to.equal(before);
    }
    await open(carFile(record.own));
    expect(element.state).to.equal('ready');
    expect(carToLink(modelOf(element).car)).to.equal(carToLink(record.own));
    await press(element, '.undo');
    expect(carToLink(modelOf(element).car)).to.equal(before);
  },

  async 'says so where a link carries nothing that it uses, and keeps it'(record) {
    const foreign: Record<string, Partial<CarDocument>> = {
      'bumpline-clearance': { readingsOver: 30 },
      'bumpline-readings': { fit: { lock: 34 } },
    };
    const more = foreign[record.tag] ?? { fit: { lock: 34 } };
    const provenance = more.fit ? { fit: { by: 'user' as const } } : {};
    setAddress(`#${carToLink({ ...EMPTY_CAR, ...more, provenance })}`);
    const element = await one(record, 'keep-in-address');
    expect(element.state).to.equal('example');
    expect(textOf(find(element, '.unused'))).to.match(/^The link carries .+, which this calculator does not use/);
    const told = location.hash;
    await type(element, record.numbers[0]);
    expect(find(element, '.unused')).to.equal(null);
    await writtenAtOnce(element);
    for (const part of carIn(told).split('&').slice(1, -1)) expect(location.hash).to.contain(part);
  },

  async 'a car too long for a link is offered as a file, and the address is left alone'(record) {
    const readings = Array.from({ length: 1500 }, (_, i) => ({
      travel: Math.round(1000 * Math.sin(i) * 60) / 1000,
      value: Math.round(1e6 * Math.cos(i)) / 1e6,
      pass: `Pass ${i % 7}`,
    }));
    const element = await one(record, 'keep-in-address');
    await type(element, record.numbers[0]);
    await writtenAtOnce(element);
    const { hash } = location;
    const setups = [
      { ...record.own.setups?.[0], name: 'Long', cornerName: 'Front left', quantity: 'camber', readings },
    ];
    modelOf(element).update('long', (car) => ({
      ...car,
      setups: setups as CarDocument['setups'] & object,
      provenance: { ...car.provenance, setups: { by: 'user' } },
    }));
    await until('a file is offered', () => find(element, '.save-file'));
    expect(location.hash).to.equal(hash);
    expect(textOf(find(element, '.link-said'))).to.match(/too long for a link.*8000 characters.*file/);
    expect(find(element, '.save-file')!.checkVisibility()).to.equal(true);
    modelOf(element).undo();
    await until('the address follows again', () => !find(element, '.save-file'));
    expect(find(element, '.save-file')).to.equal(null);
  },

  async 'a damaged link is told wherever it stands, behind a section too'(record) {
    setAddress('#why&car=1&drop=3&check=0');
    const element = await one(record, 'keep-in-address');
    expect(textOf(find(element, '.queries, .problems'))).to.match(/\blink\b/i);
  },

  async 'a page’s own values stay the page’s: they are not in the address, and stand in again after a reload'(record) {
    const { attributes = '', inside } = record.page;
    const shown = () => one(record, `keep-in-address ${attributes}`, inside);
    const element = await shown();
    goOn();
    expect(location.hash).to.equal('');
    const pages = read(record, element);
    await type(element, record.numbers[1]);
    const figure = read(record, element);
    expect(figure).not.to.equal(pages);
    const text = textOf(find(element, '.sentence'));
    await writtenAtOnce(element);
    expect(location.hash).not.to.match(/wheelBefore|setup1|strut\.top/);
    const again = await shown();
    expect(read(record, again)).to.equal(figure);
    expect(textOf(find(again, '.sentence'))).to.equal(text);
    expect(field(again).value).to.equal(field(element).value);
  },
};

describe('the address of a page, with every element', () => {
  before(() => setViewport({ width: 360, height: 780 }));
  beforeEach(() => setAddress(''));
  afterEach(() => {
    clear();
    setAddress('');
  });

  for (const record of ELEMENTS) {
    describe(`<${record.tag}>`, () => {
      for (const [contract, check] of Object.entries(CONTRACT)) it(contract, () => check(record));
    });
  }
});
