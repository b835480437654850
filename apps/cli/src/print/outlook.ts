import { doubtCauses, type OutlookAnswer } from '@winterheft/core';
import { dayMonth, decimals } from '@winterheft/words';
import type { View } from '../command.ts';
import { facts, paragraph, table } from './layout.ts';

interface Asked {
  readonly storesKg?: number | undefined;
  readonly storesSdKg: number;
  readonly certaintyFrac: number;
}

export function outlookTable(answer: OutlookAnswer, { words, units, input }: View & { readonly input: Asked }): string {
  const w = words.outlook;
  const mass = (spread: { readonly p5: number; readonly p50: number; readonly p95: number }) =>
    `${w.spread(...([spread.p5, spread.p50, spread.p95].map((kg) => decimals(units.massOf(kg), 1)) as [string, string, string]))} ${units.massUnit}`;
  const date = (iso: string | null) => (iso === null ? w.holds : dayMonth(iso, true));
  const { runOut, forageDate, needParts } = answer;
  const parts = (Object.keys(w.parts) as (keyof typeof w.parts)[])
    .map((part) => `${w.parts[part]} ${units.mass(needParts[part])}`)
    .join(', ');
  const doubt = doubtCauses
    .map((cause) => ({ cause, share: answer.doubtShares[cause] }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share)
    .map(({ cause, share }) => `${w.causes[cause]} ${decimals(share * 100, 0)} %`)
    .join(', ');
  const rows: (readonly [string, string])[] = [];
  if (input.storesKg !== undefined) rows.push([w.stores, units.mass(input.storesKg, input.storesSdKg)]);
  rows.push([w.use, `${mass(answer.useKg)}, ${w.mean(units.mass(answer.useKg.mean))}`]);
  rows.push([w.need, `${units.mass(answer.needKg)} ${w.forCertainty(words.chanceWords(input.certaintyFrac))}`]);
  rows.push([w.needParts, parts]);
  rows.push([w.hold, answer.holdFrac === null ? w.holdUnknown : words.chanceWords(answer.holdFrac)]);
  if (runOut !== null) rows.push([w.runOut, w.spread(date(runOut.p5), date(runOut.p50), date(runOut.p95))]);
  rows.push([w.forage, w.spread(later(forageDate.p5), later(forageDate.p50), later(forageDate.p95))]);
  rows.push([w.contact, units.mass(answer.contactKg)]);
  rows.push([
    w.beesAtEnd,
    w.spread(decimals(answer.beesAtEnd.p5, 0), decimals(answer.beesAtEnd.p50, 0), decimals(answer.beesAtEnd.p95, 0)),
  ]);
  rows.push([w.scale, mass(answer.scaleKg)]);
  if (doubt !== '') rows.push([w.doubt, doubt]);
  const months = table(
    [
      { head: w.month },
      { head: `5 %\n${w.eaten(units.massUnit)}`, align: 'right' },
      { head: '50 %', align: 'right' },
      { head: '95 %', align: 'right' },
    ],
    answer.monthlyUseKg.map((month) => [month.month, ...[month.p5, month.p50, month.p95].map((kg) => decimals(units.massOf(kg), 1))]),
  );
  return [
    facts(rows),
    '',
    months,
    '',
    ...(answer.winterableAlone ? [] : [paragraph(w.notWinterable)]),
    ...(answer.lightForWinter === true ? [paragraph(w.lightForWinter)] : []),
    ...(answer.extrapolating
      ? [paragraph(`${w.extrapolated}: ${answer.extrapolatingBecause.map((why) => w.extrapolating[why]).join('; ')}.`)]
      : []),
    ...(answer.climate?.notes ?? []).map((note) => paragraph(words.climateNote(note))),
    paragraph(w.madeWith(answer.members, answer.seed)),
  ].join('\n');

  function later(iso: string | null): string {
    return iso === null ? w.afterEnd : dayMonth(iso, true);
  }
}
