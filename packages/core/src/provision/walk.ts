import type { LookStep, Step, StepDo } from './answer.ts';
import type { CaseColony, CaseLot } from './case.ts';
import type { Choice } from './choice.ts';
import type { Facts } from './facts.ts';
import type { CombLot } from './input.ts';

/** A light comb on its way: out of a getter, the shed or the bank. `goesTo` is settled when a giver's gap takes it. */
export interface LightComb {
  readonly from: string;
  readonly fromKind: 'colony' | 'shed' | 'bank';
  readonly massKg: number;
  goesTo: string;
}

/** A capped comb on its way. `fill` closes the gap it left; null for the bank, and until the gap is closed. */
export interface CappedComb {
  readonly from: string;
  readonly fromKind: 'colony' | 'bank' | 'hand';
  readonly massKg: number;
  readonly massSdKg: number;
  fill: LightComb | null;
}

/** One swap at a getter. */
export interface Placed {
  readonly to: string;
  readonly frame: string;
  readonly capped: CappedComb;
  readonly out: LightComb;
  readonly outSdKg: number;
  readonly held: boolean;
}

/** What is done at one hive, in order; `comb` ties a step to the swap it is part of. */
export interface WalkStep {
  readonly do: StepDo;
  readonly colony: string;
  readonly comb: CappedComb | null;
}

export interface Walk {
  readonly placed: readonly Placed[];
  readonly steps: readonly WalkStep[];
  readonly looks: readonly LookStep[];
}

interface Hive {
  readonly colony: number;
  takes: { lot: CombLot; group: number; fill: number }[];
  places: { group: number; lot: CombLot; own: number; releases: boolean }[];
  gaps: { comb: CappedComb; fill: number }[];
  syrup: boolean;
}

/**
 * Walks the plan through the yard and so settles which comb goes where.
 *
 * Looks first. Then always the nearest hive that can be finished in one opening: a getter when its capped combs are in hand
 * or in the bank, a giver when combs for its gaps are. Only where no hive can be finished a giver is opened and left with a
 * gap, and visited again when a light comb has come out of a getter. Uniting comes last, candy later in the year.
 */
export function walkOf(facts: Facts, choice: Choice): Walk {
  const { colonies } = facts.case;
  const placed: Placed[] = [];
  const steps: WalkStep[] = [];
  const inHand: CappedComb[][] = facts.groups.map(() => []);
  const light: LightComb[][] = facts.groups.map(() => []);
  const bank = bankCombs(facts, choice, light);
  const todo = hivesOf(facts, choice);
  let here: CaseColony | null = null;

  const looks = [...choice.looks]
    .sort((a, b) => along(colonies[a]!, colonies[b]!))
    .map((i) => ({ id: `look:${colonies[i]!.id}`, colony: colonies[i]!.id }));
  for (const look of looks) steps.push({ do: 'look', colony: look.colony, comb: null });

  const canPlace = (hive: Hive) => counts(hive.places.map((p) => p.group)).every(([g, n]) => inHand[g]!.length + bank[g]!.length >= n);
  const canFill = (hive: Hive) => counts([...hive.takes, ...hive.gaps].map((t) => t.fill)).every(([h, n]) => light[h]!.length >= n);
  while (todo.length > 0) {
    const from = here;
    const byDistance = [...todo].sort((a, b) => distance(from, colonies[a.colony]!, colonies[b.colony]!));
    const hive = byDistance.find((h) => canPlace(h) && canFill(h)) ?? byDistance.find((h) => h.takes.length > 0) ?? byDistance[0]!;
    const colony = colonies[hive.colony]!;
    here = colony;
    for (const gap of hive.gaps.splice(0)) {
      const comb = light[gap.fill]!.shift();
      if (!comb) throw new RangeError('provision walk: no comb left for a gap');
      comb.goesTo = colony.id;
      gap.comb.fill = comb;
      steps.push({ do: 'fill', colony: colony.id, comb: gap.comb });
    }
    for (const take of hive.takes.splice(0)) {
      const comb: CappedComb = {
        from: colony.id,
        fromKind: 'colony',
        massKg: take.lot.massKg,
        massSdKg: take.lot.massSdKg ?? 0,
        fill: null,
      };
      inHand[take.group]!.push(comb);
      steps.push({ do: 'take', colony: colony.id, comb });
      const fill = light[take.fill]!.shift();
      if (fill) {
        fill.goesTo = colony.id;
        comb.fill = fill;
      } else hive.gaps.push({ comb, fill: take.fill });
    }
    for (const place of hive.places.splice(0)) {
      const capped = inHand[place.group]!.shift() ?? bank[place.group]!.shift();
      if (!capped) throw new RangeError('provision walk: no comb left for a getter');
      const out: LightComb = { from: colony.id, fromKind: 'colony', massKg: place.lot.massKg, goesTo: 'shed' };
      if (place.releases) light[place.own]!.push(out);
      placed.push({ to: colony.id, frame: place.lot.frame, capped, out, outSdKg: place.lot.massSdKg ?? 0, held: !place.releases });
      steps.push({ do: 'place', colony: colony.id, comb: capped });
    }
    if (hive.syrup) steps.push({ do: 'syrup', colony: colony.id, comb: null });
    hive.syrup = false;
    if (hive.gaps.length === 0) todo.splice(todo.indexOf(hive), 1);
  }
  for (const k of choice.unite) steps.push({ do: 'unite', colony: colonies[facts.pairs[k]!.from]!.id, comb: null });
  const boards = [...choice.candy.keys()].map((r) => colonies[facts.getters[r]!.colony]!).sort(along);
  for (const colony of boards) steps.push({ do: 'candy', colony: colony.id, comb: null });
  return { placed, steps, looks };
}

function hivesOf(facts: Facts, choice: Choice): Hive[] {
  const hives = new Map<number, Hive>();
  const at = (colony: number): Hive => {
    const hive = hives.get(colony) ?? { colony, takes: [], places: [], gaps: [], syrup: false };
    hives.set(colony, hive);
    return hive;
  };
  for (const { giver, capped, fill, count } of choice.outOf) {
    const { colony, capped: lots } = facts.givers[giver]!;
    const { lot, group } = lots[capped]!;
    for (let n = 0; n < count; n++) at(colony).takes.push({ lot, group, fill });
  }
  for (const { getter, group, out, count } of choice.into) {
    const { colony, out: lots, releases } = facts.getters[getter]!;
    const { lot, group: own } = lots[out]!;
    for (let n = 0; n < count; n++) at(colony).places.push({ group, lot, own, releases });
  }
  for (const getter of choice.syrup.keys()) at(facts.getters[getter]!.colony).syrup = true;
  return [...hives.values()];
}

/** Combs of the bank set apart for getters; what is left of bank and shed is put with the light combs. In hand goes first. */
function bankCombs(facts: Facts, choice: Choice, light: LightComb[][]): CappedComb[][] {
  const { bank, shed } = facts.case;
  return facts.groups.map((group, g) => {
    const into = choice.into.filter((x) => x.group === g).reduce((n, x) => n + x.count, 0);
    const given = choice.outOf.filter((x) => facts.givers[x.giver]!.capped[x.capped]!.group === g).reduce((n, x) => n + x.count, 0);
    const combs = each(group.bank.map((i) => bank[i]!).sort((a, b) => Number(b.inHand) - Number(a.inHand)));
    for (const lot of each(group.shed.map((i) => shed[i]!)))
      light[g]!.push({ from: lot.lot, fromKind: 'shed', massKg: lot.massKg, goesTo: 'shed' });
    const used = combs.slice(0, into - given);
    if (group.bankFillCount > 0)
      for (const lot of combs.slice(into - given)) light[g]!.push({ from: lot.lot, fromKind: 'bank', massKg: lot.massKg, goesTo: 'bank' });
    return used.map(
      (lot): CappedComb => ({
        from: lot.lot,
        fromKind: lot.inHand ? 'hand' : 'bank',
        massKg: lot.massKg,
        massSdKg: lot.massSdKg,
        fill: null,
      }),
    );
  });
}

function each(lots: readonly CaseLot[]): readonly CaseLot[] {
  return lots.flatMap((lot) => Array.from({ length: lot.count }, () => lot));
}

function counts(items: readonly number[]): readonly (readonly [number, number])[] {
  const found = new Map<number, number>();
  for (const item of items) found.set(item, (found.get(item) ?? 0) + 1);
  return [...found];
}

/** Order of hives as they stand: yard, row, place. */
function along(a: CaseColony, b: CaseColony): number {
  if (a.yard !== b.yard) return a.yard < b.yard ? -1 : 1;
  if (a.spot.row !== b.spot.row) return a.spot.row < b.spot.row ? -1 : 1;
  return a.spot.along - b.spot.along;
}

/** Which of two hives is nearer to the one just left: same yard, same row, then along the row. */
function distance(here: CaseColony | null, a: CaseColony, b: CaseColony): number {
  if (here === null) return along(a, b);
  const far = (c: CaseColony): number[] => [
    Number(c.yard !== here.yard),
    Number(c.spot.row !== here.spot.row),
    Math.abs(c.spot.along - here.spot.along),
  ];
  const [farA, farB] = [far(a), far(b)];
  for (let i = 0; i < farA.length; i++) if (farA[i] !== farB[i]) return farA[i]! - farB[i]!;
  return along(a, b);
}

/** Steps with ids, like ones of one swap told once. `moveOf` names the move a comb is part of, `giftOf` that of the other steps. */
export function stepsOf(walk: Walk, moveOf: (comb: CappedComb) => string, giftOf: (step: WalkStep) => string): readonly Step[] {
  const steps = new Map<string, Step>();
  for (const step of walk.steps) {
    const ref = step.comb ? moveOf(step.comb) : giftOf(step);
    const id = step.comb ? `${step.do}:${ref}` : ref;
    if (!steps.has(id)) steps.set(id, { id, do: step.do, colony: step.colony, ref });
  }
  return [...steps.values()];
}
