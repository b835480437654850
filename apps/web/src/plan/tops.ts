import { bad, good, type OpenPlan, type Result, SHIPPED_TOPS, type ShippedTop, type TopForecast, topForecast } from '@winterheft/core';
import { breath, isoOf } from './breath.ts';

/** The shipped tops over the winter of one yard, for a colony of its middle size. */
export interface TopsOutlook {
  readonly tops: readonly { readonly key: ShippedTop; readonly forecast: TopForecast }[];
  readonly yard: string;
  readonly bees: number;
  readonly from: string;
  readonly to: string;
  readonly winters: number;
}

/** Winters run through each top, and cases its need is read from: few, for every winter is run day by day through every layer. */
const WINTERS = 20;
const MEMBERS = 200;

/** One top after another, so that other questions are answered in between. */
export async function topsOutlook(plan: OpenPlan, certaintyFrac: number): Promise<Result<TopsOutlook>> {
  const [first] = plan.yards.values();
  const here = plan.evidence.filter(({ hive }) => hive.yard === first?.yard.id);
  const counts = (here.length === 0 ? plan.evidence : here).map(({ bees }) => bees).sort((a, b) => a - b);
  const bees = counts[Math.floor(counts.length / 2)];
  if (first === undefined || bees === undefined) return bad({ kind: 'missing', field: 'journal (a living colony)' });
  const span = { from: isoOf(plan.fromDay), to: isoOf(plan.toDay) };
  const tops: { key: ShippedTop; forecast: TopForecast }[] = [];
  for (const key of SHIPPED_TOPS) {
    const answer = topForecast({
      ...span,
      bees,
      monthlyMeanC: first.climate.monthlyMeanC,
      members: MEMBERS,
      topMembers: WINTERS,
      seed: plan.setting.seed,
      certaintyFrac,
      tops: [{ name: key, shipped: key }],
    });
    if (!answer.ok) return answer;
    tops.push({ key, forecast: answer.value.tops[0] as TopForecast });
    await breath();
  }
  return good({ tops, yard: first.yard.name, bees, ...span, winters: WINTERS });
}
