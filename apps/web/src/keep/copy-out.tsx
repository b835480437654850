import type { UnreadLine } from '@winterheft/core';
import { useState } from 'react';
import { isDemo, markCopied, report, useSession } from '../app/session.ts';
import { dayInWords } from '../app/today.ts';
import { language, words } from '../app/words.ts';
import { work } from '../background/client.ts';
import type { Snapshot } from '../background/holder.ts';
import { Icon } from '../ui/icons.tsx';
import { canShare, saveText, share } from './hand-over.ts';
import { UnreadLines } from './unread-lines.tsx';

/** How much there is, when it was last copied, and the two ways out. */
export function CopyOut({ snapshot }: { readonly snapshot: Snapshot }) {
  const { copied } = useSession();
  const [told, setTold] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const { keep } = words;
  const hand = (out: (text: string) => Promise<string | null>) => {
    setBusy(true);
    setTold(null);
    handOut(out)
      .then(setTold, report)
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
          onClick={() => hand(async (text) => keep.copied(saveText(text)))}
        >
          <Icon name="file" /> {keep.copy}
        </button>
        {canShare() ? (
          <button
            type="button"
            className="key key-big"
            disabled={busy || snapshot.records === 0}
            onClick={() => hand(async (text) => ((await share(text)) ? keep.shared : null))}
          >
            <Icon name="out" /> {keep.share}
          </button>
        ) : null}
      </p>
      <p role="status" className={told === null ? 'sr-only' : 'keep-told'}>
        {told ?? ''}
      </p>
      <p className="note">{keep.copyWhere}</p>
    </section>
  );
}

/** Hands the whole journal out; it counts as copied only where the way out said that it went. */
async function handOut(out: (text: string) => Promise<string | null>): Promise<string | null> {
  const { text, n } = await (await work()).file();
  const told = await out(text);
  if (told !== null) await markCopied(n);
  return told;
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
