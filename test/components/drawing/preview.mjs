// Pictures of the strut's front view for the eye: node test/components/drawing/preview.mjs [folder]. Not part of the tests.
import { mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { browser } from '../../browser.mjs';

const folder = process.argv[2] ?? join(tmpdir(), 'drawing-preview');
mkdirSync(folder, { recursive: true });
const bundle = await build({
  entryPoints: [fileURLToPath(new URL('preview-page.ts', import.meta.url))],
  bundle: true,
  write: false,
  format: 'iife',
  target: 'es2022',
});
const launched = await chromium.launch(await browser());
const page = await launched.newPage({ deviceScaleFactor: 2, viewport: { width: 1400, height: 900 } });
page.on('pageerror', (error) => console.error(error));
await page.setContent('<!doctype html><body></body>');
await page.addScriptTag({ content: bundle.outputFiles[0].text });
for (const theme of ['light', 'dark']) {
  for (const width of [290, 330, 560]) {
    const sheet = page.locator(`#sheet-${theme}-${width}`);
    await sheet.screenshot({ path: join(folder, `${theme}-${width}.png`) });
    await sheet
      .locator('preview-drawing')
      .nth(2)
      .screenshot({ path: join(folder, `${theme}-${width}-one.png`) });
  }
}
await launched.close();
console.log(folder);
