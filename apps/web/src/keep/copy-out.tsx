import type { UnreadLine } from '@winterheft/core';
import { useState } from 'react';
import { isDemo, report, useSession } from '../app/session.ts';
import { dayInWords, todayIso } from '../app/today.ts';
import { language, words } from '../app/words.ts';
import { work } from '../background/client.ts';
import type { Snapshot } from '../background/holder.ts';
import { Icon } from '../ui/icons.tsx';
import { canShare, saveText, share } from './hand-over.ts';
import { countAsCopied, type Handed, keepHanded } from './handed.ts';
import { UnreadLines } from './unread-lines.tsx';

interface CopyOutProps {
  readonly snapshot: Snapshot;
  readonly handed: Handed | null;
  readonly onHanded: (handed: Handed | null) => void;
}

/** How much there is, when it was last copied, and the two ways out. */
export function CopyOut({ snapshot, handed, onHanded }: CopyOutProps) {
  const { copied } = useSession();
  const [busy, setBusy] = useState(false);
  const { keep } = words;
  const hand = (way: Handed['way'], out: (text: string) => Promise<string | null>) => {
    setBusy(true);
    onHanded(null);
    handOut(way, out)
      .then(onHanded, report)
      .finally(() => setBusy(false));
  };
  const last = copied === null ? keep.neverCopied : keep.lastCopied(dayInWords(copied.date, language), snapshot.uncopied);
  const known = snapshot.uncopied === 0 && copied === null ? keep.allFromFiles : last;
  return (
    <section className="keep-out" aria-labelledby="keep-out">
      <h2 id="keep-out">{keep.here(snapshot.records)}</h2>
      {snapshot.unread === 0 ? null : <UnreadHere lines={snapshot.unread} />}
      {snapshot.records === 0 ? null : <p>{isDemo ? keep.demoCopy : known}</p>}
      <p className="keys">
        <button
          type="button"
          className="key key-solid key-big"
          disabled={busy || snapshot.records + snapshot.unread === 0}
          onClick={() => hand('saved', async (text) => saveText(text))}
        >
          <Icon name="file" /> {keep.copy}
        </button>
        {canShare() ? (
          <button type="button" className="key key-big" disabled={busy || snapshot.records === 0} onClick={() => hand('sent', share)}>
            <Icon name="out" /> {keep.share}
          </button>
        ) : null}
      </p>
      <div role="status" className={handed === null ? 'sr-only' : 'keep-told'}>
        {handed === null ? null : <IsItThere handed={handed} onHanded={onHanded} />}
      </div>
      <p className="note">{keep.copyWhere}</p>
    </section>
  );
}

/** Hands the whole journal out. */
async function handOut(way: Handed['way'], out: (text: string) => Promise<string | null>): Promise<Handed | null> {
  const { text, n } = await (await work()).file();
  const name = await out(text);
  const handed = name === null ? null : { n, date: todayIso(), name, way };
  await keepHanded(handed);
  return handed;
}

/** No browser says whether a file was written: the keeper looks, or takes it in again. */
function IsItThere({ handed, onHanded }: Pick<CopyOutProps, 'onHanded'> & { readonly handed: Handed }) {
  const { keep } = words;
  const answer = (is: Promise<void>) => is.then(() => onHanded(null), report);
  return (
    <>
      <p>{keep.handed[handed.way](handed.name, dayInWords(handed.date, language))}</p>
      <p className="keys">
        <button type="button" className="key" onClick={() => answer(countAsCopied(handed))}>
          {keep.isThere}
        </button>
        <button type="button" className="key" onClick={() => answer(keepHanded(null))}>
          {keep.isNotThere}
        </button>
      </p>
      <p className="note">{keep.readBack}</p>
    </>
  );
}

/** How many lines could not be read, and on asking which and why. */
function UnreadHere({ lines }: { readonly lines: number }) {
  const [named, setNamed] = useState<readonly UnreadLine[] | null>(null);
  const { keep } = words;
  const name = async () => setNamed(await (await work()).unreadLines());
  return (
    <details onToggle={(event) => event.currentTarget.open && name().catch(report)}>
      <summary>{keep.unread(lines)}</summary>
      {named === null ? null : <UnreadLines lines={named} of={lines} />}
    </details>
  );
}
