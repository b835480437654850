import { dayMonth, type UnitFormat } from '@winterheft/words';
import { useState } from 'react';
import { append } from '../app/session.ts';
import { coreWords, words } from '../app/words.ts';
import { Field } from '../ui/field.tsx';
import type { Names } from '../walk/naming.ts';
import { faultText } from './fault-text.ts';
import { countedAgain, type LotLine } from './lot-answers.ts';

/** A lot: combs, mass, origin, look, crop, what keeps it back; and the key to count it again. */
export function LotRow({ line, names, units }: { readonly line: LotLine; readonly names: Names; readonly units: UnitFormat }) {
  const of = words.bank;
  const { lot, frame, held, totalKg } = line;
  const [typed, setTyped] = useState<string | null>(null);
  const [says, setSays] = useState<string | null>(null);
  const facts = [
    lot.massKg === null ? '' : `${units.mass(lot.massKg)} ${of.heads.each}`,
    lot.from === null ? of.noOrigin : `${of.heads.from} ${names.colony(lot.from)}`,
    lot.looked === undefined ? of.neverLooked : `${of.heads.looked} ${dayMonth(lot.looked)}`,
    lot.crop ?? '',
  ].filter((text) => text !== '');

  const save = async () => {
    const { value, fault } = countedAgain(typed ?? '');
    if (fault !== null) return setSays(faultText(fault, { lot: lot.id, units }));
    const written = await append([{ yard: lot.yard, kind: 'bank-count', body: { lot: lot.id, count: value } }]);
    if (!written.ok) return setSays(of.refusedRecord(coreWords.faultSentence(written.error)));
    setTyped(null);
    setSays(null);
  };

  return (
    <li className={`lot${held === null ? '' : ' lot-held'}${lot.count < 0 ? ' lot-clash' : ''}`}>
      <div className="lot-head">
        <b className="num lot-name">{lot.id}</b>
        <span className="lot-what">
          <b>
            {lot.count === 0 ? of.empty : frame === null ? `${lot.count} ${of.unknownFrame}` : of.frameCount(lot.count, of.frames[frame])}
          </b>
          {totalKg > 0 ? (
            <>
              {', '}
              <b>{units.mass(totalKg)}</b>
            </>
          ) : null}
          <span className="lot-facts">{facts.join(', ')}</span>
          {held === 'signs' ? <span className="lot-warn">{of.setAside}</span> : null}
          {lot.strips ? <span className="lot-facts">{of.strips}</span> : null}
          <a className="link" href={`#/trace/lot/${encodeURIComponent(lot.id)}`}>
            {words.trace.link}
          </a>
        </span>
        {typed === null ? (
          <button type="button" className="key" aria-label={of.countLabel(lot.id)} onClick={() => setTyped('')}>
            {of.count}
          </button>
        ) : null}
      </div>
      {typed === null ? null : (
        <form
          className="lot-count"
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            void save();
          }}
        >
          <Field label={of.countNow(lot.id)} value={typed} onChange={setTyped} inputMode="numeric" error={says} />
          <p className="keys">
            <button type="submit" className="key key-solid">
              {of.save}
            </button>
            <button
              type="button"
              className="key"
              onClick={() => {
                setTyped(null);
                setSays(null);
              }}
            >
              {of.cancel}
            </button>
          </p>
        </form>
      )}
    </li>
  );
}
