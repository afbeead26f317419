import type { SnippetTag } from '../../components/publish/snippet.js';

/** What an author can give an element in a field of its own, beside the car: the name of its attribute. */
export type OptionName = 'drop' | 'over' | 'heights' | 'roll' | 'by' | 'wheel-before' | 'wheel-after' | 'bump-travel';

/** By element, in the order of the list; the first answers most readers' question. */
export const OPTIONS: Readonly<Record<SnippetTag, readonly OptionName[]>> = {
  'bumpline-lowering': ['drop', 'bump-travel'],
  'bumpline-readings': ['over'],
  'bumpline-clearance': ['drop', 'wheel-before', 'wheel-after'],
  'bumpline-compare': ['heights', 'over'],
  'bumpline-geometry': ['drop'],
  'bumpline-toe': ['drop', 'over'],
  'bumpline-cornering': ['roll', 'drop'],
  'bumpline-static-camber': ['by', 'drop', 'over'],
  'bumpline-predict': ['drop', 'over'],
};

export const TAGS = Object.keys(OPTIONS) as SnippetTag[];

/** Attributes that no field is for, and that a calculator may hand over with its car. */
export const HANDED_OVER = ['setup', 'coefficients', 'domain'] as const;

export const nameOf = (tag: SnippetTag): string => tag.replace('bumpline-', '');
export const tagOf = (name: string | null): SnippetTag | undefined => TAGS.find((tag) => nameOf(tag) === name);
