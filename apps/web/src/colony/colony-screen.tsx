import { dayMonth } from '@winterheft/words';
import { lazy, Suspense } from 'react';
import { useParams } from 'wouter';
import { useHolding } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { useColonyDetail, useOutlooks } from '../plan/use-plan.ts';
import { StateShape } from '../ui/states.tsx';
import { chanceLine, figuresOf, massShown, verdictOf } from '../verdict/figures.ts';
import { shapeOf } from '../verdict/groups.ts';
import { DoubtTable } from './doubt-table.tsx';
import { HistoryList } from './history-list.tsx';
import { NeedParts } from './need-parts.tsx';
import { RestsOn } from './rests-on.tsx';
import { ScaleAhead } from './scale-ahead.tsx';
import { Sources } from './sources.tsx';
import { TwoVerdicts } from './two-verdicts.tsx';
import '../verdict/marks.css';
import './colony.css';

const FanPicture = lazy(() => import('./fan-picture.tsx'));

/** One colony: how it stands, why, how sure that is, and what was recorded of it. */
export default function ColonyScreen() {
  const { colony: raw } = useParams<{ colony: string }>();
  const id = decodeURIComponent(raw ?? '');
  const holding = useHolding();
  const units = useUnits();
  const { outlooks, fault } = useOutlooks();
  const { detail } = useColonyDetail(id);
  const { colony: says } = words;
  const colony = holding?.colonies.get(id);
  if (holding !== null && colony === undefined)
    return (
      <main className="page">
        <h1>{says.none}</h1>
        <p className="keys">
          <a className="key key-solid" href="#/outlook">
            {says.toOutlook}
          </a>
        </p>
      </main>
    );
  const line = detail?.line.colony === id ? detail.line : outlooks?.lines.find((one) => one.colony === id);
  const label = line?.label ?? holding?.hives.get(colony?.hive ?? '')?.label ?? id;
  if (holding === null || colony === undefined || line === undefined || outlooks === null)
    return (
      <main className="page colony">
        <h1 className="num">{label}</h1>
        {fault !== null ? <p className="error">{coreWords.faultSentence(fault)}</p> : null}
        {fault === null && colony?.ended == null ? <p className="waiting">{says.loading}</p> : null}
        {colony === undefined || holding === null ? null : <HistoryList key={id} colony={colony} holding={holding} units={units} />}
      </main>
    );
  const { made } = outlooks;
  const yard = outlooks.dates.find((dates) => dates.yard === line.yard);
  const yardName = holding.yards.get(line.yard)?.name ?? line.yard;
  const figures = figuresOf(line, units);
  const chances = chanceLine(line, { certaintyFrac: made.certaintyFrac, to: made.to });
  return (
    <main className="page colony">
      <header className="colony-head">
        <h1>
          <span className="colony-label num">{label}</span>
          <span className="colony-verdict">
            <StateShape shape={shapeOf(line)} size={26} /> {verdictOf(line, figures)}
          </span>
        </h1>
        <p>
          {chances === '' ? words.outlook.needsOnly(massShown(line.needKg, units)) : chances}{' '}
          <span className="colony-yard">{yardName}</span>
        </p>
        <p className="keys">
          <a className="key key-solid" href={`#/round/${encodeURIComponent(line.hive)}`}>
            {says.weighIt}
          </a>
          {line.state === 'short' || line.state === 'spare' ? (
            <a className="key" href="#/provision">
              {line.state === 'short' ? says.cover : says.give}
            </a>
          ) : null}
          <a className="link" href="#/outlook">
            {says.toOutlook}
          </a>
        </p>
      </header>
      <div className="colony-columns">
        <div className="colony-course">
          <TwoVerdicts line={line} rule={holding.settings.ownRule} units={units} />
          <section>
            <h2>{says.fan.title(units.massUnit)}</h2>
            {detail === null ? <p className="waiting">{says.loading}</p> : null}
            {detail !== null && detail.fan === null ? <p>{says.fan.none}</p> : null}
            {detail?.fan == null ? null : (
              <Suspense fallback={<p className="waiting">{words.shell.screenLoading}</p>}>
                <FanPicture fan={detail.fan} line={line} forage={yard?.dates['firstForage']} units={units} />
              </Suspense>
            )}
          </section>
        </div>
        <div className="colony-need">
          <NeedParts line={line} units={units} chance={coreWords.chanceWords(made.certaintyFrac)} />
          <DoubtTable line={line} units={units} />
        </div>
        <div className="colony-rests">
          <section>
            <h2>{says.stopTitle}</h2>
            <p>{stopText(line, units)}</p>
          </section>
          <ScaleAhead line={line} units={units} to={dayMonth(made.to)} />
          <RestsOn line={line} yard={yard} yardName={yardName} units={units} />
          <HistoryList key={id} colony={colony} holding={holding} units={units} />
          <a className="link" href={`#/trace/colony/${encodeURIComponent(id)}`}>
            {words.trace.link}
          </a>
        </div>
        <div className="colony-sources">
          <Sources />
        </div>
      </div>
    </main>
  );
}

function stopText(line: Parameters<typeof figuresOf>[0], units: Parameters<typeof figuresOf>[1]): string {
  const { colony } = words;
  const { targetFrontKg, targetRearKg, targetFrontSdKg, targetRearSdKg } = line;
  if (targetFrontKg === null) return colony.stopNone;
  const front = units.mass(targetFrontKg, targetFrontSdKg ?? 0);
  return targetRearKg === null ? colony.stopFront(front) : colony.stopAt(front, units.mass(targetRearKg, targetRearSdKg ?? 0));
}
