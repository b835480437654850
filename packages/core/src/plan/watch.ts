import { foldHolding, type Holding } from '../holding/index.ts';
import type { JournalRecord, UnreadLine } from '../journal/index.ts';
import { bad, good, type Result } from '../result/index.ts';
import { epochDayOf, epochDayOfParts, isoDateOf } from '../units/index.ts';
import { winterYearOf } from '../weather/index.ts';
import { type PreparedPlan, preparePlan } from './prepare.ts';
import type { PlanSetting } from './types.ts';
import { watchLine } from './watch-line.ts';
import type { WatchAnswer, WatchLine } from './watch-types.ts';

/** The autumn round lies between these days; a weighing later is winter's. */
const AUTUMN = { from: { month: 8, day: 15 }, to: { month: 11, day: 30 } };

/**
 * Whom to check this week, from outside, and what to bring: the forecast of the autumn round, corrected by every lift and sign since.
 *
 * records   of a journal; what is dated after `today` is not used
 * of        lines that could not be read; an earlier preparation of the same autumn, whose curves are taken over;
 *           the colony whose course on the scale is wanted; whether colonies that died since are told too, for who leaves out the dead learns from the frugal
 * setting   today, within the winter: from the autumn round to the end of May
 * returns   the list, and the preparation for the next call
 * errors    BadInput: no living colony, a day that is none, a day before the autumn round or in summer
 */
export function watch(
  records: readonly JournalRecord[],
  setting: PlanSetting,
  of: {
    readonly unread?: readonly UnreadLine[];
    readonly before?: PreparedPlan;
    readonly courseOf?: string;
    readonly withEnded?: boolean;
  } = {},
): Result<{ readonly answer: WatchAnswer; readonly prepared: PreparedPlan }> {
  const today = epochDayOf(setting.today);
  if (today === null) return bad({ kind: 'not-a-date', field: 'today', value: setting.today });
  const year = winterYearOf(today);
  const from = epochDayOfParts(year, AUTUMN.from.month, AUTUMN.from.day);
  if (today < from) return bad({ kind: 'date-order', field: 'today', value: setting.today, notBefore: isoDateOf(from) });
  const holding = foldHolding(records, { unread: of.unread ?? [], until: setting.today });
  const autumnDay = lastAutumnDay(holding, { from, to: Math.min(today, epochDayOfParts(year, AUTUMN.to.month, AUTUMN.to.day)) });
  const beganOn = autumnDay ?? today;
  const autumn = autumnDay === null ? holding : foldHolding(records, { until: isoDateOf(autumnDay) });
  const prepared = preparePlan(autumn, { ...setting, today: isoDateOf(beganOn) }, of.before);
  if (!prepared.ok) return prepared;
  const certaintyFrac = holding.settings.certaintyFrac ?? 0.95;
  const lines: WatchLine[] = [];
  for (const ready of prepared.value.colonies) {
    const colony = holding.colonies.get(ready.evidence.colony.id);
    if (colony === undefined || (colony.ended !== null && of.withEnded !== true)) continue;
    lines.push(
      watchLine(ready, {
        plan: prepared.value,
        autumn,
        holding,
        colony,
        today,
        certaintyFrac,
        weighed: autumnDay !== null,
        withCourse: of.courseOf === colony.id,
      }),
    );
  }
  lines.sort((a, b) => urgency(b) - urgency(a) || (a.label < b.label ? -1 : a.label > b.label ? 1 : a.colony < b.colony ? -1 : 1));
  const { seed, members } = setting;
  const day = autumnDay === null ? null : isoDateOf(autumnDay);
  const answer = { today: setting.today, autumnDay: day, lines, certaintyFrac, made: { seed, members } };
  return good({ answer, prepared: prepared.value });
}

/** The last day of the autumn round on which a hive was weighed. */
function lastAutumnDay(holding: Holding, span: { from: number; to: number }): number | null {
  let last: number | null = null;
  for (const hive of holding.hives.values()) {
    for (const { day } of hive.weighings) if (day >= span.from && day <= span.to) last = Math.max(last ?? day, day);
  }
  return last;
}

/** Chance to be gone within the coming weeks before all, then what is missing, then any other reason. */
function urgency({ update, reasons }: WatchLine): number {
  const soon = update?.soonFrac ?? 0;
  const short = reasons.some(({ code }) => code === 'short-until-forage') ? 1 - (update?.holdFrac ?? 1) : 0;
  return 100 * soon + 10 * short + (reasons.length > 0 ? 1 : 0);
}
