import { type StoresAnswer, type StoresInput, stores } from '../src/stores/index.ts';
import { storesParameters } from '../src/tables/parameters-stores.gen.ts';
import { framePart, standardBuild } from '../src/tables/parts.ts';
import type { Check } from './check.ts';

const LB = 0.45359237;
const DOUBLE = standardBuild(['deep', 'deep'], 10);
const SINGLE = standardBuild(['deep'], 10);
const NUC = standardBuild(['deep'], 5);
/** Standard deviations from the 5 % to the 95 % bound of a normal quantity. */
const BOUNDS = 2 * 1.6448536;

function answer(input: StoresInput): StoresAnswer {
  const result = stores(input);
  if (!result.ok) throw new RangeError(`stores refused: ${JSON.stringify(result.error)}`);
  return result.value;
}

/** Every part weighed by the keeper, so that the build's mass is what the source says. */
function buildOf(kg: number): StoresInput['build'] {
  return [
    { part: 'deep-10-wood', count: 2, massKg: (kg - 12) / 2 },
    { part: 'deep-frame-drawn', count: 20, massKg: 0.6 },
  ];
}
const OWN = buildOf(25);
/** One side of the comb in a British standard brood frame [m2]. */
const BRITISH_COMB_M2 = 13.25 * 8 * 0.0254 ** 2;

/** The weight at which a hive nobody counted bees or pollen in is thought to hold nothing [kg]. */
function emptyGrossKg(build: StoresInput['build']): number {
  let [low, high] = [10, 60];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (answer({ build, grossKg: middle }).storesKg > 0) high = middle;
    else low = middle;
  }
  return high;
}

/** Nothing but the build: no bees, no pollen. */
const BARE: Omit<StoresInput, 'build'> = { bees: 0, pollenFrames: 0 };

const arithmetic = (name: string, expected: number, ours: () => number, unit = 'kg'): Check => ({
  name,
  unit,
  expected,
  within: Math.abs(expected) * 0.01,
  why: 'the same sum by hand; one per cent for rounding',
  source: 'worked by hand from the figures of data/parameters/stores.csv and data/parts.csv',
  mark: 'ARITHMETIC',
  ours,
});

const PUBLISHED: Check[] = [
  {
    name: 'double of 135 lb: stores',
    unit: 'kg',
    expected: 70 * LB,
    within: 2.5 * LB,
    why: 'the source gives steps of 5 lb',
    source: 'capa-tare: 135 lb gross, 70 lb stores',
    mark: 'READ-2',
    usedForSetting: true,
    ours: () => answer({ build: DOUBLE, grossKg: 135 * LB }).storesKg,
  },
  {
    name: 'single of 95 lb: stores',
    unit: 'kg',
    expected: 55 * LB,
    within: 2.5 * LB,
    why: 'the source gives steps of 5 lb',
    source: 'capa-tare: 95 lb gross, 55 lb stores',
    mark: 'READ-2',
    usedForSetting: true,
    ours: () => answer({ build: SINGLE, grossKg: 95 * LB }).storesKg,
  },
  {
    name: 'gross weight at which a double put together from its parts, with bees and pollen, holds no stores',
    unit: 'lb',
    expected: 65,
    within: 2.5,
    why: 'the source gives steps of 5 lb',
    source: 'capa-tare: 135 lb less 70 lb',
    mark: 'READ-2',
    usedForSetting: true,
    ours: () => emptyGrossKg(DOUBLE) / LB,
  },
  {
    name: 'gross weight at which a single put together from its parts, with bees and pollen, holds no stores',
    unit: 'lb',
    expected: 40,
    within: 2.5,
    why: 'the source gives steps of 5 lb',
    source: 'capa-tare: 95 lb less 55 lb',
    mark: 'READ-2',
    usedForSetting: true,
    ours: () => emptyGrossKg(SINGLE) / LB,
  },
  {
    name: 'double of 25 kg whose hive with bees weighs 15 kg: stores',
    unit: 'kg',
    expected: 10,
    within: 0.001,
    why: 'a subtraction: the hive is given, not reckoned',
    source: 'attta-140',
    mark: 'ARITHMETIC',
    ours: () => answer({ ...BARE, build: buildOf(15), grossKg: 25 }).storesKg,
  },
  {
    name: '70 lb of stores in ten deep frames',
    unit: 'lb',
    expected: 70,
    within: 5,
    why: 'the source rounds to 5 lb and 0.5 lb a frame',
    source: 'full-frames: 70 lb = 10 deep',
    mark: 'READ',
    ours: () => answer({ build: SINGLE, cappedFrames: [{ frame: 'deep', count: 10, where: 'top' }] }).storesKg / LB,
  },
  {
    name: '60 lb of stores in 15 medium frames',
    unit: 'lb',
    expected: [60, 70],
    within: 0,
    why: 'at least 60; another source gives 70',
    source: 'medium-fifteen; full-frames',
    mark: 'READ',
    ours: () =>
      (answer({
        build: standardBuild(['medium', 'medium'], 10),
        cappedFrames: [{ frame: 'medium', count: 15, where: 'top' }].flatMap(({ frame }) => [
          { frame, count: 10, where: 'top' as const },
          { frame, count: 5, where: 'below' as const },
        ]),
      }).contact!.kg /
        10) *
      (15 / LB),
  },
  {
    name: 'nine British standard brood combs full of honey, at what our deep comb holds for its area',
    unit: 'lb',
    expected: 45,
    within: 4.5,
    why: 'printed as whole pounds a frame: half a pound on each of nine',
    source: 'bbka-216: 5 lb a frame, nine full frames; a comb of 13.25 by 8 in from memory',
    mark: 'MEMORY',
    ours: () =>
      (answer({ build: SINGLE, cappedFrames: [{ frame: 'deep', count: 9, where: 'top' }] }).contact!.kg * BRITISH_COMB_M2) /
      framePart('deep', 'drawn').combAreaM2 /
      LB,
  },
  {
    name: 'a gallon of 2:1 still wet: water the bees have to dry off',
    unit: 'lb',
    expected: 11.07 - 9.0,
    within: 0.01,
    why: 'last printed digit',
    source: 'ripe-solids: 11.07 lb of syrup, 9.00 lb of stores',
    mark: 'DERIVED',
    ours: () =>
      (answer({ ...BARE, build: OWN, grossKg: 60 }).storesKg -
        answer({
          ...BARE,
          build: OWN,
          grossKg: 60,
          date: '2026-09-10',
          syrupGiven: [{ date: '2026-09-10', sugarKg: 7.38 * LB, waterKg: 3.69 * LB }],
        }).storesKg) /
      LB,
  },
  {
    name: 'syrup given without its water: sugar share',
    unit: '1',
    expected: 0.667,
    within: 0.005,
    why: 'last printed digit',
    source: 'fall-syrup: 67 %; 2:1 by mass is 66.7 %',
    mark: 'READ',
    ours: () => storesParameters.syrupSugarFrac.value,
  },
  {
    name: 'bees on an occupied deep comb',
    unit: 'bees',
    expected: 1400,
    within: 50,
    why: 'printed to hundreds',
    source: 'burgett-burikam: Simpson 1969',
    mark: 'READ',
    ours: () => answer({ build: DOUBLE, grossKg: 50, framesOfBees: 1, counting: 'occupied' }).bees.count,
  },
  {
    name: 'bees on a covered deep comb',
    unit: 'bees',
    expected: 1900,
    within: 50,
    why: 'printed to hundreds',
    source: 'burgett-burikam: Kauffeld 1975',
    mark: 'READ',
    ours: () => answer({ build: DOUBLE, grossKg: 50, framesOfBees: 1 }).bees.count,
  },
  {
    name: 'bees on a packed deep comb',
    unit: 'bees',
    expected: 2430,
    within: 50,
    why: 'recalled',
    source: 'burgett-burikam-packed',
    mark: 'MEMORY',
    ours: () => answer({ build: DOUBLE, grossKg: 50, framesOfBees: 1, counting: 'packed' }).bees.count,
  },
  {
    name: 'bees on a covered deep comb: mass',
    unit: 'kg',
    expected: [0.21, 0.25],
    within: 0,
    why: '1,900 bees at 0.113 to 0.130 g',
    source: 'burgett-burikam; bees per pound 3,500 to 4,000',
    mark: 'DERIVED',
    ours: () => answer({ build: DOUBLE, grossKg: 50, framesOfBees: 1 }).bees.massKg,
  },
  {
    name: 'frames of bees where nobody counted',
    unit: 'frames',
    expected: [7.5, 10],
    within: 0,
    why: 'two recommendations',
    source: 'ontario-frames: 7 to 8 ideal; Minnesota 10 or more',
    mark: 'READ',
    usedForSetting: true,
    ours: () => answer({ build: DOUBLE, grossKg: 50 }).bees.count / 1900,
  },
  {
    name: 'a comb full of brood: net mass',
    unit: 'kg',
    expected: 6370 * 0.8 * 0.14e-3,
    within: 0.05,
    why: 'fill and mass of brood are rounded',
    source: 'brood-arithmetic',
    mark: 'DERIVED',
    usedForSetting: true,
    ours: () => storesParameters.broodFrameKg.value,
  },
];

/** 9 frames x 1900 bees x 0.12 g, 20 combs x 0.075 kg: what comes off a double of which only the weight is known. */
const SUMS: Check[] = [
  arithmetic(
    'weight of a double: bees and pollen taken off',
    9 * 1900 * 0.00012 + 20 * 0.075,
    () => answer({ ...BARE, build: OWN, grossKg: 50 }).storesKg - answer({ build: OWN, grossKg: 50 }).storesKg,
  ),
  arithmetic('five-frame hive: bees where nobody counted', 0.7 * 5 * 1900, () => answer({ build: NUC, grossKg: 22 }).bees.count, 'bees'),
  arithmetic(
    'two combs of pollen and three of brood taken off',
    2 * 0.8 + 3 * 0.7,
    () =>
      answer({ ...BARE, build: OWN, grossKg: 50 }).storesKg -
      answer({ ...BARE, build: OWN, grossKg: 50, pollenFrames: 2, broodFrames: 3 }).storesKg,
  ),
  arithmetic(
    'count of a whole double: six capped combs and fourteen others',
    6 * 3 + 14 * 0.25,
    () => answer({ build: OWN, cappedFrames: [{ frame: 'deep', count: 6, where: 'below' }] }).storesKg,
  ),
  arithmetic(
    'count of the top box only: the other box taken as partly full',
    6 * 3 + 4 * 0.25 + 10 * 0.3 * 3,
    () => answer({ build: OWN, cappedFrames: [{ frame: 'deep', count: 6, where: 'top' }] }).storesKg,
  ),
  arithmetic(
    'syrup four days old: water left of 10 kg of sugar',
    10 * (0.5 - 0.18 / 0.82) * Math.exp(-4 / 4.7),
    () =>
      answer({ ...BARE, build: OWN, grossKg: 60 }).storesKg -
      answer({ ...BARE, build: OWN, grossKg: 60, date: '2026-09-14', syrupGiven: [{ date: '2026-09-10', sugarKg: 10, waterKg: 5 }] })
        .storesKg,
  ),
  arithmetic(
    'syrup fourteen days old still counts',
    60 * 0.2805 * Math.exp(-14 / 4.7),
    () =>
      answer({ ...BARE, build: OWN, grossKg: 75 }).storesKg -
      answer({ ...BARE, build: OWN, grossKg: 75, date: '2026-09-24', syrupGiven: [{ date: '2026-09-10', sugarKg: 60, waterKg: 30 }] })
        .storesKg,
  ),
  {
    name: 'syrup fifteen days old is ripe',
    unit: 'kg',
    expected: 0,
    within: 1e-9,
    why: 'a rule',
    source: 'syrup of the last 14 days is taken into account',
    mark: 'PRACTICE',
    ours: () =>
      answer({ ...BARE, build: OWN, grossKg: 60 }).storesKg -
      answer({ ...BARE, build: OWN, grossKg: 60, date: '2026-09-25', syrupGiven: [{ date: '2026-09-10', sugarKg: 60, waterKg: 30 }] })
        .storesKg,
  },
  {
    name: 'syrup three days old: weigh again on the fourth',
    unit: 'day of month',
    expected: 14,
    within: 0,
    why: 'a rule',
    source: 'a weight within 3 days of syrup is provisional',
    mark: 'PRACTICE',
    ours: () =>
      Number(
        answer({
          build: OWN,
          grossKg: 60,
          date: '2026-09-13',
          syrupGiven: [{ date: '2026-09-10', sugarKg: 5 }],
        }).provisional?.weighAgainOn.slice(8),
      ),
  },
  arithmetic('error of a build nobody weighed', 2.5, () => answer({ build: DOUBLE, grossKg: 60 }).errorParts.tareKg),
  arithmetic(
    'error of a build of which one hive was weighed empty',
    Math.hypot(0.5, 0.04 * 25),
    () => answer({ build: DOUBLE, grossKg: 60, emptyHive: { massKg: 25 } }).errorParts.tareKg,
  ),
  arithmetic('one hive of a build against another', 0.04 * 25, () => answer({ build: OWN, grossKg: 60 }).errorParts.hiveKg),
  arithmetic(
    'build of which each part was weighed',
    Math.hypot(2 * 0.1, 20 * 0.1),
    () => answer({ build: OWN, grossKg: 60 }).errorParts.tareKg,
  ),
  // step, scatter, scale, lift, hook and height of the centre at 60 kg: two readings of 29.65 kg on arms of 0.505 m, span 0.4991 m
  arithmetic(
    'error of both edges where none was given',
    Math.hypot(0.2066, 1.288, 0.54, 0.505, 0.84, 0.2024),
    () => answer({ build: OWN, grossKg: 60 }).errorParts.scaleKg,
  ),
  arithmetic(
    'error of ten covered frames of bees',
    0.00012 * Math.hypot(10 * (550 / BOUNDS), 0.5 * 1900, 19000 * (0.035 / BOUNDS / 0.12)),
    () => answer({ build: OWN, grossKg: 60, framesOfBees: 10 }).errorParts.beesKg,
  ),
  arithmetic(
    'error of 20,000 bees given as a number',
    2.4 * Math.hypot(0.15, 0.035 / BOUNDS / 0.12),
    () => answer({ build: OWN, grossKg: 60, bees: 20_000 }).errorParts.beesKg,
  ),
  arithmetic(
    'error of candy judged by eye',
    0.2 * 3,
    () => answer({ build: OWN, grossKg: 60, onHive: { candyKg: 3 } }).errorParts.onHiveKg,
  ),
  arithmetic(
    'error of candy weighed',
    0.1,
    () => answer({ build: OWN, grossKg: 60, onHive: { candyKg: 3, weighed: true } }).errorParts.onHiveKg,
  ),
  arithmetic('error of snow judged by eye', 0.4 * 2, () => answer({ build: OWN, grossKg: 60, snowIceKg: 2 }).errorParts.snowKg),
  arithmetic(
    'error six capped combs share',
    6 * (1.3 / BOUNDS),
    () => answer({ build: OWN, cappedFrames: [{ frame: 'deep', count: 6, where: 'below' }] }).errorParts.lotKg,
  ),
  arithmetic(
    'error of counting six capped combs among twenty',
    Math.hypot(Math.sqrt(6) * 0.3, 0.7 * 3, 14 * (0.4 / BOUNDS)),
    () => answer({ build: OWN, cappedFrames: [{ frame: 'deep', count: 6, where: 'below' }] }).errorParts.framesKg,
  ),
  arithmetic(
    'spread from comb to comb in the top box',
    Math.hypot(6 * (1.3 / BOUNDS), Math.sqrt(6) * 0.3),
    () => answer({ build: OWN, cappedFrames: [{ frame: 'deep', count: 6, where: 'top' }] }).contact!.sdKg,
  ),
];

const FRAME_SPREAD: Check = {
  name: 'one capped comb against another of the lot',
  unit: '1',
  expected: 0.1,
  within: 0.01,
  why: 'our own judgement; nobody has published it',
  source: 'own-judgement-stores',
  mark: 'JUDGEMENT',
  usedForSetting: true,
  ours: () => storesParameters.frameEachSdFrac.value,
};

export const storesChecks: readonly Check[] = [...PUBLISHED, ...SUMS, FRAME_SPREAD];
