import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { columnsOf } from '@winterheft/words';
import { expect, test } from 'vitest';
import { runCommand } from './run-command.ts';

const DEMO = readFileSync(fileURLToPath(new URL('../../../demo/journal.jsonl', import.meta.url)), 'utf8');
const LINES = DEMO.trimEnd().split('\n');
const OPTIONS = ['--today', '2026-08-10', '--members', '60'];
const ran = (journal: string, options: readonly string[] = OPTIONS) => runCommand(['mites', '-', ...options], journal);

/** A line of the demo as another kind; its id and stamp are those of the line. */
function asKind(of: string, kind: string, body: object): string {
  const line = JSON.parse(LINES.find((one) => one.includes(`"kind":"${of}"`))!) as { id: string };
  return JSON.stringify({ ...line, id: `${line.id.slice(0, -4)}beef`, kind, body });
}

test('a row per living colony in every season, inside 110 columns, and never a dose', async () => {
  for (const today of ['2026-05-20', '2026-08-10', '2026-09-18', '2026-11-20', '2027-02-10']) {
    const { code, out, err } = await ran(DEMO, ['--today', today, '--members', '60']);
    expect([code, err], today).toEqual([0, '']);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(110);
    expect(out).not.toMatch(/\d\s*(g|mL|ml|grams?)\b/);
    expect(out).toMatch(/label in your hand/);
    expect(out).toMatch(/eyes: rinse 15 minutes/);
    for (const label of ['A1', 'B4', 'C8']) expect(out, label).toMatch(new RegExp(`^${label} `, 'm'));
  }
});

test('the order of lines does not matter, the seed does', async () => {
  const first = (await ran(DEMO)).out;
  expect((await ran(`${[...LINES].reverse().join('\n')}\n`)).out).toBe(first);
  expect((await ran(DEMO, [...OPTIONS, '--seed', '2', '--json'])).out).not.toBe((await ran(DEMO, [...OPTIONS, '--json'])).out);
});

test('a board without its days is not read, and said', async () => {
  const { code, out } = await ran(`${DEMO}${asKind('wash', 'board', { colony: 'colony-a1', mites: 40 })}\n`, [...OPTIONS, '--json']);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ unread: { lines: 1, first: [{ why: { error: { kind: 'missing', field: 'body.days' } } }] } });
});

test('treatments that overlap stand in the book as such', async () => {
  const second = asKind('treatment-in', 'treatment-in', { colony: 'colony-a1', active: 'amitraz' });
  const at = ['--today', '2026-09-01', '--members', '60'];
  expect((await ran(`${DEMO}${second}\n`, at)).out).toMatch(/overlaps/);
  const { records } = JSON.parse((await ran(`${DEMO}${second}\n`, [...at, '--json'])).out) as {
    records: { colony: string; active: string }[];
  };
  expect(records.find(({ colony, active }) => colony === 'colony-a1' && active === 'amitraz')).toMatchObject({
    faults: ['no-product', 'no-lot', 'still-in', 'overlap'],
    overlaps: 'formic-acid',
  });
});

test.each([
  [['--today', '2026-02-30'], /--today is "2026-02-30"/],
  [[...OPTIONS, '--place', 'Atlantis'], /place is "Atlantis"/],
  [['--today', '2026-08-10', '--members', '3'], /--members is 3; allowed: 20 to 20000/],
])('%j is refused in one line', async (options, sentence) => {
  const { code, out, err } = await ran(DEMO, options);
  expect([code, out, err.split('\n').length]).toEqual([2, '', 2]);
  expect(err).toMatch(sentence);
});
