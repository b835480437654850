import type { ColonyOutlook } from '@winterheft/core';
import { decimals, type UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { WideTable } from '../verdict/wide-table.tsx';
import { doubtRows } from './doubt.ts';

/** Where the doubt comes from, and what each measurement would take off the need. */
export function DoubtTable({ line, units }: { readonly line: ColonyOutlook; readonly units: UnitFormat }) {
  const { colony } = words;
  const rows = doubtRows(line);
  const most = Math.max(0, ...(rows ?? []).map((row) => row.kg));
  const inTenths = (kg: number) => decimals(units.massOf(kg), 1);
  return (
    <section className="doubt">
      <h2>{colony.doubt.title(units.mass(Math.max(0, line.needParts.doubtKg)))}</h2>
      {rows === null ? <p className="waiting">{colony.doubt.working}</p> : null}
      {rows?.length === 0 ? <p>{colony.doubt.small}</p> : null}
      {rows === null || rows.length === 0 ? null : (
        <>
          <WideTable label={coreWords.outlook.doubt}>
            <thead>
              <tr>
                <th scope="col">{colony.doubt.cause}</th>
                <th scope="col" className="figure-cell">
                  {units.massUnit}
                </th>
                <th scope="col">{colony.doubt.cut}</th>
                <th scope="col" className="figure-cell">
                  {colony.doubt.buys}, {units.massUnit}
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => {
                const [best] = row.cuts;
                return (
                  <tr key={row.cause}>
                    <th scope="row">
                      {coreWords.outlook.causes[row.cause]}
                      <span className="doubt-bar" aria-hidden="true" style={{ width: `${(100 * row.kg) / most}%` }} />
                    </th>
                    <td className="figure-cell num">{inTenths(row.kg)}</td>
                    {best === undefined ? (
                      <td className="doubt-none">{colony.doubt[row.without]}</td>
                    ) : (
                      <td>
                        {row.cuts.slice(0, 2).map(({ worth }) => (
                          <span key={worth.what} className="doubt-cut">
                            <b>{coreWords.measurements[worth.what]}</b>{' '}
                            <small>
                              {colony.doubt.minutes(worth.minutes)}
                              {worth.afterDays > 0 ? `, ${colony.doubt.afterDays(worth.afterDays)}` : ''}
                            </small>
                          </span>
                        ))}
                      </td>
                    )}
                    <td className="figure-cell num">
                      {row.cuts.slice(0, 2).map(({ worth, takesOffKg }) => (
                        <span key={worth.what} className="doubt-cut">
                          {inTenths(takesOffKg)}
                        </span>
                      ))}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </WideTable>
          <p className="note">{colony.doubt.note}</p>
        </>
      )}
    </section>
  );
}
