/** What an SVG means where nothing is said. */
const SHAPE: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'paint-order': 'normal',
};
const TEXT: Readonly<Record<string, string>> = {
  ...SHAPE,
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'text-anchor': 'start',
};
/** Of these a shape without a stroke needs none. */
const STROKES = Object.keys(SHAPE).filter((name) => name.startsWith('stroke-') || name === 'paint-order');

/**
 * A copy of a picture that needs no style sheet: what one gave each part is written into it. Its font is the picture's own affair.
 *
 * @param picture in the document, so that it has looks
 */
export function withWrittenStyles(picture: SVGSVGElement): SVGSVGElement {
  const copy = picture.cloneNode(true) as SVGSVGElement;
  const parts = [...picture.querySelectorAll<SVGElement>('*')];
  for (const [i, part] of [...copy.querySelectorAll<SVGElement>('*')].entries()) {
    part.removeAttribute('class');
    // A path for cutting has no colours, and a group none of its own.
    if (!part.matches('path, rect, text, tspan') || part.closest('clipPath')) continue;
    const look = getComputedStyle(parts[i]!);
    for (const [name, usual] of Object.entries(/^t/.test(part.localName) ? TEXT : SHAPE)) {
      const value = look.getPropertyValue(name);
      const isIdle = value === usual || (look.stroke === 'none' && STROKES.includes(name));
      if (isIdle) part.removeAttribute(name);
      else part.setAttribute(name, value.replace(/px\b/g, ''));
    }
  }
  const comments = document.createTreeWalker(copy, NodeFilter.SHOW_COMMENT);
  const found: Node[] = [];
  while (comments.nextNode()) found.push(comments.currentNode);
  for (const comment of found) (comment as Comment).remove();
  return copy;
}
