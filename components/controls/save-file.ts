/** How long the address of a file lives that is being saved, ms. */
const SAVE_MS = 6000;

/**
 * Hands a file to the browser, which saves it as its reader has it save. Whether it did, no page is told.
 *
 * @throws where no address can be made for it
 */
export function saveFile(file: Blob, name: string): void {
  const href = URL.createObjectURL(file);
  Object.assign(document.createElement('a'), { href, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(href), SAVE_MS);
}
