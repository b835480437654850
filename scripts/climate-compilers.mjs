// Compilers of data/climate/*.csv: rows in, module text out. Blank cells become null, never zero.
const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const WINTER = ['oct', 'nov', 'dec', 'jan', 'feb', 'mar', 'apr'];

const number = (row, column, source) => {
  const value = Number(row[column]);
  if (row[column] === '' || !Number.isFinite(value))
    throw new Error(`${source}: ${row.place ?? row.name ?? row.normals}: ${column} is "${row[column]}"`);
  return value;
};
const optional = (row, column, source) => (row[column] === '' ? 'null' : number(row, column, source));
const list = (row, columns, source) => `[${columns.map((c) => number(row, c, source)).join(', ')}]`;
const optionalList = (row, columns, source) => (columns.some((c) => row[c] === '') ? 'null' : list(row, columns, source));
const text = (row, column) => JSON.stringify(row[column]);
const head = (source) => `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\n`;

export function compilePlaces(rows, source) {
  const body = rows.map((r) => {
    const months = (suffix) => MONTHS.map((m) => m + suffix);
    return `  { place: ${text(r, 'place')}, country: ${text(r, 'country')}, latDeg: ${number(r, 'lat', source)}, lonDeg: ${number(r, 'lon', source)}, elevM: ${number(r, 'elev_m', source)}, period: ${text(r, 'period')}, meanC: ${list(r, MONTHS, source)}, maxC: ${optionalList(r, months('_max'), source)}, minC: ${optionalList(r, months('_min'), source)}, recordLowC: ${optional(r, 'record_low', source)}, source: ${text(r, 'source')}, mark: ${text(r, 'mark')}, note: ${text(r, 'note')} },`;
  });
  return `${head(source)}import type { ClimatePlace } from './climate-types.ts';\n\nexport const climatePlaces: ClimatePlace[] = [\n${body.join('\n')}\n];\n`;
}

export function compileSpread(rows, source) {
  const body = rows.map((r) => {
    const months = (prefix) => MONTHS.map((m) => prefix + m);
    return `  { place: ${text(r, 'place')}, source: ${text(r, 'source')}, period: ${text(r, 'period')}, sdBetweenYearsC: ${list(r, months('sd_between_years_'), source)}, sdDailyInMonthC: ${optionalList(r, months('sd_daily_in_month_'), source)} },`;
  });
  return `${head(source)}import type { StationSpread } from './climate-types.ts';\n\nexport const stationSpreads: StationSpread[] = [\n${body.join('\n')}\n];\n`;
}

/** Months in the file run from October to April; the module keeps that order. */
export function compileSpreadByClass(rows, source) {
  const body = rows.map((r) => {
    const months = (prefix) => WINTER.map((m) => prefix + m);
    return `  { januaryLowC: ${optional(r, 'januaryLowC', source)}, januaryHighC: ${number(r, 'januaryHighC', source)}, stations: ${number(r, 'stations', source)}, sdBetweenYearsC: ${list(r, months('sd_between_years_'), source)}, sdDailyInMonthC: ${list(r, months('sd_daily_in_month_'), source)}, source: ${text(r, 'source')}, mark: ${text(r, 'mark')}, note: ${text(r, 'note')} },`;
  });
  return `${head(source)}import type { ClassSpread } from './climate-types.ts';\n\n/** October to April. */\nexport const classSpreads: ClassSpread[] = [\n${body.join('\n')}\n];\n`;
}

export function compileCharacter(rows, source) {
  const names = [...new Set(rows.map((r) => r.name))];
  const body = names.map((name) => {
    const of = rows.filter((r) => r.name === name);
    const fields = of.map((r) => `    ${r.quantity}: ${list(r, MONTHS, source)},`);
    return `  ${name}: {\n${fields.join('\n')}\n    source: ${text(of[0], 'source')},\n    mark: ${text(of[0], 'mark')},\n  },`;
  });
  return `${head(source)}import type { DailyCharacter } from './climate-types.ts';\n\nexport const dailyCharacters = {\n${body.join('\n')}\n} satisfies Record<string, DailyCharacter>;\n`;
}

export function compileOlderNormals(rows, source) {
  const body = rows.map(
    (r) =>
      `  { normals: ${text(r, 'normals')}, warmingC: ${list(r, MONTHS, source)}, source: ${text(r, 'source')}, mark: ${text(r, 'mark')}, note: ${text(r, 'note')} },`,
  );
  return `${head(source)}import type { OlderNormals } from './climate-types.ts';\n\nexport const olderNormals: OlderNormals[] = [\n${body.join('\n')}\n];\n`;
}
