import type { LearnAnswer, SpringAnswer } from '@winterheft/core';
import { decimals, shortened } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, paragraph, table } from './layout.ts';

const LABEL_COLUMNS = 10;
/** So many single colonies are told. */
const SHOWN = 6;
const percent = (frac: number) => `${decimals(100 * frac, 0)} %`;

/** The count, what was said against what came, and the dead hives. */
export function springTable(answer: SpringAnswer, { words, units }: View): string {
  const w = words.spring;
  const counted = answer.colonies - answer.notCounted.length;
  const { loss, region } = answer;
  const kg = (value: number) => decimals(units.massOf(value), units.massUnit === 'lb' ? 0 : 1);
  const said = answer.said.map((one) => [
    w.range(percent(one.fromFrac), percent(one.toFrac)),
    String(one.colonies),
    `${decimals(one.expected, 1)} (${one.low}-${one.high})`,
    String(one.died),
  ]);
  const stores = answer.stores.map((one) => [
    shortened(one.label, LABEL_COLUMNS),
    `${kg(one.saidKg.p50)} (${kg(one.saidKg.p5)}-${kg(one.saidKg.p95)})`,
    kg(one.seenKg),
  ]);
  const each = answer.sugarPerSurvivorKg === null ? null : units.mass(answer.sugarPerSurvivorKg);
  return [
    w.title(answer.winter),
    w.alive(answer.survivors, counted),
    ...(loss === null ? [] : [`${w.loss(percent(loss.frac), percent(loss.lowFrac), percent(loss.highFrac))}.`]),
    w.region(percent(region.lossFrac), percent(region.lowFrac), percent(region.highFrac)),
    ...(answer.notCounted.length === 0 ? [] : [paragraph(w.notCounted(answer.notCounted.map((label) => shortened(label, LABEL_COLUMNS))))]),
    '',
    w.said,
    table(
      [{ head: w.group }, { head: w.colonies, align: 'right' }, { head: w.expected, align: 'right' }, { head: w.died, align: 'right' }],
      said,
    ),
    ...(stores.length === 0
      ? []
      : [
          '',
          w.stores,
          table(
            [{ head: w.label }, { head: w.saidKg(units.massUnit), align: 'right' }, { head: w.seenKg(units.massUnit), align: 'right' }],
            stores,
          ),
        ]),
    ...(answer.deadouts.length === 0
      ? []
      : ['', w.deadouts, ...answer.deadouts.map((one) => entry('-', deadoutLine(one, words))), paragraph(w.deadoutModel)]),
    '',
    w.sugar(units.mass(answer.sugarKg), each),
    ...(answer.moneyPerSurvivor === null ? [] : [w.money(decimals(answer.moneyPerSurvivor, 2))]),
  ].join('\n');
}

function deadoutLine(one: SpringAnswer['deadouts'][number], words: View['words']): string {
  const w = words.spring;
  const label = shortened(one.label, LABEL_COLUMNS);
  if (one.notifiable) return `${label}: ${w.stop}`;
  if (one.found.length === 0) return `${label}: ${w.noSigns}`;
  const sure = one.causes[0] === undefined ? '' : `${w.cause(one.causes[0].cause)} ${w.sure(one.causes[0].chanceFrac)}`;
  return [
    `${label}: ${one.named === null ? `${w.cause(null)} (${sure})` : sure}`,
    ...(one.speakFor.length === 0 ? [] : [w.speakFor(one.speakFor.map(w.found))]),
    ...(one.speakAgainst.length === 0 ? [] : [w.speakAgainst(one.speakAgainst.map(w.found))]),
    w.combs(one.named),
  ].join('; ');
}

/** Each factor before and after, and what it rests on. */
export function learnTable(answer: LearnAnswer, { words }: View): string {
  const w = words.spring;
  const { appetite, syrupYield, frontShare } = answer;
  const times = ({ median, logSd }: { median: number; logSd: number }) => w.times(median, logSd);
  const seen = appetite.winters.reduce((sum, { colonies }) => sum + colonies, 0);
  const rests = seen === 0 ? w.nothing : w.rests.level(seen, appetite.winters.length);
  const far = [...appetite.colonies]
    .sort((a, b) => Math.abs(Math.log(b.after.median)) - Math.abs(Math.log(a.after.median)))
    .slice(0, SHOWN);
  const share = `${decimals(100 * frontShare.frontShareFrac, 1)} ± ${decimals(100 * frontShare.sdFrac, 1)} %`;
  return [
    w.learnTitle,
    table(
      [{ head: w.factor }, { head: w.before }, { head: w.after }, { head: w.restsOn, flexible: true }],
      [
        [w.level, times(appetite.level.before), times(appetite.level.after), rests],
        [w.nextWinter, times(appetite.level.before), times(appetite.nextWinter), rests],
        [w.yield, times(syrupYield.before), times(syrupYield.after), syrupYield.feeds === 0 ? w.nothing : w.rests.feeds(syrupYield.feeds)],
        [w.share, '', share, frontShare.hives === 0 ? w.nothing : w.rests.hives(frontShare.hives)],
      ],
    ),
    ...(far.length === 0
      ? []
      : [
          '',
          w.ofColonies,
          ...far.map(({ colony, after, winters }) => entry('-', w.colony(appetite.labels[colony] ?? colony, times(after), winters))),
        ]),
    '',
    ...(answer.tares.length === 0 ? [] : [w.empties(answer.tares.length)]),
    paragraph(w.oneWinter),
  ].join('\n');
}
