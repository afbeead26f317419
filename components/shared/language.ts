/** The language a page says its text is in, looking out of shadow roots: numbers agree with the text around them. */
export function languageOf(element: Element): string {
  let at: Element | null = element;
  while (at) {
    const found: Element | null = at.closest('[lang]');
    if (found) return found.getAttribute('lang') || 'en';
    const root = at.getRootNode();
    at = root instanceof ShadowRoot ? root.host : null;
  }
  return 'en';
}
