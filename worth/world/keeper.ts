import { type Climate, climates } from './climates.ts';
import { LIFT_DAYS, type TrueUse, trueUse, type Year, yearOf } from './colony.ts';
import { type WorldKind, worldKinds } from './kinds.ts';
import { type Dice, diceOf } from './random.ts';
import { weatherOf } from './weather.ts';

/** One hive on 1 September: what is, and what its keeper saw. */
export interface WorldHive {
  readonly label: string;
  readonly is: {
    readonly storesKg: number;
    readonly bees: number;
    readonly grossKg: number;
    readonly use: TrueUse;
    /** More than this it does not hold [kg of stores]. */
    readonly roomKg: number;
    /** Syrup it takes [kg of sugar a day]. */
    readonly uptakeKgPerDay: number;
    /** Candy that goes on in late autumn at most [kg of sugar]. */
    readonly candyKg: number;
  };
  readonly seen: {
    readonly frontKg: number;
    readonly rearKg: number;
    readonly framesOfBees: number;
    readonly cappedFrames: number;
  };
  /** What the same scale showed at both edges at lift number `k`, had the hive got so much in all by then [kg of stores]. */
  lifted(k: number, storesKg: number): { readonly frontKg: number; readonly rearKg: number };
}

export interface WorldKeeper {
  readonly id: number;
  readonly kind: WorldKind;
  readonly climate: Climate;
  readonly year: Year;
  readonly hives: readonly WorldHive[];
  /** Empty hive as the keeper weighed one [kg]; null where none was. */
  readonly emptyHiveKg: number | null;
  /** Stores that 1 kg of sugar became this autumn [kg]. */
  readonly storesPerSugar: number;
  /** What a swapped comb really gained against what was planned. */
  readonly combFactor: number;
}

/** Mass of a wooden two-box hive with drawn combs and covers, middle of the keepers [kg]; invented near a published component table. */
const EMPTY_KG = 26.5;
const BEE_KG = 0.000125;
const BEES_PER_FRAME = 1800;
/** Sealed honey on a deep comb [kg]. */
const COMB_KG = 2.6;

/** Keeper number `id` of the study with that seed; worlds and climates are dealt in turn so that all are equally many. */
export function keeperOf(id: number, seed: number): WorldKeeper {
  const dice = diceOf(`${seed}/${id}`);
  const kind = worldKinds[id % worldKinds.length] as WorldKind;
  const climate = climates[Math.floor(id / worldKinds.length) % climates.length] as Climate;
  const year = yearOf(weatherOf(climate, kind, dice), dice);
  const emptyKg = EMPTY_KG + kind.tareSdKg * dice.normal();
  const scaleGain = 1 + 0.015 * dice.normal();
  const board = dice.uniform() < 0.3 ? 0.93 : 1;
  const level = dice.factor(0.12);
  const richness = dice.factor(0.2);
  const count = 10 + Math.floor(6 * dice.uniform());
  const hives = Array.from({ length: count }, (_, i) =>
    hiveOf(`H${i + 1}`, { dice, kind, year, emptyKg, scaleGain, board, level, richness, climate }),
  );
  return {
    id,
    kind,
    climate,
    year,
    hives,
    emptyHiveKg: dice.uniform() < kind.tareKnownFrac ? emptyKg + 0.8 * dice.normal() : null,
    storesPerSugar: 1.03 * dice.factor(0.06),
    combFactor: dice.factor(0.08),
  };
}

interface Shared {
  readonly dice: Dice;
  readonly kind: WorldKind;
  readonly climate: Climate;
  readonly year: Year;
  readonly emptyKg: number;
  readonly scaleGain: number;
  /** What the hook on a landing board leaves of the front reading. */
  readonly board: number;
  readonly level: number;
  readonly richness: number;
}

function hiveOf(label: string, of: Shared): WorldHive {
  const { dice } = of;
  const bees = Math.max(6000, Math.min(45_000, 19_000 * dice.factor(0.32)));
  const storesKg = Math.max(2, Math.min(38, 16 * of.richness * (bees / 19_000) ** 0.3 * dice.factor(0.35)));
  const use = trueUse({ bees, appetite: of.level * dice.factor(0.22), unreachedKg: 1.4 * dice.factor(0.45) }, of.year, of.kind);
  const grossKg = of.emptyKg + 0.9 * dice.normal() + storesKg + bees * BEE_KG + Math.max(0, 1.5 + 0.7 * dice.normal());
  const share = 0.5 + 0.03 * dice.heavy(5);
  // frost inside, ice and snow outside, and the hand in the cold: drawn now, so that what an arm does changes no draw
  const lifts = LIFT_DAYS.map((_, k) => ({
    iceKg: (k === 0 ? 1.5 : 0.4) * dice.uniform(),
    hands: [dice.heavy(4), dice.heavy(4)] as const,
  }));
  const lifted = (k: number, givenKg: number) => {
    const { iceKg, hands } = lifts[k] as (typeof lifts)[number];
    const withoutKg = grossKg - storesKg - (bees - (use.beesAtLift[k] ?? bees)) * BEE_KG + iceKg;
    const nowKg = withoutKg + Math.max(0, givenKg - (use.byLiftKg[k] ?? 0));
    const shown = (kg: number, hand: number) => Math.round((kg * of.scaleGain + 0.5 * hand) * 4) / 4;
    return { frontKg: shown(nowKg * share * of.board, hands[0]), rearKg: shown(nowKg * (1 - share), hands[1]) };
  };
  return {
    label,
    is: {
      storesKg,
      bees,
      grossKg,
      use,
      roomKg: 34 * dice.factor(0.12),
      uptakeKgPerDay: 0.9 * (bees / 19_000) ** 0.7 * dice.factor(0.25),
      candyKg: 6,
    },
    lifted,
    seen: {
      frontKg: reading(grossKg * share * of.board, of),
      rearKg: reading(grossKg * (1 - share), of),
      framesOfBees: Math.max(2, Math.min(18, Math.round((bees / BEES_PER_FRAME) * dice.factor(0.17)))),
      cappedFrames: Math.max(0, Math.min(16, Math.round((0.8 * storesKg) / COMB_KG + 0.9 * dice.normal()))),
    },
  };
}

/** What the keeper wrote down [kg]: gain, jerk of the hand, the scale's quarter kilograms, now and then a wrong digit. */
function reading(trueKg: number, { dice, scaleGain, kind }: Shared): number {
  const shown = Math.round((trueKg * scaleGain + 0.5 * dice.heavy(4)) * 4) / 4;
  const slip = dice.uniform() < kind.misreadFrac ? (dice.uniform() < 0.5 ? -5 : 5) : 0;
  return Math.max(2, shown + slip);
}
