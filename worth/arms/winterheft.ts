import { foldHolding, type Holding } from '../../packages/core/src/holding/index.ts';
import { type PreparedPlan, planFrom, preparePlan, watch } from '../../packages/core/src/plan/index.ts';
import type { ProvisionAnswer, Solve } from '../../packages/core/src/provision/index.ts';
import { LIFT_DATES } from '../world/colony.ts';
import type { WorldKeeper } from '../world/keeper.ts';
import type { Arm, Gift } from './gift.ts';
import { journalOf, TODAY } from './journal.ts';

/** Certainties of the sweep; 0.95 is what the product asks when nothing is said. */
export const certainties = [0.5, 0.65, 0.8, 0.9, 0.95, 0.98] as const;
export const USUAL_CERTAINTY = 0.95;
const MEMBERS = 300;

interface Ready {
  readonly keeper: WorldKeeper;
  readonly holding: Holding;
  readonly prepared: PreparedPlan;
}

/** The product as a keeper has it: the same plan, the same solver; only the number of cases is smaller. */
function planner(solve: Solve) {
  let last: Ready | null = null;
  const plans = new Map<number, ProvisionAnswer | null>();
  const readyFor = (keeper: WorldKeeper): Ready => {
    if (last?.keeper === keeper) return last;
    plans.clear();
    last = readyOf(keeper);
    return last;
  };
  const provided = (keeper: WorldKeeper, certaintyFrac: number): ProvisionAnswer | null => {
    const { holding, prepared } = readyFor(keeper);
    const known = plans.get(certaintyFrac);
    if (known !== undefined) return known;
    const asked = { ...holding, settings: { ...holding.settings, certaintyFrac } };
    const plan = planFrom(prepared, asked, { solve, journalDigest: '', shares: false });
    if (!plan.ok) throw new Error(`keeper ${keeper.id}: ${JSON.stringify(plan.error)}`);
    plans.set(certaintyFrac, plan.value.provision);
    return plan.value.provision;
  };
  return { readyFor, provided };
}

/** The plan of autumn alone, and the same with hives lifted again from March on and the candy that the watch asks for. */
export function winterheftArms(solve: Solve): { autumn: Arm; watched: Arm } {
  const planned = planner(solve);
  const { provided } = planned;
  const autumn: Arm = {
    name: 'Winterheft, autumn alone',
    setting: 'certainty asked',
    settings: certainties,
    gifts: (keeper, certaintyFrac) => giftsOf(keeper, provided(keeper, certaintyFrac)),
  };
  const watched: Arm = {
    ...autumn,
    name: 'Winterheft, lifted again from March',
    candyKg: (keeper, certaintyFrac, { lifts, taken, candy }) => {
      const swaps = swapsOf(provided(keeper, certaintyFrac));
      const today = LIFT_DATES[lifts.length - 1] as string;
      const before = planned.readyFor(keeper).prepared;
      const answer = watch(journalOf(keeper, { taken, swaps, lifts, candy }), { today, seed: 1 + keeper.id, members: MEMBERS }, { before });
      if (!answer.ok) throw new Error(`keeper ${keeper.id}: ${JSON.stringify(answer.error)}`);
      const laid = new Map(
        answer.value.answer.lines.map(({ colony, rescue }) => [colony, rescue === null ? 0 : rescue.slabsNow * rescue.slabKg]),
      );
      return keeper.hives.map(({ label }) => laid.get(`colony-${label}`) ?? 0);
    },
  };
  return { autumn, watched };
}

function readyOf(keeper: WorldKeeper): Ready {
  const holding = foldHolding(journalOf(keeper), { until: TODAY });
  const prepared = preparePlan(holding, { today: TODAY, seed: 1 + keeper.id, members: MEMBERS });
  if (!prepared.ok) throw new Error(`keeper ${keeper.id}: ${JSON.stringify(prepared.error)}`);
  return { keeper, holding, prepared: prepared.value };
}

/** The swaps from colony to colony, as they are written down when done. */
function swapsOf(provision: ProvisionAnswer | null) {
  return (provision?.moves ?? []).flatMap((move) =>
    move.fromKind !== 'colony' ? [] : [{ from: move.from, to: move.to, count: move.count, massKg: move.massKg, outKg: move.out.massKg }],
  );
}

function giftsOf(keeper: WorldKeeper, provision: ProvisionAnswer | null): Gift[] {
  const sugarKg = new Map<string, number>();
  const combsKg = new Map<string, number>();
  const add = (to: Map<string, number>, colony: string, kg: number) => to.set(colony, (to.get(colony) ?? 0) + kg);
  for (const move of provision?.moves ?? []) {
    add(combsKg, move.to, move.gainKg);
    if (move.fromKind === 'colony') add(combsKg, move.from, -move.giverLossKg);
  }
  for (const gift of [...(provision?.syrup ?? []), ...(provision?.candy ?? [])]) add(sugarKg, gift.to, gift.sugarKg);
  return keeper.hives.map(({ label }) => ({
    sugarKg: sugarKg.get(`colony-${label}`) ?? 0,
    combsKg: combsKg.get(`colony-${label}`) ?? 0,
  }));
}
