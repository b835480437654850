import { isoDateOf, partsOf } from '../src/units/index.ts';

/** An invented daily course of a cold place [degC], tenths: mean, maximum, minimum. */
export function courseC(day: number): { mean: number; max: number; min: number } {
  const tenth = (x: number) => Math.round(10 * x) / 10;
  const year = 16 * Math.sin((2 * Math.PI * ((day % 365.25) - 110)) / 365.25);
  const weather = 7 * Math.sin(day / 3.1) + 4 * Math.sin(day / 11.7 + partsOf(day).year);
  const middle = 1 + year + weather;
  return { mean: tenth(middle), max: tenth(middle + 5), min: tenth(middle - 5) };
}

export const days = (fromDay: number, count: number): number[] => Array.from({ length: count }, (_, d) => fromDay + d);
const digits = (day: number) => isoDateOf(day).replaceAll('-', '');
const f = (c: number) => Math.round((c * 9) / 5 + 32);

/** Lines in the forms of the providers' published format descriptions, with invented figures. */
export const dly = (of: readonly number[]): string => {
  const byMonth = new Map<string, number[]>();
  for (const day of of) byMonth.set(digits(day).slice(0, 6), [...(byMonth.get(digits(day).slice(0, 6)) ?? []), day]);
  const line = (month: string, element: 'TMAX' | 'TMIN', all: readonly number[]) => {
    const cells = Array.from({ length: 31 }, (_, k) => {
      const day = all.find((one) => partsOf(one).day === k + 1);
      const value = day === undefined ? -9999 : Math.round(10 * (element === 'TMAX' ? courseC(day).max : courseC(day).min));
      return `${String(value).padStart(5)}  C`;
    });
    return `CA00000000X${month}${element}${cells.join('')}`;
  };
  return [...byMonth].flatMap(([month, all]) => [line(month, 'TMAX', all), line(month, 'TMIN', all)]).join('\n');
};
export const ghcnLong = (of: readonly number[]): string =>
  of
    .flatMap((day) => [
      `CA00000000X,${digits(day)},TMAX,${Math.round(10 * courseC(day).max)},,,C,`,
      `CA00000000X,${digits(day)},TMIN,${Math.round(10 * courseC(day).min)},,,C,0700`,
      `CA00000000X,${digits(day)},PRCP,0,T,,C,`,
    ])
    .join('\n');
export const ghcnWide = (of: readonly number[]): string =>
  [
    '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"',
    ...of.map(
      (day) =>
        `"CA00000000X","${isoDateOf(day)}","53.97","-101.1","270.4","INVENTED PLACE, CA","${String(Math.round(10 * courseC(day).max)).padStart(6)}",",,C","${String(Math.round(10 * courseC(day).min)).padStart(6)}",",,C"`,
    ),
  ].join('\n');
export const noaaF = (of: readonly number[]): string =>
  [
    '"STATION","NAME","DATE","PRCP","TAVG","TMAX","TMIN"',
    ...of.map(
      (day) => `"USW0000000X","INVENTED PLACE, US","${isoDateOf(day)}","0.00","","${f(courseC(day).max)}","${f(courseC(day).min)}"`,
    ),
  ].join('\n');
export const noaaC = (of: readonly number[]): string =>
  [
    '"STATION","NAME","DATE","PRCP","TAVG","TMAX","TMIN"',
    ...of.map(
      (day) =>
        `"USW0000000X","INVENTED PLACE, US","${isoDateOf(day)}","0.0",,"${courseC(day).max.toFixed(1)}","${courseC(day).min.toFixed(1)}"`,
    ),
  ].join('\n');
const CANADA =
  '"Date/Time","Year","Month","Day","Data Quality","Max Temp (°C)","Max Temp Flag","Min Temp (°C)","Min Temp Flag","Mean Temp (°C)","Mean Temp Flag","Spd of Max Gust (km/h)"';
const canadaRow = (day: number) => {
  const { mean, max, min } = courseC(day);
  const { year, month, day: ofMonth } = partsOf(day);
  return `"${isoDateOf(day)}","${year}","${String(month).padStart(2, '0')}","${String(ofMonth).padStart(2, '0')}","‡","${max}","","${min}","E","${mean}","","<31"`;
};
export const canadaBulk = (of: readonly number[]): string =>
  [
    `\uFEFF"Longitude (x)","Latitude (y)","Station Name","Climate ID",${CANADA}`,
    ...of.map((day) => `"-101.10","53.97","INVENTED A","5050001",${canadaRow(day)}`),
  ].join('\r\n');
export const canadaOld = (of: readonly number[]): string =>
  [
    '"Station Name","INVENTED A"',
    '"Province","MANITOBA"',
    '"Latitude","53.97"',
    '"Longitude","-101.10"',
    '"Elevation","270.40"',
    '"Climate Identifier","5050001"',
    '"WMO Identifier",""',
    '"TC Identifier",""',
    '',
    '"Legend"',
    '"M","Missing"',
    '"E","Estimated"',
    '"†","Data for this day has undergone only preliminary quality checking"',
    '',
    CANADA,
    ...of.map(canadaRow),
  ].join('\n');
export const dwd = (of: readonly number[]): string =>
  [
    'STATIONS_ID;MESS_DATUM;QN_3;  FX;QN_4; RSK; TMK; UPM; TXK; TNK; TGK;eor',
    ...of.map((day) => {
      const { mean, max, min } = courseC(day);
      return `       9999;${digits(day)};   10;   7.0;    3;   0.0;  ${mean.toFixed(1)};  85.00;  ${max.toFixed(1)};  ${min.toFixed(1)};  -999;eor`;
    }),
  ].join('\n');
export const epw = (of: readonly number[]): string =>
  [
    'LOCATION,Invented Place,MB,CAN,CWEC,718670,53.97,-101.10,-6.0,270.0',
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,none',
    'COMMENTS 2,none',
    'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
    ...of.flatMap((day) => {
      const { year, month, day: ofMonth } = partsOf(day);
      return Array.from(
        { length: 24 },
        (_, h) => `${year - (month % 3)},${month},${ofMonth},${h + 1},60,A7,${courseC(day).mean.toFixed(1)},-5.0,80`,
      );
    }),
  ].join('\n');
