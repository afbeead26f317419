/**
 * What a reader downloads: `node test/bench/bytes.mjs` prints the bytes of what was built, against the budgets and against the
 * committed figures in bytes.json; `--write` makes the present figures the committed ones. Needs `npm run build`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';
import { LAYERS } from '../../core/worker/build-layers.mjs';

const path = (relative) => fileURLToPath(new URL(`../../${relative}`, import.meta.url));
const committedFile = fileURLToPath(new URL('bytes.json', import.meta.url));

/**
 * Brotli bytes of a part: what the plan allows, and the limit that the tests hold. They differ where the plan could not be kept;
 * components/delivery/decisions.md says why. The standalone file and the core functions are parts of these and have none of their own.
 */
export const BUDGETS = {
  shell: { planned: 9000, limit: 9_700 },
  firstAnswer: { planned: 26_000, limit: 48_250 },
  'bumpline-lowering': { planned: 52_000, limit: 198_300 },
  firstReadings: { planned: 26_000, limit: 41_400 },
  'bumpline-readings': { planned: 64_000, limit: 169_450 },
  firstCompare: { planned: 26_000, limit: 50_600 },
  'bumpline-compare': { planned: 64_000, limit: 217_550 },
  firstClearance: { planned: 26_000, limit: 63_350 },
  'bumpline-clearance': { planned: 64_000, limit: 222_200 },
  firstCornering: { planned: 26_000, limit: 62_800 },
  'bumpline-cornering': { planned: 64_000, limit: 210_950 },
  firstGeometry: { planned: 26_000, limit: 59_800 },
  'bumpline-geometry': { planned: 64_000, limit: 232_700 },
  firstPredict: { planned: 26_000, limit: 77_850 },
  'bumpline-predict': { planned: 64_000, limit: 234_850 },
  firstStaticCamber: { planned: 26_000, limit: 61_450 },
  'bumpline-static-camber': { planned: 64_000, limit: 232_800 },
  firstToe: { planned: 26_000, limit: 61_200 },
  'bumpline-toe': { planned: 64_000, limit: 252_250 },
};

/** Those of components/elements.json that answer: with the file of sizes' name for the first answer, and the lazy module it waits for. */
export const SHEETS = JSON.parse(readFileSync(path('components/elements.json'), 'utf8'))
  .filter(({ article }) => article !== undefined)
  .map(({ tag }) => {
    const name = tag.replace('bumpline-', '');
    return { tag, name, first: firstName(name), app: `${name}-app` };
  });

/** Of an element's first answer in the file of sizes: `firstBumpSteer` of bump-steer. The one that was first has no name of its own. */
export function firstName(name) {
  if (name === 'lowering') return 'firstAnswer';
  return `first-${name}`.replace(/-([a-z])/g, (_, letter) => letter.toUpperCase());
}

const WHAT = {
  shell: 'shell: registers the elements',
  ...Object.fromEntries(
    SHEETS.flatMap(({ tag, name, first }) => [
      [first, `${name}, first answer, shell included`],
      [tag, `${tag} complete`],
    ]),
  ),
  standalone: 'standalone file',
  ...Object.fromEntries(Object.keys(LAYERS).map((name) => [`layer:${name}`, `layer of the core: ${name}`])),
};

/** @returns {{ bytes: number, brotli: number }} files one by one, as a server sends them */
function weigh(texts) {
  const brotli = (text) =>
    brotliCompressSync(text, {
      params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: Buffer.byteLength(text) },
    }).length;
  return {
    bytes: texts.reduce((sum, text) => sum + Buffer.byteLength(text), 0),
    brotli: texts.reduce((sum, text) => sum + brotli(text), 0),
  };
}

/** Which compressor the brotli bytes come from: another version may count differently by a few. */
export const compressor = `brotli ${process.versions.brotli}`;

/** @returns {Record<string, { bytes: number, brotli: number }>} of what stands in dist/, by the names of `WHAT` */
export function measure() {
  const read = (file) => readFileSync(path(file), 'utf8');
  const { entry, needs, fetches } = JSON.parse(read('dist/cdn/chunks.json'));
  const cdn = (files) => weigh([...new Set([entry, ...files])].map((file) => read(`dist/cdn/${file}`)));
  const apps = SHEETS.map(({ app }) => app);
  /** A lazy module's files, and those of all that they may fetch in turn; another element's sheet is fetched by that element. */
  const everything = (app, module = app, files = new Set()) => {
    for (const file of needs[module].filter((one) => !files.has(one))) {
      files.add(file);
      for (const next of fetches[file]) if (next === app || !apps.includes(next)) everything(app, next, files);
    }
    return files;
  };
  const body = (name) => {
    const generated = read(`core/worker/layers/${name}.generated.ts`);
    const start = generated.indexOf('function make(made) {\n') + 'function make(made) {\n'.length;
    return generated.slice(start, generated.lastIndexOf('\n}\nexport const'));
  };
  return {
    shell: cdn([]),
    ...Object.fromEntries(
      SHEETS.flatMap(({ tag, first, app }) => [
        [first, cdn(needs[app])],
        [tag, cdn(everything(app))],
      ]),
    ),
    standalone: weigh([read('dist/standalone/bumpline-standalone.js')]),
    ...Object.fromEntries(Object.keys(LAYERS).map((name) => [`layer:${name}`, weigh([body(name)])])),
  };
}

/** @returns {{ compressor: string, sizes: ReturnType<typeof measure> }} */
export const committed = () => JSON.parse(readFileSync(committedFile, 'utf8'));

/** Whether two builds weigh the same, as far as this machine can tell. */
export function sameSize(now, before, sameCompressor) {
  return now.bytes === before?.bytes && (!sameCompressor || now.brotli === before.brotli);
}

function report() {
  const sizes = measure();
  const before = committed();
  for (const [name, { bytes, brotli }] of Object.entries(sizes)) {
    const budget = BUDGETS[name];
    const room = budget
      ? `  plan ${budget.planned}: ${brotli <= budget.planned ? 'kept' : `OVER by ${brotli - budget.planned}`}`
      : '';
    const was = before.sizes[name]?.brotli ?? brotli;
    const change = brotli === was ? '' : `  ${brotli > was ? '+' : ''}${brotli - was} against bytes.json`;
    console.log(
      `${WHAT[name].padEnd(40)}${String(bytes).padStart(7)} B ${String(brotli).padStart(7)} B brotli${room}${change}`,
    );
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  if (process.argv.includes('--write')) {
    writeFileSync(committedFile, `${JSON.stringify({ compressor, sizes: measure() }, null, 2)}\n`);
  }
  report();
}
