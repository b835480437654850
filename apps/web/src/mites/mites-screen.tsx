import type { MitesAnswer, YardMites } from '@winterheft/core';
import { dayMonth, decimals } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { useMites } from '../plan/use-mites.ts';
import { WideTable } from '../verdict/wide-table.tsx';
import { LevelBar } from './level-bar.tsx';
import '../verdict/marks.css';
import './mites.css';

/** Mites by yard and colony: counts against the level, what is due, what may begin when, and the book of treatments. */
export default function MitesScreen() {
  const { answer, fault } = useMites();
  const of = words.mites;
  if (answer === null)
    return (
      <main className="page">
        <h1>{words.shell.places.mites}</h1>
        {fault === null ? <p className="waiting">{of.loading}</p> : <p className="error">{coreWords.faultSentence(fault)}</p>}
      </main>
    );
  const count = (what: string) => answer.colonies.filter(({ due }) => due.some((one) => one.what === what)).length;
  return (
    <main className="page mites">
      <h1>{of.title(count('treat'), count('wash-again'))}</h1>
      <p className="note">{of.lead}</p>
      <p className="keys">
        <a className="key key-solid" href="#/mites/wash">
          {of.enter}
        </a>
      </p>
      {answer.yards.map((yard) => (
        <Yard key={yard.yard} yard={yard} answer={answer} />
      ))}
      <Book answer={answer} />
      <p className="note">{coreWords.mites.estimates}</p>
      <p className="note">{coreWords.mites.lossNote}</p>
    </main>
  );
}

function Yard({ yard, answer }: { readonly yard: YardMites; readonly answer: MitesAnswer }) {
  const w = coreWords.mites;
  const per = coreWords.mitesPer100;
  const { level } = yard;
  const in20 = (share: number | null) => (share === null ? w.none : decimals(20 * share, 0));
  return (
    <section>
      <h2>{yard.yardName}</h2>
      <p>{w.yard(yard.yardName, dayMonth(yard.lowBy), dayMonth(yard.winterBees.from), dayMonth(yard.winterBees.to))}</p>
      <p>
        {level === null ? w.noLevel : w.level(per(level.warn), per(level.treat), level.by === 'own' ? w.byOwn : level.source, level.place)}
      </p>
      <WideTable label={words.mites.colonies(yard.yardName)}>
        <thead>
          <tr>
            {[w.label, w.found, words.mites.picture, w.interval, w.aboveNow, w.above(dayMonth(yard.projectedTo)), w.loss, w.due].map(
              (head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {answer.colonies
            .filter((one) => one.yard === yard.yard)
            .map((one) => {
              const last = one.washes.at(-1);
              return (
                <tr key={one.colony}>
                  <th scope="row">
                    <a href={`#/mites/wash/${encodeURIComponent(one.colony)}`}>{one.label}</a>
                  </th>
                  <td>
                    {last === undefined
                      ? one.basis === 'yard'
                        ? w.fromYard
                        : w.none
                      : `${last.mites}/${last.bees} ${dayMonth(last.date)}`}
                  </td>
                  <td>
                    <LevelBar colony={one} treat={yard.levelAtWindow?.treat ?? null} />
                  </td>
                  <td>{last === undefined ? w.none : `${per(last.lowFrac)}-${per(last.highFrac)}`}</td>
                  <td>{in20(one.chanceAboveNowFrac)}</td>
                  <td>{in20(one.chanceAboveWindowFrac)}</td>
                  <td>{one.winterLoss === null ? w.none : coreWords.lossRange(one.winterLoss)}</td>
                  <td>{one.due.map(coreWords.miteDue).join('; ') || w.none}</td>
                </tr>
              );
            })}
        </tbody>
      </WideTable>
      <p>{w.broodlessPlan(dayMonth(yard.broodlessTreatmentFrom))}</p>
      <h3>{w.treatments}</h3>
      <ul className="ledger">
        {yard.treatments.map((one) => (
          <li key={one.key}>
            <p>
              <b>{`${one.active}, ${one.form}`}</b>
            </p>
            {one.limits === null ? null : (
              <p>
                {one.firstStart === null || one.lastStart === null
                  ? w.notYet
                  : w.startSpan(dayMonth(one.firstStart), dayMonth(one.lastStart))}
              </p>
            )}
            {one.latestStart === null ? null : <p>{w.latestNoChance(dayMonth(one.latestStart))}</p>}
            {one.blockers.map((code) => (
              <p key={code}>{coreWords.miteBlocker(code)}</p>
            ))}
            <p className="note">{`${words.mites.with(one.active)}: ${one.cautions.map(coreWords.miteCaution).join('; ')}.`}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Book({ answer }: { readonly answer: MitesAnswer }) {
  const w = coreWords.mites;
  const h = w.recordHead;
  return (
    <section>
      <h2>{w.records}</h2>
      {answer.records.length === 0 ? (
        <p>{words.mites.noRecords}</p>
      ) : (
        <WideTable label={w.records}>
          <thead>
            <tr>
              {[w.label, h.active, h.product, h.lot, h.in, h.out, h.remark].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {answer.records.map((one) => (
              <tr key={`${one.colony} ${one.active} ${one.in} ${one.out}`}>
                <th scope="row">{one.label}</th>
                <td>{one.active}</td>
                <td>{one.product ?? w.none}</td>
                <td>{one.lot ?? w.none}</td>
                <td>{one.in ?? w.none}</td>
                <td>{one.out ?? w.none}</td>
                <td>{coreWords.recordRemark(one)}</td>
              </tr>
            ))}
          </tbody>
        </WideTable>
      )}
    </section>
  );
}
