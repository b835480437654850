import type { ColonyOutlook, Holding, WeighingWays } from '@winterheft/core';
import type { UnitFormat, Units } from '@winterheft/words';
import { useEffect, useRef } from 'react';
import { words } from '../app/words.ts';
import { errorFigure, figure } from '../weighing/figures.ts';
import { jumpOf, totalKg } from '../weighing/jump.ts';
import { readingsOf } from '../weighing/records.ts';
import { shownText, textOfKg } from '../weighing/typing.ts';
import type { WalkHive, WalkYard } from '../weighing/walk.ts';
import { HiveStop } from './hive-list.tsx';
import { type AskedJump, JumpQuestions, useAcceptedJumps } from './jump-questions.tsx';
import { RoundDone } from './round-done.tsx';
import { useLines } from './use-lines.ts';

/** What stands in the fields of the hive that is being weighed. */
export interface TypedHere {
  readonly front: string;
  readonly rear: string;
  /** What the plan says of it; null until it has said so. */
  readonly line: ColonyOutlook | null;
}

interface RoundLedgerProps {
  readonly walk: readonly WalkYard[];
  readonly holding: Holding;
  readonly ways: WeighingWays;
  readonly current: string;
  /** Null where nothing is typed. */
  readonly typed: TypedHere | null;
  readonly units: UnitFormat;
  readonly unitsName: Units;
  readonly mark: string;
  readonly onGo: (hive: string) => void;
}

/** The round at a desk: every hive with its readings, stores, state, and the reading to stop at. */
export function RoundLedger({ walk, holding, ways, current, typed, units, unitsName, mark, onGo }: RoundLedgerProps) {
  const { round } = words;
  const lines = useLines();
  const [accepted, accept] = useAcceptedJumps();
  const { columns } = round;
  const all = walk.flatMap((yard) => yard.hives);
  const done = all.filter((hive) => hive.stop === 'done').length;
  const rowOf = (hive: WalkHive): Row => {
    if (hive.hive === current && typed !== null) {
      const readings = readingsOf({ ...typed, word: null }, unitsName);
      return { ...typed, totalKg: totalKg(readings, ways), stop: typed.line === null ? 'begun' : 'done' };
    }
    const weighing = hive.stop === 'done' ? holding.hives.get(hive.hive)?.weighings.at(-1) : undefined;
    const text = (kg: number | undefined) => (kg === undefined ? '' : textOfKg(kg, unitsName));
    return {
      front: text(weighing?.frontKg),
      rear: text(weighing?.rearKg),
      totalKg: weighing === undefined ? null : totalKg(weighing, ways),
      line: lines.get(hive.colony) ?? null,
      stop: hive.stop,
    };
  };
  const jumps = all.flatMap((hive): AskedJump[] => {
    const of = hive.stop === 'done' ? holding.hives.get(hive.hive) : undefined;
    const jump = of === undefined ? null : jumpOf(of, holding, ways);
    return jump === null || accepted.has(jump.record) ? [] : [{ ...jump, hive: hive.hive, label: hive.label }];
  });
  const flagged = new Set(jumps.map(({ hive }) => hive));
  return (
    <section className="round-ledger" aria-label={round.listTitle}>
      <h2>
        {round.listTitle} <small>{round.listDone(done, all.length)}</small>
      </h2>
      {done === all.length ? <RoundDone /> : null}
      <JumpQuestions jumps={jumps} units={units} onGo={onGo} onRight={accept} />
      {walk.map((yard) => (
        <table key={yard.yard}>
          {walk.length > 1 ? <caption>{yard.name}</caption> : null}
          <thead>
            <tr>
              <th scope="col">{round.hive}</th>
              <th scope="col">{columns.front}</th>
              <th scope="col">{columns.rear}</th>
              <th scope="col">{columns.total}</th>
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
                row={rowOf(hive)}
                isCurrent={hive.hive === current}
                isFlagged={flagged.has(hive.hive)}
                units={units}
                mark={mark}
                onGo={onGo}
              />
            ))}
          </tbody>
        </table>
      ))}
    </section>
  );
}

interface Row extends TypedHere {
  readonly totalKg: number | null;
  readonly stop: WalkHive['stop'];
}

interface LedgerRowProps {
  readonly hive: WalkHive;
  readonly row: Row;
  readonly isCurrent: boolean;
  readonly isFlagged: boolean;
  readonly units: UnitFormat;
  readonly mark: string;
  readonly onGo: (hive: string) => void;
}

const NOTHING = '·';

function LedgerRow({ hive, row, isCurrent, isFlagged, units, mark, onGo }: LedgerRowProps) {
  const shown = row.stop === 'done' ? row.line : null;
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
      <td>{row.front === '' ? NOTHING : shownText(row.front, mark)}</td>
      <td>{row.rear === '' ? NOTHING : shownText(row.rear, mark)}</td>
      <td>{row.totalKg === null ? NOTHING : figure(units, row.totalKg)}</td>
      <td>{has === null ? NOTHING : `${figure(units, has)} ± ${errorFigure(units, shown?.hasSdKg ?? 0)}`}</td>
      <td className={isShort ? 'round-ledger-short' : undefined}>
        <HiveStop hive={{ ...hive, stop: row.stop }} line={row.line ?? undefined} units={units} />
        {isFlagged ? <span className="round-ledger-flag">{words.round.jump.flag}</span> : null}
      </td>
      <td>{isShort && stopKg !== null && stopSdKg !== null ? `${figure(units, stopKg)} ± ${errorFigure(units, stopSdKg)}` : ''}</td>
    </tr>
  );
}
