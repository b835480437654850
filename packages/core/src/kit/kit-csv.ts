import { csvOf } from './csv.ts';
import type { KitAnswer } from './kit.ts';

/** The list as a CSV file: SI, units in the head. `names` words the items where a shell wants that; else they stand as codes. */
export function kitCsv({ lines }: KitAnswer, names: Readonly<Partial<Record<string, string>>> = {}): string {
  const head = ['item', 'material', 'lengthM', 'widthM', 'thicknessM', 'need', 'have', 'more', 'unit', 'buy', 'buyUnit', 'price', 'cost'];
  return csvOf([
    head,
    ...lines.map(({ item, piece, need, have, more, unit, buy, buyUnit, price, cost }) => [
      names[item] ?? item,
      piece.material ?? '',
      piece.lengthM ?? '',
      piece.widthM ?? '',
      piece.thicknessM ?? '',
      rounded(need),
      rounded(have),
      rounded(more),
      unit,
      buy,
      buyUnit,
      price ?? '',
      cost ?? '',
    ]),
  ]);
}

const rounded = (value: number) => Number(value.toFixed(3));
