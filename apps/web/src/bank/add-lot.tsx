import type { Holding } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { useState } from 'react';
import { append } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { coreWords, words } from '../app/words.ts';
import { Choice, Switch } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';
import { useDraft } from '../ui/use-draft.ts';
import type { Names } from '../walk/naming.ts';
import { faultText } from './fault-text.ts';
import { combRangeKg, fullCombKg, type LotAnswers, lotOf, NO_LOT, readLotAnswers } from './lot-answers.ts';

const FRAMES = ['deep', 'medium', 'shallow'] as const;

/** Writes a lot down: what it is, where it came from, and whether its colony was looked at. */
export function AddLot({
  holding,
  units,
  names,
  onDone,
}: {
  readonly holding: Holding;
  readonly units: UnitFormat;
  readonly names: Names;
  readonly onDone: () => void;
}) {
  const of = words.bank;
  const [answers, setAnswers, clear] = useDraft('bank-lot', NO_LOT, readLotAnswers);
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const yards = [...holding.yards.values()];
  const yard = holding.yards.has(answers.yard) ? answers.yard : (yards[0]?.id ?? '');
  const today = planDay();
  const { body, faults } = lotOf(answers, { holding, units, today });
  const set = (change: Partial<LotAnswers>) => setAnswers({ ...answers, ...change });
  const range = combRangeKg(answers.frame);
  const says = (field: keyof LotAnswers) =>
    tried ? faultText(faults[field], { lot: answers.lot.trim(), isMass: field === 'mass', units }) : null;

  const save = async () => {
    setTried(true);
    if (body === null) return;
    const written = await append([{ yard, kind: 'bank-lot', body }]);
    if (!written.ok) return setRefused(of.refusedRecord(coreWords.faultSentence(written.error)));
    setAnswers(NO_LOT);
    clear();
    onDone();
  };

  return (
    <form
      className="add-lot"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <h2>{of.add}</h2>
      <div className="field-grid">
        <Field
          label={of.lotName}
          value={answers.lot}
          onChange={(lot) => set({ lot })}
          hint={of.lotNameHint}
          error={says('lot')}
          autoComplete="off"
          maxLength={60}
        />
        <Field
          label={of.howMany}
          value={answers.count}
          onChange={(count) => set({ count })}
          inputMode="numeric"
          hint={of.howManyHint}
          error={says('count')}
        />
        <Field
          label={of.massEach}
          value={answers.mass}
          onChange={(mass) => set({ mass })}
          inputMode="decimal"
          unit={units.massUnit}
          hint={of.massHint(units.mass(fullCombKg(answers.frame)))}
          error={tried && faults.mass?.kind === 'out-of-range' ? of.between(units.mass(range.low), units.mass(range.high)) : says('mass')}
        />
        <Field
          label={of.crop}
          value={answers.crop}
          onChange={(crop) => set({ crop })}
          hint={of.cropHint}
          error={says('crop')}
          maxLength={60}
        />
        <Field
          label={of.looked}
          type="date"
          max={today}
          value={answers.looked}
          onChange={(looked) => set({ looked })}
          hint={of.lookedHint}
          error={says('looked')}
        />
        <Select label={of.from} value={answers.from} onChange={(from) => set({ from })}>
          <option value="">{of.fromUnknown}</option>
          {[...holding.colonies.values()]
            .filter((colony) => colony.yard === yard)
            .map((colony) => (
              <option key={colony.id} value={colony.id}>
                {names.colony(colony.id)}
              </option>
            ))}
        </Select>
        {yards.length < 2 ? null : (
          <Select label={of.yard} value={yard} onChange={(next) => set({ yard: next, from: '' })}>
            {yards.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </Select>
        )}
      </div>
      <Choice
        legend={of.frame}
        name="frame"
        value={answers.frame}
        options={FRAMES.map((value) => ({ value, label: of.frames[value] }))}
        onChange={(frame) => set({ frame })}
      />
      <Switch label={of.stripsAsk} note={of.stripsNote} on={answers.strips} onChange={(strips) => set({ strips })} />
      {refused === null ? null : (
        <p className="error" role="alert">
          {refused}
        </p>
      )}
      <p className="keys">
        <button type="submit" className="key key-solid">
          {of.save}
        </button>
        <button type="button" className="key" onClick={onDone}>
          {of.cancel}
        </button>
      </p>
    </form>
  );
}

function Select({
  label,
  value,
  onChange,
  children,
}: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly children: React.ReactNode;
}) {
  return (
    <div className="field">
      <label>
        <strong>{label}</strong>
        <select className="select" value={value} onChange={(event) => onChange(event.target.value)}>
          {children}
        </select>
      </label>
    </div>
  );
}
