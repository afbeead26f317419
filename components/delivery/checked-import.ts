import { trustedAddress } from '../../core/worker/trusted-address.js';

interface Chunks {
  /** By file name: its hash, and those that it imports, but for the entry. */
  files: Record<string, [integrity: string, ...imports: string[]]>;
  /** The file that each lazy module stands in. */
  lazy: Record<string, string>;
}

/**
 * What may be fetched lazily: the elements' first files so far, which bring all they may ask for. Written in by the build: see
 * vite.config.ts.
 */
const { files, lazy } = JSON.parse('__BUMPLINE_CHUNKS__') as Chunks;

/** Further ones, which an element's first file carries: it was checked itself. */
export function addChunks(json: string): void {
  const further = JSON.parse(json) as Chunks;
  Object.assign(files, further.files);
  Object.assign(lazy, further.lazy);
}

const checks = new Map<string, Promise<string>>();
/** By file name: the address under which a file that passed its check is imported. Missing: it was tried and has not passed yet. */
const addresses = new Map<string, string | undefined>();

const inFull = (file: string) => new URL(file, import.meta.url).href;

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
async function copied(href: string, integrity: string): Promise<string> {
  const text = await (await fetch(href, { integrity, cache: 'reload' })).text();
  const code = text.replace(
    /(["'`])\.\/([\w.-]+\.js)\1/g,
    (_, quote, file) => quote + (addresses.get(file) ?? inFull(file)) + quote,
  );
  return URL.createObjectURL(new Blob([code], { type: 'text/javascript' }));
}

async function check(file: string): Promise<string> {
  const [integrity, ...imports] = files[file]!;
  const href = inFull(file);
  const isAgain = addresses.has(file);
  addresses.set(file, undefined);
  // All are on their way at once.
  const early =
    !isAgain && fetched(Object.assign(document.createElement('link'), { rel: 'modulepreload', href }), integrity);
  if (early) early.catch(() => {});
  // A file that failed would be fetched again and run, if another imported it all the same.
  await Promise.all(imports.map(checked));
  try {
    if (isAgain || imports.some((one) => addresses.get(one) !== inFull(one))) return await copied(href, integrity);
    // Come first: a page's `load` event waits for a script that hangs, and for no preload.
    await early;
    const script = document.createElement('script');
    script.type = 'module';
    try {
      script.src = trustedAddress(href);
    } catch {
      // Trusted Types, and our policy is not allowed.
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
function checked(file: string): Promise<string> {
  const passed =
    checks.get(file) ??
    check(file).then(
      (address) => {
        addresses.set(file, address);
        return address;
      },
      (error) => {
        checks.delete(file);
        throw error;
      },
    );
  checks.set(file, passed);
  return passed;
}

/**
 * Imports a lazy module after all its files have passed their check; while one has not, the import is not even tried.
 *
 * @param name a lazy module as the build calls it
 * @param load imports it from an address
 */
export const checkedImport = async <M>(name: string, load: (address: string) => Promise<M>): Promise<M> =>
  load(await checked(lazy[name]!));
