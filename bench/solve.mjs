// Provision's first aim solved by HiGHS (WebAssembly, loaded before) and by CBC (native, its start included) on the same LP file:
// one thread, the same gap. Ratio of the medians over a few invented yards; both bounds are printed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { importTs } from './bundle.mjs';

const GAP_FRAC = 0.01;
/** Half a hundredth of a colony: closer than that the product does not ask. */
const GAP_ABS = 0.005;
const BRAKE_SECONDS = 30;
const YARDS = [
  { colonies: 26, seeds: [1, 2, 3, 4, 5] },
  { colonies: 60, seeds: [1, 2, 3, 4, 5] },
];

export async function benchSolve({ quick = false } = {}) {
  const core = await importTs('bench/solve-entry.ts');
  const solve = await core.loadHighs();
  const hasCbc = spawnSync('cbc', ['-quit'], { stdio: 'ignore' }).error === undefined;
  const folder = mkdtempSync(join(tmpdir(), 'winterheft-bench-'));
  try {
    return (quick ? YARDS.slice(0, 1) : YARDS).map(({ colonies, seeds }) => {
      const runs = (quick ? seeds.slice(0, 2) : seeds).map((seed) => {
        const model = firstModel(core, core.mediumYard(seed, colonies));
        const file = join(folder, `yard-${colonies}-${seed}.lp`);
        writeFileSync(file, core.toLp(model));
        const t0 = performance.now();
        const result = solve(model, { gapFrac: GAP_FRAC, gapAbs: GAP_ABS, nodes: 100_000, brakeSeconds: BRAKE_SECONDS });
        const ours = { seconds: (performance.now() - t0) / 1000, objective: result.objective, bound: result.bound, ended: result.endedBy };
        return { ours, theirs: hasCbc ? cbc(file) : null };
      });
      const name = `solving, ${colonies} colonies`;
      const told = (run) =>
        `${run.objective.toFixed(4)} (bound ${run.bound.toFixed(4)}${run.ended === 'clock' ? ', stopped by the clock' : ''}) in ${run.seconds.toFixed(2)} s`;
      const lines = runs.map(({ ours, theirs }) => `HiGHS ${told(ours)}${theirs ? `, CBC ${told(theirs)}` : ''}`).join('; ');
      const seconds = median(runs.map((run) => run.ours.seconds));
      if (!hasCbc) return { name, aim: 3, text: `median ${seconds.toFixed(2)} s; CBC left out: no cbc on this machine; ${lines}` };
      const theirs = median(runs.map((run) => run.theirs.seconds));
      return {
        name,
        ratio: seconds / theirs,
        aim: 3,
        text: `median ${seconds.toFixed(2)} s against CBC ${theirs.toFixed(2)} s, gap ${GAP_FRAC} or ${GAP_ABS} colonies; ${lines}`,
      };
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The model of the first aim: what provision hands to its solver first. */
function firstModel(core, input) {
  let first;
  core.provision(input, {
    solve: (model) => {
      first ??= model;
      return { status: 'nothing-found', endedBy: 'nodes', solver: 'none' };
    },
  });
  return first;
}

function cbc(file) {
  const t0 = performance.now();
  const run = spawnSync('cbc', [file, 'ratio', String(GAP_FRAC), 'allow', String(GAP_ABS), 'sec', String(BRAKE_SECONDS), 'solve', 'quit'], {
    encoding: 'utf8',
  });
  const seconds = (performance.now() - t0) / 1000;
  const figure = (pattern) => Number([...run.stdout.matchAll(pattern)].at(-1)?.[1] ?? Number.NaN);
  const objective = figure(/^Objective value:\s+(\S+)/gm);
  const lower = figure(/^Lower bound:\s+(\S+)/gm);
  const possible = Number.isFinite(lower) ? lower : figure(/best possible (?:solution )?(-?[\d.e+-]+)/g);
  const stopped = /Stopped on time limit/.test(run.stdout);
  // the bound of CBC's summary, to three decimals, or the last of its log; where it never branched the optimum is its own
  return {
    seconds,
    objective,
    bound: Number.isFinite(possible) ? Math.min(possible, objective) : objective,
    ended: stopped ? 'clock' : 'gap',
  };
}

function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
