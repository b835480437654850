import './setup.css';
import { footToM } from '@winterheft/core';
import { useEffect, useState } from 'react';
import { useUnits } from '../app/use-units.ts';
import { language, words } from '../app/words.ts';
import { work } from '../background/client.ts';
import type { Town } from '../background/towns.ts';
import { Field } from '../ui/field.tsx';
import { typedNumber } from '../ui/typed-number.ts';
import { useDraft } from '../ui/use-draft.ts';

interface PlaceEditorProps {
  readonly onChoose: (place: Town) => void;
  /** Puts the cursor into the field at once: on the first screen there is nothing else to do. */
  readonly focus?: boolean;
}

const countries = new Intl.DisplayNames([language], { type: 'region' });
const home = navigator.language.split('-')[1];
const asText = (stored: unknown) => (typeof stored === 'string' ? stored : null);

/** Where the yard lies: the name of a town, found in a list that needs no signal, or coordinates. */
export function PlaceEditor({ onChoose, focus = false }: PlaceEditorProps) {
  const [typed, setTyped, clearTyped] = useDraft('begin.town', '', asText);
  const [towns, setTowns] = useState<readonly Town[] | null>(null);
  const [broken, setBroken] = useState(false);
  const [coordinates, setCoordinates] = useState(false);
  const { begin } = words;
  useEffect(() => {
    let current = true;
    if (typed.trim().length < 2) {
      setTowns(null);
      return;
    }
    work()
      .then((api) => api.findTowns(typed, home))
      .then(
        (found) => current && setTowns(found),
        () => current && setBroken(true),
      );
    return () => {
      current = false;
    };
  }, [typed]);
  const choose = (town: Town) => {
    clearTyped();
    onChoose(town);
  };
  if (coordinates) return <Coordinates onChoose={choose} onBack={() => setCoordinates(false)} />;
  return (
    <div className="place-editor">
      <Field
        label={begin.town}
        value={typed}
        onChange={setTyped}
        autoFocus={focus}
        autoComplete="off"
        autoCapitalize="words"
        spellCheck={false}
        enterKeyHint="search"
        hint={begin.townHint}
        error={broken ? begin.townBroken : null}
        onKeyDown={(event) => {
          const first = towns?.[0];
          if (event.key === 'Enter' && first !== undefined) choose(first);
        }}
      />
      <p className="sr-only" role="status">
        {towns === null ? '' : begin.townFound(towns.length)}
      </p>
      <ul className="towns">
        {towns?.map((town) => (
          <li key={`${town.name} ${town.latDeg} ${town.lonDeg}`}>
            <button type="button" className="town" onClick={() => choose(town)}>
              <strong>{town.name}</strong>
              <span>
                {town.region === '' ? '' : `${town.region}, `}
                {countries.of(town.country)}
              </span>
              <span className="town-at">{degrees(town)}</span>
            </button>
          </li>
        ))}
      </ul>
      {towns?.length === 0 ? <p className="note">{begin.townNone}</p> : null}
      <p className="place-foot">
        <button type="button" className="link" onClick={() => setCoordinates(true)}>
          {begin.byCoordinates}
        </button>
        <small>{begin.townSource}</small>
      </p>
    </div>
  );
}

/** `53.8° N, 101.2° W` */
export function degrees({ latDeg, lonDeg }: { readonly latDeg: number; readonly lonDeg: number }): string {
  return `${latDeg.toFixed(1)}° N, ${Math.abs(lonDeg).toFixed(1)}° ${lonDeg < 0 ? 'W' : 'E'}`;
}

interface Typed {
  readonly lat: string;
  readonly lon: string;
  readonly elev: string;
}

const NOTHING: Typed = { lat: '', lon: '', elev: '' };
const asTyped = (stored: unknown) => (typeof stored === 'object' && stored !== null ? { ...NOTHING, ...(stored as Partial<Typed>) } : null);

function Coordinates({ onChoose, onBack }: { readonly onChoose: (place: Town) => void; readonly onBack: () => void }) {
  const [typed, setTyped, clear] = useDraft('begin.coordinates', NOTHING, asTyped);
  const [tried, setTried] = useState(false);
  const units = useUnits();
  const { begin } = words;
  const inFeet = units.lengthUnit === 'in';
  const lat = typedNumber(typed.lat);
  const lon = typedNumber(typed.lon);
  const elev = typedNumber(typed.elev);
  const elevM = elev === null || !inFeet ? elev : footToM(elev);
  const faults = {
    lat: lat !== null && lat < 0 && lat >= -90 ? begin.southern : faultOf(typed.lat, lat, { low: 0, high: 90, unit: '°' }),
    lon: faultOf(typed.lon, lon, { low: -180, high: 180, unit: '°' }),
    elev: elev === null ? null : faultOf(typed.elev, elevM, { low: -400, high: 5000, unit: ' m' }),
  };
  const use = () => {
    setTried(true);
    if (lat === null || lon === null || faults.lat !== null || faults.lon !== null || faults.elev !== null) return;
    clear();
    onChoose({ name: '', country: '', region: '', latDeg: lat, lonDeg: lon, elevM });
  };
  return (
    <div className="coordinates">
      <Field
        label={begin.latitude}
        inputMode="decimal"
        value={typed.lat}
        unit="°"
        onChange={(next) => setTyped({ ...typed, lat: next })}
        error={tried || typed.lat.length > 1 ? faults.lat : null}
      />
      <Field
        label={begin.longitude}
        inputMode="text"
        value={typed.lon}
        unit="°"
        onChange={(next) => setTyped({ ...typed, lon: next })}
        error={tried ? faults.lon : null}
      />
      <Field
        label={begin.height}
        inputMode="text"
        value={typed.elev}
        unit={inFeet ? 'ft' : 'm'}
        onChange={(next) => setTyped({ ...typed, elev: next })}
        error={tried ? faults.elev : null}
      />
      <span className="keys">
        <button type="button" className="key key-solid" onClick={use}>
          {begin.useCoordinates}
        </button>
        <button type="button" className="key" onClick={onBack}>
          {begin.byTown}
        </button>
      </span>
    </div>
  );
}

function faultOf(
  text: string,
  value: number | null,
  { low, high, unit }: { readonly low: number; readonly high: number; readonly unit: string },
): string | null {
  const { begin } = words;
  const allowed = begin.between(`${String(low).replace('-', '−')}${unit}`, `${high}${unit}`);
  if (value === null) return allowed;
  if (Number.isNaN(value)) return begin.notNumber(text);
  return value >= low && value <= high ? null : allowed;
}
