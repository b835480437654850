import type { ColonyOutlook, Holding } from '@winterheft/core';
import type { UnitFormat, Units } from '@winterheft/words';
import { useEffect, useRef } from 'react';
import { words } from '../app/words.ts';
import { errorFigure, figure } from '../weighing/figures.ts';
import { shownText, textOfKg } from '../weighing/typing.ts';
import type { WalkHive, WalkYard } from '../weighing/walk.ts';
import { HiveStop } from './hive-list.tsx';
import { RoundDone } from './round-done.tsx';
import { useLines } from './use-lines.ts';

interface RoundLedgerProps {
  readonly walk: readonly WalkYard[];
  readonly holding: Holding;
  readonly current: string;
  readonly units: UnitFormat;
  readonly unitsName: Units;
  readonly mark: string;
  readonly onGo: (hive: string) => void;
}

/** The round at a desk: every hive with its readings, stores, state, and the reading to stop at. */
export function RoundLedger({ walk, holding, current, units, unitsName, mark, onGo }: RoundLedgerProps) {
  const { round } = words;
  const lines = useLines();
  const { columns } = round;
  const all = walk.flatMap((yard) => yard.hives);
  const done = all.filter((hive) => hive.stop === 'done').length;
  return (
    <section className="round-ledger" aria-label={round.listTitle}>
      <h2>
        {round.listTitle} <small>{round.listDone(done, all.length)}</small>
      </h2>
      {done === all.length ? <RoundDone /> : null}
      {walk.map((yard) => (
        <table key={yard.yard}>
          {walk.length > 1 ? <caption>{yard.name}</caption> : null}
          <thead>
            <tr>
              <th scope="col">{round.hive}</th>
              <th scope="col">{columns.front}</th>
              <th scope="col">{columns.rear}</th>
              <th scope="col">{columns.stores(units.massUnit)}</th>
              <th scope="col">{columns.state}</th>
              <th scope="col">{columns.stop(round.front)}</th>
            </tr>
          </thead>
          <tbody>
            {yard.hives.map((hive) => (
              <LedgerRow
                key={hive.hive}
                hive={hive}
                weighing={hive.stop === 'done' ? holding.hives.get(hive.hive)?.weighings.at(-1) : undefined}
                line={lines.get(hive.colony)}
                isCurrent={hive.hive === current}
                units={units}
                text={(kg) => (kg === undefined ? '·' : shownText(textOfKg(kg, unitsName), mark))}
                onGo={onGo}
              />
            ))}
          </tbody>
        </table>
      ))}
    </section>
  );
}

interface LedgerRowProps {
  readonly hive: WalkHive;
  readonly weighing: { readonly frontKg?: number; readonly rearKg?: number } | undefined;
  readonly line: ColonyOutlook | undefined;
  readonly isCurrent: boolean;
  readonly units: UnitFormat;
  readonly text: (kg: number | undefined) => string;
  readonly onGo: (hive: string) => void;
}

function LedgerRow({ hive, weighing, line, isCurrent, units, text, onGo }: LedgerRowProps) {
  const shown = hive.stop === 'done' ? line : undefined;
  const has = shown?.hasKg ?? null;
  const [stopKg, stopSdKg] = [shown?.targetFrontKg ?? null, shown?.targetFrontSdKg ?? null];
  const isShort = shown?.state === 'short';
  const ref = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (isCurrent) ref.current?.scrollIntoView({ block: 'nearest' });
  }, [isCurrent]);
  return (
    <tr ref={ref} className={isCurrent ? 'round-ledger-current' : undefined} aria-current={isCurrent ? 'step' : undefined}>
      <th scope="row">
        <button type="button" className="round-ledger-key num" onClick={() => onGo(hive.hive)}>
          {hive.label}
        </button>
      </th>
      <td>{text(weighing?.frontKg)}</td>
      <td>{text(weighing?.rearKg)}</td>
      <td>{has === null ? '·' : `${figure(units, has)} ± ${errorFigure(units, shown?.hasSdKg ?? 0)}`}</td>
      <td className={isShort ? 'round-ledger-short' : undefined}>
        <HiveStop hive={hive} line={line} units={units} />
      </td>
      <td>{isShort && stopKg !== null && stopSdKg !== null ? `${figure(units, stopKg)} ± ${errorFigure(units, stopSdKg)}` : ''}</td>
    </tr>
  );
}
