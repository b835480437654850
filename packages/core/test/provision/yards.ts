import { keyOf, uniformAt } from '../../src/chance/index.ts';
import type { BankLot, ProvisionColony, ProvisionInput } from '../../src/provision/index.ts';

/** Draws for one random yard: whole numbers and picks, all from one seed. */
export function dice(seed: number) {
  const key = keyOf(seed, 'yard', 'test');
  let n = 0;
  const unit = () => uniformAt(key, 0, n++);
  const whole = (low: number, high: number) => low + Math.floor(unit() * (high - low + 1));
  return {
    unit,
    whole,
    pick: <T>(items: readonly T[]): T => items[whole(0, items.length - 1)]!,
    chance: (share: number) => unit() < share,
  };
}

/** A medium yard as after an autumn round: weighed to a tenth of a kilogram, frames in two kinds, a few lots in the bank. */
export function mediumYard(seed: number, colonies: number, yards = 2): ProvisionInput {
  const d = dice(seed);
  const list = Array.from({ length: colonies }, (_, i): ProvisionColony => {
    const needKg = d.whole(180, 300) / 10;
    const hasKg = Math.max(2, needKg + d.whole(-140, 110) / 10);
    const full = Math.max(1, Math.min(9, Math.floor(hasKg / 3)));
    return {
      id: `C${i + 1}`,
      yard: `Y${1 + (i % yards)}`,
      bees: d.whole(6, 24) * 1000,
      hasKg,
      hasSdKg: d.whole(10, 25) / 10,
      needKg,
      looked: d.chance(0.85),
      flag: d.chance(0.04) ? 'chalkbrood' : null,
      capped: [
        { frame: 'deep', count: full, massKg: d.pick([2.9, 3.3, 3.6]) },
        { frame: 'medium', count: d.whole(0, 4), massKg: d.pick([1.9, 2.2]) },
      ],
      emptyCombs: [
        { frame: 'deep', count: d.whole(1, 4), massKg: d.pick([0.6, 0.7, 1.1]) },
        { frame: 'medium', count: d.whole(0, 3), massKg: d.pick([0.4, 0.5]) },
      ],
      at: { row: 'A', place: i },
    };
  });
  const bank = Array.from(
    { length: 4 },
    (_, i): BankLot => ({
      lot: `L${i + 1}`,
      yard: `Y${1 + (i % yards)}`,
      frame: i < 2 ? 'deep' : 'medium',
      count: d.whole(1, Math.ceil(colonies / 8)),
      massKg: i < 2 ? d.pick([3, 3.4]) : 2,
      looked: true,
    }),
  );
  return {
    colonies: list,
    bank,
    shed: [{ lot: 'S1', yard: 'Y1', frame: 'deep', count: 4, massKg: 0.6, looked: true }],
    sugarKg: Math.round(colonies * 1.5),
    feeders: Math.ceil(colonies / 5),
    daysToLastFeeding: 12,
  };
}
