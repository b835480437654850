import type { ColonyOutlook, YardDates } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { coreWords, language, words } from '../app/words.ts';
import { massShown } from '../verdict/figures.ts';
import { SourceKey } from './source-key.tsx';

interface RestsProps {
  readonly line: ColonyOutlook;
  readonly yard: YardDates | undefined;
  readonly yardName: string;
  readonly units: UnitFormat;
}

/** What was measured, what was assumed, and where the model goes beyond what was ever weighed. */
export function RestsOn({ line, yard, yardName, units }: RestsProps) {
  const { colony } = words;
  const { stores } = line;
  const says = [
    ...(line.weighedOn === null ? [] : [colony.weighedOn(dayMonth(line.weighedOn))]),
    ...(line.lookedOn === null ? [] : [colony.lookedOn(dayMonth(line.lookedOn))]),
    colony.bees(Math.round(line.bees).toLocaleString(language)),
    ...(stores === null
      ? []
      : [colony.build(units.mass(stores.tare.massKg, stores.tare.sharedSdKg), coreWords.stores.basis[stores.tare.basis])]),
    ...(stores?.contact == null ? [] : [colony.cluster(massShown(stores.contact.kg, units), massShown(line.contactKg, units))]),
    ...line.notes.map((note) => sentence(coreWords.stateNote(note, units))),
    ...(stores?.notes ?? []).filter((note) => note !== 'bees-assumed').map((note) => coreWords.stores.notes[note]),
    ...line.extrapolatingBecause.map((why) => colony.extrapolated(coreWords.outlook.extrapolating[why])),
  ];
  return (
    <section>
      <div className="section-head">
        <h2>{colony.whyTitle}</h2>
        <SourceKey group="stores" />
      </div>
      <ul className="dashes">
        {says.map((text) => (
          <li key={text}>{text}</li>
        ))}
        {yard === undefined ? null : <li>{words.outlook.madeClimate(yardName, yard.climate.name)}</li>}
      </ul>
    </section>
  );
}

/** A note as a sentence of its own. */
function sentence(note: string): string {
  return `${note.charAt(0).toUpperCase()}${note.slice(1)}${/[.!?]$/.test(note) ? '' : '.'}`;
}
