import type { Colony, Fact, Happening, Hive, Holding, PartCount } from '../holding/index.ts';
import { matterParameters, readBuild, storesPerSugarKg, syrup } from '../matter/index.ts';
import type { BadInput } from '../result/index.ts';
import { beesOf, type CappedFrames, frameNamed, type StoresAnswer, type StoresInput, stores } from '../stores/index.ts';
import { planParameters } from '../tables/parameters-plan.gen.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import type { Build } from '../tables/parts.ts';
import { standardBuild } from '../tables/parts.ts';
import { isoDateOf } from '../units/index.ts';
import type { StoresDoubt } from '../winter/index.ts';
import { type Gross, grossOf, type WeighingWays } from './gross.ts';

/** What is known of one colony from its records. */
export interface Evidence {
  readonly colony: Colony;
  readonly hive: Hive;
  readonly build: Build;
  readonly buildAssumed: boolean;
  readonly gross: Gross | null;
  readonly weighedDay: number | null;
  readonly look: Fact<'look'> | null;
  /** Last look that counted capped frames, whatever moved since; a later look at the brood alone does not undo it. */
  readonly counts: Fact<'look'> | null;
  readonly stores: StoresAnswer | null;
  /** What was recorded and cannot be, and is therefore not used. */
  readonly refused: readonly BadInput[];
  /** What went in and out since the weighing: feed and combs [kg of stores], each with half of it as error for feed. */
  readonly sinceKg: number;
  readonly sinceSdKg: number;
  readonly bees: number;
  readonly beesSdFrac: number;
}

/** Reads one colony's records into what it holds; `stores` is null where nothing was weighed, hefted or counted. */
export function evidenceOf(colony: Colony, of: { hive: Hive; holding: Holding; ways: WeighingWays; today: number }): Evidence {
  const { hive, holding, ways, today } = of;
  const weighing = hive.weighings.at(-1) ?? null;
  const recorded = weighing?.parts ?? hive.builds.at(-1)?.parts ?? null;
  const buildRead = recorded === null ? null : readBuild(recorded);
  const parts = buildRead?.ok === false ? null : recorded;
  const build = ownWeights(parts ?? standardBuild(['deep', 'deep'], 10), holding);
  const weighed = weighing === null ? null : grossOf(weighing, ways);
  const gross = weighed?.ok ? weighed.value : null;
  const looks = colony.looks.filter((one) => today - one.day <= planParameters.lookGoodDays.value);
  const look = looks.at(-1) ?? null;
  const counts = looks.filter((one) => one.capped !== undefined).at(-1) ?? null;
  const weighedAt = gross === null ? null : weighing;
  const counted = counts === null || movedBetween(colony, counts, weighedAt) ? null : counts;
  const bees = colony.looks.filter((one) => one.bees !== undefined).at(-1) ?? null;
  const weighedDay = weighedAt?.day ?? null;
  const knownAt = weighedAt ?? counted;
  const input = storesInput({ colony, build, gross, day: knownAt?.day ?? today, knownAt: knownAt, counted, bees, holding, parts });
  const answer = knownAt === null ? null : stores(input);
  const since = knownAt === null ? { kg: 0, sdKg: 0 } : changesSince(colony, knownAt);
  const facts = readBuild(build);
  if (!facts.ok) throw new Error(`evidenceOf: a build that was read is refused: ${JSON.stringify(facts.error)}`);
  const count = beesOf(facts.value, input);
  return {
    colony,
    hive,
    build,
    buildAssumed: parts === null,
    gross,
    weighedDay,
    look,
    counts,
    stores: answer?.ok ? answer.value : null,
    refused: [buildRead, weighed, answer].flatMap((one) => (one !== null && !one.ok ? [one.error] : [])),
    sinceKg: since.kg,
    sinceSdKg: since.sdKg,
    bees: count.count,
    beesSdFrac: count.count === 0 ? 0 : count.sdKg / count.massKg,
  };
}

/** The keeper's own part weights in the lines of a build; a single part weighed beats the table. */
function ownWeights(parts: readonly PartCount[], holding: Holding): Build {
  return parts.map(({ part, count }) => {
    const own = holding.partWeights.filter((w) => w.parts.length === 1 && w.parts[0]!.part === part).at(-1);
    return own === undefined ? { part, count } : { part, count, massKg: own.massKg / own.parts[0]!.count };
  });
}

function sameParts(a: readonly PartCount[], b: readonly PartCount[]): boolean {
  const text = (parts: readonly PartCount[]) =>
    parts
      .map(({ part, count }) => `${count} ${part}`)
      .sort()
      .join('+');
  return text(a) === text(b);
}

/** Whether one thing happened after another: by its instant, and among equal ones by the ids, which are given in order. */
export function isAfter(a: Happening, b: Pick<Happening, 'minute' | 'record'>): boolean {
  return a.minute > b.minute || (a.minute === b.minute && a.record > b.record);
}

/** Combs moved after the count and before the weighing: then the two do not speak of the same combs. */
function movedBetween(colony: Colony, counts: Happening, weighing: Happening | null): boolean {
  return weighing !== null && colony.moves.some((move) => isAfter(move, counts) && !isAfter(move, weighing));
}

function storesInput(of: {
  colony: Colony;
  build: Build;
  gross: Gross | null;
  day: number;
  knownAt: Happening | null;
  counted: Fact<'look'> | null;
  bees: Fact<'look'> | null;
  holding: Holding;
  parts: readonly PartCount[] | null;
}): StoresInput {
  const { colony, build, gross, day, knownAt, counted, bees, holding, parts } = of;
  const empty = parts === null ? undefined : holding.partWeights.filter((w) => w.parts.length > 1 && sameParts(w.parts, parts)).at(-1);
  const capped: CappedFrames[] = (counted?.capped ?? []).map(({ frame, count, where }) => ({ frame, count, where }));
  for (const { frame, count } of counted?.partFull ?? [])
    capped.push({ frame, count, where: 'top', fullFrac: planParameters.partFullFrac.value });
  const syrup = colony.feeds.filter(
    (feed) =>
      feed.what === 'syrup' &&
      (knownAt === null || !isAfter(feed, knownAt)) &&
      day - feed.day <= storesParameters.dryingWindowDays.value &&
      takenSugarKg(feed) > 0,
  );
  return {
    build,
    date: isoDateOf(day),
    ...(gross === null ? {} : { grossKg: gross.kg, grossSdKg: Math.hypot(gross.sharedSdKg, gross.ownSdKg) }),
    ...(empty === undefined ? {} : { emptyHive: { massKg: empty.massKg } }),
    ...(bees?.bees === undefined ? {} : beesCounted(bees.bees)),
    ...(counted === null ? {} : { cappedFrames: capped }),
    ...(counted?.pollenFrames === undefined ? {} : { pollenFrames: counted.pollenFrames }),
    ...(syrup.length === 0 ? {} : { syrupGiven: syrup.map((feed) => ({ date: isoDateOf(feed.day), sugarKg: takenSugarKg(feed) })) }),
  };
}

/** A look's count of bees, in the unit it was counted in. */
function beesCounted({ count, unit, counting }: NonNullable<Fact<'look'>['bees']>) {
  return { counting, ...(unit === 'seams' ? { seamsOfBees: count } : { framesOfBees: count }) };
}

/** Sugar of a feed that went into the hive [kg]: as recorded, or from its litres and strength; 0 for one that was left or refused. */
export function takenSugarKg(feed: Fact<'feed'>): number {
  if (feed.event === 'left' || feed.event === 'refused' || feed.event === 'feeder-on') return 0;
  if (feed.sugarKg !== undefined) return feed.sugarKg;
  if (feed.what === 'candy') return (feed.massKg ?? 0) / (1 + matterParameters.candyWaterPerSugarFrac.value);
  if (feed.litres === undefined) return 0;
  const made = syrup({ ratio: feed.ratio ?? '2:1', basis: feed.basis ?? 'mass', volumeL: feed.litres });
  return made.ok ? made.value.sugarKg : 0;
}

/** Stores that came and went after a day: syrup and candy taken, combs swapped. */
function changesSince(colony: Colony, since: Happening): { kg: number; sdKg: number } {
  let kg = 0;
  let variance = 0;
  for (const feed of colony.feeds) {
    if (!isAfter(feed, since)) continue;
    const perKg = storesPerSugarKg(storesParameters.syrupSugarFrac.value);
    const sugarKg = takenSugarKg(feed);
    kg += sugarKg * perKg.low;
    variance += (sugarKg * (perKg.high - perKg.low) * planParameters.feedSinceSdFrac.value) ** 2;
  }
  for (const move of colony.moves) {
    if (!isAfter(move, since)) continue;
    const part = frameNamed(move.frame);
    if (part === undefined) continue;
    const netKg = move.count * Math.max(0, (move.massKg ?? part.massKg + part.cappedNetKg) - part.massKg);
    kg += move.direction === 'into' ? netKg : -netKg;
    variance += (planParameters.combSinceSdFrac.value * netKg) ** 2;
  }
  return { kg, sdKg: Math.sqrt(variance) };
}

/** The doubt about what a colony holds, by whose error it is; tare and scale are shared with other hives. */
export function doubtOf(evidence: Evidence): StoresDoubt {
  const { stores: answer, gross } = evidence;
  if (answer === null) {
    return { tare: { key: 'none', sdKg: 0 }, scale: { key: 'none', sdKg: 0 }, own: { sdKg: 0 }, beeKg: 0 };
  }
  const parts = answer.errorParts;
  const totalVar = answer.sdKg ** 2;
  // The shared part of the scale's error in the proportion in which it entered the weighing.
  const weighingVar = gross === null ? 0 : gross.sharedSdKg ** 2 + gross.ownSdKg ** 2;
  const sharedFrac = weighingVar === 0 ? 0 : (gross!.sharedSdKg ** 2 / weighingVar) * parts.scaleKg ** 2;
  const ownVar = Math.max(0, totalVar - parts.tareKg ** 2 - sharedFrac - parts.beesKg ** 2) + evidence.sinceSdKg ** 2;
  return {
    tare: { key: answer.tare.buildKey, sdKg: parts.tareKg },
    scale: { key: gross?.scale ?? 'none', sdKg: Math.sqrt(sharedFrac) },
    own: { sdKg: Math.sqrt(ownVar) },
    beeKg: answer.bees.count === 0 || answer.bees.sdKg === 0 ? 0 : parts.beesKg / (answer.bees.count * evidence.beesSdFrac),
  };
}
