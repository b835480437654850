import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import { type Case, type CaseColony, movable, unionKey } from './case.ts';
import type { CombLot } from './input.ts';

/** A weight counts as lighter only beyond this [kg]. */
const LIGHTER_KG = 1e-6;
/** First width tried where too many weights stand apart; doubled until few enough are left [kg]. */
const FIRST_WIDTH_KG = 0.05;

/** Combs that count as like: one kind, one yard (or all, where they may cross), one weight, the lowest of its members. */
export interface Group {
  readonly frame: string;
  readonly scope: string;
  readonly massKg: number;
  /** Indices into the case's bank and shed. */
  readonly bank: readonly number[];
  readonly shed: readonly number[];
  readonly bankCount: number;
  /** Of the bank's combs those light enough to close a gap. */
  readonly bankFillCount: number;
  readonly shedCount: number;
  /** Capped combs that givers may give. */
  readonly giverCount: number;
  /** Light combs that come out of getters and may go on to another hive. */
  readonly lightCount: number;
}

/** A list of combs in a colony and the group they belong to. */
export interface ColonyLot {
  readonly lot: CombLot;
  readonly group: number;
}

export interface Getter {
  readonly colony: number;
  /** Short beyond the tolerance; may be negative where only uniting makes it short. */
  readonly baseKg: number;
  /** The most it can be short, uniting included. */
  readonly mostKg: number;
  readonly out: readonly ColonyLot[];
  /** Its light combs may go to other hives. */
  readonly releases: boolean;
  readonly needsLook: boolean;
  readonly syrupSteps: number;
  readonly candySteps: number;
}

export interface Giver {
  readonly colony: number;
  readonly spareKg: number;
  readonly capped: readonly ColonyLot[];
  readonly needsLook: boolean;
}

/** A colony too small alone and one that may take it in. */
export interface Pair {
  readonly from: number;
  readonly into: number;
  readonly needKg: number;
  /** What `into` is shorter by, with the other's stores; negative where they bring more than they need. */
  readonly extraKg: number;
}

/** Who may do what; everything a plan can be made of. Indices are into the case's colonies. */
export interface Facts {
  readonly case: Case;
  readonly groups: readonly Group[];
  readonly getters: readonly Getter[];
  readonly givers: readonly Giver[];
  readonly pairs: readonly Pair[];
  /** Stores from one step of syrup and of candy [kg]. */
  readonly syrupStepKg: number;
  /** A feeder is set on for no fewer. */
  readonly leastSyrupSteps: number;
  readonly candyStepKg: number;
  readonly candyStepSugarKg: number;
  readonly syrupStepSugarKg: number;
}

/** True where combs may leave the colony, at once or after a look that the plan asks for. */
function opensForCombs(c: CaseColony, kase: Case): boolean {
  return c.flag === null && (c.looked || kase.rules.allowLookSteps);
}

export function factsOf(kase: Case): Facts {
  const { colonies, rules } = kase;
  const pairs = pairsOf(kase);
  const groups = new Groups(kase);
  const syrupStepSugarKg = rules.syrupStepL * rules.sugarKgPerL;
  const syrupStepKg = syrupStepSugarKg * rules.storesPerSugar;
  const leastSyrupSteps = Math.max(1, Math.ceil(rules.leastSyrupL / rules.syrupStepL - 1e-9));
  const candyStepSugarKg = provisionParameters.candyStepKg.value;
  const candyStepKg = candyStepSugarKg * rules.storesPerSugar;

  kase.bank.forEach((lot, i) => {
    if (lot.looked && lot.count > 0) groups.addStore('bank', i, lot);
  });
  kase.shed.forEach((lot, i) => {
    if (lot.looked && lot.count > 0) groups.addStore('shed', i, lot);
  });

  const getterDrafts = colonies.flatMap((c, colony) => {
    if (c.shortKg <= 0) return [];
    const baseKg = c.shortKg - rules.needToleranceKg;
    const extraKg = Math.max(0, ...pairs.filter((p) => p.into === colony).map((p) => p.extraKg));
    const mostKg = Math.max(0, baseKg + extraKg);
    if (mostKg <= 0) return [];
    const held = rules.holdLightCombs && !c.looked;
    const swaps = c.flag === null && (held || opensForCombs(c, kase));
    const out = swaps ? movable(c.emptyCombs).map((lot) => ({ lot, key: groups.addColony(c.yard, lot, held ? 'none' : 'light') })) : [];
    return [{ colony, baseKg, mostKg, out, releases: !held, needsLook: !c.looked && !held }];
  });
  const giverDrafts = colonies.flatMap((c, colony) => {
    if (c.shortKg >= 0 || !c.mayGive || !opensForCombs(c, kase)) return [];
    const capped = movable(c.capped).map((lot) => ({ lot, key: groups.addColony(c.yard, lot, 'giver') }));
    return capped.length > 0 ? [{ colony, spareKg: -c.shortKg, capped, needsLook: !c.looked }] : [];
  });

  const settled = groups.settle();
  const grouped = (drafts: readonly { lot: CombLot; key: Member }[]): readonly ColonyLot[] =>
    drafts.map((d) => ({ lot: d.lot, group: settled.indexOf(d.key) }));
  return {
    case: kase,
    groups: settled.groups,
    givers: giverDrafts.map((g) => ({ ...g, capped: grouped(g.capped) })),
    getters: getterDrafts.map((g) => {
      const c = colonies[g.colony]!;
      const feeds = kase.feeders > 0 && !c.refusesSyrup;
      const byUptake = feeds ? Math.floor((c.uptakeLPerDay * kase.feedingDays) / rules.syrupStepL + 1e-9) : 0;
      return {
        ...g,
        out: grouped(g.out),
        syrupSteps:
          byUptake < leastSyrupSteps ? 0 : Math.min(byUptake, Math.max(leastSyrupSteps, Math.ceil(g.mostKg / syrupStepKg - 1e-9))),
        candySteps: Math.min(Math.floor(c.rimKg / candyStepSugarKg + 1e-9), Math.ceil(g.mostKg / candyStepKg - 1e-9)),
      };
    }),
    pairs,
    leastSyrupSteps,
    syrupStepKg,
    candyStepKg,
    candyStepSugarKg,
    syrupStepSugarKg,
  };
}

/** Need of two together: the winter model's figure, else the sum of both, which is on the safe side. */
function pairsOf(kase: Case): readonly Pair[] {
  const { colonies, rules } = kase;
  if (!rules.unite) return [];
  return colonies.flatMap((s, from) => {
    if (!s.small || !s.mayUnite || !opensForCombs(s, kase)) return [];
    return colonies.flatMap((t, into) => {
      if (t.small || !t.mayUnite || !opensForCombs(t, kase) || (s.yard !== t.yard && !rules.crossYards)) return [];
      const needKg = kase.unionNeedKg.get(unionKey(s.id, t.id)) ?? s.needKg + t.needKg;
      const extraKg = needKg - t.needKg - s.hasKg;
      // one that has enough takes another in only if the two have enough together; one that is short may be fed
      return t.shortKg > 0 || t.shortKg + extraKg <= 1e-9 ? [{ from, into, needKg, extraKg }] : [];
    });
  });
}

interface Member {
  readonly family: string;
  readonly massKg: number;
}

/** Collects combs by kind and yard, then draws the weights that count as like together. */
class Groups {
  private readonly kase: Case;
  private readonly families = new Map<string, { frame: string; scope: string; members: Draft[] }>();
  constructor(kase: Case) {
    this.kase = kase;
  }

  addStore(where: 'bank' | 'shed', index: number, lot: { yard: string; frame: string; massKg: number; count: number }): void {
    this.add(lot.yard, lot, { where, index });
  }

  addColony(yard: string, lot: CombLot, where: 'giver' | 'light' | 'none'): Member {
    return this.add(yard, lot, { where, index: -1 });
  }

  settle(): { groups: readonly Group[]; indexOf(member: Member): number } {
    const groups: Group[] = [];
    const numberOf = new Map<string, number>();
    for (const { frame, scope, members } of this.families.values()) {
      const widthKg = widthFor(members.map((m) => m.massKg));
      const buckets = new Map<number, Draft[]>();
      for (const m of [...members].sort((a, b) => a.massKg - b.massKg)) {
        const bucket = bucketOf(m.massKg, widthKg);
        buckets.set(bucket, [...(buckets.get(bucket) ?? []), m]);
      }
      for (const like of buckets.values()) {
        for (const m of like) numberOf.set(nameOf(m), groups.length);
        const counted = (where: Draft['where']) => like.filter((m) => m.where === where);
        const sum = (where: Draft['where']) => counted(where).reduce((n, m) => n + m.count, 0);
        groups.push({
          frame,
          scope,
          massKg: like[0]!.massKg,
          bank: counted('bank').map((m) => m.index),
          shed: counted('shed').map((m) => m.index),
          bankCount: sum('bank'),
          bankFillCount: like[0]!.massKg < provisionParameters.lightCombKg.value ? sum('bank') : 0,
          shedCount: sum('shed'),
          giverCount: sum('giver'),
          lightCount: sum('light'),
        });
      }
    }
    return { groups, indexOf: (member) => numberOf.get(nameOf(member))! };
  }

  private add(yard: string, lot: { frame: string; massKg: number; count: number }, kind: Pick<Draft, 'where' | 'index'>): Member {
    const scope = this.kase.rules.crossYards ? '' : yard;
    const family = JSON.stringify([lot.frame, scope]);
    const members = this.families.get(family) ?? { frame: lot.frame, scope, members: [] };
    this.families.set(family, members);
    const member = { family, massKg: lot.massKg, count: lot.count, ...kind };
    members.members.push(member);
    return member;
  }
}

interface Draft extends Member {
  readonly count: number;
  readonly where: 'bank' | 'shed' | 'giver' | 'light' | 'none';
  readonly index: number;
}

function nameOf(member: Member): string {
  return `${member.family} ${member.massKg}`;
}

function bucketOf(massKg: number, widthKg: number): number {
  return widthKg === 0 ? massKg : Math.floor(massKg / widthKg + 1e-9);
}

/** 0 (every weight for itself) where there are few enough weights, else the narrowest width that leaves few enough. */
function widthFor(masses: readonly number[]): number {
  let widthKg = 0;
  while (new Set(masses.map((m) => bucketOf(m, widthKg))).size > provisionParameters.likeFrameWeights.value) {
    widthKg = widthKg === 0 ? FIRST_WIDTH_KG : widthKg * 2;
  }
  return widthKg;
}

/** True where a comb of the first weight is lighter than one of the second. */
export function isLighter(massKg: number, thanKg: number): boolean {
  return massKg < thanKg - LIGHTER_KG;
}
