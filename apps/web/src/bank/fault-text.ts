import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { LotFault } from './lot-answers.ts';

/** What is wrong with a field of a lot, as a sentence in place. */
export function faultText(
  fault: LotFault | undefined | null,
  of: { readonly lot: string; readonly isMass?: boolean; readonly units: UnitFormat },
): string | null {
  const { bank } = words;
  switch (fault?.kind) {
    case undefined:
      return null;
    case 'missing':
      return bank.missing;
    case 'not-a-number':
      return bank.notNumber(fault.typed);
    case 'not-whole':
      return bank.wholeOnly;
    case 'out-of-range':
      return bank.between(shown(fault.low, of), shown(fault.high, of));
    case 'name':
      return bank.lotNameBad;
    case 'taken':
      return bank.lotTaken(of.lot);
    case 'late':
      return bank.lookedLate;
  }
}

/** Bounds of a mass are in the units typed already. */
function shown(value: number, { isMass, units }: { readonly isMass?: boolean; readonly units: UnitFormat }): string {
  return isMass ? `${value.toFixed(1)} ${units.massUnit}` : String(value);
}
