import { type Holding, isoDateOf, type TracePoint, type TraceStep, traceOf } from '@winterheft/core';
import { dayMonth } from '@winterheft/words';
import { useParams } from 'wouter';
import { store, useHolding } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { words } from '../app/words.ts';
import { labelOf, looksOf, nameOf, stepText } from './names.ts';
import './trace.css';

/** Every hive and lot that combs or bees of one colony or lot have touched, and the sheet of it for the inspector. */
export default function TraceScreen() {
  const { kind = '', id: raw = '' } = useParams<{ kind: string; id: string }>();
  const holding = useHolding();
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  const id = decodeURIComponent(raw);
  const start: TracePoint | null =
    kind === 'lot' ? (holding.lots.has(id) ? { lot: id } : null) : holding.colonies.has(id) ? { colony: id } : null;
  if (start === null) {
    return (
      <main className="page">
        <h1>{words.trace.unknown}</h1>
      </main>
    );
  }
  return <Trace start={start} holding={holding} />;
}

function Trace({ start, holding }: { readonly start: TracePoint; readonly holding: Holding }) {
  const { trace } = words;
  const { went, came, colonies, lots, shed } = traceOf(holding, start);
  const yard =
    'colony' in start ? holding.colonies.get(start.colony)?.yard : 'lot' in start ? holding.lots.get(start.lot)?.yard : undefined;
  const yardName = holding.yards.get(yard ?? '')?.name ?? '';
  return (
    <main className="page trace">
      <h1>{trace.title(nameOf(start, holding))}</h1>
      {'colony' in start ? <p className="lead">{looksOf(start.colony, holding)}</p> : null}
      <p>
        <b>{trace.stop}</b>
      </p>
      {went.length + came.length === 0 ? (
        <p>{trace.none}</p>
      ) : (
        <>
          <p>{trace.touched(colonies.length, lots.length)}</p>
          {shed ? <p className="note">{trace.shed}</p> : null}
          <Steps title={trace.went} steps={went} holding={holding} />
          <Steps title={trace.came} steps={came} holding={holding} />
          {colonies.length === 0 ? null : (
            <section>
              <h2>{trace.hives}</h2>
              <ul className="ledger">
                {colonies.map((colony) => (
                  <li key={colony}>
                    <a className="ledger-row trace-row" href={`#/colony/${encodeURIComponent(colony)}`}>
                      <strong className="num">{labelOf(colony, holding)}</strong>
                      <span>{looksOf(colony, holding)}</span>
                    </a>
                  </li>
                ))}
              </ul>
            </section>
          )}
          {lots.length === 0 ? null : (
            <section>
              <h2>{trace.lots}</h2>
              <p>{lots.map(trace.lot).join(', ')}</p>
            </section>
          )}
        </>
      )}
      <p className="note">{trace.inspector(yardName, store.by, dayMonth(planDay(), true))}</p>
      <p className="keys no-print">
        <button type="button" className="key" onClick={() => window.print()}>
          {trace.print}
        </button>
      </p>
    </main>
  );
}

function Steps({ title, steps, holding }: { readonly title: string; readonly steps: readonly TraceStep[]; readonly holding: Holding }) {
  if (steps.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul className="ledger">
        {steps.map((step) => (
          <li key={`${step.record} ${stepText(step, holding)}`} className="ledger-row trace-row">
            <span>{dayMonth(isoDateOf(step.day), true)}</span>
            <span>{stepText(step, holding)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
