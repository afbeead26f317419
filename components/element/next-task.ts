/** Resolves in a task of its own: what was done before it and what comes after do not hold the thread together. */
export const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    // A timer would be clamped where timers follow each other, and for long in a page in the background.
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });

/**
 * Calls back in the frame after the next. It is asked for in a task between the two: asked for within the first, the second would begin
 * at once on a slow phone, and hold up what waits to be told that the first is painted, and the next input.
 */
export function afterNextFrame(callback: () => void): void {
  requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(callback)));
}
