/** A time limit that starts anew with each `again` and calls `late` when it runs out. */
export interface Watchdog {
  again(): void;
  stop(): void;
}

/**
 * @param ms limit, ms. It is waited for in two halves: when the page itself was busy or asleep for longer, the messages that came in
 * meanwhile are heard before the second half is over, and nobody is called late for it.
 */
export function watchdog(ms: number, late: () => void): Watchdog {
  let timer: ReturnType<typeof setTimeout>;
  const stop = () => clearTimeout(timer);
  return {
    stop,
    again() {
      stop();
      timer = setTimeout(() => {
        timer = setTimeout(late, ms / 2);
      }, ms / 2);
    },
  };
}
