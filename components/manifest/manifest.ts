/*
 * The manifest of the published elements (custom-elements.json, schema 1.0.0) as far as it is read here, with what it says besides:
 * units, limits, defaults, and what events and properties hold, field by field.
 */

export interface Told {
  name: string;
  description?: string;
  type?: { text: string };
}

/** What a value may be. */
export interface Allowed {
  /** What it is without; as it is written. */
  default?: string;
  /** Of its numbers: mm, degrees, or '' of one without a unit. */
  unit?: string;
  /** The least and the most that it may be, in that unit. */
  minimum?: number;
  maximum?: number;
  /** Several numbers, one after the other. */
  isList?: true;
  /** The only words that it takes. */
  values?: string[];
  /** Takes several of them, with spaces between. */
  isWords?: true;
}

export interface Attribute extends Told, Allowed {
  /** Of the property that it sets. */
  fieldName: string;
}

export interface Member extends Told, Allowed {
  kind: 'field' | 'method';
  attribute?: string;
  readonly?: true;
  static?: true;
  privacy?: string;
  reflects?: true;
  parameters?: Told[];
  return?: { type?: { text: string } };
}

export interface Field extends Told {
  optional?: true;
  type: { text: string };
}

/** A type by its name, or by where it stands: `Setup.readings`. */
export interface TypeTable {
  name: string;
  description?: string;
  fields: Field[];
}

export interface Fired extends Told {
  /** What it carries. */
  fields: Field[];
}

/** What an author may write inside an element. */
export const FORMS = ['points', 'readings', 'sets', 'corner', 'fitment', 'car'] as const;
export type Form = (typeof FORMS)[number];

export interface ElementDeclaration extends Told {
  tagName: string;
  attributes?: Attribute[];
  members: Member[];
  events?: Fired[];
  slots?: Told[];
  cssParts?: Told[];
  cssStates?: Told[];
  cssProperties?: Told[];
  /** What it reads of what stands inside. */
  reads: Form[];
  /** What its events and properties hold. */
  types: TypeTable[];
}

export interface Manifest {
  modules: { path: string; declarations: ElementDeclaration[] }[];
}
