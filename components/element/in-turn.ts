import { pageWide } from '../../core/worker/page-wide.js';

/** So long after the last change of a car somebody counts as resting, ms. */
const REST_MS = 350;
/** A page that is never idle has the next turn after this, ms. */
const IDLE_AT_LATEST_MS = 1000;
/** In a browser that cannot say when it is idle: time for an input between two turns, ms. */
const PAUSE_MS = 50;

type Task = () => unknown;

/** One row for a page, whichever copy of this module its elements came with. */
const page = pageWide('turns', () => ({
  /** When somebody last changed a car in any element, ms. */
  change: Number.NEGATIVE_INFINITY,
  waiting: new Set<Task>(),
  isRunning: false,
}));

/** Somebody changes a car: what has no haste waits until they rest. */
export function noteChange(): void {
  page.change = performance.now();
}

const restLeft = (): number => page.change + REST_MS - performance.now();

/** Whether somebody is changing a car, in whatever element. */
export const isChanging = (): boolean => restLeft() >= 0;

/**
 * Does what has no haste when the page rests and is idle: one task after another, each once the one before has resolved.
 *
 * @returns what takes a task out of the row
 */
export function inTurn(task: Task): () => void {
  page.waiting.add(task);
  if (!page.isRunning) {
    page.isRunning = true;
    void run();
  }
  return () => page.waiting.delete(task);
}

const after = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const idle = (): Promise<unknown> =>
  typeof requestIdleCallback === 'function'
    ? new Promise((resolve) => requestIdleCallback(resolve, { timeout: IDLE_AT_LATEST_MS }))
    : after(PAUSE_MS);

async function run(): Promise<void> {
  for (;;) {
    while (isChanging()) await after(Math.ceil(restLeft()) + 1);
    await idle();
    if (isChanging()) continue;
    const [task] = page.waiting;
    if (!task) break;
    page.waiting.delete(task);
    try {
      await task();
    } catch (error) {
      console.error('Bumpline: a part could not be drawn.', error);
    }
  }
  page.isRunning = false;
}
