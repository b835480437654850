import type { Holding } from '@winterheft/core';
import { useEffect, useMemo, useRef, useState } from 'react';
import { dayInWords } from '../app/today.ts';
import { coreWords, language, words } from '../app/words.ts';
import { feel, say } from '../modes/tell.ts';
import { adoptedPlans } from '../walk/adopted.ts';
import { boxesAlong } from '../walk/box.ts';
import { balancesOf } from '../walk/figures.ts';
import { SLOTS } from '../walk/hand.ts';
import type { Names } from '../walk/naming.ts';
import type { Walk, WalkStop } from '../walk/walk.ts';
import { answerLook, type Pending, pass, refuseFeed, takeBack, tick, type Written } from './acts.ts';
import { BoxStrip } from './box-picture.tsx';
import { ChangesList } from './changes-list.tsx';
import { combsBehind, lastLookOf, lookSays } from './looks.ts';
import { PlanHead, PlanNotes } from './plan-head.tsx';
import { LookKeys, StopOpen } from './stop-open.tsx';
import { StopRow } from './stop-row.tsx';
import { deedOf, placeOf } from './stop-words.ts';

interface WalkViewProps {
  readonly walk: Walk;
  readonly holding: Holding;
  readonly names: Names;
  readonly onAgain: () => void;
  /** A new plan is wanted, from what is in hand. */
  readonly onPending: (pending: Pending) => void;
}

/** The walk by the plan that was taken up: stops in order with the box beside them, each ticked as it is done. */
export function WalkView({ walk, holding, names, onAgain, onPending }: WalkViewProps) {
  const of = words.provision;
  const { adopted, stops, now } = walk;
  const [openId, setOpenId] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const { lots } = holding;
  const boxes = useMemo(() => boxesAlong(adopted.start, adopted.stops, (from) => lots.has(from)), [adopted, lots]);
  const balances = useMemo(() => balancesOf(adopted.plan, adopted.stops), [adopted]);
  const { provision } = adopted.plan;
  const before = adopted.before === null ? undefined : adoptedPlans(holding).find(({ fact }) => fact.record === adopted.before);
  const lastDone = stops.filter(({ done }) => done !== null).sort((a, b) => (a.done!.record < b.done!.record ? 1 : -1))[0];
  const most = Math.max(0, ...boxes.map(({ after }) => after.filter((hangs) => hangs !== null).length));

  useHereInSight(adopted.fact.done.size > 0 ? adopted.fact.record : null);

  useSpoken(now === null ? of.walkOver : of.spoken(placeOf(now.stop, names), deedOf(now.stop, names)));

  const act = async (doing: Promise<Written>): Promise<boolean> => {
    const written = await doing;
    setRefused(written.ok ? null : of.refusedRecord(coreWords.faultSentence(written.error)));
    if (!written.ok) feel('refused');
    return written.ok;
  };
  const onTick = async (at: WalkStop) => {
    setOpenId(null);
    feel('field');
    await act(tick(at, { walk, holding }));
  };
  const onLook = async (at: WalkStop, answer: 'clean' | 'signs' | 'not-today') => {
    if (await act(answerLook(at, answer, walk))) {
      if (answer === 'clean') feel('enough');
      else onPending({ because: 'look', about: at.stop.colony ?? '' });
    }
  };
  const onPass = async (at: WalkStop) => {
    if (await act(pass(at))) onPending({ because: 'skip', about: at.stop.colony ?? '' });
  };
  const onRefused = async (at: WalkStop) => {
    if (await act(refuseFeed(at))) onPending({ because: 'refused', about: at.stop.colony ?? '' });
  };

  if (provision === null) return null;
  const rows = stops.map((at, i) => {
    const { stop, done } = at;
    const isHere = at === now;
    const isOpen = isHere || openId === stop.id;
    const box = boxes[i] ?? null;
    if (done !== null)
      return (
        <StopRow
          key={stop.id}
          at={at}
          box={box}
          names={names}
          balance={undefined}
          says={stop.kind === 'look' ? lookSays(at, holding) : undefined}
          onTakeBack={() => void takeBack(at)}
        >
          {null}
        </StopRow>
      );
    return (
      <StopRow
        key={stop.id}
        at={at}
        box={box}
        names={names}
        balance={balances.get(stop.id)}
        isHere={isHere}
        isOpen={isOpen}
        onToggle={isHere ? undefined : () => setOpenId(isOpen ? null : stop.id)}
        onTick={stop.kind === 'look' || at.waits !== null ? undefined : () => void onTick(at)}
      >
        {stop.kind === 'look' ? (
          <LookKeys
            frames={combsBehind(stop.colony, adopted.stops)}
            lastLook={lastLookOf(stop.colony, holding)}
            onAnswer={(answer) => void onLook(at, answer)}
          />
        ) : (
          <StopOpen stop={stop} names={names} canTick={at.waits === null} onTick={() => void onTick(at)} onPass={() => void onPass(at)} />
        )}
      </StopRow>
    );
  });
  const fed = stops.filter(({ stop, done }) => done !== null && (stop.kind === 'syrup' || stop.kind === 'candy'));

  return (
    <main className="page provision">
      <div className="provision-head">
        <PlanHead plan={adopted.plan} provision={provision} names={names} />
        <p className="adopted">
          <span>{of.adopted(`${dayInWords(adopted.fact.at.date, language)} ${adopted.fact.at.time ?? ''}`.trim())}</span>
          <button type="button" className="link" onClick={onAgain}>
            {of.again}
          </button>
        </p>
      </div>
      {refused === null ? null : (
        <p className="error" role="alert">
          {refused}
        </p>
      )}
      {before === undefined || adopted.because === 'start' ? null : <ChangesList before={before} after={adopted} names={names} />}
      {now === null ? (
        <section className="walk-over">
          <h2>{of.walkOver}</h2>
          <p>{of.walkOverText}</p>
          <p className="keys">
            <button type="button" className="key key-solid" onClick={onAgain}>
              {of.askAnew}
            </button>
          </p>
        </section>
      ) : null}
      <BoxStrip
        stops={stops.flatMap(({ stop }, i) =>
          boxes[i] === undefined ? [] : [{ id: stop.id, label: placeOf(stop, names), box: boxes[i] }],
        )}
        here={now?.stop.id ?? null}
      />
      <p className="note">
        {of.boxCaption}
        {most > SLOTS ? ` ${of.boxOver(most - SLOTS)}` : ''}
      </p>
      <section aria-label={of.stopsTitle}>
        {walk.past.length === 0 ? null : (
          <details className="past">
            <summary>{of.doneBefore(walk.past.length)}</summary>
            <ol className="stops">
              {walk.past.map((at) => (
                <StopRow
                  key={`${at.plan} ${at.stop.id}`}
                  at={at}
                  box={null}
                  names={names}
                  balance={undefined}
                  says={at.stop.kind === 'look' ? lookSays(at, holding) : undefined}
                />
              ))}
            </ol>
          </details>
        )}
        <ol className="stops">{rows}</ol>
      </section>
      <div className="keys">
        {lastDone === undefined ? null : (
          <button type="button" className="key" onClick={() => void takeBack(lastDone)}>
            {of.undoLabel(placeOf(lastDone.stop, names), deedOf(lastDone.stop, names))}
          </button>
        )}
        {fed.map((at) => (
          <button key={at.stop.id} type="button" className="key" onClick={() => void onRefused(at)}>
            {of.refusedLabel(placeOf(at.stop, names))}
          </button>
        ))}
      </div>
      <PlanNotes plan={adopted.plan} provision={provision} names={names} settings={holding.settings} />
    </main>
  );
}

/** On coming back the stop that is due is in sight; a walk not yet begun, or planned anew, is shown from its top. */
function useHereInSight(plan: string | null): void {
  const [entered] = useState(plan);
  useEffect(() => {
    if (entered === null) return;
    const frame = requestAnimationFrame(() => document.querySelector('.stop-here')?.scrollIntoView({ block: 'center' }));
    return () => cancelAnimationFrame(frame);
  }, [entered]);
}

/** Says the stop that is due when it changes; what is due on coming in stays unsaid. */
function useSpoken(sentence: string): void {
  const said = useRef(sentence);
  useEffect(() => {
    if (said.current === sentence) return;
    said.current = sentence;
    say(sentence);
  }, [sentence]);
}
