import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { brokenArrows } from '../check-arrows.mjs';

const made = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

/** A small workspace with these files. */
function workspace(files) {
  const root = mkdtempSync(join(tmpdir(), 'arrows-'));
  made.push(root);
  for (const [path, text] of Object.entries({ 'apps/cli/src/main.ts': "import { a } from '@winterheft/core';", ...files })) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return root;
}

const CASES = [
  ['a folder above may not import one below', { 'packages/core/src/weigh/a.ts': "import { b } from '../winter/index.ts';" }],
  ['nothing is imported past an index', { 'packages/core/src/winter/a.ts': "import { b } from '../weigh/lever.ts';" }],
  ['a re-export is an import', { 'packages/core/src/weigh/a.ts': "export { b } from '../plan/index.ts';" }],
  ['an import of a type is an import', { 'packages/core/src/weigh/a.ts': "import type { B } from '../plan/index.ts';" }],
  ['an import broken into lines is an import', { 'packages/core/src/weigh/a.ts': "import {\n  b,\n  c,\n} from '../plan/index.ts';" }],
  ['a dynamic import is an import', { 'packages/core/src/weigh/a.ts': "const b = await import('../plan/index.ts');" }],
  ['the core imports no node module', { 'packages/core/src/weigh/a.ts': "import { readFileSync } from 'node:fs';" }],
  ['the core does not import our other packages', { 'packages/core/src/weigh/a.ts': "import { english } from '@winterheft/words';" }],
  ['a folder without a place in the order is told', { 'packages/core/src/extras/a.ts': "import { b } from '../units/index.ts';" }],
  ['Math.random is banned from the core', { 'packages/core/src/weigh/a.ts': 'export const x = Math.random();' }],
  ['words do not import the solver', { 'packages/words/src/a.ts': "import { s } from '@winterheft/solver';" }],
  [
    'a screen imports no other screen',
    { 'apps/web/src/round/a.tsx': "import { B } from '../outlook/b.tsx';", 'apps/web/src/outlook/outlook-screen.tsx': '' },
  ],
  [
    'what is shared takes nothing from a screen',
    { 'apps/web/src/ui/a.tsx': "import { B } from '../outlook/b.tsx';", 'apps/web/src/outlook/outlook-screen.tsx': '' },
  ],
  ['a screen does not import the list of places', { 'apps/web/src/round/a.tsx': "import { places } from '../app/places.ts';" }],
  ['a shell is no package either', { 'apps/web/src/app/a.ts': "import { run } from 'winterheft/src/main.ts';" }],
  ['a shell imports no other shell', { 'apps/web/src/a.ts': "import { run } from '../../cli/src/main.ts';" }],
];

test.each(CASES)('%s', (_rule, files) => {
  const { broken, modules } = brokenArrows(workspace(files));
  expect(broken.length).toBe(1);
  expect(modules).toBeGreaterThan(1);
});

test('what is allowed passes', () => {
  const files = {
    'packages/core/src/winter/a.ts':
      "import { b } from '../weigh/index.ts';\nimport { p } from '../tables/parameters-winter.gen.ts';\nimport { c } from './c.ts';\nimport jstat from 'jstat';",
    'packages/core/src/index.ts': "export { b } from './plan/index.ts';",
    'packages/words/src/a.ts': "import { b } from '@winterheft/core';",
    'apps/web/src/app/places.ts': "const load = () => import('../round/round-screen.tsx');",
    'apps/web/src/round/round-screen.tsx':
      "import { b } from '../ui/b.tsx';\nimport { c } from './c.ts';\nimport { english } from '@winterheft/words';\nimport { saveText } from '../keep/hand-over.ts';\nimport url from '../../../../data/places/towns.txt?url';",
  };
  expect(brokenArrows(workspace(files))).toEqual({ broken: [], modules: 6 });
});

test('our own workspace has modules and no broken arrow', () => {
  const { broken, modules } = brokenArrows();
  expect(broken).toEqual([]);
  expect(modules).toBeGreaterThan(100);
});
