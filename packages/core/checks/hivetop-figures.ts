import { type Material, materialOf } from '../src/tables/materials.ts';
import { hivetopParameters } from '../src/tables/parameters-hivetop.gen.ts';
import { type Check, figuresOf, row } from './check.ts';

const figure = figuresOf(hivetopParameters);

const material = (
  key: string,
  field: keyof Material,
  expected: Check['expected'],
  within: number,
  why: string,
  mark: Check['mark'],
  source: string,
): Check =>
  row(
    `${key}: ${field} as ${source} has it`,
    UNITS[field] ?? '1',
    expected,
    within,
    why,
    source,
    mark,
    () => materialOf(key)![field] as number,
  );
const UNITS: Readonly<Partial<Record<keyof Material, string>>> = {
  densityKgPerM3: 'kg/m3',
  wPerMK: 'W/(m·K)',
  vapourKgPerMSPa: 'kg/(m·s·Pa)',
  airPathM2: 'm2',
  liquidKgPerKg: 'kg/kg',
};
/** Middle of a printed range of resistivities [GN s/(kg m)], as it lies on a logarithmic line; as permeability. */
const between = (low: number, high: number) => 1e-9 / Math.sqrt(low * high);
/** Carman and Kozeny: bed of grains of a size with so much room between [m2]. */
const bed = (grainM: number, room: number) => (grainM ** 2 * room ** 3) / (180 * (1 - room) ** 2);

/** Cells that rest on memory or judgement alone. */
const RECALLED: readonly (readonly [key: string, field: keyof Material, expected: number])[] = [
  ['pine', 'specificGravity', 0.35],
  ['spruce', 'specificGravity', 0.37],
  ['cedar', 'specificGravity', 0.31],
  ['plywood', 'specificGravity', 0.42],
  ['pine', 'densityKgPerM3', 400],
  ['spruce', 'densityKgPerM3', 420],
  ['cedar', 'densityKgPerM3', 350],
  ['plywood', 'densityKgPerM3', 500],
  ['shavings', 'densityKgPerM3', 110],
  ['burlap', 'densityKgPerM3', 400],
  ['fibre board', 'densityKgPerM3', 270],
  ['pine', 'liquidKgPerKg', 0.3],
  ['spruce', 'liquidKgPerKg', 0.3],
  ['cedar', 'liquidKgPerKg', 0.3],
  ['plywood', 'liquidKgPerKg', 0.2],
  ['burlap', 'liquidKgPerKg', 1],
  ['fibre board', 'liquidKgPerKg', 1],
  ['candy', 'liquidKgPerKg', 0.4],
  ['wood pellets', 'wPerMK', 0.12],
  ['fibre board', 'wPerMK', 0.055],
  ['candy', 'wPerMK', 0.25],
  ['snow', 'wPerMK', 0.12],
  ['xps', 'vapourKgPerMSPa', 1.7e-12],
  ['polyiso', 'vapourKgPerMSPa', 4e-12],
  ['wood pellets', 'vapourKgPerMSPa', 1e-10],
  ['shavings', 'vapourKgPerMSPa', 1.4e-10],
  ['burlap', 'vapourKgPerMSPa', 1.2e-10],
  ['candy', 'vapourKgPerMSPa', 1e-12],
  ['snow', 'vapourKgPerMSPa', 5e-11],
  ['wood pellets', 'airPathM2', 4e-8],
  ['shavings', 'airPathM2', 2e-8],
  ['burlap', 'airPathM2', 1e-9],
];

export const hivetopFigureChecks: readonly Check[] = [
  figure('filmOutsideM2KPerW', 0.17 * 0.1761102, 0.001, 'rounded to 0.001'),
  figure('filmEmittance', 0.9, 0.01, 'the tables’ ordinary surface'),
  figure('lewisNumber', 0.845, 0.002, 'three digits'),
  figure('dischargeCoefficient', [0.6, 0.65], 0, 'the range recalled'),
  figure('openingTallM', 0.01905, 0.0002, '3/4 in'),
  figure('latentVaporizeJPerKg', 2_501_000, 2000, 'four digits'),
  figure('latentFreezeJPerKg', 333_600, 500, 'four digits'),
  figure('airHeatJPerKgK', 1006, 2, 'four digits'),
  figure('rimWallM', 0.01905, 0.0005, '3/4 in'),
  figure('sugarWetsAtRhFrac', [0.82, 0.83], 0, 'the range of the source'),
  figure('fibreSaturationFrac', 0.3, 0.01, '“about 30 %”'),
  figure('leastOxygenFrac', 0.15, 0.005, '“about 15 %”'),
  figure('airOxygenFrac', 0.2095, 0.0005, 'four digits'),
  figure('windExchangeFrac', 0.025, 0.001, 'the equation recalled'),
  material('foil', 'emittance', [0.03, 0.1], 0, 'the range of the source', 'READ', 'foil-emittance'),
  material('foil', 'emittance', 0.05, 0.005, 'the emittance handbook tables of foil stand for', 'MEMORY', 'film-memory'),
  ...['pine', 'spruce', 'cedar'].map((key) =>
    material(key, 'vapourKgPerMSPa', between(45, 1850), 1e-13, 'middle of the range', 'DERIVED', 'vapour-resistivity'),
  ),
  material('plywood', 'vapourKgPerMSPa', between(150, 2000), 1e-13, 'middle of the range', 'DERIVED', 'vapour-resistivity'),
  material('eps', 'vapourKgPerMSPa', between(100, 750), 1e-13, 'middle of the range', 'DERIVED', 'vapour-resistivity'),
  material('fibre board', 'vapourKgPerMSPa', between(15, 375), 5e-13, 'middle of the range', 'DERIVED', 'vapour-resistivity'),
  material('wood pellets', 'densityKgPerM3', 600, 30, 'bedding 600, fuel 650', 'READ', 'pellet-bedding'),
  material('wood pellets', 'liquidKgPerKg', [3, 5], 0, 'at least three times its mass in a test', 'READ', 'pellet-bedding'),
  material('wood pellets', 'liquidKgPerKg', 4, 0.2, 'about four times', 'PRACTICE', 'pellet-practice'),
  material('wood pellets', 'swellFactor', 4, 0.2, 'about four times, on a page and in practice', 'READ', 'pellet-bedding'),
  material(
    'wood pellets',
    'airPathM2',
    bed(0.007, 0.4),
    1.5e-8,
    'grains of 7 mm, two fifths room: a factor of two is easily off',
    'DERIVED',
    'Carman and Kozeny (from memory)',
  ),
  material('shavings', 'liquidKgPerKg', [1.5, 2], 0, 'the range recalled', 'MEMORY', 'hivetop-memory'),
  material('shavings', 'wPerMK', 0.06, 0.005, 'as the envelope has it', 'MEMORY', 'hivetop-memory'),
  material('candy', 'densityKgPerM3', 1010, 20, 'mean of two published blocks', 'DERIVED', 'candy-block-sizes'),
  material('burlap', 'wPerMK', 0.06, 0.005, 'a cloth of fibres and air', 'JUDGEMENT', 'hivetop-judgement'),
  ...[
    'pine',
    'spruce',
    'cedar',
    'plywood',
    'eps',
    'xps',
    'polyiso',
    'wood pellets',
    'shavings',
    'burlap',
    'fibre board',
    'candy',
    'snow',
  ].map((key) => material(key, 'emittance', 0.9, 0.01, 'the tables’ ordinary surface', 'READ', 'film-resistance')),
  ...RECALLED.map(([key, field, expected]) =>
    material(
      key,
      field,
      expected,
      expected * 0.02,
      'as recalled or judged: it shows that the cell was typed in rightly',
      'MEMORY',
      'hivetop-memory',
    ),
  ),
  figure('airSpaceConvectionDownWPerM2K', 0.024 / 0.02, 0.05, 'still air, 0.024 W/(m·K), 20 mm'),
  figure('meshFreeFrac', 0.65, 0.01, 'as recalled'),
  figure('sugarDryUptakeFrac', 0.002, 0.0001, 'as recalled'),
];
