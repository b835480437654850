import { matterParameters } from '../tables/parameters-matter.gen.ts';

/** Molar masses [g/mol]. Source: IUPAC standard atomic weights (from memory). */
const HEXOSE = 180.156;
const WATER = 18.01528;
const CARBON_DIOXIDE = 44.0095;
const OXYGEN = 31.9988;
/** C6H12O6 + 6 O2 -> 6 CO2 + 6 H2O. */
const MOLES = 6;

export interface Burnt {
  /** Heat set free [MJ]. */
  readonly energyMJ: number;
  /** Water given off: what burning makes and what the honey held [kg]. */
  readonly waterKg: number;
  readonly carbonDioxideKg: number;
  readonly oxygenKg: number;
}

/**
 * What burning honey gives: all its carbohydrate taken as hexose.
 *
 * honeyKg       [kg]
 * moistureFrac  water in the honey by mass, default the parameter
 * returns       heat, water, carbon dioxide, oxygen used; water is about two thirds of the honey
 * equation      water = moisture + carbohydrate * 6 M(H2O)/M(hexose)
 * throws        RangeError for a negative mass or a moisture outside 0 to 0.3
 * source        [usda-honey], [white-1962], [honey-stoichiometry]
 * checked       checks/honey.ts
 */
export function burnHoney(honeyKg: number, moistureFrac: number = matterParameters.honeyMoistureFrac.value): Burnt {
  if (!(honeyKg >= 0)) throw new RangeError(`burnHoney: honeyKg is ${honeyKg} kg, must be 0 or more`);
  if (!(moistureFrac >= 0 && moistureFrac <= 0.3)) throw new RangeError(`burnHoney: moistureFrac is ${moistureFrac}, must be 0 to 0.3`);
  const drier = (1 - moistureFrac) / (1 - matterParameters.honeyMoistureFrac.value);
  const carbohydrateKg = honeyKg * matterParameters.honeyCarbohydrateFrac.value * drier;
  return {
    energyMJ: honeyKg * matterParameters.honeyEnergyMJPerKg.value * drier,
    waterKg: carbohydrateKg * ((MOLES * WATER) / HEXOSE) + honeyKg * moistureFrac,
    carbonDioxideKg: carbohydrateKg * ((MOLES * CARBON_DIOXIDE) / HEXOSE),
    oxygenKg: carbohydrateKg * ((MOLES * OXYGEN) / HEXOSE),
  };
}
