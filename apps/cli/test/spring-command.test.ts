import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { columnsOf } from '@winterheft/words';
import { expect, test } from 'vitest';
import { output as learnOutput } from '../src/contracts/learn.ts';
import { output as springOutput } from '../src/contracts/spring.ts';
import { runCommand } from './run-command.ts';

const DEMO = readFileSync(fileURLToPath(new URL('../../../demo/journal.jsonl', import.meta.url)), 'utf8');
const LINES = DEMO.trimEnd().split('\n');

/** The demo holding with a count of spring: a line of another kind, its id and stamp made from a line there is. */
function counted(): string {
  const of = JSON.parse(LINES.find((line) => line.includes('"kind":"weighing"'))!) as { id: string; yard: string };
  const count = (n: number, body: object) =>
    JSON.stringify({
      ...of,
      id: `${of.id.slice(0, -4)}be0${n}`,
      seen: `183000000000${n}-00000-device01`,
      kind: 'spring-count',
      at: { date: '2027-04-25' },
      body,
    });
  return [
    DEMO.trimEnd(),
    count(1, { colony: 'colony-a1', alive: true, storesKg: 7 }),
    count(2, { colony: 'colony-b4', alive: false, found: ['heads-in-cells', 'no-honey-near'] }),
    count(3, { colony: 'colony-b7', alive: false, found: ['ropy-brood'] }),
    '',
  ].join('\n');
}

test('the count of spring: a table inside 110 columns, an answer as its schema says, no cause and no comb where disease is near', async () => {
  const { code, out, err } = await runCommand(['spring', '-', '--today', '2027-05-10', '--members', '60', '--units', 'ca'], counted());
  expect([code, err]).toEqual([0, '']);
  for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(110);
  expect(out).toMatch(/1 of 3 colonies counted are alive/);
  expect(out).toMatch(/B4: starved in \d+ cases of 20; for it: bees head first in cells/);
  expect(out).toMatch(/B7: Stop\. Close the hive, move nothing, call the inspector/);
  const json = await runCommand(['spring', '-', '--today', '2027-05-10', '--members', '60', '--json'], counted());
  springOutput.parse(JSON.parse(json.out));
});

test('own factors stand as before where nothing was seen', async () => {
  const { out } = await runCommand(['learn', '-', '--today', '2026-09-18', '--members', '60', '--json'], DEMO);
  const { appetite, syrupYield } = learnOutput.parse(JSON.parse(out));
  expect(appetite.level.after.median).toBeCloseTo(appetite.level.before.median, 12);
  expect(appetite.nextWinter).toEqual(appetite.level.before);
  expect(syrupYield.after).toEqual(syrupYield.before);
});
