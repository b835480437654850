import type { KitAnswer, KitLine } from '@winterheft/core';
import { mToInch } from '@winterheft/core';
import { decimals } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, paragraph, table } from './layout.ts';

export function kitTable(answer: KitAnswer, view: View): string {
  const { words, units } = view;
  const w = words.kit;
  const amount = (line: KitLine, value: number) => (line.unit === 'kg' ? units.mass(value) : decimals(value, 0));
  return [
    table(
      [
        { head: w.item },
        { head: w.piece },
        { head: w.need, align: 'right' },
        { head: w.have, align: 'right' },
        { head: w.more, align: 'right' },
        { head: w.buy, align: 'right' },
        { head: w.cost, align: 'right' },
      ],
      answer.lines.map((line) => [
        w.items[line.item],
        sizeOf(line, view),
        amount(line, line.need),
        amount(line, line.have),
        amount(line, line.more),
        line.buy > 0 ? `${decimals(line.buy, line.buyUnit === 'm' ? 1 : 0)} ${w.units[line.buyUnit]}` : '',
        line.cost === null ? '' : decimals(line.cost, 2),
      ]),
    ),
    ...(answer.cost === null ? [] : [paragraph(w.total(decimals(answer.cost, 2)))]),
    ...(answer.unpriced.length === 0 ? [] : [paragraph(w.unpriced(answer.unpriced.map((item) => w.items[item]).join(', ')))]),
    ...cuts(answer, view),
    ...recipes(answer, view),
  ].join('\n');
}

/** A length in the keeper's units: millimetres, or inches to a sixteenth. */
function length(m: number, { units }: View): string {
  return units.lengthUnit === 'in' ? `${decimals(Math.round(mToInch(m) * 16) / 16, 2)} in` : `${decimals(m * 1000, m < 0.01 ? 1 : 0)} mm`;
}

function sizeOf({ piece }: KitLine, view: View): string {
  const sizes = [piece.lengthM, piece.widthM, piece.thicknessM].filter((m) => m !== null).map((m) => length(m, view));
  return [sizes.join(' x '), piece.kg === null ? '' : view.units.mass(piece.kg), piece.material ?? '']
    .filter((text) => text !== '')
    .join(', ');
}

function cuts(answer: KitAnswer, view: View): string[] {
  const w = view.words.kit;
  return answer.lines.flatMap((line) => [
    ...(line.sheetCut === null ? [] : [entry('-', w.cut(w.items[line.item], line.sheetCut.fromOne, line.sheetCut.over))]),
    ...(line.boardCut ?? []).flatMap(({ patterns, atLeast }) => [
      ...patterns.map(({ boards, piecesM, leftM }) =>
        entry('-', w.boardCut(boards, piecesM.map((m) => length(m, view)).join(', '), length(leftM, view))),
      ),
      entry('-', w.atLeast(atLeast)),
    ]),
    ...(line.item === 'mesh' ? [entry('-', w.meshShort)] : []),
  ]);
}

function recipes({ pieces, syrup, candy }: KitAnswer, view: View): string[] {
  const { words, units } = view;
  const w = words.kit;
  const lines: string[] = [];
  if (pieces?.fill) lines.push(entry('-', w.fill(units.mass(pieces.fill.kg), length(pieces.fill.depthM, view))));
  if (syrup !== null) {
    const { syrup: made, jars } = syrup;
    lines.push(
      entry(
        '-',
        w.syrup(units.volume(made.volumeL), units.mass(made.sugarKg), units.mass(made.waterKg), syrup.sugarBags, syrup.containers),
      ),
    );
    if (syrup.grains) lines.push(entry('-', w.grains));
    if (jars !== null) {
      lines.push(entry('-', w.jars(jars.atOnce, jars.holes, length(jars.holeM, view), decimals(jars.daysNeeded, 0))));
      if (jars.leftPerHiveL > 0) lines.push(entry('-', w.left(units.volume(jars.leftPerHiveL))));
    }
    lines.push(entry('-', words.syrup.feeding));
  }
  if (candy !== null) {
    lines.push(entry('-', w.candy(candy.boards, units.mass(candy.sugarKg), units.mass(candy.waterKg))));
    if (candy.cook !== null)
      lines.push(entry('-', w.cook(units.temp(candy.cook.hardC), units.temp(candy.cook.softC), units.temp(candy.cook.stirAtC))));
    else lines.push(entry('-', w.dry(decimals(candy.dryHours, 0))));
    if (candy.lastsDays !== null) lines.push(entry('-', w.lasts(decimals(candy.lastsDays, 0), decimals(candy.lastsHours!, 0))));
    lines.push(entry('-', candy.onFrom === null ? w.on(units.temp(candy.onAboveC)) : w.onFrom(candy.onFrom, units.temp(candy.onAboveC))));
    lines.push(...candy.cautions.map((code) => entry('-', w.cautions[code])));
  }
  return lines;
}
