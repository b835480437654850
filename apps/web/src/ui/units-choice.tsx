import type { Units } from '@winterheft/words';
import { words } from '../app/words.ts';
import { Choice } from './choice.tsx';

/** Kilograms and °C, pounds and °F, or pounds and °C. */
export function UnitsChoice({ units, onChange }: { readonly units: Units; readonly onChange: (units: Units) => void }) {
  const { begin } = words;
  const options = (['metric', 'us', 'ca'] as const).map((name) => ({ value: name, label: begin.units[name] }));
  return <Choice legend={begin.rowUnits} name="units" value={units} options={options} onChange={onChange} />;
}
