import { bloomRows } from '../tables/blooms.gen.ts';
import { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
import { epochDayOfParts, partsOf } from '../units/index.ts';

/** The two dates of spring that the keeper's own bloom dates speak of. */
export type BloomEvent = 'firstPollen' | 'firstForage';

/** A bloom as the keeper saw it in this yard. */
export interface BloomSeen {
  readonly plant: string;
  readonly stage: 'first' | 'full';
  readonly day: number;
}

/** What is believed of a heat sum here: published figure and the keeper's own dates together. */
export interface HeatBelief {
  /** Of a year to come: site and year together [degC d]. */
  readonly meanCd: number;
  readonly sdCd: number;
  /** Own springs that went in, and how far they moved the published mean [degC d]. */
  readonly springs: number;
  readonly shiftCd: number;
}

/** One spring's own bloom as a sum on the scale of its event, with the error of not having measured that spring's warmth [degC d]. */
export interface SumSeen {
  readonly sumCd: number;
  readonly errorSdCd: number;
}

/** The event a bloom stands for and its own published sum; null for a plant of which nothing was read. */
export function bloomRow(plant: string, stage: 'first' | 'full') {
  return bloomRows.find((row) => row.plant === plant && row.stage === stage) ?? null;
}

export function publishedSum(event: BloomEvent): { readonly baseC: number; readonly meanCd: number; readonly sdCd: number } {
  const p = phenologyParameters;
  return event === 'firstPollen'
    ? { baseC: p.pollenBaseC.value, meanCd: p.pollenSumCd.value, sdCd: p.pollenSumSdCd.value }
    : { baseC: p.forageBaseC.value, meanCd: p.forageSumCd.value, sdCd: p.forageSumSdCd.value };
}

/**
 * A heat sum from the published one and the keeper's own springs.
 *
 * The published spread is parted into one of sites, which stays from year to year and can be learnt, and one of years. Every own
 * spring is weighed by how well its sum is known, so a few years whose warmth was not measured move little.
 *
 * seen        own sums [degC d]
 * equation    normal prior of the site N(mean, share sd^2); a spring N(site, (1 - share) sd^2 + error^2); the mean of the posterior
 * returns     the sum of a year to come: posterior of the site and the scatter between years
 * checked     own-blooms.test.ts: by hand, and no spring gives the published sum
 */
export function heatBelief(event: BloomEvent, seen: readonly SumSeen[]): HeatBelief {
  const { meanCd, sdCd } = publishedSum(event);
  const share = phenologyParameters.siteShareFrac.value;
  const siteVar = share * sdCd * sdCd;
  const yearVar = (1 - share) * sdCd * sdCd;
  let weight = 1 / siteVar;
  let pull = 0;
  for (const one of seen) {
    const w = 1 / (yearVar + one.errorSdCd * one.errorSdCd);
    weight += w;
    pull += w * (one.sumCd - meanCd);
  }
  const shiftCd = pull / weight;
  return { meanCd: meanCd + shiftCd, sdCd: Math.sqrt(1 / weight + yearVar), springs: seen.length, shiftCd };
}

/**
 * An own bloom of an earlier spring as a sum: what drawn years of the climate have gathered by that day of the year.
 *
 * years       daily means that contain the spring asked for: members x days
 * returns     null for a plant that stands for nothing, or a day outside the spring that was drawn
 */
export function sumSeen(
  bloom: BloomSeen,
  years: { readonly tempsC: Float64Array; readonly fromDay: number; readonly days: number; readonly springYear: number },
): (SumSeen & { readonly event: BloomEvent }) | null {
  const row = bloomRow(bloom.plant, bloom.stage);
  if (row === null) return null;
  const { month, day } = partsOf(bloom.day);
  const [start, end] = [
    epochDayOfParts(years.springYear, 1, 1) - years.fromDay,
    epochDayOfParts(years.springYear, month, day) - years.fromDay,
  ];
  if (start < 0 || end < start || end >= years.days) return null;
  const event = publishedSum(row.event);
  const baseC = row.baseC ?? event.baseC;
  const scale = row.sumCd === null ? 1 : event.meanCd / row.sumCd;
  const members = years.tempsC.length / years.days;
  let total = 0;
  let squares = 0;
  for (let member = 0; member < members; member++) {
    let sum = 0;
    for (let d = start; d <= end; d++) sum += Math.max(0, years.tempsC[member * years.days + d]! - baseC);
    total += sum;
    squares += sum * sum;
  }
  const mean = total / members;
  const sd = Math.sqrt(Math.max(0, squares / members - mean * mean));
  return { event: row.event, sumCd: scale * mean, errorSdCd: scale * sd };
}

/**
 * The same where a daily record holds that spring: the heat itself, known but for the year's own scatter.
 *
 * returns     null where the record does not reach from 1 January to that day, or has a gap in it
 */
export function sumMeasured(
  bloom: BloomSeen,
  record: { readonly fromDay: number; readonly meanC: Float64Array },
): (SumSeen & { readonly event: BloomEvent }) | null {
  const row = bloomRow(bloom.plant, bloom.stage);
  if (row === null) return null;
  const [start, end] = [epochDayOfParts(partsOf(bloom.day).year, 1, 1) - record.fromDay, bloom.day - record.fromDay];
  if (start < 0 || end >= record.meanC.length) return null;
  const event = publishedSum(row.event);
  const baseC = row.baseC ?? event.baseC;
  let sum = 0;
  for (let d = start; d <= end; d++) sum += Math.max(0, record.meanC[d]! - baseC);
  if (Number.isNaN(sum)) return null;
  return { event: row.event, sumCd: row.sumCd === null ? sum : (sum * event.meanCd) / row.sumCd, errorSdCd: 0 };
}
