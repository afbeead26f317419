import { VERSION } from '../version.js';
import { BUILD } from './layers/base.generated.js';

/** Where a page keeps what all copies of this build have in common: by version and build, since others know it otherwise. */
export const pageKey = (name: string): symbol => Symbol.for(`bumpline.${name}/${VERSION}/${BUILD}`);

/** What all copies of this build on a page have in common, by name: two scripts bring two, and in the cdn build each element one. */
export function pageWide<T>(name: string, make: () => T): T {
  const page = globalThis as unknown as Record<symbol, T | undefined>;
  const key = pageKey(name);
  page[key] ??= make();
  return page[key];
}
