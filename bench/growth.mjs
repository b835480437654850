// What a whole holding's forecast costs: 200 colonies x 1,000 members in memory, two workers against one, and growth to 2,000 colonies.
// `node bench/growth.mjs` writes bench/growth.json and the plot bench/growth.svg; `--quick` stops at 200 and writes nothing.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { Worker } from 'node:worker_threads';
import { cache, importTs, root } from './bundle.mjs';
import { forecastOf } from './growth-colonies.mjs';

const MEMBERS = 1000;
const COLONIES = 200;
/** [MB] what a phone may be asked to hold. */
const MOST_MB = 150;
const LEAST_GAIN = 1.8;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
const megabytes = () => {
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
};

function measured(core, colonies, before) {
  const start = performance.now();
  const { kept, needKg } = forecastOf(core, { from: 0, to: colonies, members: MEMBERS });
  const seconds = (performance.now() - start) / 1000;
  const held = megabytes() - before;
  if (!(kept.length === colonies && needKg > 0)) throw new Error('bench: the forecast of the colonies is not whole');
  return { colonies, seconds, megabytes: held };
}

async function workers(count) {
  const bundle = join(cache, 'bench-growth-entry-ts.mjs');
  const made = Array.from(
    { length: count },
    () => new Worker(fileURLToPath(new URL('growth-colonies.mjs', import.meta.url)), { workerData: { bundle } }),
  );
  const answer = (worker) => new Promise((resolve, reject) => worker.once('message', resolve).once('error', reject));
  await Promise.all(made.map(answer));
  const ask = async (colonies) => {
    const share = Math.ceil(colonies / count);
    const start = performance.now();
    const sums = await Promise.all(
      made.map((worker, k) => {
        const got = answer(worker);
        worker.postMessage({ from: k * share, to: Math.min(colonies, (k + 1) * share), members: MEMBERS });
        return got;
      }),
    );
    return { seconds: (performance.now() - start) / 1000, needKg: sums.reduce((sum, one) => sum + one, 0) };
  };
  return { ask, end: () => Promise.all(made.map((worker) => worker.terminate())) };
}

/** One worker and two by turns, so that both see the same load of the machine; the best of each. */
async function twoAgainstOne(repeats) {
  const [one, two] = [await workers(1), await workers(2)];
  const best = { one: Number.POSITIVE_INFINITY, two: Number.POSITIVE_INFINITY };
  for (let i = 0; i < repeats; i++) {
    const [a, b] = [await one.ask(COLONIES), await two.ask(COLONIES)];
    if (Math.abs(a.needKg / b.needKg - 1) > 1e-12) throw new Error('bench: two workers say something else than one');
    best.one = Math.min(best.one, a.seconds);
    best.two = Math.min(best.two, b.seconds);
  }
  await Promise.all([one.end(), two.end()]);
  return best;
}

/** The size for a phone, what two workers gain, and growth. */
export async function benchGrowth({ quick = false } = {}) {
  const core = await importTs('bench/growth-entry.ts');
  measured(core, 5, 0);
  const before = megabytes();
  const sizes = quick ? [50, 100, COLONIES] : [50, 100, COLONIES, 500, 1000, 2000];
  const points = sizes.map((colonies) => measured(core, colonies, before));
  const phone = points.find(({ colonies }) => colonies === COLONIES);
  const { one, two } = await twoAgainstOne(quick ? 2 : 5);
  const perColony = points.map(({ colonies, seconds }) => seconds / colonies);
  const rows = [
    {
      name: '200 colonies x 1,000 members in memory',
      ratio: phone.megabytes / MOST_MB,
      aim: 1,
      text: `${phone.megabytes.toFixed(0)} MB held of ${MOST_MB}; ${phone.seconds.toFixed(2)} s, or ${(6 * phone.seconds).toFixed(1)} s on a processor six times slower`,
    },
    {
      name: 'two workers against one',
      ratio: LEAST_GAIN / (one / two),
      aim: 1,
      text: `200 colonies: one ${one.toFixed(2)} s, two ${two.toFixed(2)} s: ${(one / two).toFixed(2)} times as fast (at least ${LEAST_GAIN})`,
    },
    {
      name: 'growth with the number of colonies',
      ratio: Math.max(...perColony) / Math.min(...perColony),
      aim: 1.5,
      text: points.map(({ colonies, seconds, megabytes: mb }) => `${colonies}: ${seconds.toFixed(2)} s, ${mb.toFixed(0)} MB`).join('; '),
    },
  ];
  return { rows, points };
}

/** Seconds and megabytes over the number of colonies; straight lines are linear growth. */
function plot(points) {
  const [w, h, left, top] = [560, 300, 60, 30];
  const most = {
    colonies: 2000,
    seconds: Math.max(...points.map((p) => p.seconds)),
    megabytes: Math.max(...points.map((p) => p.megabytes)),
  };
  const x = (n) => left + (w * n) / most.colonies;
  const y = (value, of) => top + h - (h * value) / of;
  const line = (of, colour) =>
    `<polyline fill="none" stroke="${colour}" stroke-width="2" points="${points.map((p) => `${x(p.colonies).toFixed(1)},${y(p[of], most[of]).toFixed(1)}`).join(' ')}"/>` +
    points.map((p) => `<circle cx="${x(p.colonies).toFixed(1)}" cy="${y(p[of], most[of]).toFixed(1)}" r="3.5" fill="${colour}"/>`).join('');
  const ticks = points.map((p) => `<text x="${x(p.colonies)}" y="${top + h + 18}" text-anchor="middle">${p.colonies}</text>`).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${w + left + 80} ${h + top + 50}" width="${w + left + 80}" height="${h + top + 50}" font-family="sans-serif" font-size="12">
<title>Seconds and megabytes of a forecast by the number of colonies</title>
<rect width="100%" height="100%" fill="#ffffff"/><path d="M${left} ${top}V${top + h}H${left + w}" fill="none" stroke="#7f8c8d"/>
${line('seconds', '#1b4f72')}${line('megabytes', '#b9770e')}${ticks}
<text x="${left + w}" y="${top - 8}" text-anchor="end" fill="#1b4f72">${most.seconds.toFixed(1)} s at 2,000 (one thread)</text>
<text x="${left}" y="${top - 8}" fill="#b9770e">${most.megabytes.toFixed(0)} MB at 2,000</text>
<text x="${left + w / 2}" y="${top + h + 40}" text-anchor="middle">colonies, none alike, 1,000 members each</text>
</svg>
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const quick = process.argv.includes('--quick');
  const { rows, points } = await benchGrowth({ quick });
  for (const { name, ratio, aim, text } of rows) console.log(`${name}: ${ratio.toFixed(2)} (aim ${aim}); ${text}`);
  if (!quick) {
    writeFileSync(join(root, 'bench/growth.json'), `${JSON.stringify(points, null, 2)}\n`);
    writeFileSync(join(root, 'bench/growth.svg'), plot(points));
  }
}
