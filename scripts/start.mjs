// npm start: installs, builds, prints the demo holding's plan, then serves the app. `--once` stops after printing; `--json` prints JSON.
// The version is looked at before anything newer is loaded.
import { requireNode } from './lib/node-version.mjs';

requireNode();
// `npm start | head` closes the pipe early: that is no error
process.stdout.on('error', (error) => process.exit(error.code === 'EPIPE' ? 0 : 1));
import('./lib/start-run.mjs').then((module) => module.start(process.argv.slice(2)));
