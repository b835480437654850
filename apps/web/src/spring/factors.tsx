import type { Holding, LearnAnswer } from '@winterheft/core';
import { useState } from 'react';
import { append, report } from '../app/session.ts';
import { coreWords, words } from '../app/words.ts';
import { WideTable } from '../verdict/wide-table.tsx';

/** Own factors before and after, what each rests on, and the key that lets next autumn's plan use them. */
export function Factors({ learn, holding }: { readonly learn: LearnAnswer; readonly holding: Holding }) {
  const { spring } = words;
  const w = coreWords.spring;
  const [used, setUsed] = useState(false);
  const { appetite, syrupYield } = learn;
  const colonyWinters = appetite.winters.reduce((sum, { colonies }) => sum + colonies, 0);
  const times = ({ median, logSd }: { readonly median: number; readonly logSd: number }) => w.times(median, logSd);
  const seen = colonyWinters === 0 ? w.nothing : w.rests.level(colonyWinters, appetite.winters.length);
  const rows = [
    [w.level, times(appetite.level.before), times(appetite.level.after), seen],
    [w.nextWinter, times(appetite.level.before), times(appetite.nextWinter), seen],
    [w.yield, times(syrupYield.before), times(syrupYield.after), syrupYield.feeds === 0 ? w.nothing : w.rests.feeds(syrupYield.feeds)],
  ] as const;
  const { median: levelMedian, logSd: levelLogSd } = appetite.nextWinter;
  const isKept = used || holding.settings.learnt?.levelMedian === levelMedian;
  const keep = async () => {
    const value = { levelMedian, levelLogSd, winters: appetite.winters.length, colonyWinters };
    const written = await append([{ yard: '*', kind: 'setting', body: { key: 'learnt', value } }]);
    setUsed(written.ok);
  };
  return (
    <section>
      <h2>{spring.factors}</h2>
      <p className="note">{colonyWinters === 0 && syrupYield.feeds === 0 ? spring.nothing : spring.factorsNote}</p>
      <WideTable label={spring.factors}>
        <thead>
          <tr>
            <th scope="col">{w.factor}</th>
            <th scope="col">{spring.before}</th>
            <th scope="col">{spring.after}</th>
            <th scope="col">{w.restsOn}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, before, after, rests]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{before}</td>
              <td>{after}</td>
              <td>{rests}</td>
            </tr>
          ))}
        </tbody>
      </WideTable>
      {colonyWinters === 0 ? null : isKept ? (
        <p>{spring.used}</p>
      ) : (
        <p className="keys no-print">
          <button type="button" className="key key-solid" onClick={() => void keep().catch(report)}>
            {spring.use}
          </button>
        </p>
      )}
    </section>
  );
}
