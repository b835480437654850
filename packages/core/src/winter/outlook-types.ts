import type { Build } from '../tables/parts.ts';
import type { Climate, StationRecord } from '../weather/index.ts';
import type { DoubtShares } from './doubt.ts';
import type { Spread } from './quantiles.ts';

/** What `outlook` is asked. Fields left out take the defaults named; dates are ISO, `from` and `to` inclusive. */
export interface OutlookInput {
  readonly bees: number;
  /** Error of the count as a share of it; default: parameter beesSdFrac. */
  readonly beesSdFrac?: number | undefined;
  /** Left out: stores unknown, then there is a need but no chance to hold and no run-out date. */
  readonly storesKg?: number | undefined;
  /** Default 0. */
  readonly storesSdKg?: number | undefined;
  /** How storesSdKg splits; default: half the variance from the tare, half from the measuring. */
  readonly storesSdParts?: { readonly tareKg: number; readonly scaleKg: number } | undefined;
  /** Default: bare wood with a top vent. */
  readonly hive?:
    | {
        readonly conductanceWPerK?: number | undefined;
        readonly build?: Build | undefined;
        /** With a build: wind along its walls [m/s], and the share of their height in snow. */
        readonly windMPerS?: number | undefined;
        readonly snowFrac?: number | undefined;
      }
    | undefined;
  readonly from: string;
  readonly to: string;
  readonly dailyMeanC?: readonly number[] | undefined;
  readonly place?: string | undefined;
  readonly monthlyMeanC?: readonly number[] | undefined;
  /** A daily record that was read, alone or on top of `place` or `monthlyMeanC`. */
  readonly record?: StationRecord | undefined;
  /** null: no brood at all. Left out: drawn around 15 February. */
  readonly broodFrom?: string | null | undefined;
  /** null: none before `to`. Left out: from the heat sum of the weather. */
  readonly forage?: string | null | undefined;
  readonly indoors?: boolean | undefined;
  readonly members?: number | undefined;
  readonly seed?: number | undefined;
  readonly certaintyFrac?: number | undefined;
  readonly ownRule?: { readonly grossKg: number; readonly colonies: number; readonly starved: number } | undefined;
  /** Parameter name to value: pins it, so that it is neither drawn nor doubted. */
  readonly fixed?: Readonly<Record<string, number>> | undefined;
}

export interface DateSpread {
  readonly p5: string | null;
  readonly p50: string | null;
  readonly p95: string | null;
}

/** What `outlook` answers. Use is what would be eaten if stores had no end. */
export interface OutlookAnswer {
  readonly useKg: Spread & { readonly mean: number };
  /** Median by day. */
  readonly dailyUseKg: readonly number[];
  readonly monthlyUseKg: readonly (Spread & { readonly month: string })[];
  readonly beesAtEnd: Spread;
  readonly runOut: DateSpread | null;
  readonly holdFrac: number | null;
  readonly needKg: number;
  readonly needParts: { readonly broodlessKg: number; readonly broodKg: number; readonly reserveKg: number; readonly doubtKg: number };
  readonly doubtShares: DoubtShares;
  /** Change of the hive's weight from `from` to `to`, negative: lighter. Its upper end holds the ice. */
  readonly scaleKg: Spread;
  readonly extrapolating: boolean;
  readonly extrapolatingBecause: readonly (
    | 'below-weighed-cold'
    | 'fewer-bees-than-measured'
    | 'more-bees-than-measured'
    | 'forage-after-to'
  )[];
  readonly winterableAlone: boolean;
  /** True where bees and stores together are lighter than an autumn hive should be without its wood; null without stores and outside autumn. */
  readonly lightForWinter: boolean | null;
  /** Stores that the combs at the cluster must hold for the longest spell, at the asked certainty. */
  readonly contactKg: number;
  readonly hiveWPerK: number;
  readonly forageDate: DateSpread;
  /** Where the weather comes from; null where the daily means were given. */
  readonly climate: Pick<Climate, 'name' | 'placeErrorSdC' | 'notes'> | null;
  readonly ownRule: {
    readonly storesKg: number;
    readonly verdict: 'enough' | 'short' | 'unknown';
    readonly levelMedian: number;
    readonly levelLogSd: number;
  } | null;
  readonly members: number;
  readonly seed: number;
}
