import type { Holding, WatchAnswer, WatchLine } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { useState } from 'react';
import { useHolding } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { useWatch } from '../plan/use-watch.ts';
import { Icon } from '../ui/icons.tsx';
import { StateShape } from '../ui/states.tsx';
import { inWalkOrder, orderOf, reasonOf } from './orders.ts';
import { ScalePicture } from './scale-picture.tsx';
import '../verdict/marks.css';
import './watch.css';

/** Whom to see this week and what to do there from outside; below it, one hive on the scale. */
export default function WatchScreen() {
  const holding = useHolding();
  const [chosen, setChosen] = useState<string | null>(null);
  const { answer, fault } = useWatch(chosen);
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  if (fault !== null) {
    const says = fault.kind === 'date-order' ? words.watch.summer(dayMonth(fault.notBefore)) : words.watch.noColony;
    return (
      <main className="page">
        <h1>{says}</h1>
      </main>
    );
  }
  if (answer === null) return <p className="waiting">{words.watch.loading}</p>;
  return <Watch answer={answer} holding={holding} chosen={chosen} onChoose={setChosen} />;
}

/** So many are seen in an hour of an afternoon; the rest has another week. */
const HIVES_AN_HOUR = 12;

interface WatchProps {
  readonly answer: WatchAnswer;
  readonly holding: Holding;
  readonly chosen: string | null;
  readonly onChoose: (colony: string) => void;
}

function Watch({ answer, holding, chosen, onChoose }: WatchProps) {
  const units = useUnits();
  const { watch } = words;
  const [all, setAll] = useState(false);
  const see = answer.lines.filter(({ reasons }) => reasons.length > 0);
  const leave = answer.lines.filter(({ reasons }) => reasons.length === 0);
  const current = answer.lines.find(({ colony }) => colony === chosen) ?? see[0] ?? answer.lines[0];
  const shown = all ? see : see.slice(0, HIVES_AN_HOUR);
  const listed = shown.length > 0 ? shown : answer.lines;
  return (
    <main className="page watch">
      <h1>{watch.title(Math.min(see.length, HIVES_AN_HOUR), answer.lines.length - Math.min(see.length, HIVES_AN_HOUR))}</h1>
      <p className="lead">
        {answer.autumnDay === null ? watch.noAutumn : watch.lead(dayMonth(answer.today, true), dayMonth(answer.autumnDay))}
      </p>
      <div className="watch-both">
        <section>
          <ol className="ledger watch-list">
            {shown.map((line) => (
              <li key={line.colony}>
                <button
                  type="button"
                  className="ledger-row watch-row"
                  aria-pressed={line === current}
                  onClick={() => onChoose(line.colony)}
                >
                  <StateShape shape={shapeOf(line)} size={18} />
                  <strong className="num">{line.label}</strong>
                  <span>
                    <b>{orderOf(line)}</b>
                    <small>{reasonOf(line, units)}</small>
                    {line.refused.map((one) => (
                      <small key={`${one.code} ${one.on}`}>{coreWords.refusedWeighing(one)}</small>
                    ))}
                  </span>
                </button>
              </li>
            ))}
          </ol>
          {shown.length === see.length ? null : (
            <p>
              {watch.nextWeek(see.length - shown.length)}{' '}
              <button type="button" className="link" onClick={() => setAll(true)}>
                {watch.showAll}
              </button>
            </p>
          )}
          {leave.length === 0 ? null : (
            <p>
              {watch.leave}:{' '}
              {inWalkOrder(leave, holding).map((line, i) => (
                <span key={line.colony}>
                  {i > 0 ? ', ' : ''}
                  <button type="button" className="link watch-leave" onClick={() => onChoose(line.colony)}>
                    {line.label}
                  </button>
                </span>
              ))}
            </p>
          )}
          <p className="note">{watch.caution}</p>
        </section>
        <section aria-live="polite">
          {current?.course == null ? null : <ScalePicture line={current} course={current.course} units={units} />}
          {current === undefined || current.acts.length === 0 ? null : <HowTo line={current} units={units} />}
        </section>
      </div>
      {current === undefined ? null : <Foot lines={listed} current={current} onChoose={onChoose} />}
    </main>
  );
}

/** Everything to do at one hive, each with how, and the candy. */
function HowTo({ line, units }: { readonly line: WatchLine; readonly units: UnitFormat }) {
  const w = coreWords.watch;
  return (
    <>
      <h2>{words.watch.what}</h2>
      <ul className="dashes">
        {line.acts.map((act) => (
          <li key={act}>{w.how(act)}</li>
        ))}
        {line.rescue === null ? null : (
          <>
            <li>{w.rescue(line.rescue, units)}</li>
            <li>{w.quickLid(units.temp(line.rescue.lidFromC))}</li>
          </>
        )}
      </ul>
    </>
  );
}

/** Short where it may run out, open where it is not known, full where a sign alone asks for a visit. */
function shapeOf(line: WatchLine): 'short' | 'unknown' | 'enough' {
  const codes = new Set(line.reasons.map(({ code }) => code));
  if (codes.has('may-run-out-soon') || codes.has('short-until-forage')) return 'short';
  return codes.has('silent') || codes.has('not-weighed-in-autumn') || codes.has('frozen-down') ? 'unknown' : 'enough';
}

interface FootProps {
  readonly lines: readonly WatchLine[];
  readonly current: WatchLine;
  readonly onChoose: (colony: string) => void;
}

function Foot({ lines, current, onChoose }: FootProps) {
  const { watch } = words;
  const at = lines.findIndex(({ colony }) => colony === current.colony);
  const step = (to: WatchLine | undefined) => () => to && onChoose(to.colony);
  return (
    <div className="watch-foot">
      <button type="button" className="watch-step" aria-label={watch.previous} disabled={at <= 0} onClick={step(lines[at - 1])}>
        <Icon name="up" size={28} />
      </button>
      <a className="watch-open" href={`#/watch/${encodeURIComponent(current.colony)}`}>
        <strong>
          {watch.signsAt} <span className="num">{current.label}</span>
        </strong>
        <small>{orderOf(current) || watch.leave}</small>
      </a>
      <button
        type="button"
        className="watch-step"
        aria-label={watch.following}
        disabled={at < 0 || at === lines.length - 1}
        onClick={step(lines[at + 1])}
      >
        <Icon name="down" size={28} />
      </button>
    </div>
  );
}
