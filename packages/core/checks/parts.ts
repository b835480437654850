import { readBuild } from '../src/matter/index.ts';
import { partMass } from '../src/stores/index.ts';
import { storesParameters } from '../src/tables/parameters-stores.gen.ts';
import {
  type BoxPart,
  type Build,
  type FrameDepth,
  framePart,
  PARTS_TABLE,
  type Part,
  partOf,
  standardBuild,
} from '../src/tables/parts.ts';
import type { Check } from './check.ts';

const LB = 0.45359237;
const INCH = 0.0254;
const TEN_FRAME = { lengthM: 0.505, widthM: 0.413 };

function row(key: string): Part {
  const part = partOf(key);
  if (part === undefined) throw new RangeError(`the parts table has no ${key}`);
  return part;
}
const massKg = (key: string) => partMass(row(key), TEN_FRAME).massKg;
const sumKg = (build: Build) => build.reduce((total, { part, count }) => total + count * massKg(part), 0);
const field = (key: string, name: string) => Number((row(key) as unknown as Record<string, unknown>)[name]);

const INSIDE_L: Readonly<Record<string, { expected: number; source: string; mark: Check['mark'] }>> = {
  'deep-10': {
    expected: 42.7,
    source: 'inside 18 3/8 x 14 3/4 in of the ten-frame box (from memory) times the depth 9 5/8 in',
    mark: 'DERIVED',
  },
  'medium-10': { expected: 29.4, source: 'the same, depth 6 5/8 in', mark: 'DERIVED' },
  'shallow-10': { expected: 25.5, source: 'the same, depth 5 11/16 to 5 3/4 in', mark: 'DERIVED' },
  'deep-8': { expected: 36.2, source: 'box-pages: outside 19 7/8 x 14 in, wall 3/4 in, depth 9 5/8 in', mark: 'DERIVED' },
  'medium-8': { expected: 24.9, source: 'box-pages: the same, depth 6 5/8 in', mark: 'DERIVED' },
  'shallow-8': { expected: 21.6, source: 'box-pages: the same, depth 5 11/16 to 5 3/4 in', mark: 'DERIVED' },
  'deep-5': { expected: 21.8, source: 'outside width 9 in from memory, wall 3/4 in, depth 9 5/8 in', mark: 'MEMORY' },
  'medium-5': { expected: 15.0, source: 'the same, depth 6 5/8 in', mark: 'MEMORY' },
  'shallow-5': { expected: 13.0, source: 'the same, depth 5 11/16 to 5 3/4 in', mark: 'MEMORY' },
};

function insideL(box: BoxPart): number {
  return (box.outsideLengthM - 2 * box.wallM) * (box.outsideWidthM - 2 * box.wallM) * box.heightM * 1000;
}

const boxChecks: Check[] = PARTS_TABLE.filter((part) => part.kind === 'box').flatMap((box) => {
  const [depth, frames] = box.key.split('-');
  const inside = INSIDE_L[`${depth}-${frames}`]!;
  return [
    {
      name: `${box.key}: volume inside`,
      unit: 'L',
      ...inside,
      within: 0.3,
      why: 'makers differ by a millimetre or two',
      ours: () => insideL(box),
    },
    {
      name: `${box.key}: frames it is named for`,
      unit: 'frames',
      expected: Number(frames),
      within: 0,
      why: 'its name',
      source: 'name of the box',
      mark: 'ARITHMETIC',
      ours: () => box.framesFit,
    },
    {
      name: `${box.key}: wall`,
      unit: 'm',
      expected: box.material === 'pine' ? 0.75 * INCH : 0.04,
      within: 0.001,
      why: 'planing',
      source: box.material === 'pine' ? 'Williams 2012, year round insulation system: 3/4 in' : 'foam-box-derived: 40 mm wall',
      mark: box.material === 'pine' ? 'READ' : 'DERIVED',
      ours: () => box.wallM,
    },
  ];
});

const bareBox = (key: string, low: number, high: number, source: string): Check => ({
  name: `${key}: mass of the bare box`,
  unit: 'kg',
  expected: [low, high],
  within: 0.03,
  why: 'the range is that of the density; its ends are printed to 0.1',
  source,
  mark: 'DERIVED',
  ours: () => partMass(row(key), { lengthM: field(key, 'outsideLengthM'), widthM: field(key, 'outsideWidthM') }).massKg,
});

const weighed = (key: string, lb: number): Check => ({
  name: `${key}: weighed`,
  unit: 'kg',
  expected: lb * LB,
  within: 0.02,
  why: 'the fish scale shows an ounce or two',
  source: 'hobby-weighing',
  mark: 'READ',
  ours: () => massKg(key),
});

const recalled = (key: string, name: string, expected: number, within: number, source: string): Check => ({
  name: `${key}: ${name}`,
  unit: name.endsWith('Kg') ? 'kg' : 'm',
  expected,
  within,
  why: 'recalled, not measured',
  source,
  mark: 'MEMORY',
  ours: () => (name === 'massKg' ? massKg(key) : field(key, name)),
});

const waxOf = (depth: FrameDepth): Check => ({
  name: `${depth} drawn comb: wax on the bare frame`,
  unit: 'kg',
  expected: 3.7 * framePart(depth, 'drawn').combAreaM2,
  within: 0.02,
  why: 'the table rounds to 0.01 kg a frame',
  source: 'Ellis 2025: 0.37 g per cm2 of two-sided comb',
  mark: 'READ',
  ours: () => massKg(`${depth}-frame-drawn`) - massKg(`${depth}-frame-bare`),
});

const sealed = (depth: FrameDepth): Check => ({
  name: `${depth} comb: 10 dm2 sealed on both sides`,
  unit: 'kg',
  expected: [3, 3.5],
  within: 0,
  why: 'two national figures',
  source: 'sealed-comb: 0.30 kg/dm2 Sweden, 0.35 Germany',
  mark: 'READ',
  ours: () => (framePart(depth, 'drawn').cappedNetKg / framePart(depth, 'drawn').combAreaM2) * 0.1,
});

const net = (depth: FrameDepth, expected: Check['expected'], within: number, source: string): Check => ({
  name: `${depth} frame: net honey when full and capped (${source})`,
  unit: 'kg',
  expected,
  within,
  why: 'full frames differ by more than a pound between sources',
  source,
  mark: 'READ',
  ours: () => framePart(depth, 'drawn').cappedNetKg,
});

/** Area of a comb that is shorter by the difference of the frame depths; the deep comb is 0.4335 m wide. */
const shorter = (depth: FrameDepth, frameInch: number): Check => ({
  name: `${depth} comb: area of one side`,
  unit: 'm2',
  expected: 0.088 - (9.125 - frameInch) * INCH * 0.4335,
  within: 0.001,
  why: 'frames of makers differ by some millimetres',
  source: 'box-pages: frame depths 9 1/8, 6 1/4 and 5 3/8 in',
  mark: 'ARITHMETIC',
  ours: () => framePart(depth, 'drawn').combAreaM2,
});

const ratioBound = (depth: FrameDepth, name: 'cappedNetLowKg' | 'cappedNetHighKg'): Check => ({
  name: `${depth} frame: ${name} spread as that of the deep frame`,
  unit: 'kg',
  expected: (framePart(depth, 'drawn').cappedNetKg / 3) * (name === 'cappedNetLowKg' ? 2.3 : 3.6),
  within: 0.05,
  why: 'rounded to 0.05',
  source: 'full-frames',
  mark: 'ARITHMETIC',
  ours: () => framePart(depth, 'drawn')[name],
});

const bound = (name: 'cappedNetLowKg' | 'cappedNetHighKg', lb: number): Check => ({
  name: `deep frame: ${name} is the published extreme`,
  unit: 'kg',
  expected: lb * LB,
  within: 0.05,
  why: 'rounded to 0.1',
  source: 'full-frames: 5 lb (Comstock 1905), 7 lb, 8 lb',
  mark: 'READ',
  ours: () => framePart('deep', 'drawn')[name],
});

const resistance = (key: string, expected: number, within: number, source: string): Check => ({
  name: `${key}: thickness of the board with the published resistance`,
  unit: 'm',
  expected: expected * 0.029,
  within,
  why: 'printed to three digits, conductivity 0.029 W/mK',
  source,
  mark: 'READ',
  ours: () => field(key, 'thicknessM'),
});

const FRAMES: Check[] = [
  {
    name: 'deep box with ten bare frames',
    unit: 'kg',
    expected: 13.69 * LB,
    within: 0.15,
    why: 'pine of one box against another',
    source: 'hobby-weighing: deep + 10 frames, no wax',
    mark: 'READ',
    usedForSetting: true,
    ours: () => massKg('deep-10-wood') + 10 * massKg('deep-frame-bare'),
  },
  {
    name: 'medium box with ten frames and wax sheets',
    unit: 'kg',
    expected: 10.25 * LB,
    within: 0.15,
    why: 'pine of one box against another',
    source: 'hobby-weighing: medium + 10 frames + wax',
    mark: 'READ',
    usedForSetting: true,
    ours: () => massKg('medium-10-wood') + 10 * massKg('medium-frame-foundation'),
  },
  {
    name: 'deep frame: wax sheet on the bare frame',
    unit: 'kg',
    expected: 0.06,
    within: 0.02,
    why: 'seven to eight sheets a pound',
    source: 'from memory',
    mark: 'MEMORY',
    ours: () => massKg('deep-frame-foundation') - massKg('deep-frame-bare'),
  },
  {
    name: 'shallow frame: wax sheet on the bare frame',
    unit: 'kg',
    expected: 0.035,
    within: 0.02,
    why: 'in proportion to the deep sheet',
    source: 'from memory',
    mark: 'MEMORY',
    ours: () => massKg('shallow-frame-foundation') - massKg('shallow-frame-bare'),
  },
  {
    name: 'deep drawn comb: old and new',
    unit: 'kg',
    expected: [0.58, 0.62],
    within: 0.01,
    why: 'rounded to 0.01',
    source: 'frames-derived',
    mark: 'DERIVED',
    usedForSetting: true,
    ours: () => massKg('deep-frame-drawn'),
  },
  ...(['deep', 'medium', 'shallow'] as const).flatMap((depth) => [waxOf(depth), sealed(depth)]),
  {
    name: 'deep comb: area of one side',
    unit: 'm2',
    expected: 0.0883,
    within: 0.0013,
    why: 'two sources agree within 1.4 %',
    source: 'Ellis 2025: 883 cm2; 871 from 2,700 in2 on ten frames',
    mark: 'READ',
    ours: () => framePart('deep', 'drawn').combAreaM2,
  },
  shorter('medium', 6.25),
  shorter('shallow', 5.375),
  net('deep', 7 * LB, 0.2, 'full-frames: 70 lb = 10 deep'),
  net('medium', [4 * LB, (70 / 15) * LB], 0.05, 'medium-fifteen: 60 lb; full-frames: 70 lb = 15 medium'),
  net('shallow', [1.5, (70 / 18) * LB], 0.05, 'sealed-comb; full-frames: 70 lb = 18 shallow'),
  bound('cappedNetLowKg', 5),
  bound('cappedNetHighKg', 8),
  ...(['medium', 'shallow'] as const).flatMap((depth) => [ratioBound(depth, 'cappedNetLowKg'), ratioBound(depth, 'cappedNetHighKg')]),
  {
    name: 'fat deep comb: net honey',
    unit: 'kg',
    expected: 9 * LB,
    within: 0.2,
    why: '8 to 9 lb is published',
    source: 'fat-combs',
    mark: 'READ',
    ours: () => framePart('deep', 'drawn').cappedNetKg * storesParameters.fullestFactor.value,
  },
];

const WHOLE: Check[] = [
  {
    name: 'two deeps, a medium, covers, stand and screened floor',
    unit: 'kg',
    expected: 55.34 * LB,
    within: 0.5,
    why: 'boxes of other pine',
    source: 'hobby-weighing: stated sum',
    mark: 'READ',
    usedForSetting: true,
    ours: () =>
      sumKg([
        { part: 'telescoping-cover', count: 1 },
        { part: 'inner-cover', count: 1 },
        { part: 'medium-10-wood', count: 1 },
        { part: 'medium-frame-foundation', count: 10 },
        { part: 'deep-10-wood', count: 2 },
        { part: 'deep-frame-bare', count: 20 },
        { part: 'stand', count: 1 },
        { part: 'screened-floor', count: 1 },
      ]),
  },
  {
    name: 'the same without the medium',
    unit: 'kg',
    expected: 45.1 * LB,
    within: 0.4,
    why: 'boxes of other pine',
    source: 'hobby-weighing, difference',
    mark: 'DERIVED',
    usedForSetting: true,
    ours: () =>
      sumKg([
        { part: 'telescoping-cover', count: 1 },
        { part: 'inner-cover', count: 1 },
        { part: 'deep-10-wood', count: 2 },
        { part: 'deep-frame-bare', count: 20 },
        { part: 'stand', count: 1 },
        { part: 'screened-floor', count: 1 },
      ]),
  },
  weighed('telescoping-cover', 8.5),
  weighed('inner-cover', 1.75),
  weighed('screened-floor', 4.06),
  weighed('stand', 3.38),
  weighed('top-feeder', 5.88),
];

/** A comb is as large and holds as much once it is drawn, whatever it was hung in as. */
const combAsDrawn: Check[] = PARTS_TABLE.filter((part) => part.kind === 'frame').map((frame) => ({
  name: `${frame.key}: area and honey of its comb against the drawn one`,
  unit: '1',
  expected: 4,
  within: 0,
  why: 'the same comb',
  source: 'four ratios of one',
  mark: 'ARITHMETIC',
  ours: () => {
    const drawn = framePart(frame.depth, 'drawn');
    return (['combAreaM2', 'cappedNetKg', 'cappedNetLowKg', 'cappedNetHighKg'] as const).reduce(
      (sum, name) => sum + frame[name] / drawn[name],
      0,
    );
  },
}));

function placesBeside(feeder: string): number {
  const read = readBuild([...standardBuild(['deep'], 10).filter(({ part }) => part !== 'deep-frame-drawn'), { part: feeder, count: 1 }]);
  return read.ok ? read.value.framePlaces : Number.NaN;
}

export const partsChecks: readonly Check[] = [
  ...combAsDrawn,
  {
    name: 'frame feeder: places left in a ten-frame box',
    unit: 'frames',
    expected: 9,
    within: 0,
    why: 'it hangs in place of a frame',
    source: 'its name',
    mark: 'PRACTICE',
    ours: () => placesBeside('frame-feeder'),
  },
  ...boxChecks,
  bareBox('deep-10-wood', 3.3, 3.7, 'trade figures: pine 400 to 450 kg/m3'),
  bareBox('medium-10-wood', 2.3, 2.5, 'trade figures: pine 400 to 450 kg/m3'),
  bareBox('deep-8-wood', 6.8 * LB, 7.6 * LB, 'trade figures: 6.8 to 7.6 lb'),
  bareBox('medium-8-wood', 4.6 * LB, 5.2 * LB, 'trade figures: 4.6 to 5.2 lb'),
  bareBox('deep-10-foam', 1.7, 1.85, 'foam-density: 18.0 L of shell at 95 to 100 g/L'),
  bareBox('medium-10-foam', 1.2, 1.3, 'foam-density: the same, depth of a medium; 1.2 at 100 g/L'),
  ...FRAMES,
  ...WHOLE,
  { ...recalled('solid-floor', 'massKg', 5 * LB, 0.3, '4 to 6 lb'), why: 'the middle of the range; a third of its width' },
  recalled('candy-rim', 'heightM', 2 * INCH, 0.002, '2 in'),
  { ...recalled('candy-rim', 'massKg', 0.9, 0.2, '0.7 to 1.1 kg'), why: 'the range that is recalled' },
  recalled('feeder-rim', 'heightM', 3 * INCH, 0.002, '3 in'),
  recalled('candy-rim', 'wallM', 0.75 * INCH, 0.001, '3/4 in'),
  recalled('feeder-rim', 'wallM', 0.75 * INCH, 0.001, '3/4 in'),
  recalled('absorbent-box', 'wallM', 0.75 * INCH, 0.001, '3/4 in'),
  recalled('absorbent-box', 'heightM', 4 * INCH, 0.003, '4 in'),
  recalled('inner-cover', 'thicknessM', 0.008, 0.001, '5/16 in board'),
  recalled('telescoping-cover', 'thicknessM', 0.015, 0.002, '5/8 in board under the metal'),
  recalled('flat-lid', 'thicknessM', 0.022, 0.003, '3/4 in board and cleats'),
  recalled('foam-lid', 'thicknessM', 0.04, 0.005, '40 mm as the walls'),
  recalled('solid-floor', 'thicknessM', 0.75 * INCH, 0.001, '3/4 in'),
  recalled('felt-wrap', 'massKg', 15 * LB * 1.25 * 10.764 * 0.01, 0.05, '15 lb to 100 square feet, 1.25 m2 around two deeps'),
  recalled('corrugated-wrap', 'massKg', 0.7 * 1.25, 0.06, '0.7 kg/m2'),
  recalled('corrugated-wrap', 'thicknessM', 0.004, 0.0005, '4 mm'),
  recalled('foam-wrap-25', 'massKg', 1.25 * 0.025 * 20, 0.05, '20 kg/m3'),
  recalled('foam-wrap-25', 'thicknessM', 0.025, 0.003, '1 in'),
  recalled('packing-wrap-100', 'massKg', 1.4 * 0.1 * 110, 1, '110 kg/m3'),
  recalled('packing-wrap-100', 'thicknessM', 0.1, 0.01, '100 mm'),
  recalled('shavings-fill', 'massKg', 0.175 * 0.1 * 110, 0.2, '110 kg/m3'),
  recalled('shavings-fill', 'thicknessM', 0.1, 0.01, '100 mm'),
  recalled('foam-board-50', 'massKg', 0.505 * 0.413 * 0.05 * 32, 0.03, '32 kg/m3'),
  recalled('frame-feeder', 'massKg', 0.6, 0.05, 'plastic feeder of one frame place'),
  recalled('jar-feeder', 'massKg', 0.5, 0.05, 'glass jar of 1 L with a lid'),
  resistance('foam-board-38', 1.32, 0.001, 'st-clair-2022: 38 mm, 1.32 m2K/W'),
  resistance('foam-board-50', 1.724, 0.0005, 'foam-board-notes: 50 mm, 1.724 m2K/W'),
];
