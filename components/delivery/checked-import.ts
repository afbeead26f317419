/** File and hash of each lazy module and of all it imports. Written in by the build: see vite.config.ts. */
const table = JSON.parse('__BUMPLINE_CHUNKS__') as Record<string, [file: string, integrity: string][]>;

/** Fetches one file and has the browser check it against its hash; what passes is what a later import gets. */
function preload(file: string, integrity: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const link = document.createElement('link');
    link.rel = 'modulepreload';
    link.crossOrigin = 'anonymous';
    link.integrity = integrity;
    link.href = new URL(file, import.meta.url).href;
    link.onload = () => resolve();
    link.onerror = () => reject(new Error(`${link.href} could not be fetched or is not the file it should be.`));
    document.head.append(link);
  });
}

/**
 * Imports a lazy module after its files have passed their check. A browser would fetch and run a file that failed, if it were
 * imported all the same: so the import is not even tried then.
 *
 * @param name as in the build's list of lazy modules
 */
export async function checkedImport<M>(name: string, load: () => Promise<M>): Promise<M> {
  await Promise.all(table[name]!.map(([file, integrity]) => preload(file, integrity)));
  return load();
}
