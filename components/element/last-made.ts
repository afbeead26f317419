/** Something that is made anew only when a part of what it is made from is another. */
export class LastMade<T> {
  #key: readonly unknown[] | undefined;
  #made: T | undefined;

  of(key: readonly unknown[], make: () => T): T {
    if (!this.#key || this.#key.some((part, i) => part !== key[i])) {
      this.#made = make();
      this.#key = key;
    }
    return this.#made!;
  }
}
