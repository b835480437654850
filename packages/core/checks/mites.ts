import {
  betaGrid,
  binomialAtMost,
  boardCount,
  broodEnd,
  chanceAboveLevel,
  effectRange,
  levelAt,
  levelOn,
  levelsOnDay,
  limitsOf,
  meanLevel,
  miteGrowth,
  mitesParameters,
  poissonInterval,
  poolYard,
  projectLevels,
  recoveryOf,
  shareAt,
  treatmentEffect,
  treatmentRows,
  wash,
  winterBeeWindow,
  winterLoss,
} from '../src/mites/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { answerOf, type Check, row } from './check.ts';

const dayOf = (iso: string) => epochDayOf(iso)!;
const level = (iso: string, brood: 'brood' | 'little' = 'brood') => levelOn(dayOf(iso), { brood })!;
const treatment = (key: string) => treatmentRows().find((one) => one.key === key)!;
const limits = (key: string) => limitsOf(treatment(key), undefined)!;
const effect = (key: string, broodless: boolean) => effectRange(treatment(key), { broodless });
const board = (date: string, mites: number, colony: 'production' | 'young' = 'production') =>
  answerOf(boardCount({ date, mites, days: 10, brood: 'brood', colony }));
/** A fall at which a verdict turns, from the first count of ten days that gives it [mites/day]. */
function turnsAt(date: string, verdicts: readonly string[], colony: 'production' | 'young' = 'production'): number {
  for (let mites = 0; mites <= 200; mites++) if (verdicts.includes(board(date, mites, colony).verdict)) return mites / 10;
  return Number.NaN;
}
const window = (latDeg: number) => winterBeeWindow({ year: 2026, latDeg });
const dayInYear = (day: number) => day - dayOf('2025-12-31');

// Efron and Morris 1975: hits in 45 trials of eighteen players.
const HITS = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7];
const trials = () =>
  poolYard(
    HITS.map((mites, i) => ({ id: `${i}`, mites, bees: 45 })),
    { logMean: () => 0, logConcentration: (s) => -1.5 * Math.log(s) },
  );

/** Exact growth without doubt: a start known to the fourth digit, one rate, nothing brought in. */
function daysToThreePercent(): number {
  const projection = projectLevels({
    start: betaGrid({ a: 1e6, b: 99e6 }),
    fromDay: dayOf('2026-05-01'),
    toDay: dayOf('2026-07-20'),
    seed: 1,
    entity: 'check',
    yard: 'check',
    members: 401,
    bees: 20000,
    broodEndDays: new Float64Array(401).fill(dayOf('2026-10-01')),
  });
  for (let day = 0; day < projection.days; day++) if (shareAt(levelsOnDay(projection, projection.fromDay + day), 0.5) >= 0.03) return day;
  return Number.NaN;
}

/** Mites brought in by a whole autumn to a colony that had none and has no brood. */
function invaded(share: number): number {
  const projection = projectLevels({
    start: betaGrid({ a: 1e-3, b: 1e9 }),
    fromDay: dayOf('2026-06-01'),
    toDay: dayOf('2026-12-15'),
    seed: 3,
    entity: 'check',
    yard: 'check',
    members: 2001,
    bees: 1e6,
    broodEndDays: new Float64Array(2001).fill(dayOf('2026-01-01')),
  });
  return 1e6 * shareAt(levelsOnDay(projection, dayOf('2026-12-15')), share);
}
const rateRatio = () =>
  answerOf(
    treatmentEffect({
      before: { mites: 21, bees: 3011, date: '2026-08-01' },
      after: { mites: 11, bees: 800, date: '2026-08-30' },
      nature: 'organic',
    }),
  );
const abbott = () =>
  answerOf(
    treatmentEffect({
      before: { mites: 300, bees: 3000, date: '2026-08-01' },
      after: { mites: 50, bees: 3000, date: '2026-08-30' },
      control: { before: { mites: 100, bees: 3000 }, after: { mites: 200, bees: 3000 } },
      nature: 'organic',
    }),
  );
const marked = (nature: 'organic' | 'synthetic') =>
  answerOf(
    treatmentEffect({
      before: { mites: 100, bees: 3000, date: '2026-08-01' },
      after: { mites: 8, bees: 3000, date: '2026-08-30' },
      nature,
    }),
  ).passFrac;
const EXACT = 'the rule itself';
const DIGIT = 'half the last printed digit';
const DAYS = 'whole days';

export const mitesChecks: readonly Check[] = [
  row('three mites or fewer on 300 bees at a true 2 %', '1', 0.14851038, 5e-9, DIGIT, 'scipy-beta', 'COMPUTED', () =>
    binomialAtMost(3, 300, 0.02),
  ),
  row('no mite on 300 bees at a true 1 %', '1', 0.04904089, 5e-9, DIGIT, 'scipy-beta', 'COMPUTED', () => binomialAtMost(0, 300, 0.01)),
  row(
    'nine mites or more on 300 bees at a true 2 %',
    '1',
    0.1506671,
    5e-8,
    DIGIT,
    'scipy-beta',
    'COMPUTED',
    () => 1 - binomialAtMost(8, 300, 0.02),
  ),
  row('fewer than nine on 300 bees at a true 3 %', '1', 0.453642, 5e-7, DIGIT, 'exact-fractions', 'COMPUTED', () =>
    binomialAtMost(8, 300, 0.03),
  ),
  row('a hundred bees show no mite at a true 1 %', '1', 0.36, 0.01, 'printed to two digits', 'oliver-2020', 'READ', () =>
    binomialAtMost(0, 100, 0.01),
  ),
  row(
    'chance above the upper end of the posterior interval of 3 in 300',
    '1',
    0.025,
    2e-4,
    'end printed to 5e-7, points between straight',
    'scipy-beta',
    'COMPUTED',
    () => chanceAboveLevel({ mites: 3, bees: 300 }, 0.026444),
  ),
  row(
    'chance below the lower end of the same',
    '1',
    0.025,
    2e-4,
    'end printed to 5e-7, points between straight',
    'scipy-beta',
    'COMPUTED',
    () => 1 - chanceAboveLevel({ mites: 3, bees: 300 }, 0.002824),
  ),
  row('exact interval of ten events, low', 'events', 4.795, 5e-4, DIGIT, 'garwood-1936', 'MEMORY', () => poissonInterval(10, 0.95).low),
  row('exact interval of ten events, high', 'events', 18.39, 0.005, DIGIT, 'garwood-1936', 'MEMORY', () => poissonInterval(10, 0.95).high),
  row('ratio of two rates of the manual', '1', 1.971488, 1e-6, DIGIT, 'r-poisson-test', 'MEMORY', () => 1 - rateRatio().effectFrac),
  row('its exact interval, low', '1', 0.8584264, 5e-7, DIGIT, 'r-poisson-test', 'MEMORY', () => 1 - rateRatio().highFrac),
  row('its exact interval, high', '1', 4.2772659, 5e-7, DIGIT, 'r-poisson-test', 'MEMORY', () => 1 - rateRatio().lowFrac),
  row(
    'a sixth left while the untreated doubled',
    '1',
    1 - 1 / 12,
    1e-12,
    EXACT,
    'henderson-tilton-1955',
    'ARITHMETIC',
    () => abbott().effectFrac,
  ),
  row('the last of 71 groups, four of fourteen, drawn to the others', '1', 0.225, 5e-4, DIGIT, 'gelman-rats', 'ARITHMETIC', () =>
    meanLevel(betaGrid({ a: 1.4 + 4, b: 8.6 + 10 })),
  ),
  row('mean of eighteen groups pooled', '1', 0.27, 0.01, 'printed to two digits', 'pool-binary-trials', 'MEMORY', () =>
    meanLevel(trials().mean),
  ),
  row('the best of eighteen groups drawn to the others', '1', 0.32, 0.012, 'printed to two digits', 'pool-binary-trials', 'MEMORY', () =>
    meanLevel(trials().washed.get('0')!),
  ),
  row('the worst of eighteen groups drawn to the others', '1', 0.22, 0.015, 'printed to two digits', 'pool-binary-trials', 'MEMORY', () =>
    meanLevel(trials().washed.get('17')!),
  ),
  row('upper end of the posterior interval of 30 in 300', '1', 0.137776, 1e-4, 'points between straight', 'scipy-beta', 'COMPUTED', () =>
    levelAt(betaGrid({ a: 30.5, b: 270.5 }), 0.975),
  ),

  row('share of the mites a sugar roll finds', '1', 0.929, 0.002, 'printed 92.9', 'macedo-2002', 'READ', () => recoveryOf('sugar').mid),
  row(
    'five mites by sugar as mites per bee',
    '1',
    5 / 300 / 0.929,
    5e-5,
    'printed 92.9',
    'macedo-2002',
    'READ',
    () => answerOf(wash({ bees: 300, mites: 5, method: 'sugar' })).rateFrac,
  ),

  row('days from 1 to 3 % in the middle case', 'd', 48, 1, DAYS, 'mite-growth', 'DERIVED', daysToThreePercent),
  row(
    'mites of a season in the slow case',
    '1',
    [13.6, 40.9],
    0.5,
    'forty days are rounded: half a day is 3 %',
    'mite-growth',
    'DERIVED',
    () => miteGrowth(150).slow,
  ),
  row(
    'mites brought in over an autumn, few neighbours',
    'mites',
    72,
    20,
    'least of the apiary with few neighbours',
    'frey-2014',
    'READ',
    () => invaded(0.05),
  ),
  row(
    'mites brought in over an autumn, many neighbours',
    'mites',
    1171,
    250,
    'most of the apiary with many neighbours',
    'frey-2014',
    'READ',
    () => invaded(0.95),
  ),
  row(
    'mites brought in over an autumn, the middle',
    'mites',
    Math.sqrt(72 * 1171),
    25,
    'drawn cases; geometric middle of least and most',
    'frey-2014',
    'DERIVED',
    () => invaded(0.5),
  ),

  row('mites low by, at Winnipeg', 'day of year', [227, 232], 0, '15 to 20 August', 'otis-winter-bees', 'READ', () =>
    dayInYear(window(50).lowByDay),
  ),
  row(
    'mites low by, southern Ontario after Winnipeg',
    'd',
    [10, 14],
    0,
    'printed range',
    'otis-winter-bees',
    'READ',
    () => window(43).lowByDay - window(50).lowByDay,
  ),
  row('first winter bees at Winnipeg', 'day of year', [233, 243], 0, 'late August', 'otis-winter-bees', 'READ', () =>
    dayInYear(window(50).fromDay),
  ),
  row('bulk of the winter bees at Winnipeg', 'day of year', 268, 1, '25 September', 'otis-winter-bees', 'READ', () =>
    dayInYear(window(50).toDay),
  ),
  row(
    'first day without brood in the Yukon',
    'day of year',
    [227, 258],
    0,
    'mid-August to mid-September',
    'north-of-60-brood',
    'READ',
    () => dayInYear(broodEnd({ year: 2026, latDeg: 61 }).day),
  ),
  row(
    'winter loss where no mite was found',
    '1',
    16 / 99,
    0.002,
    'table III, whole colonies',
    'guzman-2010',
    'READ',
    () => winterLoss(0).lowFrac,
  ),
  row(
    'winter loss where mites were found',
    '1',
    95 / 309,
    0.002,
    'table III, whole colonies',
    'guzman-2010',
    'READ',
    () => winterLoss(0).highFrac,
  ),
  row('winter loss of colonies never treated', '1', 1, 1e-9, EXACT, 'gotland-2014', 'READ', () => winterLoss(1).highFrac),
  row('pass mark of an acid', '1', 0.9, 1e-9, EXACT, 'ema-varroa', 'READ-2', () => marked('organic')),
  row('pass mark of a synthetic', '1', 0.95, 1e-9, EXACT, 'ema-varroa', 'READ-2', () => marked('synthetic')),
  row(
    'a treatment is judged after its end',
    'd',
    [12, 14],
    0,
    'printed range',
    'aumeier-table',
    'READ',
    () => mitesParameters.rewashAfterDays.value,
  ),

  row('level of spring', '1', 0.01, 1e-9, EXACT, 'manitoba-treatment', 'READ', () => level('2026-04-20').treat),
  row('warning level of August', '1', 0.01, 1e-9, EXACT, 'morfin-2024', 'READ', () => level('2026-08-10').warn),
  row('treating level of August', '1', [0.02, 0.03], 0, 'printed range', 'caron-2017', 'READ', () => level('2026-08-10').treat),
  row('never accepted in August', '1', 0.03, 1e-9, EXACT, 'caron-2017', 'READ', () => level('2026-08-10').never!),
  row(
    'treating level of September with brood',
    '1',
    [0.01, 0.03],
    0,
    'printed range',
    'manitoba-treatment',
    'READ',
    () => level('2026-09-20').treat,
  ),
  row(
    'level of late fall with little brood',
    '1',
    0.1,
    1e-9,
    EXACT,
    'manitoba-treatment',
    'READ',
    () => level('2026-11-01', 'little').treat,
  ),
  row('level from which bees are lighter', '1', 0.05, 1e-9, EXACT, 'polish-weights-1988', 'READ', () => level('2026-11-01', 'little').warn),
  row('board in June, treat above', 'mites/d', 8.1, 1e-9, 'first tenth above 8', 'denmark-board', 'READ', () =>
    turnsAt('2026-06-20', ['treat']),
  ),
  row('board in June, watch above', 'mites/d', 5.1, 1e-9, 'first tenth above 5', 'sweden-board', 'READ-2', () =>
    turnsAt('2026-06-20', ['watch', 'treat']),
  ),
  row('board in June, safe side below', 'mites/d', 1, 1e-9, 'first tenth not below 1', 'denmark-board', 'READ', () =>
    turnsAt('2026-06-20', ['below']),
  ),
  row('board in July, treat above', 'mites/d', 10.1, 1e-9, 'first tenth above 10', 'aumeier-table', 'READ', () =>
    turnsAt('2026-07-20', ['treat']),
  ),
  row('board in July, young colony', 'mites/d', 5.1, 1e-9, 'first tenth above 5', 'aumeier-table', 'READ', () =>
    turnsAt('2026-07-20', ['treat'], 'young'),
  ),
  row('board in September, treat above', 'mites/d', 5.1, 1e-9, 'first tenth above 5', 'aumeier-table', 'READ', () =>
    turnsAt('2026-09-20', ['treat']),
  ),
  row('board in November, treat above', 'mites/d', 1.1, 1e-9, 'first tenth above 1', 'aumeier-table', 'READ', () =>
    turnsAt('2026-11-20', ['treat']),
  ),
  row('board in early spring, treat above', 'mites/d', 1.1, 1e-9, 'first tenth above 1', 'mapaq-2011', 'READ', () =>
    turnsAt('2026-04-20', ['treat']),
  ),
  row('eight a day in June as mites', 'mites', 960, 1e-9, EXACT, 'denmark-board', 'DERIVED', () => board('2026-06-20', 80).mitesInColony!),
  row('ten a day in July as mites', 'mites', 1500, 1e-9, EXACT, 'aumeier-table', 'DERIVED', () => board('2026-07-20', 100).mitesInColony!),
  row(
    'five a day in September as mites',
    'mites',
    1500,
    1e-9,
    EXACT,
    'aumeier-table',
    'DERIVED',
    () => board('2026-09-20', 50).mitesInColony!,
  ),
  row(
    'one a day in November as mites',
    'mites',
    500,
    1e-9,
    EXACT,
    'aumeier-table',
    'DERIVED',
    () => board('2026-11-20', 10).mitesInColony!,
  ),

  row('formic strips from', 'degC', 10, 1e-9, EXACT, 'formic-label-uk', 'READ', () => limits('formic-strips').tempLowC!),
  row('formic strips to', 'degC', 29.5, 1e-9, EXACT, 'formic-label-uk', 'READ', () => limits('formic-strips').tempHighC!),
  row(
    'formic strips never above, in the first days',
    'degC',
    33,
    1e-9,
    EXACT,
    'formic-label-uk',
    'READ',
    () => limits('formic-strips').stopHighC!,
  ),
  row('days of that', 'd', 3, 1e-9, EXACT, 'formic-label-uk', 'READ', () => limits('formic-strips').stopDays!),
  row('days of formic strips', 'd', 7, 1e-9, EXACT, 'formic-label-uk', 'READ', () => limits('formic-strips').durationDays!),
  row(
    'formic acid, low end of the effect',
    '1',
    0.493,
    0.05,
    'strips of the trial',
    'pietropaoli-2021',
    'READ',
    () => effect('formic-strips', false).low,
  ),
  row(
    'formic acid, high end of the effect',
    '1',
    0.812,
    0.05,
    'gel of the trial',
    'pietropaoli-2021',
    'READ',
    () => effect('formic-strips', false).high,
  ),
  row('oxalic trickled from', 'degC', 3, 1e-9, EXACT, 'oxalic-leaflet-de', 'READ', () => limits('oxalic-dribble').tempLowC!),
  row(
    'oxalic trickled without brood',
    '1',
    0.9944,
    0.01,
    'rounded to a planning figure',
    'gregorc-2001',
    'READ',
    () => effect('oxalic-dribble', true).high,
  ),
  row(
    'oxalic trickled with brood, low',
    '1',
    0.3916,
    0.02,
    'rounded to a planning figure',
    'gregorc-2001',
    'READ',
    () => effect('oxalic-dribble', false).low,
  ),
  row(
    'oxalic trickled with brood, high',
    '1',
    0.5228,
    0.03,
    'rounded to a planning figure',
    'gregorc-2001',
    'READ',
    () => effect('oxalic-dribble', false).high,
  ),
  row('thymol from', 'degC', 15, 1e-9, EXACT, 'coffey-2013', 'READ', () => limits('thymol').tempLowC!),
  row('thymol, low end of the effect', '1', 0.538, 0.02, 'blend of the trial', 'coffey-2013', 'READ', () => effect('thymol', false).low),
  row('thymol, high end of the effect', '1', 0.847, 0.01, 'strip of the trial', 'coffey-2013', 'READ', () => effect('thymol', false).high),
  row('warning level of spring', '1', 0.01, 1e-9, EXACT, 'manitoba-treatment', 'READ', () => level('2026-04-20').warn),
  row(
    'level to stay under in September with brood',
    '1',
    0.01,
    1e-9,
    'low end of the printed range',
    'manitoba-treatment',
    'READ',
    () => level('2026-09-20').warn,
  ),
  row(
    'treating level of September with brood, the middle',
    '1',
    0.02,
    1e-9,
    'middle of the printed range',
    'manitoba-treatment',
    'DERIVED',
    () => level('2026-09-20').treat,
  ),
  row(
    'never accepted in September with brood',
    '1',
    0.03,
    1e-9,
    'high end of the printed range',
    'manitoba-treatment',
    'READ',
    () => level('2026-09-20').never!,
  ),
  row('board in July, watch above', 'mites/d', 5.1, 1e-9, 'first tenth above 5', 'sweden-board', 'READ-2', () =>
    turnsAt('2026-07-20', ['watch', 'treat']),
  ),
  row('board in September, young colony', 'mites/d', 1.1, 1e-9, 'first tenth above 1', 'aumeier-table', 'READ', () =>
    turnsAt('2026-09-20', ['treat'], 'young'),
  ),
  row(
    'ten a day in July as mites, young colony',
    'mites',
    1500,
    1e-9,
    EXACT,
    'aumeier-table',
    'DERIVED',
    () => board('2026-07-20', 100, 'young').mitesInColony!,
  ),
  row(
    'five a day in September as mites, young colony',
    'mites',
    1500,
    1e-9,
    EXACT,
    'aumeier-table',
    'DERIVED',
    () => board('2026-09-20', 50, 'young').mitesInColony!,
  ),
  row(
    'formic acid without brood, low end of the effect',
    '1',
    0.493,
    0.05,
    'strips of the trial; no other figure',
    'pietropaoli-2021',
    'READ',
    () => effect('formic-strips', true).low,
  ),
  row(
    'formic acid without brood, high end of the effect',
    '1',
    0.812,
    0.05,
    'gel of the trial; no other figure',
    'pietropaoli-2021',
    'READ',
    () => effect('formic-strips', true).high,
  ),
  row('oxalic trickled goes in once', 'd', 1, 1e-9, EXACT, 'oxalic-leaflet-de', 'READ', () => limits('oxalic-dribble').durationDays!),
  row(
    'oxalic trickled without brood, low end',
    '1',
    0.95,
    0.01,
    'more than 95 %',
    'oxalic-reviews',
    'READ',
    () => effect('oxalic-dribble', true).low,
  ),
  row('days of thymol', 'd', 21, 1e-9, EXACT, 'mattila-1999', 'READ', () => limits('thymol').durationDays!),
  row(
    'thymol without brood, low end of the effect',
    '1',
    0.538,
    0.02,
    'blend of the trial; no other figure',
    'coffey-2013',
    'READ',
    () => effect('thymol', true).low,
  ),
  row(
    'thymol without brood, high end of the effect',
    '1',
    0.847,
    0.01,
    'strip of the trial; no other figure',
    'coffey-2013',
    'READ',
    () => effect('thymol', true).high,
  ),
];
