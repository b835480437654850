import type { SpringAnswer } from '@winterheft/core';

const cell = (value: string | number | null) =>
  value === null ? '' : /[",\n]/.test(String(value)) ? `"${String(value).replaceAll('"', '""')}"` : String(value);

/** The year on one page as rows of three: what, of which hive or group, the figure in SI units. RFC 4180. */
export function springCsv(answer: SpringAnswer): string {
  const rows: (string | number | null)[][] = [
    ['what', 'of', 'figure'],
    ['winter', '', answer.winter],
    ['colonies', '', answer.colonies],
    ['survivors', '', answer.survivors],
    ['lossFrac', '', answer.loss?.frac ?? null],
    ['lossLowFrac', '', answer.loss?.lowFrac ?? null],
    ['lossHighFrac', '', answer.loss?.highFrac ?? null],
    ['sugarKg', '', answer.sugarKg],
    ['sugarPerSurvivorKg', '', answer.sugarPerSurvivorKg],
    ...answer.said.flatMap((one) => {
      const of = `held ${one.fromFrac} to ${one.toFrac}`;
      return [
        ['groupColonies', of, one.colonies],
        ['groupExpectedDeaths', of, one.expected],
        ['groupDied', of, one.died],
      ];
    }),
    ...answer.stores.flatMap((one) => [
      ['storesSaidKg', one.label, one.saidKg.p50],
      ['storesSeenKg', one.label, one.seenKg],
    ]),
    ...answer.deadouts.flatMap((one) => [
      ['deadCause', one.label, one.named],
      ['deadFound', one.label, one.found.join(' ')],
    ]),
  ];
  return `${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}
