import { type UnitFormat, type Units, unitFormat } from '@winterheft/words';
import { useModes } from '../modes/modes.ts';
import { useHolding } from './session.ts';

export function useUnitsName(): Units {
  const { units } = useModes();
  return useHolding()?.settings.units ?? units;
}

/** Formats and converts in the units the holding is set to. */
export function useUnits(): UnitFormat {
  return unitFormat(useUnitsName());
}
