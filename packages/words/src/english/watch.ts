import type { RefusedWeighing, Rescue, WatchAct, WatchReason } from '@winterheft/core';
import { dayMonth, decimals, type UnitFormat } from '../units.ts';
import { faultSentence } from './faults.ts';
import { chanceWords } from './states.ts';

/** A word for the row, and how it is done. */
const ACTS: Readonly<Record<WatchAct, { readonly name: string; readonly how: string }>> = {
  lift: { name: 'lift', how: 'both edges, front then rear, and read' },
  'tap-and-listen': { name: 'tap and listen', how: 'ear to the side of the box: a hum that rises and falls is life' },
  'clear-opening': { name: 'clear the opening', how: 'ice and dead bees out with a bent wire' },
  'read-frost': { name: 'read the frost', how: 'a plume of frost at the upper opening is breath: the cluster lives and the top breathes' },
  'free-it-first': { name: 'free it first', how: 'tap the stand loose from the hive, then lift' },
  'look-under-lid': { name: 'look under the edge of the lid', how: 'for water, without lifting it off' },
  'give-candy': { name: 'candy', how: 'on the top bars over the bees, the lid off for seconds' },
  'lift-again': { name: 'lift again', how: 'and read twice: the last reading does not fit' },
};

export const watchWords = {
  title: (today: string) => `Watch of ${today}: from outside, without opening`,
  from: (autumn: string) => `From the weighings up to ${autumn} and all that was seen since.`,
  noAutumn: 'No hive was weighed this autumn: what they hold is not known. Lift both edges of each before anything else.',
  listed: (count: number, all: number) =>
    count === 0 ? `None of ${all} hives has to be checked this week.` : `${count} of ${all} hives to check this week:`,
  label: 'label',
  left: (unit: string) => `left\n(${unit})`,
  hold: 'chance\nto hold',
  ends: 'ends in\n5 %',
  half: '\n50 %',
  scale: (unit: string) => `scale shows\n(${unit})`,
  why: 'why',
  todo: 'what to do',
  notKnown: '?',
  never: '–',
  rest: 'The others',
  act: (act: WatchAct): string => ACTS[act].name,
  how: (act: WatchAct): string => `${ACTS[act].name}: ${ACTS[act].how}`,
  quickLid: (temp: string) => `The lid comes off only on a day above ${temp} without wind, unless a colony starves otherwise.`,
  rescue: (rescue: Rescue, units: UnitFormat): string => {
    const slabs = (n: number) => `${n} ${n === 1 ? 'slab' : 'slabs'} of candy (${units.mass(rescue.slabKg)} sugar each)`;
    const lasts = `one lasts about ${decimals(rescue.slabDays, 0)} days`;
    if (rescue.slabsNow > 0) return `${slabs(rescue.slabsNow)} now, ${lasts}; lift again before more`;
    return `no candy yet; ${slabs(rescue.slabs)} by ${dayMonth(rescue.by)} unless a later lift says otherwise, ${lasts}`;
  },
  cautions:
    'Lift with the knees and only a hand’s breadth; walk carefully on ice; a hive is not opened for combs below about 10 °C. Cold, ice and stings: gloves and a veil at hand.',
  estimates:
    'Figures are estimates: ice and snow can only add to a weight, frost inside hides up to two thirds of what was eaten since the last thaw.',
};

/** Whole pounds, or tenths of a kilogram: a winter forecast knows no more. */
const whole = (kg: number, units: UnitFormat) => `${decimals(units.massOf(kg), units.massUnit === 'lb' ? 0 : 1)} ${units.massUnit}`;

export function watchReason(reason: WatchReason, units: UnitFormat): string {
  switch (reason.code) {
    case 'may-run-out-soon':
      return `${chanceWords(reason.chanceFrac)} to run out within ${reason.days} days`;
    case 'short-until-forage':
      return `short ${whole(reason.addKg, units)} until forage`;
    case 'lift-is-old':
      return `not lifted for ${reason.days} days`;
    case 'never-lifted-since-autumn':
      return `not lifted since autumn, ${reason.days} days`;
    case 'silent':
      return `silent on ${dayMonth(reason.on)}`;
    case 'frozen-down':
      return `frozen to its stand on ${dayMonth(reason.on)}: no weight was taken`;
    case 'wet-lid':
      return `wet lid on ${dayMonth(reason.on)}`;
    case 'reading-surprises':
      return `reading of ${dayMonth(reason.on)} ${reason.which} than hardly any case had it`;
    case 'not-weighed-in-autumn':
      return 'not weighed in autumn';
  }
}

export function refusedWeighing(one: RefusedWeighing): string {
  const why = {
    'frozen-down': 'frozen to its stand, free it first',
    'other-build': 'the hive is of other parts than in autumn',
    impossible: 'fault' in one ? faultSentence(one.fault) : '',
  }[one.code];
  return `weighing of ${dayMonth(one.on)} not used: ${why}`;
}
