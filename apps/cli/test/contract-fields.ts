/**
 * The names others script against, copied by hand from the published table of the command line, not from our schemas.
 * `required` stand in every answer; `optional` only where the input asks for them.
 */
export const FIELDS: Readonly<
  Record<
    string,
    {
      readonly input: readonly string[];
      readonly required: readonly string[];
      readonly optional?: readonly string[];
      readonly inside?: Readonly<Record<string, readonly string[]>>;
    }
  >
> = {
  heft: {
    input: [
      'frontKg',
      'rearKg',
      'baseDepthM',
      'pivotInsetM',
      'frontOverhangM',
      'rearOverhangM',
      'frontHookHeightM',
      'rearHookHeightM',
      'centreHeightM',
      'liftM',
      'scaleStepKg',
      'frontShareFrac',
      'needGrossKg',
    ],
    required: ['totalKg', 'sdKg', 'basis'],
    optional: ['targetFrontKg', 'targetRearKg'],
  },
  syrup: {
    input: ['sugarKg', 'waterKg', 'ratio', 'basis', 'volumeL', 'tempC'],
    required: ['sugarFrac', 'densityKgPerM3', 'volumeL', 'sugarKg', 'waterKg', 'storesKg', 'saturationTempC'],
    inside: { storesKg: ['low', 'mid', 'high'] },
  },
  candy: { input: ['lengthM', 'widthM', 'depthM', 'sugarKg'], required: ['sugarKg', 'waterKg', 'massKg', 'cautions'] },
  wash: { input: ['bees', 'mites', 'certaintyFrac'], required: ['rateFrac', 'lowFrac', 'highFrac', 'interval'] },
  air: {
    input: ['tempC', 'pressurePa', 'rhFrac', 'rhIceFrac', 'dewPointC', 'vapourPa'],
    required: ['vapourPa', 'saturationWaterPa', 'saturationIcePa', 'dewPointC', 'frostPointC', 'humidityRatio', 'densityKgPerM3'],
  },
  top: {
    input: ['outsideC', 'outsideRhFrac', 'useKgPerDay', 'clusterHeatW', 'stack', 'openings', 'absorbent', 'days'],
    required: ['surfaces', 'dewPointC', 'waterMadeKg', 'waterOutKg', 'waterHeldKg', 'waterFrozenKg', 'waterDrippedKg', 'airflowKgPerS'],
  },
  // ours to name: not in the published table
  tops: {
    input: ['bees', 'from', 'to', 'tops', 'candyShareFrac', 'topMembers'],
    required: ['tops', 'members', 'topMembers', 'seed'],
  },
  kit: {
    input: ['hives', 'top', 'frames', 'syrup', 'candy', 'stock', 'prices', 'sizes'],
    required: ['lines', 'things', 'cost', 'unpriced', 'pieces', 'syrup', 'candy'],
  },
  stores: {
    input: ['grossKg', 'grossSdKg', 'build', 'bees', 'framesOfBees', 'cappedFrames', 'onHive', 'syrupGiven', 'date'],
    required: ['storesKg', 'sdKg', 'errorParts', 'measureNext', 'provisional'],
  },
  outlook: {
    input: [
      'bees',
      'beesSdFrac',
      'storesKg',
      'storesSdKg',
      'hive',
      'from',
      'to',
      'dailyMeanC',
      'place',
      'monthlyMeanC',
      'broodFrom',
      'forage',
      'indoors',
      'members',
      'seed',
      'certaintyFrac',
      'ownRule',
      'fixed',
    ],
    required: [
      'useKg',
      'dailyUseKg',
      'monthlyUseKg',
      'beesAtEnd',
      'runOut',
      'holdFrac',
      'needKg',
      'needParts',
      'doubtShares',
      'scaleKg',
      'extrapolating',
    ],
    inside: {
      useKg: ['p5', 'p50', 'p95', 'mean'],
      beesAtEnd: ['p5', 'p50', 'p95'],
      runOut: ['p5', 'p50', 'p95'],
      scaleKg: ['p5', 'p50', 'p95'],
      doubtShares: ['weather', 'appetite', 'bees', 'tare', 'scale', 'forage'],
    },
  },
  weather: {
    input: [],
    required: ['station', 'days', 'missingDays', 'rejected', 'monthlyMeanC', 'monthlySdC', 'lastFrost', 'firstFrost', 'winters'],
    inside: { lastFrost: ['p5', 'p50', 'p95'], firstFrost: ['p5', 'p50', 'p95'] },
  },
  tasks: { input: [], required: ['today', 'tasks', 'yards'], inside: {} },
  season: {
    input: ['place', 'lat'],
    required: [
      'lastFeedingDay',
      'lastGluingDay',
      'clusterDay',
      'broodlessFrom',
      'broodlessTo',
      'firstFlight',
      'firstPollen',
      'firstForage',
      'winterBeesFrom',
      'winterBeesTo',
      'lastFrost',
      'firstFrost',
    ],
    inside: {
      lastFeedingDay: ['p10', 'p50', 'p90'],
      lastGluingDay: ['p10', 'p50', 'p90'],
      clusterDay: ['p10', 'p50', 'p90'],
      broodlessFrom: ['p10', 'p50', 'p90'],
      broodlessTo: ['p10', 'p50', 'p90'],
      firstFlight: ['p10', 'p50', 'p90'],
      firstPollen: ['p10', 'p50', 'p90'],
      firstForage: ['p10', 'p50', 'p90'],
      winterBeesFrom: ['p10', 'p50', 'p90'],
      winterBeesTo: ['p10', 'p50', 'p90'],
      lastFrost: ['p10', 'p50', 'p90'],
      firstFrost: ['p10', 'p50', 'p90'],
    },
  },
  provision: {
    input: ['colonies', 'bank', 'sugarKg', 'feeders', 'daysToLastFeeding', 'prices', 'rules'],
    required: ['moves', 'syrup', 'candy', 'unite', 'uncovered', 'objective', 'bound', 'gapFrac', 'reasons', 'order'],
  },
  mites: { input: [], required: ['yards', 'colonies', 'records', 'made', 'unread'] },
  watch: { input: [], required: ['today', 'lines', 'made', 'unread'] },
  spring: { input: [], required: ['winter', 'colonies', 'survivors', 'said', 'deadouts', 'made', 'unread'] },
  learn: { input: [], required: ['appetite', 'syrupYield', 'frontShare', 'made', 'unread'] },
  plan: { input: [], required: ['outlooks', 'provision', 'dates', 'tasks', 'unread', 'clashes', 'made'] },
};
