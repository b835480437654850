import { type Holding, waysOf } from '@winterheft/core';
import { lazy, Suspense, useEffect, useMemo, useState } from 'react';
import { useLocation, useParams } from 'wouter';
import { ClockLine, TroubleLine } from '../app/lines.tsx';
import { useHolding, useSession } from '../app/session.ts';
import { useUnits, useUnitsName } from '../app/use-units.ts';
import { language, words } from '../app/words.ts';
import { prepareAhead } from '../plan/use-plan.ts';
import { markOf } from '../weighing/typing.ts';
import { Cautions } from './cautions.tsx';
import { HiveList, MoveList } from './hive-list.tsx';
import { HiveRound } from './hive-round.tsx';
import { movableWords } from './movable.ts';
import { RoundLedger, type TypedHere } from './round-ledger.tsx';
import { RoundLinks } from './round-links.tsx';
import { useCanScan } from './tag-reader.ts';
import { useRound } from './use-round.ts';
import './round.css';

/** Weighing hive after hive, in gloves and without a signal. At a desk the round stands beside it as a ledger. */
export default function RoundScreen() {
  const { snapshot } = useSession();
  if (snapshot === null) return <p className="waiting">{words.shell.opening}</p>;
  return <RoundOfHolding holding={snapshot.holding} records={snapshot.records} />;
}

function RoundOfHolding({ holding, records }: { readonly holding: Holding; readonly records: number }) {
  const { hive: asked } = useParams<{ hive?: string }>();
  const [, navigate] = useLocation();
  const [sheet, setSheet] = useState<'hive' | 'list' | 'move' | 'scan' | 'cautions'>('hive');
  const desk = useDesk();
  const units = useUnits();
  const unitsName = useUnitsName();
  const ways = useMemo(() => waysOf(holding), [holding]);
  const round = useRound(holding, unitsName, asked);
  const canScan = useCanScan();
  const [typed, setTyped] = useState<TypedHere | null>(null);
  useEffect(() => prepareAhead(), []);
  const { current, walk, turn } = round;
  // The hive in the address is gone to once; from then on the walk leads.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only where the address names a hive anew
  useEffect(() => {
    if (asked === undefined || current === null) return;
    round.goTo(current.hive);
    navigate('/round', { replace: true });
  }, [asked]);

  if (current === null) return <NoHives />;
  const yard = walk.find((one) => one.yard === current.yard);
  const goTo = (hive: string) => {
    round.goTo(hive);
    setSheet('hive');
  };
  if (sheet === 'cautions') return <Cautions onClose={() => setSheet('hive')} />;
  const onScan = canScan ? () => setSheet('scan') : null;
  const of = { walk, current: current.hive, currentLabel: current.label, units, onClose: () => setSheet('hive') };
  const movable = sheet === 'hive' ? null : movableWords(current, { holding, units: unitsName, language });
  const moveTo = (hive: string) => {
    round.moveTo(hive);
    setSheet('hive');
  };
  if (sheet === 'scan') {
    return (
      <Suspense fallback={<p className="waiting">{words.shell.screenLoading}</p>}>
        <Scanner walk={walk} here={current} movable={movable} onGo={goTo} onMove={moveTo} onClose={of.onClose} />
      </Suspense>
    );
  }
  if (sheet === 'move' && movable !== null) return <MoveList {...of} movable={movable} onTo={moveTo} />;
  if (sheet === 'list') return <HiveList {...of} movable={movable} onGo={goTo} onMove={() => setSheet('move')} onScan={onScan} />;
  return (
    <div className={desk ? 'round round-desk' : 'round'}>
      <HiveRound
        key={`${current.hive}/${turn}`}
        here={current}
        place={(yard?.hives.findIndex(({ hive }) => hive === current.hive) ?? 0) + 1}
        all={yard?.hives.length ?? 0}
        round={round}
        holding={holding}
        records={records}
        ways={ways}
        desk={desk}
        onTyped={setTyped}
        onList={() => setSheet('list')}
        onScan={onScan}
        onCautions={() => setSheet('cautions')}
      />
      {desk ? (
        <RoundLedger
          walk={walk}
          holding={holding}
          ways={ways}
          current={current.hive}
          typed={typed}
          units={units}
          unitsName={unitsName}
          mark={markOf(language)}
          onGo={goTo}
        />
      ) : null}
    </div>
  );
}

const Scanner = lazy(async () => ({ default: (await import('./scanner.tsx')).Scanner }));

function NoHives() {
  const { round, begin } = words;
  const hasYard = (useHolding()?.yards.size ?? 0) > 0;
  return (
    <main className="page">
      <TroubleLine />
      <ClockLine />
      <h1>{round.title}</h1>
      <p>{round.noHives}</p>
      <p className="keys">
        <a className="key key-solid key-big" href={hasYard ? '#/yard' : '#/begin'}>
          {hasYard ? round.toYard : begin.go}
        </a>
      </p>
      <RoundLinks />
    </main>
  );
}

/** Wide enough for the ledger beside the hive, and a keyboard to type on. */
function useDesk(): boolean {
  const [desk, setDesk] = useState(() => matchMedia(DESK).matches);
  useEffect(() => {
    const query = matchMedia(DESK);
    const follow = () => setDesk(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return desk;
}

const DESK = '(min-width: 900px)';
