/** Called with the element's content width in CSS px. */
type Resized = (inlineSize: number) => void;

interface Watched {
  resized: Resized;
  inlineSize: number;
}

const watched = new Map<Element, Watched>();
let observer: ResizeObserver | undefined;
let frame = 0;
let pending = new Map<Element, number>();

function flush(): void {
  frame = 0;
  const sizes = pending;
  pending = new Map();
  for (const [element, inlineSize] of sizes) {
    const watch = watched.get(element);
    // Zero is a closed <details> or a hidden tab: keep what was drawn, it is right again when the place is shown again.
    if (!watch || inlineSize === 0 || inlineSize === watch.inlineSize) continue;
    watch.inlineSize = inlineSize;
    watch.resized(inlineSize);
  }
}

function observed(entries: ResizeObserverEntry[]): void {
  for (const entry of entries)
    pending.set(entry.target, entry.contentBoxSize[0]?.inlineSize ?? entry.contentRect.width);
  // Not here but in the next frame: a size set inside the callback is what raises "ResizeObserver loop" on the host's page.
  if (frame === 0) frame = requestAnimationFrame(flush);
}

/**
 * Watches an element's inline size with the one observer that all elements of the page share. Block size is not watched:
 * it follows from the inline size, and a loop could grow it for ever.
 * @returns the function that stops watching.
 */
export function watchInlineSize(element: Element, resized: Resized): () => void {
  observer ??= new ResizeObserver(observed);
  watched.set(element, { resized, inlineSize: 0 });
  observer.observe(element);
  return () => {
    watched.delete(element);
    pending.delete(element);
    observer?.unobserve(element);
  };
}
