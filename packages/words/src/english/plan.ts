import type { Plan, StateNote, Task } from '@winterheft/core';
import { listed, shortened } from '../text.ts';
import { dayMonth, decimals, type UnitFormat } from '../units.ts';
import { faultSentence } from './faults.ts';
import { changeFault } from './journal.ts';
import { chanceWords } from './states.ts';

export const planWords = {
  title: (today: string, from: string, to: string) => `Plan of ${today}: what lasts from ${from} to ${to}`,
  label: 'label',
  has: (unit: string) => `has\n(${unit})`,
  needs: 'needs',
  state: 'state',
  hold: 'chance\nto hold',
  runOut5: 'ends in\n5 %',
  runOut50: '\n50 %',
  runOut95: '\n95 %',
  holds: 'holds',
  notKnown: '?',
  stopAt: 'stop at\nfront/rear',
  todo: 'what to do',
  steps: (numbers: string) => `steps ${numbers}`,
  step: (number: string) => `step ${number}`,
  nothing: '–',
  leftShort: (mass: string) => `short by ${mass}, left so`,
  ended: (label: string, how: string, on: string) => `${label}: ended (${how}) on ${on}`,
  dates: 'Dates',
  date: 'date',
  years: (p10: string, p50: string, p90: string) => `${p10} / ${p50} / ${p90}`,
  datesHead: 'in 1 year of 10 / half / 9 of 10',
  tasks: 'Before the winter',
  unread: (lines: number) => `${lines} ${lines === 1 ? 'line was' : 'lines were'} not read`,
  unreadWhy: {
    torn: 'cut off in the middle',
    'not-json': 'not JSON',
    'not-a-record': 'not a record of the journal',
    newer: 'from a newer version',
    'unknown-kind': 'of a kind not known here',
  } as Readonly<Record<string, string>>,
  later: (records: number, today: string) =>
    `${records} ${records === 1 ? 'record is' : 'records are'} dated after ${today} and not counted`,
  clashes: (count: number) => `${count} ${count === 1 ? 'thing does' : 'things do'} not fit together in the journal; settle them:`,
  more: (count: number) => `and ${count} more`,
  made: (plan: Plan['made']) =>
    `${plan.members} cases, seed ${plan.seed}, certainty ${plan.certaintyFrac}, version ${plan.codeVersion}, journal ${plan.journalDigest.slice(0, 12)}`,
  estimates: 'Figures are estimates with errors. Stores end: the day by which that share of the cases has run out.',
} as const;

/** Why a colony is in its state. */
export function stateNote(note: StateNote, units: UnitFormat): string {
  switch (note.code) {
    case 'spare-on-weight-alone':
      return 'more than its need by weight alone: weigh an empty hive of the build before it gives';
    case 'brood-not-looked-at':
      return note.lastLook === null ? 'its brood was never looked at' : `its brood was last looked at on ${dayMonth(note.lastLook)}`;
    case 'signs-of-disease':
      return 'signs of disease: nothing leaves or enters; the inspector decides';
    case 'not-weighed':
      return 'not weighed';
    case 'weighed-long-ago':
      return `weighed ${note.days} days ago`;
    case 'by-word':
      return `judged by hand: ${note.word}`;
    case 'provisional':
      return `syrup is still being dried; weigh again on ${dayMonth(note.weighAgainOn)}`;
    case 'short-within-tolerance':
      return `${units.mass(note.shortKg)} short of its need: less than ${units.mass(note.toleranceKg)} is not told by a hand scale and not counted`;
    case 'low-in-top-box':
      return `${units.mass(note.holdsKg)} at the cluster, the longest cold spell wants ${units.mass(note.wantsKg)}`;
    case 'light-for-winter':
      return `bees and stores weigh ${units.mass(note.massKg)}, an autumn hive should have ${units.mass(note.leastKg)} without its wood`;
    case 'bees-assumed':
      return `bees not counted, ${note.bees} taken`;
    case 'build-assumed':
      return 'build not recorded, a usual one taken';
    case 'mites-above-threshold':
      return `mites: ${chanceWords(note.chanceFrac)} above the level when the winter bees are reared; ${decimals(100 * note.lossLowFrac, 0)} to ${decimals(100 * note.lossHighFrac, 0)} % of such colonies died in winter, whatever their stores`;
    case 'mites-unknown':
      return 'mites not counted since the last treatment';
    case 'record-refused':
      return `not used: ${faultSentence(note.fault)}`;
  }
}

/** What is to be done, and until when it does its work. */
export function taskSentence(task: Task, label: (colony: string) => string): string {
  const who = listed(
    task.colonies.map((colony) => shortened(label(colony), 16)),
    'and',
    12,
  );
  const by = task.by === null ? '' : ` by ${dayMonth(task.by)}`;
  switch (task.code) {
    case 'look':
      return `look at the brood of ${who}${by}`;
    case 'weigh':
      return `weigh ${who}${by}`;
    case 'measure':
      return `measure ${who}${by}`;
    case 'swap':
      return `swap frames at ${who}${by}`;
    case 'feed-syrup':
      return `feed syrup to ${who}${by}`;
    case 'feed-candy':
      return `lay candy on ${who}${by}`;
    case 'unite':
      return `unite ${who}${by}`;
    case 'weigh-again':
      return `weigh ${who} again${by}`;
    case 'weigh-empty-hive':
      return `weigh one empty hive of the build of ${who}${by}`;
  }
}

/** What does not fit together in a journal. */
export function clashSentence(clash: Plan['clashes'][number]): string {
  const name = (text: string) => `"${shortened(text, 24)}"`;
  const names = (texts: readonly string[]) => listed(texts.map(name), 'and', 4);
  switch (clash.kind) {
    case 'same-id':
    case 'strike-circle':
    case 'correction-of-change':
    case 'correction-unfit':
      return changeFault(clash);
    case 'unknown-thing':
      return `records speak of the ${clash.thing} ${name(clash.name)}, which no record names`;
    case 'begun-twice':
      return `the ${clash.thing} ${name(clash.name)} was begun twice`;
    case 'before-begin':
      return `something happened to the ${clash.thing} ${name(clash.name)} before it began`;
    case 'after-end':
      return `something happened to the colony ${name(clash.colony)} after it had ended`;
    case 'weighing-without-colony':
      return `the hive ${name(clash.hive)} was weighed with no colony in it`;
    case 'two-colonies':
      return `the colonies ${names(clash.colonies)} live in one hive, ${name(clash.hive)}`;
    case 'placed-twice':
      return `the colony ${name(clash.colony)} lives in several hives: ${names(clash.hives)}`;
    case 'gone-occupied':
      return `the hive ${name(clash.hive)} is gone, yet ${names(clash.colonies)} lives in it`;
    case 'label-twice':
      return `the label ${name(clash.label)} stands on several hives of one yard: ${names(clash.hives)}`;
    case 'lot-negative':
      return `more frames left the lot ${name(clash.lot)} than it had: ${clash.count}`;
    case 'lot-frame-differs':
      return `frames of several kinds in the lot ${name(clash.lot)}: ${names(clash.frames)}`;
    case 'hand-negative':
      return `more frames (${clash.frame}) from ${name(clash.from)} were placed than taken: ${clash.count}`;
    case 'kit-negative':
      return `more of ${name(clash.item)} was used than counted: ${clash.count}`;
    case 'part-negative':
      return `more of ${name(clash.part)} came off the hive ${name(clash.hive)} than was on it: ${clash.count}`;
    case 'out-without-in':
      return `a treatment (${clash.active}) was taken out of ${name(clash.colony)} that was never put in`;
  }
}
