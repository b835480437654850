import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { partMass } from '../src/stores/tare.ts';
import { storesParameters } from '../src/tables/parameters-stores.gen.ts';
import { PARTS_TABLE, partOf } from '../src/tables/parts.ts';

const [head, ...lines] = readFileSync(new URL('../../../data/parts.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n');
const columns = head!.split(',');
/** The columns before the note, in which no text holds a comma. */
const rows = lines.map((line) => Object.fromEntries(line.split(',').map((text, i) => [columns[i], text])));
const { pineKgPerM3: pine, foamKgPerM3: eps, xpsKgPerM3: xps } = storesParameters;
const DENSITIES: Readonly<Record<string, { low: number; value: number; high: number }>> = { pine, eps, xps };
const TEN_FRAMES = { lengthM: 0.505, widthM: 0.413 };

test('every part has its bounds, its source and its mark', () => {
  expect(rows.map((row) => row['key'])).toEqual(PARTS_TABLE.map(({ key }) => key));
  for (const row of rows) {
    for (const column of ['low', 'high', 'source', 'mark']) expect(row[column], `${row['key']}: ${column}`).toBeTruthy();
    expect(Number(row['low']), row['key']).toBeLessThan(Number(row['high']));
  }
});

test('where no mass stands the bounds are those of the mass worked out from size and density', () => {
  const derived = rows.filter((row) => row['massKg'] === '');
  expect(derived).toHaveLength(25);
  for (const row of derived) {
    const part = partOf(row['key']!)!;
    const density = DENSITIES[row['material']!]!;
    const { massKg } = partMass(part, TEN_FRAMES);
    // half of the third figure that counts
    expect(Math.abs((Number(row['low']) / massKg / density.low) * density.value - 1), row['key']).toBeLessThan(0.005);
    expect(Math.abs((Number(row['high']) / massKg / density.high) * density.value - 1), row['key']).toBeLessThan(0.005);
  }
});
