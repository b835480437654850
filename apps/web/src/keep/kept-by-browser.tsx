import { useEffect, useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { askPersistence, type Persistence, persistence } from './persistence.ts';

/** What the browser has said about keeping the journal, and the room it takes. */
export function KeptByBrowser() {
  const [said, setSaid] = useState<Persistence | null>(null);
  const [room, setRoom] = useState<{ readonly used: number; readonly of: number } | null>(null);
  const { keep } = words;
  useEffect(() => {
    persistence().then(setSaid).catch(report);
    roomTaken().then(setRoom).catch(report);
  }, []);
  return (
    <section aria-labelledby="keep-persist">
      <h2 id="keep-persist">{keep.persistTitle}</h2>
      <p role="status">{said === null ? '' : keep.persist[said]}</p>
      {room === null ? null : <p className="note">{keep.room(sizeText(room.used), sizeText(room.of))}</p>}
      {said === 'unasked' || said === 'refused' ? (
        <p className="keys">
          <button type="button" className="key" onClick={() => askPersistence().then(setSaid).catch(report)}>
            {keep.persistAsk}
          </button>
        </p>
      ) : null}
      <p className="note">{keep.startOver}</p>
    </section>
  );
}

async function roomTaken(): Promise<{ readonly used: number; readonly of: number } | null> {
  if (typeof navigator.storage?.estimate !== 'function') return null;
  const { usage, quota } = await navigator.storage.estimate();
  return usage === undefined || quota === undefined ? null : { used: usage, of: quota };
}

/** `3.4 MB`, `12 GB` */
export function sizeText(bytes: number): string {
  const [size, unit] = bytes >= 1e9 ? [bytes / 1e9, 'GB'] : [bytes / 1e6, 'MB'];
  return `${size >= 10 ? Math.round(size) : size.toFixed(1)} ${unit}`;
}
