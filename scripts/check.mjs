// npm run check: what a hand runs before every commit, under a minute. Slow tests are left to npm test.
import { join } from 'node:path';
import { buildCli } from './build-cli.mjs';
import { lint, node, root, Tally, tests } from './lib/steps.mjs';
import { compiles, projects } from './types.mjs';

/** Fuzz, long series, solver studies and whole processes: npm test runs them. */
const SLOW = [
  '**/journal-fuzz.test.ts',
  '**/journal-large.test.ts',
  '**/weather-years.test.ts',
  '**/phenology.test.ts',
  'packages/solver/test/**',
  '**/contract.test.ts',
  '**/plan-command.test.ts',
  '**/spawned.test.ts',
  'scripts/test/start.test.mjs',
];

const tally = new Tally();
await buildCli();
tally.step('lint and format', () => lint());
tally.step('folder arrows', () => node(join(root, 'scripts/check-arrows.mjs')));
for (const project of projects) tally.step(`types of ${project}`, () => compiles(project));
tally.step('fast tests', () => tests({}, ...SLOW.flatMap((glob) => ['--exclude', glob])));
tally.end();
