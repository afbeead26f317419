import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { independentCamberChange } from '../reference/independent-strut.js';
import { serve } from '../serve.mjs';
import corner from './corner.json' with { type: 'json' };

const top = fileURLToPath(new URL('../../', import.meta.url));
const read = (path: string) => JSON.parse(readFileSync(`${top}${path}`, 'utf8'));

export const DROP_MM = 40;
/** From a calculation that shares nothing with the core: see test/reference/independent-strut.ts. */
export const EXPECTED_CHANGE_DEG = independentCamberChange(corner as never, DROP_MM);
/** Height that the snippet reserves, px. */
const RESERVE_PX = 1200;

/** Rows of the table of hard points that the pages carry, named as people name them. */
function rows(): string {
  const { lowerArm, strut, tieRod, wheelCentre, loadedRadius, camber, toe } = corner;
  const points: [string, number[]][] = [
    ['Lower arm front pivot', lowerArm.front],
    ['Lower arm rear pivot', lowerArm.rear],
    ['Lower ball joint', lowerArm.ball],
    ['Top mount', strut.top],
    ['Second point on the damper', strut.low],
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
    'Content-Security-Policy': `script-src ${cdn}; worker-src 'self'; style-src 'self'`,
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

/** The server that delivers Bumpline, and a host's on another origin. */
export async function startHosts(options: { cdnFolder?: string; mode?: Record<string, string> } = {}) {
  const cdn = await serve({
    folders: {
      '/standalone/': `${top}dist/standalone`,
      '/cdn/': options.cdnFolder ?? `${top}dist/cdn`,
      '/hosts/': `${top}test/hosts`,
    },
    headers: () => ({ 'Access-Control-Allow-Origin': '*', 'Cross-Origin-Resource-Policy': 'cross-origin' }),
  });
  const filled: Record<string, string> = {
    CDN: cdn.origin,
    INTEGRITY: read('dist/standalone/integrity.json').integrity,
    VERSION: read('package.json').version,
    CHANGE: String(EXPECTED_CHANGE_DEG),
    RESERVE: String(RESERVE_PX),
    ROWS: rows(),
    CORNER: JSON.stringify(corner, null, 2),
  };
  const policyOf = (path: string) => path.split('/')[1] as Policy;
  const host = await serve({
    folders: Object.fromEntries(Object.keys(POLICIES).map((policy) => [`/${policy}/`, `${top}test/hosts`])),
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
