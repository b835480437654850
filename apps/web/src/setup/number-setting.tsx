import './setting.css';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { Field } from '../ui/field.tsx';
import { type Allowed, numberFault } from '../ui/number-fault.ts';
import { typedNumber } from '../ui/typed-number.ts';
import { useDraft } from '../ui/use-draft.ts';

interface NumberSettingProps {
  /** Names the draft. */
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  /** What stands in the journal, as somebody would type it; empty where nothing does. */
  readonly now: string;
  readonly allowed: Allowed;
  readonly hint?: string;
  /** Writes the number as typed; gives a refusal as a sentence. */
  readonly write: (value: number) => Promise<string | null>;
}

const asText = (stored: unknown) => (typeof stored === 'string' ? stored : null);

/** One figure of the holding. What is typed is kept as a draft; the record is written by its own key. */
export function NumberSetting({ name, label, unit, now, allowed, hint, write }: NumberSettingProps) {
  const [typed, setTyped, clear] = useDraft<string | null>(`settings.${name}`, null, asText);
  const [refused, setRefused] = useState<string | null>(null);
  const fault = typed === null ? null : numberFault(typed, allowed);
  const value = typed === null ? null : typedNumber(typed);
  const isNew = typed !== null && typed !== now && value !== null && fault === null;
  const save = async () => {
    if (!isNew) return;
    const refusal = await write(value);
    setRefused(refusal);
    if (refusal !== null) return;
    setTyped(null);
    clear();
  };
  return (
    <form
      className="setting-number"
      onSubmit={(event) => {
        event.preventDefault();
        save().catch(report);
      }}
    >
      <Field
        label={label}
        inputMode="decimal"
        autoComplete="off"
        value={typed ?? now}
        unit={unit}
        onChange={setTyped}
        error={fault ?? refused}
        {...(hint === undefined ? {} : { hint })}
      />
      {isNew ? (
        <button type="submit" className="key key-solid">
          {words.settings.write}
        </button>
      ) : null}
    </form>
  );
}
