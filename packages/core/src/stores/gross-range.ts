import { readBuild } from '../matter/index.ts';
import { good, type Result } from '../result/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import type { Build } from '../tables/parts.ts';
import { beesOf } from './bees.ts';
import { cappedNetKg } from './counted.ts';
import { tareOf } from './tare.ts';
import { bothEdgesSdKg } from './weighing-doubt.ts';

/** Further from the bare hive or the full one than so many standard deviations a reading is asked about. */
const DEVIATIONS = 4;

/**
 * What a hive of this build can weigh: bare and without bees, to bees as usual and every comb fat with honey, four standard
 * deviations of tare and reading added at either end [kg].
 *
 * Use it to ask about a figure that looks ten times too large; `stores` itself judges with all that is known of the hive.
 */
export function grossRangeOf(build: Build): Result<{ readonly lowKg: number; readonly highKg: number }> {
  const facts = readBuild(build);
  if (!facts.ok) return facts;
  const tare = tareOf(facts.value, undefined);
  const bees = beesOf(facts.value, {});
  const p = storesParameters;
  const fullKg = facts.value.frames.reduce((sum, { part, count }) => sum + cappedNetKg(part.depth).kg * count, 0) * p.fullestFactor.value;
  const reach = (kg: number) => DEVIATIONS * Math.hypot(tare.partsSdKg, tare.combSdKg, tare.ownSdKg, bothEdgesSdKg(kg));
  const mostKg = tare.massKg + bees.massKg + fullKg;
  return good({ lowKg: Math.max(0, tare.massKg - reach(tare.massKg)), highKg: mostKg + reach(mostKg) });
}
