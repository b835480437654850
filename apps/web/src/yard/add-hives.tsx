import type { Hive, Holding } from '@winterheft/core';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { BuildEditor } from '../setup/build-editor.tsx';
import { type BuildChoice, choiceOfParts, DEFAULT_BUILD } from '../setup/builds.ts';
import { hiveRecords, newName } from '../setup/records.ts';
import { Field } from '../ui/field.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { labelOf } from './hive-order.ts';
import type { Writing } from './written.tsx';

const MOST_AT_ONCE = 200;

interface AddHivesProps {
  readonly yard: string;
  /** Those that stand, in walking order. */
  readonly hives: readonly Hive[];
  readonly holding: Holding;
  readonly writing: Writing;
  readonly onDone: () => void;
}

interface Typed {
  readonly labels: string;
  readonly build: BuildChoice;
}

const asTyped = (stored: unknown) => (typeof stored === 'object' && stored !== null && 'labels' in stored ? (stored as Typed) : null);

/** More hives at the end of the walk, built like the last one unless said otherwise. */
export function AddHives({ yard, hives, holding, writing, onDone }: AddHivesProps) {
  const last = hives.at(-1);
  const parts = last?.builds.at(-1)?.parts;
  const build = (parts === undefined ? null : choiceOfParts(parts)) ?? DEFAULT_BUILD;
  const [typed, setTyped, clear] = useDraft<Typed>(`yard.add.${yard}`, { labels: '', build }, asTyped);
  const labels = labelsIn(typed.labels);
  const fault = labelsFault(labels, hives.map(labelOf));
  const lastStand = last?.stand == null ? undefined : holding.stands.get(last.stand);
  const add = async () => {
    const row = lastStand?.row ?? '1';
    const records = hiveRecords(yard, labels, typed.build, { name: newName, rowOf: () => row, from: lastStand?.place ?? hives.length });
    if (!(await writing.write(records, words.yard.written.added(labels.length)))) return;
    clear();
    onDone();
  };
  return (
    <form
      className="yard-editor"
      onSubmit={(event) => {
        event.preventDefault();
        if (labels.length > 0 && fault === null) add().catch(report);
      }}
    >
      <Field
        label={words.yard.addLabels}
        hint={words.yard.addLabelsHint}
        value={typed.labels}
        autoComplete="off"
        spellCheck={false}
        onChange={(next) => setTyped({ ...typed, labels: next })}
        error={fault}
      />
      <BuildEditor build={typed.build} onChange={(next) => setTyped({ ...typed, build: next })} />
      <p className="keys">
        <button type="submit" className="key key-solid" disabled={labels.length === 0 || fault !== null}>
          {words.yard.addHives}
        </button>
      </p>
    </form>
  );
}

export function labelsIn(typed: string): readonly string[] {
  return typed.split(/[,;\n]/).flatMap((label) => (label.trim() === '' ? [] : [label.trim()]));
}

/** Two hives of one yard may not carry one label, case apart. */
export function labelsFault(labels: readonly string[], standing: readonly string[]): string | null {
  const { yard, begin } = words;
  const taken = new Set(standing.map((label) => label.toLowerCase()));
  for (const label of labels) {
    if (taken.has(label.toLowerCase())) return yard.labelTwice(label);
    if (label.length > 40) return begin.labelLong(label.slice(0, 40));
    taken.add(label.toLowerCase());
  }
  return labels.length > MOST_AT_ONCE ? yard.addTooMany(MOST_AT_ONCE) : null;
}
