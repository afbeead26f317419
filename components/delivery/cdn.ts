import { checkedImport } from './checked-import.js';

/** What brings each element; fetched when the first of them is seen on the page. */
const elements: Record<string, () => Promise<void>> = {
  'bumpline-lowering': async () => {
    const { setPlotLoader } = await checkedImport('bumpline-lowering', () => import('./lowering.js'));
    setPlotLoader(() => checkedImport('plot', () => import('../shared/chart/plot.js')));
  },
};

const coming = new Map<string, Promise<void>>();

/**
 * Registers an element now. Elements in the page's own markup, whenever they come, are found without it; those that something
 * else keeps in its shadow root are not.
 *
 * @param name e.g. `bumpline-lowering`
 * @returns rejects where the files cannot be had or are not what they should be; the element then keeps showing its content
 */
export function load(name: string): Promise<void> {
  const bring = elements[name] ?? (() => Promise.reject(new Error(`There is no element <${name}>.`)));
  const promise = coming.get(name) ?? bring();
  coming.set(name, promise);
  return promise;
}

function look(): void {
  const missing = Object.keys(elements).filter((name) => !coming.has(name) && !customElements.get(name));
  if (missing.length === 0) observer.disconnect();
  for (const name of missing) {
    if (document.querySelector(name)) {
      load(name).catch((error) => console.error(`Bumpline: <${name}> does not come alive.`, error));
    }
  }
}

const observer = new MutationObserver(look);
observer.observe(document, { childList: true, subtree: true });
look();
