import { afterPaint } from './after-paint.js';

/**
 * Lets what stands above the window grow in a frame of its own. A browser keeps what a reader sees where it is when something above it
 * grows, but Chromium (153, as tried) not where content comes in a container that is queried, as ours is: there its anchor is lost.
 *
 * @returns whether it stands there
 */
export function growLater(host: HTMLElement, inside: HTMLElement): boolean {
  if (host.getBoundingClientRect().bottom > 0) return false;
  inside.style.blockSize = `${inside.offsetHeight}px`;
  afterPaint(host, inside, () => {
    inside.style.blockSize = '';
  });
  return true;
}
