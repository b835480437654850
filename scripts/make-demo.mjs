// Writes demo/journal.jsonl: an invented keeper's season, from May to the round of mid-September. `--check` compares instead of writing.
// Everything in it is invented; only the climate is that of the region. The same script gives the same file, byte for byte.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from '../bench/bundle.mjs';

const { keyOf, uniformAt, normalAt, uuidv7, stampOnWrite, newStampClock, writeJournal, readJournal } =
  await importTs('scripts/demo-entry.ts');

const KG_PER_LB = 0.45359237;
const SEED = 20260918;
const MILL = 'yard-mill';
const RIDGE = 'yard-ridge';
const KEEPER = 'Ines';

/** Label, yard, weight of stores [lb], frames of bees, boxes, share on the front edge, and what is special. */
const HIVES = [
  ['A1', MILL, 72, 9],
  ['A2', MILL, 78, 10],
  ['A3', MILL, 108, 11],
  ['A4', MILL, 69, 8],
  ['A5', MILL, 60, 8, 'signs'],
  ['A6', MILL, 48, 9],
  ['A7', MILL, 112, 11, 'never-looked'],
  ['A8', MILL, 72, 8],
  ['B1', MILL, 75, 9],
  ['B2', MILL, 69, 7],
  ['B3', MILL, 99, 10],
  ['B4', MILL, 41, 8],
  ['B5', MILL, 71, 8],
  ['B6', MILL, 58, 7],
  ['B7', MILL, 45, 9],
  ['B8', MILL, 81, 10],
  ['C1', RIDGE, 76, 9],
  ['C2', RIDGE, 50, 7],
  ['C3', RIDGE, 0, 8, 'unweighed'],
  ['C4', RIDGE, 104, 10, 'never-looked'],
  ['C5', RIDGE, 70, 8],
  ['C6', RIDGE, 38, 3, 'small'],
  ['C7', RIDGE, 63, 8],
  ['C8', RIDGE, 52, 9],
  ['C9', RIDGE, 84, 9, 'never-looked'],
  ['C10', RIDGE, 78, 8, 'front-only'],
];
const BUILD = [
  { part: 'solid-floor', count: 1 },
  { part: 'deep-10-wood', count: 2 },
  { part: 'deep-frame-drawn', count: 20 },
  { part: 'inner-cover', count: 1 },
  { part: 'telescoping-cover', count: 1 },
];
/** What an empty hive of it weighed on the keeper's scale [kg], invented near the table's sum. */
const EMPTY_KG = 27.6;
const BEE_KG = 0.00012;
const BEES_PER_FRAME = 1900;
const POLLEN_KG = 1.5;

const key = keyOf(SEED, 'demo', KEEPER);
let clock = newStampClock('demo0001');
let written = 0;
const records = [];

function put(yard, kind, date, body, time = '14:00') {
  const wall = Date.parse(`${date}T${time}:00Z`) + written * 7;
  const next = stampOnWrite(clock, wall);
  clock = next.clock;
  const random = Uint8Array.from({ length: 10 }, (_, i) => Math.floor(uniformAt(key, written, i) * 256));
  records.push({ id: uuidv7(wall, random), yard, kind, at: { date, time, zone: '-05:00' }, by: KEEPER, seen: next.stamp, body });
  written++;
}
/** To the half pound of the keeper's scale [kg], as the journal keeps it: in grams. */
const half = (kg) => Math.round((Math.round((kg / KG_PER_LB) * 2) / 2) * KG_PER_LB * 1000) / 1000;
const noise = (i, k, sd) => sd * normalAt(key, 1000 + i, k);

put(MILL, 'yard', '2026-05-02', { name: 'Mill yard', latDeg: 53.9, lonDeg: -101.2, elevM: 265, exchangeWith: [] });
put(RIDGE, 'yard', '2026-05-02', { name: 'Ridge yard', latDeg: 53.7, lonDeg: -101.4, elevM: 280, exchangeWith: [] });
for (const [settingKey, value] of [
  ['units', 'ca'],
  ['certaintyFrac', 0.95],
  ['sugarKg', 100],
  ['feeders', [{ type: 'top-feeder', count: 8, litres: 8 }]],
  ['crossYards', false],
  ['lookDays', 30],
  ['ownRule', { grossKg: 54.4, colonies: 70, starved: 6, winters: 4 }],
])
  put('*', 'setting', '2026-05-02', { key: settingKey, value });
put(MILL, 'part-weighed', '2026-05-03', { parts: BUILD, massKg: EMPTY_KG });
HIVES.forEach(([label, yard], i) => {
  const id = label.toLowerCase();
  put(yard, 'stand', '2026-05-03', { stand: `stand-${id}`, row: label[0], place: Number(label.slice(1)) });
  put(yard, 'hive', '2026-05-03', { hive: `hive-${id}`, label, stand: `stand-${id}` });
  put(yard, 'build', '2026-05-03', { hive: `hive-${id}`, parts: BUILD });
  const late = label === 'C6' || label === 'B2';
  put(yard, 'colony-begun', late ? '2026-06-20' : '2026-05-04', {
    colony: `colony-${id}`,
    hive: `hive-${id}`,
    how: late ? 'split' : 'unknown',
    ...(late ? { parents: [`colony-${label === 'C6' ? 'c5' : 'b1'}`] } : {}),
  });
  if (!late) put(yard, 'queen', '2026-05-16', { colony: `colony-${id}`, state: 'laying', bornYear: i % 3 === 0 ? 2026 : 2025 });
  if (late) put(yard, 'queen', '2026-07-05', { colony: `colony-${id}`, state: 'laying', bornYear: 2026 });
});
put(MILL, 'split', '2026-06-20', { from: 'colony-b1', into: 'colony-b2', frames: 4 });
put(RIDGE, 'split', '2026-06-20', { from: 'colony-c5', into: 'colony-c6', frames: 3 });
put(MILL, 'bloom', '2026-05-24', { plant: 'willow', stage: 'full' });
for (const label of ['A3', 'A8', 'B3', 'C1', 'C4']) {
  const hive = `hive-${label.toLowerCase()}`;
  const yard = label[0] === 'C' ? RIDGE : MILL;
  put(yard, 'super', '2026-06-22', { hive, change: 'on', part: 'medium-10-wood', count: 1 });
  put(yard, 'super', '2026-08-20', { hive, change: 'off', part: 'medium-10-wood', count: 1 });
}
put(MILL, 'look', '2026-07-18', { colony: 'colony-a2', brood: 'clean' });
put(MILL, 'look', '2026-07-18', { colony: 'colony-b8', brood: 'clean' });
put(MILL, 'bank-lot', '2026-07-20', {
  lot: 'clover',
  frame: 'deep',
  count: 6,
  massKg: 3.45,
  from: 'colony-a2',
  crop: 'clover',
  looked: '2026-07-18',
  strips: false,
});
put(MILL, 'bank-lot', '2026-08-08', {
  lot: 'alfalfa',
  frame: 'deep',
  count: 4,
  massKg: 3.2,
  from: 'colony-b8',
  crop: 'alfalfa',
  looked: '2026-07-18',
  strips: false,
});
put(MILL, 'kit-count', '2026-08-20', { item: 'deep-frame-drawn', count: 0, unit: 'frames' });
for (const [label, mites] of [
  ['A1', 2],
  ['A6', 5],
  ['B4', 1],
  ['B7', 4],
]) {
  put(MILL, 'wash', '2026-08-06', { colony: `colony-${label.toLowerCase()}`, bees: 300, mites, method: 'alcohol' });
}
for (const [label, mites] of [
  ['C2', 3],
  ['C8', 6],
])
  put(RIDGE, 'wash', '2026-08-07', { colony: `colony-${label.toLowerCase()}`, bees: 300, mites, method: 'alcohol' });
HIVES.forEach(([label, yard]) => {
  put(yard, 'treatment-in', '2026-08-12', {
    colony: `colony-${label.toLowerCase()}`,
    active: 'formic-acid',
    product: 'strips, label in the shed',
    lot: 'invented 11',
  });
  put(yard, 'treatment-out', '2026-08-26', { colony: `colony-${label.toLowerCase()}`, active: 'formic-acid' });
});
put(MILL, 'feed', '2026-08-28', { colony: 'colony-b2', what: 'syrup', event: 'taken', sugarKg: 4, ratio: '2:1', basis: 'mass' });
put(RIDGE, 'hive', '2026-06-24', { hive: 'hive-c11', label: 'C11' });
put(RIDGE, 'build', '2026-06-24', { hive: 'hive-c11', parts: BUILD });
put(RIDGE, 'colony-begun', '2026-06-24', { colony: 'colony-c11', hive: 'hive-c11', how: 'swarm' });
put(RIDGE, 'colony-ended', '2026-08-30', { colony: 'colony-c11', how: 'died' });

HIVES.forEach(([label, yard, storesLb, frames, special], i) => {
  const id = label.toLowerCase();
  const colony = `colony-${id}`;
  const day = yard === MILL ? '2026-09-17' : '2026-09-18';
  const brood = special === 'signs' ? 'signs' : special === 'never-looked' ? null : i % 7 === 6 ? 'not-looked' : 'clean';
  const counted = { count: frames, unit: 'frames', counting: 'covered' };
  const capped = Math.max(0, Math.round((storesLb * KG_PER_LB) / 3.1 - 2));
  const top = Math.min(9, Math.ceil(capped * 0.7));
  if (brood !== null) {
    put(yard, 'look', yard === MILL ? '2026-09-12' : '2026-09-13', {
      colony,
      bees: counted,
      ...(special === 'unweighed' || i % 4 === 3
        ? {}
        : {
            capped: [
              { frame: 'deep', count: top, where: 'top' },
              ...(capped > top ? [{ frame: 'deep', count: capped - top, where: 'below' }] : []),
            ],
          }),
      emptyCombs: [{ frame: 'deep', count: Math.max(2, 20 - capped - frames) }],
      brood,
    });
  }
  if (special === 'unweighed') return;
  const grossKg = EMPTY_KG + storesLb * KG_PER_LB + frames * BEES_PER_FRAME * BEE_KG + POLLEN_KG + noise(i, 0, 0.7);
  const share = 0.485 + noise(i, 1, 0.02);
  const front = half(grossKg * share * 0.985);
  const rear = half(grossKg * (1 - share) * 0.985);
  put(
    yard,
    'weighing',
    day,
    {
      hive: `hive-${id}`,
      frontKg: front,
      ...(special === 'front-only' ? {} : { rearKg: rear }),
      scale: 'hand-scale',
      stepKg: 0.227,
      liftM: 0.006,
    },
    `${String(9 + Math.floor(i / 4)).padStart(2, '0')}:${String((i % 4) * 14 + 5).padStart(2, '0')}`,
  );
});

const text = writeJournal({ records, unread: [] });
const back = readJournal(text);
if (back.unread.length > 0)
  throw new Error(`make-demo: line ${back.unread[0].line} cannot be read back: ${JSON.stringify(back.unread[0].why)}`);
const file = join(root, 'demo/journal.jsonl');
if (process.argv.includes('--check')) {
  if (readFileSync(file, 'utf8') !== text) {
    console.error('stale: demo/journal.jsonl (run node scripts/make-demo.mjs)');
    process.exitCode = 1;
  }
} else writeFileSync(file, text);
