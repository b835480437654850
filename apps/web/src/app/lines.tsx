import { lazy, Suspense, useState } from 'react';
import { saveText } from '../keep/hand-over.ts';
import { drafts, isDemo, rawText, session, store, useSession } from './session.ts';
import { dayInWords, todayIso } from './today.ts';
import { declineUpdate, takeUpdate, useUpdate } from './update.ts';
import { language, words } from './words.ts';

const REMIND_AFTER_DAYS = 7;
const REMINDED_KEY = 'winterheft-reminded';

/**
 * What has to be said above a screen, worst first: storage refused, something failed, clock behind, readings not kept, nothing copied, new version.
 * Never shown during entry (bare screens have none of these but the storage line, which they place themselves).
 */
export function Lines() {
  const { mishap } = useSession();
  const { shell } = words;
  return (
    <section className="lines" aria-label={shell.notices}>
      <TroubleLine />
      {mishap === null ? null : (
        <div className="line line-warm" role="alert">
          <p>{shell.badNews(mishap)}</p>
          <button type="button" className="key" onClick={() => session.set({ mishap: null })}>
            {shell.close}
          </button>
        </div>
      )}
      <ClockLine />
      {hasTyped() ? (
        <Suspense fallback={null}>
          <UnkeptLine />
        </Suspense>
      ) : null}
      <Reminder />
      <UpdateLine />
    </section>
  );
}

const UnkeptLine = lazy(() => import('../weighing/unkept-line.tsx'));

/** Whether the round has left anything in its fields; what it is and whether it counts, the line itself finds out. */
function hasTyped(): boolean {
  for (const key of drafts.all().keys()) if (key.startsWith('round:')) return true;
  return false;
}

/** The clock is more than a day behind the last record. Also for bare screens: what is weighed now would be dated wrong. */
export function ClockLine() {
  const { snapshot } = useSession();
  const today = todayIso();
  const last = snapshot?.lastDate ?? null;
  if (last === null || isDemo || !isBehind(today, last)) return null;
  const day = (iso: string) => `${dayInWords(iso, language)} ${iso.slice(0, 4)}`;
  return (
    <div className="line line-warm" role="alert">
      <p>{words.shell.clockBehind(day(today), day(last))}</p>
    </div>
  );
}

/** The disk does not take what is entered: said in a sentence, with the file to save it in. Also for bare screens. */
export function TroubleLine() {
  const { trouble } = useSession();
  const { shell } = words;
  if (trouble === null) return null;
  const says = trouble.kind === 'full' ? shell.full : trouble.kind === 'refused' ? shell.refused : shell.newerVersion;
  return (
    <div className="line line-warm" role="alert">
      <p>{says}</p>
      <span className="keys">
        <button type="button" className="key key-solid" onClick={() => rawText().then((text) => saveText(text))}>
          {shell.saveFile}
        </button>
        {trouble.kind === 'newer-version' ? (
          <button type="button" className="key" onClick={() => location.reload()}>
            {shell.updateReload}
          </button>
        ) : (
          <button type="button" className="key" onClick={() => store.retry().then(() => session.set({ trouble: store.trouble }))}>
            {shell.tryAgain}
          </button>
        )}
      </span>
    </div>
  );
}

/** Once a day, while records exist that no file has taken along and the last copy is a week old or was never made. */
function Reminder() {
  const { snapshot, copied } = useSession();
  const [closed, setClosed] = useState(() => remindedOn() === todayIso());
  const { shell } = words;
  if (snapshot === null || isDemo || closed) return null;
  const hasWeighed = [...snapshot.holding.hives.values()].some((hive) => hive.weighings.length > 0);
  const isDue = copied === null ? hasWeighed : daysBetween(copied.date, todayIso()) >= REMIND_AFTER_DAYS;
  if (snapshot.uncopied === 0 || !isDue) return null;
  return (
    <div className="line">
      <p>{shell.remind(snapshot.uncopied)}</p>
      <span className="keys">
        <a className="key" href="#/keep">
          {shell.remindGo}
        </a>
        <button
          type="button"
          className="key"
          onClick={() => {
            setClosed(true);
            rememberReminded();
          }}
        >
          {shell.later}
        </button>
      </span>
    </div>
  );
}

function UpdateLine() {
  const { update } = useUpdate();
  const { shell } = words;
  if (update === 'none') return null;
  const isOffered = update === 'offered';
  return (
    <div className="line" role="status">
      <p>{isOffered ? shell.updateReady : shell.updateElsewhere}</p>
      <span className="keys">
        <button type="button" className="key key-solid" onClick={isOffered ? takeUpdate : () => location.reload()}>
          {isOffered ? shell.updateTake : shell.updateReload}
        </button>
        <button type="button" className="key" onClick={declineUpdate}>
          {shell.later}
        </button>
      </span>
    </div>
  );
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);
}

/** More than a day: two devices in two zones may differ by one. */
function isBehind(today: string, last: string): boolean {
  return daysBetween(today, last) > 1;
}

function remindedOn(): string | null {
  try {
    return localStorage.getItem(REMINDED_KEY);
  } catch {
    return null;
  }
}

function rememberReminded(): void {
  try {
    localStorage.setItem(REMINDED_KEY, todayIso());
  } catch {
    // Without storage the line comes again with the next opening.
  }
}
