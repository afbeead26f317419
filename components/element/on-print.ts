const tasks = new Set<() => void>();

let isOnPaper = false;

/** Whether something is being printed: what is rendered now stands on paper, which cannot be scrolled. */
export const isPrinting = (): boolean => isOnPaper;

const end = (): void => {
  isOnPaper = false;
};

/** Those that come while others are done have their turn in the same event, which listeners of its own would not. */
const print = (): void => {
  isOnPaper = true;
  addEventListener('afterprint', end, { once: true });
  for (const task of tasks) task();
};

/**
 * Does something when printing begins: paper takes what stands there when that event is over.
 *
 * @returns what stops it
 */
export function onPrint(task: () => void): () => void {
  if (tasks.size === 0) addEventListener('beforeprint', print);
  tasks.add(task);
  return () => {
    tasks.delete(task);
    if (tasks.size === 0) removeEventListener('beforeprint', print);
  };
}
