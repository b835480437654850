import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hiveConductance } from '../src/matter/index.ts';
import { type Build, standardBuild } from '../src/tables/parts.ts';

const conductance = (build: Build) => {
  const answer = hiveConductance(build);
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
