import type { Bodies, Colony } from '@winterheft/core';
import { dayMonth } from '@winterheft/words';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { words } from '../app/words.ts';
import type { NewRecord } from '../store/journal-store.ts';
import { Choice } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';
import { numberFault } from '../ui/number-fault.ts';
import { typedNumber } from '../ui/typed-number.ts';
import type { Writing } from './written.tsx';

interface NotesProps {
  readonly colony: Colony;
  readonly label: string;
  readonly writing: Writing;
}

interface NoteProps {
  /** Writes one record of this colony and says so. */
  readonly write: (note: Note, says: string) => Promise<boolean>;
  readonly label: string;
  readonly colony: Colony;
}

type NoteKind = 'queen' | 'wash' | 'treatment-in' | 'treatment-out' | 'sign';
type Note = { readonly [K in NoteKind]: { readonly kind: K; readonly body: Omit<Bodies[K], 'colony'> } }[NoteKind];

const QUEEN_STATES = ['seen', 'laying', 'absent', 'introduced', 'unknown'] as const;
const METHODS = ['alcohol', 'sugar', 'co2'] as const;
const SIGNS = ['alive', 'silent', 'frost-plume', 'wet-lid', 'frozen-down'] as const;
/** Queens older than this are typing errors [years]. */
const OLDEST_QUEEN = 10;

/** What else is noted of a colony: its queen, a mite wash, a treatment put in or taken out, a sign seen from outside. */
export function ColonyNotes({ colony, label, writing }: NotesProps) {
  const { yard } = words;
  const write: NoteProps['write'] = (note, says) => {
    const record = { yard: colony.yard, kind: note.kind, body: { colony: colony.id, ...note.body } };
    return writing.write([record as NewRecord], says);
  };
  const of = { write, label, colony };
  return (
    <details>
      <summary>{yard.kept}</summary>
      <div className="yard-ending">
        <QueenNote {...of} />
        <WashNote {...of} />
        <TreatmentNote {...of} />
        <SignNote {...of} />
      </div>
    </details>
  );
}

function QueenNote({ write, label, colony }: NoteProps) {
  const { yard } = words;
  const [state, setState] = useState<(typeof QUEEN_STATES)[number] | null>(null);
  const [year, setYear] = useState('');
  const now = Number(planDay().slice(0, 4));
  const fault = numberFault(year, { low: now - OLDEST_QUEEN, high: now, whole: true });
  const born = typedNumber(year);
  const save = async () => {
    if (state === null || fault !== null) return;
    if (await write({ kind: 'queen', body: { state, ...(born === null ? {} : { bornYear: born }) } }, yard.written.queen(label)))
      setState(null);
  };
  return (
    <>
      <Choice
        legend={yard.queen}
        name={`queen-${colony.id}`}
        value={state}
        options={QUEEN_STATES.map((value) => ({ value, label: yard.queenStates[value] }))}
        onChange={setState}
      />
      <div className="yard-line">
        <Field label={yard.queenYear} inputMode="numeric" value={year} onChange={setYear} error={fault} />
        <button type="button" className="key" disabled={state === null || fault !== null} onClick={() => save().catch(report)}>
          {yard.write}
        </button>
      </div>
    </>
  );
}

function WashNote({ write, label, colony }: NoteProps) {
  const { yard } = words;
  const [bees, setBees] = useState('');
  const [mites, setMites] = useState('');
  const [method, setMethod] = useState<(typeof METHODS)[number]>('alcohol');
  const beesFault = numberFault(bees, { low: 1, high: 5000, whole: true });
  const mitesFault = numberFault(mites, { low: 0, high: 5000, whole: true });
  const [beesN, mitesN] = [typedNumber(bees), typedNumber(mites)];
  const isRight = beesN !== null && mitesN !== null && beesFault === null && mitesFault === null;
  const save = async () => {
    if (!isRight) return;
    if (!(await write({ kind: 'wash', body: { bees: beesN, mites: mitesN, method } }, yard.written.wash(label)))) return;
    setBees('');
    setMites('');
  };
  return (
    <>
      <Choice
        legend={yard.washMethod}
        name={`wash-${colony.id}`}
        value={method}
        options={METHODS.map((value) => ({ value, label: yard.washMethods[value] }))}
        onChange={setMethod}
      />
      <div className="yard-line">
        <Field label={yard.washBees} inputMode="numeric" value={bees} onChange={setBees} error={beesFault} />
        <Field label={yard.washMites} inputMode="numeric" value={mites} onChange={setMites} error={mitesFault} />
        <button type="button" className="key" disabled={!isRight} onClick={() => save().catch(report)}>
          {yard.write}
        </button>
      </div>
    </>
  );
}

/** Which active ingredient went in or came out; how much and how is the label's business. */
function TreatmentNote({ write, label, colony }: NoteProps) {
  const { yard } = words;
  const [active, setActive] = useState(Object.keys(yard.actives)[0] ?? '');
  const open = colony.treatments.filter((treatment) => treatment.in !== null && treatment.out === null);
  const save = (note: Note) => write(note, yard.written.treated(label)).catch(report);
  const nameOf = (key: string) => yard.actives[key] ?? key;
  return (
    <fieldset className="yard-group">
      <legend>{yard.treatment}</legend>
      <p className="note">{yard.treatmentCaution}</p>
      {open.map((treatment) => (
        <p key={treatment.in?.record} className="yard-line">
          <span>{yard.treatmentOpen(nameOf(treatment.active), dayMonth(treatment.in?.at.date ?? ''))}</span>
          <button type="button" className="key" onClick={() => save({ kind: 'treatment-out', body: { active: treatment.active } })}>
            {yard.treatmentOut}
          </button>
        </p>
      ))}
      <div className="yard-line">
        <label className="field">
          <span>{yard.treatmentWith}</span>
          <select className="select" value={active} onChange={(event) => setActive(event.target.value)}>
            {Object.entries(yard.actives).map(([key, name]) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <button type="button" className="key" onClick={() => save({ kind: 'treatment-in', body: { active } })}>
          {yard.treatmentIn}
        </button>
      </div>
    </fieldset>
  );
}

/** One key a sign: what is heard and seen without opening. */
function SignNote({ write, label }: NoteProps) {
  const { yard } = words;
  return (
    <fieldset className="yard-group">
      <legend>{yard.sign}</legend>
      <p className="keys">
        {SIGNS.map((sign) => (
          <button
            key={sign}
            type="button"
            className="key"
            onClick={() => write({ kind: 'sign', body: { sign } }, yard.written.sign(label)).catch(report)}
          >
            {yard.signs[sign]}
          </button>
        ))}
      </p>
    </fieldset>
  );
}
