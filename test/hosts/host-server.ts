import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { independentCamberChange, type Point } from '../reference/independent-strut.js';
import { serve } from '../serve.mjs';
import corner from './corner.json' with { type: 'json' };

const top = fileURLToPath(new URL('../../', import.meta.url));
const json = (path: string) => JSON.parse(readFileSync(path, 'utf8'));
const { version } = json(`${top}package.json`) as { version: string };

export const DROP_MM = 40;
/** From a calculation that shares nothing with the core: see test/reference/independent-strut.ts. */
export const EXPECTED_CHANGE_DEG = independentCamberChange(corner as never, DROP_MM);

/** Rows of the table of hard points that the pages carry, named as people name them. */
export function rows(): string {
  const { lowerArm, strut, tieRod, wheelCentre, loadedRadius, camber, toe } = corner;
  const points: [string, number[]][] = [
    ['Lower arm front pivot', lowerArm.front],
    ['Lower arm rear pivot', lowerArm.rear],
    ['Lower ball joint', lowerArm.ball],
    ['Top mount', strut.top],
    ['Damper, low point', strut.low],
    ['Tie rod inner end', tieRod.inner],
    ['Tie rod outer end', tieRod.outer],
    ['Wheel centre', wheelCentre],
    ['Loaded radius', [loadedRadius]],
    ['Static camber', [camber]],
    ['Static toe', [toe]],
  ];
  return points
    .map(([name, values]) => `<tr><th>${name}</th>${values.map((value) => `<td>${value}</td>`).join('')}</tr>`)
    .join('\n');
}

/** Response headers of a host by the first folder of its address; all of them show the same pages. */
export const POLICIES = {
  open: () => ({}),
  strict: (cdn: string) => ({
    'Content-Security-Policy': `script-src ${cdn}; worker-src 'self'; style-src 'self'; img-src 'self'`,
  }),
  // A page with scripts of its own inline, and no `unsafe-eval`: nothing may be evaluated or imported by a worker.
  inline: () => ({
    'Content-Security-Policy': "script-src 'self' 'unsafe-inline'; worker-src blob:",
  }),
  'trusted-types': () => ({
    'Content-Security-Policy': "require-trusted-types-for 'script'; trusted-types lit-html bumpline",
  }),
  isolated: () => ({
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Embedder-Policy': 'require-corp',
  }),
} satisfies Record<string, (cdn: string) => Record<string, string>>;

export type Policy = keyof typeof POLICIES;

/** Every page of somebody else, by what it is known for: who serves it, its file, and how wide its window is. */
export const HOST_PAGES: readonly (readonly [what: string, policy: Policy, page: string, width: 'wide' | 'narrow'])[] =
  [
    ['the standalone file and its hash', 'open', 'plain', 'wide'],
    ['the same in a narrow window', 'open', 'plain', 'narrow'],
    ['the snippet as the page for authors gives it', 'open', 'snippet', 'wide'],
    ['a policy that allows no inline styles, blob workers or pictures of its own', 'strict', 'strict', 'wide'],
    ['a policy that allows blob workers and no evaluation', 'inline', 'layers', 'wide'],
    ['a policy on script addresses (Trusted Types)', 'trusted-types', 'plain', 'wide'],
    ['the same with the small entry', 'trusted-types', 'entry', 'wide'],
    ['isolation from other origins', 'isolated', 'plain', 'wide'],
    ['hostile styles and a narrow column', 'open', 'hostile', 'narrow'],
    ['the script twice, and the small entry besides', 'open', 'twice', 'wide'],
    ['the small entry, whose parts are checked by hash', 'open', 'entry', 'wide'],
  ];

/** What the page for authors tells them to copy, with this file's address in it, and what its own table of points comes to. */
function snippet(cdn: string): { html: string; change: number } {
  const page = readFileSync(`${top}dist/site/put-it-in-your-article/index.html`, 'utf8');
  const escaped = /<pre id="snippet-table"><code>([\s\S]*?)<\/code>/.exec(page)?.[1];
  if (!escaped) throw new Error('The page for authors has no snippet with a table.');
  const text = escaped
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
  const address = /https:\/\/your-site\.example\/bumpline-standalone\.js/;
  if (!address.test(text)) throw new Error('The snippet does not say where the file is.');
  const sheet = /https:\/\/your-site\.example\/bumpline\.css/;
  if (!sheet.test(text)) throw new Error('The snippet links no style sheet that keeps the place.');
  const row = (name: string) => {
    const cells = new RegExp(`<th>${name}</th>((?:<td>[^<]*</td>)+)`).exec(text)?.[1];
    if (!cells) throw new Error(`The snippet's table has no row "${name}".`);
    return [...cells.matchAll(/<td>([^<]*)<\/td>/g)].map(([, cell]) =>
      Number(cell!.replace('−', '-').replace('°', '')),
    );
  };
  const point = (name: string) => row(name).slice(0, 3) as unknown as Point;
  const change = independentCamberChange(
    {
      wheelCentre: point('Wheel centre'),
      loadedRadius: row('Loaded radius')[0]!,
      camber: row('Static camber')[0]!,
      toe: row('Static toe')[0]!,
      lowerArm: {
        front: point('Lower arm, front pivot'),
        rear: point('Lower arm, rear pivot'),
        ball: point('Lower ball joint'),
      },
      strut: { top: point('Top mount'), low: point('Damper, low point') },
      tieRod: { inner: point('Tie rod, inner end'), outer: point('Tie rod, outer end') },
    },
    Number(/ drop="(\d+)"/.exec(text)?.[1]),
  );
  const html = text
    .replace(address, `${cdn}/standalone/bumpline-standalone.js`)
    .replace(sheet, `${cdn}/standalone/bumpline.css`);
  return { html, change };
}

/** The server that delivers Bumpline, and a host's on another origin. */
export async function startHosts(
  options: {
    cdnFolder?: string;
    cache?: string;
    /** The folder of a package that was unpacked, whose files the pages take, by its version. */
    packed?: string;
    spoil?: (path: string, body: string, time: number) => string | undefined;
  } = {},
) {
  const { packed } = options;
  const underVersion = `/bumpline@${version}/`;
  const integrityIn = (folder: string) =>
    (json(`${packed ?? top}/dist/${folder}/integrity.json`) as { files: Record<string, string> }).files;
  const cdn = await serve({
    folders: {
      ...(packed && { [underVersion]: packed }),
      '/standalone/': `${top}dist/standalone`,
      '/cdn/': options.cdnFolder ?? `${top}dist/cdn`,
      '/hosts/': `${top}test/hosts`,
    },
    headers: () => ({
      'Access-Control-Allow-Origin': '*',
      'Cross-Origin-Resource-Policy': 'cross-origin',
      ...(options.cache && { 'Cache-Control': options.cache }),
    }),
    ...(options.spoil && { spoil: options.spoil }),
  });
  const copied = snippet(cdn.origin);
  const filled: Record<string, string> = {
    CDN: cdn.origin,
    FILES: packed ? `${cdn.origin}${underVersion}dist` : cdn.origin,
    INTEGRITY: integrityIn('standalone')['bumpline-standalone.js']!,
    // Tests spoil the entry that was built: it is not for them to be stopped.
    ENTRYINTEGRITY: packed ? integrityIn('cdn')['bumpline.js']! : '',
    VERSION: version,
    CHANGE: String(EXPECTED_CHANGE_DEG),
    ROWS: rows(),
    SNIPPET: copied.html,
    SNIPPETCHANGE: String(copied.change),
    CORNER: JSON.stringify(corner, null, 2),
  };
  const policyOf = (path: string) => path.split('/')[1] as Policy;
  const host = await serve({
    folders: {
      ...Object.fromEntries(Object.keys(POLICIES).map((policy) => [`/${policy}/`, `${top}test/hosts`])),
      '/inline/cdn/': `${top}dist/cdn`,
    },
    headers: (path: string) => POLICIES[policyOf(path)]?.(cdn.origin),
    fill: (path: string, text: string) =>
      text.replace(/%([A-Z]+)%/g, (_, name: string) =>
        name === 'MODE' ? (policyOf(path) === 'strict' ? 'main-thread' : 'worker') : filled[name]!,
      ),
  });
  return {
    cdn,
    address: (policy: Policy, page: string) => `${host.origin}/${policy}/${page}.html`,
    close: () => Promise.all([cdn.close(), host.close()]),
  };
}
