import { readFileSync } from 'node:fs';
import { readJournal, writeJournal } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { Holder, rowsOfFile } from '../src/background/holder.ts';
import { findTowns, foldedName, readTowns } from '../src/background/towns.ts';
import { lineKey } from '../src/store/line-key.ts';

const at = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const towns = readTowns(at('data/places/towns.txt'));
const demo = at('demo/journal.jsonl');

describe('towns', () => {
  test('the list is whole: every town has a name, a country and coordinates on the northern half', () => {
    expect(towns.length).toBeGreaterThan(19_000);
    const broken = towns.filter(
      (town) =>
        town.name === '' || !/^[A-Z]{2}$/.test(town.country) || !(town.latDeg > 38 && town.latDeg < 84) || !(Math.abs(town.lonDeg) <= 180),
    );
    expect(broken).toEqual([]);
  });

  // within: the list keeps hundredths of a degree; Canadian Geographical Names, The Pas: 53 deg 49 min 30 s N, 101 deg 15 min 12 s W (from memory)
  test('The Pas lies where the gazetteer has it', () => {
    const [town] = findTowns(towns, 'the pas', { home: 'CA' });
    expect(town?.name).toBe('The Pas');
    expect(Math.abs(town!.latDeg - 53.825)).toBeLessThan(0.02);
    expect(Math.abs(town!.lonDeg + 101.253)).toBeLessThan(0.02);
  });

  test('accents, capitals and points do not count', () => {
    expect(foldedName('Sault Ste. Marie')).toBe(foldedName('sault ste marie'));
    expect(findTowns(towns, 'jyvaskyla', {})[0]?.name).toBe('Jyväskylä');
    expect(findTowns(towns, 'lodz', {})[0]?.country).toBe('PL');
  });

  test('a comma narrows, the home country comes first, one letter is no search', () => {
    expect(findTowns(towns, 'london, on', {}).every((town) => town.region === 'ON')).toBe(true);
    expect(findTowns(towns, 'vienna', { home: 'AT' })[0]?.country).toBe('AT');
    expect(findTowns(towns, 'v', {})).toEqual([]);
  });
});

describe('the journal in the worker', () => {
  test('a file taken in twice adds nothing the second time', () => {
    const holder = new Holder();
    const all = readJournal(demo).records.length;
    expect(holder.compare(demo)).toMatchObject({ fresh: all, known: 0, unread: 0 });
    holder.add(rowsOfFile(demo).rows.map((row) => row.text));
    expect(holder.compare(demo)).toMatchObject({ fresh: 0, known: all, unread: 0, clashes: [] });
    expect(holder.text()).toBe(writeJournal(readJournal(demo)));
  });

  test('lines that cannot be read are counted, kept to the byte and handed on', () => {
    const odd = '{"id":"from a newer version","v":99}';
    const { rows } = rowsOfFile(`${demo}${odd}\n`);
    expect(rows.some((row) => row.text === odd)).toBe(true);
    const holder = new Holder();
    holder.add(rows.map((row) => row.text));
    expect(holder.snapshot().unread).toBe(1);
    expect(holder.text()).toContain(odd);
  });

  test('keys tell contents under one id apart and are the same for the same line', () => {
    const { rows } = rowsOfFile(demo);
    expect(new Set(rows.map((row) => row.key)).size).toBe(rows.length);
    expect(lineKey('a', 'x')).toBe(lineKey('a', 'x'));
    expect(lineKey('a', 'x')).not.toBe(lineKey('a', 'y'));
  });
});
