// Serves the built app on this machine. Only this machine can reach it.
import { listen, readSite, siteHandler } from './site.mjs';

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

/** Ends with a clear sentence where nothing can be served on a port: asked before anything is built. */
export async function requirePort(port) {
  const server = await listen(() => {}, port).catch((error) => endOn(port, error));
  await new Promise((resolve) => server.close(resolve));
}

function endOn(port, error) {
  if (error.code === 'EADDRINUSE')
    console.error(`Port ${port} is taken by another program. Stop that one, or choose another port: PORT=8421 npm start`);
  else if (error.code === 'EACCES')
    console.error(`Port ${port} needs rights this user does not have. Choose another port: PORT=8421 npm start`);
  else console.error(`The app cannot be served on port ${port}: ${error.message}`);
  process.exit(1);
}

/** Serves a folder until the program is ended. Ends with a clear sentence where the port has been taken meanwhile. */
export async function serveApp(port, folder) {
  const server = await listen(siteHandler(readSite(folder)), port).catch((error) => endOn(port, error));
  console.error(`
the app: http://localhost:${port} (Ctrl+C ends it)
A phone on the local network cannot install it from here: browsers take an app from https only, and this address is plain http on this machine alone.
How it gets onto a phone: docs/phone.md`);
  return server;
}
