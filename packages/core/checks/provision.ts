import { lossAt, lossCurve, provision, readProvisionInput } from '../src/provision/index.ts';
import { stores } from '../src/stores/index.ts';
import { standardBuild } from '../src/tables/parts.ts';
import { lbToKg } from '../src/units/index.ts';
import { answerOf, type Check } from './check.ts';

/** Syrup a colony of so many bees is planned to take in a day [L]. */
function uptakeLPerDay(bees: number): number {
  const read = readProvisionInput({ colonies: [{ id: 'A', yard: 'Y', bees, hasKg: 10, hasSdKg: 1, needKg: 20 }] });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.colonies[0]!.uptakeLPerDay;
}

/** Sugar a colony's rim takes when nothing is said [kg]. */
function rimKg(): number {
  const read = readProvisionInput({ colonies: [{ id: 'A', yard: 'Y', bees: 20_000, hasKg: 10, hasSdKg: 1, needKg: 20 }] });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.colonies[0]!.rimKg;
}

/** Syrup planned for singles of these gross weights where the one of 73 lb has enough, from the weighing to the gift [L]. */
function ladderL(grossLb: number): number {
  const holdsKg = (lb: number) => answerOf(stores({ build: standardBuild(['deep'], 10), grossKg: lbToKg(lb) })).storesKg;
  const plan = answerOf(
    provision({
      colonies: [{ id: 'A', yard: 'Y', bees: 15_000, hasKg: holdsKg(grossLb), hasSdKg: 1, needKg: holdsKg(73) }],
      sugarKg: 100,
      feeders: 1,
      daysToLastFeeding: 60,
    }),
  );
  return plan.syrup.reduce((sum, { litres }) => sum + litres, 0);
}

export const provisionChecks: readonly Check[] = [
  {
    name: 'syrup a strong colony is planned to take in a day: two US gallons in five days from an inverted pail',
    unit: 'L/day',
    expected: (2 * 3.785412) / 5,
    within: 0.05,
    why: 'the rule is in whole gallons and days',
    source: 'coweta-syrup',
    mark: 'READ',
    usedForSetting: true,
    ours: () => uptakeLPerDay(60_000),
  },
  {
    name: 'syrup 1,000 bees are planned to take in a day at most: what caged bees took, 80.7 mg a bee of 50 % syrup',
    unit: 'L/day',
    // 1.2296 kg/L is the handbook's density of 50 % sucrose at 20 °C
    expected: 0.0807 / 1.2296,
    within: 0.0013,
    why: "the study's standard error, 1.6 mg in 80.7",
    source: 'cage-uptake',
    mark: 'DERIVED',
    usedForSetting: true,
    ours: () => uptakeLPerDay(10_000) / 10,
  },
  {
    name: 'sugar in a candy rim: 467 by 375 by 38 mm inside, packed damp at 0.9 to 1.0 kg/L',
    unit: 'kg',
    expected: [0.467 * 0.375 * 38 * 0.9, 0.467 * 0.375 * 38 * 1.0],
    within: 0.05,
    why: 'rounding to half a kilogram',
    source: 'trade-rim',
    mark: 'DERIVED',
    usedForSetting: true,
    ours: rimKg,
  },
  {
    name: 'syrup for a single of 74 lb where 73 lb are enough',
    unit: 'L',
    expected: 0,
    within: 0,
    why: 'the ladder says none',
    source: 'operator-ladder',
    mark: 'READ',
    ours: () => ladderL(74),
  },
  {
    name: 'syrup for a single of 66 lb against one of 70 lb where 73 lb are enough: a full pail against a medium one',
    unit: '1',
    expected: [1, 3],
    within: 0,
    why: 'medium lies between a third and a full pail; no size of the pail is printed, and the third it gives from 72 to 73 lb is below what we call short',
    source: 'operator-ladder',
    mark: 'READ',
    ours: () => ladderL(66) / ladderL(70),
  },
  {
    name: 'a colony of well-known size and stores that holds one mean winter and no more is lost in half of the winters: share of its need that is margin',
    unit: '1',
    // need = mean (1 + 1.645 x 0.2), so the margin is 0.329 / 1.329 of it
    expected: 0.329 / 1.329,
    within: 0.005,
    why: 'the spread of 0.2 has one digit; half of its last would be 0.05, but the default is meant as 0.2',
    source: 'norrstrom-2021',
    mark: 'DERIVED',
    usedForSetting: true,
    ours: () => {
      const curve = lossCurve(1, 0, 0.95);
      let [low, high] = [0, 1];
      for (let i = 0; i < 50; i++) {
        const middle = (low + high) / 2;
        if (lossAt(curve, middle) < 0.45) low = middle;
        else high = middle;
      }
      return low;
    },
  },
];
