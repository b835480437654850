const GRAVITY_M_PER_S2 = 9.80665;
const DRY_AIR_J_PER_KG_K = 287.055;
const PRESSURE_PA = 101_325;

/**
 * Air that rises through two openings because it is warmer inside.
 *
 * Use it for an entrance below and an opening near the top. With one opening closed nothing flows; the two-way exchange through
 * a single opening is left out.
 *
 * inside, outside  absolute temperatures [K]
 * lowM2, highM2    free areas [m2]; heightM between their middles [m]; discharge coefficient of both
 * returns          [kg/s], 0 where it is not warmer inside
 * equation         dp = (ro - ri) g H;  m = C sqrt(2 dp / (1 / (ro A1^2) + 1 / (ri A2^2))), dry air at 101 325 Pa
 * source           ASHRAE Fundamentals 1997 ch. 25, stack effect, in mass form
 * checked          checks/envelope.ts: five computed cases
 */
export function stackFlowKgPerS(
  { insideK, outsideK }: { readonly insideK: number; readonly outsideK: number },
  {
    lowM2,
    highM2,
    heightM,
    discharge,
  }: { readonly lowM2: number; readonly highM2: number; readonly heightM: number; readonly discharge: number },
): number {
  if (!(insideK > outsideK && lowM2 > 0 && highM2 > 0 && heightM > 0)) return 0;
  const outer = PRESSURE_PA / (DRY_AIR_J_PER_KG_K * outsideK);
  const inner = PRESSURE_PA / (DRY_AIR_J_PER_KG_K * insideK);
  const pressurePa = (outer - inner) * GRAVITY_M_PER_S2 * heightM;
  return discharge * Math.sqrt((2 * pressurePa) / (1 / (outer * lowM2 ** 2) + 1 / (inner * highM2 ** 2)));
}
