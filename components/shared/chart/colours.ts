const names = ['ink', 'soft', 'hair', 'paper', 'now', 'before', 'limit'] as const;

/** Resolved colours, as a canvas takes them. */
export type Colours = Record<(typeof names)[number], string>;

/**
 * Reads the theme's colours where the chart stands. A canvas knows no custom properties, and an author may have written
 * light-dark(), color-mix() or a system colour into them, so each is resolved through a real `color`.
 */
export function resolveColours(place: HTMLElement): Colours {
  const probe = document.createElement('span');
  // Else forced colours would answer with the colour of text for all of them.
  probe.style.setProperty('forced-color-adjust', 'none');
  place.append(probe);
  const resolved = getComputedStyle(probe);
  const colours = Object.fromEntries(
    names.map((name) => {
      probe.style.color = `var(--_${name})`;
      return [name, resolved.color];
    }),
  ) as Colours;
  probe.remove();
  return colours;
}

const themeAttributes = ['theme', 'class', 'style', 'data-theme'];

/**
 * Calls back whenever the colours may have changed: the reader's scheme, forced colours, going to print, the element's own
 * theme, or a page that switches by a class on its root or body.
 * @returns the function that stops it.
 */
export function followLook(host: Element, changed: () => void): () => void {
  const queries = ['(prefers-color-scheme: dark)', '(forced-colors: active)', 'print'].map((query) =>
    matchMedia(query),
  );
  for (const query of queries) query.addEventListener('change', changed);
  const observer = new MutationObserver(changed);
  for (const element of [host, document.documentElement, document.body])
    observer.observe(element, { attributeFilter: themeAttributes });
  return () => {
    for (const query of queries) query.removeEventListener('change', changed);
    observer.disconnect();
  };
}
