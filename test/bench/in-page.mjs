/**
 * What the benches have pages do and watch: functions that run in a page, so that each must stand alone.
 */

/** Before anything else: tasks over 50 ms, shifts of layout, and when the first answer was painted. */
export function watch() {
  const seen = { tasks: [], shift: 0, first: 0 };
  globalThis.seen = seen;
  new PerformanceObserver((list) => seen.tasks.push(...list.getEntries().map((entry) => entry.duration))).observe({
    type: 'longtask',
    buffered: true,
  });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (!entry.hadRecentInput) seen.shift += entry.value;
  }).observe({ type: 'layout-shift', buffered: true });
  addEventListener('bumpline-answer', () => {
    if (!seen.first)
      requestAnimationFrame(() =>
        setTimeout(() => {
          seen.first = performance.now();
        }),
      );
  });
}

/** Times an element's slider, from each input event to the frame that shows the new sentence, into `globalThis.delays`, ms. */
export function timeInputs(tag) {
  const root = document.querySelector(tag).shadowRoot;
  const slider = root.querySelector('input[type=range]');
  globalThis.delays = [];
  let started = 0;
  slider.addEventListener(
    'input',
    () => {
      started = performance.now();
    },
    { capture: true },
  );
  new MutationObserver(() => {
    const from = started;
    started = 0;
    if (from) requestAnimationFrame(() => setTimeout(() => globalThis.delays.push(performance.now() - from)));
  }).observe(root.querySelector('.says'), { subtree: true, childList: true, characterData: true });
  slider.focus();
}

/** Four sets of parts at four heights: the columns of compare's table twice, the second time a little less. */
export async function compareFourByFour() {
  const element = document.querySelector('bumpline-compare');
  for (const row of element.querySelectorAll('tr')) {
    const isHeading = row.closest('thead') !== null;
    for (const cell of [...row.cells].slice(1)) {
      const copy = cell.cloneNode(true);
      copy.textContent = isHeading
        ? cell.textContent.replace('(', 'again (')
        : (Number(cell.textContent.replace('−', '-')) * 0.9).toFixed(3);
      row.append(copy);
    }
  }
  element.setAttribute('heights', '0, 10, 25, 40');
  await new Promise((done) => setTimeout(done, 300));
  await element.settled;
  const cells = element.shadowRoot.querySelectorAll('.cell-button').length;
  if (cells !== 16) throw new Error(`Four by four are 16 cells, not ${cells}`);
}
