/**
 * Adds properties that are worked out when they are first read, and from then on are as any other. Whoever copies, compares or sends
 * what they stand on reads them.
 */
export function lazily<Known extends object, Later extends object>(
  known: Known,
  later: { readonly [Name in keyof Later]: () => Later[Name] },
): Known & Later {
  for (const name of Object.keys(later) as (keyof Later)[]) {
    const shape = { enumerable: true, configurable: true };
    Object.defineProperty(known, name, {
      ...shape,
      get() {
        const value = later[name]();
        Object.defineProperty(known, name, { ...shape, value, writable: true });
        return value;
      },
    });
  }
  return known as Known & Later;
}
