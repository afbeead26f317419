import { describe, expect, it } from 'vitest';
import { describedElements } from '../../components/delivery/described-elements.mjs';
import { frameworkTypes } from '../../components/delivery/framework-types.mjs';
import elements from '../../components/elements.json' with { type: 'json' };
import { manifest as makeManifest } from '../../components/manifest/build-manifest.mjs';

/* The types for frameworks are made from the manifest and from nothing else. That they hold is shown by npm run test:authors. */

const SMALL = {
  modules: [
    {
      path: 'dist/npm/components/bumpline-a-b/bumpline-a-b.js',
      declarations: [
        {
          kind: 'class',
          name: 'BumplineAB',
          tagName: 'bumpline-a-b',
          description: 'Which is\nit?\n\nData: none.',
          attributes: [
            { name: 'drop', fieldName: 'drop', description: 'By how much.' },
            { name: 'car-id', fieldName: 'carId', description: 'Ends no comment: */' },
            { name: 'loose' },
          ],
          members: [
            { kind: 'field', name: 'drop', attribute: 'drop', description: 'By how much.' },
            { kind: 'field', name: 'carId', attribute: 'car-id', description: 'Ends no comment: */' },
            { kind: 'field', name: 'car', description: '' },
            { kind: 'field', name: 'answer', readonly: true },
            { kind: 'field', name: 'version', static: true },
            { kind: 'method', name: 'print' },
          ],
          events: [{ name: 'bumpline-answer', description: 'an answer stands there' }],
        },
      ],
    },
    { path: 'dist/npm/components/bumpline-a-b/bumpline-a-b.define.js', declarations: [] },
  ],
};

const head = (framework: string, helpers: string) =>
  `// Made from custom-elements.json. These are types alone: at run time there is nothing in here.
${framework}
import type { BumplineAB } from '../components/bumpline-a-b/bumpline-a-b.js';
import type { ${helpers} } from '../components/element/for-frameworks.js';
import type {} from '../components/define.js';

`;
const REACT = "import type { DetailedHTMLProps, HTMLAttributes } from 'react';";
const IN_JSX = `/** What stands in JSX: an element's own, and what every element of HTML takes. */
type InJsx<Element, Props> = Props & Omit<DetailedHTMLProps<HTMLAttributes<Element>, Element>, keyof Props> & { class?: string | undefined };
`;
const OWN = `  /** By how much. */
  drop?: BumplineAB['drop'] | undefined;
  /** Ends no comment: *\\/ */
  carId?: BumplineAB['carId'] | undefined;
  car?: BumplineAB['car'] | undefined;
`;
const listener = (name: string) => `  /** An answer stands there */
  ${name}?: ((event: EventOf<BumplineAB, 'bumpline-answer'>) => void) | undefined;
`;

const TEXTS: Record<string, string> = {
  react: `${head(REACT, 'EventOf')}
/** \`<bumpline-a-b>\`: Which is it? */
export interface BumplineABProps {
${OWN}  /** Ends no comment: *\\/ */
  'car-id'?: Extract<BumplineAB['carId'], string | number | boolean> | undefined;
  loose?: string | undefined;
${listener("'onbumpline-answer'")}}

${IN_JSX}
declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
      'bumpline-a-b': InJsx<BumplineAB, BumplineABProps>;
    }
  }
}
`,
  'react-18': `${head(REACT, 'AttributeOf')}
/** \`<bumpline-a-b>\`: Which is it? */
export interface BumplineABProps {
  /** By how much. */
  drop?: AttributeOf<BumplineAB['drop']> | undefined;
  /** Ends no comment: *\\/ */
  'car-id'?: AttributeOf<BumplineAB['carId']> | undefined;
  loose?: string | undefined;
  /** An answer stands there. React 18 does not hear it in JSX: use a ref and addEventListener. */
  'onbumpline-answer'?: never | undefined;
  /** React 18 gives it to no custom element: write \`class\`. */
  className?: never | undefined;
}

${IN_JSX}
declare global {
  namespace JSX {
    interface IntrinsicElements {
      'bumpline-a-b': InJsx<BumplineAB, BumplineABProps>;
    }
  }
}
`,
  svelte: `${head("import type { HTMLAttributes } from 'svelte/elements';", 'AttributeOf, EventOf')}
/** \`<bumpline-a-b>\`: Which is it? */
export interface BumplineABProps {
${OWN}  /** Ends no comment: *\\/ */
  'car-id'?: AttributeOf<BumplineAB['carId']> | undefined;
  loose?: string | undefined;
${listener("'onbumpline-answer'")}${listener("'on:bumpline-answer'")}}

/** What stands in markup: an element's own, and what every element of HTML takes. */
type InMarkup<Element extends EventTarget, Props> = Props & Omit<HTMLAttributes<Element>, keyof Props>;

declare module 'svelte/elements' {
  interface SvelteHTMLElements {
    'bumpline-a-b': InMarkup<BumplineAB, BumplineABProps>;
  }
}
`,
  vue: `${head("import type { HTMLAttributes, PublicProps } from 'vue';", 'AttributeOf, EventOf')}
/** \`<bumpline-a-b>\`: Which is it? */
export interface BumplineABProps {
${OWN}  loose?: string | undefined;
${listener('onBumplineAnswer')}}

/** Attributes \`data-…\`, in either case. */
interface InData {
  [name: \`data-\${string}\` | \`data\${Capitalize<string>}\`]: unknown;
}

/** What stands in a template: an element's own, and what every element of HTML takes. */
type InTemplate<Element, Props> = new () => Element & {
  $props: Props & Omit<HTMLAttributes & PublicProps, keyof Props> & InData;
  $slots: { default?: (nothing: Record<never, never>) => unknown };
};

declare module 'vue' {
  interface GlobalComponents {
    'bumpline-a-b': InTemplate<BumplineAB, BumplineABProps>;
  }
}
`,
};

describe('frameworkTypes', () => {
  it('makes a file for each of four frameworks', () =>
    expect(Object.keys(frameworkTypes(SMALL))).toEqual(Object.keys(TEXTS)));

  it.each(Object.keys(TEXTS))('of a small manifest makes these types for %s', (framework) => {
    expect(frameworkTypes(SMALL)[framework]).toBe(TEXTS[framework]);
  });
});

describe('of the manifest of the elements', async () => {
  const manifest = await makeManifest();
  const described = describedElements(manifest);
  const types = frameworkTypes(manifest);
  const camelCase = (name: string) => name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  /** What an interface names. */
  const namesIn = (text: string, { className }: { className: string }) => {
    const [, body] = new RegExp(`^export interface ${className}Props \\{\\n([\\s\\S]*?)^\\}`, 'm').exec(text)!;
    return [...body!.matchAll(/^ {2}(?:'([^']+)'|(\w+))\?: /gm)].map(([, quoted, plain]) => quoted ?? plain!);
  };

  it('every element of the list is described, with what it has', () => {
    expect(described.map(({ tag }) => tag).sort()).toEqual(elements.map(({ tag }) => tag).sort());
    const lowering = described.find(({ tag }) => tag === 'bumpline-lowering')!;
    expect(lowering.attributes.map(({ name }) => name)).toEqual(expect.arrayContaining(['drop', 'bump-travel']));
    expect(lowering.properties.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['car', 'corner', 'bumpTravel']),
    );
    expect(lowering.properties.map(({ name }) => name)).not.toContain('answer');
    expect(lowering.events).toHaveLength(3);
  });

  /** How each framework calls an attribute, a property and an event; a property of React 18 is set by a ref. */
  const CALLED: Record<string, Record<'attribute' | 'property' | 'event', (name: string) => string[]>> = {
    react: { attribute: (name) => [name], property: (name) => [name], event: (name) => [`on${name}`] },
    'react-18': { attribute: (name) => [name], property: () => [], event: (name) => [`on${name}`] },
    svelte: { attribute: (name) => [name], property: (name) => [name], event: (name) => [`on${name}`, `on:${name}`] },
    vue: {
      attribute: (name) => [camelCase(name)],
      property: (name) => [name],
      event: (name) => [camelCase(`on-${name}`)],
    },
  };

  it.each(Object.entries(CALLED))('%s has every element, attribute, property and event, each once', (name, called) => {
    const text = types[name]!;
    for (const element of described) {
      const { tag, className, attributes, properties, events } = element;
      expect(text).toMatch(new RegExp(`'${tag}': \\w+<${className}, ${className}Props>;`));
      const wanted = new Set([
        ...attributes.flatMap((one) => called.attribute(one.name)),
        ...properties.flatMap((one) => called.property(one.name)),
        ...events.flatMap((one) => called.event(one.name)),
        ...(name === 'react-18' ? ['className'] : []),
      ]);
      expect(namesIn(text, element).sort(), `${name}, ${tag}`).toEqual([...wanted].sort());
    }
  });
});
