import type { ColonyOutlook, Plan, SeasonDate } from '@winterheft/core';
import { dayMonth, decimals, listed, type Naming, placesFor, shortened } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, facts, paragraph, table } from './layout.ts';
import { provisionLines, provisionSteps } from './provision.ts';

const LABEL_COLUMNS = 10;
const STATE_COLUMNS = 10;
const SHOWN_CLASHES = 10;

/** The dates a plan hangs on; `season` and `tasks` tell the others. */
const DATES = [
  'guardDay',
  'lastFrameDay',
  'lastFeedingDay',
  'coldDay',
  'firstFlight',
  'firstPollen',
  'firstForage',
] as const satisfies readonly SeasonDate[];

/** One row per colony, the steps in order, the dates, what was not read. */
export function planTable(plan: Plan, view: View): string {
  const w = view.words.plan;
  const labelByColony = labelsOf(plan);
  const naming: Naming = {
    units: view.units,
    colony: (id) => labelByColony.get(id) ?? shortened(id, LABEL_COLUMNS),
    lot: (id) => shortened(id, LABEL_COLUMNS),
  };
  const steps = plan.provision === null ? [] : provisionSteps(plan.provision, view, naming);
  const numbersOf = (colony: string) => steps.flatMap((step, i) => (step.colonies.includes(colony) ? [i + 1] : []));
  const refused = plan.outlooks.filter((line) => line.notes.some((note) => note.code === 'record-refused')).length;
  const rest = plan.unread.lines + plan.later + plan.clashes.length + refused;
  return [
    w.title(dayMonth(plan.made.today, true), dayMonth(plan.made.from, true), dayMonth(plan.made.to, true)),
    '',
    colonyRows(plan, { view, numbersOf, label: naming.colony }),
    ...plan.ended.map((one) => w.ended(shortened(one.label, LABEL_COLUMNS), one.how, dayMonth(one.on, true))),
    '',
    ...(plan.provision === null ? [] : [provisionLines(plan.provision, view, naming), '']),
    ...(plan.tasks.length === 0
      ? []
      : [w.tasks, ...plan.tasks.map((task) => entry('-', view.words.taskSentence(task, naming.colony))), '']),
    ...plan.dates.flatMap((yard) => [dateLines(yard, view), '']),
    ...(rest === 0 ? [] : [...leftOut(plan, view), '']),
    paragraph(w.estimates),
    paragraph(view.words.cautions.stings),
    paragraph(view.words.cautions.localRules),
    paragraph(w.made(plan.made)),
  ].join('\n');
}

/** Labels as shown: where two colonies carry the same one, the yard joins it, and where that does not tell them apart either, their id. */
function labelsOf(plan: Plan): ReadonlyMap<string, string> {
  const shown = (line: ColonyOutlook) => shortened(line.label, LABEL_COLUMNS);
  const nameByYard = new Map(plan.dates.map(({ yard, yardName }) => [yard, yardName]));
  const withYard = (line: ColonyOutlook) => shortened(`${line.label} ${nameByYard.get(line.yard) ?? line.yard}`, LABEL_COLUMNS);
  const count = (name: (line: ColonyOutlook) => string) => {
    const times = new Map<string, number>();
    for (const line of plan.outlooks) times.set(name(line), (times.get(name(line)) ?? 0) + 1);
    return times;
  };
  const [labels, yards] = [count(shown), count(withYard)];
  const one = (line: ColonyOutlook) =>
    labels.get(shown(line)) === 1 ? shown(line) : yards.get(withYard(line)) === 1 ? withYard(line) : shortened(line.colony, LABEL_COLUMNS);
  return new Map(plan.outlooks.map((line) => [line.colony, one(line)]));
}

interface RowTools {
  readonly view: View;
  readonly numbersOf: (colony: string) => readonly number[];
  readonly label: (colony: string) => string;
}

function colonyRows(plan: Plan, { view, numbersOf, label }: RowTools): string {
  const { words, units } = view;
  const w = words.plan;
  const figure = (kg: number, sdKg: number) => decimals(units.massOf(kg), placesFor(units.massOf(sdKg)));
  const day = (iso: string | null | undefined) => (iso === undefined ? w.notKnown : iso === null ? w.holds : dayMonth(iso));
  const whole = (kg: number) => decimals(units.massOf(kg), 0);
  const reading = (kg: number | null, sdKg: number | null) => (kg === null || sdKg === null ? w.nothing : `${whole(kg)}±${whole(sdKg)}`);
  const row = (line: ColonyOutlook): string[] => {
    const known = line.hasKg !== null;
    return [
      label(line.colony),
      line.hasKg === null || line.hasSdKg === null
        ? w.notKnown
        : `${figure(line.hasKg, line.hasSdKg)} ± ${figure(line.hasSdKg, line.hasSdKg)}`,
      decimals(units.massOf(line.needKg), 1),
      words.stateWords(line.state, line.low),
      line.holdFrac === null ? w.notKnown : words.chanceShort(line.holdFrac),
      ...(['p5', 'p50', 'p95'] as const).map((share) => day(known ? (line.runOut ?? undefined)?.[share] : undefined)),
      `${reading(line.targetFrontKg, line.targetFrontSdKg)} / ${reading(line.targetRearKg, line.targetRearSdKg)}`,
      todo(line, numbersOf(line.colony), view),
    ];
  };
  return table(
    [
      { head: w.label, max: LABEL_COLUMNS },
      { head: w.has(units.massUnit), align: 'right' },
      { head: w.needs, align: 'right' },
      { head: w.state, wrap: STATE_COLUMNS },
      { head: w.hold },
      { head: w.runOut5 },
      { head: w.runOut50 },
      { head: w.runOut95 },
      { head: w.stopAt },
      { head: w.todo, flexible: true },
    ],
    plan.outlooks.map(row),
  );
}

function todo(line: ColonyOutlook, numbers: readonly number[], { words, units }: View): string {
  const w = words.plan;
  const steps =
    numbers.length === 0 ? '' : numbers.length === 1 ? w.step(String(numbers[0])) : w.steps(listed(numbers.map(String), 'and', 6));
  // What a short colony is short of says more than that it is light.
  const note = line.notes.find(({ code }) => code !== 'light-for-winter' || line.state !== 'short');
  if (steps !== '') return steps;
  if (note !== undefined) return words.stateNote(note, units);
  return line.state === 'short' && line.aboveNeedKg !== null ? w.leftShort(units.mass(-line.aboveNeedKg)) : w.nothing;
}

function dateLines(yard: Plan['dates'][number], { words }: View): string {
  const w = words.plan;
  const day = (iso: string | null) => (iso === null ? w.nothing : dayMonth(iso));
  const rows = DATES.flatMap((name) => {
    const odds = yard.dates[name];
    return odds === undefined ? [] : [[words.season.names[name], w.years(day(odds.p10), day(odds.p50), day(odds.p90))] as const];
  });
  return [`${w.dates} (${shortened(yard.yardName, 24)}, ${yard.climate.name}): ${w.datesHead}`, facts(rows)].join('\n');
}

function leftOut(plan: Plan, { words, units }: View): readonly string[] {
  const w = words.plan;
  const why = Object.entries(plan.unread.byWhy).map(([code, count]) => `${count} ${w.unreadWhy[code] ?? code}`);
  const clashes = plan.clashes.slice(0, SHOWN_CLASHES).map((clash) => entry('-', words.clashSentence(clash)));
  const more = plan.clashes.length - clashes.length;
  const refused = plan.outlooks.flatMap((line) =>
    line.notes.flatMap((note) =>
      note.code === 'record-refused' ? [entry('-', `${shortened(line.label, LABEL_COLUMNS)}: ${words.stateNote(note, units)}`)] : [],
    ),
  );
  return [
    ...(plan.unread.lines === 0 ? [] : [paragraph(`${w.unread(plan.unread.lines)}: ${why.join(', ')}`)]),
    ...plan.unread.first.map((line) => entry('-', words.unreadLine(line))),
    ...refused,
    ...(plan.later === 0
      ? []
      : [paragraph(`${w.later(plan.later, dayMonth(plan.made.today, true))}: ${listed(plan.laterRecords, 'and', 4)}`)]),
    ...(plan.clashes.length === 0 ? [] : [w.clashes(plan.clashes.length), ...clashes, ...(more > 0 ? [w.more(more)] : [])]),
  ];
}
