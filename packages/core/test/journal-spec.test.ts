import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { KINDS, SHUT_TICKS } from '../src/journal/index.ts';
import { settingShapes } from '../src/journal/settings.ts';

const folder = new URL('./', import.meta.url);
const spec = readFileSync(new URL('../../../docs/spec-journal.md', import.meta.url), 'utf8');
const rules = [...spec.matchAll(/^- \*\*\[(J\d+)\]\*\*/gm)].map((match) => match[1]!);
const tests = readdirSync(folder)
  .filter((file) => /^(journal|holding).*\.test\.ts$/.test(file))
  .flatMap((file) =>
    [...readFileSync(new URL(file, folder), 'utf8').matchAll(/\btest\(\s*(['"`])((?:\\.|(?!\1)[^\\])*)\1/g)].map((match) => match[2]!),
  );
const named = tests.flatMap((name) => [...name.matchAll(/\[(J\d+)\]/g)].map((match) => match[1]!));

test('every rule of the journal has a test, every test names a rule there is, and the rules are numbered without a gap', () => {
  expect(tests.length).toBeGreaterThan(60);
  expect(rules).toEqual(rules.map((_, i) => `J${i + 1}`));
  expect(rules.length).toBeGreaterThan(30);
  expect(rules.filter((rule) => !named.includes(rule))).toEqual([]);
  expect(named.filter((rule) => !rules.includes(rule))).toEqual([]);
});

test('the table of kinds lists exactly the kinds there are, and names every tick and setting', () => {
  const table = [...spec.matchAll(/^\| `([a-z-]+)`/gm)].map((match) => match[1]!);
  expect([...table].sort()).toEqual([...KINDS].sort());
  for (const word of [...SHUT_TICKS, ...Object.keys(settingShapes)]) expect(spec).toContain(word);
});
