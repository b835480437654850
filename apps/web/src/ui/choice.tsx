import type { ReactNode } from 'react';

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: T | null;
  readonly options: readonly { readonly value: T; readonly label: string; readonly picture?: ReactNode }[];
  readonly onChange: (value: T) => void;
  readonly note?: string;
}

/** One of a few: native radio buttons drawn as joined keys, 56 px high, chosen one filled. */
export function Choice<T extends string>({ legend, name, value, options, onChange, note }: ChoiceProps<T>) {
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      <div className="choice-keys">
        {options.map((option) => (
          <label key={option.value} className="choice-key">
            <input type="radio" name={name} value={option.value} checked={value === option.value} onChange={() => onChange(option.value)} />
            {option.picture}
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      {note === undefined ? null : <p className="note">{note}</p>}
    </fieldset>
  );
}

/** On or off: a native check box in a row of its own. */
export function Switch({
  label,
  on,
  onChange,
  note,
}: {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly note?: string | undefined;
}) {
  return (
    <label className="switch">
      <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
      <span>
        {label}
        {note === undefined ? null : <small>{note}</small>}
      </span>
    </label>
  );
}
