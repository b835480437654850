import type { ColonyMites, MitesAnswer, YardMites, YardTreatment } from '@winterheft/core';
import { dayMonth, decimals, shortened } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, paragraph, table } from './layout.ts';

const LABEL_COLUMNS = 10;
const SHOWN_RECORDS = 60;

/** What the table is made from: the answer and what was left out of the journal. */
type Shown = MitesAnswer & { readonly unread: { readonly lines: number }; readonly later: number };

/** A block per yard: levels, colonies, what may begin when; then the book of treatments. */
export function mitesTable(answer: Shown, view: View): string {
  const w = view.words.mites;
  const rest = [
    ...(answer.unread.lines === 0 ? [] : [paragraph(view.words.plan.unread(answer.unread.lines))]),
    ...(answer.later === 0 ? [] : [paragraph(view.words.plan.later(answer.later, dayMonth(answer.made.today, true)))]),
  ];
  return [
    w.title(dayMonth(answer.made.today, true)),
    '',
    ...answer.yards.flatMap((yard) => [
      ...yardBlock(
        yard,
        answer.colonies.filter((one) => one.yard === yard.yard),
        view,
      ),
      '',
    ]),
    ...recordLines(answer, view),
    ...rest,
    ...[w.estimates, w.lossNote, w.levelsSource, view.words.cautions.treatments].map((text) => paragraph(text)),
  ].join('\n');
}

function yardBlock(yard: YardMites, colonies: readonly ColonyMites[], view: View): string[] {
  const { words } = view;
  const w = words.mites;
  const of = words.mitesPer100;
  const range = (say: (low: string, mid: string, high: string) => string, levels: YardMites['mean']) =>
    levels === null ? [] : [say(of(levels.p5), of(levels.p50), of(levels.p95))];
  const labelBy = new Map(colonies.map((one) => [one.colony, shortened(one.label, LABEL_COLUMNS)]));
  const level = yard.level;
  return [
    paragraph(w.yard(shortened(yard.yardName, 24), dayMonth(yard.lowBy), dayMonth(yard.winterBees.from), dayMonth(yard.winterBees.to))),
    ...(yard.windowExtrapolated ? [paragraph(w.extrapolated)] : []),
    paragraph(
      level === null ? w.noLevel : `${w.level(of(level.warn), of(level.treat), level.by === 'own' ? w.byOwn : level.source, level.place)}.`,
    ),
    paragraph([w.washedOf(yard.washed, yard.colonies), ...range(w.mean, yard.mean), ...range(w.notWashed, yard.notWashed)].join('; ')),
    '',
    colonyTable(yard, colonies, view),
    '',
    ...(level === null ? [] : [paragraph(w.washNext(yard.washNext.slice(0, 8).map((colony) => labelBy.get(colony) ?? colony)))]),
    paragraph(w.broodlessPlan(dayMonth(yard.broodlessTreatmentFrom))),
    ...(yard.effects.length === 0 ? [] : [w.effects, ...yard.effects.map((one) => entry('-', effectLine(one, view)))]),
    paragraph(w.treatments),
    ...yard.treatments.map((one) => entry('-', treatmentLine(one, view))),
    ...cautionLines(yard.treatments, view),
  ];
}

function colonyTable(yard: YardMites, colonies: readonly ColonyMites[], { words }: View): string {
  const w = words.mites;
  const of = words.mitesPer100;
  const row = (one: ColonyMites): string[] => {
    const last = one.washes.at(-1);
    const in20 = (share: number | null) => (share === null ? w.none : decimals(20 * share, 0));
    return [
      shortened(one.label, LABEL_COLUMNS),
      last === undefined
        ? one.basis === 'yard'
          ? w.fromYard
          : w.none
        : `${last.mites}/${last.bees} ${dayMonth(last.date)}${last.enoughBees ? '' : w.tooFew}`,
      last === undefined ? w.none : `${of(last.lowFrac)}-${of(last.highFrac)}`,
      in20(one.chanceAboveNowFrac),
      in20(one.chanceAboveWindowFrac),
      one.winterLoss === null ? w.none : words.lossRange(one.winterLoss),
      one.due.length === 0 ? w.none : one.due.map(words.miteDue).join('; '),
    ];
  };
  return table(
    [
      { head: w.label, max: LABEL_COLUMNS },
      { head: w.found },
      { head: w.interval, align: 'right' },
      { head: w.aboveNow, align: 'right' },
      { head: w.above(dayMonth(yard.projectedTo)), align: 'right' },
      { head: w.loss, align: 'right' },
      { head: w.due, flexible: true },
    ],
    colonies.map(row),
  );
}

function effectLine(one: YardMites['effects'][number], { words }: View): string {
  const w = words.mites;
  const percent = (frac: number) => decimals(100 * Math.max(-1, frac), 0);
  return `${w.effectOf(one.active, one.colonies.length, percent(one.effectFrac), percent(one.lowFrac), percent(one.highFrac))}; ${w.verdicts[one.verdict]}`;
}

function treatmentLine(one: YardTreatment, { words, units }: View): string {
  const w = words.mites;
  const { limits, effect } = one;
  const percent = (frac: number) => decimals(100 * frac, 0);
  const temps =
    limits === null || (limits.tempLowC === null && limits.tempHighC === null)
      ? []
      : [[limits.tempLowC, limits.tempHighC].flatMap((tempC) => (tempC === null ? [] : [units.temp(tempC)])).join(' to ')];
  const start =
    limits === null
      ? []
      : [one.firstStart === null || one.lastStart === null ? w.notYet : w.startSpan(dayMonth(one.firstStart), dayMonth(one.lastStart))];
  const latest =
    one.latestStart === null
      ? []
      : [
          one.latestStartChanceFrac === null
            ? w.latestNoChance(dayMonth(one.latestStart))
            : w.latest(dayMonth(one.latestStart), words.chanceWords(one.latestStartChanceFrac)),
        ];
  return [
    `${one.active}, ${one.form}: ${[...temps, ...(limits?.broodless ? [w.broodless] : []), ...(one.leastBroodFrames === null ? [] : [w.brood(one.leastBroodFrames)])].join(', ')}`.replace(
      /: $/,
      '',
    ),
    ...start,
    ...latest,
    effect.known ? w.effect(percent(effect.lowFrac), percent(effect.highFrac)) : w.effectUnknown,
    ...one.blockers.map(words.miteBlocker),
    ...one.differs.map(({ field, label, read }) => w.differs(field, String(label), String(read))),
  ].join('; ');
}

/** Equipment, first aid and disposal, beside the active ingredients they belong to. */
function cautionLines(treatments: readonly YardTreatment[], { words }: View): string[] {
  const byText = new Map<string, string[]>();
  for (const one of treatments) {
    const text = one.cautions.map(words.miteCaution).join('; ');
    const name = `${one.active} (${one.form})`;
    byText.set(text, [...(byText.get(text) ?? []), name]);
  }
  return [...byText].map(([text, names]) => entry('!', `${names.join(', ')}: ${text}.`));
}

function recordLines(answer: MitesAnswer, { words }: View): string[] {
  const w = words.mites;
  if (answer.records.length === 0) return [];
  const h = w.recordHead;
  const rows = answer.records
    .slice(-SHOWN_RECORDS)
    .map((one) => [
      shortened(one.label, LABEL_COLUMNS),
      shortened(one.active, 18),
      shortened(one.product ?? w.none, 26),
      shortened(one.lot ?? w.none, 14),
      one.in ?? w.none,
      one.out ?? w.none,
      words.recordRemark(one),
    ]);
  const heads = [w.label, h.active, h.product, h.lot, h.in, h.out].map((head) => ({ head }));
  return [w.records, table([...heads, { head: h.remark, flexible: true }], rows), ''];
}
