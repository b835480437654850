import type { Holding } from '@winterheft/core';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useHolding } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { useProvision } from '../plan/use-plan.ts';
import { useDraft } from '../ui/use-draft.ts';
import { type Names, namesOf } from '../walk/naming.ts';
import { type Walk, walkOf } from '../walk/walk.ts';
import { adopt, type Pending } from './acts.ts';
import { PlanView } from './plan-view.tsx';
import { WalkView } from './walk-view.tsx';
import './provision.css';

/** What the screen shows beside the walk itself: another plan that was asked for, or one that has to follow a change. */
type Asked = { readonly kind: 'walk' } | { readonly kind: 'again' } | ({ readonly kind: 'pending' } & Pending);

const WALK: Asked = { kind: 'walk' };

function readAsked(stored: unknown): Asked | null {
  const { kind, because, about } = (typeof stored === 'object' && stored !== null ? stored : {}) as Readonly<Record<string, unknown>>;
  if (kind === 'again' || kind === 'walk') return { kind };
  const isWhy = because === 'skip' || because === 'look' || because === 'refused';
  return kind === 'pending' && isWhy && typeof about === 'string' ? { kind, because, about } : null;
}

/** Who gives what to whom: the plan before the walk, then the walk by the plan that was taken up. */
export default function ProvisionScreen() {
  const holding = useHolding();
  const units = useUnits();
  const [asked, setAsked] = useDraft<Asked>('provision', WALK, readAsked);
  const walk = useMemo(() => (holding === null ? null : walkOf(holding)), [holding]);
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  const names = namesOf(holding, units);
  if (holding.yards.size === 0)
    return (
      <main className="page">
        <h1>{words.provision.noYard}</h1>
      </main>
    );
  if (walk !== null && asked.kind === 'walk')
    return (
      <WalkView
        walk={walk}
        holding={holding}
        names={names}
        onAgain={() => setAsked({ kind: 'again' })}
        onPending={(pending) => setAsked({ kind: 'pending', ...pending })}
      />
    );
  return <Planning holding={holding} names={names} walk={walk} asked={asked} onSettled={() => setAsked(WALK)} />;
}

interface PlanningProps {
  readonly holding: Holding;
  readonly names: Names;
  readonly walk: Walk | null;
  readonly asked: Asked;
  readonly onSettled: () => void;
}

/** A plan is being made, or stands and waits to be taken up; one that follows a change is taken up as soon as it stands. */
function Planning({ holding, names, walk, asked, onSettled }: PlanningProps) {
  const of = words.provision;
  const { plan, busy, fault, again, stale } = useProvision();
  const [refused, setRefused] = useState<string | null>(null);
  const taking = useRef(false);
  const isFresh = plan !== null && !busy && !stale;
  const pending = asked.kind === 'pending' ? asked : null;

  useEffect(() => {
    if (stale && !busy) again();
  }, [stale, busy, again]);

  const take = async (why: Omit<Parameters<typeof adopt>[2], 'before'>) => {
    if (plan === null || taking.current) return;
    taking.current = true;
    const written = await adopt(plan, holding, { ...why, before: walk === null || walk.isOver ? null : walk.adopted.fact.record });
    taking.current = false;
    if (written.ok) onSettled();
    else setRefused(of.refusedRecord(coreWords.faultSentence(written.error)));
  };

  // The journal decides when this is due: it holds once for a plan of just these records.
  useEffect(() => {
    if (pending !== null && isFresh && plan.provision !== null) void take({ because: pending.because, about: pending.about });
  });

  if (fault !== null || (plan !== null && plan.provision === null && isFresh)) {
    return (
      <main className="page">
        <h1>{of.notPlanned}</h1>
        <p>{fault === null ? of.nothingKnown : coreWords.faultSentence(fault)}</p>
        <p className="keys">
          <a className="key key-solid" href="#/round">
            {of.toRound}
          </a>
          {walk === null ? null : (
            <button type="button" className="key" onClick={onSettled}>
              {of.toWalk}
            </button>
          )}
        </p>
      </main>
    );
  }
  if (plan === null || pending !== null || (stale && (walk !== null || holding.inHand.length > 0))) {
    return (
      <main className="page" aria-busy="true">
        <div role="status">
          <h1>{pending === null ? of.planning : of.planningAgain}</h1>
        </div>
        <p className="note">{of.planningLong}</p>
        {refused === null ? null : (
          <p className="error" role="alert">
            {refused}
          </p>
        )}
        {walk === null ? null : (
          <p className="keys">
            <button type="button" className="key" onClick={onSettled}>
              {of.toWalk}
            </button>
          </p>
        )}
      </main>
    );
  }
  return (
    <>
      {refused === null ? null : (
        <p className="error" role="alert">
          {refused}
        </p>
      )}
      <PlanView
        plan={plan}
        holding={holding}
        names={names}
        instead={walk === null || walk.isOver ? null : walk.adopted}
        busy={!isFresh}
        onStart={() => void take({ because: walk === null || walk.isOver ? 'start' : 'again' })}
        onBack={onSettled}
      />
    </>
  );
}
