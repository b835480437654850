import { describe, expect, it } from 'vitest';
import type { JournalRecord } from '../src/journal/index.ts';
import { type WatchLine, watch } from '../src/plan/index.ts';
import { newMaker } from './journal-maker.ts';

const PARTS = [
  { part: 'solid-floor', count: 1 },
  { part: 'deep-10-wood', count: 2 },
  { part: 'deep-frame-drawn', count: 20 },
  { part: 'telescoping-cover', count: 1 },
];

/** Two like hives, weighed on 18 September; what follows is the test's own. */
function yard(more: (make: ReturnType<typeof newMaker>) => JournalRecord[] = () => []): JournalRecord[] {
  const make = newMaker();
  const hive = (name: string) => [
    make('hive', { hive: `hive-${name}`, label: name.toUpperCase() }, { date: '2026-05-01' }),
    make('build', { hive: `hive-${name}`, parts: PARTS }, { date: '2026-05-01' }),
    make('colony-begun', { colony: `colony-${name}`, hive: `hive-${name}`, how: 'unknown' }, { date: '2026-05-01' }),
    make('weighing', { hive: `hive-${name}`, frontKg: 24, rearKg: 24 }, { date: '2026-09-18' }),
  ];
  return [
    make('yard', { name: 'Home', latDeg: 53.97, lonDeg: -101.09, elevM: 272 }, { date: '2026-05-01' }),
    ...hive('a'),
    ...hive('b'),
    ...more(make),
  ];
}

function lines(records: readonly JournalRecord[], today = '2027-03-10'): Record<string, WatchLine> {
  const answer = watch(records, { today, seed: 1, members: 300 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return Object.fromEntries(answer.value.answer.lines.map((line) => [line.label, line]));
}
const codes = (line: WatchLine | undefined) => line?.reasons.map(({ code }) => code) ?? [];

describe('the watch of a yard', () => {
  it('puts the hive that came up lighter first, calls it shorter, and leaves its like alone', () => {
    const before = lines(yard());
    const after = lines(yard((make) => [make('weighing', { hive: 'hive-b', frontKg: 16, rearKg: 16 }, { date: '2027-03-01' })]));
    expect(Object.keys(after)[0]).toBe('B');
    expect(after['B']!.update!.addKg).toBeGreaterThan(before['B']!.update!.addKg);
    expect(after['B']!.update!.appetite.after.median).toBeGreaterThan(before['B']!.update!.appetite.after.median);
    expect(after['A']!.update).toEqual(before['A']!.update);
  });

  it('does not use a weight of a day on which the hive was frozen to its stand, and says free it first', () => {
    const frozen = lines(
      yard((make) => [
        make('sign', { colony: 'colony-b', sign: 'frozen-down' }, { date: '2027-03-01' }),
        make('weighing', { hive: 'hive-b', frontKg: 30, rearKg: 30 }, { date: '2027-03-01' }),
      ]),
    );
    expect(frozen['B']!.refused).toEqual([{ code: 'frozen-down', on: '2027-03-01' }]);
    expect(codes(frozen['B'])).toContain('frozen-down');
    expect(frozen['B']!.acts[0]).toBe('free-it-first');
    expect(frozen['B']!.update!.appetite.after).toEqual(frozen['B']!.update!.appetite.before);
  });

  it('does not compare weights of a hive that was rebuilt since', () => {
    const rebuilt = lines(
      yard((make) => [
        make('build', { hive: 'hive-b', parts: PARTS.slice(0, 3) }, { date: '2027-01-10' }),
        make('weighing', { hive: 'hive-b', frontKg: 20, rearKg: 20 }, { date: '2027-03-01' }),
      ]),
    );
    expect(rebuilt['B']!.refused.map(({ code }) => code)).toEqual(['other-build']);
  });

  it('takes candy that was laid on out of the weight and counts it as stores', () => {
    const candy = (make: ReturnType<typeof newMaker>) =>
      make('feed', { colony: 'colony-b', what: 'candy', event: 'taken', sugarKg: 5 }, { date: '2027-02-01' });
    const without = lines(yard((make) => [make('weighing', { hive: 'hive-b', frontKg: 19, rearKg: 19 }, { date: '2027-03-01' })]));
    // 5 kg of sugar with its water weigh 5.4 kg: a hive as much heavier has eaten the same
    const given = lines(
      yard((make) => [candy(make), make('weighing', { hive: 'hive-b', frontKg: 21.7, rearKg: 21.7 }, { date: '2027-03-01' })]),
    );
    const appetite = (line: WatchLine | undefined) => line!.update!.appetite.after.median;
    expect(Math.abs(appetite(given['B']) / appetite(without['B']) - 1)).toBeLessThan(0.05);
    expect(given['B']!.update!.holdFrac).toBeGreaterThan(without['B']!.update!.holdFrac);
  });

  it('a silent hive is to be tapped again; heard later it is off for that', () => {
    const silent = (make: ReturnType<typeof newMaker>) => make('sign', { colony: 'colony-a', sign: 'silent' }, { date: '2027-02-10' });
    expect(codes(lines(yard((make) => [silent(make)]))['A'])).toContain('silent');
    const heard = yard((make) => [silent(make), make('sign', { colony: 'colony-a', sign: 'alive' }, { date: '2027-02-20' })]);
    expect(codes(lines(heard)['A'])).not.toContain('silent');
  });

  it('asks for no candy of a hive that will do, and for slabs now of one that may not last until the next lift', () => {
    const rich = lines(yard((make) => [make('weighing', { hive: 'hive-a', frontKg: 39, rearKg: 39 }, { date: '2026-09-20' })]))['A']!;
    expect(rich.rescue).toBeNull();
    const poor = lines(
      yard((make) => [make('weighing', { hive: 'hive-a', frontKg: 13.5, rearKg: 13.5 }, { date: '2027-04-10' })]),
      '2027-04-10',
    )['A']!;
    expect(codes(poor)).toContain('may-run-out-soon');
    expect(poor.rescue!.slabsNow).toBeGreaterThan(0);
    expect(poor.acts).toContain('give-candy');
  });

  it('without any weighing of autumn says so of every hive, and refuses a day of summer', () => {
    const records = yard().filter(({ kind }) => kind !== 'weighing');
    expect(codes(lines(records)['A'])).toContain('not-weighed-in-autumn');
    const summer = watch(yard(), { today: '2026-07-10', seed: 1, members: 100 });
    expect(summer.ok ? null : summer.error).toEqual({ kind: 'date-order', field: 'today', value: '2026-07-10', notBefore: '2026-08-15' });
  });
});
