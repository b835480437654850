// The built app as a web server sees it: a map of files in memory. Nothing outside the folder can be asked for, because nothing else is in the map.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, relative, sep } from 'node:path';
import { contentPolicy } from './content-policy.mjs';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.jsonl': 'application/x-ndjson; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

const HEADERS = {
  'Content-Security-Policy': `${contentPolicy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Names under assets/ carry their hash and never change; everything else is asked for again, or nobody would ever get an update. */
const cacheOf = (path) => (path.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-cache');

/** Every file of a folder as path with forward slashes -> bytes. */
export function readSite(folder) {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    entries.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      return [relative(folder, file).split(sep).join('/'), readFileSync(file)];
    }),
  );
}

/** Answers requests for the files of a map. `base` is the path they stand at, with a slash at both ends. */
export function siteHandler(site, base = '/') {
  return (request, response) => {
    const send = (status, body, headers = {}) => {
      response.writeHead(status, {
        ...HEADERS,
        'Content-Type': TYPES['.txt'],
        'Cache-Control': 'no-cache',
        ...headers,
        'Content-Length': body.length,
      });
      response.end(request.method === 'HEAD' ? undefined : body);
    };
    const say = (status, sentence, headers) => send(status, Buffer.from(`${sentence}\n`), headers);
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return say(405, 'Only GET and HEAD are answered here.', { Allow: 'GET, HEAD' });
    const path = pathOf(request.url ?? '/');
    if (path === null) return say(400, 'This address cannot be read.');
    if (base !== '/' && path === base.slice(0, -1)) return say(308, `It stands at ${base}`, { Location: base });
    const name = path.startsWith(base) ? path.slice(base.length) || 'index.html' : '';
    const body = site.get(name);
    if (body === undefined) return say(404, 'Nothing stands at this address.');
    const tag = `"${createHash('sha256').update(body).digest('base64url').slice(0, 22)}"`;
    const headers = { 'Content-Type': TYPES[extname(name)] ?? 'application/octet-stream', 'Cache-Control': cacheOf(name), ETag: tag };
    if (request.headers['if-none-match'] === tag) {
      response.writeHead(304, { ...HEADERS, 'Cache-Control': headers['Cache-Control'], ETag: tag });
      return response.end();
    }
    return send(200, body, headers);
  };
}

/** Path of an address without query, decoded; null where it cannot be decoded. */
function pathOf(url) {
  try {
    return decodeURIComponent(url.split(/[?#]/)[0]);
  } catch {
    return null;
  }
}

/** Listens on this machine only; port 0 takes a free one. Rejects with the error of the system. */
export function listen(handler, port) {
  const server = createServer(handler);
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => resolve(server));
  });
}
