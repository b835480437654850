// npm start: installs, builds, prints the demo holding's plan, then serves a page. `--once` stops after printing; `--json` prints JSON.
// The version is looked at before anything newer is loaded.
import { requireNode } from './lib/node-version.mjs';

requireNode();
import('./lib/start-run.mjs').then((module) => module.start(process.argv.slice(2)));
