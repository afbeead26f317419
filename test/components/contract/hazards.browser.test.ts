import { expect } from 'chai';
import type { LitElement } from 'lit';
import { CarModel } from '../../../components/car/car-model.js';
import { CAUTIONS } from '../../../components/element/cautions.js';
import { GENERAL_CAUTIONS } from '../../../components/element/first-cautions.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { LATE_PARTS } from './late-parts.js';
import { all, clear, find, put, root, type Sheet, settled, textOf, until, wait } from './stage.js';

/* Each element tells its own hazards in full; what holds everywhere stands once a page. */

const NAMES = Object.keys(LATE_PARTS) as (keyof typeof LATE_PARTS)[];

/** What an element warns of, dialogs apart. */
const cautions = (element: Element): string[] =>
  all(element, 'aside.cautions li')
    .filter((one) => !one.closest('dialog'))
    .map(textOf);

const saysGeneral = (element: Element): boolean => GENERAL_CAUTIONS.every((text) => cautions(element).includes(text));
const isSilent = (element: Element): boolean => GENERAL_CAUTIONS.every((text) => !cautions(element).includes(text));

/** Which of some elements say what holds everywhere; each says all of it or nothing. */
function sayers(elements: readonly Element[]): number[] {
  for (const one of elements) expect(saysGeneral(one) || isSilent(one)).to.equal(true);
  return elements.flatMap((one, i) => (saysGeneral(one) ? [i] : []));
}

describe('an element’s own hazards', () => {
  for (const name of NAMES) {
    const { hazards } = LATE_PARTS[name];

    it(`<${name}>: stand outside of every fold, each once, with every fold open`, async () => {
      const [element] = (await put(name, `<${name}></${name}>`)) as [Sheet];
      for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
      await wait(50);
      await settled(element);
      const told = cautions(element);
      for (const words of hazards) expect(told.join(' ')).to.contain(words);
      expect(told.filter((text, i) => told.indexOf(text) !== i)).to.deep.equal([]);
      const rest = textOf(find(element, '.inside'));
      for (const text of told) expect(rest.split(text).length - 1, text).to.equal(1);
      for (const one of all(element, '.cautions')) {
        expect(one.closest('details')).to.equal(null);
        expect(one.querySelector('button, summary, a')).to.equal(null);
      }
    });

    it(`<${name}>: stand in the second of two as well, which does not repeat what holds everywhere`, async () => {
      const elements = await put(name, `<${name}></${name}><${name}></${name}>`);
      expect(sayers(elements)).to.deep.equal([0]);
      for (const words of hazards) expect(cautions(elements[1]!).join(' ')).to.contain(words);
    });

    it(`<${name}>: links to no page of ours`, async () => {
      const [element] = (await put(name, `<${name}></${name}>`)) as [Sheet];
      const links = all<HTMLAnchorElement>(element, 'a[href]').map(({ href }) => href);
      expect(links.filter((href) => /^https?:/.test(href))).to.deep.equal([]);
    });
  }

  for (const name of ['bumpline-geometry', 'bumpline-predict', 'bumpline-toe', 'bumpline-cornering'] as const) {
    it(`<${name}>: a part in somebody’s set brings its own, once, where its list of parts is open`, async () => {
      const [element] = (await put(name, `<${name}></${name}>`)) as [Sheet];
      element.car = new CarModel({
        ...EMPTY_CAR,
        provenance: { setups: { by: 'user' } },
        setups: [
          {
            name: 'mount',
            cornerName: 'Front left',
            quantity: 'camber',
            readings: [],
            parts: [{ part: 'topMountMoved', vector: [0, -5, 0] }],
          },
        ],
        fitted: 0,
      });
      await settled(element);
      for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
      await settled(element);
      expect(cautions(element).filter((text) => text === CAUTIONS.topMount)).to.have.length(1);
    });
  }
});

describe('what holds everywhere', () => {
  const PAIR = '<bumpline-lowering></bumpline-lowering>';

  afterEach(clear);

  it('stands in the first element of a page, of whatever kind, and in it alone', async () => {
    await put('bumpline-toe', `${PAIR}<bumpline-toe></bumpline-toe><bumpline-readings></bumpline-readings>`);
    const elements = [...document.querySelectorAll<Sheet>('main > *')];
    await settled(...elements);
    expect(sayers(elements)).to.deep.equal([0]);
  });

  const [HIDE, SHOW] = [true, false];
  const WAYS: [how: string, markup: string, change: (place: HTMLElement, isHidden: boolean) => void][] = [
    [
      'a `hidden` element around it',
      `<div class="around">${PAIR}</div>${PAIR}`,
      (place, is) => place.querySelector('.around')!.toggleAttribute('hidden', is),
    ],
    ['`hidden` on itself', `${PAIR}${PAIR}`, (place, is) => place.firstElementChild!.toggleAttribute('hidden', is)],
    [
      'closed details',
      `<details open><summary>more</summary><div>${PAIR}</div></details>${PAIR}`,
      (place, is) => place.querySelector('details')!.toggleAttribute('open', !is),
    ],
    [
      'the page’s own style',
      `<div class="around">${PAIR}</div>${PAIR}`,
      (place, is) => {
        place.querySelector<HTMLElement>('.around')!.style.display = is ? 'none' : '';
      },
    ],
  ];
  for (const [how, markup, change] of WAYS) {
    it(`goes to the next when ${how} takes the first away, and comes back`, async () => {
      const elements = await put('bumpline-lowering', markup);
      const place = document.querySelector<HTMLElement>('main')!;
      expect(sayers(elements)).to.deep.equal([0]);
      change(place, HIDE);
      await until('the second says it', () => saysGeneral(elements[1]!));
      change(place, SHOW);
      await until('the first says it', () => saysGeneral(elements[0]!) && isSilent(elements[1]!));
    });
  }

  it('is not in one that is hidden from the beginning', async () => {
    const elements = await put(
      'bumpline-lowering',
      `<details><summary>more</summary>${PAIR}</details><div hidden>${PAIR}</div>${PAIR}`,
    );
    await until('the third says it', () => saysGeneral(elements[2]!));
    expect(sayers(elements)).to.deep.equal([2]);
  });

  it('is in one that stands in the summary of closed details', async () => {
    const elements = await put('bumpline-lowering', `<details><summary>${PAIR}</summary></details>${PAIR}`);
    expect(sayers(elements)).to.deep.equal([0]);
  });

  it('goes to the next when the first is taken off the page or has no answer, and to one that is put before', async () => {
    const elements = await put('bumpline-lowering', `${PAIR}${PAIR}`);
    const [first, second] = elements as [Sheet, Sheet];
    first.remove();
    await until('the second says it', () => saysGeneral(second));
    second.before(first);
    await until('the first says it', () => saysGeneral(first) && isSilent(second));
    first.setAttribute('drop', 'low');
    await settled(first);
    await until('the second says it again', () => saysGeneral(second));
    expect(cautions(first)).to.deep.equal([]);
  });

  it('counts the document’s order through shadow trees', async () => {
    await put('bumpline-lowering', `<div class="host"></div>${PAIR}`);
    const host = document.querySelector('main .host')!;
    host.attachShadow({ mode: 'open' }).innerHTML = `<div class="inside">${PAIR}</div>`;
    const inner = host.shadowRoot!.querySelector<Sheet>('bumpline-lowering')!;
    const outer = document.querySelector<Sheet>('main > bumpline-lowering')!;
    await settled(inner);
    await until('the inner says it', () => saysGeneral(inner) && isSilent(outer));
    host.shadowRoot!.querySelector('.inside')!.toggleAttribute('hidden', true);
    await until('the outer says it', () => saysGeneral(outer));
  });

  it('stands once where a page has several copies of the program', async () => {
    const [element] = (await put('bumpline-lowering', PAIR)) as [Sheet];
    const copy = '/components/element/once-a-page.ts?another-copy';
    const { OnceAPage } = (await import(copy)) as typeof import('../../../components/element/once-a-page.js');
    const other = Object.assign(document.createElement('div'), { textContent: 'another copy’s' });
    let asked = 0;
    const host = Object.assign(other, { addController: () => {}, requestUpdate: () => asked++ });
    const one = new OnceAPage(host as unknown as LitElement);
    element.before(other);
    one.hostConnected();
    expect(one.isFirst(true)).to.equal(true);
    await until('ours is silent', () => isSilent(element));
    other.remove();
    one.hostDisconnected();
    await until('ours says it', () => saysGeneral(element));
    expect(asked).to.be.greaterThan(0);
  });

  it('reads no layout when it is decided', async () => {
    const elements = await put('bumpline-lowering', PAIR.repeat(3));
    const asked: string[] = [];
    const restore: (() => void)[] = [];
    for (const name of ['getBoundingClientRect', 'getClientRects', 'checkVisibility'] as const) {
      const real = Element.prototype[name] as () => never;
      Element.prototype[name] = function (this: Element) {
        asked.push(name);
        return real.call(this);
      } as never;
      restore.push(() => {
        Element.prototype[name] = real as never;
      });
    }
    for (const name of ['offsetHeight', 'offsetWidth', 'offsetParent'] as const) {
      const real = Object.getOwnPropertyDescriptor(HTMLElement.prototype, name)!;
      Object.defineProperty(HTMLElement.prototype, name, {
        ...real,
        get(this: HTMLElement) {
          asked.push(name);
          return real.get!.call(this);
        },
      });
      restore.push(() => Object.defineProperty(HTMLElement.prototype, name, real));
    }
    elements[0]!.toggleAttribute('hidden', true);
    await Promise.resolve();
    const during = [...asked];
    for (const back of restore) back();
    expect(during).to.deep.equal([]);
    await until('the second says it', () => saysGeneral(elements[1]!));
  });

  it('is whole where no element of the page can show what comes late', async () => {
    const [element] = (await put('bumpline-toe', '<bumpline-toe></bumpline-toe>')) as [Sheet];
    expect(root(element).querySelector('.sheet')!.lastElementChild!.className).to.equal('cautions');
    expect(saysGeneral(element)).to.equal(true);
  });
});
