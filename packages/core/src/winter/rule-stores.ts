import { stores } from '../stores/index.ts';
import type { OutlookInput } from './outlook-types.ts';
import type { WinterValues } from './parameters.ts';

/**
 * Stores that a target gross weight leaves in the hive [kg]: the target less the build and the bees, not below 0.
 *
 * The build is the one asked about; where only its conductance is known, two deep boxes stand for it (ruleTareKg).
 */
export function ruleStoresKg(grossKg: number, input: Pick<OutlookInput, 'bees' | 'hive'>, values: WinterValues): number {
  const build = input.hive?.build;
  const weighed = build === undefined ? null : stores({ build, grossKg, bees: input.bees });
  const byWeight = weighed?.ok ? weighed.value.byWeight : null;
  return Math.max(0, byWeight?.kg ?? grossKg - values.ruleTareKg - input.bees * values.beeMassKg);
}
