// npm run e2e [-- file or option of the runner]: the browser tests alone, with the app built as its sources are. The last line counts.
import { requireNode } from './lib/node-version.mjs';

requireNode();
const { install } = await import('./lib/install.mjs');
const { root, Tally } = await import('./lib/steps.mjs');
install(root);
const { testApp } = await import('./lib/test-run.mjs');
const tally = new Tally();
await testApp(tally, ...process.argv.slice(2));
tally.end();
