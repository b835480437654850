// npm run check: what a hand runs before every commit, under a minute. Random tests run with few cases (FAST=1); npm test runs all of them.
import { join } from 'node:path';
import { buildCli } from './build-cli.mjs';
import { lint, node, root, Tally, tests } from './lib/steps.mjs';
import { compiles, projects } from './types.mjs';

const tally = new Tally();
await buildCli();
tally.step('lint and format', () => lint());
tally.step('folder arrows', () => node(join(root, 'scripts/check-arrows.mjs')));
for (const project of projects) tally.step(`types of ${project}`, () => compiles(project));
tally.step('fast tests', () => tests({ FAST: '1' }, '--exclude', '**/*.fuzz.test.ts'));
tally.end();
