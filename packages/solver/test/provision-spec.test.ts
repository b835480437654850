import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = new URL('./', import.meta.url);
const spec = readFileSync(new URL('../../../docs/spec-provision.md', import.meta.url), 'utf8');
const rules = [...spec.matchAll(/^- \*\*\[(P\d+)\]\*\*/gm)].map((match) => match[1]!);
const tests = readdirSync(folder)
  .filter((file) => file.endsWith('.test.ts'))
  .flatMap((file) =>
    [...readFileSync(new URL(file, folder), 'utf8').matchAll(/\btest(?:\.each[^'"`]*?)?\(\s*(['"`])((?:\\.|(?!\1)[^\\])*)\1/gs)].map(
      (match) => match[2]!,
    ),
  );
const named = [...readdirSync(folder).filter((file) => file.endsWith('.test.ts'))].flatMap((file) =>
  [...readFileSync(new URL(file, folder), 'utf8').matchAll(/['"`]\[(P\d+)\]/g)].map((match) => match[1]!),
);

test('every rule of provision has a test, every test names a rule there is, and the rules are numbered without a gap', () => {
  expect(tests.length).toBeGreaterThan(25);
  expect(rules).toEqual(rules.map((_, i) => `P${i + 1}`));
  expect(rules.filter((rule) => !named.includes(rule))).toEqual([]);
  expect(named.filter((rule) => !rules.includes(rule))).toEqual([]);
});
