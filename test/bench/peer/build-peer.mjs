import { cpSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));

/** Builds the reference page that every time is compared with. @returns {Promise<string>} its folder */
export async function buildPeer() {
  const outDir = path('../../../dist/bench-peer');
  await build({
    configFile: false,
    publicDir: false,
    root: path('.'),
    logLevel: 'silent',
    mode: 'production',
    build: {
      outDir,
      emptyOutDir: true,
      target: 'es2022',
      lib: { entry: path('reference-peer.ts'), formats: ['es'], fileName: () => 'reference-peer.js' },
      rolldownOptions: { output: { minify: true } },
    },
  });
  cpSync(path('bare.html'), `${outDir}/bare.html`);
  return outDir;
}
