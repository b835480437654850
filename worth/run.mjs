// npm run worth -- [--seed n] [--keepers n] [--quick] [--json]: simulated keepers over one winter each, in worlds that are not the
// model. Without --quick and --json it writes worth/last.json and docs/worth.md.
import { execFileSync, spawn } from 'node:child_process';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { importTs } from '../bench/bundle.mjs';
import { writeReport } from './report.mjs';

/** One keeper of each world. */
const QUICK_KEEPERS = 7;
const KEEPERS = 280;
const DRAWS = 300;

const option = (name, usual) => {
  const at = process.argv.indexOf(`--${name}`);
  if (at < 0) return usual;
  const value = Number(process.argv[at + 1]);
  if (!Number.isInteger(value) || value < 1 || value > 1_000_000) {
    console.error(`--${name}: ${process.argv[at + 1]} is not a whole number from 1 to 1000000`);
    process.exit(2);
  }
  return value;
};
const quick = process.argv.includes('--quick');
const seed = option('seed', 1);
const keepers = option('keepers', quick ? QUICK_KEEPERS : KEEPERS);
const slice = process.argv.indexOf('--slice');

if (slice >= 0) {
  const [from, step] = process.argv[slice + 1].split('/').map(Number);
  const study = await importTs('worth/entry.ts', `-${from}`);
  process.stdout.write(JSON.stringify(study.playKeepers({ seed, keepers, from, step, solve: await study.loadHighs() })));
} else {
  const t0 = performance.now();
  const workers = Math.max(1, Math.min(cpus().length, 8));
  const rows = (await Promise.all(Array.from({ length: workers }, (_, from) => played(from, workers)))).flat().sort((a, b) => a.id - b.id);
  const study = await importTs('worth/entry.ts');
  const infos = study.armInfos(await study.loadHighs());
  const result = resultOf(study, { rows, infos });
  const seconds = Math.round((performance.now() - t0) / 1000);
  if (process.argv.includes('--json')) console.log(JSON.stringify({ ...result, seconds }));
  else if (quick) tell(result, seconds);
  else writeReport({ ...result, seconds, commit: execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim() });
}

/** Rows of one worker: this same script in a process of its own. */
function played(from, step) {
  const child = spawn(
    process.execPath,
    [fileURLToPath(import.meta.url), '--seed', seed, '--keepers', keepers, '--slice', `${from}/${step}`],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  return new Promise((resolve, reject) => {
    let text = '';
    child.stdout.setEncoding('utf8').on('data', (part) => {
      text += part;
    });
    child.on('close', (code) => (code === 0 ? resolve(JSON.parse(text)) : reject(new Error(`worker ${from} ended with ${code}`))));
  });
}

function resultOf(study, { rows, infos }) {
  const by = (key) => [...grouped(rows, key)];
  const group = (some) => {
    const cells = study.cellsOf(some);
    return {
      keepers: some.length,
      colonies: some.reduce((sum, row) => sum + row.colonies, 0),
      comparisons: study.compare(cells, infos),
      autumnAlone: study.compare(cells, infos, { product: 'half', against: 'rule' }),
      againstStronger: study.compare(cells, infos, { product: 'product', against: 'stronger' }),
      intervals: study.intervals(cells, infos, quick ? 50 : DRAWS),
      sweeps: infos.map((info, arm) => ({
        name: info.name,
        what: info.what,
        setting: info.setting,
        points: study.sweepOf(some, arm, info.settings),
      })),
    };
  };
  return {
    seed,
    usual: study.USUAL_CERTAINTY,
    all: group(rows),
    worlds: by('world').map(([name, some]) => ({ name, ...group(some) })),
    climates: by('climate').map(([name, some]) => ({ name, ...group(some) })),
  };
}

function grouped(rows, key) {
  const groups = new Map();
  for (const row of rows) groups.set(row[key], [...(groups.get(row[key]) ?? []), row]);
  return groups;
}

function tell({ all, worlds, usual }, seconds) {
  for (const { name, comparisons } of [{ name: 'all worlds', ...all }, ...worlds]) {
    const at = comparisons.find(({ certainty }) => certainty === usual);
    console.log(
      `${name}: starved ${pc(at.product.starvedFrac)} with ${at.product.sugarKg.toFixed(1)} kg of sugar a colony; best rule (${at.bestRule}) ${pc(at.ruleStarvedFrac)}`,
    );
  }
  console.log(`${all.keepers} keepers, ${all.colonies} colonies, ${seconds} s`);
}

function pc(frac) {
  return `${(100 * frac).toFixed(1)} %`;
}
