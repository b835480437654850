import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import { type Getter, isLighter } from './facts.ts';
import { lossPieces } from './loss-curve.ts';
import type { ModelSheet, Term } from './model-sheet.ts';

/** A piece of a getter's loss curve as a variable [kg short on it], and the choice that must be made to get past the pieces before. */
export interface PieceVariable {
  readonly name: string;
  readonly widthKg: number;
  readonly past: string | null;
}

/** Writes one getter: what may come in, what covers its need, what a shortage costs. Returns the pieces of its loss curve. */
export function writeGetter(sheet: ModelSheet, r: number): readonly PieceVariable[] {
  const getter = sheet.facts.getters[r]!;
  const colony = sheet.facts.case.colonies[getter.colony]!;
  const gone = sheet.gone(getter.colony);
  const covers = [...swapTerms(sheet, r), ...syrupTerms(sheet, r), ...candyTerms(sheet, r)];

  const weight = colony.small ? 1 - provisionParameters.tooSmallLossFrac.value : 1;
  const pieces = lossPieces(colony.curve, getter.mostKg).map((piece, k) => {
    const name = sheet.draft.variable(`q${r}_${k}`, 0, piece.widthKg, {});
    sheet.losses.push([name, weight * piece.perKg]);
    return { name, widthKg: piece.widthKg, past: piece.flatter ? sheet.choice(`p${r}_${k}`) : null };
  });
  pieces.forEach(({ past }, k) => {
    if (past === null) return;
    // a flatter piece would be used before a steeper one: all before it must be full first
    pieces.forEach((other, m) => {
      const row: Term[] = [
        [other.name, 1],
        [past, -other.widthKg],
      ];
      if (m < k) sheet.draft.row(`pf${r}_${k}_${m}`, row, 0, null);
      else sheet.draft.row(`pt${r}_${k}_${m}`, row, null, 0);
    });
  });
  const relieved = gone.map(([name]): Term => [name, Math.max(0, getter.baseKg)]);
  const extra = sheet.taken(getter.colony).map(([name, kg]): Term => [name, -kg]);
  sheet.draft.row(`need${r}`, [...pieces.map((q): Term => [q.name, 1]), ...covers, ...extra, ...relieved], getter.baseKg, null);
  return pieces;
}

/** Swaps into the getter; returns what each covers [kg]. */
function swapTerms(sheet: ModelSheet, r: number): readonly Term[] {
  const { groups, getters } = sheet.facts;
  const { prices } = sheet.facts.case;
  const getter = getters[r]!;
  const covers: Term[] = [];
  getter.out.forEach(({ lot, group: own }, j) => {
    const ofLot: Term[] = [];
    groups.forEach((group, g) => {
      const high = Math.min(lot.count, group.bankCount + group.giverCount);
      const fits = group.frame === lot.frame && group.scope === groups[own]!.scope && isLighter(lot.massKg, group.massKg);
      if (!fits || high === 0) return;
      const name = sheet.count(`z${r}_${g}_${j}`, high);
      const gainKg = group.massKg - lot.massKg;
      sheet.into.push({ name, getter: r, group: g, out: j });
      covers.push([name, gainKg]);
      ofLot.push([name, 1]);
      sheet.cappedUse[g]!.push([name, 1]);
      if (getter.releases) sheet.lightUse[own]!.push([name, -1]);
      sheet.cost.push([name, sheet.perMinute * provisionParameters.swapMinutes.value + prices.honeyPerKg * gainKg]);
    });
    sheet.draft.row(`has${r}_${j}`, ofLot, null, lot.count);
  });
  if (covers.length === 0) return covers;
  const leastGainKg = Math.min(...covers.map(([, gainKg]) => gainKg));
  const combs = getter.out.reduce((n, out) => n + out.lot.count, 0);
  // more swaps than cover the most it can be short help nobody
  const most = Math.min(combs, Math.ceil(getter.mostKg / leastGainKg - 1e-9));
  sheet.swaps(
    { ...getter, tag: `z${r}`, most },
    covers.map(([name]): Term => [name, 1]),
  );
  return covers;
}

function syrupTerms(sheet: ModelSheet, r: number): readonly Term[] {
  const getter = sheet.facts.getters[r]!;
  if (getter.syrupSteps === 0) return [];
  const { prices, rules } = sheet.facts.case;
  const p = provisionParameters;
  const steps = sheet.count(`s${r}`, getter.syrupSteps);
  const feeder = sheet.choice(`f${r}`);
  sheet.draft.row(
    `sf${r}`,
    [
      [steps, 1],
      [feeder, -getter.syrupSteps],
    ],
    null,
    0,
  );
  // each step is one at least: only more than that needs saying
  if (sheet.facts.leastSyrupSteps > 1) {
    sheet.draft.row(
      `sl${r}`,
      [
        [steps, 1],
        [feeder, -sheet.facts.leastSyrupSteps],
      ],
      0,
      null,
    );
  }
  sheet.draft.row(
    `fo${r}`,
    [
      [feeder, 1],
      [sheet.open[getter.colony]!, -1],
    ],
    null,
    0,
  );
  stopWhenGone(sheet, getter, feeder, `fu${r}`);
  sheet.feeders.push([feeder, 1]);
  sheet.sugar.push([steps, sheet.facts.syrupStepSugarKg]);
  sheet.cost.push([steps, prices.sugarPerKg * sheet.facts.syrupStepSugarKg + sheet.perMinute * p.litreMinutes.value * rules.syrupStepL]);
  sheet.cost.push([feeder, sheet.perMinute * p.feederMinutes.value]);
  return [[steps, sheet.facts.syrupStepKg]];
}

function candyTerms(sheet: ModelSheet, r: number): readonly Term[] {
  const getter = sheet.facts.getters[r]!;
  if (getter.candySteps === 0) return [];
  const { prices } = sheet.facts.case;
  const p = provisionParameters;
  const steps = sheet.count(`k${r}`, getter.candySteps);
  const board = sheet.choice(`b${r}`);
  sheet.draft.row(
    `kb${r}`,
    [
      [steps, 1],
      [board, -getter.candySteps],
    ],
    null,
    0,
  );
  stopWhenGone(sheet, getter, board, `ku${r}`);
  sheet.sugar.push([steps, sheet.facts.candyStepSugarKg]);
  sheet.cost.push([steps, (prices.sugarPerKg + sheet.perMinute * p.candyKgMinutes.value) * sheet.facts.candyStepSugarKg]);
  sheet.cost.push([board, sheet.perMinute * p.candyMinutes.value]);
  // candy is set on after the bees have stopped gluing, whatever the day of the plan
  sheet.openings.push([board, p.openingWeightAfterGluing.value]);
  return [[steps, sheet.facts.candyStepKg]];
}

function stopWhenGone(sheet: ModelSheet, getter: Getter, name: string, row: string): void {
  const gone = sheet.gone(getter.colony);
  if (gone.length > 0) sheet.draft.row(row, [[name, 1], ...gone], null, 1);
}
