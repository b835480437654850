import { good, type Result } from '../result/index.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { isoDateOf } from '../units/index.ts';
import { winterStartDay, winterYearOf } from './calendar.ts';
import { distanceKm, stationErrorC } from './choice.ts';
import type { Climate, ClimateNote, ClimateSource, OwnRecord } from './climate.ts';
import { climateFromMonthly } from './places.ts';
import { meansByMonth, type RecordMonth } from './record-months.ts';
import { skewOf } from './spread.ts';
import type { StationRecord } from './station-types.ts';

export interface RecordUse {
  /** What is known of the yard without the record; left out: nothing but the record itself. */
  readonly base?: Climate | undefined;
  /** Where the yard lies, to tell how far away the station is. */
  readonly yard?: { readonly latDeg: number; readonly lonDeg: number; readonly elevM?: number | undefined } | undefined;
}

/** November to March, the months whose mean the published error of a place is about. */
const WINTER = [10, 11, 0, 1, 2];

/**
 * The climate of a yard from a daily record of the keeper's.
 *
 * With `ensembleWinters` whole winters or more they are the ensemble: every case is one of them, as it happened. With fewer, the years
 * drawn from the tables are moved towards the record, the more the surer it is against the error of the place. In both cases days of
 * the record that lie in a forecast are taken as they were. A typical year counts for its monthly means alone.
 *
 * returns   the climate; its notes say which of the three it is
 * errors    BadInput: monthly means that are none of a northern winter
 * checked   own-climate.test.ts
 */
export function climateFromRecord(record: StationRecord, { base, yard }: RecordUse = {}): Result<Climate> {
  const months = meansByMonth(record);
  const entered = climateFromMonthly(months.map(({ meanC }) => meanC));
  if (!entered.ok) return entered;
  const source = sourceOf(record, yard);
  const errorC = source.distanceKm === null ? 0 : stationErrorC(source.distanceKm);
  const name = record.place.name ?? 'own record';
  const alone = { ...entered.value, name, rangeC: record.rangeC ?? (base ?? entered.value).rangeC, from: [source] };
  if (record.typical) return good({ ...alone, placeErrorSdC: errorC, notes: [{ code: 'typical-year' }] });
  const { winters } = record;
  const own: OwnRecord = {
    fromDay: record.fromDay,
    meanC: record.meanC,
    winters: [],
    happenedFromDay: winterStartDay(winterYearOf(record.toDay)),
  };
  const until: ClimateNote = { code: 'own-days', until: isoDateOf(record.toDay) };
  const needed = weatherParameters.ensembleWinters.value;
  if (winters.length >= needed) {
    return good({
      ...alone,
      monthlySdMeanC: months.map(({ sdMeanC }) => sdMeanC),
      dailySdC: months.map(({ sdDailyC }) => sdDailyC),
      skew: skewOf(months[0]!.meanC),
      placeErrorSdC: errorC,
      notes: [{ code: 'own-winters', winters: winters.length, from: String(winters[0]), to: String(winters.at(-1)! + 1) }, until],
      own: { ...own, winters },
    });
  }
  const recordVar = meanErrorVar(months, (base ?? entered.value).monthlySdMeanC) + errorC ** 2;
  if (base === undefined) {
    const note: ClimateNote = { code: 'own-correction', winters: winters.length, needed, shiftC: 0 };
    return good({ ...alone, placeErrorSdC: Math.sqrt(recordVar), notes: [note, until], own });
  }
  const placeVar = base.placeErrorSdC ** 2;
  const weight = placeVar === 0 ? 0 : placeVar / (placeVar + recordVar);
  const shiftC = weight * (winterMean(months.map(({ meanC }) => meanC)) - winterMean(base.monthlyMeanC));
  return good({
    ...base,
    monthlyMeanC: base.monthlyMeanC.map((mean) => mean + shiftC),
    rangeC: record.rangeC ?? base.rangeC,
    placeErrorSdC: Math.sqrt(placeVar * (1 - weight)),
    from: [source, ...base.from],
    notes: [...base.notes, { code: 'own-correction', winters: winters.length, needed, shiftC }, until],
    own,
  });
}

function winterMean(monthly: readonly number[]): number {
  return WINTER.reduce((sum, month) => sum + monthly[month]! / WINTER.length, 0);
}

/** Variance of the mean winter of so few years: the published scatter of whole winters is about 0.6 of that of their months. [DAILY-SPREAD] */
function meanErrorVar(months: readonly RecordMonth[], sdBetweenC: readonly number[]): number {
  const years = winterMean(months.map((month) => month.years.length));
  return (0.6 * winterMean(sdBetweenC)) ** 2 / years;
}

function sourceOf(record: StationRecord, yard: RecordUse['yard']): ClimateSource {
  const { name, latDeg, lonDeg, elevM } = record.place;
  return {
    place: name ?? 'own record',
    period: `${isoDateOf(record.fromDay).slice(0, 4)}-${isoDateOf(record.toDay).slice(0, 4)}`,
    source: record.layout,
    mark: 'OWN',
    distanceKm: yard === undefined || latDeg === null || lonDeg === null ? null : distanceKm(yard, { latDeg, lonDeg }),
    heightM: yard?.elevM === undefined || elevM === null ? null : elevM - yard.elevM,
  };
}
