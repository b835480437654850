import { dayMonth } from '@winterheft/words';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { words } from '../app/words.ts';
import { Field } from '../ui/field.tsx';
import { numberFault } from '../ui/number-fault.ts';
import { typedNumber } from '../ui/typed-number.ts';
import type { HiveEditorProps } from './hive-editor.tsx';
import { partName } from './part-names.ts';

const WHOLE = '';

/** A part, or the hive as it stands empty, on the keeper's own scale. */
export function OwnWeights({ hive, holding, writing }: HiveEditorProps) {
  const { yard } = words;
  const units = useUnits();
  const [part, setPart] = useState(WHOLE);
  const [typed, setTyped] = useState('');
  const parts = hive.builds.at(-1)?.parts;
  if (parts === undefined) return null;
  const value = typedNumber(typed);
  const fault = numberFault(typed, { low: part === WHOLE ? 1 : 0.01, high: Math.floor(units.massOf(150)), unit: units.massUnit });
  const keys = new Set(parts.map((one) => one.part));
  const known = holding.partWeights.filter((own) => own.parts.every((one) => keys.has(one.part)));
  const nameOf = (of: readonly { readonly part: string }[]) => (of.length > 1 ? yard.whole : partName(of[0]?.part ?? ''));
  const write = async () => {
    if (value === null || fault !== null) return;
    const weighed = part === WHOLE ? parts : [{ part, count: 1 }];
    const massKg = value / units.massOf(1);
    const taken = await writing.write(
      [{ yard: hive.yard, kind: 'part-weighed', body: { parts: weighed, massKg } }],
      yard.written.weight(nameOf(weighed), units.mass(massKg)),
    );
    if (taken) setTyped('');
  };
  return (
    <details>
      <summary>{yard.ownWeights}</summary>
      <div className="yard-ending">
        <p className="note">{yard.ownWeightsNote}</p>
        {known.length === 0 ? null : (
          <ul>
            {known.map((own) => (
              <li key={own.record}>{yard.ownWeight(nameOf(own.parts), units.mass(own.massKg), dayMonth(own.at.date, true))}</li>
            ))}
          </ul>
        )}
        <form
          className="yard-line"
          onSubmit={(event) => {
            event.preventDefault();
            write().catch(report);
          }}
        >
          <label className="field">
            <span>{yard.part}</span>
            <select className="select" value={part} onChange={(event) => setPart(event.target.value)}>
              <option value={WHOLE}>{yard.whole}</option>
              {parts.map((one) => (
                <option key={one.part} value={one.part}>
                  {partName(one.part)}
                </option>
              ))}
            </select>
          </label>
          <Field
            label={part === WHOLE ? yard.weight : yard.onePiece}
            inputMode="decimal"
            autoComplete="off"
            value={typed}
            unit={units.massUnit}
            onChange={setTyped}
            error={fault}
          />
          <button type="submit" className="key" disabled={value === null || fault !== null}>
            {yard.write}
          </button>
        </form>
      </div>
    </details>
  );
}
