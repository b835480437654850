import { inchToM, lbToKg } from '../src/units/index.ts';
import {
  edgeReadingKg,
  fromBothEdges,
  heft,
  type LeverGeometry,
  plausibleGrossRange,
  standardGeometry,
  standardShareSdFrac,
  weighParameters,
  wordWeight,
} from '../src/weigh/index.ts';
import { type Check, row } from './check.ts';

const EXAMPLE_DEPTH_M = 0.508;
const EXAMPLE_KG = 50;
const BARE: LeverGeometry = {
  baseDepthM: EXAMPLE_DEPTH_M,
  pivotInsetM: 0,
  frontOverhangM: 0,
  rearOverhangM: 0,
  frontHookHeightM: 0,
  rearHookHeightM: 0,
  centreHeightM: 0.3,
  liftM: 0,
  pullLeanDeg: 0,
};
const tilted = (degrees: number) => EXAMPLE_DEPTH_M * Math.tan((degrees * Math.PI) / 180);
const hooks = (overhang: number, height = 0) => ({
  frontOverhangM: overhang,
  rearOverhangM: overhang,
  frontHookHeightM: height,
  rearHookHeightM: height,
});

/** [case, geometry, centre ahead of the middle, front, rear, sum in error]. */
const EXAMPLES: readonly (readonly [string, Partial<LeverGeometry>, number, number, number])[] = [
  ['hook and pivot at the edges, centre in the middle', {}, 0, 25, 25],
  ['centre 40 mm forward', {}, 0.04, 28.937, 21.063],
  ['hook 20 mm beyond the edge', hooks(0.02), 0, 24.053, 24.053],
  ['tilt of 3 degrees', { liftM: tilted(3) }, 0, 23.453, 23.453],
  ['tilt of 1 degree, tall hive', { liftM: tilted(1), centreHeightM: 0.45 }, 0, 24.227, 24.227],
  ['pivots 30 mm in', { pivotInsetM: 0.03 }, 0, 23.431, 23.431],
  ['tilt of 3 degrees, hook 50 mm up', { liftM: tilted(3), ...hooks(0, 0.05) }, 0, 23.574, 23.574],
  [
    'centre forward, hook out and up, tilt of 2 degrees',
    { liftM: tilted(2), centreHeightM: 0.35, ...hooks(0.02, 0.03) },
    0.04,
    26.737,
    19.146,
  ],
  ['tilt of 5 degrees', { liftM: tilted(5), centreHeightM: 0.4 }, 0, 21.556, 21.556],
  ['centre 60 mm back, hook 10 mm out', hooks(0.01), -0.06, 18.726, 30.309],
];

const lever: readonly Check[] = EXAMPLES.flatMap(([name, changes, ahead, front, rear]) => {
  const geometry = { ...BARE, ...changes };
  const shared = {
    within: 0.0006,
    why: 'half the last printed digit, once more for the rounded tilt',
    source: 'tilt-examples',
    mark: 'COMPUTED' as const,
  };
  const x = EXAMPLE_DEPTH_M / 2 + ahead;
  return [
    {
      ...shared,
      name: `front reading of 50 kg: ${name}`,
      unit: 'kg',
      expected: front,
      ours: () => edgeReadingKg(EXAMPLE_KG, x, geometry, 'front'),
    },
    {
      ...shared,
      name: `rear reading of 50 kg: ${name}`,
      unit: 'kg',
      expected: rear,
      ours: () => edgeReadingKg(EXAMPLE_KG, x, geometry, 'rear'),
    },
    {
      ...shared,
      name: `weight back from both readings: ${name}`,
      unit: 'kg',
      expected: EXAMPLE_KG,
      within: 0.002,
      why: 'readings printed to half a gram in 20 kg',
      ours: () => fromBothEdges(front, rear, geometry).totalKg,
    },
  ];
});

function sumErrorPercent(geometry: LeverGeometry): number {
  const x = geometry.baseDepthM / 2;
  return 100 * (edgeReadingKg(1, x, geometry, 'front') + edgeReadingKg(1, x, geometry, 'rear') - 1);
}

function fieldRepeatKg(): number {
  const result = heft({ frontKg: 22.5, rearKg: 22.5 });
  if (!result.ok) throw new Error(`a check was refused: ${JSON.stringify(result.error)}`);
  const { scatterKg, liftKg, hookKg } = result.value.sdParts;
  return 2 * Math.hypot(scatterKg, liftKg, hookKg);
}

function roundingKg(): number {
  const result = heft({ frontKg: 22.5, rearKg: 22.5, scaleCalibrationFrac: 0, readingScatterKg: 0 });
  return result.ok ? result.value.sdParts.stepKg : Number.NaN;
}

const scatterOnly = () => {
  const result = heft({ ...BARE, frontKg: 25, rearKg: 25, readingScatterKg: 0.25 });
  return result.ok ? result.value.sdParts.scatterKg : Number.NaN;
};

const p = weighParameters;

export const weighChecks: readonly Check[] = [
  ...lever,
  row(
    'both readings together are low by this at the lift and height taken without being told',
    '%',
    -1.16,
    0.01,
    'last printed digit',
    'tilt-examples',
    'COMPUTED',
    () => sumErrorPercent({ ...standardGeometry(), baseDepthM: EXAMPLE_DEPTH_M }),
  ),
  ...(
    [
      ['over the hive', 10, 24.534],
      ['away from it', -10, 26.298],
    ] as const
  ).map(([way, pullLeanDeg, expected]) =>
    row(
      `front reading of 50 kg: pull leaning 10 degrees ${way}, hook 100 mm up`,
      'kg',
      expected,
      0.0006,
      'half the last printed digit, and a little for the rounding of the angle',
      'tilt-examples',
      'COMPUTED',
      () => edgeReadingKg(EXAMPLE_KG, EXAMPLE_DEPTH_M / 2, { ...BARE, frontHookHeightM: 0.1, pullLeanDeg }, 'front'),
    ),
  ),
  row('the same for a tall hive', '%', -1.74, 0.01, 'last printed digit', 'tilt-examples', 'COMPUTED', () =>
    sumErrorPercent({ ...standardGeometry(), baseDepthM: EXAMPLE_DEPTH_M, centreHeightM: 0.45 }),
  ),
  row(
    'scatter of a total from two readings of 0.25 kg scatter',
    'kg',
    0.35,
    0.005,
    'half the last printed digit',
    'tilt-examples',
    'DERIVED',
    scatterOnly,
  ),
  row(
    'depth of the standard box',
    'm',
    inchToM(19.875),
    0.001,
    'makers differ by a sixteenth of an inch',
    'box-sizes',
    'READ',
    () => standardGeometry().baseDepthM,
  ),
  row('one edge bears roughly half', '1', 0.5, 0.05, 'printed as "roughly half"', 'half-rule', 'READ', () => p.frontShareFrac.value),
  row(
    'repeat error of a total by tilting in the field, two standard deviations',
    'kg',
    3,
    0.25,
    'middle of a published range of 2 to 4',
    'field-repeat',
    'MEMORY',
    fieldRepeatKg,
    true,
  ),
  row(
    'a trade scale of 0.2 kg steps in service at half a hive, one standard deviation',
    '1',
    (2 * 0.2) / 22.5 / 1.96,
    0.001,
    'two steps taken as 95 % bound',
    'oiml-r76',
    'MEMORY',
    () => p.scaleCalibrationFrac.value,
    true,
  ),
  row(
    'rounding error of a total read in pounds or half kilograms',
    'kg',
    [(lbToKg(1) * Math.SQRT2) / Math.sqrt(12), (0.5 * Math.SQRT2) / Math.sqrt(12)],
    0.005,
    'steps of one pound to half a kilogram; a few grams for the tilt',
    'hand-scale',
    'ARITHMETIC',
    roundingKg,
    true,
  ),
  row(
    'a centre 20 mm off the middle moves the front share by',
    '1',
    0.02 / 0.505,
    0.0008,
    'how far the sum of two spreads may miss it',
    'own-judgement-weigh',
    'JUDGEMENT',
    standardShareSdFrac,
    true,
  ),
  row(
    'two lifts differ by a finger: 3 to 20 mm as 5 to 95 %',
    'm',
    0.017 / 3.29,
    0.0005,
    'a tenth',
    'own-judgement-weigh',
    'PRACTICE',
    () => p.liftSdM.value,
    true,
  ),
  row(
    'a hook set by eye sits within 20 mm, two standard deviations',
    'm',
    0.02,
    0.002,
    'a tenth',
    'own-judgement-weigh',
    'PRACTICE',
    () => 2 * p.overhangSdM.value,
    true,
  ),
  row(
    'centre height between one box and three as 5 to 95 %',
    'm',
    (0.45 - 0.17) / 3.29,
    0.008,
    'a tenth',
    'own-judgement-weigh',
    'PRACTICE',
    () => p.centreHeightSdM.value,
    true,
  ),
  row(
    'a spread learnt from so few hives is itself unsure by',
    '1',
    0.354,
    0.02,
    'one over the root of twice the degrees',
    'own-judgement-weigh',
    'JUDGEMENT',
    () => 1 / Math.sqrt(2 * p.spreadPriorDegrees.value),
    true,
  ),
  row(
    'least front share: all honey behind, four fifths of the weight',
    '1',
    0.5 - 0.25 * 0.8,
    0.02,
    'a thumb’s breadth',
    'share-bounds',
    'ARITHMETIC',
    () => p.frontShareLowestFrac.value,
    true,
  ),
  row(
    'greatest front share: all honey in front, four fifths of the weight',
    '1',
    0.5 + 0.25 * 0.8,
    0.02,
    'a thumb’s breadth',
    'share-bounds',
    'ARITHMETIC',
    () => p.frontShareHighestFrac.value,
    true,
  ),
  row(
    'the lightest hive is half an empty single one in wood',
    'kg',
    lbToKg(13.69 + 8.5 + 1.75 + 4.06) / 2,
    0.3,
    'one rounding',
    'gross-bounds',
    'DERIVED',
    () => plausibleGrossRange().lowKg,
    true,
  ),
  row(
    'the heaviest hive is four full deep boxes with floor, stand and covers',
    'kg',
    lbToKg(4 * 80 + 8.5 + 1.75 + 4.06 + 3.38),
    1,
    'one rounding',
    'gross-bounds',
    'DERIVED',
    () => plausibleGrossRange().highKg,
    true,
  ),
  row(
    'a single called fair weighs the published least',
    'kg',
    31.9,
    0.2,
    'printed with 70 lb, which is 31.8',
    'ontario-checklist',
    'READ',
    () => wordWeight('fair', 1).totalKg,
  ),
  row(
    'a double called fair weighs the published least',
    'kg',
    45.5,
    0.2,
    'printed with 100 lb, which is 45.4',
    'ontario-checklist',
    'READ',
    () => wordWeight('fair', 2).totalKg,
  ),
  row(
    'a single called heavy weighs the published target',
    'kg',
    lbToKg(95),
    0.2,
    'whole pounds',
    'capa-targets',
    'READ',
    () => wordWeight('heavy', 1).totalKg,
  ),
  row(
    'a double called heavy weighs the published target',
    'kg',
    lbToKg(135),
    0.2,
    'whole pounds',
    'capa-targets',
    'READ',
    () => wordWeight('heavy', 2).totalKg,
  ),
  row(
    'neighbouring words meet one standard deviation from each',
    '1',
    0.5,
    0.05,
    'a tenth',
    'own-judgement-weigh',
    'JUDGEMENT',
    () => p.wordSdStepsFrac.value,
    true,
  ),
];
