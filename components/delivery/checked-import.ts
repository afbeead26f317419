import { trustedAddress } from '../../core/worker/trusted-address.js';

/** A lazily fetched file: its name, its hash, and the places in `files` of those that it imports besides the entry. */
type File = [name: string, integrity: string, ...imports: number[]];

/** Written in by the build: see vite.config.ts. `lazy`: the place in `files` of each lazy module. */
const { files, lazy } = JSON.parse('__BUMPLINE_CHUNKS__') as { files: File[]; lazy: Record<string, number> };

const inFull = (name: string) => new URL(name, import.meta.url).href;

/** By place in `files`: the address under which the file is imported, once it has passed its check. */
const checks: (Promise<string> | undefined)[] = [];
const tried = new Set<number>();

/** Has the browser fetch what an element says, and check it against its hash. */
function fetched(element: HTMLLinkElement | HTMLScriptElement, integrity: string): Promise<unknown> {
  element.crossOrigin = 'anonymous';
  element.integrity = integrity;
  return new Promise((resolve, reject) => {
    element.onload = resolve;
    element.onerror = reject;
    document.head.append(element);
  });
}

/**
 * A file that failed before, or one of whose imports did: browsers remember the failure of an address until the page goes. So it is
 * fetched and checked as a text and imported from there, with its imports under the addresses they have now.
 */
async function copied([name, integrity, ...imports]: File, addresses: string[]): Promise<string> {
  const text = await (await fetch(inFull(name), { integrity, cache: 'reload' })).text();
  const code = text.replace(/(["'`])\.\/([\w.-]+\.js)\1/g, (_, quote, file) => {
    const at = imports.findIndex((one) => files[one]![0] === file);
    return quote + (addresses[at] ?? inFull(file)) + quote;
  });
  return URL.createObjectURL(new Blob([code], { type: 'text/javascript' }));
}

async function check(at: number): Promise<string> {
  const [name, integrity, ...imports] = files[at]!;
  const href = inFull(name);
  const isAgain = tried.has(at);
  tried.add(at);
  // All are on their way at once.
  const early =
    !isAgain && fetched(Object.assign(document.createElement('link'), { rel: 'modulepreload', href }), integrity);
  if (early) early.catch(() => {});
  // A file that failed would be fetched again and run, if another imported it all the same.
  const addresses = await Promise.all(imports.map(checked));
  try {
    if (isAgain) return await copied(files[at]!, addresses);
    const script = document.createElement('script');
    script.type = 'module';
    try {
      script.src = trustedAddress(href);
    } catch {
      // Trusted Types, and our policy is not allowed.
      await early;
      return href;
    }
    // WebKit checks no preload, but this.
    await fetched(script, integrity);
    return href;
  } catch {
    throw new Error(`${href} could not be fetched, or is not the file it should be.`);
  }
}

/** Each file is checked once; the next one who needs what failed may try, and have it checked, again. */
const checked = (at: number): Promise<string> =>
  (checks[at] ??= check(at).catch((error) => {
    checks[at] = undefined;
    throw error;
  }));

/**
 * Imports a lazy module after all its files have passed their check; while one has not, the import is not even tried.
 *
 * @param name a lazy module as the build calls it
 * @param load imports it from an address
 */
export const checkedImport = async <M>(name: string, load: (address: string) => Promise<M>): Promise<M> =>
  load(await checked(lazy[name]!));
