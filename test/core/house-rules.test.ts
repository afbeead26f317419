import { describe, expect, it } from 'vitest';
import { checkHouse, importsOf, projectFiles, rules, withoutComments } from '../house-rules.mjs';

const good = { path: 'components/shared/chart/plot.ts', text: "import uPlot from 'uplot';\nexport { uPlot };\n" };
/** Put together, so that this file itself keeps the rules. */
const undone = `TO${'DO'}`;
const decorator = `@custom${'Element'}`;

const ROOTS = `export function roots(a: number, b: number, c: number): number[] {
  const square = b * b - 4 * a * c;
  if (square < 0) return [];
  const root = Math.sqrt(square);
  const first = (-b - Math.sign(b) * root) / (2 * a);
  return first === 0 ? [0] : [first, c / (a * first)];
}`;

/** Each rule by the start of its name, with files that break it and where it must say so. */
const broken: [rule: string, files: Record<string, string>, at: string[]][] = [
  [
    'imports run one way',
    {
      'core/curve/a.ts': "import { lowering } from '../answers/lowering.js';",
      'core/document/b.ts': "const x = 1;\nconst late = () => import('../worker/bridge.js');",
      'core/answers/c.ts': "export { Plot } from '../../components/chart/plot.js';",
      'components/shared/d.ts': "import type { X } from '../../site/site.js';",
    },
    ['core/curve/a.ts:1', 'core/document/b.ts:2', 'core/answers/c.ts:1', 'components/shared/d.ts:1'],
  ],
  [
    'nothing imports itself by way of others',
    {
      // By a type, by a late import, and through a third file; a file beside the circle is none of it.
      'components/a/element.ts': "import { App } from './app.js';",
      'components/a/app.ts': "const body = () =>\n  import('./body.js');",
      'components/a/body.ts': "import type { Element } from './element.js';\nimport { list } from './list.js';",
      'components/a/list.ts': 'export const list = [];',
      'core/curve/fit.ts': "export type { Options } from './check.js';",
      'core/curve/check.ts': "// import './fit.js'\nimport type { Fit } from './fit.js';",
    },
    ['components/a/app.ts:2', 'core/curve/check.ts:2'],
  ],
  [
    'nothing imports test/ or site/',
    {
      'core/curve/a.ts': "import '../../test/reference/x.js';",
      'vite.config.ts': "\nimport './site/site.js';\nimport './site/partials/pages.js';",
    },
    ['core/curve/a.ts:1', 'vite.config.ts:2'],
  ],
  [
    'a calculation that calls itself independent',
    {
      'test/reference/strut.ts': "import {\n  buildLinkage,\n} from '../../core/linkage/build-linkage.js';",
      'test/core/independent-fit.ts': "import '../../core/curve/curve.js';",
    },
    ['test/reference/strut.ts:3', 'test/core/independent-fit.ts:1'],
  ],
  ['no rem', { 'components/shared/a.ts': 'css`\n  p { margin: 1.5rem 0 }\n`' }, ['components/shared/a.ts:2']],
  [
    'what people type',
    {
      'core/curve/a.ts': 'const x = parseFloat(text);',
      'components/shared/b.ts': 'const x =\n  Number.parseFloat(text);',
      'site/site.ts': 'new Intl.NumberFormat();',
    },
    ['core/curve/a.ts:1', 'components/shared/b.ts:2', 'site/site.ts:1'],
  ],
  ['the computation knows no clock', { 'core/math/a.ts': 'const now = Date.now();' }, ['core/math/a.ts:1']],
  ['files are short', { 'core/math/long.ts': 'x;\n'.repeat(321) }, ['core/math/long.ts:321']],
  [
    'no run of logic stands twice',
    {
      // Spaces, comments and imports between them make no difference; a list of like things is no repeat.
      'core/curve/a.ts': `import { x } from './x.js';\n${ROOTS}`,
      'components/chart/b.ts': `// Another file.\n\n${ROOTS.replaceAll('\n', ' // so\n  ')}`,
      'core/curve/list.ts': `const LIST = [${"['one', 1, true, null], ".repeat(40)}];`,
    },
    ['components/chart/b.ts:3'],
  ],
  [
    'no decorator registers',
    { 'components/shared/a.ts': `${decorator}('bumpline-x')\nclass X {}` },
    ['components/shared/a.ts:1'],
  ],
  [
    'nothing is left undone',
    { 'README.md': `# Bumpline\n\n${undone}: all`, 'test/a.mjs': `// ${undone}` },
    ['README.md:3', 'test/a.mjs:1'],
  ],
  [
    'no words ask for a corner to be jacked into its bump stop',
    {
      'components/shared/cautions.ts':
        "const a =\n  'Spring out, lift the wheel to the solid stop and turn from lock to lock.';\nconst b = 'Check each by hand at full bump, every one of them.';",
      'components/shared/b.ts': "export const howTo = 'How far the rod comes out: jack until it stops.';",
      'README.md':
        '# Bumpline\n\nCheck by hand, spring out.\n\nRaise the arm until the bump\nstop is solid, no further.\n',
      'site/a/index.html': [
        '<li>Damper and stop in, wheel on: up to the solid stop, lock to lock.</li>',
        '<p>Jack the corner up\nagainst its <b>bump stop</b>.</p>',
        '<p>Use the jack to take the arm up to the stop.</p>',
        '<li>The arm is raised until it meets the stop.</li>',
        '<p>Compress the stop fully with the jack.</p>',
        '<div>With the spring taken out, look at full bump, lock to lock, by hand.</div>',
        '<svg><title>Wind the jack until the stop is flat.</title></svg>',
      ].join('\n'),
    },
    [
      'components/shared/cautions.ts:2',
      'components/shared/cautions.ts:3',
      'components/shared/b.ts:1',
      'README.md:3',
      'README.md:5',
      'site/a/index.html:1',
      'site/a/index.html:2',
      'site/a/index.html:4',
      'site/a/index.html:5',
      'site/a/index.html:6',
      'site/a/index.html:7',
      'site/a/index.html:7',
      'site/a/index.html:8',
    ],
  ],
  [
    'shipped code speaks to no other origin',
    {
      'core/math/a.ts': "const at = 'https://example.org/';",
      'site/index.html': '<p>\n<script src="https://example.org/x.js"></script>',
      'site/more/index.html': '<link rel="stylesheet" href="//example.org/x.css">',
      'site/site.css': "body { background: url('http://example.org/x.png') }",
    },
    ['core/math/a.ts:1', 'site/index.html:2', 'site/more/index.html:1', 'site/site.css:1'],
  ],
];

/** What the rules must let pass. */
const fine = {
  'core/index.ts': "export { lowering } from './answers/lowering.js';",
  'core/worker/bridge.ts': "import { questions } from '../answers/questions.js';\n// Date.now() would be no good here.",
  'core/quantity/parse.ts': 'export const read = (text: string) => Number.parseFloat(text);',
  'components/shared/theme.ts':
    "// not 1rem, see https://example.org/\nexport const gap = '1em';\ncustomElements.define(gap);",
  'components/shared/drawing/svg.ts': "export const ns = 'http://www.w3.org/2000/svg';",
  'site/index.html':
    '<!-- https://example.org/ --><a href="https://example.org/standard">the standard</a>\n<code>&lt;script src="https://example.org/x.js"&gt;</code>',
  'site/more/index.html': [
    '<p>Never jack the wheel into its stop. With either in, the jack lifts the car off its stands.</p>',
    '<p>Raise the arm slowly to the height at which the stop would be solid, and no further.</p>',
    '<li>With the damper bare, push it in until the tube meets the stop.</li>',
    '<p>Look at full bump by hand, spring and bump stop out. The stop is touched 7 mm before that.</p>',
    '<p>Full bump and full lock <a href="#before-you-drive">by hand</a>, at the height you chose.</p>',
  ].join('\n'),
  'test/reference/strut.ts': "import { solve } from 'ml-matrix';",
  'test/core/long.test.ts': 'x;\n'.repeat(900),
};

const asFiles = (files: Record<string, string>) => [
  good,
  ...Object.entries(files).map(([path, text]) => ({ path, text })),
];

describe('house rules', () => {
  it.each(broken)('"%s …" names each file and line that breaks it', (start, files, at) => {
    const [rule] = Object.keys(rules).filter((name) => name.startsWith(start));
    const findings = rules[rule!]!(asFiles(files));
    expect(findings.map(({ path, line }) => `${path}:${line}`)).toEqual(
      // In the order of the files they were given.
      [...at].sort((a, b) => order(files, a) - order(files, b)),
    );
    for (const { why } of findings) expect(why).not.toBe('');
  });

  it('are all shown to catch something', () => {
    const shown = broken.map(([start]) => Object.keys(rules).find((name) => name.startsWith(start)));
    expect(shown).toEqual(Object.keys(rules));
  });

  it('let pass what is in order', () => {
    expect(checkHouse(asFiles(fine)).flatMap(({ findings }) => findings)).toEqual([]);
  });

  it('are about files of every framework too', () => {
    expect(projectFiles().map(({ path }) => path)).toEqual(
      expect.arrayContaining(
        ['react/src/App.tsx', 'svelte/src/App.svelte', 'vue/src/App.vue'].map((file) => `test/authors/${file}`),
      ),
    );
  });

  it('read imports over several lines, of types, for side effects, re-exported and dynamic', () => {
    const text = [
      "import a, {\n  b,\n} from './a.js';",
      "import type { c } from '../c.js';",
      "import './d.js';",
      "export * from 'lit';",
      "const e = await import('./e.js');",
      "// import './f.js';",
    ].join('\n');
    expect(importsOf({ path: 'core/curve/x.ts', text }).map(({ to }) => to)).toEqual([
      'core/curve/a.js',
      'core/c.js',
      'core/curve/d.js',
      'lit',
      'core/curve/e.js',
    ]);
  });

  it('take no string for a comment, and keep lines where they are', () => {
    const text = "const a = 'https://x'; /* one\ntwo */ const b = `//`; // three";
    expect(
      withoutComments({ path: 'a.ts', text })
        .split('\n')
        .map((line) => line.trim()),
    ).toEqual(["const a = 'https://x';", 'const b = `//`;']);
  });
});

function order(files: Record<string, string>, at: string): number {
  return [good.path, ...Object.keys(files)].indexOf(at.slice(0, at.lastIndexOf(':')));
}
