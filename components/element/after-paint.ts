import { afterNextFrame } from './next-task.js';
import { onPrint } from './on-print.js';

/** What follows an input may come this much late where no frames are painted, ms: a page in the background, or one that is printed. */
const AT_LATEST_MS = 120;

/** In a task of its own, so that it holds no input up; printing does it at once. */
export function inOwnTask(task: () => void): void {
  const now = () => {
    clearTimeout(timer);
    stop();
    task();
  };
  const timer = setTimeout(now);
  const stop = onPrint(now);
}

interface Later {
  readonly tasks: Map<object, () => void>;
  readonly done: Promise<void>;
}

const waiting = new WeakMap<object, Later>();

/** Calls back in a task of its own after the next frame, or at the latest when none is painted; printing does it at once. */
export function afterFrame(callback: () => void): void {
  let isDue = true;
  const once = () => {
    if (!isDue) return;
    isDue = false;
    clearTimeout(timer);
    stop();
    callback();
  };
  const timer = setTimeout(once, AT_LATEST_MS);
  const stop = onPrint(once);
  requestAnimationFrame(() => setTimeout(once));
}

/**
 * Does a host's work in the frame after the one that shows what was asked for: chart and drawing follow a dragged number, and do not
 * hold it up. Of one `who`, only the newest task is done. Printing does it at once.
 */
export function afterPaint(host: object, who: object, task: () => void): void {
  const later = waiting.get(host) ?? begin(host);
  later.tasks.set(who, task);
}

/** Resolves when nothing of a host waits any more. */
export async function donePainting(host: object): Promise<void> {
  for (let later = waiting.get(host); later; later = waiting.get(host)) await later.done;
}

function begin(host: object): Later {
  let resolve = () => {};
  const tasks = new Map<object, () => void>();
  const done = new Promise<void>((to) => {
    resolve = to;
  });
  const now = () => {
    if (waiting.get(host) !== later) return;
    waiting.delete(host);
    clearTimeout(timer);
    stop();
    // Who waits for it goes on after them, even where one throws.
    resolve();
    for (const task of tasks.values()) {
      try {
        task();
      } catch (error) {
        console.error('Bumpline: a part could not be drawn.', error);
      }
    }
  };
  const later: Later = { tasks, done };
  const timer = setTimeout(now, AT_LATEST_MS);
  afterNextFrame(now);
  const stop = onPrint(now);
  waiting.set(host, later);
  return later;
}
