import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import { isLighter } from './facts.ts';
import type { ModelSheet, Term } from './model-sheet.ts';

/** Writes one giver: which capped combs leave, what closes the gaps, and that it keeps its own need. */
export function writeGiver(sheet: ModelSheet, d: number): void {
  const { groups, givers } = sheet.facts;
  const { prices } = sheet.facts.case;
  const giver = givers[d]!;
  const gives: Term[] = [];
  giver.capped.forEach(({ lot, group: own }, j) => {
    const ofLot: Term[] = [];
    groups.forEach((fill, h) => {
      if (fill.frame !== lot.frame || fill.scope !== groups[own]!.scope || !isLighter(fill.massKg, lot.massKg)) return;
      const lossKg = lot.massKg - fill.massKg;
      const high = Math.min(lot.count, fill.bankFillCount + fill.shedCount + fill.lightCount, Math.floor(giver.spareKg / lossKg + 1e-9));
      if (high === 0) return;
      const name = sheet.count(`w${d}_${j}_${h}`, high);
      sheet.outOf.push({ name, giver: d, capped: j, fill: h });
      gives.push([name, lossKg]);
      ofLot.push([name, 1]);
      sheet.cappedUse[own]!.push([name, -1]);
      sheet.lightUse[h]!.push([name, 1]);
      sheet.cost.push([name, sheet.perMinute * provisionParameters.swapMinutes.value - prices.honeyPerKg * lossKg]);
    });
    sheet.draft.row(`gap${d}_${j}`, ofLot, null, lot.count);
  });
  if (gives.length === 0) return;
  const combs = giver.capped.reduce((n, capped) => n + capped.lot.count, 0);
  const most = Math.min(combs, Math.floor(giver.spareKg / Math.min(...gives.map(([, kg]) => kg)) + 1e-9));
  const taken = sheet.taken(giver.colony).filter(([, kg]) => kg > 0);
  sheet.draft.row(`own${d}`, [...gives, ...taken], null, giver.spareKg);
  sheet.swaps(
    { ...giver, tag: `w${d}`, most },
    gives.map(([name]): Term => [name, 1]),
  );
}

/** Combs in must come from somewhere: capped ones from givers and bank, light ones from getters, shed and bank. */
export function writeBalances(sheet: ModelSheet): void {
  sheet.facts.groups.forEach((group, g) => {
    const capped = sheet.cappedUse[g]!;
    const light = sheet.lightUse[g]!;
    if (capped.length > 0) {
      const bank: Term[] = group.bankCount > 0 ? [[sheet.count(`a${g}`, group.bankCount), -1]] : [];
      sheet.draft.row(`comb${g}`, [...capped, ...bank], 0, 0);
    }
    if (light.some(([, factor]) => factor > 0)) {
      const bank: Term[] = group.bankFillCount > 0 ? [[sheet.count(`c${g}`, group.bankFillCount), -1]] : [];
      sheet.draft.row(`fill${g}`, [...light, ...bank], null, group.shedCount);
      if (bank.length > 0 && capped.length > 0)
        sheet.draft.row(
          `bank${g}`,
          [
            [`a${g}`, 1],
            [`c${g}`, 1],
          ],
          null,
          group.bankCount,
        );
    }
  });
}
