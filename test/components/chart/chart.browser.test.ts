import 'axe-core';
import { emulateMedia, sendKeys, sendMouse } from '@web/test-runner-commands';
import type axe from 'axe-core';
import { expect } from 'chai';
import { render } from 'lit';
import { donePainting } from '../../../components/element/after-paint.js';
import { exampleModel } from './example-model.js';
import { PartsHost, until } from './parts-host.js';

type Rgb = [number, number, number];

const paintedIn = async (host: PartsHost): Promise<void> => {
  await until('the chart', () => host.chart.state === 'drawn' && pictureOf(host) !== null);
  await frames(2);
};
const frames = async (count: number): Promise<void> => {
  for (let i = 0; i < count; i++) await new Promise(requestAnimationFrame);
};
const rootOf = (host: PartsHost): ShadowRoot => host.shadowRoot!;
const pictureOf = (host: PartsHost): SVGSVGElement | null => rootOf(host).querySelector('.chart-sheet svg');
const scrubOf = (host: PartsHost): HTMLElement => rootOf(host).querySelector<HTMLElement>('.chart-scrub')!;

async function mount(width = 400): Promise<PartsHost> {
  const host = new PartsHost();
  // All at the top: a chart below the fold would rightly not come.
  host.style.position = 'absolute';
  host.style.insetBlockStart = '0';
  host.style.width = `${width}px`;
  document.body.append(host);
  await paintedIn(host);
  return host;
}

/** Parts of the picture that are drawn in this colour. */
function inkOf(host: PartsHost, [r, g, b]: Rgb): number {
  const colour = `rgb(${r}, ${g}, ${b})`;
  return [...pictureOf(host)!.querySelectorAll('path')].filter(
    (path) => getComputedStyle(path).stroke === colour && path.getTotalLength() > 10,
  ).length;
}

// As the theme states them.
const NOW_LIGHT: Rgb = [0x0b, 0x57, 0xa4];
const NOW_DARK: Rgb = [0x7f, 0xb9, 0xf2];
const LIMIT_LIGHT: Rgb = [0x8f, 0x56, 0x00];

describe('chart', () => {
  const RealObserver = window.ResizeObserver;
  const errors: unknown[] = [];
  const realError = console.error;
  const onError = (event: ErrorEvent) => errors.push(event.message);
  let observers = 0;

  before(() => {
    window.ResizeObserver = class extends RealObserver {
      constructor(callback: ResizeObserverCallback) {
        super(callback);
        observers++;
      }
    };
    console.error = (...args: unknown[]) => errors.push(args);
    window.addEventListener('error', onError);
  });
  after(() => {
    window.ResizeObserver = RealObserver;
    console.error = realError;
    window.removeEventListener('error', onError);
  });
  afterEach(async () => {
    for (const host of document.querySelectorAll('parts-host')) host.remove();
    await emulateMedia({ media: 'screen', colorScheme: 'light' });
    expect(errors.splice(0), 'errors on the console or the window').to.deep.equal([]);
  });

  it('draws the series in the colour of now and the limit in its own', async () => {
    const host = await mount();
    expect(rootOf(host).querySelector<SVGPathElement>('.line.now')!.getTotalLength()).to.be.greaterThan(200);
    expect(inkOf(host, NOW_LIGHT)).to.be.greaterThan(1);
    expect(inkOf(host, LIMIT_LIGHT)).to.be.greaterThan(1);
    expect(pictureOf(host)!.getAttribute('role')).to.equal('img');
    expect(pictureOf(host)!.getAttribute('aria-label')).to.equal(host.model!.description);
  });

  it('draws more negative camber lower', async () => {
    const host = await mount();
    const heightAt = async (travel: number) => {
      host.cursor.set(travel, 'test');
      await frames(2);
      return rootOf(host).querySelector('.chart-dot.now')!.getBoundingClientRect().top;
    };
    // The example's camber falls from −0.5° at 0 to −0.89° at +30 mm.
    expect(await heightAt(30)).to.be.greaterThan((await heightAt(0)) + 20);
  });

  it('keeps its place before it is there, so that nothing moves when it comes', async () => {
    const host = new PartsHost();
    document.body.append(host);
    await host.updateComplete;
    expect(pictureOf(host)).to.equal(null);
    expect(host.renders).to.equal(1);
    const before = host.offsetHeight;
    await paintedIn(host);
    expect(host.offsetHeight).to.equal(before);
  });

  it('does not come before there is an answer, nor far below the fold', async () => {
    const host = new PartsHost();
    host.model = undefined;
    document.body.append(host);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(host.chart.state).to.equal('waiting');
    host.style.marginTop = '5000px';
    host.model = exampleModel();
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(host.chart.state).to.equal('waiting');
    host.style.marginTop = '0';
    await paintedIn(host);
  });

  it('shows a new model in the same picture, and another number of series too', async () => {
    const host = await mount();
    const picture = pictureOf(host);
    const before = picture!.innerHTML;
    host.model = exampleModel(55);
    await host.updateComplete;
    await donePainting(host);
    expect(pictureOf(host)).to.equal(picture);
    expect(picture!.innerHTML).not.to.equal(before);
    expect(picture!.getAttribute('aria-label')).to.contain('55 mm');
    host.model = { ...exampleModel(), series: exampleModel().series.slice(1) };
    await host.updateComplete;
    await donePainting(host);
    expect(rootOf(host).querySelectorAll('.line').length).to.equal(1);
    expect(rootOf(host).querySelectorAll('.chart-dot').length).to.equal(1);
  });

  it('serves ten charts with one ResizeObserver, and follows their width', async () => {
    const hosts = await Promise.all(Array.from({ length: 10 }, () => mount(320)));
    expect(observers).to.equal(1);
    const first = hosts[0]!;
    first.style.width = '600px';
    await frames(4);
    expect(pictureOf(first)!.getBoundingClientRect().width).to.equal(568);
    first.style.display = 'none';
    await frames(4);
    first.style.display = '';
    await frames(4);
    expect(inkOf(first, NOW_LIGHT)).to.be.greaterThan(0);
  });

  it('moves the cursor by keys: 1 mm, 10 mm, the ends, and back to rest', async () => {
    const host = await mount();
    const scrub = scrubOf(host);
    scrub.focus();
    const press = async (key: string) => {
      await sendKeys({ press: key });
      return host.cursor.travel;
    };
    expect(await press('ArrowRight')).to.equal(13);
    expect(await press('ArrowLeft')).to.equal(12);
    expect(await press('ArrowUp')).to.equal(13);
    expect(await press('PageUp')).to.equal(23);
    expect(await press('PageDown')).to.equal(13);
    expect(await press('Home')).to.equal(-60);
    expect(await press('ArrowDown')).to.equal(-60);
    expect(await press('End')).to.equal(90);
    expect(await press('Escape')).to.equal(30);
    await frames(2);
    expect(scrub.getAttribute('aria-valuenow')).to.equal('30');
    expect(scrub.getAttribute('aria-valuetext')).to.match(/^\+30 mm: old arms −\d\.\d\d°, now −0\.89°$/);
  });

  it('leaves Tab, Escape at rest and shortcuts to the page', async () => {
    const host = await mount();
    scrubOf(host).focus();
    host.cursor.set(30, 'test');
    const heard: string[] = [];
    const listen = (event: KeyboardEvent) => heard.push(`${event.key} ${event.defaultPrevented}`);
    document.addEventListener('keydown', listen);
    await sendKeys({ press: 'Escape' });
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ up: 'Control' });
    await sendKeys({ press: 'Tab' });
    document.removeEventListener('keydown', listen);
    expect(heard).to.include('Escape false');
    expect(heard).to.include('ArrowRight false');
    expect(heard).to.include('Tab false');
    expect(host.cursor.travel).to.equal(30);
    expect(rootOf(host).activeElement).not.to.equal(scrubOf(host));
  });

  it('moves the cursor by mouse, and neither re-renders the host nor redraws the picture', async () => {
    const host = await mount();
    host.cursor.set(-20, 'test');
    await frames(2);
    const { left, top, width, height } = scrubOf(host).getBoundingClientRect();
    const renders = host.renders;
    let redrawn = 0;
    const watcher = new MutationObserver((changes) => {
      redrawn += changes.length;
    });
    watcher.observe(pictureOf(host)!, { subtree: true, childList: true, attributes: true, characterData: true });
    const at = (travel: number): [number, number] => [
      Math.round(left + ((travel + 60) / 150) * width),
      Math.round(top + height / 2),
    ];
    await sendMouse({ type: 'move', position: at(0) });
    expect(host.cursor.travel, 'hovering is not moving').to.equal(-20);
    await sendMouse({ type: 'down' });
    expect(host.cursor.travel).to.be.closeTo(0, 1);
    await sendMouse({ type: 'move', position: at(40) });
    await sendMouse({ type: 'up' });
    await sendMouse({ type: 'move', position: at(-50) });
    await frames(2);
    expect(host.cursor.travel).to.be.closeTo(40, 1);
    expect(host.cursor.by).to.equal('chart');
    expect(host.renders).to.equal(renders);
    expect(redrawn).to.equal(0);
    watcher.disconnect();
    const line = rootOf(host).querySelector('.chart-line')!.getBoundingClientRect();
    expect(line.left).to.be.closeTo(at(40)[0], 2);
  });

  it('lets a finger scroll the page: it takes a tap or a sideways move, and declares so', async () => {
    const host = await mount();
    const scrub = scrubOf(host);
    expect(getComputedStyle(scrub).touchAction).to.equal('pan-y pinch-zoom');
    // Made-up pointers cannot be captured; what is asked of the browser is noted instead.
    const captured: number[] = [];
    scrub.setPointerCapture = (id) => captured.push(id);
    const { left, width, top } = scrub.getBoundingClientRect();
    const touch = (type: string, travel: number) =>
      scrub.dispatchEvent(
        new PointerEvent(type, {
          pointerId: 7,
          pointerType: 'touch',
          isPrimary: true,
          bubbles: true,
          clientX: left + ((travel + 60) / 150) * width,
          clientY: top + 30,
        }),
      );
    host.cursor.set(-20, 'test');
    touch('pointerdown', 10);
    touch('pointercancel', 10);
    touch('pointermove', 50);
    expect(host.cursor.travel, 'a scroll is not a scrub').to.equal(-20);
    touch('pointerdown', 10);
    touch('pointerup', 10);
    expect(host.cursor.travel, 'a tap pins').to.be.closeTo(10, 1);
    expect(captured).to.deep.equal([]);
    touch('pointerdown', 10);
    touch('pointermove', 60);
    expect(captured).to.deep.equal([7]);
    touch('pointermove', 200);
    touch('pointerup', 200);
    expect(host.cursor.travel, 'stops at the end').to.equal(90);
  });

  it('hides the cursor outside the domain, and tells several listeners once a frame', async () => {
    const host = await mount();
    const heard: number[] = [];
    const stop = host.cursor.subscribe((travel) => heard.push(travel));
    for (let travel = 0; travel <= 200; travel += 10) host.cursor.set(travel, 'test');
    host.cursor.set(Number.NaN, 'test');
    await frames(2);
    expect(heard).to.deep.equal([200]);
    expect(rootOf(host).querySelector<HTMLElement>('.chart-line')!.hidden).to.equal(true);
    stop();
    host.cursor.set(0, 'test');
    await frames(2);
    expect(heard).to.deep.equal([200]);
  });

  it('goes with its host and comes back with it', async () => {
    const host = await mount();
    host.remove();
    expect(pictureOf(host)).to.equal(null);
    expect(rootOf(host).querySelector('.chart-scrub')).to.equal(null);
    expect(host.chart.state).to.equal('waiting');
    host.cursor.set(44, 'test');
    document.body.append(host);
    await paintedIn(host);
    expect(rootOf(host).querySelectorAll('.chart-sheet svg').length).to.equal(1);
    expect(inkOf(host, NOW_LIGHT)).to.be.greaterThan(0);
    expect(scrubOf(host).getAttribute('aria-valuenow')).to.equal('44');
  });

  it('never comes where the host was removed while it was on its way', async () => {
    const host = new PartsHost();
    document.body.append(host);
    await host.updateComplete;
    host.remove();
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(pictureOf(host)).to.equal(null);
  });

  it('changes colours with the theme attribute, with a class of the page, with the scheme and for print', async () => {
    const host = await mount();
    const settle = () => frames(3);
    host.setAttribute('theme', 'dark');
    await settle();
    expect(inkOf(host, NOW_LIGHT)).to.equal(0);
    expect(inkOf(host, NOW_DARK)).to.be.greaterThan(0);
    await emulateMedia({ media: 'print' });
    await settle();
    expect(inkOf(host, NOW_LIGHT), 'print is light').to.be.greaterThan(0);
    await emulateMedia({ media: 'screen' });
    await settle();
    expect(inkOf(host, NOW_DARK), 'back from print').to.be.greaterThan(0);
    host.removeAttribute('theme');
    // A page that names no scheme is light, whatever its reader's system is.
    await emulateMedia({ colorScheme: 'dark' });
    await settle();
    expect(inkOf(host, NOW_DARK)).to.equal(0);
    document.documentElement.style.colorScheme = 'light dark';
    await settle();
    expect(inkOf(host, NOW_DARK)).to.be.greaterThan(0);
    document.documentElement.style.colorScheme = '';

    const sheet = new CSSStyleSheet();
    sheet.replaceSync('html.shop parts-host { --bumpline-now: light-dark(rgb(1 2 200), rgb(200 2 1)); }');
    document.adoptedStyleSheets.push(sheet);
    document.documentElement.classList.add('shop');
    await settle();
    expect(inkOf(host, [1, 2, 200]), 'a page that sets its own').to.be.greaterThan(0);
    document.documentElement.classList.remove('shop');
    document.adoptedStyleSheets.pop();
  });

  it('takes the width there is on paper', async () => {
    const host = await mount(400);
    await emulateMedia({ media: 'print' });
    host.style.width = '700px';
    const picture = pictureOf(host)!;
    const { width, height } = picture.getBoundingClientRect();
    expect(width).to.equal(668);
    const { width: own, height: high } = picture.viewBox.baseVal;
    expect(width / height).to.be.closeTo(own / high, 0.02);
  });

  it('draws in system colours, as the theme does where colours are forced', async () => {
    const host = await mount();
    host.style.setProperty('--bumpline-now', 'LinkText');
    await frames(3);
    const probe = document.createElement('span');
    probe.style.color = 'LinkText';
    document.body.append(probe);
    const [r, g, b] = getComputedStyle(probe).color.match(/\d+/g)!.map(Number);
    probe.remove();
    expect(inkOf(host, NOW_LIGHT)).to.equal(0);
    expect(inkOf(host, [r!, g!, b!])).to.be.greaterThan(0);
  });

  it('is drawn anew for a picture, as wide as is asked, before its place has come near', async () => {
    const host = await mount();
    const { template, height, model } = host.chart.toPicture({ width: 640, family: 'sans-serif' })!;
    const stage = document.createElement('div');
    render(template, stage);
    const { width, height: high } = stage.querySelector('svg')!.viewBox.baseVal;
    expect([width, high]).to.deep.equal([640, height]);
    expect(model).to.equal(host.model);
    host.model = undefined;
    await host.updateComplete;
    // What is shown stays what it was.
    expect(host.chart.toPicture({ width: 640, family: 'sans-serif' })!.model).to.equal(model);
  });

  it('has no violations by axe, table open', async () => {
    const host = await mount();
    rootOf(host).querySelector('details')!.open = true;
    const { run } = (globalThis as unknown as { axe: typeof axe }).axe;
    const { violations } = await run(host, { rules: { region: { enabled: false } } });
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).to.deep.equal([]);
  });
});
