import type { Server } from 'node:http';
import { webDist } from '../scripts/build-web.mjs';
import { listen, readSite, siteHandler } from '../scripts/lib/site.mjs';

/** Not at the root, so that an address that only works there is noticed. */
const BASE = '/keepers/ines/';
let built: ReadonlyMap<string, Buffer> | null = null;

/**
 * The built app on a server of its own, with an origin of its own: what one test stores no other sees.
 * It can be ended and started again at will, and can publish a second version.
 */
export class Site {
  /** With a slash at its end. */
  address = '';
  private readonly files: Map<string, Buffer>;
  private server: Server | null = null;
  private port = 0;

  constructor() {
    built ??= readSite(process.env['E2E_DIST'] ?? webDist);
    this.files = new Map(built);
  }

  async start(): Promise<void> {
    const server: Server = await listen(siteHandler(this.files, BASE), this.port);
    this.server = server;
    const address = server.address();
    if (address === null || typeof address === 'string') throw new Error('the server has no port');
    this.port = address.port;
    this.address = `http://localhost:${this.port}${BASE}`;
  }

  /** No connection is answered any more, and open ones are cut. */
  async stop(): Promise<void> {
    const { server } = this;
    if (server === null) return;
    this.server = null;
    server.closeAllConnections();
    await new Promise<void>((resolve) => server.close(() => resolve()));
  }

  file(name: string): string {
    const bytes = this.files.get(name);
    if (bytes === undefined) throw new Error(`the build holds no ${name}`);
    return bytes.toString('utf8');
  }

  replace(name: string, text: string): void {
    this.file(name);
    this.files.set(name, Buffer.from(text));
  }

  /**
   * Publishes another version, as a build after a change would: the page names it in `<meta name="version">`, every script has a new name,
   * the list of the service worker names those, and the old names are gone.
   */
  publish(version: string): void {
    const renamed = new Map<string, string>();
    for (const name of this.files.keys()) {
      const found = /^assets\/(.+-[\w-]{8})\.js$/.exec(name);
      if (found !== null) renamed.set(name.slice('assets/'.length), `${found[1]}-${version}.js`);
    }
    for (const [name, bytes] of [...this.files]) {
      if (!/\.(js|html)$/.test(name)) continue;
      let text = bytes.toString('utf8');
      for (const [from, to] of renamed) text = text.replaceAll(from, to);
      if (name === 'index.html') text = text.replace('<title>', `<meta name="version" content="${version}"><title>`);
      if (name === 'sw.js') text = text.replace(/(url:"index\.html",revision:")\w+/, `$1${version}`);
      this.files.delete(name);
      this.files.set(`assets/${renamed.get(name.slice('assets/'.length)) ?? ''}`.replace(/^assets\/$/, name), Buffer.from(text));
    }
    if (!this.file('sw.js').includes(`revision:"${version}"`)) throw new Error('publish: the service worker lists no index.html');
  }
}
