const STYLES = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linejoin',
] as const;
const TEXT_STYLES = ['font-family', 'font-size', 'font-weight', 'text-anchor', 'paint-order'] as const;

/** A picture that stands alone: what the style sheet gave its parts is written into them, on a ground of the given colour. */
export function standaloneSvg(picture: SVGSVGElement, ground: string): string {
  const copy = picture.cloneNode(true) as SVGSVGElement;
  const parts = picture.querySelectorAll('*');
  copy.querySelectorAll('*').forEach((part, i) => {
    const look = getComputedStyle(parts[i]!);
    for (const name of part.tagName === 'text' ? [...STYLES, ...TEXT_STYLES] : STYLES) {
      part.setAttribute(name, look.getPropertyValue(name));
    }
    part.removeAttribute('class');
  });
  const paper = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  paper.setAttribute('width', '100%');
  paper.setAttribute('height', '100%');
  paper.setAttribute('fill', ground);
  copy.prepend(paper);
  return new XMLSerializer().serializeToString(copy);
}

/** The same as a PNG, at twice the size it has on the screen. */
export async function pngOf(source: string, width: number, height: number): Promise<Blob | null> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(source)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = 2 * width;
  canvas.height = 2 * height;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => canvas.toBlob(resolve));
}
