import { watchParameters } from '../tables/parameters-watch.gen.ts';
import { isoDateOf } from '../units/index.ts';
import type { DateSpread, Spread } from '../winter/index.ts';
import { type Cases, casesOf } from './cases.ts';
import type { AutumnBelief, FactorBelief, Observation, Surprise, WinterUpdate } from './types.ts';
import { effectiveOf, Weighted, weightsOf } from './weighted.ts';

/**
 * A colony's forecast after what was seen of it in winter: the cases of autumn, each counted by how well it foretold what was seen.
 *
 * A reading speaks of the change since autumn, so that a wrong tare leaves it alone. Ice and snow only add weight; of the water made
 * since the last thaw any share may still hang inside as frost. Readings are weighed by Student's t, so that a wild one costs little,
 * and where they would leave too few cases all are given less weight.
 *
 * belief         what was known on the first day of the curve
 * observations   in any order; those of one day in the order given
 * today          epoch day, within the curve
 * equation       w_i ~ (prod_k p(seen_k | case i))^trust; p of a weight: mean over ice and frost of t((seen - foreseen_i) / sd)
 * validity       colonies that were weighed in autumn; between about 3 and 30 kg eaten a reading says more than it doubts
 * source         importance weighting: any textbook of Bayesian computing
 */
export function updateColony(
  belief: AutumnBelief,
  of: { readonly observations: readonly Observation[]; readonly today: number; readonly certaintyFrac: number },
): WinterUpdate {
  const { prepared } = belief;
  const cases = casesOf(belief);
  const { count: members } = cases;
  const fromDay = prepared.season.fromDay;
  const seen = of.observations.filter(({ day }) => day >= fromDay && day <= of.today).sort((a, b) => a.day - b.day);
  const logs = new Float64Array(members);
  const weigh = () => settled(cases.logPrior, logs);
  const surprises: Surprise[] = [];
  for (const one of seen) {
    const index = one.day - fromDay;
    if (one.kind === 'weight') {
      const before = weigh();
      surprises.push(...surpriseOf(cases, { weights: before.weights, one, index }));
      for (let i = 0; i < members; i++) logs[i]! += logOfWeight(cases, i, { one, index });
    } else {
      for (let i = 0; i < members; i++) logs[i]! += logOfSign(one.kind, cases.endIndex[i]! > index);
    }
  }
  const { weights, trustFrac } = weigh();
  return { ...answerOf(belief, { cases, weights, ...of }), trustFrac, appetiteSeen: appetiteSeen(cases, seen, fromDay), surprises };
}

/** Weights of the cases, with as much trust in what was seen as leaves enough of them. */
function settled(prior: Float64Array, logs: Float64Array): { weights: Float64Array; trustFrac: number } {
  const trusted = (trust: number) => weightsOf(prior.map((log, i) => log + trust * logs[i]!));
  const least = Math.max(2, watchParameters.leastEffectiveFrac.value * effectiveOf(weightsOf(prior)));
  const whole = trusted(1);
  if (effectiveOf(whole) >= least) return { weights: whole, trustFrac: 1 };
  let [low, high] = [0, 1];
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (effectiveOf(trusted(middle)) >= least) low = middle;
    else high = middle;
  }
  return { weights: trusted(low), trustFrac: low };
}

type Weight = Extract<Observation, { kind: 'weight' }>;

/** Shares of ice and of frost over which a reading is averaged: any is as likely. */
const SHARES = [0.1, 0.3, 0.5, 0.7, 0.9];

/** What a scale would show of a case, less autumn [kg], without ice; ice and frost only add. */
function foreseenKg(cases: Cases, member: number, index: number): number {
  return -cases.eatenKg(member, index) - cases.carriedOutKg(member, index);
}

function hiddenKg(cases: Cases, member: number, index: number): number {
  return watchParameters.snowIceKg.value + cases.waterPerHoneyFrac * cases.sinceThawKg(member, index);
}

function logOfWeight(cases: Cases, member: number, { one, index }: { one: Weight; index: number }): number {
  const bare = foreseenKg(cases, member, index);
  const hidden = hiddenKg(cases, member, index);
  const freedom = watchParameters.tailFreedom.value;
  const sdKg = Math.hypot(one.sdKg, watchParameters.liftSdKg.value);
  let density = 0;
  for (const share of SHARES) {
    const z = (one.changeKg - bare - share * hidden) / sdKg;
    density += (1 + (z * z) / freedom) ** (-(freedom + 1) / 2);
  }
  return Math.log(density / SHARES.length);
}

function logOfSign(kind: 'alive' | 'silent', holds: boolean): number {
  const { silentWhenAliveFrac: quiet, heardWhenDeadFrac: ghost } = watchParameters;
  const heard = holds ? 1 - quiet.value : ghost.value;
  return Math.log(kind === 'alive' ? heard : 1 - heard);
}

function surpriseOf(cases: Cases, of: { weights: Float64Array; one: Weight; index: number }): Surprise[] {
  const { weights, one, index } = of;
  const sdKg = Math.hypot(one.sdKg, watchParameters.liftSdKg.value);
  const expected = new Float64Array(cases.count);
  let below = 0;
  for (let i = 0; i < cases.count; i++) {
    const hidden = hiddenKg(cases, i, index);
    expected[i] = foreseenKg(cases, i, index) + 0.5 * hidden;
    const spread = Math.hypot(sdKg, hidden / Math.sqrt(12));
    below += weights[i]! * logistic((one.changeKg - expected[i]!) / spread);
  }
  const chanceFrac = 2 * Math.min(below, 1 - below);
  if (chanceFrac >= watchParameters.surpriseFrac.value) return [];
  const which = below < 0.5 ? 'lighter' : 'heavier';
  // sorted only where it is told
  return [{ day: one.day, which, seenKg: one.changeKg, foreseenKg: new Weighted(expected, weights).spread(), chanceFrac }];
}

/**
 * Appetite by one reading: what was eaten by it against what the cases eat at appetite 1, the middle of ice and frost taken off. Of
 * several the surest: later ones hold the earlier ones' use in them.
 */
function appetiteSeen(cases: Cases, seen: readonly Observation[], fromDay: number): WinterUpdate['appetiteSeen'] {
  const each = seen.flatMap((one) => {
    if (one.kind !== 'weight') return [];
    const index = one.day - fromDay;
    const usual = new Float64Array(cases.count);
    let [hidden, carried] = [0, 0];
    for (let i = 0; i < cases.count; i++) {
      usual[i] = cases.eatenKg(i, index) / cases.factor[i]!;
      hidden += hiddenKg(cases, i, index) / cases.count;
      carried += cases.carriedOutKg(i, index) / cases.count;
    }
    const expected = new Weighted(usual, weightsOf(cases.logPrior));
    const eatenKg = -one.changeKg + hidden / 2 - carried;
    if (!(eatenKg > LEAST_EATEN_KG)) return [];
    const readSdKg = Math.hypot(one.sdKg, watchParameters.liftSdKg.value, hidden / Math.sqrt(12));
    return [{ logFactor: Math.log(eatenKg / expected.mean()), logSd: Math.hypot(readSdKg / eatenKg, expected.sd() / expected.mean()) }];
  });
  return each.sort((a, b) => a.logSd - b.logSd)[0] ?? null;
}

/** Less than this is lost in ice, frost and the hand [kg]. */
const LEAST_EATEN_KG = 1.5;

/** Close to the normal's distribution and with longer tails: logistic of 1.702 z. */
function logistic(z: number): number {
  return 1 / (1 + Math.exp(-1.702 * z));
}

function answerOf(
  { prepared }: AutumnBelief,
  of: { cases: Cases; weights: Float64Array; today: number; certaintyFrac: number },
): Omit<WinterUpdate, 'trustFrac' | 'appetiteSeen' | 'surprises'> {
  const { cases, weights, today } = of;
  const { season, values } = prepared;
  const index = today - season.fromDay;
  const eaten = new Float64Array(cases.count);
  const left = new Float64Array(cases.count);
  const gap = new Float64Array(cases.count);
  const coming = new Float64Array(cases.count);
  const gapNow = new Float64Array(cases.count);
  const { nearDays, nearChanceFrac } = watchParameters;
  let [soon, hold, alive] = [0, 0, 0];
  for (let i = 0; i < cases.count; i++) {
    eaten[i] = Math.min(cases.heldKg[i]!, cases.eatenKg(i, index));
    left[i] = cases.heldKg[i]! - eaten[i]!;
    gap[i] = cases.toForageKg[i]! + values.reserveKg - cases.heldKg[i]!;
    coming[i] = (cases.eatenKg(i, index + COMING_DAYS) - cases.eatenKg(i, index)) / COMING_DAYS;
    const until = Math.min(index + nearDays.value, Math.max(index, cases.forageIndex[i]!));
    gapNow[i] = cases.eatenKg(i, until) + values.reserveKg - cases.heldKg[i]!;
    if (cases.endIndex[i]! < until) soon += weights[i]!;
    if (cases.endIndex[i]! > index) alive += weights[i]!;
    if (gap[i]! <= 1e-9) hold += weights[i]!;
  }
  const leftNow = new Weighted(left, weights);
  return {
    weights,
    effectiveCases: effectiveOf(weights),
    eatenKg: new Weighted(eaten, weights).spread(),
    leftKg: { ...leftNow.spread(), mean: leftNow.mean(), sd: leftNow.sd() },
    runOut: dates(new Weighted(cases.endIndex, weights).spread(), season.fromDay),
    // weights add up to 1 but for the last digits
    aliveFrac: Math.min(1, alive),
    soonFrac: Math.min(1, soon),
    holdFrac: Math.min(1, hold),
    addKg: Math.max(0, new Weighted(gap, weights).quantile(of.certaintyFrac)),
    addNowKg: Math.max(0, new Weighted(gapNow, weights).quantile(1 - nearChanceFrac.value)),
    useKgPerDay: new Weighted(coming, weights).quantile(0.5),
    appetite: { before: factorOf(cases, weightsOf(cases.logPrior)), after: factorOf(cases, weights) },
  };
}

/** Days over which use is averaged to say how long a kilogram lasts. */
const COMING_DAYS = 28;

function factorOf({ factor }: Cases, weights: Float64Array): FactorBelief {
  const logs = new Weighted(
    factor.map((f) => Math.log(f)),
    weights,
  );
  return { median: Math.exp(logs.mean()), logSd: logs.sd() };
}

function dates(spread: Spread, fromDay: number): DateSpread {
  const at = (index: number) => (Number.isFinite(index) ? isoDateOf(fromDay + Math.floor(index)) : null);
  return { p5: at(spread.p5), p50: at(spread.p50), p95: at(spread.p95) };
}
