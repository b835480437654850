import './keep.css';
import { useCallback, useEffect, useState } from 'react';
import { report, useSession } from '../app/session.ts';
import { words } from '../app/words.ts';
import { ClashList } from './clash-list.tsx';
import { CopyOut } from './copy-out.tsx';
import { takeShared } from './hand-over.ts';
import { type Handed, lastHanded } from './handed.ts';
import { KeptByBrowser } from './kept-by-browser.tsx';
import { type Offered, TakeIn } from './take-in.tsx';

/** The journal as a file, out and in, and whether the browser keeps it. */
export default function KeepScreen() {
  const { snapshot } = useSession();
  const [shared, setShared] = useState<Offered | null>(null);
  const [handed, setHanded] = useState<Handed | null>(null);
  const { keep } = words;
  const forget = useCallback(() => setHanded(null), []);
  useEffect(() => {
    takeShared()
      .then((file) => file !== null && setShared(file))
      .catch(report);
    lastHanded().then(setHanded).catch(report);
  }, []);
  if (snapshot === null) return <p className="waiting">{words.shell.opening}</p>;
  return (
    <main className="page keep">
      <h1>{keep.title}</h1>
      <CopyOut snapshot={snapshot} handed={handed} onHanded={setHanded} />
      <TakeIn shared={shared} onCopy={forget} />
      <KeptByBrowser />
      {snapshot.holding.clashes.length === 0 ? null : (
        <section aria-labelledby="keep-clashes">
          <h2 id="keep-clashes">{keep.clashTitle}</h2>
          <p className="note">{keep.clashWhat}</p>
          <ClashList clashes={snapshot.holding.clashes.slice(0, 50)} of={snapshot.holding.clashes.length} />
        </section>
      )}
    </main>
  );
}
