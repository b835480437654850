import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { ProvisionAnswer } from './answer.ts';
import type { Case, CaseColony } from './case.ts';

/** Sums of rounded decimals may differ by this [kg]. */
const SLACK_KG = 1e-3;

/**
 * Every rule of docs/spec-provision.md that an answer breaks, as sentences for a developer; empty where it keeps them all.
 *
 * It reads only the case and the answer, knows nothing of the model, its groups or the walk's inner state, and runs on every answer
 * before that is returned: a plan that breaks a rule is our bug and must never reach a hive.
 */
export function recheck(kase: Case, answer: Omit<ProvisionAnswer, 'reasons'>): readonly string[] {
  const faults: string[] = [];
  const must = (holds: boolean, fault: string) => {
    if (!holds) faults.push(fault);
  };
  const { rules } = kase;
  const colony = new Map(kase.colonies.map((c) => [c.id, c]));
  const store = new Map([...kase.bank, ...kase.shed].map((l) => [l.lot, l]));
  const looked = (c: CaseColony) => c.looked || answer.looks.some((l) => l.colony === c.id);
  const gainKg = new Map<string, number>();
  const used = new Map<string, number>();
  const bump = (map: Map<string, number>, key: string, by: number) => map.set(key, (map.get(key) ?? 0) + by);
  const like = (a: number, b: number) => Math.abs(a - b) <= 1e-9;

  for (const m of answer.moves) {
    const to = colony.get(m.to);
    must(Number.isInteger(m.count) && m.count > 0, `${m.id}: count ${m.count}`);
    if (!to) {
      faults.push(`${m.id}: no colony ${m.to}`);
      continue;
    }
    must(to.flag === null, `${m.id}: ${m.to} is set aside`);
    must(to.shortKg > 0 || answer.unite.some((u) => u.into === m.to), `${m.id}: ${m.to} is not short`);
    must(m.out.massKg < m.massKg && m.out.frame === m.frame, `${m.id}: out is no lighter comb of the same kind`);
    must(
      to.emptyCombs.some((l) => l.frame === m.frame && like(l.massKg, m.out.massKg) && l.pollenLast !== true),
      `${m.id}: ${m.to} has no such light comb`,
    );
    bump(used, JSON.stringify(['out', m.to, m.frame, m.out.massKg]), m.count);
    must(m.out.held ? rules.holdLightCombs && m.out.to === 'shed' : looked(to), `${m.id}: a comb leaves ${m.to} without a look`);
    const away = colony.get(m.out.to);
    must(
      m.out.to === 'shed' || (away !== undefined && (away.yard === to.yard || rules.crossYards)),
      `${m.id}: the light comb goes to ${m.out.to}`,
    );
    bump(gainKg, m.to, m.count * (m.massKg - m.out.massKg));
    must(Math.abs(m.gainKg - m.count * (m.massKg - m.out.massKg)) <= SLACK_KG, `${m.id}: gain ${m.gainKg}`);
    if (m.fromKind === 'colony') {
      const from = colony.get(m.from);
      if (!from || m.fill === null) {
        faults.push(`${m.id}: giver ${m.from} or its gap is missing`);
        continue;
      }
      must(from.flag === null && from.mayGive && looked(from), `${m.id}: ${m.from} may not give`);
      must(from.yard === to.yard || rules.crossYards, `${m.id}: across yards`);
      must(
        from.capped.some((l) => l.frame === m.frame && like(l.massKg, m.massKg) && l.pollenLast !== true),
        `${m.id}: ${m.from} has no such capped comb`,
      );
      must(m.fill.massKg < m.massKg, `${m.id}: the gap gets no lighter comb`);
      bump(used, JSON.stringify(['capped', m.from, m.frame, m.massKg]), m.count);
      bump(gainKg, m.from, -m.count * (m.massKg - m.fill.massKg));
      if (m.fill.fromKind === 'colony') {
        bump(used, JSON.stringify(['fill', m.fill.from, m.frame, m.fill.massKg, m.from]), m.count);
        must(colony.has(m.fill.from), `${m.id}: fill from ${m.fill.from}`);
      } else bump(used, JSON.stringify(['lot', m.fill.from]), m.count);
    } else {
      bump(used, JSON.stringify(['lot', m.from]), m.count);
      must(m.fill === null && m.giverLossKg === 0, `${m.id}: the bank has no gap`);
    }
    for (const lot of [m.fromKind === 'colony' ? undefined : m.from, m.fill && m.fill.fromKind !== 'colony' ? m.fill.from : undefined]) {
      const kept = lot === undefined ? undefined : store.get(lot);
      must(
        lot === undefined || (kept?.looked === true && kept.frame === m.frame && (kept.yard === to.yard || rules.crossYards)),
        `${m.id}: lot ${lot} may not be used`,
      );
      must(kept === undefined || like(kept.massKg, lot === m.from ? m.massKg : m.fill!.massKg), `${m.id}: weight of lot ${lot}`);
    }
  }

  for (const [key, count] of used) {
    const [what, id, frame, massKg, into] = JSON.parse(key) as [string, string, string, number, string];
    if (what === 'lot') must(count <= (store.get(id)?.count ?? 0), `lot ${id}: ${count} combs used`);
    else if (what === 'fill') {
      const sent = answer.moves
        .filter((m) => m.to === id && m.frame === frame && like(m.out.massKg, massKg) && m.out.to === into)
        .reduce((n, m) => n + m.count, 0);
      must(sent === count, `${id} sends ${sent} light combs to ${into}, which takes ${count}`);
    } else {
      const lots = what === 'out' ? colony.get(id)!.emptyCombs : colony.get(id)!.capped;
      const there = lots
        .filter((l) => l.frame === frame && like(l.massKg, massKg) && l.pollenLast !== true)
        .reduce((n, l) => n + l.count, 0);
      must(count <= there, `${id}: ${count} of ${there} combs of ${massKg} kg leave`);
    }
  }

  let sugarKg = 0;
  for (const s of answer.syrup) {
    const c = colony.get(s.to)!;
    must(
      s.litres > 0 && Math.abs(s.litres / rules.syrupStepL - Math.round(s.litres / rules.syrupStepL)) < 1e-6,
      `syrup ${s.to}: ${s.litres} L`,
    );
    must(s.litres >= rules.leastSyrupL - 1e-6, `syrup ${s.to}: less than is worth a feeder`);
    must(s.litres <= c.uptakeLPerDay * kase.feedingDays + 1e-6, `syrup ${s.to}: more than it takes until the last feeding day`);
    must(!c.refusesSyrup, `syrup ${s.to}: it refuses`);
    must(Math.abs(s.sugarKg - s.litres * rules.sugarKgPerL) <= SLACK_KG, `syrup ${s.to}: sugar ${s.sugarKg}`);
    sugarKg += s.sugarKg;
    bump(gainKg, s.to, s.litres * rules.sugarKgPerL * rules.storesPerSugar);
  }
  must(answer.syrup.length <= kase.feeders && distinct(answer.syrup.map((s) => s.to)), 'one feeder for each colony that is fed');
  for (const k of answer.candy) {
    must(k.sugarKg > 0 && k.sugarKg <= colony.get(k.to)!.rimKg + 1e-6, `candy ${k.to}: over the rim`);
    sugarKg += k.sugarKg;
    bump(gainKg, k.to, k.sugarKg * rules.storesPerSugar);
  }
  must(distinct(answer.candy.map((k) => k.to)), 'one candy board for each colony');
  must(sugarKg <= kase.sugarKg + rules.buySugarUpToKg + SLACK_KG, `sugar: ${sugarKg} kg used`);

  must(distinct(answer.unite.flatMap((u) => [u.from, u.into])), 'a colony is united once');
  for (const u of answer.unite) {
    const [from, into] = [colony.get(u.from)!, colony.get(u.into)!];
    must(rules.unite && from.small && !into.small, `unite ${u.from}: sizes`);
    must(from.mayUnite && into.mayUnite, `unite ${u.from}: one of them may not`);
    must(from.flag === null && into.flag === null && looked(from) && looked(into), `unite ${u.from}: health unknown`);
    must(from.yard === into.yard || rules.crossYards, `unite ${u.from}: across yards`);
    must(!gainKg.has(u.from), `unite ${u.from}: gives or gets and is gone`);
  }

  for (const l of answer.looks)
    must(rules.allowLookSteps && colony.get(l.colony)!.flag === null && !colony.get(l.colony)!.looked, `look ${l.colony}`);

  let losses = 0;
  for (const c of kase.colonies) {
    if (answer.unite.some((u) => u.from === c.id)) continue;
    const union = answer.unite.find((u) => u.into === c.id);
    const needKg = union
      ? (kase.unionNeedKg.get(`${union.from}\u0000${union.into}`) ?? colony.get(union.from)!.needKg + c.needKg)
      : c.needKg;
    const afterKg = c.hasKg + (union ? colony.get(union.from)!.hasKg : 0) + (gainKg.get(c.id) ?? 0);
    const gave = answer.moves.some((m) => m.fromKind === 'colony' && m.from === c.id);
    must(!gave || afterKg >= needKg - SLACK_KG, `${c.id} gives below its own need`);
    must(!gave || !answer.moves.some((m) => m.to === c.id), `${c.id} gives and gets`);
    const said = answer.uncovered.find((x) => x.colony === c.id)?.kg ?? 0;
    const shortKg = needKg - afterKg;
    must(
      Math.abs(said - shortKg) <= SLACK_KG || (said === 0 && shortKg <= rules.needToleranceKg + SLACK_KG),
      `${c.id}: ${said} kg said uncovered, ${shortKg} kg short`,
    );
    const lossFrac = broken(c, Math.max(0, shortKg - rules.needToleranceKg));
    losses += c.small ? 1 - (1 - provisionParameters.tooSmallLossFrac.value) * (1 - lossFrac) : lossFrac;
  }
  must(Math.abs(losses - answer.totals.expectedLosses) <= 1e-3, `losses: ${losses} against ${answer.totals.expectedLosses}`);

  const position = new Map(answer.order.map((id, i) => [id, i]));
  must(
    answer.order.length === answer.steps.length && position.size === answer.steps.length && answer.steps.every((s) => position.has(s.id)),
    'order and steps differ',
  );
  for (const m of answer.moves) {
    const [take, place] = [position.get(`take:${m.id}`), position.get(`place:${m.id}`)];
    must(place !== undefined && (m.fromKind === 'colony') === (take !== undefined) && (take ?? -1) < place, `${m.id}: giver before getter`);
  }
  const lastLook = Math.max(-1, ...answer.looks.map((l) => position.get(l.id) ?? Number.POSITIVE_INFINITY));
  must(
    answer.steps.every((s) => s.do === 'look' || position.get(s.id)! > lastLook),
    'looks first',
  );
  return faults;
}

function distinct(ids: readonly string[]): boolean {
  return new Set(ids).size === ids.length;
}

/** The broken line of losses, read off by the lowest point not reached. */
function broken(c: CaseColony, shortKg: number): number {
  const upper = c.curve.findIndex((p) => p.shortKg >= shortKg);
  if (upper === -1) return c.curve.at(-1)?.lossFrac ?? 0;
  if (upper === 0) return c.curve[0]!.lossFrac;
  const [a, b] = [c.curve[upper - 1]!, c.curve[upper]!];
  return a.lossFrac + ((shortKg - a.shortKg) / (b.shortKg - a.shortKg)) * (b.lossFrac - a.lossFrac);
}
