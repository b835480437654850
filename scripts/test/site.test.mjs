import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { listen, readSite, siteHandler } from '../lib/site.mjs';

const folder = mkdtempSync(join(tmpdir(), 'site-'));
let server;
let port;
beforeAll(async () => {
  mkdirSync(join(folder, 'dist/assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not to be seen');
  writeFileSync(join(folder, 'dist/index.html'), '<!doctype html><title>a</title>');
  for (const name of ['sw.js', 'manifest.webmanifest', 'assets/a-1.wasm', 'assets/b-2.css', 'assets/c-3.woff2', 'assets/d-4.jsonl'])
    writeFileSync(join(folder, 'dist', name), `content of ${name}`);
  server = await listen(siteHandler(readSite(join(folder, 'dist')), '/some/place/'), 0);
  port = server.address().port;
});
afterAll(async () => {
  await new Promise((resolve) => server.close(resolve));
  rmSync(folder, { recursive: true });
});

/** Asks for a path as it is written, which a browser or `fetch` would tidy first. */
function ask(path, { method = 'GET', headers = {} } = {}) {
  return new Promise((resolve, reject) => {
    const asked = request({ host: 'localhost', port, path, method, headers }, (response) => {
      let body = '';
      response.on('data', (part) => {
        body += part;
      });
      response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, body }));
    });
    asked.on('error', reject);
    asked.end();
  });
}

test.each([
  ['', 'text/html; charset=utf-8', 'no-cache'],
  ['index.html', 'text/html; charset=utf-8', 'no-cache'],
  ['sw.js', 'text/javascript; charset=utf-8', 'no-cache'],
  ['manifest.webmanifest', 'application/manifest+json; charset=utf-8', 'no-cache'],
  // WebAssembly.compileStreaming takes this type only (WebAssembly Web API, section "Streaming Module Compilation")
  ['assets/a-1.wasm', 'application/wasm', 'public, max-age=31536000, immutable'],
  ['assets/b-2.css?v=1', 'text/css; charset=utf-8', 'public, max-age=31536000, immutable'],
  ['assets/c-3.woff2', 'font/woff2', 'public, max-age=31536000, immutable'],
  ['assets/d-4.jsonl', 'application/x-ndjson; charset=utf-8', 'public, max-age=31536000, immutable'],
])('%s: its type and how long it may be kept', async (name, type, cache) => {
  const answer = await ask(`/some/place/${name}`);
  expect([answer.status, answer.headers['content-type'], answer.headers['cache-control']]).toEqual([200, type, cache]);
  expect(Number(answer.headers['content-length'])).toBe(answer.body.length);
});

test('every answer has the headers that guard it, the refusals too', async () => {
  for (const path of ['/some/place/', '/none']) {
    const { headers } = await ask(path);
    expect(headers['content-security-policy']).toMatch(/default-src 'none'.*script-src 'self' 'wasm-unsafe-eval'.*frame-ancestors 'none'/);
    expect(headers['content-security-policy']).not.toMatch(/unsafe-inline|unsafe-eval(?<!wasm-unsafe-eval)|\*/);
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['referrer-policy']).toBe('no-referrer');
  }
});

test.each([
  ['/some/place/../secret.txt', 404],
  ['/some/place/../../secret.txt', 404],
  ['/some/place/%2e%2e/secret.txt', 404],
  ['/some/place/..%2fsecret.txt', 404],
  ['/some/place//etc/passwd', 404],
  ['/some/place/assets', 404],
  ['/some/place/assets/', 404],
  ['/index.html', 404],
  ['/', 404],
  ['/some/place/%', 400],
  ['/some/place', 308],
])('%s is answered %i and shows nothing of the disk', async (path, status) => {
  const answer = await ask(path);
  expect(answer.status).toBe(status);
  expect(answer.body).not.toMatch(/not to be seen|root:/);
});

test('HEAD gives the length and no body; other methods are refused', async () => {
  const head = await ask('/some/place/sw.js', { method: 'HEAD' });
  expect([head.status, head.body, head.headers['content-length']]).toEqual([200, '', String('content of sw.js'.length)]);
  for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS']) {
    const answer = await ask('/some/place/', { method });
    expect([answer.status, answer.headers.allow]).toEqual([405, 'GET, HEAD']);
  }
});

test('what the browser has already is not sent again', async () => {
  const { headers } = await ask('/some/place/sw.js');
  const again = await ask('/some/place/sw.js', { headers: { 'If-None-Match': headers.etag } });
  expect([again.status, again.body]).toEqual([304, '']);
});
