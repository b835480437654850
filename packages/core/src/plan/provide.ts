import type { Holding, Lot } from '../holding/index.ts';
import type { BankLot, CombLot, ProvisionColony, ProvisionInput, Union } from '../provision/index.ts';
import { queenOf, requeenDay, sizeOf } from '../season/index.ts';
import { cappedNetKg, frameNamed } from '../stores/index.ts';
import { planParameters } from '../tables/parameters-plan.gen.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { type FrameDepth, framePart } from '../tables/parts.ts';
import { winterYearOf } from '../weather/index.ts';
import { handLotName, isLightComb, isShedSuspect, type Reserve, reserveForGaps, shedLotName } from './combs.ts';
import { type Evidence, isAfter, takenSugarKg } from './evidence.ts';
import type { PreparedPlan, ReadyColony } from './prepare.ts';
import type { ColonyOutlook } from './types.ts';

/** What provision is asked, from the lines of the colonies and the holding. */
export function provisionInputOf(
  lines: readonly ColonyOutlook[],
  of: { plan: PreparedPlan; holding: Holding; daysToLastFeeding: number },
): ProvisionInput {
  const { plan, holding } = of;
  const ready = new Map(plan.colonies.map((one) => [one.evidence.colony.id, one]));
  const day = { holding, refused: refusedOn(holding, plan.today), today: plan.today };
  const toUnite = colonyToUnite(plan, holding);
  const colonies = lines.flatMap((line) => provisionColony(line, { ready: ready.get(line.colony)!, toUnite, ...day }));
  const reserve = reserveForGaps(holding);
  const fed = fedOn(holding, plan.today);
  const { settings } = holding;
  const feeders = settings.feeders?.reduce((sum, feeder) => sum + feeder.count, 0);
  const prices = settings.prices;
  return {
    colonies,
    bank: [...lotsOf(holding), ...inHandOf(holding, reserve)],
    shed: shedOf(holding, reserve),
    sugarKg: Math.max(0, (settings.sugarKg ?? 0) - fed.sugarKg),
    feeders: feeders === undefined ? lines.length : Math.max(0, feeders - fed.feeders),
    daysToLastFeeding: of.daysToLastFeeding,
    unions: unionsOf(lines, { ready, toUnite }),
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

/** What the keeper has put off today, as `what colony`: a plan of that day leaves it out. */
function refusedOn(holding: Holding, today: number): (what: string, colony: string) => boolean {
  const refused = new Set(holding.refusals.filter(({ day }) => day === today).map(({ subject, what }) => `${what} ${subject}`));
  return (what, colony) => refused.has(`${what} ${colony}`);
}

/** Sugar and feeders that went out today, in the same walk: they are not there a second time. */
function fedOn(holding: Holding, today: number): { readonly sugarKg: number; readonly feeders: number } {
  let sugarKg = 0;
  let feeders = 0;
  for (const colony of holding.colonies.values()) {
    const feeds = colony.feeds.filter((feed) => feed.day === today);
    for (const feed of feeds) sugarKg += takenSugarKg(feed);
    const last = feeds.filter(({ what }) => what === 'syrup').at(-1);
    if (last !== undefined && last.event !== 'refused' && last.event !== 'left') feeders += 1;
  }
  return { sugarKg, feeders };
}

function provisionColony(
  line: ColonyOutlook,
  of: {
    ready: ReadyColony;
    holding: Holding;
    refused: ReturnType<typeof refusedOn>;
    today: number;
    toUnite: ReturnType<typeof colonyToUnite>;
  },
): ProvisionColony[] {
  if (line.hasKg === null || line.hasSdKg === null) return [];
  const { evidence } = of.ready;
  const combs = combsOf(evidence, line.hasKg);
  const off = (what: string) => of.refused(what, line.colony);
  const pinned = (rule: string) => of.holding.pins.some((pin) => pin.subject === line.colony && pin.rule === rule);
  const shut = isShut(line, of);
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
      capped: shut ? [] : combs.capped,
      emptyCombs: shut || off('get') || pinned('never-get') ? [] : combs.light,
      at: stand === undefined ? null : { row: stand.row, place: stand.place },
      lossCurve: line.lossCurve,
      mayGive: !off('give') && !pinned('never-give') && evidence.stores?.weightOnly === false && line.state !== 'set aside',
      mayUnite: !shut && !off('unite') && !pinned('never-unite'),
      tooSmall: of.toUnite(line, of.ready),
      queen: queen === 'seen' || queen === 'laying' ? 'seen' : 'unknown',
      refusesSyrup: off('syrup') || evidence.colony.feeds.filter(({ what }) => what === 'syrup').at(-1)?.event === 'refused',
      ...(off('candy') ? { candyRimKg: 0 } : {}),
    },
  ];
}

/** A look that the keeper put off today keeps the colony shut, unless it was looked at after all. */
function isShut(line: ColonyOutlook, of: { ready: ReadyColony; refused: ReturnType<typeof refusedOn>; today: number }): boolean {
  return of.refused('look', line.colony) && of.ready.evidence.colony.cleanLook?.day !== of.today;
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
  const look = evidence.counts;
  const capped: CombLot[] = [];
  const light: CombLot[] = [];
  for (const { depth, count } of frames) {
    const counted = look?.capped?.filter((one) => frameNamed(one.frame)?.depth === depth).reduce((sum, one) => sum + one.count, 0);
    const row = framePart(depth, 'drawn');
    const guessed = Math.floor((planParameters.cappedGuessFrac.value * hasKg) / row.cappedNetKg);
    const moved = movedOf(evidence, depth);
    const full = Math.max(
      0,
      Math.min(count - planParameters.lightLeftFrames.value, Math.floor(counted === undefined ? guessed : counted + moved.capped)),
    );
    const empty = look?.emptyCombs?.filter((one) => frameNamed(one.frame)?.depth === depth).reduce((sum, one) => sum + one.count, 0);
    const beesOn = Math.ceil(look?.bees?.count ?? planParameters.keptFrames.value);
    const free = Math.max(
      planParameters.lightLeftFrames.value,
      Math.floor(empty === undefined ? count - full - Math.min(beesOn, count >> 1) : empty + moved.light),
    );
    if (full > 0) capped.push(cappedLot(depth, full));
    light.push(lightLot(depth, Math.min(free, count - full)));
  }
  return { capped, light };
}

/** Combs that came (and, negative, went) since they were counted. */
function movedOf({ colony, counts }: Evidence, depth: FrameDepth): { readonly capped: number; readonly light: number } {
  let [capped, light] = [0, 0];
  for (const move of colony.moves) {
    if (counts === null || !isAfter(move, counts) || frameNamed(move.frame)?.depth !== depth) continue;
    const count = move.direction === 'into' ? move.count : -move.count;
    if (isLightComb(move.frame, move.massKg)) light += count;
    else capped += count;
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

/** Frames on the cart, without those put by for open gaps. None of a colony that has since shown signs of disease is used. */
function inHandOf(holding: Holding, reserve: Reserve): BankLot[] {
  return reserve.inHand.flatMap(({ from, frame, count, massKg }) => {
    const row = frameNamed(frame);
    const yard = holding.colonies.get(from)?.yard ?? holding.lots.get(from)?.yard ?? [...holding.yards.keys()][0];
    if (row === undefined || yard === undefined) return [];
    return [
      {
        lot: handLotName(from, frame),
        yard,
        frame: row.depth,
        count,
        massKg: massKg ?? (isLightComb(frame) ? row.massKg : row.massKg + row.cappedNetKg),
        looked: holding.colonies.get(from)?.flag !== 'signs',
        inHand: true,
      },
    ];
  });
}

/** One comb of a weighed lot against the lot's mean [kg]: the spread of full combs, in proportion to the honey on them. */
function lotSdKg(depth: FrameDepth, massKg: number): number {
  return storesParameters.frameEachSdFrac.value * Math.max(0, massKg - framePart(depth, 'drawn').massKg);
}

/** Light combs in the shed, for the yard that was named first; of a suspect shed they are listed as not looked at. */
function shedOf(holding: Holding, reserve: Reserve): BankLot[] {
  const yard = [...holding.yards.keys()][0];
  if (yard === undefined) return [];
  const suspect = isShedSuspect(holding);
  return (suspect ? [...holding.kit.values()] : reserve.shed).flatMap(({ item, count }) => {
    const row = frameNamed(item);
    if (row === undefined || row.state !== 'drawn' || count < 1) return [];
    return [{ lot: shedLotName(item), yard, frame: row.depth, count: Math.floor(count), massKg: row.massKg, looked: !suspect }];
  });
}

/**
 * Whether a colony is handed to uniting: too small to winter alone, or without a queen when it is too late for a new one and the bees
 * are too few to hold until spring.
 */
function colonyToUnite(plan: PreparedPlan, holding: Holding): (line: ColonyOutlook, ready: ReadyColony) => boolean {
  return (line, { evidence }) => {
    if (line.state === 'too small alone') return true;
    const yard = holding.yards.get(line.yard);
    if (yard === undefined || queenOf(evidence.colony) !== 'absent') return false;
    const site = { year: winterYearOf(plan.today), latDeg: yard.latDeg, ownLowByDayOfYear: holding.settings.mitesLowByDayOfYear };
    return plan.today > requeenDay(site) && sizeOf(line.bees, 'absent').verdict === 'unite';
  };
}

/** What two colonies would need together: the middle of the bigger one's need scaled by heat, for colonies that are to be united. */
function unionsOf(
  lines: readonly ColonyOutlook[],
  of: { readonly ready: ReadonlyMap<string, ReadyColony>; readonly toUnite: ReturnType<typeof colonyToUnite> },
): Union[] {
  const { ready } = of;
  const queenless = (line: ColonyOutlook) => queenOf(ready.get(line.colony)!.evidence.colony) === 'absent';
  const small = lines.filter((line) => line.hasKg !== null && line.state !== 'set aside' && of.toUnite(line, ready.get(line.colony)!));
  const takers = lines.filter((line) => line.hasKg !== null && line.state !== 'set aside');
  return small.flatMap((from) =>
    takers
      .filter((into) => into.colony !== from.colony && into.yard === from.yard && !(queenless(from) && queenless(into)))
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
