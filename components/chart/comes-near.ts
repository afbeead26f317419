/** How far below the fold a chart begins to be drawn. */
const NEAR = '300px 0px';

/** Resolves in a task of its own after the next frame has been painted. */
export const painted = (): Promise<void> => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));

/** Resolves when an element is in the window, or nearly; never, once it is given up. */
export function comesNear(element: Element, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        observer.disconnect();
        resolve();
      },
      { rootMargin: NEAR },
    );
    observer.observe(element);
    signal.addEventListener('abort', () => observer.disconnect());
  });
}
