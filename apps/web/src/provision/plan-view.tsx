import type { Holding, Plan } from '@winterheft/core';
import { useMemo } from 'react';
import { words } from '../app/words.ts';
import type { Adopted } from '../walk/adopted.ts';
import { boxesAlong } from '../walk/box.ts';
import { balancesOf } from '../walk/figures.ts';
import { boxCount, Hand } from '../walk/hand.ts';
import type { Names } from '../walk/naming.ts';
import type { Stop } from '../walk/stop.ts';
import { stopsOf } from '../walk/stops.ts';
import type { WalkStop } from '../walk/walk.ts';
import { BoxStrip } from './box-picture.tsx';
import { ChangesList } from './changes-list.tsx';
import { combsBehind, lastLookOf } from './looks.ts';
import { PlanHead, PlanNotes } from './plan-head.tsx';
import { StopRow } from './stop-row.tsx';
import { placeOf } from './stop-words.ts';

interface PlanViewProps {
  readonly plan: Plan;
  readonly holding: Holding;
  readonly names: Names;
  /** The plan of the walk that is on, where the keeper has asked for another one. */
  readonly instead: Adopted | null;
  readonly busy: boolean;
  readonly onStart: () => void;
  readonly onBack: () => void;
}

/** The plan before the walk: what it covers, its stops in order, what stays open and why. */
export function PlanView({ plan, holding, names, instead, busy, onStart, onBack }: PlanViewProps) {
  const of = words.provision;
  const { provision } = plan;
  const stops = useMemo(() => (provision === null ? [] : stopsOf(provision, holding)), [provision, holding]);
  const rows = useMemo(() => rowsOf(stops, holding), [stops, holding]);
  const balances = useMemo(() => balancesOf(plan, stops), [plan, stops]);
  if (provision === null) return null;
  return (
    <main className="page provision" aria-busy={busy}>
      <div className="provision-head">
        <PlanHead plan={plan} provision={provision} names={names} />
        {busy ? (
          <p className="note" role="status">
            {of.planning}
          </p>
        ) : null}
        <div className="keys">
          {stops.length === 0 ? null : (
            <button type="button" className="key key-solid key-big" disabled={busy} onClick={onStart}>
              {instead === null ? of.start : of.takeThis}
            </button>
          )}
          {instead === null ? null : (
            <button type="button" className="key key-big" onClick={onBack}>
              {of.toWalk}
            </button>
          )}
          {stops.length === 0 ? null : <span className="note">{of.startNote}</span>}
        </div>
      </div>
      {instead === null || instead.stops.every(({ id }) => instead.fact.done.has(id)) ? null : (
        <ChangesList before={instead} after={{ because: 'again', plan, stops }} names={names} />
      )}
      {stops.length === 0 ? null : (
        <section>
          <h2>{of.stopsTitle}</h2>
          <BoxStrip
            stops={rows.flatMap(({ at, box }) => (box === null ? [] : [{ id: at.stop.id, label: placeOf(at.stop, names), box }]))}
            here={null}
          />
          <p className="note">{of.boxCaption}</p>
          <ol className="stops">
            {rows.map(({ at, box }) => (
              <StopRow
                key={at.stop.id}
                at={at}
                box={box}
                names={names}
                balance={balances.get(at.stop.id)}
                line={at.stop.kind === 'look' ? lookLine(at.stop.colony, stops, holding) : undefined}
              />
            ))}
          </ol>
        </section>
      )}
      <PlanNotes plan={plan} provision={provision} names={names} settings={holding.settings} />
    </main>
  );
}

/** What waits for a look, and when the last one was. */
function lookLine(colony: string | null, stops: readonly Stop[], holding: Holding): string {
  const of = words.provision;
  const last = lastLookOf(colony, holding);
  return `${of.beforeFrames(combsBehind(colony, stops))}, ${last === null ? of.neverLooked : of.lastLook(last)}`;
}

function rowsOf(stops: ReturnType<typeof stopsOf>, holding: Holding) {
  const boxes = boxesAlong(
    holding.inHand.filter(({ count }) => count > 0),
    stops,
    (from) => holding.lots.has(from),
  );
  const hand = new Hand(holding.inHand);
  return stops.map((stop, i) => {
    for (const flow of stop.flows) hand.apply(flow);
    const at: WalkStop = { stop, done: null, waits: null, box: boxCount(hand.combs), plan: '' };
    return { at, box: boxes[i] ?? null };
  });
}
