import { Damaged, type Text } from './link-text.js';

export type Pair = [key: string, text: string];
/** Where a value stands in the document. */
type Path = readonly string[];

/** A field of a link: written and read by the same row. */
export interface FieldRow {
  key: string;
  /** Of the values that stand in it together. */
  paths: readonly Path[];
  /** Of one value, or of a list of those of all paths. */
  // biome-ignore lint/suspicious/noExplicitAny: the values' type is that of their paths, which are read at run time.
  text: Text<any>;
  /** Stands in where the link says nothing, and is not written. */
  usual?: unknown;
  /** Always written; a link without it is damaged. */
  isRequired?: true;
}

/** Rows under one key and a point: of one thing, or of several, numbered from 1. Its first row stands under the key itself. */
export interface GroupRow {
  key: string;
  path: Path;
  rows: readonly Row[];
  /** Of several: how many there can be. */
  most?: number;
  /** What its rows are about, where the document holds it otherwise. */
  written?(value: never): object;
  /** The way back; throws `Damaged` where the rows say what cannot be. */
  read?(found: never): object;
}

export type Row = FieldRow | GroupRow;

/** A field with one value, or with several that stand together. */
export function field<T>(key: string, path: string | Path, text: Text<T>, more?: Partial<FieldRow>): FieldRow {
  return { key, paths: [typeof path === 'string' ? path.split('.') : path], text, ...more };
}
export const fields = <T extends readonly unknown[]>(
  key: string,
  paths: readonly (string | Path)[],
  text: Text<T>,
  more?: Partial<FieldRow>,
): FieldRow => ({
  key,
  paths: paths.map((path) => (typeof path === 'string' ? path.split('.') : path)),
  text,
  ...more,
});

const keyIn = (prefix: string, key: string): string => (prefix && key ? `${prefix}.${key}` : prefix + key);
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

const at = (from: unknown, path: Path): unknown =>
  path.reduce((found, step) => (isRecord(found) ? found[step] : undefined), from);

function put(into: Record<string, unknown>, path: Path, value: unknown): void {
  const [step, ...rest] = path as [string, ...string[]];
  const { [step]: before } = into;
  into[step] = rest.length === 0 ? value : isRecord(before) ? before : {};
  if (rest.length > 0) put(into[step] as Record<string, unknown>, rest, value);
}

/** The pairs that carry what a document says of these rows. */
export const writeRows = (rows: readonly Row[], from: object, prefix = ''): Pair[] =>
  rows.flatMap((row): Pair[] => {
    const key = keyIn(prefix, row.key);
    if ('rows' in row) {
      const found = at(from, row.path);
      const all = row.most === undefined ? [found] : ((found ?? []) as unknown[]);
      return all.filter(isSaid).flatMap((one, i) => {
        const written = row.written ? row.written(one as never) : (one as object);
        return writeRows(row.rows, written, row.most === undefined ? key : key + (i + 1));
      });
    }
    const values = row.paths.map((path) => at(from, path));
    const isWritten = row.isRequired || (isSaid(values[0]) && values[0] !== row.usual);
    return isWritten ? [[key, row.text.write(row.paths.length > 1 ? values : values[0])]] : [];
  });

/** An empty list or record says nothing. */
const isSaid = (value: unknown): boolean => (isRecord(value) ? Object.keys(value).length > 0 : value !== undefined);

/**
 * Takes what the rows say out of the pairs: what is left over then is unknown to them.
 *
 * @throws Damaged
 */
export function readRows(rows: readonly Row[], pairs: Map<string, string>, prefix = ''): Record<string, unknown> {
  const found: Record<string, unknown> = {};
  for (const row of rows) {
    const key = keyIn(prefix, row.key);
    if ('rows' in row) {
      const readOne = (name: string) => {
        const one = readRows(row.rows, pairs, name);
        return row.read ? row.read(one as never) : one;
      };
      if (row.most === undefined) {
        if (pairs.has(key)) put(found, row.path, readOne(key));
        continue;
      }
      const all: object[] = [];
      while (all.length < row.most && pairs.has(key + (all.length + 1))) all.push(readOne(key + (all.length + 1)));
      if (all.length > 0) put(found, row.path, all);
      continue;
    }
    const text = pairs.get(key);
    pairs.delete(key);
    if (text === undefined && row.isRequired) throw new Damaged();
    const value = text === undefined ? row.usual : row.text.read(text);
    const values = row.paths.length > 1 ? ((value ?? []) as unknown[]) : [value];
    row.paths.forEach((path, i) => {
      if (values[i] !== undefined) put(found, path, values[i]);
    });
  }
  return found;
}
