/** What a generator that works in slices comes to. */
export function finished<T>(steps: Generator<undefined, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
