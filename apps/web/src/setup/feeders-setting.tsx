import './setting.css';
import { lToUsGallon, type Settings } from '@winterheft/core';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { words } from '../app/words.ts';
import { Field } from '../ui/field.tsx';
import { numberFault } from '../ui/number-fault.ts';
import { typedNumber } from '../ui/typed-number.ts';
import { useDraft } from '../ui/use-draft.ts';
import { writeSetting } from './write-setting.ts';

type Feeders = NonNullable<Settings['feeders']>;
type Typed = Readonly<Record<string, { readonly count: string; readonly volume: string }>>;

const asTyped = (stored: unknown) => (typeof stored === 'object' && stored !== null ? (stored as Typed) : null);
const L_PER_US_GALLON = 1 / lToUsGallon(1);

/** The feeders there are: a row for each kind, those of a file that have no name here included. */
export function FeedersSetting({ now }: { readonly now: Feeders | undefined }) {
  const { settings } = words;
  const units = useUnits();
  const perUnitL = units.volumeUnit === 'L' ? 1 : L_PER_US_GALLON;
  const stands: Typed = Object.fromEntries(
    (now ?? []).map(({ type, count, litres }) => [
      type,
      { count: String(count), volume: String(Math.round((litres / perUnitL) * 100) / 100) },
    ]),
  );
  const [draft, setDraft, clear] = useDraft<Typed | null>('settings.feeders', null, asTyped);
  const [refused, setRefused] = useState<string | null>(null);
  const typed = draft ?? stands;
  const kinds = [...new Set([...Object.keys(settings.feederNames), ...Object.keys(typed)])];
  const rows = kinds.map((type) => {
    const { count, volume } = typed[type] ?? { count: '', volume: '' };
    const has = (typedNumber(count) ?? 0) > 0;
    const countFault = numberFault(count, { low: 0, high: 10_000, whole: true });
    const range = { low: 0.1, high: Math.floor(50 / perUnitL), unit: units.volumeUnit };
    const volumeFault =
      has && volume.trim() === ''
        ? words.begin.between(`${range.low} ${range.unit}`, `${range.high} ${range.unit}`)
        : numberFault(volume, range);
    return { type, name: settings.feederNames[type] ?? type, count, volume, has, countFault, volumeFault };
  });
  const isNew = draft !== null && JSON.stringify(draft) !== JSON.stringify(stands);
  const isRight = rows.every((row) => row.countFault === null && row.volumeFault === null);
  const change = (type: string, part: Partial<Typed[string]>) =>
    setDraft({ ...typed, [type]: { count: '', volume: '', ...typed[type], ...part } });
  const save = async () => {
    const feeders = rows
      .filter((row) => row.has)
      .map((row) => ({ type: row.type, count: typedNumber(row.count) as number, litres: (typedNumber(row.volume) as number) * perUnitL }));
    const refusal = await writeSetting('feeders', feeders);
    setRefused(refusal);
    if (refusal !== null) return;
    setDraft(null);
    clear();
  };
  return (
    <fieldset className="setting-group">
      <legend>{settings.feeders}</legend>
      <p className="note">{now === undefined ? settings.notSet(settings.feedersAssumed) : settings.feedersNote}</p>
      {rows.map((row) => (
        <div key={row.type} className="setting-pair">
          <Field
            label={settings.feederCount(row.name)}
            inputMode="numeric"
            value={row.count}
            onChange={(count) => change(row.type, { count })}
            error={row.countFault}
          />
          <Field
            label={settings.feederLitres(row.name)}
            inputMode="decimal"
            value={row.volume}
            unit={units.volumeUnit}
            onChange={(volume) => change(row.type, { volume })}
            error={row.volumeFault}
          />
        </div>
      ))}
      {refused === null ? null : <p className="error">{refused}</p>}
      {isNew && isRight ? (
        <p className="keys">
          <button type="button" className="key key-solid" onClick={() => save().catch(report)}>
            {settings.write}
          </button>
        </p>
      ) : null}
    </fieldset>
  );
}
