import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/**
 * A static server for tests, on a free port of 127.0.0.1: one a call, so that two calls are two origins.
 *
 * @param {object} options
 * @param {Record<string, string>} options.folders  URL path that starts and ends with a slash → folder; the longest that fits serves
 * @param {(path: string) => Record<string, string> | undefined} [options.headers]  further headers for a path
 * @param {(path: string, text: string) => string} [options.fill]  what HTML is passed through before it is sent
 * @param {boolean} [options.isCompressed]  sent by brotli, as a host does it
 * @param {(path: string, body: string, time: number) => string | undefined} [options.spoil]  what any file is passed through, with how
 *   often its path was asked for by now; undefined: the server is not to be had
 * @returns {Promise<{ origin: string, requests: string[], close(): Promise<void> }>} `requests`: the paths asked for so far
 */
export async function serve({
  folders,
  headers = () => undefined,
  fill = (_path, text) => text,
  isCompressed = false,
  spoil,
}) {
  const prefixes = Object.keys(folders).sort((a, b) => b.length - a.length);
  const requests = [];
  const compressed = new Map();

  /** Once a file: the line is measured, not the compressor. */
  function compress(path, body) {
    if (!compressed.has(path)) compressed.set(path, brotliCompressSync(body));
    return compressed.get(path);
  }

  async function find(path) {
    const prefix = prefixes.find((one) => path.startsWith(one));
    if (prefix === undefined) return undefined;
    const inside = normalize(decodeURIComponent(path.slice(prefix.length)));
    if (inside.split(sep).includes('..')) return undefined;
    const file = join(folders[prefix], inside, path.endsWith('/') ? 'index.html' : '');
    const found = await stat(file).catch(() => undefined);
    return found?.isFile() ? file : undefined;
  }

  const server = createServer(async (request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    requests.push(path);
    const file = await find(path);
    const type = file ? (TYPES[extname(file)] ?? 'application/octet-stream') : 'text/plain';
    let body = file && (await readFile(file));
    if (body && spoil) {
      body = spoil(path, body.toString(), requests.filter((one) => one === path).length);
      if (body === undefined) {
        response.writeHead(503, { 'Content-Type': type, 'Cache-Control': 'no-store', ...headers(path) });
        response.end();
        return;
      }
    }
    const content = file?.endsWith('.html') ? fill(path, body.toString()) : (body ?? `${path} is not here`);
    const encoding = isCompressed && file ? { 'Content-Encoding': 'br' } : {};
    response.writeHead(file ? 200 : 404, {
      'Content-Type': type,
      'Cache-Control': 'no-store',
      ...encoding,
      ...headers(path),
    });
    response.end(isCompressed && file ? compress(path, content) : content);
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    origin: `http://127.0.0.1:${server.address().port}`,
    requests,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
