import { emulateMedia, executeServerCommand, sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineGeometry } from '../../../components/bumpline-geometry/bumpline-geometry.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { byUser } from '../../../core/document/own-car.js';
import { give } from '../../../core/document/provenance.js';
import type { Setup } from '../../../core/document/setup.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { wishboneCorner } from '../bumpline-lowering/set-up.js';
import { all, clear, find, press, put, root, settled, textOf, type, until, wait } from '../contract/stage.js';
import { referenceCorner } from '../reference-corner.js';

type Element = BumplineGeometry & Parameters<typeof settled>[0];

async function geometry(width: number, attributes = '', inside = '', height = 900): Promise<Element> {
  await setViewport({ width, height });
  const [element] = await put('bumpline-geometry', `<bumpline-geometry ${attributes}>${inside}</bumpline-geometry>`);
  element!.parentElement!.style.width = `${width}px`;
  await settled(element!);
  return element as Element;
}

const withCar = async (width: number, car: CarDocument): Promise<Element> => {
  const element = await geometry(width);
  element.car = new CarModel(byUser(car));
  await settled(element);
  return element;
};

const drawn = async (element: Element): Promise<HTMLCanvasElement[]> => {
  find(element, '.stack')!.scrollIntoView();
  await until('the charts are drawn', () => all(element, 'canvas').length > 0);
  await wait(150);
  return all<HTMLCanvasElement>(element, 'canvas');
};

/** Least opacity, of 255, of a pixel in a slanted line. */
const SLANTED = 60;

/** How many pixels of a canvas have nearly a colour, as `rgb(r, g, b)`, between two places from its left, CSS px. */
function pixelsOf(
  canvas: HTMLCanvasElement,
  colour: string,
  between?: [from: number, to: number],
  opaque = 250,
): number {
  const [r, g, b] = colour.match(/\d+/g)!.map(Number) as [number, number, number];
  const [from, to] = (between ?? [0, canvas.clientWidth]).map((px) =>
    Math.round((px * canvas.width) / canvas.clientWidth),
  );
  const { data } = canvas.getContext('2d')!.getImageData(from!, 0, to! - from!, canvas.height);
  let count = 0;
  for (let i = 0; i < data.length; i += 4) {
    const isNear = Math.abs(data[i]! - r) + Math.abs(data[i + 1]! - g) + Math.abs(data[i + 2]! - b) < 12;
    if (data[i + 3]! > opaque && isNear) count++;
  }
  return count;
}

/** What a colour of the theme comes to in the element. */
function colourOf(element: Element, name: string): string {
  const probe = document.createElement('i');
  probe.style.color = `var(--_${name})`;
  find(element, '.sheet')!.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

const values = (element: Element) => all(element, '.stack-values').map(textOf);
const chosen = (element: Element) => all(element, '.stack-chart').filter((chart) => chart.checkVisibility());
const textarea = (element: Element) => find<HTMLTextAreaElement>(element, '.json-text')!;

async function useJson(element: Element, text: string): Promise<void> {
  find<HTMLDetailsElement>(element, '.corner-json')!.open = true;
  await settled(element);
  const field = textarea(element);
  field.value = text;
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await press(element, '.use-json');
}

/** As a stranger's program may write it. */
const STRANGERS = `{
\t"kind": "strut", "loadedRadius": 302.0,
\t"toe": 0.10, "camber": -0.50,
\t"wheelCentre": [0.0, 738.00, 302],
\t"lowerArm": {"ball":[0,694,176], "rear":[-268,362,198], "front":[24,356,193]},
\t"strut": {"top": [-79, 574, 822], "low": [-38, 625, 462]},
\t"tieRod": {"inner": [-124, 340, 256], "outer": [-128, 664, 245]}
}
`;

/** Of test/reference/derived_double_wishbone_3d.json, at 40 mm of bump. */
const WISHBONE_ROLL_CENTRE_40 = 43.11788867595;

/** The stranger's corner with every coordinate another. */
const mapped = (change: (value: number, axis: number) => number): string =>
  JSON.stringify(JSON.parse(STRANGERS), (_, value: unknown) =>
    Array.isArray(value) ? value.map((one, axis) => change(one as number, axis)) : value,
  );

/** Of a strut. */
const topMount = (element: Element): readonly number[] => {
  const { corner } = element.answer!.bare.curves;
  return corner.kind === 'strut' ? corner.strut.top : [];
};

describe('<bumpline-geometry>', () => {
  afterEach(async () => {
    clear();
    document.documentElement.style.colorScheme = '';
    await executeServerCommand('media-features', []);
    await emulateMedia({ media: 'screen', colorScheme: 'light' });
  });

  it('draws every output with all sets over each other where there is width, each in its own lines', async () => {
    const element = await geometry(1100);
    const canvases = await drawn(element);
    expect(canvases).to.have.length(11);
    expect(chosen(element)).to.have.length(11);
    const [now, before] = [colourOf(element, 'now'), colourOf(element, 'before')];
    for (const canvas of canvases) {
      expect(pixelsOf(canvas, now), 'the set in the sentence').to.be.greaterThan(30);
      expect(pixelsOf(canvas, before), 'the bare links').to.be.greaterThan(30);
    }
    expect(all(element, '.legend li').map(textOf)).to.deep.equal([
      'Without parts',
      '22 mm joint + rod end',
      '22 mm joint',
    ]);
  });

  it('fetches what draws the charts only once they come near the window', async () => {
    const element = await geometry(360, '', '', 400);
    expect(find(element, '.stack')!.getBoundingClientRect().top).to.be.greaterThan(400 + 300);
    await wait(300);
    expect(all(element, 'canvas')).to.have.length(0);
    await drawn(element);
    expect(all(element, 'canvas')).to.have.length(1);
  });

  it('shows one chart at a time on a phone, by a chooser, and nothing wider than it', async () => {
    const element = await geometry(360);
    await drawn(element);
    expect(chosen(element).map((chart) => textOf(chart.querySelector('b')))).to.deep.equal(['Camber, °']);
    const select = find<HTMLSelectElement>(element, '.stack-choice select')!;
    select.value = 'rollCentreHeight';
    select.dispatchEvent(new Event('change'));
    await settled(element);
    await wait(100);
    const [chart] = chosen(element);
    expect(textOf(chart!.querySelector('b'))).to.equal('Roll centre above the ground, mm');
    expect(pixelsOf(chart!.querySelector('canvas')!, colourOf(element, 'now'))).to.be.greaterThan(30);
    expect(find(element, '.sheet')!.scrollWidth).to.be.at.most(360);
  });

  it('moves one cursor through all charts by keys, told as a slider’s value', async () => {
    const element = await geometry(1100);
    await drawn(element);
    const boxes = all(element, '.canvas-box');
    expect(boxes[0]!.getAttribute('aria-valuetext')).to.match(/^\+30\smm: Without parts −/);
    boxes[2]!.focus();
    await sendKeys({ press: 'PageUp' });
    await sendKeys({ press: 'ArrowLeft' });
    await wait(100);
    for (const text of values(element)) expect(text).to.match(/^at \+39\smm/);
    for (const box of boxes) expect(box.getAttribute('aria-valuenow')).to.equal('39');
    const at = all(element, '.u-cursor-x').map((line) => {
      const { left } = line.getBoundingClientRect();
      const over = line.parentElement!.getBoundingClientRect();
      return (left - over.left) / over.width;
    });
    for (const share of at) expect(share).to.be.closeTo(99 / 160, 0.01);
    await sendKeys({ press: 'Escape' });
    await wait(100);
    for (const text of values(element)) expect(text).to.match(/^at \+30\smm/);
  });

  it('follows the mouse with every chart, and stays where it leaves', async () => {
    const element = await geometry(1100);
    await drawn(element);
    const { left, top, width, height } = find(element, '.u-over')!.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
    await wait(150);
    for (const text of values(element)) expect(text).to.match(/^at \+(?:19|20|21)\smm/);
    await sendMouse({ type: 'move', position: [5, 5] });
    await wait(150);
    for (const text of values(element)) expect(text).to.match(/^at \+(?:19|20|21)\smm/);
  });

  it('zooms all charts by a drag across one, and back', async () => {
    const element = await geometry(1100);
    await drawn(element);
    const { left, top, width, height } = find(element, '.u-over')!.getBoundingClientRect();
    const y = Math.round(top + height / 2);
    await sendMouse({ type: 'move', position: [Math.round(left + 0.375 * width), y] });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [Math.round(left + 0.5 * width), y] });
    await sendMouse({ type: 'move', position: [Math.round(left + 0.625 * width), y] });
    await sendMouse({ type: 'up' });
    await wait(150);
    const box = all(element, '.canvas-box')[4]!;
    box.focus();
    const ends = async () => {
      const found: number[] = [];
      for (const key of ['Home', 'End']) {
        await sendKeys({ press: key });
        await wait(60);
        found.push(Number(box.getAttribute('aria-valuenow')));
      }
      return found;
    };
    const [from, to] = await ends();
    expect(from).to.be.closeTo(0, 2);
    expect(to).to.be.closeTo(40, 2);
    await press(element, '.all-travel');
    box.focus();
    expect(await ends()).to.deep.equal([-60, 100]);
    await press(element, '.closer');
    box.focus();
    const closer = await ends();
    expect(closer[1]! - closer[0]!).to.equal(80);
  });

  it('reads its colours again when its theme, the page’s scheme, an author’s property or forced colours change', async () => {
    const element = await geometry(700, 'theme="light"');
    const [canvas] = await drawn(element);
    const expectNow = async (what: string) => {
      await wait(250);
      expect(pixelsOf(canvas!, colourOf(element, 'now')), what).to.be.greaterThan(30);
    };
    const light = colourOf(element, 'now');
    await expectNow('light');
    element.setAttribute('theme', 'dark');
    await expectNow('dark');
    expect(colourOf(element, 'now')).not.to.equal(light);
    expect(pixelsOf(canvas!, light)).to.equal(0);
    element.style.setProperty('--bumpline-now', 'rgb(200, 0, 120)');
    await expectNow('an author’s');
    expect(colourOf(element, 'now')).to.equal('rgb(200, 0, 120)');
    element.style.removeProperty('--bumpline-now');
    element.removeAttribute('theme');
    document.documentElement.style.colorScheme = 'dark';
    await expectNow('the page’s');
    await executeServerCommand('media-features', [{ name: 'forced-colors', value: 'active' }]);
    await expectNow('forced colours');
  });

  it('prints an SVG of every chart in place of its canvas', async () => {
    const element = await geometry(360, 'theme="dark"');
    await drawn(element);
    await emulateMedia({ media: 'print' });
    await wait(100);
    const papers = all(element, '.stack-paper svg').filter((paper) => paper.checkVisibility());
    expect(papers).to.have.length(11);
    expect(papers[2]!.getAttribute('aria-label')).to.contain('Roll centre above the ground over wheel travel');
    expect(all(element, '.canvas-box').filter((box) => box.checkVisibility())).to.have.length(0);
    const line = papers[0]!.querySelector('.line.now')!;
    expect(getComputedStyle(line).stroke).to.equal('rgb(11, 87, 164)');
    await emulateMedia({ media: 'screen' });
    await wait(100);
    expect(all(element, '.stack-paper svg')).to.have.length(0);
  });

  it('hatches what lies beyond the end of bump travel, on the canvas and on paper, and says so', async () => {
    const element = await withCar(
      1100,
      give({ ...EMPTY_CAR }, 'bumpTravel', 'user', () => ({ bumpTravel: 60 })),
    );
    const [canvas] = await drawn(element);
    const plot = find(element, '.u-over')!.getBoundingClientRect();
    const box = canvas!.getBoundingClientRect();
    const at = (travel: number) => plot.left - box.left + ((travel + 60) / 160) * plot.width;
    const limit = colourOf(element, 'limit');
    expect(pixelsOf(canvas!, limit, [at(62), at(99)], SLANTED), 'beyond it').to.be.greaterThan(30);
    expect(pixelsOf(canvas!, limit, [at(-59), at(58)], SLANTED), 'before it').to.equal(0);
    expect(textOf(find(element, '.ends'))).to.match(/beyond 60\smm of bump, where bump travel as measured ends it/);
    await emulateMedia({ media: 'print' });
    // Paper is drawn when the media has changed, behind what else there is to do.
    const hatched = () => all(element, '.stack-paper .hatch.limit');
    for (let i = 0; i < 40 && hatched().length === 0; i++) await wait(100);
    expect(hatched()).to.have.length(11);
  });

  it('says in its sentence what the second solver of the article says, at the drop that is typed', async () => {
    const element = await geometry(700);
    await type(element, '25');
    const said = textOf(find(element, '.sentence .says'));
    // test/pages/worked-lower-joint.ts: 8.58 mm, 75.0 mm; 64.27 mm, −0.4718° and −0.2236° with the rod’s end lowered too.
    expect(said).to.match(/stands 9\s±\s10\smm above the ground \(75\smm at stock height\)/);
    expect(said).to.match(/it stands 64\s±\s10\smm above, .*by −0\.47°\s±\s0\.0\d° \(−0\.22° without it\)/);
    expect(said).to.match(/0\.17° out without it/);
  });

  it('lists what the set changes at the drop beside what it comes to, and what each ± is made of', async () => {
    const element = await geometry(360);
    await type(element, '25');
    const listed = () => textOf(find(element, '.changes'));
    expect(listed()).to.match(/What “22 mm joint \+ rod end” changes at 25\smm lower/);
    expect(listed()).to.match(/Roll centre\s*\+56\s±\s3\smm/);
    const why = find<HTMLDetailsElement>(element, '.why')!;
    why.open = true;
    await settled(element);
    const lists = all(element, '.why .shares').map((list) => [...list.querySelectorAll('li')].map(textOf));
    expect(lists).to.have.length(2);
    expect(getComputedStyle(find(element, '.why .bar')!).position, 'drawn as bars').to.equal('absolute');
    expect(lists[0]!.join()).to.match(/top mount|low point of the damper|ball joint/);
    expect(lists[1]![0]!, 'the part’s own tolerance').to.match(/tolerance of the ball joint|match of the tie-rod end/);
    const select = find<HTMLSelectElement>(element, '.sets select')!;
    select.value = '1';
    select.dispatchEvent(new Event('change'));
    await settled(element);
    expect(listed()).to.contain('What “22 mm joint” changes');
    expect(find(element, '.sheet')!.scrollWidth).to.be.at.most(360);
  });

  it('gives a stranger’s corner back byte for byte, and only the number that was moved on the drawing anew', async () => {
    const element = await geometry(700);
    await useJson(element, STRANGERS);
    expect(element.state).to.equal('ready');
    expect(textarea(element).value).to.equal(STRANGERS);
    const ball = all<HTMLButtonElement>(element, '.drawing button').find((button) =>
      button.getAttribute('aria-label')!.startsWith('3 '),
    )!;
    ball.focus();
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'ArrowDown' });
    await settled(element);
    expect(textarea(element).value).to.equal(STRANGERS.replace('[0,694,176]', '[0,694,174]'));
    expect(element.answer!.bare.curves.corner.lowerArm.ball).to.deep.equal([0, 694, 174]);
    await press(element, '.undo');
    await press(element, '.undo');
    expect(textarea(element).value).to.equal(STRANGERS);
  });

  it('moves a point by the mouse as one step, in the axes of the view, and a press still opens its sheet', async () => {
    const element = await geometry(1100);
    all<HTMLButtonElement>(element, '.views button')[1]!.click();
    await settled(element);
    const button = () =>
      all<HTMLButtonElement>(element, '.drawing button').find((one) =>
        one.getAttribute('aria-label')!.startsWith('4 '),
      )!;
    const { left, top, width, height } = button().getBoundingClientRect();
    const [x, y] = [Math.round(left + width / 2), Math.round(top + height / 2)];
    await sendMouse({ type: 'move', position: [x, y] });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [x + 20, y] });
    await sendMouse({ type: 'move', position: [x + 30, y] });
    await sendMouse({ type: 'up' });
    await settled(element);
    // From outside the car, forward is to the left.
    expect(topMount(element)[0]!).to.be.lessThan(-79);
    expect(topMount(element).slice(1)).to.deep.equal([574, 822]);
    expect(find<HTMLDialogElement>(element, 'dialog')!.open).to.equal(false);
    await press(element, '.undo');
    expect(topMount(element)[0]).to.equal(-79);
    button().click();
    await settled(element);
    expect(find<HTMLDialogElement>(element, 'dialog')!.open).to.equal(true);
    expect(textOf(find(element, '#sheet-title .title'))).to.equal('Top mount');
  });

  it('says at the field that a corner with a member of its own makes no answer, and keeps the text', async () => {
    const element = await geometry(360);
    const text = STRANGERS.replace('"kind"', '"madeBy": "another program", "kind"');
    await useJson(element, text);
    expect(textOf(find(element, '#corner-said'))).to.match(/taken.*no answer/);
    expect(textarea(element).value).to.equal(text);
    await useJson(element, STRANGERS);
    expect(textOf(find(element, '#corner-said'))).to.match(/in use/);
  });

  it('names the example’s sets without an amount once they are the user’s, and shows each name whole on a phone', async () => {
    const element = await geometry(360);
    const select = () => find<HTMLSelectElement>(element, '.sets select')!;
    const isWhole = () => {
      const { fontSize, fontFamily, paddingLeft, paddingRight } = getComputedStyle(select());
      const pen = document.createElement('canvas').getContext('2d')!;
      pen.font = `${fontSize} ${fontFamily}`;
      const room = select().clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight);
      return [...select().options].every(({ text }) => pen.measureText(text).width <= room);
    };
    expect(isWhole(), 'the example’s names').to.equal(true);
    await press(element, '.adopt');
    expect([...select().options].map(({ text }) => text)).to.deep.equal(['Lower joint, rod end too', 'Lower joint']);
    expect(textOf(find(element, '.set summary'))).to.match(/lower joint \+22\smm, tie rod corrected/);
    expect(textOf(find(element, '.sentence'))).not.to.contain('22 mm');
  });

  it('keeps the letters of a point’s three numbers off the names of the links', async () => {
    const element = await geometry(360);
    for (let i = 0; i < 8; i++) {
      all<HTMLButtonElement>(element, '.drawing button')[i]!.click();
      await settled(element);
      const boxes = (selector: string) =>
        all(element, `dialog .where ${selector}`).map((text) => text.getBoundingClientRect());
      for (const letter of boxes('text.name')) {
        for (const name of boxes('text.link')) {
          // A box of text is taller than its ink.
          const apart = Math.max(
            name.left - letter.right,
            letter.left - name.right,
            name.top - letter.bottom,
            letter.top - name.bottom,
          );
          expect(apart, textOf(find(element, '#sheet-title .title'))).to.be.greaterThan(-5);
        }
      }
      find<HTMLDialogElement>(element, 'dialog')!.close();
      await settled(element);
    }
  });

  it('tells a text that is no corner at its field, keeps it there and changes nothing', async () => {
    const element = await geometry(360);
    const before = element.answer;
    for (const [text, words] of [
      ['{"kind": "strut",', /not JSON/],
      ['[1, 2]', /not a corner/],
      ['{"kind": "multilink"}', /“strut” or “wishbone”/],
    ] as const) {
      await useJson(element, text);
      expect(textOf(find(element, '#corner-said'))).to.match(words);
      expect(textarea(element).value).to.equal(text);
      expect(textarea(element).getAttribute('aria-invalid')).to.equal('true');
      expect(element.answer).to.equal(before);
    }
  });

  it('tells a corner’s wrong points by their names, with the last good answer marked as one', async () => {
    const element = await geometry(700);
    await useJson(element, STRANGERS);
    for (const [wrong, words] of [
      // Of the right corner; in inches.
      [mapped((n, axis) => (axis === 1 ? -n : n)), /right/i],
      [mapped((n) => Math.round(n / 2.54) / 10), /inch/i],
      [STRANGERS.replace('"toe": 0.10, ', ''), /toe/i],
    ] as const) {
      const good = element.answer;
      await useJson(element, wrong);
      expect(element.state).to.equal('stale');
      expect(textOf(find(element, '#problems'))).to.match(words);
      expect(textOf(find(element, '.sentence'))).to.contain('Last answer:');
      expect(Number(getComputedStyle(find(element, '.canvas-box')!).opacity)).to.be.lessThan(1);
      expect(element.answer).to.equal(good);
      await press(element, '.undo');
      expect(element.state).to.equal('ready');
    }
  });

  it('opens a double wishbone and shows its curves, with no strut’s sheets and no motion ratio', async () => {
    const element = await geometry(1100);
    const text = JSON.stringify(wishboneCorner);
    await useJson(element, text);
    expect(element.state).to.equal('ready');
    expect(textarea(element).value).to.equal(text);
    expect(await drawn(element)).to.have.length(10);
    expect(all(element, '.drawing button')).to.have.length(0);
    expect(textOf(find(element, '.owner'))).to.equal('all yours');
    // Nobody said how well its points are known: what the part alone leaves open is no ± of it.
    expect(textOf(find(element, '.sentence'))).not.to.contain('±');
    expect(find(element, '.inputs')).to.equal(null);
    const { travel, outputs } = element.answer!.bare.curves;
    expect(outputs.rollCentreHeight![travel.indexOf(40)]).to.be.closeTo(WISHBONE_ROLL_CENTRE_40, 1e-6);
  });

  it('puts sets that a page’s script gives on its links, tells what is none, and leaves a user’s own alone', async () => {
    const element = await geometry(700);
    const { travel, outputs } = element.answer!.sets[0]!.curves;
    const at = travel.indexOf(25);
    const set = (name: string, mm: number): Setup => ({
      name,
      cornerName: 'Front left',
      quantity: 'camber',
      readings: [],
      parts: [{ part: 'ballJointExtended', mm, correctTieRod: true }],
    });
    element.setups = [set('Ours', 22), set('Twice as long', 40)];
    await settled(element);
    expect(element.answer!.sets.map(({ set: { setup, by } }) => [setup.name, by])).to.deep.equal([
      ['Ours', 'page'],
      ['Twice as long', 'page'],
    ]);
    const height = (i: number) => element.answer!.sets[i]!.curves.outputs.rollCentreHeight![at]!;
    expect(height(0)).to.be.closeTo(outputs.rollCentreHeight![at]!, 1e-9);
    expect(height(1)).to.be.greaterThan(height(0) + 20);
    expect(textOf(find(element, '.sentence'))).to.contain('“Ours”');
    element.setups = [set('Ours', 22), { name: 'No set' } as unknown as Setup];
    await settled(element);
    expect(textOf(find(element, '#problems'))).to.match(/setups\.1/);
    element.setups = undefined;
    await settled(element);
    expect(element.answer!.sets[0]!.set.by).to.equal('example');
    find<HTMLDetailsElement>(element, '.set')!.open = true;
    await press(element, '.adopt');
    element.setups = [set('Ours', 22)];
    await settled(element);
    expect(element.answer!.sets.map(({ set: { by } }) => by)).to.deep.equal(['user', 'user']);
  });

  it('takes the example’s parts over to be changed, with the curves and the sentence after each amount', async () => {
    const element = await geometry(360);
    find<HTMLDetailsElement>(element, '.set')!.open = true;
    await press(element, '.adopt');
    expect(element.answer!.sets.map(({ set }) => set.by)).to.deep.equal(['user', 'user']);
    const field = () => find<HTMLInputElement>(element, '[id="setups.0.parts.0.mm"]')!;
    const before = element.answer!.sets[0]!.curves.outputs.rollCentreHeight![20]!;
    field().value = '15';
    field().dispatchEvent(new InputEvent('input', { bubbles: true }));
    field().dispatchEvent(new Event('blur'));
    await settled(element);
    expect(element.answer!.sets[0]!.curves.outputs.rollCentreHeight![20]!).to.be.lessThan(before - 10);
    expect(element.answer!.sets[0]!.doubt, 'its ± comes after it').not.to.equal(undefined);
  });

  it('tells a part that leaves no links at its field, with the last good answer marked as one', async () => {
    const car = addParts({ ...EMPTY_CAR }, 'Mine', [{ part: 'armLonger', mm: 10 }]);
    const element = await withCar(700, car);
    const good = element.answer;
    find<HTMLDetailsElement>(element, '.set')!.open = true;
    const field = find<HTMLInputElement>(element, '[id="setups.0.parts.0.mm"]')!;
    for (const [text, what] of [
      ['150', /tie rod/i],
      ['22 in', /150/],
      ['abc', /abc/],
    ] as const) {
      field.focus();
      field.value = text;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      field.dispatchEvent(new Event('change', { bubbles: true }));
      await settled(element);
      expect(element.state, text).to.equal('stale');
      expect(textOf(find(element, '.part')), text).to.match(what);
      expect(textOf(find(element, '#problems'))).not.to.equal('');
      expect(element.answer!.sets[0]!.curves, text).to.equal(good!.sets[0]!.curves);
      expect(field.value).to.equal(text);
    }
  });

  it('answers no toe of a car that was measured in a driveway: measure it', async () => {
    const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
    const element = await withCar(1100, { ...EMPTY_CAR, given: { points: {}, measures } });
    expect(textOf(find(element, '.sentence'))).to.contain('Toe: measure it');
    expect(await drawn(element)).to.have.length(10);
    expect(textOf(root(element).querySelector('.stack'))).not.to.contain('Toe-in');
  });

  it('shows all numbers of all sets in its table, and out of reach none', async () => {
    const element = await geometry(
      700,
      '',
      `<script type="application/json">${JSON.stringify(referenceCorner)}</script>`,
    );
    find<HTMLDetailsElement>(element, '.numbers')!.open = true;
    await settled(element);
    expect(all(element, '.numbers thead th')).to.have.length(1 + 11 * 3);
    expect(all(element, '.numbers tbody tr')).to.have.length(17);
  });
});
