import { cutSheets } from '../src/kit/cutting.ts';
import { candyBoard, footprintOf, kit, syrupBatch } from '../src/kit/index.ts';
import { kitParameters } from '../src/tables/parameters-kit.gen.ts';
import { partOf } from '../src/tables/parts.ts';
import { answerOf, type Check, figuresOf, row } from './check.ts';

const figure = figuresOf(kitParameters);
const INCH = 0.0254;
const LB = 0.45359237;
const celsius = (f: number) => ((f - 32) * 5) / 9;

function heightOf(key: string): number {
  const part = partOf(key);
  if (part?.kind !== 'box') throw new RangeError(`heightOf: ${key} is no box`);
  return part.heightM;
}
const gallon = (unit: 'US gal' | 'imp gal') => answerOf(syrupBatch({ ratio: '2:1', basis: 'mass', amount: 1, unit })).syrup.sugarKg / LB;

export const kitChecks: readonly Check[] = [
  row(
    'three medium boxes against two deep ones: how nearly they hold the same',
    '1',
    (3 * 6.625) / (2 * 9.625),
    0.005,
    'depths in millimetres to one',
    'depths 6 5/8 and 9 5/8 in',
    'READ',
    () => (3 * heightOf('medium-10-wood')) / (2 * heightOf('deep-10-wood')),
  ),
  row(
    'pellets taken a quarter deep and swollen fourfold against the height of the box',
    '1',
    1,
    0.05,
    'swells about four times',
    'pellet-practice',
    'PRACTICE',
    () => answerOf(kit({ hives: 1, top: 'vented-box' })).pieces!.fill!.depthM / kitParameters.topBoxHeightM.value / 0.25,
  ),
  row(
    'mesh against mice: its openings are below the widest slot that keeps mice out',
    'm',
    [0, 0.0075],
    0,
    'widest slot published',
    'mouse-slots',
    'READ',
    () => kitParameters.meshPitchM.value,
  ),
  row(
    'a ventilation hole of 19 mm lets a mouse pass unless meshed: it is wider than the slot',
    'm',
    [0.0095, 0.025],
    0,
    'less than 3/8 in stops a mouse',
    'mouse-slots',
    'READ',
    () => kitParameters.ventHoleM.value,
  ),
  figure('ventHoleM', 0.75 * INCH, 0.0002, '3/4 in'),
  figure('mouseGapM', 0.0075, 0.0001, '7.5 mm'),
  figure('meshPitchM', 0.125 * INCH, 0.0001, '1/8 in'),
  figure('sheetLengthM', 8 * 12 * INCH, 0.001, '8 ft'),
  figure('sheetWidthM', 4 * 12 * INCH, 0.001, '4 ft'),
  figure('boardLengthM', 8 * 12 * INCH, 0.001, '8 ft'),
  figure('meshRollLengthM', 10 * 12 * INCH, 0.001, '10 ft'),
  figure('meshRollWidthM', 36 * INCH, 0.001, '3 ft'),
  figure('clothRollWidthM', 40 * INCH, 0.001, '40 in'),
  figure('pelletBagKg', 40 * LB, 0.01, '40 lb'),
  figure('sugarBagKg', 25 * LB, 0.01, '25 lb'),
  figure('jarL', 0.946352946, 0.001, 'one US quart'),
  figure('containerL', 5 * 3.785411784, 0.01, '5 US gallons'),
  figure('boilHardC', celsius(248), 0.1, '248 °F'),
  figure('boilSoftC', [celsius(240), celsius(243)], 0, '240 to 243 °F'),
  figure('stirAtC', [celsius(175), celsius(180)], 0, '175 to 180 °F'),
  figure('candyOnAboveC', celsius(20), 0.5, '20 °F'),
  figure('boiledWaterPerSugarFrac', (2 * 0.2365882365 * 0.998) / (5 * LB), 0.002, '2 US cups of water to 5 lb'),
  figure('sugarEnergyMJPerKg', 16.5, 0.1, 'three digits'),
  row(
    'sugar in a US gallon of 2:1 by mass',
    'lb',
    7.38,
    0.03,
    'trade arithmetic to three digits',
    'checks of syrup arithmetic at 20 °C',
    'DERIVED',
    () => gallon('US gal'),
  ),
  row(
    'sugar in an imperial gallon of 2:1 by mass',
    'lb',
    8.86,
    0.04,
    'trade arithmetic to three digits',
    'checks of syrup arithmetic at 20 °C',
    'DERIVED',
    () => gallon('imp gal'),
  ),
  row(
    'sugar of a no-cook rim 1.5 in deep in a ten-frame hive',
    'lb',
    16,
    2.5,
    'how hard it is packed: 15 %',
    'candy-block-sizes',
    'READ',
    () => answerOf(candyBoard({ lengthM: 0.467, widthM: 0.375, depthM: 1.5 * INCH })).sugarKg / LB,
  ),
  row(
    'lids of 19 7/8 by 16 1/4 in from a sheet of 48 by 96 in, 1/8 in saw, counted by hand: two across, five along',
    'pieces',
    10,
    0,
    '2 x 19.875 + 0.125 in 48; 5 x 16.25 + 4 x 0.125 in 96',
    'counted by hand',
    'ARITHMETIC',
    () => {
      const { outsideLengthM, outsideWidthM } = footprintOf(10);
      return cutSheets(
        { lengthM: 96 * INCH, widthM: 48 * INCH },
        { lengthM: outsideLengthM, widthM: outsideWidthM },
        { count: 1, kerfM: 0.0032 },
      ).fromOne;
    },
  ),
];
