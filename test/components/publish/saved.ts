/** What the page handed to the browser to be saved, by name, while something is done. */
export async function savedBy(task: () => Promise<unknown>): Promise<Map<string, Blob>> {
  const files = new Map<string, Blob>();
  const blobs = new Map<string, Blob>();
  const { createObjectURL } = URL;
  const { click } = HTMLAnchorElement.prototype;
  URL.createObjectURL = (object) => {
    const address = createObjectURL.call(URL, object);
    blobs.set(address, object as Blob);
    return address;
  };
  HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
    files.set(this.download, blobs.get(this.href)!);
  };
  try {
    await task();
  } finally {
    URL.createObjectURL = createObjectURL;
    HTMLAnchorElement.prototype.click = click;
  }
  return files;
}
