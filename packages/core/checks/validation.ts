import { type Check, passes } from './check.ts';
import { type Coverage, coverageCases, coverageOfModel } from './coverage.ts';
import { checksByTopic } from './index.ts';
import { allClimates, classChecks, coldestDayCheck, winterClasses } from './weather-classes.ts';

/** How much a published row can say: many colonies or exact chemistry, a few or a range, an aside. */
export type Strength = 'strong' | 'medium' | 'weak';

/** Published rows a forecast of a winter rests on, by the beginning of the check's name, with what they can say. */
const WINTER_ROWS: readonly (readonly [begins: string, strength: Strength])[] = [
  ['A broodless colony of 16,500 bees at 3.5 °C', 'strong'],
  ['The mean colony of that study', 'strong'],
  ['Colonies of that study', 'strong'],
  ['A broodless colony of 34000 bees', 'strong'],
  ['A broodless colony of 8900 bees', 'strong'],
  ['A broodless colony of 4400 bees', 'strong'],
  ['A bee in a colony of 4,400 eats more', 'strong'],
  ['A kilogram and 0.2 of bees at 2 °C', 'weak'],
  ['Below -10 °C a tight 2 kg cluster', 'medium'],
  ['In a fully packed hive', 'strong'],
  ['In a bare hive at -21 °C', 'medium'],
  ['Brood (0.6 of a full nest', 'medium'],
  ['13,000 bees with brood from mid-February', 'medium'],
  ['12,500 bees with a full nest', 'medium'],
  ['Share of the autumn bees alive', 'medium'],
  ['Need at 19 in 20 of 20,000 bees in bare wood from October to mid-May, January mean -29 °C', 'medium'],
  ['Need at 19 in 20 of 20,000 bees in bare wood from October to mid-May, January mean -10 °C', 'weak'],
  ['Need of a colony in New Brunswick', 'weak'],
  ['Bees below which a colony is not wintered alone', 'medium'],
  ['Autumn mass without wood below which', 'medium'],
  ['A sleeping bee at 20 °C', 'strong'],
  ['A sleeping bee at 35 °C', 'strong'],
  ['kilograms of bees per W/K of a wooden hive', 'strong'],
  ['heater in the top box of a hive of 25 mm larch, garage', 'strong'],
  ['heater in the top box of a hive of 25 mm larch, house', 'strong'],
  ['fully packed hives in a block of four, no upper opening', 'strong'],
  ['fully packed hives in a block of four with a notch', 'medium'],
  ['heat of a kilogram of honey', 'strong'],
  ['heat of 30 g of honey a day', 'strong'],
  ['water from burning a kilogram of honey', 'strong'],
  ['carbon dioxide from burning', 'strong'],
  ['stores from 10 kg of sugar fed as 2:1', 'medium'],
  ['stores from 10 kg of sugar fed as 3:2', 'medium'],
  ['stores from 10 kg of sugar fed as 1:1', 'medium'],
  ['deep comb: 10 dm2 sealed', 'strong'],
];

/** Years drawn for each class of winter. */
const CLASS_YEARS = 2000;
const COVERAGE_SIZE = { members: 1000, truths: 2000 } as const;

export interface ValidationRow {
  readonly group: 'colony and hive' | 'winters';
  readonly check: Check;
  readonly strength: Strength;
  readonly ours: number;
  readonly agrees: boolean;
}

/** Every published row the forecast can be held against, ours beside it. */
export function validationRows(): ValidationRow[] {
  const told = (group: ValidationRow['group'], check: Check, strength: Strength): ValidationRow => {
    const ours = check.ours();
    return { group, check, strength, ours, agrees: passes(check, ours) };
  };
  const byTopic: Readonly<Record<string, readonly Check[]>> = checksByTopic;
  const colony = WINTER_ROWS.map(([begins, strength]) => {
    const found = Object.values(byTopic)
      .flat()
      .filter((check) => check.name.startsWith(begins));
    if (found.length !== 1) throw new Error(`validation: ${found.length} checks begin with "${begins}"`);
    return told('colony and hive', found[0]!, strength);
  });
  const climates = allClimates();
  const winters = winterClasses.flatMap((row) => classChecks(row, climates, CLASS_YEARS).map((check) => told('winters', check, 'medium')));
  return [...colony, ...winters, told('winters', coldestDayCheck(), 'medium')];
}

export function coverageRows(): Coverage[] {
  return coverageCases.map((one) => coverageOfModel(one, COVERAGE_SIZE));
}
