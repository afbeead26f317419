/*
 * What a type holds, field by field, as an author needs it: read off the sources by the compiler, with the comments that stand there.
 */
import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ts } from '@custom-elements-manifest/analyzer';

const top = fileURLToPath(new URL('../../', import.meta.url));
/** Apps, layers and looks say nothing of an interface. */
const UNREAD = /-app\.js$|\.generated\.js$|^\.\.\/(?:theme|delivery)\//;

const OPTIONS = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  strict: true,
  exactOptionalPropertyTypes: true,
  noEmit: true,
  skipLibCheck: true,
  types: [],
  lib: ['lib.es2022.d.ts'],
};

/** @param {string[]} files below the project's folder */
export function programOf(files) {
  const host = ts.createCompilerHost(OPTIONS, true);
  host.resolveModuleNameLiterals = (names, from) =>
    names.map(({ text }) => {
      // What a car may hold is checked by it, and its types come from the checks.
      if (text === 'valibot') return ts.resolveModuleName(text, from, OPTIONS, host);
      const file = resolve(dirname(from), text.replace(/\.js$/, '.ts'));
      const isRead = text.startsWith('.') && !UNREAD.test(text) && existsSync(file);
      return { resolvedModule: isRead ? { resolvedFileName: file, extension: '.ts' } : undefined };
    });
  const paths = files.map((file) => top + file);
  return ts.createProgram(paths, OPTIONS, host);
}

/** The named type of a file of the program. */
export function typeNamed(program, file, name) {
  const checker = program.getTypeChecker();
  const found = checker
    .getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(top + file)))
    .find((one) => one.name === name);
  if (!found) throw new Error(`${file} exports no ${name}.`);
  return { symbol: found, type: checker.getDeclaredTypeOfSymbol(found) };
}

export const oneLine = (text) => text.replace(/\s+/g, ' ').trim();

/** The words that a type allows; undefined where it allows anything else. */
export function wordsOf(type) {
  const all = (type.isUnion() ? type.types : [type]).filter(({ flags }) => !(flags & ts.TypeFlags.Undefined));
  return all.length > 0 && all.every((one) => one.isStringLiteral()) ? all.map(({ value }) => value) : undefined;
}

/** What an alias stands for, and not its name. */
const IN_ALIAS = ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.InTypeAlias;

const quoted = (words) => words.map((word) => `'${word}'`).join(' | ');

/** Told field by field: records of the project's own, and those without a name. No list, no function, nothing of the language. */
function isRecord(checker, type) {
  const isObject = type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection);
  if (!isObject || type.isClass() || checker.isArrayType(type) || checker.isTupleType(type)) return false;
  const properties = type.getProperties();
  if (properties.length === 0 || type.getCallSignatures().length > 0 || type.getStringIndexType()) return false;
  return properties.some(({ declarations = [] }) =>
    declarations.some((one) => one.getSourceFile().fileName.startsWith(top) && !isPackage(one)),
  );
}
const isPackage = (declaration) => declaration.getSourceFile().fileName.includes('/node_modules/');

/** The types that one element's interface names. Those deeper than told are named and no more. */
export class TypeTables {
  /** By name. @type {Map<string, import('./manifest.ts').TypeTable>} */
  tables = new Map();
  #checker;
  #names = new Map();

  constructor(checker) {
    this.#checker = checker;
  }

  /** What is said of something where it is declared. */
  docOf = (symbol) => oneLine(ts.displayPartsToString(symbol.getDocumentationComment(this.#checker)));

  /**
   * A property's type as it is written, else as it was inferred; what it names is told in a table of its own.
   *
   * @param {string} of what a record without a name is called
   * @param {number} depth how many tables further
   */
  textOf(symbol, of, depth) {
    const checker = this.#checker;
    const type = checker.getNonNullableType(checker.getTypeOfSymbol(symbol));
    const words = wordsOf(type);
    if (words) return quoted(words);
    const { valueDeclaration: declared } = symbol;
    const node = declared && ts.isMethodSignature(declared) ? undefined : declared?.type;
    // What a generic class leaves open is written where it is filled in.
    if (node && !isOpen(checker, node) && !isPackage(node)) {
      const text = [...referencesIn(node)].reduce((all, one) => {
        const tuple = this.#tellReference(one, depth);
        return tuple ? all.replace(new RegExp(`\\b${one.getText()}\\b`), tuple) : all;
      }, oneLine(node.getText()));
      return text.replace(/ \| undefined$/, '');
    }
    return this.#inferredText(type, of, depth);
  }

  #inferredText(type, of, depth) {
    const checker = this.#checker;
    if (checker.isArrayType(type)) {
      const [item] = checker.getTypeArguments(type);
      return `readonly ${this.#inferredText(item, of, depth)}[]`;
    }
    const kinds = type.isUnion() ? type.types : [type];
    if (kinds.every((one) => isRecord(checker, one))) {
      if (depth <= 0) return 'object';
      const name = this.#names.get(type) ?? of;
      this.tell(name, type, '', depth);
      return name;
    }
    return checker.typeToString(type, undefined, ts.TypeFormatFlags.NoTruncation);
  }

  /** @returns the text of a few figures in their order, which need no table */
  #tellReference(node, depth) {
    const type = this.#checker.getNonNullableType(this.#checker.getTypeFromTypeNode(node));
    if (this.#checker.isTupleType(type)) return this.#checker.typeToString(type, undefined, IN_ALIAS);
    const kinds = type.isUnion() ? type.types : [type];
    if (wordsOf(type) || !kinds.every((one) => isRecord(this.#checker, one))) return;
    const named = this.#checker.getSymbolAtLocation(node.typeName);
    const symbol = named.flags & ts.SymbolFlags.Alias ? this.#checker.getAliasedSymbol(named) : named;
    if (symbol.declarations.every((one) => !isPackage(one))) {
      this.tell(oneLine(node.getText()), type, this.docOf(symbol), depth);
    }
  }

  /** A table of a type's fields; what only some kinds of it hold may be left out. */
  tell(name, type, description, depth) {
    if (depth <= 0 || this.tables.has(name)) return;
    const table = { name, ...(description && { description }), fields: [] };
    this.tables.set(name, table);
    this.#names.set(type, name);
    const kinds = type.isUnion() ? type.types : [type];
    const all = kinds.flatMap((kind) => this.#fieldsOf(kind, name, depth - 1));
    for (const key of new Set(all.map((field) => field.name))) {
      const same = all.filter((field) => field.name === key);
      const isOptional = same.length < kinds.length || same.some(({ optional }) => optional);
      const text = [...new Set(same.map((field) => field.type.text))].join(' | ');
      table.fields.push({ ...same[0], ...(isOptional && { optional: true }), type: { text } });
    }
  }

  #fieldsOf(type, of, depth) {
    return this.#checker.getPropertiesOfType(type).map((symbol) => {
      const description = this.docOf(symbol);
      return {
        name: symbol.name,
        ...(symbol.flags & ts.SymbolFlags.Optional && { optional: true }),
        type: { text: this.textOf(symbol, `${of}.${symbol.name}`, depth) },
        ...(description && { description }),
      };
    });
  }
}

/** The types that a type names, but for those that fill in others. */
function* referencesIn(node) {
  if (ts.isTypeReferenceNode(node)) yield node;
  if (ts.isTypeReferenceNode(node) && !/^(?:Pick|Omit|Partial|Readonly|ReadonlyArray)$/.test(node.typeName.getText()))
    return;
  for (const child of node.getChildren()) yield* referencesIn(child);
}

/** Whether a type parameter stands in it. */
const isOpen = (checker, node) =>
  [...referencesIn(node)].some((one) => checker.getTypeFromTypeNode(one).flags & ts.TypeFlags.TypeParameter);
