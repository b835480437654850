import type { Holding, JournalRecord, WatchAnswer, WatchLine } from '@winterheft/core';
import { useEffect, useState } from 'react';
import { useParams } from 'wouter';
import { ClockLine, TroubleLine } from '../app/lines.tsx';
import { append, strike, useHolding } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { feel, say } from '../modes/tell.ts';
import { useWatch } from '../plan/use-watch.ts';
import { Icon } from '../ui/icons.tsx';
import { shownMass } from './mass.ts';
import { inWalkOrder } from './orders.ts';
import { SIGNS, type Sign, SignIcon } from './sign-icons.tsx';
import { isOn, signsOfToday, toggled } from './signs.ts';
import '../verdict/marks.css';
import './watch.css';

/** What is heard and seen at one hive: six keys for gloves, twenty needles above them that move at once. */
export default function SignsScreen() {
  const { colony = '' } = useParams<{ colony: string }>();
  const holding = useHolding();
  const { answer, fault } = useWatch();
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  if (answer === null && fault === null) return <p className="waiting">{words.watch.loading}</p>;
  const line = answer?.lines.find((one) => one.colony === decodeURIComponent(colony));
  if (answer === null || line === undefined) {
    return (
      <main className="page">
        <TroubleLine />
        <h1>{words.watch.noColony}</h1>
        <a className="link" href="#/watch">
          {words.watch.done}
        </a>
      </main>
    );
  }
  return <Signs key={line.colony} line={line} answer={answer} holding={holding} />;
}

function Signs({ line, answer, holding }: { readonly line: WatchLine; readonly answer: WatchAnswer; readonly holding: Holding }) {
  const { watch } = words;
  const units = useUnits();
  const [written, setWritten] = useState<readonly (readonly JournalRecord[])[]>([]);
  const [fault, setFault] = useState<string | null>(null);
  const today = signsOfToday(holding, line.colony, planDay());
  const walk = inWalkOrder(
    answer.lines.filter(({ reasons, colony }) => reasons.length > 0 || colony === line.colony),
    holding,
  );
  const at = walk.findIndex(({ colony }) => colony === line.colony);
  const next = walk[at + 1];
  const alive = line.aliveFrac === null ? null : Math.round(20 * line.aliveFrac);
  const sentence = alive === null ? watch.unknownLife : watch.lasting(alive);
  useEffect(() => say(`${line.label}. ${sentence}`), [line.label, sentence]);
  const press = async (pressed: Sign) => {
    feel('key');
    setFault(null);
    const { add, take } = toggled(today, pressed);
    const { yard, colony } = line;
    const added = await append([
      ...take.map((target) => ({ yard, kind: 'strike', body: { target } }) as const),
      ...add.map((sign) => ({ yard, kind: 'sign', body: { colony, sign } }) as const),
    ]);
    if (!added.ok) return setFault(coreWords.faultSentence(added.error));
    setWritten([...written, added.value]);
  };
  const undo = async () => {
    const last = written.at(-1);
    if (last === undefined) return;
    await strike(last);
    setWritten(written.slice(0, -1));
  };
  const frozen = isOn(today, 'frozen-down');
  return (
    <main className="signs" aria-label={watch.signsOf(line.label)}>
      {/* scrolls when text is enlarged: the keyboard must reach it */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolled region takes the focus */}
      <section className="signs-top" tabIndex={0} aria-label={line.label}>
        <TroubleLine />
        <ClockLine />
        <h1 className="signs-head">
          <span className="num">{line.label}</span>
          <small>
            {watch.place(at + 1, walk.length)}
            <br />
            {line.reasons[0] === undefined ? '' : coreWords.watchReason(line.reasons[0], units)}
          </small>
        </h1>
        <p className="signs-life" aria-live="polite">
          {sentence}
        </p>
        {alive === null ? null : <Life alive={alive} />}
        <p>
          {frozen
            ? watch.frozen
            : line.scaleNowKg === null
              ? null
              : watch.shouldRead(shownMass(line.scaleNowKg.p5, null, units), shownMass(line.scaleNowKg.p95, null, units))}
        </p>
        {isOn(today, 'silent') ? <p>{watch.silentOnce}</p> : null}
        {fault === null ? null : <p className="error">{fault}</p>}
      </section>
      <div className="signs-low">
        <fieldset className="signs-keys" aria-label={watch.signsOf(line.label)}>
          {SIGNS.map((sign) => (
            <button key={sign} type="button" className="sign-key" aria-pressed={isOn(today, sign)} onClick={() => void press(sign)}>
              <SignIcon sign={sign} />
              <span>
                <b>{watch.signs[sign].name}</b>
                <small>{watch.signs[sign].how}</small>
              </span>
            </button>
          ))}
          {frozen ? (
            <span className="sign-key sign-key-off">{watch.lift}</span>
          ) : (
            <a className="sign-key" href={`#/round/${encodeURIComponent(line.hive)}`}>
              <b>{watch.lift}</b>
            </a>
          )}
        </fieldset>
        <div className="signs-acts">
          <button type="button" className="signs-undo" disabled={written.length === 0} onClick={() => void undo()}>
            {watch.undo}
          </button>
          <a className="signs-next" href={next === undefined ? '#/watch' : `#/watch/${encodeURIComponent(next.colony)}`}>
            {next === undefined ? watch.done : watch.next(next.label)} <Icon name="next" size={28} />
          </a>
        </div>
      </div>
    </main>
  );
}

/** Twenty cases: thin and cold where the stores last, tall and warm where they do not. */
function Life({ alive }: { readonly alive: number }) {
  return (
    <svg className="signs-needles" viewBox="0 0 320 44" aria-hidden="true" preserveAspectRatio="none">
      <path className="axis" d="M0 43H320" />
      <path className="needle-short" d={needlesUpTo(0, alive, 22)} />
      <path className="needle-tall" d={needlesUpTo(alive, 20, 2)} />
    </svg>
  );
}

/** Needles number `from` to `to`, from a height down to the line. */
function needlesUpTo(from: number, to: number, top: number): string {
  return Array.from({ length: Math.max(0, to - from) }, (_, i) => `M${8 + 16 * (from + i)} ${top}V43`).join('');
}
