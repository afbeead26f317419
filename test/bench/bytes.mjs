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
  shell: { planned: 9000, limit: 10_650 },
  firstAnswer: { planned: 26_000, limit: 49_400 },
  firstAnswerInGerman: { planned: 26_000, limit: 55_500 },
  'bumpline-lowering': { planned: 52_000, limit: 200_350 },
  firstReadings: { planned: 26_000, limit: 42_650 },
  firstReadingsInGerman: { planned: 26_000, limit: 48_750 },
  'bumpline-readings': { planned: 64_000, limit: 171_800 },
  firstCompare: { planned: 26_000, limit: 51_950 },
  firstCompareInGerman: { planned: 26_000, limit: 59_200 },
  'bumpline-compare': { planned: 64_000, limit: 220_100 },
  firstClearance: { planned: 26_000, limit: 64_550 },
  firstClearanceInGerman: { planned: 26_000, limit: 72_000 },
  'bumpline-clearance': { planned: 64_000, limit: 224_900 },
  firstCornering: { planned: 26_000, limit: 64_950 },
  firstCorneringInGerman: { planned: 26_000, limit: 71_750 },
  'bumpline-cornering': { planned: 64_000, limit: 214_650 },
  firstGeometry: { planned: 26_000, limit: 61_900 },
  firstGeometryInGerman: { planned: 26_000, limit: 68_550 },
  'bumpline-geometry': { planned: 64_000, limit: 236_400 },
  firstPredict: { planned: 26_000, limit: 80_450 },
  firstPredictInGerman: { planned: 26_000, limit: 87_350 },
  'bumpline-predict': { planned: 64_000, limit: 239_000 },
  firstStaticCamber: { planned: 26_000, limit: 63_650 },
  firstStaticCamberInGerman: { planned: 26_000, limit: 70_600 },
  'bumpline-static-camber': { planned: 64_000, limit: 237_350 },
  firstToe: { planned: 26_000, limit: 63_650 },
  firstToeInGerman: { planned: 26_000, limit: 70_350 },
  'bumpline-toe': { planned: 64_000, limit: 255_850 },
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
      [`${first}InGerman`, `${name}, the same on a German page`],
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
      SHEETS.flatMap(({ tag, name, first, app }) => [
        [first, cdn(needs[app])],
        // English stands in its place until it has come, so it is in there too.
        [
          `${first}InGerman`,
          cdn([...needs[app], ...needs.de, ...needs['de/first'], ...(needs[`de/${name}-first`] ?? [])]),
        ],
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
