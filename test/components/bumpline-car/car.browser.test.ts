import { expect } from 'chai';
import { LitElement } from 'lit';
import type { BumplineCar } from '../../../components/bumpline-car/bumpline-car.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { CarController } from '../../../components/car/car-controller.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { carToLink } from '../../../core/document/link.js';
import type { Setup } from '../../../core/document/setup.js';
import { withSetup } from '../../../core/document/setup-edits.js';
import { EXAMPLE_SETUP, withPageSetups } from '../../../core/document/setups.js';
import { find, referenceTable, root, sentenceOf, type, wait } from '../bumpline-lowering/set-up.js';

let place: HTMLElement | undefined;

/** Every element of some markup once it has settled, in order. */
async function put(markup: string): Promise<BumplineLowering[]> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = markup;
  document.body.append(place);
  return settled();
}

async function settled(): Promise<BumplineLowering[]> {
  for (const car of place!.querySelectorAll('bumpline-car')) await car.updateComplete;
  const elements = [...place!.querySelectorAll('bumpline-lowering')];
  for (const element of elements) await element.settled;
  return elements;
}

const setDrop = (element: BumplineLowering, text: string) => type(find(element, '.drop'), text);
const drops = (elements: BumplineLowering[]) => elements.map(({ answer }) => answer?.drop);
const carOf = () => place!.querySelector('bumpline-car') as BumplineCar;
const user = (more: Partial<CarDocument>): CarDocument => ({
  ...EMPTY_CAR,
  provenance: { corner: { by: 'user' } },
  ...more,
});

describe('<bumpline-car>', () => {
  it('keeps two elements in step, and their undo', async () => {
    const elements = await put(
      '<bumpline-car><bumpline-lowering></bumpline-lowering><section><bumpline-lowering units="in"></bumpline-lowering></section></bumpline-car>',
    );
    const [first, second] = elements as [BumplineLowering, BumplineLowering];
    await setDrop(first, '24');
    await second.settled;
    expect(drops(elements)).to.deep.equal([24, 24]);
    expect(sentenceOf(second)).to.contain('Lowering 0.94');
    // What one did the other takes back.
    find<HTMLButtonElement>(second, '.undo').click();
    await settled();
    expect(drops(elements)).to.deep.equal([30, 30]);
    find<HTMLButtonElement>(first, '.redo').click();
    await settled();
    expect(drops(elements)).to.deep.equal([24, 24]);
  });

  it('leaves elements outside it alone', async () => {
    const elements = await put(
      '<bumpline-lowering></bumpline-lowering><bumpline-car><bumpline-lowering></bumpline-lowering></bumpline-car>',
    );
    await setDrop(elements[1]!, '24');
    await settled();
    expect(drops(elements)).to.deep.equal([30, 24]);
  });

  it('draws nothing and takes no room of its own', async () => {
    await put('<bumpline-car><p>Text</p></bumpline-car>');
    expect(getComputedStyle(carOf()).display).to.equal('contents');
    expect(root(carOf()).querySelectorAll('*:not(slot)')).to.have.length(0);
  });

  it('reaches through shadow roots, and the nearest one counts', async () => {
    await put('<bumpline-car><div></div><bumpline-car><b></b></bumpline-car></bumpline-car>');
    const add = (host: Element) => {
      const inner = host.attachShadow({ mode: 'open' }).appendChild(document.createElement('div'));
      const element = document.createElement('bumpline-lowering');
      inner.attachShadow({ mode: 'open' }).append(element);
      return element;
    };
    const outer = add(place!.querySelector('div')!);
    const span = document.createElement('span');
    place!.querySelector('b')!.replaceWith(span);
    const inner = add(span);
    await outer.settled;
    await inner.settled;
    await setDrop(outer, '20');
    expect(carOf().car!.car.drop).to.equal(20);
    expect(carOf().querySelector('bumpline-car')!.car!.car.drop).to.equal(30);
    await setDrop(inner, '22');
    expect(carOf().querySelector('bumpline-car')!.car!.car.drop).to.equal(22);
    expect(outer.answer!.drop).to.equal(20);
  });

  it('is found by its id from elsewhere, out of shadow roots too, whichever comes first', async () => {
    const [before] = await put('<bumpline-lowering car-id="shared"></bumpline-lowering><div></div>');
    const within = document.createElement('bumpline-lowering');
    within.carId = 'shared';
    place!.querySelector('div')!.attachShadow({ mode: 'open' }).append(within);
    await within.settled;
    expect(before!.answer!.drop).to.equal(30);
    place!.insertAdjacentHTML('beforeend', '<bumpline-car id="shared"></bumpline-car>');
    await settled();
    await setDrop(within, '21');
    await settled();
    expect(before!.answer!.drop).to.equal(21);
    before!.carId = 'nobody';
    await before!.settled;
    expect(before!.answer!.drop).to.equal(30);
  });

  it('works when it is defined after the elements in it', async () => {
    const { BumplineCar } = await import('../../../components/bumpline-car/bumpline-car.js');
    const late = `late-car-${Date.now()}`;
    const elements = await put(
      `<${late}><bumpline-lowering></bumpline-lowering><bumpline-lowering></bumpline-lowering></${late}>`,
    );
    await setDrop(elements[0]!, '26');
    expect(drops(elements)).to.deep.equal([26, 30]);
    customElements.define(late, class extends BumplineCar {});
    await wait(50);
    await settled();
    await setDrop(elements[1]!, '23');
    await settled();
    expect(drops(elements)).to.deep.equal([23, 23]);
  });

  it('works when it is defined before them', async () => {
    await put('<bumpline-car></bumpline-car>');
    await carOf().updateComplete;
    const { BumplineLowering } = await import('../../../components/bumpline-lowering/bumpline-lowering.js');
    const late = `late-lowering-${Date.now()}`;
    carOf().innerHTML = `<bumpline-lowering></bumpline-lowering><${late}></${late}>`;
    customElements.define(late, class extends BumplineLowering {});
    const element = carOf().lastElementChild as BumplineLowering;
    await element.settled;
    await settled();
    await setDrop(element, '22');
    const [other] = await settled();
    expect(other!.answer!.drop).to.equal(22);
  });

  it('keeps what somebody typed before it was there', async () => {
    const { BumplineCar } = await import('../../../components/bumpline-car/bumpline-car.js');
    const late = `later-car-${Date.now()}`;
    const [element] = await put(`<${late}><bumpline-lowering></bumpline-lowering></${late}>`);
    element!.dispatchEvent(new Event('x'));
    find<HTMLButtonElement>(element!, '.own').click();
    await element!.settled;
    find<HTMLInputElement>(element!, 'dialog input[value=driveway]').click();
    [...root(element!).querySelectorAll<HTMLButtonElement>('dialog .button.main')].at(-1)!.click();
    await element!.settled;
    await wait(20);
    await type(find(element!, 'dialog .fields input'), '352');
    find<HTMLDialogElement>(element!, 'dialog').close();
    expect(find(element!, '.owner').textContent).to.equal('1 of 6 are yours');
    customElements.define(late, class extends BumplineCar {});
    await wait(50);
    await element!.settled;
    expect(find(element!, '.owner').textContent).to.equal('1 of 6 are yours');
  });

  it('takes what the page says inside the elements in it, until a user changes something', async () => {
    const elements = await put(
      `<bumpline-car><bumpline-lowering></bumpline-lowering><bumpline-lowering drop="40">${referenceTable}</bumpline-lowering></bumpline-car>`,
    );
    expect(drops(elements)).to.deep.equal([40, 40]);
    expect(elements.map((element) => find(element, '.owner').textContent)).to.deep.equal([
      'this page’s points',
      'this page’s points',
    ]);
    await setDrop(elements[0]!, '25');
    await settled();
    elements[1]!.drop = 50;
    await settled();
    expect(drops(elements)).to.deep.equal([25, 25]);
  });

  it('takes the car a page gives it, then and later', async () => {
    const elements = await put('<bumpline-car><bumpline-lowering></bumpline-lowering></bumpline-car>');
    carOf().car = new CarModel(user({ drop: 17 }));
    await wait(0);
    await settled();
    expect(drops(elements)).to.deep.equal([17]);
  });

  it('is left when an element is moved out, and joined when it is moved in', async () => {
    const elements = await put('<bumpline-car><bumpline-lowering></bumpline-lowering></bumpline-car><aside></aside>');
    await setDrop(elements[0]!, '24');
    place!.querySelector('aside')!.append(elements[0]!);
    await settled();
    expect(drops(elements)).to.deep.equal([30]);
    carOf().append(elements[0]!);
    await settled();
    expect(drops(elements)).to.deep.equal([24]);
  });
});

/** Another element that shares a car, whose light DOM gives readings. */
class ReadingsGiver extends LitElement {
  static override properties = { car: { attribute: false }, carId: { attribute: 'car-id' } };
  declare car: CarModel | undefined;
  declare carId: string | undefined;
  keepInAddress = false;
  readonly cars = new CarController(this, () => {});
  give(value: number): void {
    const setup: Setup = {
      ...EXAMPLE_SETUP,
      name: 'Works',
      readings: [-20, 0, 20, 40].map((t) => ({ travel: t, value: value * t })),
    };
    this.cars.pageGives('setups', (car) => withPageSetups(car, [setup]), true, true);
  }
  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) return;
    this.give(-0.01);
    this.addController(this.cars);
  }
}
customElements.define('readings-giver', ReadingsGiver);

describe('<bumpline-car> and a page’s readings', () => {
  const giver = () => place!.querySelector('readings-giver') as ReadingsGiver;

  it('has the others answer from them, as the page’s', async () => {
    const [element] = await put(
      '<bumpline-car><bumpline-lowering drop="20"></bumpline-lowering><readings-giver></readings-giver></bumpline-car>',
    );
    expect(element!.answer!.change.value).to.be.closeTo(-0.2, 1e-9);
    expect(find(element!, '.owner').textContent).to.equal('from 4 readings in 1 pass, Works');
    giver().give(-0.02);
    await element!.settled;
    expect(element!.answer!.change.value).to.be.closeTo(-0.4, 1e-9);
    // A drop that somebody chose is not a reading.
    await setDrop(element!, '10');
    giver().give(-0.03);
    await element!.settled;
    expect(element!.answer!.change.value).to.be.closeTo(-0.3, 1e-9);
  });

  it('lets the user’s own replace them, with one undo for all', async () => {
    const [element] = await put(
      '<bumpline-car><bumpline-lowering drop="20"></bumpline-lowering><readings-giver></readings-giver></bumpline-car>',
    );
    const readings = [-30, 0, 30].flatMap((travel) => [0, 0.001].map((by) => ({ travel, value: -0.05 * travel + by })));
    giver().cars.model.update('readings', (car) => withSetup(car, (setup) => ({ ...setup, readings })));
    await element!.settled;
    expect(element!.answer!.change.value).to.be.closeTo(-1, 1e-6);
    giver().give(-0.04);
    await element!.settled;
    expect(element!.answer!.change.value).to.be.closeTo(-1, 1e-6);
    find<HTMLButtonElement>(element!, '.undo').click();
    await element!.settled;
    expect(element!.answer!.change.value).to.be.closeTo(-0.2, 1e-9);
  });

  it('reach no car that a page’s script gave', async () => {
    await put('<readings-giver></readings-giver>');
    const model = new CarModel(EMPTY_CAR);
    giver().car = model;
    giver().cars.find();
    giver().give(-0.02);
    expect(giver().cars.model).to.equal(model);
    expect(model.car).to.equal(EMPTY_CAR);
  });
});

describe('<bumpline-car keep-in-address>', () => {
  const bare = location.href.replace(/#.*$/, '');
  const setAddress = (hash: string) => history.replaceState(null, '', `${bare}${hash}`);
  afterEach(() => setAddress(''));

  const given = { points: {}, measures: { armLength: { value: 352, plusMinus: 3 } } };

  for (const [name, markup] of [
    ['on it', '<bumpline-car keep-in-address><bumpline-lowering></bumpline-lowering></bumpline-car>'],
    [
      'on it and on elements in it',
      '<bumpline-car keep-in-address><bumpline-lowering keep-in-address></bumpline-lowering><bumpline-lowering keep-in-address></bumpline-lowering></bumpline-car>',
    ],
    [
      'on an element in it',
      '<bumpline-car><bumpline-lowering keep-in-address></bumpline-lowering><bumpline-lowering></bumpline-lowering></bumpline-car>',
    ],
  ]) {
    it(`${name}: reads the address once, and writes it once a change`, async () => {
      setAddress(`#${carToLink(user({ given, drop: 24 }))}`);
      const elements = await put(markup!);
      for (const element of elements) {
        expect(find(element, '.owner').textContent).to.equal('1 of 6 are yours');
        expect(element.answer!.drop).to.equal(24);
      }
      let writes = 0;
      const { replaceState } = history;
      history.replaceState = (...call) => {
        writes++;
        replaceState.apply(history, call);
      };
      try {
        await setDrop(elements[0]!, '26');
        await wait(450);
      } finally {
        history.replaceState = replaceState;
      }
      expect(writes).to.equal(1);
      expect(location.hash).to.contain('drop=26').and.to.contain('armLength=352~3');
      // A link pasted into the same tab is the same car for all.
      location.hash = carToLink(user({ given, drop: 18 }));
      await wait(50);
      await settled();
      expect(drops(elements)).to.deep.equal(elements.map(() => 18));
      expect(elements.every((element) => !find(element, '.undo'))).to.equal(true);
    });
  }
});
