import { id, key, lengthM, massKg, parts, prices, shortLine, someWholes, wholes } from './fields.ts';
import { choice, flag, isoDate, list, number, type Of, object, stepped, where } from './shape.ts';

const miteLevel = number(0.0001, 100, 'mites');
const labelTempC = number(-10, 45, 'degC');
const treatmentLabel = object(
  { key },
  {
    product: shortLine,
    edition: shortLine,
    tempLowC: labelTempC,
    tempHighC: labelTempC,
    stopHighC: labelTempC,
    stopDays: stepped(1, 1, 60, 'days'),
    durationDays: stepped(1, 1, 120, 'days'),
    broodless: flag,
    supersOff: flag,
    withdrawalDays: stepped(1, 0, 365, 'days'),
  },
);

/** Keys of `setting` records and the form of their values. A key not listed is kept and reported as unread. */
export const settingShapes = {
  /** Chance of holding that is asked for; a need is planned for it. */
  certaintyFrac: number(0.5, 0.999, 'fraction'),
  /** Units of screens and printed tables: kg and degC; pounds and degF; pounds and degC. */
  units: choice(['metric', 'us', 'ca']),
  /** What the keeper has gone by so far: a gross weight or a front reading, over how many colonies and winters, how many starved. */
  ownRule: where(
    object({ colonies: someWholes, starved: wholes }, { grossKg: massKg, frontKg: massKg, build: parts, winters: someWholes }),
    (rule, field) => {
      if (rule.grossKg === undefined && rule.frontKg === undefined)
        return { kind: 'missing-all', ways: [[`${field}.grossKg`], [`${field}.frontKg`]] };
      if (rule.starved <= rule.colonies) return null;
      return { kind: 'out-of-range', field: `${field}.starved`, value: rule.starved, unit: 'colonies', low: 0, high: rule.colonies };
    },
  ),
  /** What things cost and time is worth, by name; one currency throughout. */
  prices,
  /** Aims in rank, or one price per colony and one sum. */
  aims: choice(['ranks', 'one-sum']),
  /** How long a look at the brood without signs of disease stands for a comb leaving the colony. */
  lookDays: stepped(1, 1, 365, 'days'),
  /** Whether combs may go between yards. */
  crossYards: flag,
  feeders: list(object({ type: key, count: wholes, litres: number(0.1, 50, 'L') }), 0, 20),
  /** Sugar on hand. */
  sugarKg: number(0, 100_000, 'kg'),
  /** The keeper's own levels of mites, by key of the table: mites per bee for a wash, a day for a board. */
  miteLevels: list(object({ key }, { warn: miteLevel, treat: miteLevel, never: miteLevel }), 0, 40),
  /** Day of the year by which mites have to be low here. */
  mitesLowByDayOfYear: stepped(1, 152, 288, 'day of year'),
  /** What the keeper's colonies eat against the model, learnt from winters that are over, taken over by the keeper. */
  learnt: object({
    levelMedian: number(0.2, 5, '1'),
    levelLogSd: number(0.01, 1, '1'),
    winters: stepped(1, 1, 200, 'winters'),
    colonyWinters: stepped(1, 1, 100_000, 'colonies'),
  }),
  /** Dates of the season as the keeper knows them, by name of the date; one without a yard holds for all. */
  ownDates: list(object({ name: key, date: isoDate }, { yard: id }), 0, 200),
  /** Limits typed from the label in hand, by key of the table of treatments. */
  labels: list(treatmentLabel, 0, 40),
  /** Where the scale's hook takes hold, measured from the edges of the bottom board. */
  hooks: object({}, { frontOverhangM: lengthM, rearOverhangM: lengthM, frontHookHeightM: lengthM, rearHookHeightM: lengthM }),
} as const;

export type SettingKey = keyof typeof settingShapes;
export type Settings = { readonly [K in SettingKey]?: Of<(typeof settingShapes)[K]> };

export function isSettingKey(name: string): name is SettingKey {
  return Object.hasOwn(settingShapes, name);
}
