/** Spreadsheets save text in several encodings: UTF-16 tells itself by its mark, what is not UTF-8 is the old Western one. */
export async function textOf(file: File): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** By its content: a program's own format holds bytes that no text has. */
export const isText = (text: string): boolean => !text.includes('\0');

/** More than one cell, so that it belongs into a sheet and not into the field that has the focus. */
export const isSheet = (text: string): boolean => /[\t\n;]|\d\s*(?:[:=→]|->).*\d\s*(?:[:=→]|->)/.test(text.trim());
