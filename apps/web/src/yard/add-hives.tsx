import type { Hive, Holding } from '@winterheft/core';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { BuildEditor } from '../setup/build-editor.tsx';
import { type BuildChoice, choiceOfParts, DEFAULT_BUILD } from '../setup/builds.ts';
import { hiveRecords, newName } from '../setup/records.ts';
import { Field } from '../ui/field.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { labelOf } from './hive-order.ts';
import { labelsFault, labelsIn } from './labels.ts';
import type { Writing } from './written.tsx';

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
  const lastStand = hives.flatMap(({ stand }) => (stand === null ? [] : [holding.stands.get(stand)])).at(-1);
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
