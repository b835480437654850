import { type ChangeEvent, useEffect, useState } from 'react';
import { report, takeIn, useSession } from '../app/session.ts';
import { todayIso } from '../app/today.ts';
import { words } from '../app/words.ts';
import { work } from '../background/client.ts';
import type { FileCounts } from '../background/holder.ts';
import { Icon } from '../ui/icons.tsx';
import { ClashList } from './clash-list.tsx';
import { countAsCopied } from './handed.ts';
import { type ReadFile, readTextFile } from './read-file.ts';
import { UnreadLines } from './unread-lines.tsx';

export interface Offered {
  readonly file: Blob;
  readonly name: string;
}

type Stage =
  | { readonly at: 'waiting' }
  | { readonly at: 'reading'; readonly name: string }
  | { readonly at: 'adding'; readonly name: string; readonly written: number; readonly of: number }
  | { readonly at: 'refused'; readonly name: string; readonly says: string }
  | { readonly at: 'shown'; readonly name: string; readonly text: string; readonly counts: FileCounts }
  | { readonly at: 'added'; readonly name: string; readonly records: number };

interface TakeInProps {
  readonly shared: Offered | null;
  /** A file holds everything that is here. */
  readonly onCopy: () => void;
}

/** A file chosen here or sent by the share sheet: first what is in it, then, on a key, added. */
export function TakeIn({ shared, onCopy }: TakeInProps) {
  const [stage, setStage] = useState<Stage>({ at: 'waiting' });
  const { keep } = words;
  useEffect(() => {
    if (shared !== null) look(shared, setStage);
  }, [shared]);
  const isCopy = stage.at === 'shown' && isCopyOf(stage.counts);
  useEffect(() => {
    if (isCopy) onCopy();
  }, [isCopy, onCopy]);
  const choose = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    if (file !== undefined) look({ file, name: file.name }, setStage);
    // The same file may be chosen again.
    event.target.value = '';
  };
  const add = (text: string, name: string) => {
    const told = (written: number, of: number) => setStage({ at: 'adding', name, written, of });
    told(0, 0);
    takeIn(text, told).then(
      (records) => setStage({ at: 'added', name, records }),
      (error) => {
        setStage({ at: 'waiting' });
        report(error);
      },
    );
  };
  return (
    <section aria-labelledby="keep-in">
      <h2 id="keep-in">{keep.take}</h2>
      <p className="note">{keep.takeHint}</p>
      <label className="key key-big keep-file">
        <Icon name="into" /> {keep.take}
        <input type="file" accept=".jsonl,.txt,.json,text/plain,application/json" onChange={choose} />
      </label>
      <div aria-live="polite" className="keep-stage">
        {stage.at === 'reading' ? <p>{keep.reading}</p> : null}
        {stage.at === 'adding' ? (
          <p>
            {keep.adding} <span aria-hidden="true">{stage.of === 0 ? '' : keep.addingOf(stage.written, stage.of)}</span>
          </p>
        ) : null}
        {stage.at === 'refused' ? (
          <>
            <h3>{keep.fileName(stage.name)}</h3>
            <p className="error">{stage.says}</p>
          </>
        ) : null}
        {stage.at === 'shown' ? (
          <Shown {...stage} onAdd={() => add(stage.text, stage.name)} onLeave={() => setStage({ at: 'waiting' })} />
        ) : null}
        {stage.at === 'added' ? <Added records={stage.records} /> : null}
      </div>
    </section>
  );
}

/** Everything that is here stands in the file as well. */
function isCopyOf({ known, lacks }: FileCounts): boolean {
  return known > 0 && lacks === 0;
}

function look({ file, name }: Offered, setStage: (stage: Stage) => void): void {
  setStage({ at: 'reading', name });
  const shown = async (): Promise<Stage> => {
    const read = await readTextFile(file, name);
    if (!read.ok) return { at: 'refused', name, says: refusal(read) };
    const counts = await (await work()).compareFile(read.text);
    const hasRecord = counts.fresh + counts.known > 0;
    if (isCopyOf(counts)) await countAsCopied({ n: counts.n, date: todayIso() });
    return hasRecord ? { at: 'shown', name, text: read.text, counts } : { at: 'refused', name, says: words.keep.noJournal };
  };
  shown().then(setStage, (error) => setStage({ at: 'refused', name, says: words.keep.unreadable(String(error)) }));
}

function refusal(read: Extract<ReadFile, { readonly ok: false }>): string {
  const { keep } = words;
  switch (read.why) {
    case 'empty':
      return keep.empty;
    case 'not-text':
      return keep.notText;
    case 'too-big':
      return keep.tooBig(Number(read.says));
    case 'unreadable':
      return keep.unreadable(read.says);
  }
}

interface ShownProps {
  readonly name: string;
  readonly counts: FileCounts;
  readonly onAdd: () => void;
  readonly onLeave: () => void;
}

/** New, known, not readable, clashing: said before anything is added. */
function Shown({ name, counts, onAdd, onLeave }: ShownProps) {
  const { keep } = words;
  const { fresh, known, unread, clashing, freshUnread } = counts;
  const figures = { fresh, known, unread, clashing };
  return (
    <div className="keep-shown">
      <h3>{keep.fileName(name)}</h3>
      <dl className="keep-counts">
        {(Object.keys(figures) as (keyof typeof figures)[]).map((count) => (
          <div key={count}>
            <dd className="num">{figures[count]}</dd>
            <dt>{keep.counts[count]}</dt>
          </div>
        ))}
      </dl>
      {unread === 0 ? null : <UnreadLines lines={counts.unreadLines} of={unread} />}
      {clashing === 0 ? null : (
        <>
          <p>{keep.clashWould}</p>
          <ClashList clashes={counts.clashes} of={clashing} />
        </>
      )}
      {fresh + freshUnread === 0 ? <p>{keep.nothingNew}</p> : null}
      {isCopyOf(counts) ? <p>{keep.holdsAll}</p> : null}
      <p className="keys">
        {fresh + freshUnread === 0 ? null : (
          <button type="button" className="key key-solid key-big" onClick={onAdd}>
            {fresh > 0 ? keep.add(fresh) : keep.addUnread(freshUnread)}
          </button>
        )}
        <button type="button" className="key key-big" onClick={onLeave}>
          {keep.leave}
        </button>
      </p>
    </div>
  );
}

function Added({ records }: { readonly records: number }) {
  const { keep } = words;
  const hasYard = (useSession().snapshot?.holding.yards.size ?? 0) > 0;
  return (
    <>
      <p className="keep-told">{keep.added(records)}</p>
      {hasYard ? (
        <p className="keys">
          <a className="key key-solid" href="#/">
            {keep.toStart}
          </a>
        </p>
      ) : null}
    </>
  );
}
