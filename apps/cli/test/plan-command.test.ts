import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { columnsOf } from '@winterheft/words';
import { afterAll, describe, expect, test } from 'vitest';
import { looksLikeTrace, runCommand } from './run-command.ts';

const DEMO = readFileSync(fileURLToPath(new URL('../../../demo/journal.jsonl', import.meta.url)), 'utf8');
const LINES = DEMO.trimEnd().split('\n');
const OPTIONS = ['--today', '2026-09-18', '--members', '40'];
const folder = mkdtempSync(join(tmpdir(), 'winterheft-plan-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Plan {
  readonly outlooks: readonly { readonly colony: string; readonly label: string; readonly state: string; readonly needKg: number }[];
  readonly unread: { readonly lines: number; readonly byWhy: Readonly<Record<string, number>> };
  readonly later: number;
  readonly clashes: readonly unknown[];
}

const table = (journal: string | Uint8Array, more: readonly string[] = []) => runCommand(['plan', '-', ...OPTIONS, ...more], journal);

async function planOf(journal: string | Uint8Array): Promise<Plan> {
  const { code, out, err } = await table(journal, ['--json']);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as Plan;
}

async function refused(journal: string | Uint8Array, pieces: readonly RegExp[], options = OPTIONS) {
  const { code, out, err } = await runCommand(['plan', '-', ...options], journal);
  expect([code, out]).toEqual([2, '']);
  expect(err.split('\n').length, err).toBe(2);
  expect(looksLikeTrace(err), err).toBe(false);
  for (const piece of pieces) expect(err).toMatch(piece);
}

describe('the plan of the demo holding', () => {
  test('one row per living colony, steps in order, inside 110 columns in all units', async () => {
    const plan = await planOf(DEMO);
    for (const units of ['metric', 'us', 'ca']) {
      const { out } = await table(DEMO, ['--units', units]);
      const rows = out.split('\n');
      for (const row of rows) expect(columnsOf(row), row).toBeLessThanOrEqual(110);
      for (const { label } of plan.outlooks) expect(rows.filter((row) => row.startsWith(`${label} `)).length, label).toBe(1);
      const steps = rows.flatMap((row) => /^ *(\d+)\. /.exec(row)?.[1] ?? []).map(Number);
      expect(steps.length).toBeGreaterThan(5);
      expect(steps).toEqual(steps.map((_, i) => i + 1));
    }
  });

  test('the same journal gives the same bytes, and line order does not matter', async () => {
    const first = await table(DEMO);
    expect((await table(DEMO)).out).toBe(first.out);
    expect((await table(`${[...LINES].reverse().join('\n')}\n`)).out).toBe(first.out);
    expect((await table(DEMO, ['--seed', '2'])).out).not.toBe(first.out);
  });

  test('a place overrules the yards, and an ambiguous one lists the candidates', async () => {
    expect((await table(DEMO, ['--place', 'Winnipeg MB'])).code).toBe(0);
    await refused(DEMO, [/place is "Fort"/, / or /], [...OPTIONS, '--place', 'Fort']);
    await refused(DEMO, [/place is "Atlantis"/, /--places/], [...OPTIONS, '--place', 'Atlantis']);
  });
});

describe('a journal that is not whole', () => {
  test('a file cut in the middle: what can be read is read and the rest counted', async () => {
    const cut = DEMO.slice(0, DEMO.length - 40);
    const plan = await planOf(cut);
    expect(plan.unread).toMatchObject({ lines: 1, byWhy: { torn: 1 } });
    expect((await table(cut)).out).toMatch(/1 line was not read: 1 cut off in the middle/);
  });

  test('a file cut inside a letter loses that line only', async () => {
    const bytes = new TextEncoder().encode(`${DEMO}{"by":"Zoë`);
    expect((await planOf(bytes.subarray(0, bytes.length - 1))).unread.lines).toBe(1);
  });

  test('foreign lines, lines of a newer version and unknown kinds are counted by why', async () => {
    const { outlooks } = await planOf(DEMO);
    const newer = LINES[0]!.replace('{', '{"v":99,');
    const unknown = LINES[1]!.replace(/"kind":"[^"]*"/, '"kind":"moon-phase"');
    const wrong = LINES[2]!.replace(/"by":"[^"]*"/, '"by":7');
    const plan = await planOf([...LINES, 'dear diary', newer, unknown, wrong].join('\n'));
    expect(plan.unread.lines).toBe(4);
    expect(plan.outlooks.map((line) => line.needKg)).toEqual(outlooks.map((line) => line.needKg));
  });

  test('records dated after the day are kept apart and counted', async () => {
    const { out } = await runCommand(['plan', '-', '--today', '2026-09-01', '--members', '40'], DEMO);
    expect(out).toMatch(/records are dated after 1 Sep 2026 and not counted/);
  });

  test('what is no journal is refused with the first reason', async () => {
    await refused('dear diary\nweighed hive 7\n', [/not a journal: line 1 is not a record \(not JSON\), nor is any other of its 2 lines/]);
    await refused('{"bees":300,"mites":3}\n', [/not a journal/, /kind/]);
    await refused('weighed hive 7', [/not a journal: line 1 is not a record \(not JSON\)/]);
    await refused('[]\n', [/not a journal/]);
    await refused(LINES[0]!.replace('{', '{"v":99,'), [/not a journal/, /newer version/]);
    await refused('', [/empty/]);
    await refused('\n\n', [/empty/]);
    await refused(new Uint8Array([0x7b, 0, 0xff, 0xfe, 0x0a]), [/not text/]);
    await refused(new Uint8Array([0xff, 0xfe, 0x0a, 0x7b, 0x0a]), [/not text/]);
  });

  test('a day before the first record is told with the day it begins, a place that is none even where nothing is drawn', async () => {
    await refused(DEMO, [/--today is 2025-09-18; allowed: 2026-05-02 or later/], ['--today', '2025-09-18']);
    await refused(
      DEMO,
      [/place is "Atlantis"; allowed: a name that winterheft weather --places lists/],
      [...OPTIONS, '--place', 'Atlantis'],
    );
  });

  test('no colony: a sentence', async () => {
    const yards = LINES.filter((line) => line.includes('"kind":"yard"')).join('\n');
    await refused(yards, [/colony/, /missing/]);
  });

  test('a monstrous label is refused where it stands, a long one is cut in the table', async () => {
    const hive = LINES.findIndex((line) => line.includes('"kind":"hive"'));
    const labelled = (label: string) =>
      LINES.map((line, i) => (i === hive ? line.replace(/"label":"[^"]*"/, () => `"label":${JSON.stringify(label)}`) : line)).join('\n');
    const monster = await table(labelled('x'.repeat(10_000)));
    expect(monster.code).toBe(0);
    expect(monster.out).toMatch(/1 line was not read/);
    const long = await table(labelled('Long Meadow, third row, the blue one'));
    expect(long.out).toMatch(/Long Mead…/);
    for (const row of long.out.split('\n')) expect(columnsOf(row), row).toBeLessThanOrEqual(110);
    const rude = await table(labelled('\u202e\u200bblue\u2028'));
    expect(rude.out).not.toMatch(/[\u202e\u200b\u2028]/);
  });

  test('100,000 records are read', async () => {
    const weighing = LINES.find((line) => line.includes('"kind":"weighing"'))!;
    const many = Array.from({ length: 100_000 }, (_, i) => {
      const tail = i.toString(16).padStart(12, '0');
      return weighing.replace(/"id":"([0-9a-f-]{24})[0-9a-f]{12}"/, (_all, head: string) => `"id":"${head}${tail}"`);
    });
    const path = join(folder, 'many.jsonl');
    writeFileSync(path, `${DEMO}${many.join('\n')}\n`);
    const begun = Date.now();
    const { code, out, err } = await runCommand(['plan', path, ...OPTIONS, '--json']);
    expect([code, err]).toEqual([0, '']);
    expect((JSON.parse(out) as Plan).outlooks.length).toBe((await planOf(DEMO)).outlooks.length);
    expect(Date.now() - begun).toBeLessThan(60_000);
  });
});

describe('options of the plan', () => {
  test.each([
    [['--today', '2026-02-30'], /--today is "2026-02-30"; allowed: a date/],
    [['--today', 'tomorrow'], /--today is "tomorrow"/],
    [['--today', '2026-09-18', '--members', '3'], /--members is 3; allowed: 20 to 20000/],
    [['--today', '2026-09-18', '--members', 'many'], /--members is "many"; allowed: a number/],
    [['--today', '2026-09-18', '--members', '20.5'], /--members is 20\.5; allowed: whole numbers/],
    [['--today', '2026-09-18', '--seed', '1e99'], /--seed is 1e\+99; allowed/],
    [['--today', '2026-09-18', '--seed', ''], /--seed/],
  ])('%j', async (options, sentence) => {
    await refused(DEMO, [sentence], options);
  });

  test("without a day the machine's date is taken", async () => {
    const { out } = await runCommand(['plan', '-', '--members', '20', '--json'], DEMO);
    expect((JSON.parse(out) as { made: { today: string } }).made.today).toBe('2026-09-15');
  });
});
