import type { WatchAct, WatchAnswer, WatchLine } from '@winterheft/core';
import { dayMonth, decimals, shortened } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, paragraph, table } from './layout.ts';

const LABEL_COLUMNS = 10;

type Shown = WatchAnswer & { readonly unread: { readonly lines: number }; readonly later: number };

/** Hives with a reason first, each with why and what to do; the others in a line. */
export function watchTable(answer: Shown, view: View): string {
  const w = view.words.watch;
  const listed = answer.lines.filter(({ reasons }) => reasons.length > 0);
  const rest = answer.lines.filter(({ reasons }) => reasons.length === 0);
  return [
    w.title(dayMonth(answer.today, true)),
    paragraph(answer.autumnDay === null ? w.noAutumn : w.from(dayMonth(answer.autumnDay, true))),
    '',
    w.listed(listed.length, answer.lines.length),
    ...(listed.length === 0 ? [] : [hiveTable(listed, view)]),
    ...(rest.length === 0 || listed.length === 0 ? [] : ['', `${w.rest}:`]),
    ...(rest.length === 0 ? [] : [hiveTable(rest, view)]),
    '',
    ...actLines(listed, view),
    ...(answer.unread.lines === 0 ? [] : [paragraph(view.words.plan.unread(answer.unread.lines))]),
    ...(answer.later === 0 ? [] : [paragraph(view.words.plan.later(answer.later, dayMonth(answer.today, true)))]),
    ...[w.estimates, w.cautions].map((text) => paragraph(text)),
  ].join('\n');
}

/** How each thing that is asked for is done, once. */
function actLines(lines: readonly WatchLine[], { words, units }: View): string[] {
  const w = words.watch;
  const acts = new Set<WatchAct>(lines.flatMap((one) => one.acts));
  const lid = lines.find(({ rescue }) => rescue !== null)?.rescue;
  return [...[...acts].map((act) => entry('-', w.how(act))), ...(lid == null ? [] : [paragraph(w.quickLid(units.temp(lid.lidFromC)))]), ''];
}

function hiveTable(lines: readonly WatchLine[], { words, units }: View): string {
  const w = words.watch;
  const row = (one: WatchLine): string[] => {
    const { update, scaleNowKg: scale } = one;
    const why = [
      ...one.reasons.map((reason) => words.watchReason(reason, units)),
      ...(one.rescue === null ? [] : [w.rescue(one.rescue, units)]),
      ...one.refused.map(words.refusedWeighing),
    ];
    const acts = one.acts.map((act) => w.act(act));
    return [
      shortened(one.label, LABEL_COLUMNS),
      update === null ? w.notKnown : `${decimals(units.massOf(update.leftKg.mean), 0)} ± ${decimals(units.massOf(update.leftKg.sd), 0)}`,
      update === null ? w.notKnown : words.chanceShort(update.holdFrac),
      update?.runOut.p5 == null ? w.never : dayMonth(update.runOut.p5),
      update?.runOut.p50 == null ? w.never : dayMonth(update.runOut.p50),
      scale === null ? w.notKnown : `${decimals(units.massOf(scale.p5), 0)}-${decimals(units.massOf(scale.p95), 0)}`,
      why.join('; '),
      acts.join(', '),
    ];
  };
  return table(
    [
      { head: w.label },
      { head: w.left(units.massUnit), align: 'right' },
      { head: w.hold, align: 'right' },
      { head: w.ends },
      { head: w.half },
      { head: w.scale(units.massUnit), align: 'right' },
      { head: w.why, flexible: true },
      { head: w.todo, wrap: 22 },
    ],
    lines.map(row),
  );
}
