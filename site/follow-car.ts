import type { SheetElement } from '../components/element/sheet-element.js';
import type { FollowedAnswer } from './your-figures.js';

/** A calculator whose answer has a curve, its own or that of its fit. */
type Followed = SheetElement<never> & {
  readonly answer?: Partial<FollowedAnswer> & { fit?: Pick<FollowedAnswer, 'curve' | 'residualSd'> };
};

const FIGURES = 'data[data-yours]';

/** The examples' figures, as the page has them. */
const written = new WeakMap<Element, string>();

/**
 * The text's figures follow the reader's own car where the page's calculator knows it, and the page says whose they are
 * (`site/partials/whose-figures.ts`). Until then, and without scripts, they are the example's. The file that works them out is fetched
 * with the first car of a reader's own.
 */
export function followCar(): void {
  const figures = document.querySelectorAll<HTMLDataElement>(FIGURES);
  if (figures.length === 0) return;
  document.addEventListener('bumpline-answer', async ({ target }) => {
    const { whose, answer } = target as Followed;
    const followed = { ...answer?.fit, ...answer };
    if (!followed.curve) return;
    const isReaders = whose === 'user';
    if (!isReaders && !document.documentElement.hasAttribute('data-figures')) return;
    const { figureOf, inItsWords } = await import('./your-figures.js');
    for (const figure of figures) {
      const shown = written.get(figure) ?? figure.textContent!;
      written.set(figure, shown);
      const value = isReaders ? figureOf(figure.dataset.yours!, followed as FollowedAnswer) : undefined;
      figure.textContent = value === undefined ? shown : inItsWords(shown, Number(figure.value), value);
      figure.classList.toggle('yours', value !== undefined);
    }
    document.documentElement.toggleAttribute('data-figures', isReaders);
  });
}
