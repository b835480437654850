import './sheet.css';
import { epochDayOf, type Holding } from '@winterheft/core';
import { dayMonth } from '@winterheft/words';
import { type KeyboardEvent, useCallback, useMemo, useRef, useState } from 'react';
import { append, report, strike, useSession } from '../app/session.ts';
import { atNow, planDay } from '../app/today.ts';
import { useUnitsName } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { judgeHive } from '../plan/use-plan.ts';
import type { NewRecord } from '../store/journal-store.ts';
import { Field } from '../ui/field.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { hiveFacts } from '../weighing/hive-facts.ts';
import { scaleOf } from '../weighing/records.ts';
import { type WalkHive, walkOf } from '../weighing/walk.ts';
import { EnterRow } from './enter-row.tsx';
import {
  dateFault,
  EMPTY_ROW,
  type Filled,
  type FilledRow,
  filledOf,
  isFilled,
  rowFaults,
  rowRecords,
  typedEntry,
  yearBefore,
} from './filled.ts';

interface Done {
  readonly says: string;
  readonly undo: (() => Promise<void>) | null;
}

/** A filled sheet typed back in, in the order of the paper. */
export default function EnterScreen() {
  const { snapshot } = useSession();
  if (snapshot === null) return <p className="waiting">{words.shell.opening}</p>;
  return <Enter holding={snapshot.holding} records={snapshot.records} />;
}

function Enter({ holding, records }: { readonly holding: Holding; readonly records: number }) {
  const { sheet } = words;
  const units = useUnitsName();
  const today = planDay();
  const [filled, setFilled] = useDraft<Filled>('sheet.enter', { date: today, rows: {} }, filledOf);
  const [done, setDone] = useState<Done | null>(null);
  const latest = useRef(filled);
  latest.current = filled;
  const walk = useMemo(() => walkOf(holding, epochDayOf(today) as number, new Set()), [holding, today]);
  const wrongDate = dateFault(filled.date, today);
  const change = useCallback(
    (hive: string, row: FilledRow) => setFilled({ ...latest.current, rows: { ...latest.current.rows, [hive]: row } }),
    [setFilled],
  );
  const hives = walk.flatMap((yard) => yard.hives);
  const typed = hives.filter(({ hive }) => isFilled(filled.rows[hive] ?? EMPTY_ROW));
  const write = async () => {
    const before = filled;
    const { records: made, hives: ready } = await settled(typed, { filled, holding, units });
    const waiting = typed.length - ready.length;
    if (made.length === 0) return setDone({ says: sheet.waiting(waiting), undo: null });
    const written = await append(made);
    if (!written.ok) return setDone({ says: coreWords.faultSentence(written.error), undo: null });
    const rows = Object.fromEntries(Object.entries(latest.current.rows).filter(([hive]) => !ready.includes(hive)));
    setFilled({ ...latest.current, rows });
    const undo = async () => {
      await strike(written.value);
      setFilled({ ...before, rows: { ...before.rows, ...latest.current.rows } });
      setDone({ says: words.yard.undone, undo: null });
    };
    setDone({ says: `${sheet.written(ready.length, made.length)}${waiting === 0 ? '' : ` ${sheet.waiting(waiting)}`}`, undo });
  };
  return (
    <main className="page enter">
      <h1>{sheet.enterTitle}</h1>
      <p>{sheet.enterLead}</p>
      <div className="enter-head">
        <Field
          label={sheet.date}
          type="date"
          value={filled.date}
          min={yearBefore(today)}
          max={today}
          onChange={(date) => setFilled({ ...filled, date })}
          error={wrongDate === null ? null : dateWords(wrongDate, today)}
        />
        <a className="key" href="#/sheet">
          {sheet.toSheet}
        </a>
      </div>
      {hives.length === 0 ? <p>{sheet.noHives}</p> : null}
      {walk.map(({ yard, name, hives: here }) => (
        <section key={yard} aria-labelledby={`enter-${yard}`}>
          <h2 id={`enter-${yard}`}>{name}</h2>
          <ol className="ledger enter-list" onKeyDown={goOn}>
            {here.map(({ hive, label, colony }) => (
              <EnterRow
                key={hive}
                hive={holding.hives.get(hive) as NonNullable<ReturnType<Holding['hives']['get']>>}
                label={label}
                row={filled.rows[hive] ?? EMPTY_ROW}
                units={units}
                records={records}
                notBegun={notBegun(holding, { colony, date: filled.date })}
                onChange={change}
              />
            ))}
          </ol>
        </section>
      ))}
      <div className="enter-write">
        <div role="status" className="keys">
          {done === null ? null : <p>{done.says}</p>}
          {done?.undo == null ? null : (
            <button type="button" className="key" onClick={() => done.undo?.().catch(report)}>
              {words.yard.undo}
            </button>
          )}
        </div>
        <button
          type="button"
          className="key key-solid key-big"
          disabled={typed.length === 0 || wrongDate !== null}
          onClick={() => write().catch(report)}
        >
          {typed.length === 0 ? sheet.nothing : sheet.write(typed.length)}
        </button>
      </div>
    </main>
  );
}

function dateWords(fault: NonNullable<ReturnType<typeof dateFault>>, today: string): string {
  const { sheet } = words;
  if (fault === 'missing') return sheet.dateMissing;
  return fault === 'later' ? sheet.dateLater(dayMonth(today, true)) : sheet.dateOld(dayMonth(yearBefore(today), true));
}

/** A colony that came after the sheet was written cannot have been weighed on it. */
function notBegun(holding: Holding, { colony, date }: { readonly colony: string; readonly date: string }): string | null {
  const from = holding.colonies.get(colony)?.stays.at(-1)?.from.at.date;
  return from !== undefined && from > date ? words.sheet.notBegun(dayMonth(from, true)) : null;
}

/** The rows that can be written, judged once more as a whole, and their records. */
async function settled(
  typed: readonly WalkHive[],
  of: { readonly filled: Filled; readonly holding: Holding; readonly units: ReturnType<typeof useUnitsName> },
): Promise<{ readonly records: readonly NewRecord[]; readonly hives: readonly string[] }> {
  const { filled, holding, units } = of;
  const { zone } = atNow();
  const at = filled.date === planDay() ? atNow() : { date: filled.date, ...(zone === undefined ? {} : { zone }) };
  const scale = scaleOf(holding);
  const records: NewRecord[] = [];
  const hives: string[] = [];
  for (const { hive, colony, yard } of typed) {
    const stands = holding.hives.get(hive);
    const row = filled.rows[hive] ?? EMPTY_ROW;
    if (stands === undefined || notBegun(holding, { colony, date: filled.date }) !== null) continue;
    const facts = hiveFacts(stands);
    if (rowFaults(row, facts).length > 0) continue;
    const judged = await judgeHive(hive, typedEntry(row, { facts, units }));
    if (judged.ok && (judged.value.refused.length > 0 || judged.value.fault !== null)) continue;
    records.push(...rowRecords(row, { hive, colony, yard, facts, units, scale, at }));
    hives.push(hive);
  }
  return { records, hives };
}

/** Enter goes to the next field, with Shift to the one before; up and down stay in the column. */
function goOn(event: KeyboardEvent<HTMLElement>): void {
  const from = event.target as HTMLElement;
  const field = from.dataset['field'];
  if (field === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
  const isColumn = (event.key === 'ArrowDown' || event.key === 'ArrowUp') && from instanceof HTMLInputElement;
  if (event.key !== 'Enter' && !isColumn) return;
  const main = from.closest('main');
  const fields = [
    ...(main?.querySelectorAll<HTMLElement>(isColumn ? `[data-field="${field}"]` : '[data-field], .enter-write .key-solid') ?? []),
  ];
  const step = event.key === 'ArrowUp' || (event.key === 'Enter' && event.shiftKey) ? -1 : 1;
  const next = fields[fields.indexOf(from) + step];
  event.preventDefault();
  next?.focus();
  if (next instanceof HTMLInputElement) next.select();
}
