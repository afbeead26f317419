/**
 * Lets the event loop turn once: input, rendering and messages get their chance. A message and not a timer, because nested timers
 * wait at least 4 ms in browsers.
 */
export function yieldToEventLoop(): Promise<void> {
  return new Promise((resume) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resume();
    };
    port2.postMessage(0);
  });
}
