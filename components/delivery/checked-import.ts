interface Chunks {
  integrity: Record<string, string>;
  needs: Record<string, string[]>;
}

/**
 * Hash of each lazily fetched file, and the files each lazy module needs: of the elements' first files so far, which bring those of all
 * they may ask for. Written in by the build: see vite.config.ts.
 */
const chunks = JSON.parse('__BUMPLINE_CHUNKS__') as Chunks;

/** Further ones, which an element's first file carries: it was checked itself. */
export function addChunks(json: string): void {
  const { integrity, needs } = JSON.parse(json) as Chunks;
  Object.assign(chunks.integrity, integrity);
  Object.assign(chunks.needs, needs);
}

const preloads = new Map<string, Promise<void>>();

/**
 * A browser remembers a module that it could not fetch for as long as the page is open, so that no later try could succeed. Without a
 * connection it is not asked for a module that its cache does not hold.
 */
async function kept(file: string): Promise<void> {
  if (navigator.onLine !== false) return;
  try {
    await fetch(new URL(file, import.meta.url), { integrity: chunks.integrity[file]!, cache: 'force-cache' });
  } catch (error) {
    preloads.delete(file);
    throw error;
  }
}

/** Fetches one file and has the browser check it against its hash; what passes is what a later import gets. */
function preload(file: string): Promise<void> {
  const link = document.createElement('link');
  const checked = new Promise<void>((resolve, reject) => {
    link.onload = () => resolve();
    link.onerror = () => {
      // The next one who needs it may try, and have it checked, again.
      preloads.delete(file);
      reject(new Error(`${link.href} could not be fetched, or is not the file it should be.`));
    };
  });
  link.rel = 'modulepreload';
  link.crossOrigin = 'anonymous';
  link.integrity = chunks.integrity[file]!;
  link.href = new URL(file, import.meta.url).href;
  document.head.append(link);
  return checked;
}

/**
 * Imports a lazy module after all its files have passed their check. A file that failed would be fetched again and run, if it
 * were imported all the same: so the import is not even tried then.
 *
 * @param name a lazy module as the build calls it
 */
export async function checkedImport<M>(name: string, load: () => Promise<M>): Promise<M> {
  await Promise.all(
    chunks.needs[name]!.map((file) => {
      const promise = preloads.get(file) ?? kept(file).then(() => preload(file));
      preloads.set(file, promise);
      return promise;
    }),
  );
  return load();
}
