import type { BuildFacts } from '../matter/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { partOf } from '../tables/parts.ts';
import { partMass } from './tare.ts';
import type { OnHive } from './types.ts';

/**
 * What stands on or in the hive that day and is neither build nor stores: feeder, syrup in it, candy, top parts, water in
 * absorbents. Unless it was weighed, what is judged by eye carries a share of its mass as error, parts that of their row.
 *
 * returns   mass and standard deviation [kg]
 */
export function onHiveMass(facts: BuildFacts, onHive: OnHive | undefined): { readonly massKg: number; readonly sdKg: number } {
  if (onHive === undefined) return { massKg: 0, sdKg: 0 };
  const judgedKg = (onHive.syrupKg ?? 0) + (onHive.candyKg ?? 0) + (onHive.waterKg ?? 0) + (onHive.otherKg ?? 0);
  const parts = [...(onHive.feeder === undefined ? [] : [{ part: onHive.feeder, count: 1 }]), ...(onHive.topParts ?? [])];
  let massKg = judgedKg;
  let variance = (storesParameters.onHiveSdFrac.value * judgedKg) ** 2;
  for (const line of parts) {
    const part = partOf(line.part);
    if (part === undefined) throw new RangeError(`onHiveMass: the table has no part ${line.part}`);
    const table = partMass(part, facts);
    const own = 'massKg' in line ? line.massKg : undefined;
    massKg += line.count * (own ?? table.massKg);
    variance += (line.count * (own === undefined ? table.sdKg : storesParameters.weighedSdKg.value)) ** 2;
  }
  if (massKg === 0) return { massKg: 0, sdKg: 0 };
  return { massKg, sdKg: onHive.weighed === true ? storesParameters.weighedSdKg.value : Math.sqrt(variance) };
}
