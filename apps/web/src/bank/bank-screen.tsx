import { useState } from 'react';
import { useHolding } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { frameOf } from '../walk/frames.ts';
import { namesOf } from '../walk/naming.ts';
import { AddLot } from './add-lot.tsx';
import { lotLines } from './lot-answers.ts';
import { LotRow } from './lot-row.tsx';
import { Rail } from './rail.tsx';
import './bank.css';

/** The frame bank: lots by yard with their looks and origins, what is in hand, what does not fit. */
export default function BankScreen() {
  const holding = useHolding();
  const units = useUnits();
  const [adding, setAdding] = useState(false);
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  const of = words.bank;
  const names = namesOf(holding, units);
  const yards = [...holding.yards.values()].map((yard) => ({ yard, lines: lotLines(holding, yard.id) }));
  const all = yards.flatMap(({ lines }) => lines);
  const combs = all.reduce((n, { lot }) => n + Math.max(0, lot.count), 0);
  const totalKg = all.reduce((kg, line) => kg + line.totalKg, 0);
  const clashes = holding.clashes.filter(({ kind }) => kind === 'lot-negative' || kind === 'lot-frame-differs' || kind === 'hand-negative');
  const inHand = holding.inHand.filter(({ count }) => count > 0);
  const setsHard = all.some(({ lot }) => lot.count > 0 && (lot.crop === 'canola' || lot.crop === 'aster'));
  return (
    <main className="page bank">
      <div className="bank-head">
        <h1>{of.title(combs, units.mass(totalKg))}</h1>
        <p className="note">{of.lead}</p>
      </div>
      {combs === 0 ? null : <Rail lines={all} label={of.rail(combs)} />}
      {clashes.length === 0 ? null : (
        <section className="bank-clash" role="alert">
          <h2>{of.clashTitle}</h2>
          <ul>
            {clashes.map((clash) => (
              <li key={clash.records.join(' ')}>{coreWords.clashSentence(clash)}</li>
            ))}
          </ul>
          <p>{of.clashHow}</p>
        </section>
      )}
      {yards.map(({ yard, lines }) => (
        <section key={yard.id}>
          <h2>{of.lotsOf(yard.name)}</h2>
          {lines.length === 0 ? (
            <p className="note">{of.none}</p>
          ) : (
            <ul className="ledger">
              {lines.map((line) => (
                <LotRow key={line.lot.id} line={line} names={names} units={units} />
              ))}
            </ul>
          )}
        </section>
      ))}
      {setsHard ? <p>{of.cropSetsHard}</p> : null}
      <section>
        <h2>{of.handTitle}</h2>
        {inHand.length === 0 ? (
          <p className="note">{of.handNone}</p>
        ) : (
          <ul>
            {inHand.map((entry) => (
              <li key={`${entry.from} ${entry.frame}`}>
                {of.handLine(
                  entry.count,
                  `${frameOf(entry).isLight ? of.light : of.capped} ${of.frames[frameOf(entry).depth]}`,
                  names.origin(entry.from),
                )}
              </li>
            ))}
          </ul>
        )}
      </section>
      {adding ? (
        <AddLot holding={holding} units={units} names={names} onDone={() => setAdding(false)} />
      ) : (
        <p className="keys">
          <button type="button" className="key key-solid" onClick={() => setAdding(true)} disabled={holding.yards.size === 0}>
            {of.add}
          </button>
        </p>
      )}
      <p className="note">{of.care}</p>
    </main>
  );
}
