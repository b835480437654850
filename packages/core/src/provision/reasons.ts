import type { RankResult, Reason, ReasonCode } from './answer.ts';
import type { Deeds, Score } from './assemble.ts';
import { type Case, type CaseColony, movable } from './case.ts';
import type { Facts } from './facts.ts';

type Figures = Reason['figures'];

/** Why the plan is as it is: who lacks, who gives, what stands in the way. Codes with figures; the shells word them. */
export function reasonsOf(facts: Facts, deeds: Deeds, score: Score, ranks: readonly RankResult[]): readonly Reason[] {
  const kase = facts.case;
  const reasons: Reason[] = [];
  const say = (code: ReasonCode, subject: { colony?: string; lot?: string }, figures: Figures) =>
    reasons.push({ code, ...subject, figures });
  const isShort = kase.colonies.some((c) => c.shortKg > kase.rules.needToleranceKg);

  if (kase.todayAssumed !== null) say('today-assumed', {}, { today: kase.todayAssumed });
  for (const c of kase.colonies) {
    if (c.shortKg > 0) say('short', { colony: c.id }, { shortKg: figure(c.shortKg), hasKg: c.hasKg, needKg: c.needKg });
    if (isShort && c.shortKg < 0) spareReasons(c, { kase, deeds, say });
  }
  if (isShort) {
    for (const lot of [...kase.bank, ...kase.shed])
      if (!lot.looked && lot.count > 0) say('bank-not-looked', { lot: lot.lot }, { count: lot.count });
  }
  for (const { colony, kg, lossFrac } of score.uncovered) {
    const c = kase.colonies.find((x) => x.id === colony)!;
    const before = reasons.length;
    hindrances(c, { facts, deeds, score, say });
    if (reasons.length === before) say('left-by-tolerance', { colony }, { kg, toleranceColonies: kase.rules.lossToleranceColonies });
    say('uncovered', { colony }, { kg, lossFrac });
  }
  for (const c of kase.colonies) {
    if (!c.small) continue;
    const union = deeds.unite.find((u) => u.from === c.id);
    say(union ? 'too-small-united' : 'too-small-alone', { colony: c.id }, { bees: c.bees, into: union?.into ?? null });
    if (union && !union.queenKnown) say('queen-unknown', { colony: c.id }, { into: union.into });
  }
  for (const look of deeds.looks) say('conditional-on-look', { colony: look.colony }, {});
  for (const move of deeds.moves) if (move.out.held) say('light-comb-held', { colony: move.to }, { count: move.count });
  if (score.totals.buySugarKg > 0) say('buy-sugar', {}, { kg: score.totals.buySugarKg });
  for (const rank of ranks) {
    if (rank.endedBy === null) say('no-solver', {}, {});
    else if (rank.endedBy !== 'gap')
      say('solver-stopped', {}, { aim: rank.aim, by: rank.endedBy, gapFrac: rank.gapFrac, nodes: rank.nodes });
  }
  return reasons;
}

type Say = (code: ReasonCode, subject: { colony?: string; lot?: string }, figures: Figures) => void;

/** Why a colony with spare gives, or does not. */
function spareReasons(c: CaseColony, of: { kase: Case; deeds: Deeds; say: Say }): void {
  const { kase, deeds, say } = of;
  const spareKg = figure(-c.shortKg);
  const givesKg = deeds.moves.filter((m) => m.fromKind === 'colony' && m.from === c.id).reduce((kg, m) => kg + m.giverLossKg, 0);
  if (givesKg > 0) say('giver-spare', { colony: c.id }, { spareKg, givesKg: figure(givesKg), keepsSpareKg: figure(spareKg - givesKg) });
  else if (movable(c.capped).length === 0) return;
  else if (c.flag !== null) say('spare-flagged', { colony: c.id }, { spareKg, flag: c.flag });
  else if (!c.mayGive) say('spare-may-not-give', { colony: c.id }, { spareKg });
  else if (!c.looked && !kase.rules.allowLookSteps) say('spare-not-looked', { colony: c.id }, { spareKg });
}

/** What keeps an uncovered colony from getting more. */
function hindrances(c: CaseColony, of: { facts: Facts; deeds: Deeds; score: Score; say: Say }): void {
  const { facts, deeds, score, say } = of;
  const kase = facts.case;
  const { rules } = kase;
  const colony = c.id;
  const syrup = deeds.syrup.find((s) => s.to === colony);
  const candy = deeds.candy.find((k) => k.to === colony);
  const sugarLeftKg = figure(kase.sugarKg + rules.buySugarUpToKg - score.totals.sugarKg);

  const lotsElsewhere = kase.bank.filter((l) => l.looked && l.count > 0 && l.yard !== c.yard);
  if (c.flag !== null) say('flagged-only-feed', { colony }, { flag: c.flag });
  else if (!c.looked && !rules.allowLookSteps && !rules.holdLightCombs) say('getter-not-looked', { colony }, {});
  else if (movable(c.emptyCombs).length === 0) say('no-light-comb', { colony }, {});
  else {
    const kinds = new Set(movable(c.emptyCombs).map((l) => l.frame));
    const scope = rules.crossYards ? '' : c.yard;
    const heavier = facts.groups.some((g) => kinds.has(g.frame) && g.scope === scope && g.bankCount + g.giverCount > 0);
    if (!heavier) say('no-heavier-comb', { colony }, {});
    const gapless = facts.givers.filter((g) => {
      const giver = kase.colonies[g.colony]!;
      const fills = facts.groups.some(
        (h) =>
          h.scope === scope &&
          h.bankCount + h.shedCount + h.lightCount > 0 &&
          g.capped.some((l) => l.lot.frame === h.frame && h.massKg < l.lot.massKg),
      );
      return (giver.yard === c.yard || rules.crossYards) && !fills;
    });
    for (const g of gapless)
      say('no-comb-for-gap', { colony: kase.colonies[g.colony]!.id }, { spareKg: figure(g.spareKg), getter: colony });
    if (!rules.crossYards) {
      for (const lot of lotsElsewhere)
        if (kinds.has(lot.frame)) say('bank-other-yard', { lot: lot.lot }, { yard: lot.yard, count: lot.count, getter: colony });
      for (const g of facts.givers) {
        const giver = kase.colonies[g.colony]!;
        if (giver.yard !== c.yard)
          say('spare-other-yard', { colony: giver.id }, { yard: giver.yard, spareKg: figure(g.spareKg), getter: colony });
      }
    }
  }
  const feedStepL = facts.leastSyrupSteps * rules.syrupStepL;
  if (c.refusesSyrup) say('refuses-syrup', { colony }, {});
  else if (kase.feedingDays === 0) say('no-feeding-days', { colony }, { days: kase.feedingDays });
  else if (!syrup && deeds.syrup.length >= kase.feeders) say('feeders-all-used', { colony }, { feeders: kase.feeders });
  else if ((syrup ? syrup.litres + rules.syrupStepL : feedStepL) > c.uptakeLPerDay * kase.feedingDays) {
    say('uptake-limit', { colony }, { litres: figure(c.uptakeLPerDay * kase.feedingDays), days: kase.feedingDays });
  }
  const candySugarKg = c.rimKg < facts.candyStepSugarKg ? Number.POSITIVE_INFINITY : facts.candyStepSugarKg;
  if (sugarLeftKg < Math.min((syrup ? rules.syrupStepL : feedStepL) * rules.sugarKgPerL, candySugarKg))
    say('sugar-used-up', { colony }, { sugarLeftKg });
  if (candy && candy.sugarKg + facts.candyStepSugarKg > c.rimKg) say('rim-full', { colony }, { rimKg: c.rimKg });
}

function figure(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}
