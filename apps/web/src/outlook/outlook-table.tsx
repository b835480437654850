import type { ColonyOutlook, EndedColony, YardDates } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import type { Outlooks } from '../plan/use-plan.ts';
import { StateShape } from '../ui/states.tsx';
import { figuresOf, signedAbove } from '../verdict/figures.ts';
import { shapeOf } from '../verdict/groups.ts';
import { WideTable } from '../verdict/wide-table.tsx';

interface TableProps {
  readonly lines: readonly ColonyOutlook[];
  readonly ended: readonly EndedColony[];
  readonly dates: readonly YardDates[];
  readonly made: Outlooks['made'];
  readonly units: UnitFormat;
  readonly yardName: (id: string) => string;
}

/** The chart's numbers as a table: for a screen reader, for copying, for who prefers it. */
export function OutlookTable({ lines, ended, dates, made, units, yardName }: TableProps) {
  const { outlook } = words;
  const { table } = outlook;
  const forage = new Map(dates.map((yard) => [yard.yard, yard.dates['firstForage']]));
  const day = (iso: string | null | undefined) => (iso == null ? table.after(dayMonth(made.to)) : dayMonth(iso));
  return (
    <div className="outlook-table">
      <WideTable label={outlook.asTable}>
        <caption>{table.caption(units.massUnit, dayMonth(made.from), dayMonth(made.to, true))}</caption>
        <thead>
          <tr>
            {[
              table.colony,
              table.yard,
              table.state,
              table.has,
              table.needs,
              table.above,
              table.chances,
              table.cases,
              table.band,
              table.middle,
              table.forage,
            ].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => {
            const figures = figuresOf(line, units);
            const odds = forage.get(line.yard);
            return (
              <tr key={line.colony}>
                <th scope="row">
                  <a href={`#/colony/${encodeURIComponent(line.colony)}`}>{line.label}</a>
                </th>
                <td>{yardName(line.yard)}</td>
                <td>
                  <span className="state-word">
                    <StateShape shape={shapeOf(line)} size={12} /> {coreWords.stateWords(line.state, line.low)}
                  </span>
                </td>
                <td>{figures.has === null ? '?' : `${figures.has} ± ${figures.sd}`}</td>
                <td>{figures.need}</td>
                <td>{signedAbove(line, figures)}</td>
                <td>{line.chancesIn20 ?? '?'}</td>
                <td className="cases">{casesText(line.cases, made.to)}</td>
                <td>{line.runOut === null ? '?' : `${day(line.runOut.p5)}, ${day(line.runOut.p95)}`}</td>
                <td>{line.runOut === null ? '?' : day(line.runOut.p50)}</td>
                <td>{odds === undefined ? '?' : `${day(odds.p10)}, ${day(odds.p50)}, ${day(odds.p90)}`}</td>
              </tr>
            );
          })}
          {ended.map((colony) => (
            <tr key={colony.colony}>
              <th scope="row">{colony.label}</th>
              <td>{yardName(colony.yard)}</td>
              <td colSpan={9}>{outlook.endedLine(outlook.endedHow[colony.how] ?? colony.how, dayMonth(colony.on))}</td>
            </tr>
          ))}
        </tbody>
      </WideTable>
    </div>
  );
}

function casesText(cases: readonly (string | null)[] | null, to: string): string {
  if (cases === null) return '?';
  const within = cases.filter((day): day is string => day !== null && day <= to);
  const later = cases.length - within.length;
  const { table } = words.outlook;
  return [...within.map((day) => dayMonth(day)), ...(later > 0 ? [table.later(later, dayMonth(to))] : [])].join(', ');
}
