// The ensemble kernel against the same arithmetic in C, in one run: ratio of the best times, and the same checksum.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cache, importTs } from './bundle.mjs';

const MEMBERS = 1000;
const DAYS = 270;
const HIVE_W_PER_K = 0.9;
/** Invented monthly means of a cold continental place. */
const MONTHLY = [-19, -16, -9, 1, 9, 15, 18, 17, 10, 3, -8, -16];

function compiled() {
  try {
    execFileSync('cc', ['--version'], { stdio: 'ignore' });
  } catch {
    return [];
  }
  return [['-O2'], ['-O3', '-march=native']].map((flags) => {
    const file = join(cache, `kernel${flags.join('')}`);
    execFileSync('cc', [...flags, '-o', file, join(cache, '../bench/kernel.c'), '-lm']);
    return { flags: flags.join(' '), file };
  });
}

export async function benchKernel({ repeats = 15 } = {}) {
  const core = await importTs('bench/kernel-entry.ts');
  const p = core.winterValues();
  const climate = core.climateFromMonthly(MONTHLY);
  const fromDay = 20711;
  const tempC = core.drawWeather(climate.value, { seed: 1, entity: 'bench', fromDay, toDay: fromDay + DAYS - 1, members: MEMBERS });
  const flightIndex = new Int32Array(MEMBERS).fill(205);
  const season = core.prepareSeason(
    { fromDay, days: DAYS, members: MEMBERS, tempC, flightIndex, forageIndex: new Int32Array(MEMBERS).fill(250) },
    p,
  );
  const draws = core.drawColony({ seed: 1, members: MEMBERS, fromDay, bees: 16000, beesSdFrac: 0.15, pins: {} });
  const run = { useKg: new Float64Array(MEMBERS * DAYS), beesAtEnd: new Float64Array(MEMBERS) };
  const times = [];
  for (let i = 0; i < repeats + 3; i++) {
    const t0 = performance.now();
    core.runColony(season, draws, { hiveWPerK: HIVE_W_PER_K, values: p }, run);
    times.push((performance.now() - t0) / 1000);
  }
  let checksum = 0;
  for (const kg of run.useKg) checksum += kg;
  for (const n of run.beesAtEnd) checksum += n;
  const js = Math.min(...times);
  const ramp = Float64Array.from({ length: DAYS + 400 }, (_, i) => core.eggsOnRamp(i, p));
  const bend2 = p.sizeBendKg ** 2;
  const lead = core.clusterWPerKgK(1, p) / Math.sqrt(Math.sqrt(Math.sqrt(1 + bend2)));
  const head = [
    MEMBERS,
    DAYS,
    ramp.length,
    HIVE_W_PER_K,
    p.beeMassKg,
    bend2,
    p.looseTempC,
    p.clusterTempC - p.looseTempC,
    p.looseWidthK ** 2,
    p.basalWidthWPerKg,
    86400 / p.honeyJPerKg,
    1 / p.broodNestCells,
    lead,
    1 / p.turnoverDays,
    p.broodHeatFrac,
    p.broodEmergeFrac,
    p.broodFoodKg,
    1 / p.beesPerEgg,
  ];
  const columns = [
    Float64Array.from(head),
    tempC,
    season.basalWPerKg,
    season.warmWPerKg,
    draws.bees,
    draws.winterDeath,
    draws.springDeath,
    draws.broodStart,
    draws.broodScale,
    Float64Array.from(flightIndex),
    new Float64Array(MEMBERS),
    ramp,
  ];
  const input = join(cache, 'kernel.bin');
  writeFileSync(input, Buffer.concat(columns.map((c) => Buffer.from(c.buffer, c.byteOffset, c.byteLength))));
  const programs = compiled();
  if (programs.length === 0) return [{ name: 'ensemble kernel against C', text: 'left out: no C compiler here' }];
  const results = programs.map(({ flags, file }) => {
    const [seconds, sum] = execFileSync(file, [input, String(repeats)], { encoding: 'utf8' })
      .trim()
      .split(' ')
      .map(Number);
    return { flags, seconds, sum };
  });
  const best = results.reduce((a, b) => (a.seconds <= b.seconds ? a : b));
  const off = Math.max(...results.map((r) => Math.abs(r.sum - checksum) / Math.abs(checksum)));
  if (!(off < 1e-9)) throw new Error(`bench: the kernel in C sums to another figure: relative difference ${off}`);
  return [
    {
      name: 'ensemble kernel against C',
      ratio: js / best.seconds,
      aim: 1.5,
      text: `${MEMBERS} members x ${DAYS} days: here ${(js * 1000).toFixed(2)} ms; C ${results.map((r) => `${r.flags} ${(r.seconds * 1000).toFixed(2)} ms`).join(', ')}; same checksum within ${off.toExponential(1)}`,
    },
  ];
}
