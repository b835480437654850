import { SHIPPED_TOPS, type ShippedTop, shippedTop, type TopAnswer, topAtTemperatures } from '@winterheft/core';
import { useId, useMemo, useState } from 'react';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { Choice } from '../ui/choice.tsx';
import { CompareTops } from './compare-tops.tsx';
import { layersOf } from './section.ts';
import { SectionPicture } from './section-picture.tsx';
import './top.css';

/** A week of one weather, so that what settles little by little shows. */
const DAYS = 7;
const OUTSIDE = { low: -40, high: 10, first: -20 };
const USE_G = { low: 20, high: 120, first: 45 };
const WIND_M_PER_S = 1;

/** A top cut through, at a temperature the hand sets; below it the four builds over the winter. */
export default function TopScreen() {
  const of = words.hiveTop;
  const units = useUnits();
  const [top, setTop] = useState<ShippedTop>('vented-box');
  const [outsideC, setOutsideC] = useState(OUTSIDE.first);
  const [useG, setUseG] = useState(USE_G.first);
  const answers = useMemo(
    () => topAtTemperatures({ ...shippedTop(top), useKgPerDay: useG / 1000, days: DAYS, windMPerS: WIND_M_PER_S }, [outsideC]),
    [top, outsideC, useG],
  );
  const answer = answers.ok ? answers.value[0] : undefined;
  const outside = units.temp(outsideC);
  return (
    <main className="page hive-top">
      <div className="top-head">
        <h1>{of.title(of.names[top], outside)}</h1>
        <p className="note">{of.lead}</p>
      </div>
      <Choice
        legend={of.choose}
        name="top"
        value={top}
        options={SHIPPED_TOPS.map((value) => ({ value, label: of.names[value] }))}
        onChange={setTop}
      />
      <div className="top-sliders">
        <Slider label={of.outside} says={outside} value={outsideC} range={OUTSIDE} onChange={setOutsideC} />
        <Slider label={of.use} says={`${useG} g`} value={useG} range={USE_G} onChange={setUseG} />
      </div>
      {answers.ok ? null : (
        <p className="error" role="alert">
          {coreWords.faultSentence(answers.error)}
        </p>
      )}
      {answer === undefined ? null : <Standing {...{ top, answer, outsideC }} />}
      <CompareTops units={units} />
      <section>
        <h2>{of.limitsTitle}</h2>
        <ul className="top-limits">
          {of.limits.map((limit) => (
            <li key={limit}>{limit}</li>
          ))}
        </ul>
      </section>
    </main>
  );
}

/** How the top stands: section, wet places, faces in figures, what is to be told with them. */
function Standing({ top, answer, outsideC }: { readonly top: ShippedTop; readonly answer: TopAnswer; readonly outsideC: number }) {
  const of = words.hiveTop;
  const units = useUnits();
  const layers = layersOf(top, answer);
  const wet = [
    ...layers.flatMap((layer) => (layer.wet || layer.frost ? [of.under(of.layers[layer.material] ?? layer.material)] : [])),
    ...answer.places.flatMap((place) => (place.wet || place.frost ? [coreWords.top.places[place.place]] : [])),
  ];
  const says = wet.length === 0 ? of.nowhere : of.wetPlaces(wet.join(', '));
  const state = (at: { readonly wet: boolean; readonly frost: boolean }) => (at.frost ? of.frost : at.wet ? of.wet : of.dry);
  return (
    <div className="top-standing">
      <div className="top-picture">
        <SectionPicture
          {...{ top, answer, outsideC, units }}
          label={of.picture(of.names[top], units.temp(outsideC), units.temp(answer.insideC), says)}
        />
        <p className="top-legend">
          <span className="key-warm">{of.warmth}</span> <span className="key-dew">{of.dew}</span> <span>{of.crossing}</span>
        </p>
      </div>
      <div className="top-figures">
        <p aria-live="polite">
          <strong>{says}</strong> {of.after(DAYS)}
        </p>
        <table className="top-table">
          <caption>{of.faces}</caption>
          <thead>
            <tr>
              <th scope="col">{of.face}</th>
              <th scope="col">{of.temp}</th>
              <th scope="col">{of.settles}</th>
              <th scope="col">{of.state}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{of.inside}</th>
              <td>{units.temp(answer.insideC)}</td>
              <td>{units.temp(answer.frostPointC ?? answer.dewPointC)}</td>
              <td />
            </tr>
            {layers.map((layer) => (
              <tr key={layer.lowM} className={layer.wet || layer.frost ? 'top-wet' : undefined}>
                <th scope="row">{of.layers[layer.material] ?? layer.material}</th>
                <td>{units.temp(layer.tempC)}</td>
                <td>{units.temp(layer.settlesC)}</td>
                <td>{state(layer)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {answer.notes.map((note) => (
          <p key={note} className="note">
            {coreWords.top.notes[note]}
          </p>
        ))}
      </div>
    </div>
  );
}

function Slider({
  label,
  says,
  value,
  range,
  onChange,
}: {
  readonly label: string;
  readonly says: string;
  readonly value: number;
  readonly range: { readonly low: number; readonly high: number };
  readonly onChange: (value: number) => void;
}) {
  const id = useId();
  return (
    <div className="top-slider">
      <label htmlFor={id}>
        {label} <output htmlFor={id}>{says}</output>
      </label>
      <input
        id={id}
        type="range"
        min={range.low}
        max={range.high}
        step={1}
        value={value}
        aria-valuetext={says}
        onChange={(event) => onChange(Number(event.target.value))}
      />
    </div>
  );
}
