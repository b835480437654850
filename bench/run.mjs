// npm run bench [-- --quick]: ratios against references measured in the same run. Writes bench/last.json with commit and machine.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { root } from './bundle.mjs';
import { benchGrowth } from './growth.mjs';
import { benchKernel } from './kernel.mjs';
import { benchSolve } from './solve.mjs';
import { benchStart } from './start.mjs';

const quick = process.argv.includes('--quick');
const rows = [
  ...(await benchKernel({ repeats: quick ? 5 : 25 })),
  ...(quick ? [] : (await benchGrowth()).rows),
  ...(await benchSolve({ quick })),
  ...(await benchStart({ repeats: quick ? 3 : 15 })),
];
for (const { name, ratio, aim, text } of rows) {
  console.log(`${name}: ${ratio === undefined ? '' : `${ratio.toFixed(2)} times (aim ${aim}); `}${text}`);
}
if (!quick) {
  const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { cwd: root, encoding: 'utf8' }).trim();
  const machine = `${cpus().length} x ${cpus()[0]?.model ?? 'unknown'}, Node ${process.version}`;
  writeFileSync(join(root, 'bench/last.json'), `${JSON.stringify({ commit, machine, rows }, null, 2)}\n`);
}
