import type { SheetElement } from '../components/element/sheet-element.js';
import type { FollowedAnswer } from './your-figures.js';

/** A calculator whose answer has a curve, its own or that of its fit. */
type Followed = SheetElement<never> & {
  readonly answer?: Partial<FollowedAnswer> & { fit?: Pick<FollowedAnswer, 'curve' | 'residualSd'> };
};

const FIGURES = 'data[data-yours]';

/**
 * The text's figures follow the reader's own car where the page's calculator knows it, and the page says whose they are
 * (`site/partials/whose-figures.ts`). Until then, and without scripts, they are the example's. The file that works them out is fetched
 * with the first car of a reader's own.
 */
export function followCar(): void {
  const figures = [...document.querySelectorAll<HTMLDataElement>(FIGURES)].map((figure) => ({
    figure,
    /** The example's, as the page has it. */
    shown: figure.textContent!,
  }));
  if (figures.length === 0) return;
  let told: FollowedAnswer | undefined;
  document.addEventListener('bumpline-answer', async ({ target }) => {
    const { isReaders, answer } = target as Followed;
    const followed = { ...answer?.fit, ...answer };
    if (!followed.curve) return;
    const readers = isReaders ? (followed as FollowedAnswer) : undefined;
    if (!readers && !told) return;
    told = readers;
    const { figureOf, inItsWords } = await import('./your-figures.js');
    // A newer answer came while the file did.
    if (told !== readers) return;
    for (const { figure, shown } of figures) {
      const value = readers && figureOf(figure.dataset.yours!, readers);
      figure.textContent = value === undefined ? shown : inItsWords(shown, Number(figure.value), value);
      figure.classList.toggle('yours', value !== undefined);
    }
    document.documentElement.toggleAttribute('data-figures', readers !== undefined);
  });
}
