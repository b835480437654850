import { type ColonyOutlook, doubtCauses, type Measurement, type Worth } from '@winterheft/core';

export type Cause = (typeof doubtCauses)[number];

/** What each measurement makes surer, by whose error it takes off. */
const CAUSE_OF: Readonly<Record<Measurement, Cause>> = {
  weigh: 'scale',
  'second-edge': 'scale',
  'weigh-empty-hive': 'tare',
  'count-capped-frames': 'scale',
  'count-frames-of-bees': 'bees',
  'weigh-on-hive': 'scale',
  'wait-and-weigh': 'scale',
  'weigh-capped-frame': 'scale',
  'clear-snow': 'scale',
  'count-pollen-frames': 'scale',
};

/** What is said of a cause that no measurement cuts by enough to be named. */
const WITHOUT: Readonly<Record<Cause, DoubtRow['without']>> = {
  appetite: 'laterOnly',
  forage: 'nothing',
  weather: 'nothing',
  tare: 'nothingWorth',
  scale: 'nothingWorth',
  bees: 'nothingWorth',
};

/** What takes off less is not worth a line [kg]. */
const LEAST_KG = 0.05;

export interface DoubtRow {
  readonly cause: Cause;
  readonly kg: number;
  readonly without: 'laterOnly' | 'nothing' | 'nothingWorth';
  /** Measurements that cut it, best first. */
  readonly cuts: readonly { readonly worth: Worth; readonly takesOffKg: number }[];
}

/**
 * The doubt of a need, in kilograms by cause, largest first, with what measuring would cut.
 *
 * Shares of the variance are spread over the kilograms of doubt, so that the rows add up to it. A measurement that brings the error of
 * the stores from `sd` to `sd'` takes the tare and scale share of the variance times 1 - (sd'/sd)^2 away; the doubt goes with the root of
 * what stays. Null where the shares are not there yet; empty where there is no doubt to split.
 */
export function doubtRows(line: ColonyOutlook): readonly DoubtRow[] | null {
  const { doubtShares, stores } = line;
  if (doubtShares === null) return null;
  const doubtKg = line.needParts.doubtKg;
  if (!(doubtKg > 0)) return [];
  const ofStores = doubtShares.tare + doubtShares.scale;
  const cuts = (stores?.measurements ?? []).map((worth) => ({
    worth,
    takesOffKg: doubtKg * (1 - Math.sqrt(1 - ofStores * (1 - (worth.sdKg / (stores?.sdKg ?? worth.sdKg)) ** 2))),
  }));
  return doubtCauses
    .map((cause) => ({
      cause,
      kg: doubtShares[cause] * doubtKg,
      without: WITHOUT[cause],
      cuts: cuts.filter(({ worth, takesOffKg }) => CAUSE_OF[worth.what] === cause && takesOffKg >= LEAST_KG),
    }))
    .filter((row) => row.kg > 0 || row.cuts.length > 0)
    .sort((a, b) => b.kg - a.kg);
}
