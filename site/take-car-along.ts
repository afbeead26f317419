import { goToPlace, readFragment, writeFragment } from '../components/car/fragment.js';

/** A link's own fragment, as its page wrote it. */
const sections = new WeakMap<HTMLAnchorElement, string>();

/** The site's top: what the masthead's first link leads to. */
const top = (): string => new URL('.', document.querySelector<HTMLAnchorElement>('.masthead .name')!.href).href;

/** The car in the page's address, where it is one for the address. */
function carHere(): string | undefined {
  const { car, at } = readFragment(location.hash);
  return at === undefined ? car : undefined;
}

/** The site's own pages; a file to fetch is none. */
const isPage = ({ href }: HTMLAnchorElement): boolean =>
  href.startsWith(top()) && /\/(?:index\.html)?$/.test(new URL(href).pathname);

/** Every link to a page of the site carries the reader's car, however it is followed, opened or copied. */
function dressLinks(): void {
  const car = carHere();
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[href]')) {
    if (!isPage(link)) continue;
    const section = sections.get(link) ?? link.hash.replace(/^#/, '');
    sections.set(link, section);
    const to = writeFragment(section, car);
    // An empty hash would leave a # behind.
    if (link.hash !== to) link.href = link.href.replace(/#.*$/s, '') + to;
  }
}

/** A place on the page itself is gone to by the browser, which knows it by its own name only. */
function goByName(event: MouseEvent): void {
  const link = event.composedPath().find((at): at is HTMLAnchorElement => at instanceof HTMLAnchorElement);
  const section = link && sections.get(link);
  const isPlain = event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
  if (!section || !isPlain || link.target || link.pathname !== location.pathname) return;
  link.href = `#${section}`;
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
