import type { Holding, LearnAnswer, SpringAnswer } from '@winterheft/core';
import { dayMonth, decimals } from '@winterheft/words';
import { useState } from 'react';
import { useHolding } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { saveText } from '../keep/hand-over.ts';
import { useSpring } from '../plan/use-spring.ts';
import { springCsv } from './csv.ts';
import { Factors } from './factors.tsx';
import { SaidPicture } from './said-picture.tsx';
import { toCount } from './to-count.ts';
import '../verdict/marks.css';
import './spring.css';

const percent = (frac: number) => `${decimals(100 * frac, 0)} %`;

/** Who came through the winter, what was said of them, what the dead hives tell, and what the keeper's own figures become. */
export default function SpringScreen() {
  const holding = useHolding();
  const { answer, fault } = useSpring();
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  if (fault !== null) {
    return (
      <main className="page">
        <h1>{fault.kind === 'date-order' ? words.spring.notSpring(dayMonth(fault.notBefore)) : words.spring.noColony}</h1>
      </main>
    );
  }
  if (answer === null) return <p className="waiting">{words.spring.loading}</p>;
  return <Spring answer={answer.spring} learn={answer.learn} holding={holding} />;
}

function Spring({ answer, learn, holding }: { readonly answer: SpringAnswer; readonly learn: LearnAnswer; readonly holding: Holding }) {
  const { spring } = words;
  const units = useUnits();
  const counted = answer.colonies - answer.notCounted.length;
  const next = toCount(holding, answer)[0];
  const { loss, region } = answer;
  const kg = (value: number) => decimals(units.massOf(value), units.massUnit === 'lb' ? 0 : 1);
  return (
    <main className="page spring">
      <h1>{spring.title(answer.survivors, counted)}</h1>
      {loss === null ? null : <p className="lead">{spring.loss(percent(loss.frac), percent(loss.lowFrac), percent(loss.highFrac))}</p>}
      <p className="note">{spring.region(percent(region.lossFrac), percent(region.lowFrac), percent(region.highFrac))}</p>
      {next === undefined ? null : (
        <p className="keys">
          <a className="key key-solid key-big" href={`#/spring/${encodeURIComponent(next.colony)}`}>
            {spring.countNext(next.label)}
          </a>
          <span>{spring.toCount(answer.notCounted.length)}</span>
        </p>
      )}
      {answer.said.length === 0 ? null : (
        <section>
          <h2>{spring.said}</h2>
          <SaidPicture groups={answer.said} />
        </section>
      )}
      {answer.stores.length === 0 ? null : (
        <section>
          <h2>{spring.stores}</h2>
          <ul className="ledger">
            {answer.stores.map((one) => (
              <li key={one.label} className="ledger-row spring-row">
                <strong className="num">{one.label}</strong>
                <span>
                  {spring.storesSays(
                    `${kg(one.saidKg.p50)} ${units.massUnit}`,
                    kg(one.saidKg.p5),
                    kg(one.saidKg.p95),
                    `${kg(one.seenKg)} ${units.massUnit}`,
                  )}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {answer.deadouts.length === 0 ? null : <Deadouts answer={answer} />}
      <Factors learn={learn} holding={holding} />
      <p>
        {spring.fed(units.mass(answer.sugarKg), answer.sugarPerSurvivorKg === null ? null : units.mass(answer.sugarPerSurvivorKg))}{' '}
        {answer.moneyPerSurvivor === null ? null : spring.money(decimals(answer.moneyPerSurvivor, 2))}
      </p>
      <p className="keys no-print">
        <button type="button" className="key" onClick={() => window.print()}>
          {spring.print}
        </button>
        <Save answer={answer} />
      </p>
    </main>
  );
}

function Save({ answer }: { readonly answer: SpringAnswer }) {
  const [says, setSays] = useState<string | null>(null);
  return (
    <>
      <button type="button" className="key" onClick={() => setSays(saveText(springCsv(answer), `${words.spring.csv}-${planDay()}.csv`))}>
        {words.spring.save}
      </button>
      {says === null ? null : <span>{says}</span>}
    </>
  );
}

/** Each dead hive: cause with how sure, what speaks for and against it, and what it means for the combs. */
function Deadouts({ answer }: { readonly answer: SpringAnswer }) {
  const w = coreWords.spring;
  return (
    <section>
      <h2>{words.spring.dead}</h2>
      <ul className="ledger">
        {answer.deadouts.map((one) => {
          const first = one.causes[0];
          const sure = first === undefined ? '' : `${w.cause(first.cause)} ${w.sure(first.chanceFrac)}`;
          return (
            <li key={one.colony} className="ledger-row spring-row">
              <strong className="num">{one.label}</strong>
              <span>
                {one.notifiable ? (
                  <b>{w.stop}</b>
                ) : one.found.length === 0 ? (
                  <a href={`#/spring/${encodeURIComponent(one.colony)}`}>{w.noSigns}</a>
                ) : (
                  <>
                    <b>{one.named === null ? `${w.cause(null)} (${sure})` : sure}</b>
                    {one.speakFor.length === 0 ? null : <small>{w.speakFor(one.speakFor.map(w.found))}</small>}
                    {one.speakAgainst.length === 0 ? null : <small>{w.speakAgainst(one.speakAgainst.map(w.found))}</small>}
                    <small>{w.combs(one.named)}</small>
                  </>
                )}
              </span>
            </li>
          );
        })}
      </ul>
      <p className="note">{w.deadoutModel}</p>
    </section>
  );
}
