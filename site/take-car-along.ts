import { goToPlace, readFragment, writeFragment } from '../components/car/fragment.js';

/** Links as their page wrote them; those of a drawing are links too. */
const written = new WeakMap<Element, string>();

/** The site's top: what the masthead's first link leads to. */
const top = (): string => new URL('.', document.querySelector<HTMLAnchorElement>('.masthead .name')!.href).href;

/** The car in the page's address, where it is one for the address. */
function carHere(): string | undefined {
  const { car, at } = readFragment(location.hash);
  return at === undefined ? car : undefined;
}

/** Where a link leads on the site's own pages; undefined of another's, and of a file to fetch. */
function pageOf(link: Element): URL | undefined {
  const href = written.get(link) ?? link.getAttribute('href')!;
  const url = new URL(href, document.baseURI);
  if (!url.href.startsWith(top()) || !/\/(?:index\.html)?$/.test(url.pathname)) return undefined;
  written.set(link, href);
  return url;
}

/** Every link to a page of the site carries the reader's car, however it is followed, opened or copied. */
function dressLinks(): void {
  const car = carHere();
  for (const link of document.querySelectorAll('a[href]')) {
    const url = pageOf(link);
    if (!url) continue;
    const href = written.get(link)!;
    const to = car ? href.replace(/#.*$/s, '') + writeFragment(url.hash.slice(1), car) : href;
    if (link.getAttribute('href') !== to) link.setAttribute('href', to);
  }
}

/** A place on the page itself is gone to by the browser, which knows it by its own name only. */
function goByName(event: MouseEvent): void {
  const link = event.composedPath().find((at) => at instanceof Element && written.has(at)) as Element | undefined;
  const isPlain = event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
  if (!link || !isPlain || link.hasAttribute('target')) return;
  const { hash, pathname } = pageOf(link)!;
  if (!hash || pathname !== location.pathname) return;
  link.setAttribute('href', hash);
  setTimeout(dressLinks);
}

/** Where no calculator keeps the address, the page keeps the car that it came with. */
function holdCar(): void {
  let car = carHere();
  goToPlace(readFragment(location.hash).section);
  addEventListener('hashchange', () => {
    const found = readFragment(location.hash);
    if (found.car !== undefined) car = carHere();
    else if (car && !found.isForeign) {
      history.replaceState(history.state, '', location.href.replace(/#.*$/s, '') + writeFragment(found.section, car));
    }
  });
}

/** Takes the reader's car along from page to page. */
export function takeCarAlong(): void {
  if (!document.querySelector('[keep-in-address]')) holdCar();
  dressLinks();
  for (const type of ['hashchange', 'popstate', 'pageshow', 'bumpline-address']) addEventListener(type, dressLinks);
  document.addEventListener('click', goByName, true);
}
