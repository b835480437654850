import { decimals } from '../units.ts';

const CAUSES: Readonly<Record<string, string>> = {
  starved: 'starved',
  mites: 'mites',
  moisture: 'wet',
  queen: 'queen failed',
  tooSmall: 'too small for the cold',
  mice: 'mice',
};

const FOUND: Readonly<Record<string, string>> = {
  'heads-in-cells': 'bees head first in cells',
  'no-honey-near': 'no honey at the cluster',
  'honey-left': 'sealed honey left',
  'mite-specks': 'white specks in cells',
  'few-bees-left': 'hardly a bee left',
  'spotty-capped-brood': 'spotty capped brood',
  'wet-and-mouldy': 'wet, mould',
  streaks: 'streaks on combs or front',
  'no-queen-drone-brood': 'drone brood in worker cells',
  'cluster-a-fist': 'cluster no bigger than a fist',
  gnawed: 'gnawed, a nest',
  'sunken-greasy-caps': 'sunken or greasy caps',
  'ropy-brood': 'ropy brood',
  'hard-scales': 'hard scales in cells',
};

/** What a cause means for the combs of the hive. */
const COMBS: Readonly<Record<string, string>> = {
  starved: 'combs may be used again once no brood disease is seen and they were frozen',
  mites: 'combs may be used again once no brood disease is seen; honey with treatment in it never for people',
  moisture: 'dry the combs; mouldy ones are cleaned by a strong colony or melted down',
  queen: 'combs may be used again once no brood disease is seen',
  tooSmall: 'combs may be used again once no brood disease is seen',
  mice: 'fouled combs are melted down, gloves on: mouse droppings can carry disease',
  unsure: 'no comb is moved until it is known',
};

export const springWords = {
  title: (winter: number) => `The count of winter ${winter} to ${winter + 1}`,
  alive: (survivors: number, counted: number) => `${survivors} of ${counted} colonies counted are alive.`,
  loss: (frac: string, low: string, high: string) => `Lost ${frac} (${low} to ${high} with so few colonies)`,
  region: (frac: string, low: string, high: string) =>
    `Canada, mean of 2007 to 2022: ${frac}, from ${low} to ${high} between good and bad winters.`,
  notCounted: (labels: readonly string[]) => `Not counted yet: ${labels.join(', ')}.`,
  said: 'Said in autumn, and what came',
  group: 'chance to hold',
  colonies: 'colonies',
  expected: 'deaths by\nhunger expected',
  died: 'died\n(any cause)',
  range: (from: string, to: string) => `${from} to ${to}`,
  stores: 'Stores at the count',
  label: 'label',
  saidKg: (unit: string) => `said\n(${unit})`,
  seenKg: (unit: string) => `seen\n(${unit})`,
  deadouts: 'Dead hives',
  cause: (cause: string | null): string => (cause === null ? 'unsure' : (CAUSES[cause] ?? cause)),
  found: (sign: string): string => FOUND[sign] ?? sign,
  combs: (cause: string | null): string => COMBS[cause ?? 'unsure'] ?? '',
  sure: (frac: number) => `in ${decimals(20 * frac, 0)} cases of 20`,
  noSigns: 'nothing noted of what was found',
  speakFor: (signs: readonly string[]) => `for it: ${signs.join(', ')}`,
  speakAgainst: (signs: readonly string[]) => `against: ${signs.join(', ')}`,
  stop: 'Stop. Close the hive, move nothing, call the inspector of your place: these signs can be of a disease that the law wants reported.',
  deadoutModel:
    'Causes are weighed by signs of the trade with chances of our own (data/deadouts.csv); they are a help to read, no finding.',
  sugar: (all: string, each: string | null) => (each === null ? `Sugar fed: ${all}.` : `Sugar fed: ${all}, ${each} for each survivor.`),
  money: (each: string) => `That is ${each} of money for each survivor.`,
  learnTitle: 'Own factors, before and after what was seen',
  factor: 'factor',
  before: 'before',
  after: 'after',
  restsOn: 'rests on',
  level: 'what your colonies eat against the model',
  nextWinter: 'the same for a coming winter',
  yield: 'stores from 1 kg of sugar (kg)',
  share: 'front edge’s share',
  rests: {
    level: (colonies: number, winters: number) => `${colonies} colony winters, ${winters} ${winters === 1 ? 'winter' : 'winters'}`,
    feeds: (feeds: number) => `${feeds} ${feeds === 1 ? 'feed' : 'feeds'} weighed before and after`,
    hives: (hives: number) => `${hives} hives weighed at both edges`,
  },
  nothing: 'nothing yet',
  times: (median: number, logSd: number) =>
    `${decimals(median, 2)} (${decimals(median * Math.exp(-1.645 * logSd), 2)} to ${decimals(median * Math.exp(1.645 * logSd), 2)})`,
  colony: (label: string, times: string, winters: number) =>
    `${label}: ${times} of your colonies’ mean, from ${winters} ${winters === 1 ? 'winter' : 'winters'}`,
  ofColonies: 'Single colonies, those furthest from the mean',
  empties: (count: number) => `Empty hives and parts weighed: ${count}.`,
  oneWinter: 'One winter alone cannot swing the level: part of what it says is taken as that winter’s own.',
};
