import { type InputHTMLAttributes, useId } from 'react';

interface FieldProps extends Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value'> {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly unit?: string;
  readonly hint?: string;
  /** What is wrong with it, as a sentence in place. */
  readonly error?: string | null;
}

/** A line to type in. Numbers are typed as text with `inputMode`: a spinner changes values under a thumb, and both commas are taken. */
export function Field({ label, value, onChange, unit, hint, error, ...input }: FieldProps) {
  const id = useId();
  const described = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ');
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-line">
        <input
          {...input}
          id={id}
          value={value}
          onChange={(event) => onChange(event.target.value)}
          aria-invalid={error ? true : undefined}
          aria-describedby={described === '' ? undefined : described}
        />
        {unit === undefined ? null : <span className="field-unit">{unit}</span>}
      </span>
      {hint ? (
        <p className="note" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {error ? (
        <p className="error" id={`${id}-error`}>
          {error}
        </p>
      ) : null}
    </div>
  );
}
