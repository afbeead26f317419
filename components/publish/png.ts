import type { PictureFile } from './picture-file.js';

/** Times as many pixels as CSS px: what is sharp on most screens. */
const SHARP = 2;

/**
 * The same as a PNG, at twice its size.
 *
 * @returns undefined where the page's policy lets no picture be made of a text (`img-src` without `data:`), or a setting of the
 *   browser lets none be taken from a canvas
 */
export async function pngOf({ source, width, height }: PictureFile): Promise<Blob | undefined> {
  try {
    const image = new Image();
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(source)}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = SHARP * width;
    canvas.height = SHARP * height;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => canvas.toBlob((png) => resolve(png ?? undefined), 'image/png'));
  } catch (error) {
    console.warn('Bumpline: no PNG could be made.', error);
    return undefined;
  }
}
