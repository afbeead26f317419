import { adoptStyles, type CSSResult, type CSSResultGroup, type LitElement } from 'lit';

/**
 * Adds style sheets to those an element has adopted: adopted ones, so that a content security policy for styles does not stop them.
 * They are those of one document: in another that adopts the element they are made anew.
 *
 * @returns what adds more
 */
export function adoptedStyles(host: LitElement, ...first: CSSResultGroup[]): (...styles: CSSResultGroup[]) => void {
  const all: CSSResultGroup[] = [];
  let home: Document | undefined;
  const apply = () => {
    home = host.ownerDocument;
    const styles = (all as CSSResult[][]).flat(9);
    const root = host.renderRoot as ShadowRoot;
    if (home === document) adoptStyles(root, styles);
    else if (home.defaultView) root.adoptedStyleSheets = sheetsIn(home.defaultView, styles);
  };
  host.addController({
    hostConnected() {
      if (home && home !== host.ownerDocument) apply();
    },
  });
  const add = (...styles: CSSResultGroup[]) => {
    all.push(...styles);
    apply();
  };
  add(...first);
  return add;
}

const sheetsIn = ({ CSSStyleSheet: Sheet }: typeof globalThis, styles: readonly CSSResult[]): CSSStyleSheet[] =>
  styles.map(({ cssText }) => {
    const sheet = new Sheet();
    sheet.replaceSync(cssText);
    return sheet;
  });
