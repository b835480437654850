import type { Hive, Holding } from '@winterheft/core';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { BuildEditor } from '../setup/build-editor.tsx';
import { choiceOfParts, DEFAULT_BUILD, partsOfBuild } from '../setup/builds.ts';
import { newName } from '../setup/records.ts';
import { Choice } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';
import { Icon } from '../ui/icons.tsx';
import { ColonyEditor } from './colony-editor.tsx';
import { hivesInOrder, labelOf } from './hive-order.ts';
import { labelsFault } from './labels.ts';
import { OwnWeights } from './own-weights.tsx';
import type { Writing } from './written.tsx';

export interface HiveEditorProps {
  readonly hive: Hive;
  readonly before: Hive | undefined;
  readonly after: Hive | undefined;
  readonly holding: Holding;
  readonly writing: Writing;
}

/** Everything that can be changed of one hive, the colony first. */
export function HiveEditor(props: HiveEditorProps) {
  const { yard } = words;
  return (
    <div className="yard-editor">
      <h3>{yard.bees}</h3>
      <ColonyEditor {...props} />
      <h3>{yard.hive}</h3>
      <LabelLine {...props} />
      <BuildLine {...props} />
      <PlaceLine {...props} />
      <OwnWeights {...props} />
    </div>
  );
}

function LabelLine({ hive, holding, writing }: HiveEditorProps) {
  const [label, setLabel] = useState(labelOf(hive));
  const { yard } = words;
  const others = hivesInOrder(holding, hive.yard).filter((other) => other.id !== hive.id);
  const fault = labelsFault([label.trim()], others.map(labelOf));
  const isNew = label.trim() !== '' && label.trim() !== hive.label && fault === null;
  return (
    <form
      className="yard-line"
      onSubmit={(event) => {
        event.preventDefault();
        if (isNew) writing.write([hiveRecord(hive, { label: label.trim() })], yard.written.renamed(label.trim())).catch(report);
      }}
    >
      <Field label={yard.label} value={label} maxLength={40} autoComplete="off" onChange={setLabel} error={fault} />
      <button type="submit" className="key" disabled={!isNew}>
        {yard.write}
      </button>
    </form>
  );
}

function BuildLine({ hive, writing }: HiveEditorProps) {
  const parts = hive.builds.at(-1)?.parts;
  const now = parts === undefined ? null : choiceOfParts(parts);
  const [build, setBuild] = useState(now ?? DEFAULT_BUILD);
  const { yard } = words;
  const isNew = now === null || JSON.stringify(now) !== JSON.stringify(build);
  const write = () =>
    writing.write(
      [{ yard: hive.yard, kind: 'build', body: { hive: hive.id, parts: partsOfBuild(build) } }],
      yard.written.built(labelOf(hive)),
    );
  return (
    <>
      <BuildEditor build={build} onChange={setBuild} />
      {isNew ? (
        <p className="keys">
          <button type="button" className="key" onClick={() => write().catch(report)}>
            {yard.write}
          </button>
        </p>
      ) : null}
    </>
  );
}

/** Where it comes in the walk, in which yard it stands, and that it stands there at all. */
function PlaceLine({ hive, before, after, holding, writing }: HiveEditorProps) {
  const { yard } = words;
  const stand = hive.stand === null ? undefined : holding.stands.get(hive.stand);
  const yards = [...holding.yards.values()];
  const swap = (other: Hive) =>
    writing
      .write(
        [hiveRecord(hive, { stand: other.stand }), hiveRecord(other, { stand: hive.stand })],
        yard.written.moved(labelOf(hive), labelOf(other)),
      )
      .catch(report);
  const toYard = (to: string) => {
    const last = hivesInOrder(holding, to)
      .flatMap(({ stand }) => (stand === null ? [] : [holding.stands.get(stand)]))
      .at(-1);
    const next = newName('s');
    const body = { stand: next, row: last?.row ?? '1', place: (last?.place ?? 0) + 1 };
    const name = holding.yards.get(to)?.name ?? to;
    writing
      .write(
        [
          { yard: to, kind: 'stand', body },
          { ...hiveRecord(hive, { stand: next }), yard: to },
        ],
        yard.written.movedYard(labelOf(hive), name),
      )
      .catch(report);
  };
  const takeOff = () =>
    writing
      .write(
        [{ yard: hive.yard, kind: 'hive', body: { hive: hive.id, label: labelOf(hive), gone: true } }],
        yard.written.gone(labelOf(hive)),
      )
      .catch(report);
  const canSwap = (other: Hive | undefined): other is Hive => other?.stand != null && hive.stand !== null;
  return (
    <>
      <fieldset className="yard-order">
        <legend>{yard.order}</legend>
        <p>{stand === undefined ? yard.noPlace : yard.place(stand.row, stand.place)}</p>
        <span className="keys">
          <button
            type="button"
            className="key"
            aria-label={yard.earlier}
            disabled={!canSwap(before)}
            onClick={() => canSwap(before) && swap(before)}
          >
            <Icon name="up" />
          </button>
          <button
            type="button"
            className="key"
            aria-label={yard.later}
            disabled={!canSwap(after)}
            onClick={() => canSwap(after) && swap(after)}
          >
            <Icon name="down" />
          </button>
        </span>
      </fieldset>
      {yards.length > 1 ? (
        <Choice
          legend={yard.toYard}
          name={`yard-of-${hive.id}`}
          value={hive.yard}
          options={yards.map((one) => ({ value: one.id, label: one.name }))}
          onChange={toYard}
        />
      ) : null}
      <p className="keys">
        <button type="button" className="key" disabled={hive.colonies.length > 0} onClick={takeOff}>
          {yard.takeOff}
        </button>
        <small>{yard.takeOffNote}</small>
      </p>
    </>
  );
}

function hiveRecord(hive: Hive, change: { readonly label?: string; readonly stand?: string | null }) {
  const stand = change.stand === undefined ? hive.stand : change.stand;
  return {
    yard: hive.yard,
    kind: 'hive' as const,
    body: { hive: hive.id, label: change.label ?? labelOf(hive), ...(stand === null ? {} : { stand }) },
  };
}
