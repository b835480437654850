import { type ColonyOutlook, heft, type WeighingWays } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { Basis } from '../weighing/basis.ts';
import { errorFigure, figure } from '../weighing/figures.ts';
import type { Readings } from '../weighing/records.ts';

interface Row {
  readonly what: string;
  readonly from: string;
  readonly kg: number;
  readonly sdKg: number;
  readonly isSum?: boolean;
}

interface ErrorSumProps {
  readonly line: ColonyOutlook;
  readonly readings: Readings;
  readonly basis: Basis;
  readonly ways: WeighingWays;
  readonly units: UnitFormat;
}

/** How the stores come out of the readings, each part with its error: the errors add by their squares. */
export function ErrorSum(props: ErrorSumProps) {
  const { round } = words;
  const rows = rowsOf(props);
  if (rows.length === 0) return null;
  const { units } = props;
  return (
    <table className="round-sum">
      <caption>{round.sum.title(units.massUnit)}</caption>
      <tbody>
        {rows.map(({ what, from, kg, sdKg, isSum }) => (
          <tr key={what} className={isSum ? 'round-sum-total' : undefined}>
            <th scope="row">{what}</th>
            <td>{from}</td>
            <td className="num">{figure(units, kg).replace('-', '− ')}</td>
            <td>{sdKg > 0 ? `± ${errorFigure(units, sdKg)}` : ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function rowsOf({ line, readings, basis, ways }: ErrorSumProps): readonly Row[] {
  const { sum } = words.round;
  const { stores } = line;
  if (stores === null || line.hasKg === null || line.hasSdKg === null) return [];
  const { tare, bees, errorParts, byWeight, byCount } = stores;
  const sinceKg = line.hasKg - stores.storesKg;
  const hasSince = Math.abs(sinceKg) >= 0.05;
  const rows: Row[] = [];
  const weighed =
    basis === 'word' || basis === 'none'
      ? null
      : heft({
          ...ways.geometry,
          frontKg: readings.frontKg,
          rearKg: readings.rearKg,
          frontShareFrac: ways.share.frontShareFrac,
          frontShareSdFrac: ways.share.sdFrac,
        });
  if (weighed?.ok && byWeight !== null) {
    const { totalKg, sdKg } = weighed.value;
    const restKg = byWeight.kg - (totalKg - tare.massKg - bees.massKg);
    const restSdKg = Math.hypot(errorParts.pollenKg, errorParts.onHiveKg, errorParts.waterKg, errorParts.snowKg);
    rows.push(
      { what: sum.whole, from: sum.read[weighed.value.basis], kg: totalKg, sdKg },
      { what: sum.tare, from: sum.tareBasis[tare.basis], kg: -tare.massKg, sdKg: Math.hypot(tare.sharedSdKg, tare.ownSdKg) },
      { what: sum.bees, from: sum.beesCount(Math.round(bees.count / 500) * 500), kg: -bees.massKg, sdKg: bees.sdKg },
      { what: sum.rest, from: '', kg: restKg, sdKg: restSdKg },
    );
    // Where nothing else joins in, the stores by weight are the stores.
    if (byCount !== null || hasSince) rows.push({ what: sum.byWeight, from: '', kg: byWeight.kg, sdKg: byWeight.sdKg, isSum: true });
  }
  if (byCount !== null) rows.push({ what: sum.byCount, from: '', kg: byCount.kg, sdKg: byCount.sdKg });
  if (hasSince) rows.push({ what: sum.since, from: '', kg: sinceKg, sdKg: 0 });
  rows.push({ what: sum.stores, from: '', kg: line.hasKg, sdKg: line.hasSdKg, isSum: true });
  return rows;
}
