const many = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;
const comma = (parts: readonly string[]) => parts.filter((part) => part !== '').join(', ');

/** Who gives what to whom: the plan before the walk, the walk, and what is in hand. */
export const provision = {
  // the plan
  noYard: 'There is no yard yet.',
  nothingKnown: 'Weigh some hives first: nothing is known yet of what they hold.',
  toRound: 'To the round',
  planning: 'Looking for the best plan.',
  planningAgain: 'Planning anew from what is in hand.',
  planningLong: 'A large yard with little to go round takes up to half a minute.',
  notPlanned: 'No plan can be made.',
  coversAll: (mass: string, lacking: number) => `One walk covers all ${mass} that ${many(lacking, 'colony lacks', 'colonies lack')}.`,
  covers: (covered: string, short: string, lacking: number) =>
    `One walk covers ${covered} of the ${short} that ${many(lacking, 'colony lacks', 'colonies lack')}.`,
  sugarNotAsked: 'Sugar on hand: not said, reckoned as none.',
  sugarOnHand: (mass: string) => `Sugar on hand: ${mass}.`,
  sugarChange: 'Change sugar and feeders',
  nothingShort: 'Nobody is short.',
  nothingToDo: 'Nothing has to be carried. Weigh again in three weeks.',
  nothingCovers: 'Nothing that is here covers it. What is short and why stands below.',
  summary: (of: {
    readonly swaps: number;
    readonly syrup: string;
    readonly candy: string;
    readonly unions: number;
    readonly hives: number;
    readonly looks: number;
  }) =>
    comma([
      of.swaps === 0 ? '' : many(of.swaps, 'swap', 'swaps'),
      of.syrup === '' ? '' : `${of.syrup} of syrup`,
      of.candy === '' ? '' : `${of.candy} of sugar as candy`,
      of.unions === 0 ? '' : many(of.unions, 'uniting', 'unitings'),
      many(of.hives, 'hive', 'hives'),
      of.looks === 0 ? '' : many(of.looks, 'look first', 'looks first'),
    ]),
  totals: (hours: string, cost: string) => `About ${hours} of work; sugar, stores and hours together cost ${cost}.`,
  hours: (minutes: number) => (minutes < 90 ? `${Math.round(minutes)} minutes` : `${(minutes / 60).toFixed(1)} hours`),
  losses: (colonies: string) => `What stays short: ${colonies} colonies of expected loss.`,
  buySugar: (mass: string) => `Buy ${mass} of sugar.`,
  greedyMark: 'made by plain rules',
  start: 'Start the walk',
  startNote: 'The plan then stands as it is until you ask.',
  takeThis: 'Walk by this plan',
  toWalk: 'Keep the old one',
  stopsTitle: 'The walk',
  uncoveredTitle: 'What stays open',
  uncoveredNone: 'Nothing. Every colony that was weighed gets what it needs.',
  whyTitle: 'Why these moves',
  mixTitle: 'To mix',
  mix: (litres: string, sugar: string, water: string) => `${litres} of 2:1 by weight: ${sugar} of sugar, ${water} of water.`,
  syrupCare:
    'White sugar only, nothing boiled long or burnt, no honey of other bees. Feed in the evening and spill nothing: it starts robbing. For what is bought ready the label decides.',
  candyCare: 'For what is bought ready the label decides. Laid on when the cluster is quiet: lift the lid, not the frames.',
  uniteCare: 'Over paper, in the evening, with one queen only. Look for signs of disease in both first.',

  // the walk
  adopted: (when: string) => `Taken up ${when}, frozen until you ask.`,
  again: 'Plan again',
  walkOver: 'The walk is done.',
  walkOverText: 'Weigh what was given at the next round; the outlook has it all already.',
  askAnew: 'Make a new plan',
  doneBefore: (n: number) => `${many(n, 'stop', 'stops')} done before`,
  because: {
    start: '',
    again: 'Planned again from what was in hand.',
    skip: (at: string) => `Planned anew: ${at} was passed by.`,
    look: (at: string) => `Planned anew: ${at} gives and gets no comb.`,
    refused: (at: string) => `Planned anew: ${at} did not take its feed.`,
  },
  changesTitle: 'What changes',
  change: {
    gets: (at: string, was: string, is: string) => `${at} gets ${is} instead of ${was}.`,
    gives: (at: string, was: string, is: string) => `${at} gives ${is} instead of ${was}.`,
    getsNow: (at: string, was: string, is: string) => `${at} gets ${is}; it was to give ${was}.`,
    givesNow: (at: string, was: string, is: string) => `${at} gives ${is}; it was to get ${was}.`,
  },
  nothing: 'nothing',
  waitsFor: (at: string, mass: string) => `${at} waits: short by ${mass}.`,
  changesNone: 'Nothing else changes.',
  shed: 'shed',
  boxCaption:
    'The box on the cart from above, ten slots. Thick: a capped comb (blue, in sun mode dashed: of the bank). Thin: a light comb. The number counts capped combs in hand.',
  boxOver: (n: number) => `${n} more than the box holds: take a second box along.`,
  load: (capped: number, light: number) => `Load ${comma([capped === 0 ? '' : `${capped} capped`, light === 0 ? '' : `${light} light`])}`,
  unload: (capped: number, light: number) =>
    `Hang up ${comma([capped === 0 ? '' : `${capped} capped`, light === 0 ? '' : `${light} light`])}`,
  /** Several deeds at one stop: only the first begins with a capital. */
  deeds: (deeds: readonly string[]) => deeds.map((deed, i) => (i === 0 ? deed : deed.charAt(0).toLowerCase() + deed.slice(1))).join(', '),
  swap: (n: number) => `Swap ${n}`,
  take: (n: number) => `Take ${n}`,
  takeGap: 'the gap is closed later',
  close: (n: number) => `Close ${n === 1 ? 'the gap' : `${n} gaps`}`,
  lookAt: 'Look at the brood',
  looked: { clean: 'Looked: clean', signs: 'Looked: signs of disease', 'not-looked': 'Looked', none: 'Not looked at today' },
  beforeFrames: (n: number) => (n === 0 ? 'before it is united' : `before ${many(n, 'comb moves', 'combs move')}`),
  lastLook: (day: string) => `last look ${day}`,
  neverLooked: 'never looked at',
  lookWhy: (frames: number, day: string | null) =>
    `${day === null ? 'Never looked at' : `No look since ${day}`}: not known, so not healthy. ${frames === 0 ? 'The uniting waits' : frames === 1 ? 'One comb waits' : `${frames} combs wait`} for it.`,
  clean: 'clean',
  signs: 'signs',
  notToday: 'not today',
  signsNote: 'Sunken, ropy, foul or chalky: close it, move nothing, call the inspector.',
  feed: (volume: string) => `Feed ${volume}`,
  syrupLine: (sugar: string, gain: string) => `2:1 by weight, ${sugar} of sugar; about ${gain} of stores`,
  candy: (mass: string) => `Candy of ${mass} of sugar`,
  candyLine: (gain: string) => `about ${gain} of stores`,
  unite: (into: string) => `Unite with ${into}`,
  uniteUnknown: 'Whether both have a queen is not known: find out first.',
  inFrom: (list: string) => `in ${list}`,
  outCapped: (n: number) => `out ${n} capped`,
  outLight: (n: number) => `out ${n} light`,
  inLight: (n: number) => `in ${n} light`,
  /** `3 from A3`. */
  someFrom: (n: number, from: string) => `${n} from ${from}`,
  lot: (name: string) => `lot ${name}`,
  toBank: (lot: string) => `as lot ${lot}`,
  balance: (before: string, after: string, need: string) => `${before} to ${after}, needs ${need}`,
  pairsTitle: 'Comb by comb',
  pairHeads: { count: 'combs', in: 'in', out: 'out', gain: (unit: string) => `gain, ${unit}` },
  pairNone: '–',
  /** Of every step that lifts a frame. */
  cautions: [
    'Find the queen first.',
    'Shake or brush the bees off.',
    'Not below the opening limit: too cold to fly is too cold to lift combs.',
    'Nothing left dripping.',
  ],
  done: 'Done',
  doneLabel: (at: string, what: string) => `Done at ${at}: ${what}`,
  undoLabel: (at: string, what: string) => `Take back ${at}: ${what}`,
  pass: 'Pass by',
  passNote: {
    give: 'It gives nothing today.',
    get: 'It gets no comb today.',
    syrup: 'No syrup today.',
    candy: 'No candy today.',
    unite: 'Not united today.',
    look: '',
  },
  refusedLabel: (at: string) => `${at} has not taken its feed`,
  waitsHand: 'waits for the combs',
  waitsLook: (at: string) => `waits for the look at ${at}`,
  refusedRecord: (says: string) => `Not recorded: ${says}`,

  /** Said aloud when the next stop is due. */
  spoken: (at: string, what: string) => `${at}. ${what}.`,

  // in hand
  inHand: (capped: number, light: number) => `${capped} capped and ${light} light in hand`,
  nowAt: (at: string) => `now ${at}`,
  inHandLabel: 'Frames in hand',
};
