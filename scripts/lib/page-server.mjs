// Serves the one page that says what is here. Only this machine can reach it.
import { createServer } from 'node:http';

const DEFAULT_PORT = 8420;

/** The port asked for by PORT, or the usual one; ends with a sentence where it is no port. */
export function portFrom(text) {
  if (text === undefined || text === '') return DEFAULT_PORT;
  const port = Number(text);
  if (!/^\d+$/.test(text) || !(port >= 1 && port <= 65535)) {
    console.error(`PORT is "${text}"; allowed: a whole number from 1 to 65535`);
    process.exit(2);
  }
  return port;
}

const HEADERS = {
  'Content-Security-Policy':
    "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-cache',
};

const STYLE = `:root{color-scheme:light dark}
body{margin:2rem auto;padding:0 1rem;max-width:72rem;font:1.0625rem/1.5 system-ui,sans-serif}
pre{overflow-x:auto;font:0.8125rem/1.45 ui-monospace,monospace;border-top:1.5px solid;border-bottom:1.5px solid;padding:1rem 0}
code{font:0.9375rem ui-monospace,monospace}
`;

const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

function page(plan) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Winterheft: what is here</title>
<link rel="stylesheet" href="/style.css">
</head>
<body>
<main>
<h1>Winterheft</h1>
<p>What every honey bee colony holds before the winter, whether that lasts, and who gives what to whom.</p>
<p>This is what stands today: the calculations and the <code>winterheft</code> command. There is no app on this page yet; nothing can be entered here and nothing is stored.
Below is the winter plan of the demo holding (an invented keeper with two yards), as <code>npx winterheft plan</code> prints it.
<code>npx winterheft --help</code> lists what the command can do with your own figures.</p>
<h2>The demo holding's plan</h2>
<pre tabindex="0" aria-label="The demo holding's plan">${escaped(plan)}</pre>
<p>These figures are estimates with errors. They replace neither a look at the bees, nor a label, nor local law. Do not lift alone what is too heavy, and mind stings and cold.</p>
</main>
</body>
</html>
`;
}

/** Serves until the program is ended. Ends with a clear sentence where the port is taken. */
export function servePage(port, plan) {
  const bodies = new Map([
    ['/', ['text/html; charset=utf-8', page(plan)]],
    ['/style.css', ['text/css; charset=utf-8', STYLE]],
  ]);
  const server = createServer((request, response) => {
    const send = (status, type, body, extra = {}) => {
      response.writeHead(status, { ...HEADERS, ...extra, 'Content-Type': type, 'Content-Length': Buffer.byteLength(body) });
      response.end(request.method === 'HEAD' ? '' : body);
    };
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return send(405, 'text/plain; charset=utf-8', 'Only GET and HEAD are answered here.\n', { Allow: 'GET, HEAD' });
    const found = bodies.get((request.url ?? '/').split('?')[0]);
    if (found === undefined) return send(404, 'text/plain; charset=utf-8', 'Nothing stands at this address.\n');
    return send(200, found[0], found[1]);
  });
  return new Promise((resolve) => {
    server.on('error', (error) => {
      if (error.code === 'EADDRINUSE')
        console.error(`Port ${port} is taken by another program. Stop that one, or choose another port: PORT=8421 npm start`);
      else if (error.code === 'EACCES')
        console.error(`Port ${port} needs rights this user does not have. Choose another port: PORT=8421 npm start`);
      else console.error(`The page cannot be served on port ${port}: ${error.message}`);
      process.exit(1);
    });
    server.listen(port, 'localhost', () => {
      console.error(`\nserving on http://localhost:${port} (Ctrl+C ends it)`);
      resolve(server);
    });
  });
}
