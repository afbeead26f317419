import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, dropBy } from '../../core/document/car.js';
import { SHEET } from './element.labels.js';
import { leadsToPage } from './leads-to-page.js';
import type { SheetView } from './sheet-view.js';

type View = Pick<SheetView, 'host' | 'model'>;

/** Of what an element is asked by its page, what no car holds. */
const ASKED = ['over', 'heights', 'roll', 'by', 'setup', 'coefficients', 'domain', 'theme', 'show', 'language'];

/** What of a car holds a reader's own word for some of them. */
const SETTINGS: readonly (keyof CarDocument)[] = ['compare', 'toe', 'turn', 'camberAdded', 'predict'];

/** Whether a reader asks something else than the page does. */
const isReaders = (name: string, car: CarDocument): boolean =>
  (name === 'over' && car.readingsOver !== undefined) ||
  (name === 'heights' && dropBy(car) === 'user') ||
  SETTINGS.some((field) => name in ((car[field] as object | undefined) ?? {}));

/** Where an author makes a snippet of this element, without the car. */
function pageOf({ host, model: { car } }: View): string {
  const { units, angles } = host;
  const asked = ASKED.flatMap((name): [string, string][] => {
    const value = host.getAttribute(name);
    return value === null || isReaders(name, car) ? [] : [[name, value]];
  });
  const query = new URLSearchParams([
    ['element', host.localName.replace('bumpline-', '')],
    ...asked,
    ...(units === 'in' ? [['units', units] as [string, string]] : []),
    ...(angles === 'arcminutes' ? [['angles', angles] as [string, string]] : []),
  ]);
  const { authorPage = '' } = host;
  return `${authorPage}${authorPage.includes('?') ? '&' : '?'}${query}`;
}

/** Has the link lead there with the car as it stands: when somebody is about to follow it. */
async function dress(view: View, link: HTMLAnchorElement): Promise<void> {
  try {
    const { wholeLinkInto } = await import('../car/address.js');
    link.href = wholeLinkInto(pageOf(view), view.model.car);
  } catch {
    // The page is reached without the car.
  }
}

/** Whoever is faster than the file that writes the car goes on with it all the same. */
async function follow(view: View, event: MouseEvent): Promise<void> {
  const link = event.currentTarget as HTMLAnchorElement;
  const isElsewhere = event.ctrlKey || event.metaKey || event.shiftKey || link.target !== '';
  if (link.hash || isElsewhere) return;
  event.preventDefault();
  await dress(view, link);
  location.assign(link.href);
}

/** The way to a page with the snippet builder, where the element names one. */
export function renderPutInArticle(view: View): TemplateResult | typeof nothing {
  const { authorPage } = view.host;
  if (!authorPage || !leadsToPage(authorPage)) return nothing;
  const now = (event: Event) => dress(view, event.currentTarget as HTMLAnchorElement);
  return html`<a class="text-button put-in-article" href=${pageOf(view)} @pointerenter=${now} @pointerdown=${now} @focus=${now} @click=${(event: MouseEvent) => void follow(view, event)}>${SHEET.putInArticle}</a>`;
}
