// Type-checks every project. Used by npm test and npm run check; by hand `npm run types`.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
export const projects = [
  'packages/core/tsconfig.json',
  'packages/core/tsconfig.test.json',
  'packages/words/tsconfig.json',
  'packages/solver/tsconfig.json',
  'apps/cli/tsconfig.json',
  'apps/web/tsconfig.json',
  'e2e/tsconfig.json',
  'worth/tsconfig.json',
];

/** True where the project compiles; the compiler prints what does not. */
export function compiles(project) {
  if (!existsSync(join(root, project))) throw new Error(`${project} does not exist`);
  return (
    spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', project], { cwd: root, stdio: 'inherit' }).status ===
    0
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const failed = projects.filter((project) => !compiles(project));
  console.log(`${projects.length - failed.length} of ${projects.length} projects compile`);
  process.exitCode = failed.length === 0 ? 0 : 1;
}
