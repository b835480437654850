import type { Hive, WeighingWays } from '@winterheft/core';
import { dayMonth, type UnitFormat, type Units } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { figure } from '../weighing/figures.ts';
import { totalKg } from '../weighing/jump.ts';
import { shownText, textOfKg } from '../weighing/typing.ts';

const SHOWN = 5;

interface PastWeighingsProps {
  readonly hive: Hive;
  readonly ways: WeighingWays;
  readonly units: UnitFormat;
  readonly unitsName: Units;
  readonly mark: string;
}

/** What this hive weighed before, newest first; where it was never weighed, what to mind when lifting. */
export function PastWeighings({ hive, ways, units, unitsName, mark }: PastWeighingsProps) {
  const { round } = words;
  const past = hive.weighings.slice(-SHOWN).reverse();
  if (past.length === 0) return <p className="own-rule">{coreWords.cautions.lifting}</p>;
  const text = (kg: number | undefined) => (kg === undefined ? '·' : shownText(textOfKg(kg, unitsName), mark));
  return (
    <table className="round-sum">
      <caption>{round.past(units.massUnit)}</caption>
      <thead>
        <tr>
          <th scope="col">{round.pastDay}</th>
          <th scope="col">{round.columns.front}</th>
          <th scope="col">{round.columns.rear}</th>
          <th scope="col">{round.columns.total}</th>
        </tr>
      </thead>
      <tbody>
        {past.map((weighing) => {
          const kg = totalKg(weighing, ways);
          return (
            <tr key={weighing.record}>
              <th scope="row">
                {dayMonth(weighing.at.date)} {weighing.at.date.slice(0, 4)}
              </th>
              <td className="num">{text(weighing.frontKg)}</td>
              <td className="num">{text(weighing.rearKg)}</td>
              <td className="num">{kg !== null ? figure(units, kg) : weighing.word === undefined ? '·' : round.words[weighing.word]}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
