import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { html, render } from 'lit';
import { Cursor } from '../../../components/shared/cursor.js';
import { watchInlineSize } from '../../../components/shared/resize.js';
import { PartsHost, until } from '../chart/parts-host.js';

const frame = () => new Promise(requestAnimationFrame);
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function mount(width = 320): Promise<PartsHost> {
  const host = new PartsHost();
  host.style.width = `${width}px`;
  document.body.append(host);
  await host.updateComplete;
  return host;
}
const find = <T extends HTMLElement>(host: PartsHost, selector: string): T =>
  host.shadowRoot!.querySelector<T>(selector)!;
const statusOf = (host: PartsHost): string => find(host, '[role=status]').textContent!;

afterEach(() => {
  for (const host of document.querySelectorAll('parts-host')) host.remove();
});

describe('slider', () => {
  it('is a native range with label, unit and a 44 px target', async () => {
    const host = await mount();
    const input = find<HTMLInputElement>(host, 'input');
    expect(input.labels![0]!.textContent).to.equal('Drop');
    expect(input.getAttribute('aria-valuetext')!.replace(/\u202f/g, ' ')).to.equal('30 mm');
    expect(input.getBoundingClientRect().height).to.be.at.least(44);
    expect(getComputedStyle(input).touchAction).to.equal('pan-y pinch-zoom');
    expect(host.shadowRoot!.getElementById(input.getAttribute('aria-describedby')!)!.textContent).to.contain('stop 62');
  });

  it('moves by keys, and speaks once, half a second after it rests', async () => {
    const host = await mount();
    find(host, 'input').focus();
    for (let i = 0; i < 3; i++) await sendKeys({ press: 'ArrowRight' });
    await host.updateComplete;
    expect(host.drop).to.equal(33);
    expect(
      find(host, 'input')
        .getAttribute('aria-valuetext')!
        .replace(/\u202f/g, ' '),
    ).to.equal('33 mm');
    expect(statusOf(host)).to.equal('');
    await wait(560);
    expect(statusOf(host)).to.equal('33 mm lower');
  });

  it('sets the thumb to the value although the limits come with it', async () => {
    const host = await mount();
    expect(find<HTMLInputElement>(host, 'input').valueAsNumber).to.equal(30);
  });

  for (const width of [320, 360, 700])
    it(`names its marks without overlap or overflow at ${width} px`, async () => {
      const host = await mount(width);
      const ticks = find(host, '.slider-ticks').getBoundingClientRect();
      const names = [...host.shadowRoot!.querySelectorAll('.slider-name')].map((name) => {
        const range = document.createRange();
        range.selectNodeContents(name);
        return range.getBoundingClientRect();
      });
      expect(names.length).to.equal(4);
      for (const [index, a] of names.entries()) {
        expect(a.left).to.be.at.least(ticks.left - 0.5);
        expect(a.right).to.be.at.most(ticks.right + 0.5);
        for (const b of names.slice(index + 1))
          expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).to.equal(true);
      }
    });
});

describe('table of numbers', () => {
  it('is a real table with caption and scopes', async () => {
    const host = await mount();
    find<HTMLDetailsElement>(host, 'details').open = true;
    expect(find<HTMLTableElement>(host, 'table').caption!.textContent).to.equal('Camber at each travel');
    expect(host.shadowRoot!.querySelectorAll('thead th[scope=col]').length).to.equal(3);
    expect(host.shadowRoot!.querySelectorAll('tbody th[scope=row]').length).to.equal(16);
    for (const target of ['summary', '.numbers-copy'])
      expect(find(host, target).getBoundingClientRect().height).to.be.at.least(44);
  });

  it('marks the row nearest to the cursor, without a render, and again after one', async () => {
    const host = await mount();
    const marked = () =>
      [...host.shadowRoot!.querySelectorAll('[aria-current=true] > th')].map((cell) => cell.textContent).join();
    await frame();
    expect(marked()).to.equal('+10');
    await until('the chart, whose coming renders the host', () => host.chart.state === 'drawn');
    await host.updateComplete;
    const renders = host.renders;
    host.cursor.set(-38, 'test');
    await frame();
    await frame();
    expect(marked()).to.equal('−40');
    expect(host.renders).to.equal(renders);
    host.drop = 31;
    await host.updateComplete;
    host.cursor.set(88, 'test');
    await frame();
    await frame();
    expect(marked()).to.equal('+90');
  });

  it('copies itself as CSV and says so', async () => {
    const host = await mount();
    find<HTMLDetailsElement>(host, 'details').open = true;
    let copied = '';
    Object.defineProperty(navigator, 'clipboard', {
      configurable: true,
      value: { writeText: async (text: string) => (copied = text) },
    });
    find(host, '.numbers-copy').click();
    await until('the status', () => statusOf(host) === 'Copied.');
    Reflect.deleteProperty(navigator, 'clipboard');
    expect(copied.split('\r\n').slice(0, 2)).to.deep.equal(['Travel (mm),Old arms (°),Now (°)', '-60,0.562,0.922']);
    expect(find<HTMLTextAreaElement>(host, 'textarea').hidden).to.equal(true);
  });

  it('offers the CSV selected where the clipboard is refused', async () => {
    const host = await mount();
    find<HTMLDetailsElement>(host, 'details').open = true;
    Object.defineProperty(navigator, 'clipboard', { configurable: true, value: undefined });
    find(host, '.numbers-copy').click();
    await until('the status', () => statusOf(host).includes('selected'));
    Reflect.deleteProperty(navigator, 'clipboard');
    const area = find<HTMLTextAreaElement>(host, 'textarea');
    expect(area.hidden).to.equal(false);
    expect(host.shadowRoot!.activeElement).to.equal(area);
    expect(area.value.slice(area.selectionStart, area.selectionEnd)).to.contain('\n-60,0.562,0.922\n');
  });
});

describe('announcer', () => {
  it('is there and silent from the first render, speaks the last text only, and the same text twice', async () => {
    const host = await mount();
    const region = find(host, '[role=status]');
    expect(region.textContent).to.equal('');
    host.announcer.announce('first');
    await wait(300);
    host.announcer.announce('second');
    await wait(300);
    expect(region.textContent).to.equal('');
    await wait(260);
    expect(region.textContent).to.equal('second');
    let changes = 0;
    const observer = new MutationObserver((records) => (changes += records.length));
    observer.observe(region, { childList: true, characterData: true, subtree: true });
    host.announcer.announce('second');
    await wait(560);
    observer.disconnect();
    expect(region.textContent).to.equal('second');
    expect(changes).to.be.greaterThan(0);
    host.requestUpdate();
    await host.updateComplete;
    expect(find(host, '[role=status]')).to.equal(region);
    expect(region.textContent, 'a render does not wipe it').to.equal('second');
  });
});

describe('cursor', () => {
  it('says nothing where it has come back within the frame', async () => {
    const cursor = new Cursor(5);
    let heard = 0;
    cursor.addEventListener('change', () => heard++);
    cursor.set(6, 'a');
    cursor.set(5, 'b');
    await frame();
    await frame();
    expect(heard).to.equal(0);
    cursor.set(7, 'c');
    await frame();
    await frame();
    expect([heard, cursor.travel, cursor.by]).to.deep.equal([1, 7, 'c']);
  });
});

describe('watchInlineSize', () => {
  it('tells of a width once, never of heights or of nothing, and not after it was stopped', async () => {
    const place = document.createElement('div');
    document.body.append(place);
    render(html`<div style="width: 200px; height: 10px"></div>`, place);
    const box = place.firstElementChild as HTMLElement;
    const widths: number[] = [];
    const stop = watchInlineSize(box, (width) => widths.push(width));
    const settle = async () => {
      for (let i = 0; i < 4; i++) await frame();
    };
    await settle();
    box.style.height = '50px';
    await settle();
    box.style.display = 'none';
    await settle();
    box.style.display = '';
    await settle();
    box.style.width = '250px';
    await settle();
    stop();
    box.style.width = '300px';
    await settle();
    place.remove();
    expect(widths).to.deep.equal([200, 250]);
  });
});
