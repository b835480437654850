// npm test: installs what is missing and runs everything. The last line counts: `N passed, N failed, N skipped`.
import { requireNode } from './lib/node-version.mjs';

requireNode();
import('./lib/test-run.mjs').then((module) => module.testAll());
