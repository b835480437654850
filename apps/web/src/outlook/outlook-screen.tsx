import type { ColonyOutlook } from '@winterheft/core';
import { dayMonth } from '@winterheft/words';
import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useHolding, useSession } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { useModes } from '../modes/modes.ts';
import { type Outlooks, type SoFar, useOutlooks, useSoFar } from '../plan/use-plan.ts';
import { limitWords } from '../verdict/figures.ts';
import { endedIn, type GroupName, groupsOf, headlineOf, inOldOrder, orderOf } from '../verdict/groups.ts';
import { AboutPlan } from './about-plan.tsx';
import { FootBar, OpenChosen } from './foot-bar.tsx';
import { OutlookTable } from './outlook-table.tsx';
import { YardKeys } from './yard-keys.tsx';
import '../verdict/marks.css';
import './outlook.css';

const RunOutChart = lazy(() => import('./run-out-chart.tsx'));

/** Which of them run out, and when. */
export default function OutlookScreen() {
  const { outlooks, busy, fault } = useOutlooks();
  const soFar = useSoFar();
  const { snapshot } = useSession();
  const { outlook } = words;
  const shown = outlooks ?? (fault === null ? (soFar?.outlooks ?? null) : null);
  if (shown === null) {
    const isEmpty = snapshot !== null && ![...snapshot.holding.colonies.values()].some((colony) => colony.ended === null);
    return (
      <main className="page outlook">
        <h1>{words.shell.places.outlook}</h1>
        {isEmpty || fault !== null ? (
          <>
            <p className={fault === null || isEmpty ? '' : 'error'}>
              {isEmpty || fault === null ? outlook.nothingAtAll : coreWords.faultSentence(fault)}
            </p>
            <p className="keys">
              <a className="key key-solid" href="#/yard">
                {outlook.toYard}
              </a>
            </p>
          </>
        ) : (
          <p className="waiting">{outlook.computing}</p>
        )}
      </main>
    );
  }
  return <Loaded outlooks={shown} busy={busy} soFar={soFar} />;
}

interface LoadedProps {
  readonly outlooks: Outlooks;
  readonly busy: boolean;
  readonly soFar: SoFar | null;
}

function Loaded({ outlooks, busy, soFar }: LoadedProps) {
  const { made } = outlooks;
  const { outlook } = words;
  const units = useUnits();
  const holding = useHolding();
  const sun = useModes().theme === 'sun';
  const [, go] = useLocation();
  const [yard, setYard] = useState<string | null>(null);
  const [isTable, setIsTable] = useState(false);
  const [chosen, setChosen] = useState<string | null>(null);
  const order = useKeptOrder(outlooks.lines, busy && chosen === null);
  const yards = outlooks.dates.filter((dates) => outlooks.lines.some((line) => line.yard === dates.yard));
  const yardName = (id: string) => holding?.yards.get(id)?.name ?? id;
  const shownYard = yards.some((one) => one.yard === yard) ? yard : null;
  const lines = outlooks.lines.filter((line) => shownYard === null || line.yard === shownYard);
  const groups = inOldOrder(groupsOf(lines), order);
  const inOrder = groups.flatMap((group) => group.lines);
  const current = inOrder.find((line) => line.colony === chosen) ?? inOrder[0];
  const headline = headlineOf(lines, made.certaintyFrac);
  const several = shownYard === null && yards.length > 1;
  const shownYards = shownYard === null ? yards : yards.filter((one) => one.yard === shownYard);
  const oneClimate = new Set(shownYards.map((one) => one.climate.name)).size === 1;
  const place = oneClimate ? holding?.yards.get(shownYards[0]?.yard ?? '') : undefined;
  const curveYard = place === undefined || place.climatePlace !== undefined || place.monthlyMeanC !== undefined ? null : place;
  const limit = limitWords(made.certaintyFrac);
  const yardOf = (line: ColonyOutlook) => (several ? yardName(line.yard) : null);
  const open = (colony: string) => go(`/colony/${encodeURIComponent(colony)}`);
  const toggle = (
    <button type="button" className="chart-corner" onClick={() => setIsTable(!isTable)}>
      {isTable ? outlook.asChart : outlook.asTable}
    </button>
  );
  return (
    <main className="page outlook">
      <header className="outlook-head">
        <h1>
          {soFar?.outlooks == null ? null : outlook.soFar}
          {headline.unknown === 0
            ? outlook.headline(headline.atRisk, headline.all, limit)
            : outlook.headlineKnown(headline.atRisk, headline.all - headline.unknown, headline.unknown, limit)}
        </h1>
        {soFar === null ? null : <Progress soFar={soFar} />}
        {current === undefined ? null : <OpenChosen line={current} made={made} units={units} yard={yardOf(current)} />}
      </header>
      {busy ? (
        <p className="visually-hidden" role="status">
          {outlook.again}
        </p>
      ) : null}
      {isTable ? (
        <>
          {toggle}
          <OutlookTable
            lines={inOrder}
            ended={endedIn(outlooks.ended, shownYard)}
            dates={outlooks.dates}
            made={made}
            units={units}
            yardName={yardName}
          />
        </>
      ) : (
        <div className="outlook-view">
          <Suspense fallback={<p className="waiting">{words.shell.screenLoading}</p>}>
            <RunOutChart
              groups={groups}
              ended={endedIn(outlooks.ended, shownYard)}
              dates={shownYards}
              made={made}
              units={units}
              sun={sun}
              yardOf={yardOf}
              yard={curveYard === null ? null : { latDeg: curveYard.latDeg, lonDeg: curveYard.lonDeg, elevM: curveYard.elevM ?? null }}
              chosen={current?.colony ?? null}
              onChoose={setChosen}
              onOpen={open}
              corner={toggle}
            />
          </Suspense>
          {current === undefined ? null : (
            <FootBar lines={inOrder} current={current} made={made} units={units} yardOf={yardOf} sun={sun} onChoose={setChosen} />
          )}
        </div>
      )}
      {yards.length < 2 ? null : (
        <YardKeys yards={yards.map((one) => ({ id: one.yard, name: yardName(one.yard) }))} chosen={shownYard} onChoose={setYard} />
      )}
      <p className="note outlook-span">{outlook.madeSpan(dayMonth(made.from), dayMonth(made.to, true))}</p>
      {headline.unknown === 0 ? null : <p className="note">{outlook.headlineUnknown(headline.unknown)}</p>}
      <AboutPlan lines={lines} dates={outlooks.dates} made={made} yardName={yardName} />
    </main>
  );
}

/** How many colonies are worked out; only where that takes its time. */
function Progress({ soFar: { ready, of, outlooks } }: { readonly soFar: SoFar }) {
  const { outlook } = words;
  const says = outlooks === null ? outlook.soFarAll(ready, of) : outlook.soFarRows(ready, of);
  return (
    <p className="note outlook-progress">
      {says} <progress value={ready} max={of} aria-label={says} />
    </p>
  );
}

/**
 * The order rows keep while the screen is open: it still follows while the first figures come in and nothing was touched, and is new
 * when the screen is opened again.
 */
function useKeptOrder(lines: readonly ColonyOutlook[], follows: boolean): ReadonlyMap<string, GroupName> {
  const [order, setOrder] = useState(() => orderOf(groupsOf(lines)));
  const wasFollowing = useRef(true);
  useEffect(() => {
    if (wasFollowing.current) setOrder(orderOf(groupsOf(lines)));
    wasFollowing.current = follows;
  }, [lines, follows]);
  return order;
}
