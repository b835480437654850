import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type EnvelopeOptions, hiveConductance } from '../src/matter/index.ts';
import { type Build, standardBuild } from '../src/tables/parts.ts';

const conductance = (build: Build, options: EnvelopeOptions = {}) => {
  const answer = hiveConductance(build, options);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};
const boxes = fc.array(fc.constantFrom('deep' as const, 'medium' as const, 'shallow' as const), { minLength: 1, maxLength: 3 });
const frames = fc.constantFrom(5 as const, 8 as const, 10 as const);
const extras = fc.subarray(['foam-board-38', 'foam-board-50', 'felt-wrap', 'corrugated-wrap', 'foam-wrap-25', 'packing-wrap-100']);
const asParts = (names: readonly string[]) => names.map((part) => ({ part, count: 1 }));

test('one more layer of insulation never raises what a hive loses, whatever the hive', () => {
  fc.assert(
    fc.property(
      boxes,
      frames,
      extras,
      fc.constantFrom('foam-board-38', 'foam-board-50', 'felt-wrap', 'foam-wrap-25'),
      (depths, n, have, more) => {
        const build = [...standardBuild(depths, n), ...asParts(have)];
        const before = conductance(build);
        const after = conductance([...build, { part: more, count: 1 }]);
        // rounding only
        expect(after.wPerK).toBeLessThanOrEqual(before.wPerK * (1 + 1e-12));
        expect(after.wPerK).toBeGreaterThan(0);
      },
    ),
    { numRuns: 500 },
  );
});

test('the parts add up to the whole, and foam boxes lose less than wooden ones', () => {
  fc.assert(
    fc.property(boxes, frames, (depths, n) => {
      const wood = conductance(standardBuild(depths, n));
      const { wallsWPerK, topWPerK, belowWPerK, airWPerK } = wood.parts;
      expect(wallsWPerK + topWPerK + belowWPerK + airWPerK).toBeCloseTo(wood.wPerK, 9);
      expect(wood.low).toBeLessThanOrEqual(wood.wPerK);
      expect(wood.high).toBeGreaterThanOrEqual(wood.wPerK);
      expect(conductance(standardBuild(depths, n, { material: 'foam' })).wPerK).toBeLessThan(wood.wPerK);
    }),
  );
});

test('wind never lowers and snow never raises what a hive loses, in any hive; both go smoothly', () => {
  const unit = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(boxes, frames, extras, unit, unit, (depths, n, have, a, b) => {
      const build = [...standardBuild(depths, n), ...asParts(have)];
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      const at = (options: EnvelopeOptions) => conductance(build, options).wPerK;
      expect(at({ windMPerS: 15 * more })).toBeGreaterThanOrEqual(at({ windMPerS: 15 * less }) * (1 - 1e-12));
      expect(at({ snowFrac: more })).toBeLessThanOrEqual(at({ snowFrac: less }) * (1 + 1e-12));
      expect(at({ snowFrac: 0 })).toBe(at({}));
      // a hundredth of the height cannot change more than a twentieth of the loss
      expect(at({ snowFrac: Math.min(1, less + 0.01) }) / at({ snowFrac: less })).toBeGreaterThan(0.95);
    }),
    { numRuns: 300 },
  );
});

test('a wind or a bank of snow that cannot be is refused by name', () => {
  for (const options of [{ windMPerS: -1 }, { windMPerS: 40 }, { snowFrac: 1.2 }, { snowFrac: Number.NaN }]) {
    const answer = hiveConductance(standardBuild(['deep', 'deep'], 10), options);
    expect(answer.ok).toBe(false);
    expect(JSON.stringify(answer)).toContain(`hive.${Object.keys(options)[0]}`);
  }
});
