import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keyOf, normalAt } from '../src/chance/index.ts';
import {
  bothEdgesError,
  edgeReadingKg,
  fromBothEdges,
  fromOneEdgeKg,
  HEFT_WORDS,
  heft,
  type LeverGeometry,
  learnFrontShare,
  plausibleEdgeRange,
  readingOfShareKg,
  standardGeometry,
  standardScale,
  standardShareSdFrac,
  tenfoldCandidatesKg,
  weighParameters,
  wordWeight,
} from '../src/weigh/index.ts';

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const geometries: fc.Arbitrary<LeverGeometry> = fc.record({
  baseDepthM: metres(0.4, 0.6),
  pivotInsetM: metres(0, 0.05),
  frontOverhangM: metres(-0.03, 0.1),
  rearOverhangM: metres(-0.03, 0.1),
  frontHookHeightM: metres(0, 0.3),
  rearHookHeightM: metres(0, 0.3),
  centreHeightM: metres(0.1, 0.5),
  liftM: metres(0, 0.03),
  pullLeanDeg: metres(-15, 15),
});
const hives = fc.record({ massKg: metres(8, 150), lean: metres(-0.06, 0.06), geometry: geometries });

describe('lever', () => {
  /**
   * Virtual work: a rigid hive turned about the line it rests on. Weight does work as its centre rises, the pull as its hook goes the
   * way of the pull: up, and towards the resting edge by so much as it leans over the hive. The pull is the derivative of the one by
   * the other. Nothing of the moment equation is used.
   */
  function pullByVirtualWork(massKg: number, armM: number, hookArmM: number, hookHeightM: number, geometry: LeverGeometry): number {
    const tilt = Math.atan(geometry.liftM / geometry.baseDepthM);
    const height = (alongM: number, upM: number, angle: number) => alongM * Math.sin(angle) + upM * Math.cos(angle);
    const step = 1e-5;
    const rise = (alongM: number, upM: number) => height(alongM, upM, tilt + step) - height(alongM, upM, tilt - step);
    const out = (alongM: number, upM: number, angle: number) => alongM * Math.cos(angle) - upM * Math.sin(angle);
    const inward = out(hookArmM, hookHeightM, tilt - step) - out(hookArmM, hookHeightM, tilt + step);
    const lean = (geometry.pullLeanDeg * Math.PI) / 180;
    return (massKg * rise(armM, geometry.centreHeightM)) / (rise(hookArmM, hookHeightM) * Math.cos(lean) + inward * Math.sin(lean));
  }

  test('the reading is the derivative of the potential energy by the way of the hook along the pull', () => {
    fc.assert(
      fc.property(hives, ({ massKg, lean, geometry }) => {
        const { baseDepthM: L, pivotInsetM: d } = geometry;
        const x = L / 2 + lean;
        const front = pullByVirtualWork(massKg, x - d, L - d + geometry.frontOverhangM, geometry.frontHookHeightM, geometry);
        const rear = pullByVirtualWork(massKg, L - x - d, L - d + geometry.rearOverhangM, geometry.rearHookHeightM, geometry);
        // within: 1e-8, central difference of step 1e-5 and 16 digits
        expect(Math.abs(edgeReadingKg(massKg, x, geometry, 'front') / front - 1)).toBeLessThan(1e-8);
        expect(Math.abs(edgeReadingKg(massKg, x, geometry, 'rear') / rear - 1)).toBeLessThan(1e-8);
      }),
      { numRuns: 1000 },
    );
  });

  test('both readings give back weight and place, wherever the honey sits', () => {
    fc.assert(
      fc.property(hives, ({ massKg, lean, geometry }) => {
        const x = geometry.baseDepthM / 2 + lean;
        const found = fromBothEdges(edgeReadingKg(massKg, x, geometry, 'front'), edgeReadingKg(massKg, x, geometry, 'rear'), geometry);
        expect(found.totalKg).toBeCloseTo(massKg, 8);
        expect(found.centreFromRearM).toBeCloseTo(x, 8);
        for (const edge of ['front', 'rear'] as const) {
          expect(readingOfShareKg(massKg, found.frontShareFrac, geometry, edge)).toBeCloseTo(edgeReadingKg(massKg, x, geometry, edge), 8);
          expect(fromOneEdgeKg(edgeReadingKg(massKg, x, geometry, edge), edge, found.frontShareFrac, geometry)).toBeCloseTo(massKg, 7);
        }
      }),
    );
  });

  test('a hook further out, a pivot further in and a higher lift read low, a higher hook and a pull that leans away read high', () => {
    const base = { ...standardGeometry(), liftM: 0.02, frontHookHeightM: 0.05 };
    const reading = (changes: Partial<LeverGeometry>) => edgeReadingKg(45, 0.25, { ...base, ...changes }, 'front');
    expect(reading({ frontOverhangM: 0.05 })).toBeLessThan(reading({}));
    expect(reading({ pivotInsetM: 0.02 })).toBeLessThan(reading({}));
    expect(reading({ liftM: 0.03 })).toBeLessThan(reading({}));
    expect(reading({ frontHookHeightM: 0.2 })).toBeGreaterThan(reading({}));
    expect(reading({ pullLeanDeg: -10 })).toBeGreaterThan(reading({}));
  });
});

describe('heft', () => {
  test('front and rear have their own overhang: a landing board 75 mm out reads 13 % low and is put right', () => {
    const geometry = { ...standardGeometry(), frontOverhangM: 0.075 };
    const [front, rear] = [edgeReadingKg(40, 0.26, geometry, 'front'), edgeReadingKg(40, 0.26, geometry, 'rear')];
    const told = heft({ frontKg: front, rearKg: rear, frontOverhangM: 0.075 });
    const untold = heft({ frontKg: front, rearKg: rear });
    expect(told.ok && told.value.totalKg).toBeCloseTo(40, 8);
    expect(untold.ok && untold.value.totalKg).toBeLessThan(38);
  });

  test('the reading to stop at is what the scale shows when the need is met', () => {
    fc.assert(
      fc.property(metres(20, 60), metres(-0.04, 0.04), metres(30, 70), (massKg, lean, needGrossKg) => {
        const geometry = { ...standardGeometry(), frontOverhangM: 0.06, pivotInsetM: 0.01 };
        const x = geometry.baseDepthM / 2 + lean;
        const read = (kg: number, edge: 'front' | 'rear') => edgeReadingKg(kg, x, geometry, edge);
        const result = heft({ ...geometry, frontKg: read(massKg, 'front'), rearKg: read(massKg, 'rear'), needGrossKg });
        if (!result.ok) throw new Error(JSON.stringify(result.error));
        expect(result.value.targetFrontKg).toBeCloseTo(read(needGrossKg, 'front'), 8);
        expect(result.value.targetRearKg).toBeCloseTo(read(needGrossKg, 'rear'), 8);
        expect(result.value.targetFrontSdKg).toBeGreaterThan(0);
      }),
    );
  });

  test('one edge is less sure than two, and says which it was', () => {
    const [front, rear, both] = [heft({ frontKg: 20 }), heft({ rearKg: 20 }), heft({ frontKg: 20, rearKg: 20 })];
    if (!front.ok || !rear.ok || !both.ok) throw new Error('refused');
    expect([front.value.basis, rear.value.basis, both.value.basis]).toEqual(['front', 'rear', 'both']);
    expect(front.value.sdKg).toBeGreaterThan(1.5 * both.value.sdKg);
    expect(both.value.sdParts.shareKg).toBe(0);
  });

  test('the error told is the spread of weights found when everything unsure is drawn', () => {
    const members = 20000;
    const key = keyOf(11, 'weigh-error', 'hive');
    const geometry = { ...standardGeometry(), frontOverhangM: 0.05, liftM: 0.02, centreHeightM: 0.35, frontHookHeightM: 0.04 };
    const scale = standardScale();
    const p = weighParameters;
    for (const basis of ['both', 'front', 'rear'] as const) {
      let [sum, squares] = [0, 0];
      for (let m = 0; m < members; m++) {
        const z = (i: number) => normalAt(key, m, i);
        const bump = (edge: 'front' | 'rear', i: number): LeverGeometry => ({
          ...geometry,
          [`${edge}OverhangM`]: geometry[`${edge}OverhangM`] + p.overhangSdM.value * z(i),
          liftM: geometry.liftM + p.liftSdM.value * z(i + 1),
          centreHeightM: geometry.centreHeightM + p.centreHeightSdM.value * z(8),
        });
        const lean =
          basis === 'both'
            ? 0.02
            : standardShareSdFrac() * z(9) * (geometry.baseDepthM - (2 * geometry.centreHeightM * geometry.liftM) / geometry.baseDepthM);
        const centre = geometry.baseDepthM / 2 + lean;
        const read = (edge: 'front' | 'rear', i: number) =>
          (edgeReadingKg(45, centre, bump(edge, i), edge) + scale.scatterKg * z(i + 2) + (scale.stepKg / Math.sqrt(12)) * z(i + 3)) *
          (1 + scale.calibrationFrac * z(10));
        const [front, rear] = [read('front', 0), read('rear', 4)];
        const totalKg =
          basis === 'both'
            ? fromBothEdges(front, rear, geometry).totalKg
            : fromOneEdgeKg(basis === 'front' ? front : rear, basis, 0.5, geometry);
        sum += totalKg;
        squares += totalKg ** 2;
      }
      const spreadKg = Math.sqrt(squares / members - (sum / members) ** 2);
      const at = (edge: 'front' | 'rear') => edgeReadingKg(45, geometry.baseDepthM / 2 + (basis === 'both' ? 0.02 : 0), geometry, edge);
      const told = heft({
        ...geometry,
        ...(basis === 'rear' ? {} : { frontKg: at('front') }),
        ...(basis === 'front' ? {} : { rearKg: at('rear') }),
      });
      // within: 4 %: 20,000 draws give 0.5 %, first order errors the rest
      expect(told.ok && Math.abs(told.value.sdKg / spreadKg - 1), `${basis}: drawn ${spreadKg}`).toBeLessThan(0.04);
    }
  });

  test.each([
    [{}, { kind: 'missing-all', ways: [['frontKg'], ['rearKg'], ['frontKg', 'rearKg']] }],
    [
      { frontKg: 0, rearKg: 20 },
      { kind: 'out-of-range', field: 'frontKg', unit: 'kg' },
    ],
    [{ frontKg: -5 }, { kind: 'out-of-range', field: 'frontKg' }],
    [{ frontKg: 1500 }, { kind: 'out-of-range', field: 'frontKg' }],
    [{ rearKg: Number.NaN }, { kind: 'not-a-number', field: 'rearKg' }],
    [
      { frontKg: 5, rearKg: 40 },
      { kind: 'conflict', fields: ['frontKg', 'rearKg'], why: 'edges-not-one-hive' },
    ],
    [
      { frontKg: 100, rearKg: 90 },
      { kind: 'out-of-range', field: 'frontKg+rearKg' },
    ],
    [
      { frontKg: 20, baseDepthM: 19.875 },
      { kind: 'out-of-range', field: 'baseDepthM' },
    ],
    [
      { frontKg: 20, liftM: 0.1, centreHeightM: 0.9 },
      { kind: 'implausible', field: 'liftM', why: 'lift-tips-hive' },
    ],
    [
      { frontKg: 20, frontShareFrac: 0.95 },
      { kind: 'out-of-range', field: 'frontShareFrac' },
    ],
    [
      { frontKg: 20, frontShareSdFrac: -1 },
      { kind: 'out-of-range', field: 'frontShareSdFrac' },
    ],
    [
      { frontKg: 20, scaleStepKg: 0 },
      { kind: 'out-of-range', field: 'scaleStepKg' },
    ],
    [
      { frontKg: 20, scaleCalibrationFrac: 2 },
      { kind: 'out-of-range', field: 'scaleCalibrationFrac' },
    ],
    [
      { frontKg: 20, readingScatterKg: -1 },
      { kind: 'out-of-range', field: 'readingScatterKg' },
    ],
    [
      { frontKg: 20, needGrossKg: 1000 },
      { kind: 'out-of-range', field: 'needGrossKg' },
    ],
  ])('refuses %j and says why', (input, error) => expect(heft(input)).toMatchObject({ ok: false, error }));
});

describe('out by ten', () => {
  const double = { lowKg: 25, highKg: 70 };
  test.each([
    [245, [24.5]],
    [2.31, [23.1]],
    [24.5, []],
    [9000, []],
  ])('%s kg at the front of a double offers %j', (reading, offered) => {
    expect(tenfoldCandidatesKg(reading, plausibleEdgeRange('front', standardGeometry(), double))).toEqual(offered);
  });
});

describe('front share', () => {
  const drawn = (n: number, mean: number, sd: number) => {
    const key = keyOf(5, 'share', `${mean}`);
    return Array.from({ length: n }, (_, i) => ({
      frontShareFrac: mean + sd * normalAt(key, i, 0),
      totalKg: 40 + 5 * normalAt(key, i, 1),
    }));
  };

  test('without a hive of one’s own it is the default with its full doubt', () => {
    const learnt = learnFrontShare([]);
    expect(learnt.frontShareFrac).toBe(weighParameters.frontShareFrac.value);
    expect(learnt.sdFrac).toBeCloseTo(standardShareSdFrac(), 12);
  });

  test('one hive moves it part of the way, many to the keeper’s own, and the doubt shrinks to their spread', () => {
    const [none, one, many] = [
      learnFrontShare([]),
      learnFrontShare([{ frontShareFrac: 0.44, totalKg: 40 }]),
      learnFrontShare(drawn(200, 0.44, 0.015)),
    ];
    expect(one.frontShareFrac).toBeGreaterThan(0.44);
    expect(one.frontShareFrac).toBeLessThan(0.5);
    // within: 0.015 / sqrt(200) is 0.001, three of them
    expect(Math.abs(many.frontShareFrac - 0.44)).toBeLessThan(0.004);
    expect(Math.abs(many.sdFrac - 0.015)).toBeLessThan(0.003);
    expect(one.sdFrac).toBeLessThan(none.sdFrac);
  });

  test('order does not matter', () => {
    const hivesRead = drawn(9, 0.47, 0.02);
    expect(learnFrontShare([...hivesRead].reverse()).frontShareFrac).toBeCloseTo(learnFrontShare(hivesRead).frontShareFrac, 12);
  });
});

describe('words', () => {
  test('heavy, fair, light keep their order at every height, and taller hives weigh more', () => {
    for (let boxes = 0.5; boxes <= 5; boxes += 0.5) {
      const [heavy, fair, light] = HEFT_WORDS.map((word) => wordWeight(word, boxes).totalKg);
      expect(heavy!).toBeGreaterThan(fair!);
      expect(fair!).toBeGreaterThan(light!);
      if (boxes > 0.5) expect(light!).toBeGreaterThan(wordWeight('light', boxes - 0.5).totalKg);
    }
  });

  test('a word is far less sure than a weighing', () => {
    const weighed = heft({ frontKg: 22, rearKg: 23 });
    expect(weighed.ok && wordWeight('fair', 2).sdKg).toBeGreaterThan(3 * (weighed.ok ? weighed.value.sdKg : 1));
  });

  test('the keeper’s weighed hives pull their own word and no other', () => {
    const weighed = Array.from({ length: 30 }, (_, i) => ({ word: 'heavy' as const, deepBoxes: 2, totalKg: 52 + (i % 3) - 1 }));
    const learnt = wordWeight('heavy', 2, weighed);
    expect(Math.abs(learnt.totalKg - 52)).toBeLessThan(0.5);
    expect(learnt.sdKg).toBeLessThan(0.6 * wordWeight('heavy', 2).sdKg);
    expect(learnt.hives).toBe(30);
    expect(wordWeight('fair', 2, weighed)).toEqual(wordWeight('fair', 2));
    const few = wordWeight('heavy', 2, weighed.slice(0, 1));
    expect(few.totalKg).toBeGreaterThan(51);
    expect(few.totalKg).toBeLessThan(wordWeight('heavy', 2).totalKg);
  });

  test('what was learnt on singles carries to doubles', () => {
    const singles = Array.from({ length: 20 }, () => ({ word: 'fair' as const, deepBoxes: 1, totalKg: wordWeight('fair', 1).totalKg - 4 }));
    expect(wordWeight('fair', 2, singles).totalKg).toBeLessThan(wordWeight('fair', 2).totalKg - 3);
  });

  test('throws for a hive of no height', () => {
    expect(() => wordWeight('fair', 0)).toThrow(RangeError);
    expect(() => wordWeight('fair', Number.NaN)).toThrow(RangeError);
  });
});

test('the scale’s own error does not fall when both edges are read: it is shared', () => {
  const geometry = standardGeometry();
  const parts = bothEdgesError({ frontKg: 22, rearKg: 23, totalKg: 45 }, geometry, standardScale());
  expect(parts.calibrationKg).toBeCloseTo(45 * standardScale().calibrationFrac, 12);
});
