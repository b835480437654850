import type { UnitFormat } from '@winterheft/words';

const INCH_M = 0.0254;

/** A length in whole millimetres, or inches and sixteenths as a rule is read: `19 7/8`. */
export function lengthText(metres: number, units: Pick<UnitFormat, 'lengthUnit'>, named = true): string {
  const text = units.lengthUnit === 'in' ? sixteenths(metres / INCH_M) : String(Math.round(metres * 1000));
  return named ? `${text} ${units.lengthUnit}` : text;
}

function sixteenths(inches: number): string {
  let [over, of] = [Math.round(inches * 16), 16];
  const whole = Math.floor(over / 16);
  over -= whole * 16;
  while (over > 0 && over % 2 === 0) [over, of] = [over / 2, of / 2];
  if (over === 0) return String(whole);
  return whole === 0 ? `${over}/${of}` : `${whole} ${over}/${of}`;
}
