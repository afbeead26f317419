import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reservedHeight } from '../../components/delivery/reserved-heights.mjs';
import { EMPTY_CAR } from '../../core/document/car.js';
import { carToLink } from '../../core/document/link.js';
import { byUser } from '../../core/document/own-car.js';
import { framed } from '../../site/partials/framed.js';
import corner from './corner.json' with { type: 'json' };
import {
  changeIn,
  contentHeight,
  DESKTOP,
  fitted,
  frameHeights,
  framesScript,
  PHONE,
  sentenceIn,
  settled,
  startFrameHost,
} from './frame-host.js';
import { DROP_MM, EXPECTED_CHANGE_DEG } from './host-server.js';

let host: Awaited<ReturnType<typeof startFrameHost>>;
beforeAll(async () => {
  host = await startFrameHost();
});
afterAll(() => host?.close());

const LOWERING = 'lowering/?drop=30';

/** The corner of the other host pages, as a reader gave it. */
const { lowerArm, strut, tieRod, wheelCentre, loadedRadius, camber, toe } = corner;
const CAR = carToLink(
  byUser({
    ...EMPTY_CAR,
    by: 'points',
    drop: DROP_MM,
    given: {
      points: {
        wheelCentre,
        'lowerArm.front': lowerArm.front,
        'lowerArm.rear': lowerArm.rear,
        'lowerArm.ball': lowerArm.ball,
        'strut.top': strut.top,
        'strut.low': strut.low,
        'tieRod.inner': tieRod.inner,
        'tieRod.outer': tieRod.outer,
      } as never,
      loadedRadius,
      camber,
      toe,
    },
  }),
);

describe('a page with frames and no script of ours', () => {
  it.each([
    [640, framed()],
    [360, framed().slice(0, 2)],
    [1200, framed().slice(0, 2)],
  ])('in %i px shows elements whole, but for a line, at the height that the snippet names', async (width, shown) => {
    const heights = shown.map(({ tag }) => reservedHeight(tag, width));
    const body = shown.map(({ path }, i) => host.frame(path.replace('embed/', ''), '', heights[i])).join('');
    await host.open({ body, options: { viewport: { width: width + 16, height: 900 } } }, async (page) => {
      for (const [index, { tag }] of shown.entries()) {
        const frame = await settled(page, index);
        expect(await sentenceIn(frame), tag).toMatch(/\d/);
        const share = (await contentHeight(frame)) / heights[index]!;
        // A line more is scrolled to: heights were measured with an example, in letters of two browsers.
        expect(share, tag).toBeLessThan(1.03);
        expect(share, tag).toBeGreaterThan(0.7);
      }
      expect(await frameHeights(page)).toEqual(heights);
    });
  });

  it('says without scripts in the frame that it needs them, and where the answers stand in words', async () => {
    await host.open({ body: host.frame(LOWERING, 'sandbox=""') }, async (page) => {
      const frame = page.frameLocator('iframe');
      expect(await frame.getByText('This calculator needs scripts').isVisible()).toBe(true);
      const link = frame.getByRole('link', { name: 'What lowering does to camber' });
      expect(await link.evaluate((one: HTMLAnchorElement) => one.href)).toBe(`${host.at}what-lowering-does-to-camber/`);
    });
  });
});

describe('the address of a frame', () => {
  it('brings a reader’s car after #: the number is that of an independent calculation', async () => {
    await host.open({ body: host.frame(`lowering/#${CAR}`) }, async (page) => {
      const frame = await settled(page);
      expect(await changeIn(frame)).toBeCloseTo(EXPECTED_CHANGE_DEG, 5);
      expect(await sentenceIn(frame)).toContain(Math.abs(EXPECTED_CHANGE_DEG).toFixed(2));
    });
  });

  it('brings options after ?, as the element’s attributes are called; what is none is named in the console and does nothing', async () => {
    const query = 'lowering/?drop=20&units=in&theme=dark&show=sentence&dorp=25&onclick=alert(1)&keep-in-address=no';
    const said: string[] = [];
    await host.open({ body: '' }, async (page) => {
      page.on('console', (message) => said.push(message.text()));
      await page.evaluate((html) => document.body.insertAdjacentHTML('beforeend', html), host.frame(query));
      const frame = await settled(page);
      const attributes = await frame.evaluate(() => {
        const element = document.querySelector('[keep-in-address]')!;
        return Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value]));
      });
      expect(attributes).toEqual({ drop: '20', units: 'in', theme: 'dark', show: 'sentence', 'keep-in-address': '' });
      expect(await sentenceIn(frame)).toMatch(/adds 0\.28° .* in lower/);
      expect(said.filter((text) => text.includes('has no option')).map((text) => /“(.*?)”/.exec(text)![1])).toEqual([
        'dorp',
        'onclick',
        'keep-in-address',
      ]);
      expect(said.join()).toContain('bump-travel');
    });
  });

  it('brings a scheme: without one the frame’s ground is left to the page around', async () => {
    const schemeOf = async (query: string) => {
      let scheme = '';
      await host.open({ body: host.frame(query) }, async (page) => {
        const frame = await settled(page);
        scheme = await frame.evaluate(() => {
          const { colorScheme, backgroundColor } = getComputedStyle(document.documentElement);
          return `${colorScheme}, ${backgroundColor}, ${getComputedStyle(document.body).backgroundColor}`;
        });
      });
      return scheme;
    };
    expect(await schemeOf('lowering/')).toBe('normal, rgba(0, 0, 0, 0), rgba(0, 0, 0, 0)');
    expect(await schemeOf('lowering/?theme=dark')).toBe('dark, rgba(0, 0, 0, 0), rgba(0, 0, 0, 0)');
    expect(await schemeOf('lowering/?theme=neon')).toBe('normal, rgba(0, 0, 0, 0), rgba(0, 0, 0, 0)');
  });
});

describe('a page with the script for frames', () => {
  it.each([
    ['on a phone', PHONE],
    ['on a wide screen', DESKTOP],
  ])(
    '%s: frames are as high as what they show: higher when a list is unfolded, lower again, and then at rest',
    async (_where, options) => {
      await host.open(
        { head: host.script, body: host.frame(LOWERING) + host.frame('readings/'), options },
        async (page) => {
          const [frame, other] = [await settled(page, 0), await settled(page, 1)];
          const folded = await fitted(page, frame, 0);
          const below = await fitted(page, other, 1);
          const list = frame
            .locator('[keep-in-address] details.list > summary, [keep-in-address] details > summary')
            .last();
          await list.click();
          await page.waitForFunction((before) => document.querySelector('iframe')!.clientHeight > before + 20, folded);
          const unfolded = await fitted(page, frame, 0);
          await list.click();
          await page.waitForFunction((before) => document.querySelector('iframe')!.clientHeight < before, unfolded);
          expect(await fitted(page, frame, 0)).toBe(folded);
          expect((await frameHeights(page))[1]).toBe(below);
          // Nothing that it set off sets off more.
          await page.evaluate(() => {
            addEventListener('message', ({ data }) => Object.assign(globalThis, { late: data }));
          });
          await page.waitForTimeout(400);
          expect(await page.evaluate(() => Reflect.get(globalThis, 'late'))).toBeUndefined();
          expect(await frame.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBe(0);
        },
      );
    },
  );

  it('that comes after the frames asks them; a frame that comes later is heard; a second copy does no harm', async () => {
    await host.open({ body: host.frame(LOWERING, '', 700) }, async (page) => {
      const frame = await settled(page, 0);
      expect(await frameHeights(page)).toEqual([700]);
      await page.addScriptTag({ content: framesScript });
      const height = await fitted(page, frame, 0);
      expect(height).toBeGreaterThan(1000);
      await page.addScriptTag({ content: framesScript });
      await page.evaluate(
        (html) => document.body.insertAdjacentHTML('beforeend', html),
        host.frame('readings/', '', 700),
      );
      await fitted(page, await settled(page, 1), 1);
      expect((await frameHeights(page))[0]).toBe(height);
    });
  });

  it('sets the height under a policy that forbids style attributes, and counts the border of a frame whose box it is part of', async () => {
    const headers = {
      'Content-Security-Policy': `default-src 'none'; script-src ${host.at}; frame-src ${host.at}; style-src 'nonce-a'; img-src data:`,
    };
    const head = `${host.script}<style nonce="a">iframe { box-sizing: border-box; border: 5px solid; width: 100% }</style>`;
    const body = `<iframe src="${host.at}embed/${LOWERING}" height="700"></iframe>`;
    await host.open({ head, body, headers }, async (page) => {
      const frame = await settled(page);
      await fitted(page, frame);
      const outer = await page.evaluate(() => document.querySelector('iframe')!.offsetHeight);
      expect(outer).toBe((await contentHeight(frame)) + 10);
    });
  });

  it('has a sandboxed frame, to which a server gives no modules, answer, keep what a reader types, and be as high as what it shows', async () => {
    const body = host.frame(`lowering/#${CAR}`, 'sandbox="allow-scripts"');
    await host.open({ head: host.script, body }, async (page) => {
      const errors: string[] = [];
      page.on('pageerror', ({ message }) => errors.push(message));
      const frame = await settled(page);
      expect(await frame.evaluate(() => origin)).toBe('null');
      await fitted(page, frame);
      expect(await changeIn(frame)).toBeCloseTo(EXPECTED_CHANGE_DEG, 5);
      const before = await frame.evaluate(() => location.hash);
      const field = frame.locator('[keep-in-address] .sentence input').first();
      await field.fill('25');
      await field.press('Tab');
      await frame.waitForFunction((was) => location.hash !== was, before, { polling: 50 });
      const other = await changeIn(await settled(page));
      expect(other).toBeGreaterThan(EXPECTED_CHANGE_DEG);
      expect(errors).toEqual([]);
    });
  });

  it('takes heights in numbers from 40 to 20000 px alone', async () => {
    await host.open({ head: host.script, body: host.frame(LOWERING) }, async (page) => {
      const frame = await settled(page);
      const height = await fitted(page, frame);
      const say = async (message: unknown) => {
        await frame.evaluate((data) => parent.postMessage(data, '*'), message);
        await page.waitForTimeout(60);
        return (await frameHeights(page))[0];
      };
      const type = 'bumpline-height';
      for (const wrong of [
        '900',
        '900px',
        null,
        true,
        [900],
        { valueOf: 900 },
        Number.NaN,
        Infinity,
        1e9,
        20_001,
        39,
        0,
        -900,
      ])
        expect(await say({ type, height: wrong, isHeard: true }), String(wrong)).toBe(height);
      for (const message of [null, 'bumpline-height', 900, { height: 900 }, { type: 'other', height: 900 }])
        expect(await say(message), JSON.stringify(message)).toBe(height);
      expect(await say({ type, height: 899.2, isHeard: true })).toBe(900);
    });
  });

  it('listens to nobody else: not to the page itself, nor to a stranger’s frame, nor to what a frame of ours was led to', async () => {
    const forge = (target: string) =>
      `<script>setInterval(() => ${target}.postMessage({ type: 'bumpline-height', height: 5000, isHeard: true }, '*'), 20)</script>`;
    const body =
      host.frame(LOWERING) +
      `<iframe src="${host.stranger}page/" height="300"></iframe>` +
      host.frame(`${LOWERING}&led`, '', 600) +
      host.frame(LOWERING, 'sandbox="allow-scripts"');
    await host.open({ head: host.script, body, stranger: forge('parent') }, async (page) => {
      const frame = await settled(page, 0);
      const height = await fitted(page, frame, 0);
      const led = await settled(page, 2);
      await fitted(page, led, 2);
      await led.goto(`${host.stranger}embed/lowering/`);
      const sandboxed = await fitted(page, await settled(page, 3), 3);
      await page.evaluate(() => postMessage({ type: 'bumpline-height', height: 5000, isHeard: true }, '*'));
      await page.waitForTimeout(300);
      expect(await frameHeights(page)).toEqual([height, 300, height, sandboxed]);
    });
  });

  it('told by data-origin hears frames below that address alone', async () => {
    const stranger = `<script>setInterval(() => parent.postMessage({ type: 'bumpline-height', height: 500, isHeard: true }, '*'), 20)</script>`;
    const alike = `<iframe src="${host.stranger}embed/lowering/" height="300"></iframe>`;
    const told = (origin: string) => host.script.replace('async', `async data-origin="${origin}"`);
    await host.open({ head: host.script, body: alike, stranger }, async (page) => {
      await page.waitForFunction(() => document.querySelector('iframe')!.clientHeight === 500);
    });
    await host.open(
      { head: told(host.at.replace(/\/$/, '')), body: host.frame(LOWERING) + alike, stranger },
      async (page) => {
        await fitted(page, await settled(page, 0), 0);
        expect((await frameHeights(page))[1]).toBe(300);
      },
    );
    await host.open({ head: told(`${host.home}elsewhere/`), body: host.frame(LOWERING, '', 700) }, async (page) => {
      await settled(page, 0);
      await page.waitForTimeout(200);
      expect(await frameHeights(page)).toEqual([700]);
    });
  });
});

describe('a dialog in a frame', () => {
  it.each([
    ['on a phone', PHONE],
    ['on a wide screen', DESKTOP],
  ])('%s stands where the reader looks, however high the frame is', async (_where, options) => {
    const text = '<p style="height: 900px">Text</p>';
    const body = text + host.frame('static-camber/') + text;
    await host.open({ head: host.script, body, options }, async (page) => {
      const frame = await settled(page);
      await fitted(page, frame);
      const { height } = options.viewport!;
      await page.evaluate(() => scrollTo(0, 900));
      const button = frame.locator('[keep-in-address] button.own').first();
      await button.scrollIntoViewIfNeeded();
      await page.evaluate(() => scrollBy(0, 200));
      await button.hover();
      await page.waitForTimeout(100);
      await button.click();
      const dialog = frame.locator('[keep-in-address] dialog[open]');
      await dialog.waitFor();
      const box = (await dialog.boundingBox())!;
      expect(box.y).toBeGreaterThanOrEqual(0);
      expect(box.y + box.height).toBeLessThanOrEqual(height + 1);
      expect(box.height).toBeGreaterThan(0.5 * height);
    });
  });

  it('has room in a frame that shows little, which is as low as before when it is closed', async () => {
    await host.open({ head: host.script, body: host.frame('lowering/?drop=30&show=sentence') }, async (page) => {
      const frame = await settled(page);
      const before = await fitted(page, frame);
      expect(before).toBeLessThan(400);
      await frame.evaluate(() => {
        const dialog = document.createElement('dialog');
        document.querySelector('[keep-in-address]')!.shadowRoot!.append(dialog);
        dialog.showModal();
      });
      await page.waitForFunction(() => document.querySelector('iframe')!.clientHeight === 640);
      await frame.evaluate(() =>
        document
          .querySelector('[keep-in-address]')!
          .shadowRoot!.querySelector<HTMLDialogElement>('dialog[open]')!
          .close(),
      );
      await page.waitForFunction((height) => document.querySelector('iframe')!.clientHeight === height, before);
    });
  });
});

describe.each(framed())('the page of a frame, $path', ({ path, tag }) => {
  it('is found by no search, sends no address on, has its links lead out, and holds the one element', async () => {
    const html = await (await fetch(`${host.at}${path}`)).text();
    expect(html).toContain('<html lang="en">');
    expect(html).toContain('<meta name="robots" content="noindex">');
    expect(html).toContain('<meta name="referrer" content="no-referrer">');
    expect(html).toContain('<base target="_parent">');
    expect(html.match(/<bumpline-[\w-]+/g)).toEqual([`<${tag}`]);
    expect(html).not.toMatch(/<(?:header|nav|footer|h1)\b|\{\{/);
  });
});
