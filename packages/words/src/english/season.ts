import type { SeasonNote, TaskState } from '@winterheft/core';
import { decimals } from '../units.ts';
import { seasonTasks } from './season-tasks.ts';

const notes: Readonly<Record<SeasonNote, string>> = {
  'no-frost': 'Some years here have no frost: the dates that hang on it may be missing.',
  'no-winter': 'Some years here never grow cold enough for a cluster: this is not a winter these dates were made for.',
  'window-extrapolated': 'The winter-bee dates are those of the nearest latitude for which dates were read.',
  'polar-circle': 'Beyond the polar circle the sun stays up or down for days on end; flight and brood there were not read of.',
};

const states: Readonly<Record<TaskState, string>> = {
  waiting: 'not yet',
  open: 'open',
  tight: 'tight',
  late: 'late',
  over: 'too late this year',
  done: 'done',
  'not-this-year': 'not this year',
  'put-off': 'put off',
};

export const season = {
  date: 'date',
  early: '1 year in 10',
  half: 'half',
  late: '9 years in 10',
  none: 'none',
  names: {
    lastFeedingDay: 'last feeding day',
    lastGluingDay: 'last gluing day',
    clusterDay: 'cluster from',
    broodlessFrom: 'without brood from',
    broodlessTo: 'without brood to',
    firstFlight: 'first flight',
    firstPollen: 'first pollen',
    firstForage: 'first dependable forage',
    winterBeesFrom: 'winter bees reared from',
    winterBeesTo: 'winter bees reared to',
    lastFrost: 'last frost in spring',
    firstFrost: 'first frost in autumn',
    guardDay: 'nights near 4 °C from',
    lastFrameDay: 'last day to lift frames',
    lastFlight: 'last flight',
    coldDay: 'deep cold from',
    cleansingFlight: 'first cleansing flight',
    mitesLow: 'mites low by',
    requeenBy: 'last new queen',
    ownQueenBy: 'last queen of their own',
  },
  notes,
  states,
  tasks: seasonTasks,
  sun: 'sun',
  sunUp: (rise: string, set: string, hours: string) => `${rise} to ${set} UTC, ${hours} h`,
  dayLength: (hours: string) => `${hours} h of day`,
  task: 'task',
  yard: 'yard',
  where: 'hives',
  lastDay: 'last day',
  range: '1 to 9 in 10',
  need: 'work / time',
  state: '',
  colonies: (count: number) => (count === 0 ? '' : count === 1 ? '1 colony' : `${count} colonies`),
  hours: (need: number, left: number) => `${decimals(need, 1)} / ${decimals(left, left < 10 ? 1 : 0)} h`,
  noTasks: 'Nothing is to be done.',
  bloomsLearnt: (springs: number) =>
    `Your own bloom dates of ${springs === 1 ? '1 spring' : `${springs} springs`} went into first pollen and forage; how warm those springs were is not known, so they move little.`,
  ownDate: 'your own date',
  calendar: {
    name: (yard: string) => `Winterheft ${yard}`,
    date: (early: string, late: string) =>
      `Half of the years have it by this day; one in ten by ${early}, nine in ten by ${late}. From the climate, not a forecast.`,
    own: 'Your own date.',
    task: (half: string, late: string) =>
      `Nine years in ten it is still time on this day; half of them until ${half}, one in ten until ${late}.`,
    fixed: 'Last day.',
    at: (labels: string) => `At: ${labels}.`,
    work: (hours: string) => `About ${hours} h of work.`,
  },
} as const;
