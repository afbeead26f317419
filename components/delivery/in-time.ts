/** How long a file may be on its way before it counts as lost, ms. */
const LONGEST_WAIT_MS = 10_000;

/** What comes over the network, or an error where it hangs. @throws what its fetch throws */
export async function inTime<T>(coming: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`A file has not come in ${LONGEST_WAIT_MS / 1000} s.`)), LONGEST_WAIT_MS);
  });
  try {
    return await Promise.race([coming, late]);
  } finally {
    clearTimeout(timer);
  }
}
