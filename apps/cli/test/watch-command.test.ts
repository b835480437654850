import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { columnsOf } from '@winterheft/words';
import { expect, test } from 'vitest';
import { output } from '../src/contracts/watch.ts';
import { runCommand } from './run-command.ts';

const DEMO = readFileSync(fileURLToPath(new URL('../../../demo/journal.jsonl', import.meta.url)), 'utf8');
const ran = (options: readonly string[]) => runCommand(['watch', '-', '--members', '60', ...options], DEMO);

test('every living hive has a row in every month of winter, inside 110 columns, in every unit', async () => {
  for (const [today, units] of [
    ['2026-09-18', 'metric'],
    ['2026-12-05', 'us'],
    ['2027-02-20', 'ca'],
    ['2027-05-10', 'ca'],
  ] as const) {
    const { code, out, err } = await ran(['--today', today, '--units', units]);
    expect([code, err], today).toEqual([0, '']);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(110);
    for (const label of ['A1', 'B4', 'C8']) expect(out, label).toMatch(new RegExp(`^${label} `, 'm'));
    expect(out).not.toMatch(/^C11 /m);
  }
});

test('the answer is what its schema says, and candy never comes without how and when', async () => {
  const { out } = await ran(['--today', '2027-04-25', '--json']);
  const answer = output.parse(JSON.parse(out));
  expect(answer.lines).toHaveLength(26);
  for (const { rescue, acts } of answer.lines) {
    if (rescue !== null && rescue.slabsNow > 0) expect(acts).toContain('give-candy');
  }
  const table = (await ran(['--today', '2027-04-25', '--units', 'metric'])).out;
  expect(table).toMatch(/lid comes off only on a day above/);
});

test('a day of summer is refused in one line', async () => {
  const { code, out, err } = await ran(['--today', '2026-07-01']);
  expect([code, out]).toEqual([2, '']);
  expect(err.trim().split('\n')).toHaveLength(1);
  expect(err).toContain('2026-08-15');
});
