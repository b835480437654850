const many = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;

/** Where combs and bees of a colony or lot came from and went: for the keeper on a bad day, and for the inspector. */
export const trace = {
  title: (name: string) => `Where the combs of ${name} went, and came from`,
  lot: (name: string) => `lot ${name}`,
  none: 'Nothing went from it or came into it, as far as the journal tells.',
  unknown: 'There is no such colony or lot.',
  touched: (hives: number, lots: number) => `${many(hives, 'hive', 'hives')} and ${many(lots, 'lot', 'lots')} touched.`,
  shed: 'Combs went through the shed: what hangs there is not told apart, so all that left it later is listed.',
  hives: 'Hives touched',
  lots: 'Lots touched',
  went: 'Went',
  came: 'Came',
  shedName: 'the shed',
  steps: {
    combs: (from: string, to: string, frames: string) => `${frames} from ${from} to ${to}`,
    'lot-made': (from: string, to: string) => `${to} made of combs of ${from}`,
    united: (from: string, to: string) => `${from} united into ${to}`,
    split: (from: string, to: string) => `${to} split off ${from}`,
  },
  frames: (count: number, frame: string) => `${many(count, `${frame} comb`, `${frame} combs`)}`,
  signsOn: (day: string) => `signs of disease seen on ${day}`,
  lookedOn: (day: string) => `looked at without signs on ${day}`,
  neverLooked: 'brood never looked at',
  stop: 'If the signs can be of a notifiable disease: stop, close the hives, move no comb, tool or bee, and call the inspector. The law of the place decides what follows.',
  print: 'Print for the inspector',
  inspector: (yard: string, keeper: string, day: string) =>
    `${yard}; written by ${keeper}, ${day}. Made from the records of the journal; each line has its day.`,
  link: 'Trace its combs and bees',
};
