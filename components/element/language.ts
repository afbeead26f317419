/** A tag as browsers take it: `de_DE` is `de-DE`, and what is no tag at all is English. */
function tagOf(said: string): string {
  const tag = said.trim().replaceAll('_', '-');
  return /^[a-z]{2,3}(?:-[a-z0-9]{2,8})*$/i.test(tag) ? tag : 'en';
}

/** The language a page says its text is in, looking out of shadow roots: numbers agree with the text around them. */
export function languageOf(element: Element): string {
  let at: Element | null = element;
  while (at) {
    const found: Element | null = at.closest('[lang]');
    if (found) return tagOf(found.getAttribute('lang') ?? '');
    const root = at.getRootNode();
    at = root instanceof ShadowRoot ? root.host : null;
  }
  return 'en';
}
