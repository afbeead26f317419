import { adoptStyles, type CSSResultGroup, type CSSResultOrNative, type LitElement } from 'lit';

/**
 * Adds style sheets to those an element has adopted: adopted ones, so that a content security policy for styles does not stop them.
 *
 * @returns what adds more
 */
export function adoptedStyles(host: LitElement, ...first: CSSResultGroup[]): (...styles: CSSResultGroup[]) => void {
  const all: CSSResultGroup[] = [];
  const add = (...styles: CSSResultGroup[]) => {
    all.push(...styles);
    adoptStyles(host.renderRoot as ShadowRoot, (all as CSSResultOrNative[][]).flat(9));
  };
  add(...first);
  return add;
}
