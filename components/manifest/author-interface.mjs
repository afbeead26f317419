/*
 * A plugin of the analyser, which reads one file at a time: what an author needs besides, and only the compiler can tell. Comments say
 * it by tags beside the property: `@quantity drop` (its unit and limits are those of core/quantity/quantities.ts; `@quantity drop list`:
 * several), `@least` and `@most` where its limits are others or it is none of them, `@default`, `@holds Corner of core/linkage/corner.ts` of plain
 * data; beside the class `@reads points, corner`, and `@tells` of what no property holds.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ts } from '@custom-elements-manifest/analyzer';
import { transformWithOxc } from 'vite';
import { oneLine, programOf, TypeTables, typeNamed, wordsOf } from './type-tables.mjs';

const EVENTS = 'components/element/events.ts';
/** Types further than that from what an event or a property holds are named, and not told. */
const DEPTH = { answer: 2, others: 4 };
/** Units of the interface. */
const UNITS = { length: 'mm', angle: 'degrees', angleRate: 'degrees per mm' };

async function quantities() {
  const file = fileURLToPath(new URL('../../core/quantity/quantities.ts', import.meta.url));
  const { code } = await transformWithOxc(readFileSync(file, 'utf8'), file);
  return (await import(`data:text/javascript;base64,${Buffer.from(code).toString('base64')}`)).QUANTITIES;
}

/** @param {{ tag: string }[]} elements */
export async function authorInterface(elements) {
  const QUANTITIES = await quantities();
  const fileOf = (tag) => `components/${tag}/${tag}.ts`;
  return {
    name: 'author-interface',
    packageLinkPhase({ customElementsManifest }) {
      const program = programOf([EVENTS, ...elements.map(({ tag }) => fileOf(tag))]);
      for (const declaration of customElementsManifest.modules.flatMap(({ declarations }) => declarations)) {
        if (declaration.tagName) new Interface(program, QUANTITIES, fileOf(declaration.tagName), declaration).tell();
      }
    },
  };
}

/** Of one element. */
class Interface {
  #program;
  #checker;
  #quantities;
  #declaration;
  #tables;
  #symbol;
  #type;

  constructor(program, quantities, file, declaration) {
    this.#program = program;
    this.#checker = program.getTypeChecker();
    this.#quantities = quantities;
    this.#declaration = declaration;
    this.#tables = new TypeTables(this.#checker);
    const { symbol, type } = typeNamed(program, file, declaration.name);
    this.#symbol = symbol;
    this.#type = type;
  }

  tell() {
    const declaration = this.#declaration;
    const { attributes = [], members, events = [] } = declaration;
    const instance = members.filter((member) => !member.static);
    for (const member of instance) this.#tellMember(member);
    for (const attribute of attributes) {
      const {
        kind: _,
        name: __,
        attribute: ___,
        privacy: ____,
        ...same
      } = members.find(({ name }) => name === attribute.fieldName);
      Object.assign(attribute, same);
    }
    this.#tellShown(attributes, members);
    for (const event of events) this.#tellEvent(event);
    const [reads = ''] = this.#tagsOf(this.#symbol, 'reads');
    for (const held of this.#tagsOf(this.#symbol, 'tells')) this.#tellNamed(held, DEPTH.others);
    declaration.reads = reads.split(/[\s,]+/).filter(Boolean);
    declaration.types = [...this.#tables.tables.values()];
  }

  #tagsOf = (symbol, name) =>
    symbol
      .getJsDocTags(this.#checker)
      .filter((tag) => tag.name === name)
      .map(({ text }) => oneLine(ts.displayPartsToString(text)));

  #tellMember(member) {
    const symbol = this.#type.getProperty(member.name);
    if (!symbol || member.kind !== 'field') return;
    const { name } = this.#declaration;
    const tag = (of) => this.#tagsOf(symbol, of)[0];
    const description = this.#tables.docOf(symbol);
    if (description) member.description = description;
    const depth = member.name === 'answer' ? DEPTH.answer : DEPTH.others;
    const held = tag('holds');
    const text = held ? this.#tellNamed(held, depth) : this.#tables.textOf(symbol, `${name}.${member.name}`, depth);
    member.type = { text };
    const values = wordsOf(this.#checker.getTypeOfSymbol(symbol));
    if (values) member.values = values;
    const [quantity, list] = tag('quantity')?.split(' ') ?? [];
    if (quantity) this.#tellQuantity(member, quantity, list === 'list');
    const limits = tag('least') && { minimum: Number(tag('least')), maximum: Number(tag('most')) };
    if (limits) Object.assign(member, { unit: member.unit ?? '', ...limits });
    if (tag('default')) member.default = tag('default');
  }

  /** @param {string} text `Corner of core/linkage/corner.ts`; `… alone`: without what it holds @returns the type's name */
  #tellNamed(text, depth) {
    const [, name, file, alone] = /^(\w+) of (\S+)( alone)?$/.exec(text);
    const { symbol, type } = typeNamed(this.#program, file, name);
    this.#tables.tell(name, type, this.#tables.docOf(symbol), alone ? 1 : depth);
    return name;
  }

  #tellQuantity(member, quantity, isList) {
    const traits = this.#quantities[quantity];
    if (!traits) throw new Error(`${this.#declaration.name}.${member.name}: there is no quantity "${quantity}".`);
    const { dimension, unit, min, max } = traits;
    Object.assign(member, {
      unit: UNITS[dimension] ?? unit,
      minimum: min,
      maximum: max,
      ...(isList && { isList: true }),
    });
  }

  /** What of an element can be shown alone is told by its class. */
  #tellShown(attributes, members) {
    const show = attributes.find(({ name }) => name === 'show');
    if (!show) return;
    const { symbol } = typeNamed(this.#program, 'components/element/shown.ts', 'Shown');
    const all = wordsOf(this.#checker.getDeclaredTypeOfSymbol(symbol));
    const own = members.find((member) => member.static && member.name === 'shows')?.default ?? '';
    const values = own.startsWith('[') ? all.filter((word) => own.includes(`'${word}'`)) : all;
    for (const one of [show, members.find(({ name }) => name === 'show')])
      Object.assign(one, { values, isWords: true });
  }

  /** What an event carries: the fields of its class. */
  #tellEvent(event) {
    const source = this.#program.getSourceFiles().find(({ fileName }) => fileName.endsWith(EVENTS));
    const node = source.statements.find(
      (one) => ts.isClassDeclaration(one) && one.getText().includes(`super('${event.name}'`),
    );
    if (!node) throw new Error(`${EVENTS} has no class of ${event.name}.`);
    const symbol = this.#checker.getSymbolAtLocation(node.name);
    const answer = this.#declaration.members.find(({ name }) => name === 'answer').type.text;
    event.fields = node.members.filter(ts.isPropertyDeclaration).map((field) => {
      const of = this.#checker.getSymbolAtLocation(field.name);
      const isAnswer = field.name.getText() === 'answer';
      const text = isAnswer ? answer : this.#tables.textOf(of, `${symbol.name}.${of.name}`, DEPTH.others);
      return { name: of.name, type: { text }, description: this.#tables.docOf(of) };
    });
    event.type = { text: node.typeParameters ? `${symbol.name}<${answer}>` : symbol.name };
    event.description = this.#tables.docOf(symbol);
  }
}
