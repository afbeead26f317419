/** The size of text that pictures and sliders are laid out for, CSS px. */
const BASE_PX = 16;
/** What a picture is laid out for needs this much, CSS px. */
const NARROWEST_PX = 290;

/** How many times larger than usual the reader has text at a place that is in no smaller type than its sheet. */
export const textScale = (place: Element): number =>
  Number(getComputedStyle(place).fontSize.replace('px', '')) / BASE_PX || 1;

/**
 * How many times larger a picture is drawn than it is laid out, so that its words grow with the reader's text: as far as its place
 * leaves the layout the width it needs. Never smaller.
 */
export const pictureScale = (scale: number, width: number): number =>
  Math.max(1, Math.min(scale, width / NARROWEST_PX));

const known = new WeakMap<Element, number>();

/** The scale of text in an element's sheet: measured once it has one, and once only, since it is asked for in every rendering. */
export function sheetScale({ shadowRoot }: Element): number {
  const inside = shadowRoot?.querySelector('.inside');
  if (!inside?.isConnected) return 1;
  const scale = known.get(inside) ?? textScale(inside);
  known.set(inside, scale);
  return scale;
}
