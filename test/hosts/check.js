/*
 * A host page checks itself with this, whatever engine shows it, and publishes what it found as `window.result`:
 * { ok, checks: [{ name, ok, got, expected }] }. A classic script, first in the page, so that it hears of everything after it.
 * What to expect stands on its own tag: data-change (degrees, from a calculation that shares nothing with the core),
 * data-mode (`worker` or `main-thread`).
 */
(() => {
  const { change, mode, version } = document.currentScript.dataset;
  const checks = [];
  const errors = [];
  const violations = [];
  let shift = 0;

  addEventListener('error', (event) => errors.push(String(event.message ?? event.type)));
  addEventListener('unhandledrejection', (event) => errors.push(String(event.reason)));
  document.addEventListener('securitypolicyviolation', (event) =>
    violations.push(`${event.effectiveDirective} ${event.blockedURI}`),
  );
  for (const level of ['error', 'warn']) {
    const original = console[level];
    console[level] = (...words) => {
      errors.push(`console.${level}: ${words.join(' ')}`);
      original.apply(console, words);
    };
  }
  const seesShifts = globalThis.PerformanceObserver?.supportedEntryTypes?.includes('layout-shift') ?? false;
  const shifted = [];
  if (seesShifts) {
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        shift += entry.value;
        for (const { node, previousRect, currentRect } of entry.sources) {
          const at = ({ y, height }) => `${Math.round(y)}+${Math.round(height)}`;
          shifted.push(`${node?.nodeName ?? 'inside'} ${at(previousRect)} to ${at(currentRect)}`);
        }
      }
    }).observe({ type: 'layout-shift', buffered: true });
  }

  const frame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  const check = (name, got, expected, ok = got === expected) => checks.push({ name, ok, got, expected });

  /** Waits for a condition, frame by frame, and says whether it came to hold. */
  async function until(holds, ms) {
    const end = performance.now() + ms;
    while (!holds()) {
      if (performance.now() > end) return false;
      await frame();
    }
    return true;
  }

  /** "adds 0.27°" is −0.27, "takes 0.27° … away" +0.27; undefined where the sentence says neither. */
  function saidChange(sentence) {
    const [, verb, digits] = /(adds|takes)\s+([\d.]+)\s*°/.exec(sentence) ?? [];
    if (!digits) return undefined;
    return { value: (verb === 'adds' ? -1 : 1) * Number(digits), places: digits.split('.')[1]?.length ?? 0 };
  }

  async function run() {
    const element = document.querySelector('bumpline-lowering');
    if (!(await until(() => customElements.get('bumpline-lowering') && element.settled, 10_000))) {
      check('the element comes alive', false, true);
      return;
    }
    await element.settled;
    const root = element.shadowRoot;
    // Drawing, chart and all else that follows the first answer.
    const place = () => root.querySelector('.chart');
    await until(place, root.querySelector('.sentence') ? 5_000 : 0);
    await frame();
    place()?.scrollIntoView({ block: 'end' });
    check('the chart is drawn', await until(() => place()?.querySelector('svg, canvas'), 5_000), true);
    scrollTo(0, 0);
    await frame();
    await frame();

    const sentence = root.querySelector('.sentence')?.textContent?.replace(/\s+/g, ' ').trim();
    const expected = Number(change);
    const said = saidChange(sentence ?? '');
    const off = said ? Math.abs(said.value - expected) : Number.NaN;
    check(
      'the sentence says the independent change',
      sentence,
      expected,
      off <= 0.5000001 * 10 ** -(said?.places ?? 0),
    );
    const value = element.answer?.change.value;
    check('the answer is the independent change, within 0.00001°', value, expected, Math.abs(value - expected) < 1e-5);
    const modes = Object.getOwnPropertySymbols(globalThis)
      .filter(({ description }) => description.startsWith(`bumpline.worker/${version}/`))
      .map((key) => globalThis[key].mode);
    check('the core runs where it should, once for all', modes.join(), mode);
    if (seesShifts) check('nothing moves on the page', `${shift} ${shifted.join('; ')}`.trim(), '0');
    check('no error of ours', errors.join('\n'), '');
    const own = violations.filter((violation) => !(mode === 'main-thread' && violation === 'worker-src blob'));
    check('no violation of the page’s policy but the worker it forbids', own.join('\n'), '');

    const shown = getComputedStyle(root.querySelector('.sentence'));
    const style = ['letterSpacing', 'wordSpacing', 'textShadow', 'textTransform', 'fontStyle'].map(
      (name) => shown[name],
    );
    check('the host’s type does not leak in', style.join(', '), 'normal, 0px, none, none, normal');
    check('the element’s own styles are there', getComputedStyle(element).display !== 'inline', true);
    const plain = [...root.querySelectorAll('.sentence, .sentence input, .drawing-place svg, .chart svg')].filter(
      (node) => node.getBoundingClientRect().width < 10,
    );
    check('sentence, field, drawing and chart are to be seen', plain.map(({ nodeName }) => nodeName).join(), '');
    const wide = document.documentElement.scrollWidth;
    check('the page does not scroll sideways', wide <= innerWidth, true);
    const box = element.getBoundingClientRect();
    const inside = [...root.querySelectorAll('.sentence, .chart, svg, button, input')].filter((node) => {
      const rect = node.getBoundingClientRect();
      return rect.width > 1 && (rect.left < box.left - 1 || rect.right > box.right + 1);
    });
    check('nothing sticks out of the element', inside.map((node) => node.outerHTML.slice(0, 80)).join('\n'), '');
  }

  addEventListener('DOMContentLoaded', () => {
    run()
      .catch((error) => check('the page’s own check ran', String(error?.stack ?? error), ''))
      .then(() => {
        window.result = { ok: checks.every(({ ok }) => ok), checks };
      });
  });
})();
