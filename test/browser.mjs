import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const nm = join(dirname(fileURLToPath(import.meta.url)), '../node_modules');
const runs = (p) => {
  try {
    accessSync(p, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};
export function findInstalled(env = process.env, platform = process.platform) {
  for (const v of ['CHROME_PATH', 'CHROME_BIN']) if (env[v] && runs(env[v])) return env[v];
  if (platform === 'darwin') {
    for (const root of ['/Applications', join(env.HOME ?? '', 'Applications')])
      for (const a of ['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser']) {
        const p = `${root}/${a}.app/Contents/MacOS/${a}`;
        if (runs(p)) return p;
      }
  } else if (platform === 'win32') {
    for (const tail of [
      'Google\\Chrome\\Application\\chrome.exe',
      'Chromium\\Application\\chrome.exe',
      'Microsoft\\Edge\\Application\\msedge.exe',
    ])
      for (const r of [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean)) {
        const p = `${r}\\${tail}`;
        if (existsSync(p)) return p;
      }
  } else {
    for (const n of [
      'google-chrome-stable',
      'google-chrome',
      'chromium',
      'chromium-browser',
      'microsoft-edge-stable',
      'microsoft-edge',
    ])
      for (const d of (env.PATH ?? '').split(delimiter)) {
        const p = join(d, n);
        if (d && runs(p)) return p;
      }
    for (const p of ['/opt/google/chrome/chrome', '/snap/bin/chromium', '/opt/microsoft/msedge/msedge'])
      if (runs(p)) return p;
  }
}
async function unpackBundled() {
  const pkg = join(nm, '@sparticuz/chromium');
  if (process.platform !== 'linux' || process.arch !== 'x64' || !existsSync(pkg)) return;
  const { version } = JSON.parse(readFileSync(join(pkg, 'package.json'), 'utf8'));
  const dir = join(nm, '.cache', `chromium-${version}`);
  if (!existsSync(join(dir, 'chromium'))) {
    mkdirSync(dirname(dir), { recursive: true });
    const tmp = mkdtempSync(`${dir}.tmp-`),
      old = process.env.TMPDIR;
    process.env.TMPDIR = tmp;
    try {
      const m = await import(pathToFileURL(join(pkg, 'build/index.js')).href);
      await m.default.executablePath();
      await m.inflate(join(pkg, 'bin/al2023.tar.br'));
    } finally {
      if (old === undefined) delete process.env.TMPDIR;
      else process.env.TMPDIR = old;
    }
    try {
      renameSync(tmp, dir);
    } catch {
      rmSync(tmp, { recursive: true, force: true });
    }
  }
  writeFileSync(
    join(dir, 'fonts.conf'),
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${join(dir, 'fonts/fonts')}</dir><dir>/usr/share/fonts</dir><cachedir>${join(dir, 'fontcache')}</cachedir></fontconfig>`,
  );
  process.env.FONTCONFIG_FILE ??= join(dir, 'fonts.conf');
  process.env.LD_LIBRARY_PATH = [join(dir, 'al2023/lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':');
  return join(dir, 'chromium');
}
/** @returns how to launch a program file */
function launching(executablePath, isInstalled) {
  const args = [
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
    '--accept-lang=en-US',
  ];
  if (process.platform === 'linux') args.push('--disable-dev-shm-usage');
  if (process.platform === 'linux' && (!isInstalled || process.getuid?.() === 0 || process.env.CI))
    args.push('--no-sandbox');
  return { executablePath, args };
}
const wantedInstalled = () => (process.env.TEST_BROWSER === 'bundled' ? undefined : findInstalled());
const NONE = 'No Chrome, Chromium or Edge found. Install one, or set CHROME_PATH to its program file.';

export async function browser() {
  const installed = wantedInstalled();
  const executablePath = installed ?? (await unpackBundled());
  if (!executablePath) throw new Error(NONE);
  return launching(executablePath, installed !== undefined);
}
/** All that there are: the bundled one and, where one is installed or named, an ordinary one, each with an environment of its own. */
export async function browsers() {
  const installed = wantedInstalled();
  // Before the bundled one's libraries and fonts stand in it.
  const env = { ...process.env };
  const bundled = await unpackBundled();
  const found = [];
  if (bundled) found.push({ ...launching(bundled, false), env: { ...process.env } });
  if (installed) found.push({ ...launching(installed, true), env });
  if (found.length === 0) throw new Error(NONE);
  return found;
}
/** What a launched browser is, for who reads a measurement: its name, version and program file. */
export function browserInWords(launched, { executablePath }) {
  const kind = /edge/i.test(executablePath) ? 'Edge' : /google|chrome$/i.test(executablePath) ? 'Chrome' : 'Chromium';
  return `${kind} ${launched.version()} (${executablePath})`;
}
