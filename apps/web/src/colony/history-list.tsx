import type { Colony, Holding } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { useState } from 'react';
import { append, report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { type Event, historyOf } from './history.ts';

interface HistoryProps {
  readonly colony: Colony;
  readonly holding: Holding;
  readonly units: UnitFormat;
}

const SHOWN = 12;

/** What was recorded, newest first. A record can be withdrawn, and put back as long as the screen is open; nothing is erased. */
export function HistoryList({ colony, holding, units }: HistoryProps) {
  const { history } = words.colony;
  const [all, setAll] = useState(false);
  const [struck, setStruck] = useState<ReadonlyMap<string, { readonly event: Event; readonly by: string }>>(new Map());
  const events = historyOf(colony, { holding, units, history });
  const gone = [...struck.values()].map(({ event }) => event).filter((event) => !events.some(({ record }) => record === event.record));
  const listed = [...events, ...gone].sort((a, b) => b.minute - a.minute);
  const shown = all ? listed : listed.slice(0, SHOWN);

  const withdraw = async (event: Event) => {
    const written = await append([{ yard: colony.yard, kind: 'strike', body: { target: event.record } }]);
    const by = written.ok ? written.value[0]?.id : undefined;
    if (by !== undefined) setStruck((before) => new Map(before).set(event.record, { event, by }));
  };
  const putBack = async (event: Event) => {
    const by = struck.get(event.record)?.by;
    if (by === undefined) return;
    await append([{ yard: colony.yard, kind: 'strike', body: { target: by } }]);
    setStruck((before) => new Map([...before].filter(([record]) => record !== event.record)));
  };
  return (
    <section>
      <h2>{history.title}</h2>
      {listed.length === 0 ? <p>{history.none}</p> : null}
      <ul className="history">
        {shown.map((event) => {
          const isStruck = struck.has(event.record);
          const says = `${dayMonth(event.date, true)}, ${event.text}`;
          return (
            <li key={`${event.record} ${event.text}`}>
              <span className="history-day">{dayMonth(event.date, true)}</span>
              <span className="history-text">
                {isStruck ? (
                  <>
                    <s>{event.text}</s> {history.struck}
                  </>
                ) : (
                  event.text
                )}
              </span>
              <button
                type="button"
                className="link"
                aria-label={isStruck ? history.undoLong(says) : history.strikeLong(says)}
                onClick={() => (isStruck ? putBack(event) : withdraw(event)).catch(report)}
              >
                {isStruck ? history.undo : history.strike}
              </button>
            </li>
          );
        })}
      </ul>
      {listed.length > shown.length ? (
        <button type="button" className="key" onClick={() => setAll(true)}>
          {history.more(listed.length - shown.length)}
        </button>
      ) : null}
    </section>
  );
}
