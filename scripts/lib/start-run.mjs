import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { install } from './install.mjs';
import { portFrom, requirePort, serveApp } from './page-server.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const KNOWN = ['--once', '--json'];

/** Runs the command inside this process; gives what it printed, or ends with what it said. */
async function printed(argv) {
  const { run } = await import(pathToFileURL(join(root, 'apps/cli/dist/main.mjs')).href);
  let out = '';
  let err = '';
  const { readFile } = await import('node:fs/promises');
  const io = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    read: async (name) => ({ ok: true, value: await readFile(name) }),
    stdinIsTerminal: true,
    now: () => new Date(),
  };
  const code = await run(argv, io);
  if (code !== 0) {
    console.error(err.trimEnd());
    process.exit(code);
  }
  return out;
}

/** The demo holding's plan as the command prints it. demo/plan-options.json holds the day and the seed it is made for. */
async function demoPlan(json) {
  const options = JSON.parse(readFileSync(join(root, 'demo/plan-options.json'), 'utf8'));
  return printed(['plan', join(root, 'demo/journal.jsonl'), ...options, ...(json ? ['--json'] : [])]);
}

export async function start(argv) {
  const unknown = argv.find((arg) => !KNOWN.includes(arg));
  if (unknown !== undefined) {
    console.error(`npm start: ${unknown} is not an option; allowed: ${KNOWN.join(', ')}`);
    process.exit(2);
  }
  const once = argv.includes('--once');
  const json = argv.includes('--json');
  const port = once ? null : portFrom(process.env.PORT);
  if (port !== null) await requirePort(port);
  install(root, { quiet: true });
  const { buildCli } = await import('../build-cli.mjs');
  if (await buildCli()) console.error('built the command');
  process.stdout.write(await demoPlan(json));
  if (once) return;
  const { buildWeb, webDist } = await import('../build-web.mjs');
  if (await buildWeb()) console.error('built the app');
  await serveApp(port, webDist);
}
