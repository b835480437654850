import type { Yard } from '@winterheft/core';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import type { Town } from '../background/towns.ts';
import { PlaceEditor } from '../setup/place-editor.tsx';
import { WinterPicture } from '../setup/winter-picture.tsx';
import { Field } from '../ui/field.tsx';
import type { Writing } from './written.tsx';

interface YardEditorProps {
  readonly of: Yard;
  readonly writing: Writing;
  readonly onDone: () => void;
}

/** Name of a yard and the place its winter is taken from. */
export function YardEditor({ of, writing, onDone }: YardEditorProps) {
  const [name, setName] = useState(of.name);
  const { begin, yard } = words;
  const write = async (place: Pick<Town, 'latDeg' | 'lonDeg' | 'elevM'>) => {
    const { latDeg, lonDeg, elevM } = place;
    const moved = latDeg !== of.latDeg || lonDeg !== of.lonDeg;
    // Means typed for the old place, or a row of the table chosen for it, do not go along to another one.
    const kept = moved
      ? {}
      : { ...(of.climatePlace ? { climatePlace: of.climatePlace } : {}), ...(of.monthlyMeanC ? { monthlyMeanC: of.monthlyMeanC } : {}) };
    const body = {
      name: name.trim() || of.name,
      latDeg,
      lonDeg,
      ...(elevM === null ? {} : { elevM }),
      ...kept,
      ...(of.exchangeWith === undefined ? {} : { exchangeWith: of.exchangeWith }),
    };
    if (await writing.write([{ yard: of.id, kind: 'yard', body }], yard.written.yard(body.name))) onDone();
  };
  const here = { latDeg: of.latDeg, lonDeg: of.lonDeg, elevM: of.elevM ?? null };
  return (
    <div className="yard-editor">
      <form
        className="yard-line"
        onSubmit={(event) => {
          event.preventDefault();
          write(here).catch(report);
        }}
      >
        <Field label={begin.yardName} value={name} maxLength={40} onChange={setName} />
        <button type="submit" className="key key-solid" disabled={name.trim() === '' || name.trim() === of.name}>
          {yard.write}
        </button>
      </form>
      <WinterPicture place={here} />
      <PlaceEditor onChoose={(town) => write(town).catch(report)} />
    </div>
  );
}
