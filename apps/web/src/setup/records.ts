import type { Town } from '../background/towns.ts';
import type { NewRecord } from '../store/journal-store.ts';
import { type Answers, countOf, hooksSetting, labelsOf, ruleOf } from './answers.ts';
import { type BuildChoice, partsOfBuild } from './builds.ts';

/** Gives a new short name: yards, stands, hives and colonies have one that no label change touches. */
export type NewName = (of: 'y' | 's' | 'h' | 'c') => string;

/** Six letters and digits: 2 milliards of names, short enough for a tag on the hive. */
export const newName: NewName = (of) =>
  `${of}${Array.from(crypto.getRandomValues(new Uint8Array(6)), (byte) => (byte % 36).toString(36)).join('')}`;

/** The records a settled Begin writes; null while something is missing. */
export function recordsOf(answers: Answers, name: NewName): { readonly yard: string; readonly records: readonly NewRecord[] } | null {
  const count = countOf(answers.count);
  if (answers.place === null || count === null) return null;
  const { labels, fault } = labelsOf(answers, count);
  const rule = ruleOf(answers.rule, answers.units);
  if (fault !== null || rule.fault !== null) return null;
  const yard = name('y');
  const setting = (key: string, value: unknown): NewRecord => ({ yard: '*', kind: 'setting', body: { key, value } });
  return {
    yard,
    records: [
      yardRecord(yard, answers.yardName, answers.place),
      setting('units', answers.units),
      setting('hooks', hooksSetting(answers.hooks)),
      ...(rule.value === null ? [] : [setting('ownRule', rule.value)]),
      ...hiveRecords(yard, labels, answers.build, {
        name,
        rowOf: answers.labelWay === 'rows' ? (label) => label.replace(/\d+$/, '') : () => '1',
        from: 0,
      }),
    ],
  };
}

function yardRecord(yard: string, typedName: string, place: Town): NewRecord {
  const { latDeg, lonDeg, elevM, name } = place;
  return { yard, kind: 'yard', body: { name: typedName.trim() || name || yard, latDeg, lonDeg, ...(elevM === null ? {} : { elevM }) } };
}

/** Stand, hive, build and colony for each label. */
export function hiveRecords(
  yard: string,
  labels: readonly string[],
  build: BuildChoice,
  { name, rowOf, from }: { readonly name: NewName; readonly rowOf: (label: string) => string; readonly from: number },
): readonly NewRecord[] {
  const parts = partsOfBuild(build);
  return labels.flatMap((label, i): NewRecord[] => {
    const [stand, hive, colony] = [name('s'), name('h'), name('c')];
    return [
      { yard, kind: 'stand', body: { stand, row: rowOf(label) || '1', place: from + i + 1 } },
      { yard, kind: 'hive', body: { hive, label, stand } },
      { yard, kind: 'build', body: { hive, parts } },
      { yard, kind: 'colony-begun', body: { colony, hive, how: 'unknown' } },
    ];
  });
}
