import type { Holding, Lot } from '../holding/index.ts';
import type { BankLot, CombLot, ProvisionColony, ProvisionInput, Union } from '../provision/index.ts';
import { cappedNetKg, frameNamed } from '../stores/index.ts';
import { planParameters } from '../tables/parameters-plan.gen.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { type FrameDepth, framePart } from '../tables/parts.ts';
import type { Evidence } from './evidence.ts';
import type { PreparedPlan, ReadyColony } from './prepare.ts';
import type { ColonyOutlook } from './types.ts';

/** What provision is asked, from the lines of the colonies and the holding. */
export function provisionInputOf(
  lines: readonly ColonyOutlook[],
  of: { plan: PreparedPlan; holding: Holding; daysToLastFeeding: number },
): ProvisionInput {
  const { plan, holding } = of;
  const ready = new Map(plan.colonies.map((one) => [one.evidence.colony.id, one]));
  const colonies = lines.flatMap((line) => provisionColony(line, { ready: ready.get(line.colony)!, holding }));
  const { settings } = holding;
  const feeders = settings.feeders?.reduce((sum, feeder) => sum + feeder.count, 0);
  const prices = settings.prices;
  return {
    colonies,
    bank: [...lotsOf(holding), ...inHandOf(holding)],
    shed: shedOf(holding),
    sugarKg: settings.sugarKg ?? 0,
    feeders: feeders ?? lines.length,
    daysToLastFeeding: of.daysToLastFeeding,
    unions: unionsOf(lines, ready),
    ...(prices === undefined ? {} : { prices: pricesOf(prices) }),
    rules: {
      today: plan.setting.today,
      allowLookSteps: true,
      lookDays: settings.lookDays ?? 30,
      crossYards: settings.crossYards ?? false,
      certaintyFrac: settings.certaintyFrac ?? 0.95,
    },
  };
}

function provisionColony(line: ColonyOutlook, of: { ready: ReadyColony; holding: Holding }): ProvisionColony[] {
  if (line.hasKg === null || line.hasSdKg === null) return [];
  const { evidence } = of.ready;
  const { capped, light } = combsOf(evidence, line.hasKg);
  const never = of.holding.pins.some((pin) => pin.subject === line.colony && pin.rule === 'never-give');
  const stand = evidence.hive.stand === null ? undefined : of.holding.stands.get(evidence.hive.stand);
  const queen = evidence.colony.queens.at(-1)?.state;
  return [
    {
      id: line.colony,
      yard: line.yard,
      bees: line.bees,
      hasKg: line.hasKg,
      hasSdKg: line.hasSdKg,
      needKg: line.needKg,
      looked: line.lookedOn,
      flag: evidence.colony.flag,
      capped,
      emptyCombs: light,
      at: stand === undefined ? null : { row: stand.row, place: stand.place },
      lossCurve: line.lossCurve,
      mayGive: !never && evidence.stores?.weightOnly === false && line.state !== 'set aside',
      tooSmall: line.state === 'too small alone',
      queen: queen === 'seen' || queen === 'laying' ? 'seen' : 'unknown',
      refusesSyrup: evidence.colony.feeds.at(-1)?.event === 'refused',
    },
  ];
}

/**
 * Capped and light combs of a colony by depth. Counted ones where somebody looked; else judged from what it holds, and then only
 * a look makes them real: provision asks for that look before a comb moves.
 */
function combsOf(evidence: Evidence, hasKg: number): { capped: CombLot[]; light: CombLot[] } {
  const frames = evidence.build.flatMap(({ part, count }) => {
    const row = frameNamed(part);
    return row === undefined ? [] : [{ depth: row.depth, count }];
  });
  const { look } = evidence;
  const capped: CombLot[] = [];
  const light: CombLot[] = [];
  for (const { depth, count } of frames) {
    const counted = look?.capped?.filter((one) => frameNamed(one.frame)?.depth === depth).reduce((sum, one) => sum + one.count, 0);
    const row = framePart(depth, 'drawn');
    const guessed = Math.floor((planParameters.cappedGuessFrac.value * hasKg) / row.cappedNetKg);
    const full = Math.min(count - planParameters.lightLeftFrames.value, Math.floor(counted ?? guessed));
    const empty = look?.emptyCombs?.filter((one) => frameNamed(one.frame)?.depth === depth).reduce((sum, one) => sum + one.count, 0);
    const beesOn = Math.ceil(look?.bees?.count ?? planParameters.keptFrames.value);
    const free = Math.max(planParameters.lightLeftFrames.value, Math.floor(empty ?? count - full - Math.min(beesOn, count >> 1)));
    if (full > 0) capped.push(cappedLot(depth, full));
    light.push(lightLot(depth, Math.min(free, count - full)));
  }
  return { capped, light };
}

function cappedLot(depth: FrameDepth, count: number): CombLot {
  const row = framePart(depth, 'drawn');
  return { frame: depth, count, massKg: row.massKg + row.cappedNetKg, massSdKg: cappedNetKg(depth).lotSdKg };
}

function lightLot(depth: FrameDepth, count: number): CombLot {
  const row = framePart(depth, 'drawn');
  return { frame: depth, count, massKg: row.massKg };
}

function lotsOf(holding: Holding): BankLot[] {
  return [...holding.lots.values()].flatMap((lot: Lot) => {
    const depth = lot.frame === null ? undefined : frameNamed(lot.frame)?.depth;
    if (depth === undefined || lot.massKg === null || lot.count <= 0) return [];
    return [
      {
        lot: lot.id,
        yard: lot.yard,
        frame: depth,
        count: lot.count,
        massKg: lot.massKg,
        massSdKg: lotSdKg(depth, lot.massKg),
        looked: lot.looked ?? null,
      },
    ];
  });
}

function inHandOf(holding: Holding): BankLot[] {
  return holding.inHand.flatMap(({ from, frame, count, massKg }, i) => {
    const row = frameNamed(frame);
    const yard = holding.colonies.get(from)?.yard ?? holding.lots.get(from)?.yard;
    if (row === undefined || yard === undefined || count <= 0) return [];
    return [
      {
        lot: `in hand ${i + 1}, from ${from}`,
        yard,
        frame: row.depth,
        count,
        massKg: massKg ?? row.massKg + row.cappedNetKg,
        looked: true,
        inHand: true,
      },
    ];
  });
}

/** One comb of a weighed lot against the lot's mean [kg]: the spread of full combs, in proportion to the honey on them. */
function lotSdKg(depth: FrameDepth, massKg: number): number {
  return storesParameters.frameEachSdFrac.value * Math.max(0, massKg - framePart(depth, 'drawn').massKg);
}

/**
 * Light combs in the shed, by the kit's counts of drawn frames, for the yard that was named first.
 *
 * The kit does not say which colonies they came from: they are used only in a holding that has seen no signs of disease and no colony die.
 */
function shedOf(holding: Holding): BankLot[] {
  const yard = [...holding.yards.keys()][0];
  if (yard === undefined) return [];
  const suspect = [...holding.colonies.values()].some(
    (colony) => colony.looks.some((look) => look.brood === 'signs') || colony.ended?.how === 'died',
  );
  return [...holding.kit.values()].flatMap(({ item, count }) => {
    const row = frameNamed(item);
    if (row === undefined || row.state !== 'drawn' || count < 1) return [];
    return [{ lot: `shed ${item}`, yard, frame: row.depth, count: Math.floor(count), massKg: row.massKg, looked: !suspect }];
  });
}

/** What two colonies would need together: the middle of the bigger one's need scaled by heat, for colonies too small alone. */
function unionsOf(lines: readonly ColonyOutlook[], ready: ReadonlyMap<string, ReadyColony>): Union[] {
  const small = lines.filter((line) => line.state === 'too small alone' && line.hasKg !== null);
  return small.flatMap((from) =>
    lines
      .filter((into) => into.colony !== from.colony && into.yard === from.yard && into.state !== 'set aside' && into.hasKg !== null)
      .map((into) => ({ from: from.colony, into: into.colony, needKg: unionNeedKg(from, into, ready) })),
  );
}

/** Use grows with bees to a power: the model's size law between small and big clusters. */
function unionNeedKg(from: ColonyOutlook, into: ColonyOutlook, ready: ReadonlyMap<string, ReadyColony>): number {
  const reserveKg = ready.get(into.colony)!.prepared.values.reserveKg;
  return reserveKg + (into.needKg - reserveKg) * ((into.bees + from.bees) / into.bees) ** planParameters.unionUseExponent.value;
}

function pricesOf(prices: NonNullable<Holding['settings']['prices']>): NonNullable<ProvisionInput['prices']> {
  const known = prices as Readonly<Record<string, number>>;
  return Object.fromEntries(
    (['sugarPerKg', 'workPerHour', 'honeyPerKg', 'opening'] as const).flatMap((key) =>
      known[key] === undefined ? [] : [[key, known[key]]],
    ),
  );
}
