import type { ShutTick } from '../holding/index.ts';
import type { DateOdds } from '../phenology/index.ts';
import type { Mark } from '../tables/types.ts';
import type { SeasonDate } from './site-dates.ts';

/** Tasks of the year that are not ticks of shutting up, in the order of the year from June; their rows are in data/tasks.csv. */
export const TASK_CODES = [
  'wash',
  'treat',
  'supers-off',
  'requeen',
  'end-treatment',
  'autumn-look',
  'weigh',
  'weigh-empty-hive',
  'look',
  'swap',
  'get-sugar',
  'feed-syrup',
  'unite',
  'weigh-again',
  'guards-ready',
  'top-on',
  'feed-candy',
  'wrap',
  'broodless-treatment',
  'winter-check',
  'lift',
  'spring-count',
  'read-dead',
  'guards-off',
  'unwrap',
  'spring-look',
  'note-bloom',
] as const;
export type YearTask = (typeof TASK_CODES)[number];
export type TaskCode = YearTask | ShutTick;

/**
 * waiting: not before its first day; tight: by now one year in ten is over, or there is less time than work; late: half the years
 * are over; over: nine in ten are; the rest by the keeper's records.
 */
export type TaskState = 'waiting' | 'open' | 'tight' | 'late' | 'over' | 'done' | 'not-this-year' | 'put-off';

/** What a last day is worked back from. */
export type TaskBinds = SeasonDate | 'fixed' | 'mites' | 'records' | 'shut';

/** Twenty last days of equal chance, earliest first; null: that case has no such day. */
export type DayCases = readonly (string | null)[];

export interface SeasonTask {
  /** `code.yard`: the same in every calculation of a winter. */
  readonly id: string;
  readonly code: TaskCode;
  readonly yard: string;
  /** Colonies where it is still to do; empty for work of the yard. */
  readonly colonies: readonly string[];
  /** The hives they live in. */
  readonly hives: readonly string[];
  readonly doneCount: number;
  readonly state: TaskState;
  /** First day; null: at once. */
  readonly from: string | null;
  /** Last day on which it does its work, and the same as twenty cases. */
  readonly lastDay: DateOdds;
  readonly cases: DayCases;
  readonly binds: TaskBinds;
  /** Chance that today is not yet too late. */
  readonly stillTimeFrac: number;
  /** Calendar days to the day half the years allow; below 0: late by so many; null: no day binds. */
  readonly daysLeft: number | null;
  readonly lateDays: number;
  readonly openAboveC: number | null;
  /** The keeper's hours for what is still to do. */
  readonly hoursNeeded: number;
  /** Days until then whose afternoon is warm enough, as the climate has them. */
  readonly workDaysLeft: number;
  /** Hours in them: warm daylight, at most what a keeper gives a day. */
  readonly hoursLeft: number;
  /** Hours that tasks with an earlier last day want out of the same time. */
  readonly hoursBefore: number;
  /** hoursLeft - hoursNeeded - hoursBefore. */
  readonly slackHours: number;
  readonly putOffUntil: string | null;
  /** Where the record that finishes it is written; null: only the keeper's word finishes it. */
  readonly enter: string | null;
  readonly source: string;
  readonly mark: Mark;
  /** Figures for its sentence: litres, kilograms, counts. */
  readonly figures: Readonly<Record<string, number>>;
}

/** A tick of shutting up that is open, from the plan of that screen. */
export interface OpenTick {
  readonly tick: ShutTick;
  readonly yard: string;
  readonly colonies: readonly string[];
  readonly hives: readonly string[];
  readonly doneCount: number;
  readonly from: string | null;
  readonly lastDay: DateOdds;
  readonly cases: DayCases;
  readonly openAboveC: number | null;
  readonly minutesEach: number;
  readonly source: string;
  readonly mark: Mark;
}

/** What other stages know; a Plan and a MitesAnswer fit as they are. Null: not asked, and the tasks that rest on it are left out. */
export interface TaskFacts {
  readonly plan: {
    readonly outlooks: readonly {
      readonly colony: string;
      readonly yard: string;
      readonly state: string;
      readonly bees: number;
      readonly notes: readonly { readonly code: string; readonly weighAgainOn?: string }[];
    }[];
    readonly provision: {
      readonly looks: readonly { readonly colony: string }[];
      readonly moves: readonly { readonly to: string; readonly count: number }[];
      readonly syrup: readonly { readonly to: string; readonly litres: number; readonly sugarKg: number }[];
      readonly candy: readonly { readonly to: string; readonly sugarKg: number }[];
      readonly unite: readonly { readonly from: string; readonly into: string }[];
      readonly uncovered: readonly { readonly colony: string; readonly kg: number }[];
    } | null;
  } | null;
  readonly mites: { readonly colonies: readonly { readonly colony: string; readonly due: readonly MiteDueFact[] }[] } | null;
  readonly shut?: readonly OpenTick[] | undefined;
}

interface MiteDueFact {
  readonly what: string;
  readonly by: string | null;
}
