import { useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { newName } from '../setup/records.ts';
import { Choice } from '../ui/choice.tsx';
import { ColonyNotes } from './colony-notes.tsx';
import type { HiveEditorProps } from './hive-editor.tsx';
import { hivesInOrder, labelOf } from './hive-order.ts';

const HOW_BEGUN = ['split', 'swarm', 'purchase', 'unknown'] as const;
const HOW_ENDED = ['died', 'sold', 'other'] as const;

/** Who lives in the hive: begun here, ended, or moved to an empty one. */
export function ColonyEditor(props: HiveEditorProps) {
  const { hive } = props;
  return hive.colonies.length === 0 ? (
    <BeginColony {...props} />
  ) : (
    hive.colonies.map((colony) => <Colony key={colony} colony={colony} {...props} />)
  );
}

function BeginColony({ hive, writing }: HiveEditorProps) {
  const [how, setHow] = useState<(typeof HOW_BEGUN)[number]>('split');
  const { yard } = words;
  const begin = () =>
    writing.write(
      [{ yard: hive.yard, kind: 'colony-begun', body: { colony: newName('c'), hive: hive.id, how } }],
      yard.written.begun(labelOf(hive)),
    );
  return (
    <>
      <Choice
        legend={yard.beginHow}
        name={`begun-${hive.id}`}
        value={how}
        options={HOW_BEGUN.map((value) => ({ value, label: yard.begunHow[value] }))}
        onChange={setHow}
      />
      <p className="keys">
        <button type="button" className="key" onClick={() => begin().catch(report)}>
          {yard.beginHere}
        </button>
      </p>
    </>
  );
}

function Colony({ colony, hive, holding, writing }: HiveEditorProps & { readonly colony: string }) {
  const [how, setHow] = useState<(typeof HOW_ENDED)[number]>('died');
  const empty = hivesInOrder(holding, hive.yard).filter((other) => other.colonies.length === 0);
  const [to, setTo] = useState('');
  const { yard } = words;
  const known = holding.colonies.get(colony);
  const target = empty.find((other) => other.id === to);
  const end = () => writing.write([{ yard: hive.yard, kind: 'colony-ended', body: { colony, how } }], yard.written.ended(labelOf(hive)));
  const move = () => {
    if (target === undefined) return;
    const record = { yard: hive.yard, kind: 'colony-placed' as const, body: { colony, hive: target.id } };
    writing.write([record], yard.written.placed(labelOf(target))).catch(report);
  };
  return (
    <>
      {known === undefined ? null : <ColonyNotes colony={known} label={labelOf(hive)} writing={writing} />}
      {empty.length === 0 ? null : (
        <div className="yard-line">
          <label className="field">
            <span>{yard.moveTo}</span>
            <select className="select" value={to} onChange={(event) => setTo(event.target.value)}>
              <option value="" />
              {empty.map((other) => (
                <option key={other.id} value={other.id}>
                  {labelOf(other)}
                </option>
              ))}
            </select>
          </label>
          <button type="button" className="key" disabled={target === undefined} onClick={move}>
            {yard.moveIt}
          </button>
        </div>
      )}
      <details>
        <summary>{yard.endIt}</summary>
        <div className="yard-ending">
          <Choice
            legend={yard.endIt}
            name={`ended-${colony}`}
            value={how}
            options={HOW_ENDED.map((value) => ({ value, label: yard.endedHow[value] }))}
            onChange={setHow}
          />
          <p className="keys">
            <button type="button" className="key" onClick={() => end().catch(report)}>
              {yard.endIt}
            </button>
          </p>
        </div>
      </details>
    </>
  );
}
