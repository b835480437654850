/** Winter from outside: whom to see this week, what to do there, and the signs noted at the hive. */
export const watch = {
  title: (see: number, leave: number) =>
    see === 0
      ? `Leave all ${leave} alone this week.`
      : leave === 0
        ? `See ${see} this week.`
        : `See ${see} this week. Leave ${leave} alone.`,
  lead: (today: string, autumn: string) =>
    `${today}, from the weighings up to ${autumn} and all that was seen since. All of it is done from outside.`,
  noAutumn: 'No hive was weighed this autumn: what they hold is not known. Lift both edges of each.',
  summer: (from: string) => `Watching begins when the autumn round does, on ${from}.`,
  loading: 'Computing the watch.',
  noColony: 'There is no living colony.',
  leave: 'Leave alone',
  nextWeek: (n: number) => `${n} more can wait until next week: an hour is about twelve hives.`,
  showAll: 'Show them too',
  what: 'What to do there',
  left: (mass: string) => `about ${mass} left`,
  orders: {
    lift: 'Lift and read both edges',
    'tap-and-listen': 'Tap once, listen 20 seconds',
    'clear-opening': 'Clear the opening with a wire',
    'read-frost': 'Look for a frost plume',
    'free-it-first': 'Free it from its stand, then lift',
    'look-under-lid': 'Look under the edge of the lid',
    'give-candy': 'Lay candy on the top bars',
    'lift-again': 'Lift again and read twice',
  },
  previous: 'Previous hive',
  following: 'Next hive',
  chosen: (label: string) => `${label}, weight on the scale`,
  pictureSays: (label: string, said: string, now: string, day: string) => `${label} on ${day}: said in autumn ${said}, as seen now ${now}`,
  said: 'said in autumn',
  empty: (mass: string) => `no stores: ${mass}`,
  ice: (mass: string) => `Hatch: as much as ${mass} of a reading can be ice and snow; it only adds.`,
  caution: 'Lift with the knees and only a hand’s breadth; walk carefully on ice. Nothing is opened for combs below about 10 °C.',
  signsAt: 'Signs at',
  signsOf: (label: string) => `Signs at ${label}`,
  place: (n: number, of: number) => `${n} of ${of}`,
  lasting: (cases: number) => `Stores last until today in ${cases} cases of 20.`,
  unknownLife: 'Not weighed in autumn: lift it, and it is known.',
  shouldRead: (low: string, high: string) => `Lift: both edges together should read ${low} to ${high}.`,
  frozen: 'Frozen to its stand: no weight is taken. Tap it loose at the floor first; never with warm water.',
  signs: {
    alive: { name: 'Hum', how: 'after one tap' },
    silent: { name: 'Silent', how: 'after 20 seconds' },
    'frost-plume': { name: 'Frost plume', how: 'above the opening' },
    'wet-lid': { name: 'Wet lid', how: 'ice or drops' },
    'frozen-down': { name: 'Frozen down', how: 'will not lift' },
  },
  lift: 'Lift, type the weight',
  undo: 'Undo',
  next: (label: string) => `Next ${label}`,
  done: 'To the list',
  silentOnce: 'Silence alone is no death: one witness of three. Tap again on a milder day.',
};
