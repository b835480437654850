import type { Colony, Hive } from '../holding/index.ts';
import { supersOn } from '../mites/index.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { isoDateOf } from '../units/index.ts';
import { queenBornYear, queenOf } from './sizes.ts';
import type { TaskContext } from './task-context.ts';
import type { YearTask } from './task-types.ts';

/** Where a task is still to do, and where records of this winter have done it. */
export interface TaskNeed {
  readonly open: readonly Colony[];
  readonly done: number;
  readonly figures?: Readonly<Record<string, number>>;
  /** Work of the yard, without colonies: open or not. */
  readonly yard?: boolean;
}

type NeedOf = (of: TaskContext) => TaskNeed;

/** Parts colonies by whether a record of theirs has done it. */
function by(colonies: readonly Colony[], isDone: (colony: Colony) => boolean): TaskNeed {
  const open = colonies.filter((colony) => !isDone(colony));
  return { open, done: colonies.length - open.length };
}

const sinceDay = (records: readonly { readonly day: number }[], day: number) => records.some((one) => one.day >= day);
const hiveOf = (of: TaskContext, colony: Colony): Hive | undefined =>
  colony.hive === null ? undefined : of.holding.hives.get(colony.hive);

/** Those a plan or the mite pages name. */
function named(of: TaskContext, ids: readonly string[]): readonly Colony[] {
  return of.living.filter((colony) => ids.includes(colony.id));
}

const noted = (of: TaskContext, code: string): readonly Colony[] =>
  named(
    of,
    (of.facts.plan?.outlooks ?? []).filter(({ notes }) => notes.some((note) => note.code === code)).map(({ colony }) => colony),
  );

const due = (of: TaskContext, whats: readonly string[]): readonly Colony[] =>
  named(
    of,
    (of.facts.mites?.colonies ?? []).filter((line) => line.due.some(({ what }) => whats.includes(what))).map(({ colony }) => colony),
  );

const sum = (values: readonly number[]) => Math.round(values.reduce((total, value) => total + value, 0) * 10) / 10;

function needsQueen(colony: Colony, year: number): boolean {
  if (queenOf(colony) === 'absent') return true;
  const born = queenBornYear(colony);
  return born !== null && born <= year - seasonParameters.oldQueenYears.value;
}

/** What needs each task, from the records and from what other stages know. Ids of colonies of this yard only. */
export const NEEDS: Readonly<Record<YearTask, NeedOf>> = {
  wash: (of) => ({ open: due(of, ['wash', 'wash-again', 'wash-more-bees', 'wash-after-treatment']), done: 0 }),
  treat: (of) => ({ open: due(of, ['treat']), done: 0 }),
  'end-treatment': (of) => ({ open: due(of, ['treatment-in']), done: 0 }),
  'supers-off': (of) => ({ open: of.living.filter((colony) => supersOn(of.holding, colony)), done: 0 }),
  requeen(of) {
    const open = of.living.filter((colony) => needsQueen(colony, of.year));
    return {
      open,
      done: of.living.filter((colony) => colony.queens.some(({ state, day }) => state === 'introduced' && day >= of.start)).length,
      figures: { queenless: open.filter((colony) => queenOf(colony) === 'absent').length },
    };
  },
  'autumn-look': (of) => by(of.living, ({ looks }) => sinceDay(looks, of.august)),
  weigh: (of) => by(of.living, (colony) => sinceDay(hiveOf(of, colony)?.weighings ?? [], of.august)),
  'weigh-empty-hive': (of) => ({ open: noted(of, 'spare-on-weight-alone'), done: 0 }),
  look: (of) => ({
    open: named(
      of,
      (of.facts.plan?.provision?.looks ?? []).map(({ colony }) => colony),
    ),
    done: 0,
  }),
  swap(of) {
    const moves = (of.facts.plan?.provision?.moves ?? []).filter(({ to }) => of.ids.has(to));
    return {
      open: named(
        of,
        moves.map(({ to }) => to),
      ),
      done: 0,
      figures: { frames: sum(moves.map(({ count }) => count)) },
    };
  },
  'get-sugar'(of) {
    const short = (of.facts.plan?.provision?.uncovered ?? []).filter(({ colony }) => of.ids.has(colony));
    const fed = (of.facts.plan?.provision?.syrup ?? []).filter(({ to }) => of.ids.has(to));
    const kg = sum(short.map((one) => one.kg));
    const has = of.holding.settings.sugarKg ?? 0;
    const isSpent = sum((of.facts.plan?.provision?.syrup ?? []).map(({ sugarKg }) => sugarKg)) >= has - 1;
    return {
      open: [],
      done: 0,
      yard: kg > 0 && isSpent,
      figures: { shortKg: kg, plannedKg: sum(fed.map(({ sugarKg }) => sugarKg)), hasKg: has },
    };
  },
  'feed-syrup'(of) {
    const gifts = (of.facts.plan?.provision?.syrup ?? []).filter(({ to }) => of.ids.has(to));
    return {
      open: named(
        of,
        gifts.map(({ to }) => to),
      ),
      done: of.living.filter(
        (colony) =>
          !gifts.some(({ to }) => to === colony.id) &&
          colony.feeds.some(({ what, event, day }) => what === 'syrup' && event !== 'refused' && day >= of.august),
      ).length,
      figures: { litres: sum(gifts.map(({ litres }) => litres)), sugarKg: sum(gifts.map(({ sugarKg }) => sugarKg)) },
    };
  },
  unite(of) {
    const planned = (of.facts.plan?.provision?.unite ?? []).map(({ from }) => from);
    const small = (of.facts.plan?.outlooks ?? []).filter(({ state }) => state === 'too small alone').map(({ colony }) => colony);
    const late = of.today > of.dayOf('requeenBy') ? of.living.filter((colony) => queenOf(colony) === 'absent').map(({ id }) => id) : [];
    const done = [...of.holding.colonies.values()].filter(
      ({ yard, ended }) => yard === of.season.yard && ended?.how === 'united' && ended.day >= of.start,
    ).length;
    return { open: named(of, [...planned, ...small, ...late]), done, figures: { queenless: late.length } };
  },
  'weigh-again': (of) => ({ open: noted(of, 'provisional'), done: 0 }),
  'guards-ready'(of) {
    const counted = of.holding.kit.get('mouse-guard');
    const wanted = of.living.filter((colony) => hiveOf(of, colony)?.shut.get(of.year)?.get('mouse-guard-on')?.done !== true).length;
    return { open: [], done: 0, yard: counted !== undefined && counted.count < wanted, figures: { has: counted?.count ?? 0, wanted } };
  },
  'top-on': (of) => by(of.living, (colony) => (hiveOf(of, colony)?.top?.day ?? Number.NEGATIVE_INFINITY) >= of.august),
  'feed-candy'(of) {
    const gifts = (of.facts.plan?.provision?.candy ?? []).filter(({ to }) => of.ids.has(to));
    return {
      open: named(
        of,
        gifts.map(({ to }) => to),
      ),
      done: 0,
      figures: { sugarKg: sum(gifts.map(({ sugarKg }) => sugarKg)) },
    };
  },
  wrap: (of) => ({ open: of.living, done: 0 }),
  'broodless-treatment': (of) =>
    by(of.living, ({ treatments }) => treatments.some((one) => (one.in ?? one.out)!.day >= of.dayOf('broodlessFrom', 'p10'))),
  'winter-check': (of) => ({ open: of.living, done: 0 }),
  lift: (of) => ({ open: of.living, done: 0 }),
  'spring-count': (of) => by(of.living, ({ springCounts }) => sinceDay(springCounts, of.newYear)),
  'read-dead': (of) => ({ open: of.dead, done: 0 }),
  'guards-off': (of) => ({ open: of.living, done: 0 }),
  unwrap: (of) => ({ open: of.living, done: 0 }),
  'spring-look': (of) =>
    by(of.living, ({ looks }) =>
      looks.some(({ brood, day }) => brood !== undefined && brood !== 'not-looked' && day >= of.dayOf('firstPollen', 'p10')),
    ),
  'note-bloom'(of) {
    const seen = of.season.own.some(({ from }) => from === 'bloom');
    return { open: [], done: seen ? 1 : 0, yard: !seen };
  },
};

/** Last day a colony was listened to or weighed this winter. */
export function lastSign(of: TaskContext, colony: Colony): number {
  return Math.max(
    ...[...colony.signs, ...colony.springCounts, ...(hiveOf(of, colony)?.weighings ?? [])].map(({ day }) => day),
    Number.NEGATIVE_INFINITY,
  );
}

export function lastLift(of: TaskContext, colony: Colony): number {
  return Math.max(...(hiveOf(of, colony)?.weighings ?? []).map(({ day }) => day), Number.NEGATIVE_INFINITY);
}

/** Day the mite pages name for a task, the earliest of its colonies. */
export function miteDay(of: TaskContext, code: 'wash' | 'treat', colonies: readonly Colony[]): string {
  const whats = code === 'treat' ? ['treat'] : ['wash', 'wash-again', 'wash-more-bees', 'wash-after-treatment'];
  const ids = new Set(colonies.map(({ id }) => id));
  const days = (of.facts.mites?.colonies ?? [])
    .filter(({ colony }) => ids.has(colony))
    .flatMap((line) => line.due.filter(({ what, by: day }) => whats.includes(what) && day !== null).map(({ by: day }) => day!));
  return days.sort()[0] ?? isoDateOf(of.today);
}
